#include "ui/panels/taped_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "plan/edits.h"
#include "ui/look/theme.h"
#include "ui/words/words.h"

namespace ui {

namespace {

void colour(QLabel* label, const QColor& ink) {
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, ink);
  label->setPalette(palette);
}

QString sentence_of(const problem::Problem& problem) {
  const QString text = said(problem.text) + QStringLiteral(": ") + said(problem.mend);
  return text.left(1).toUpper() + text.mid(1);
}

}  // namespace

TapedPanel::TapedPanel(Desk& desk, QWidget* parent) : QWidget(parent), tapes_(desk) {
  setObjectName(QStringLiteral("taped-panel"));
  setAccessibleName(tr("Measuring in"));
  rows_ = new TapesModel(tapes_, this);
  known_ = new KnownModel(tapes_, this);
  auto* sides = new QHBoxLayout(this);
  sides->setContentsMargins(px(16), px(12), px(16), px(16));
  sides->setSpacing(px(16));
  sides->addWidget(tapes_side(), 1);
  sides->addWidget(points_side(), 0);
  setTabOrder(sheet_, worst_);
  connect(&tapes_, &TapeDesk::changed, this, &TapedPanel::follow);
  connect(&desk, &Desk::job_changed, this, &TapedPanel::follow_corners);
  follow_corners();
  follow();
}

QPushButton* TapedPanel::button(const QString& words, const char* name) {
  auto* made = new QPushButton(words, this);
  made->setObjectName(QString::fromLatin1(name));
  made->setAutoDefault(false);
  return made;
}

QLabel* TapedPanel::heading(const QString& words) {
  auto* label = new QLabel(words, this);
  label->setFont(ui::font(Type::text, true));
  headings_.push_back(label);
  return label;
}

QWidget* TapedPanel::tapes_side() {
  auto* side = new QWidget(this);
  auto* down = new QVBoxLayout(side);
  down->setContentsMargins({});
  down->setSpacing(px(6));
  down->addWidget(heading(tr("Tapes as read")));
  sheet_ = new FieldSheet(rows_, side);
  sheet_->setObjectName(QStringLiteral("tapes"));
  sheet_->setAccessibleName(tr("Tapes as read"));
  down->addWidget(sheet_, 3);
  echo_ = new QLabel(side);
  echo_->setObjectName(QStringLiteral("tape-echo"));
  echo_->setWordWrap(true);
  down->addWidget(echo_);

  auto* bar = new QHBoxLayout;
  bar->setSpacing(px(8));
  worst_ = button(tr("Worst first"), "worst-first");
  worst_->setCheckable(true);
  strike_ = button(tr("Strike out"), "strike-out");
  take_out_ = button(tr("Take out"), "take-out");
  for (QPushButton* each : {worst_, strike_, take_out_}) bar->addWidget(each);
  bar->addStretch(1);
  down->addLayout(bar);

  asking_ = new QWidget(side);
  auto* ask = new QHBoxLayout(asking_);
  ask->setContentsMargins({});
  asking_words_ = new QLabel(asking_);
  reason_ = new QLineEdit(asking_);
  reason_->setObjectName(QStringLiteral("strike-reason"));
  reason_->setAccessibleName(tr("Why it does not count"));
  reason_->installEventFilter(this);
  asking_words_->setBuddy(reason_);
  ask->addWidget(asking_words_);
  ask->addWidget(reason_, 1);
  asking_->hide();
  down->addWidget(asking_);

  sum_ = new QLabel(side);
  sum_->setObjectName(QStringLiteral("tape-sum"));
  sum_->setWordWrap(true);
  down->addWidget(sum_);
  problems_ = new QListWidget(side);
  problems_->setObjectName(QStringLiteral("tape-problems"));
  problems_->setAccessibleName(tr("What the tapes still need"));
  problems_->setWordWrap(true);
  problems_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  problems_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
  problems_->setMinimumHeight(px(64));
  down->addWidget(problems_, 1);

  connect(sheet_, &FieldSheet::echoed, this, &TapedPanel::say);
  connect(worst_, &QPushButton::toggled, rows_, &TapesModel::sort_worst_first);
  connect(strike_, &QPushButton::clicked, this, &TapedPanel::ask_reason);
  connect(take_out_, &QPushButton::clicked, this, [this] { rows_->take_out(sheet_->currentIndex().row()); });
  connect(reason_, &QLineEdit::returnPressed, this, &TapedPanel::strike);
  connect(sheet_->selectionModel(), &QItemSelectionModel::currentChanged, this, &TapedPanel::follow);
  return side;
}

QWidget* TapedPanel::points_side() {
  auto* side = new QWidget(this);
  auto* down = new QVBoxLayout(side);
  down->setContentsMargins({});
  down->setSpacing(px(6));
  down->addWidget(heading(tr("Known points")));
  known_sheet_ = new FieldSheet(known_, side);
  known_sheet_->setObjectName(QStringLiteral("known-points"));
  known_sheet_->setAccessibleName(tr("Known points"));
  known_sheet_->set_shown(5, 240);
  connect(known_sheet_, &FieldSheet::echoed, this, &TapedPanel::say);
  down->addWidget(known_sheet_, 1);
  corner_ = new QComboBox(side);
  corner_->setObjectName(QStringLiteral("corner"));
  corner_->setAccessibleName(tr("Corner of what is drawn"));
  corner_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  corner_->setMinimumContentsLength(10);
  QPushButton* add = button(tr("Add this corner"), "add-corner");
  QPushButton* drop = button(tr("Take out"), "take-out-known");
  down->addWidget(corner_);
  auto* pick = new QHBoxLayout;
  pick->addWidget(add, 1);
  pick->addWidget(drop);
  down->addLayout(pick);
  down->addSpacing(px(10));

  down->addWidget(heading(tr("Draw through points")));
  through_ = new QLineEdit(side);
  through_->setObjectName(QStringLiteral("through"));
  through_->setAccessibleName(tr("Points to draw through"));
  through_->setPlaceholderText(tr("A, B, (C), D"));
  auto* hint = new QLabel(tr("In order. In brackets: a point that an arc goes through."), side);
  hint->setWordWrap(true);
  hint->setObjectName(QStringLiteral("through-hint"));
  as_ = new QComboBox(side);
  as_->setObjectName(QStringLiteral("draw-as"));
  as_->setAccessibleName(tr("Draw as"));
  using sketch::Hand;
  for (const auto& [words, hand] :
       {std::pair(tr("Area"), Hand::area), std::pair(tr("Pool"), Hand::pool), std::pair(tr("Building"), Hand::building),
        std::pair(tr("Keep-out"), Hand::keep_out), std::pair(tr("Wall"), Hand::wall), std::pair(tr("Edge"), Hand::edge),
        std::pair(tr("Levels"), Hand::level)})
    as_->addItem(words, static_cast<int>(hand));
  smooth_ = new QCheckBox(tr("Smooth curve"), side);
  smooth_->setObjectName(QStringLiteral("smooth"));
  QPushButton* go = button(tr("Draw"), "draw-through");
  go->setProperty("main", true);
  down->addWidget(through_);
  down->addWidget(hint);
  auto* last = new QHBoxLayout;
  last->addWidget(as_, 1);
  last->addWidget(smooth_);
  down->addLayout(last);
  down->addWidget(go);
  connect(add, &QPushButton::clicked, this, &TapedPanel::add_corner);
  connect(drop, &QPushButton::clicked, this, [this] { known_->take_out(known_sheet_->currentIndex().row()); });
  connect(go, &QPushButton::clicked, this, &TapedPanel::draw);
  connect(through_, &QLineEdit::returnPressed, this, &TapedPanel::draw);
  return side;
}

void TapedPanel::say(const QString& text, bool wrong) {
  echo_->setText(text);
  colour(echo_, wrong ? theme().flag : theme().ink2);
}

void TapedPanel::follow() {
  const sketch::Measured& measured = tapes_.measured();
  const int found = static_cast<int>(std::ranges::count_if(measured.points, [&](const sketch::FoundPoint& point) {
    return std::ranges::find(tapes_.book().known, point.name, &plan::KnownPoint::name) == tapes_.book().known.end();
  }));
  QStringList words{tr("Points found: %1").arg(found), tr("Missing: %1").arg(measured.missing.size()),
                    tr("Tapes to spare: %1").arg(std::max(0, measured.spare))};
  sum_->setText(words.join(QStringLiteral("   ")));
  problems_->clear();
  for (const problem::Problem& problem : measured.problems) {
    auto* item = new QListWidgetItem(sentence_of(problem), problems_);
    const bool grave = problem.severity != problem::Severity::notice;
    item->setForeground(grave ? theme().flag : theme().ink2);
    if (grave) item->setFont(ui::font(Type::note, true));
  }
  const auto tape = rows_->tape_at(sheet_->currentIndex().row());
  strike_->setEnabled(tape.has_value());
  take_out_->setEnabled(tape.has_value());
  const bool struck = tape && *tape < tapes_.book().rows.size() && !tapes_.book().rows[*tape].struck.empty();
  strike_->setText(struck ? tr("Count it again") : tr("Strike out"));
  sheet_->fit_columns();
  known_sheet_->fit_columns();
}

void TapedPanel::follow_corners() {
  corner_->clear();
  for (const plan::ElementPtr& element : tapes_.desk().job().elements) {
    if (std::holds_alternative<plan::TapeBook>(element->kind)) continue;
    int number = 0;
    for (const plan::Grip& grip : plan::corners(*element)) {
      const QString id = QString::fromStdString(element->id);
      const QString called = QStringLiteral("%1-%2").arg(id).arg(++number);
      const QString name = QString::fromStdString(element->name);
      const QVariant at = QVariantList{called, qlonglong(grip.at.x.steps()), qlonglong(grip.at.y.steps())};
      corner_->addItem(
          name.isEmpty() ? tr("%1, corner %2").arg(id).arg(number) : tr("%1 %2, corner %3").arg(id, name).arg(number),
          at);
    }
  }
}

void TapedPanel::ask_reason() {
  const int row = sheet_->currentIndex().row();
  const auto tape = rows_->tape_at(row);
  if (!tape) return;
  if (!tapes_.book().rows[*tape].struck.empty()) return rows_->strike(row, {});
  asking_words_->setText(tr("Why tape %1 does not count").arg(*tape + 1));
  reason_->clear();
  asking_->show();
  reason_->setFocus();
}

void TapedPanel::strike() {
  if (reason_->text().trimmed().isEmpty()) return say(tr("A tape is struck out with a reason: type why"), true);
  asking_->hide();
  say({}, false);
  rows_->strike(sheet_->currentIndex().row(), reason_->text());
  sheet_->setFocus();
}

bool TapedPanel::eventFilter(QObject* object, QEvent* event) {
  if (object == reason_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    asking_->hide();
    sheet_->setFocus();
    return true;
  }
  return QWidget::eventFilter(object, event);
}

void TapedPanel::add_corner() {
  const QVariantList at = corner_->currentData().toList();
  if (at.size() != 3) return say(tr("Nothing is drawn yet that has a corner"), true);
  const QString called = at[0].toString();
  const auto taken = [&](const plan::KnownPoint& point) { return point.name == called.toStdString(); };
  if (std::ranges::any_of(tapes_.book().known, taken))
    return say(tr("%1 is among the known points already").arg(called), true);
  known_->add(called, {units::Length::of_steps(at[1].toLongLong()), units::Length::of_steps(at[2].toLongLong())});
}

void TapedPanel::draw() {
  const auto hand = static_cast<sketch::Hand>(as_->currentData().toInt());
  auto drawn =
      drawn_through(tapes_.desk().job(), tapes_.measured(), through_->text().toStdString(), hand, smooth_->isChecked());
  if (!drawn) return say(sentence_of(drawn.error()), true);
  const QString first = QString::fromStdString(drawn->ids.front());
  tapes_.desk().edit(drawn->after, tr("Draw %1 through taped points").arg(first));
  tapes_.desk().select(drawn->ids);
  say(tr("%1 is drawn").arg(first), false);
}

void TapedPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::PaletteChange && event->type() != QEvent::StyleChange) return;
  for (QLabel* label : headings_) label->setFont(ui::font(Type::text, true));
}

}  // namespace ui
