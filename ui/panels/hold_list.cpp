#include "ui/panels/hold_list.h"

#include <QDate>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "ui/look/plain_tip.h"
#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/flow_layout.h"

namespace ui {

namespace {

QLabel* words(const QString& text, Type type, QColor colour, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setFont(ui::font(type));
  label->setTextFormat(Qt::PlainText);
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, colour);
  label->setPalette(palette);
  return label;
}

// Label and field side by side, kept together where the row wraps.
QLineEdit* add_field(FlowLayout* flow, const QString& label, const char* name, int width, QWidget* parent) {
  auto* pair = new QWidget(parent);
  auto* row = new QHBoxLayout(pair);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(px(6));
  auto* field = new QLineEdit(pair);
  field->setObjectName(QLatin1String(name));
  field->setAccessibleName(label);
  field->setFont(ui::font(Type::text));
  field->setFixedSize(px(width), px(28));
  QLabel* said_label = words(label, Type::note, theme().ink2, pair);
  said_label->setBuddy(field);
  row->addWidget(said_label);
  row->addWidget(field);
  flow->addWidget(pair);
  return field;
}

}  // namespace

LookForm::LookForm(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("look_form"));
  setAccessibleName(tr("Who looked at it and when"));
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(px(30), 0, 0, px(4));
  outer->setSpacing(px(2));
  auto* flow_room = new QWidget(this);
  auto* flow = new FlowLayout(flow_room);
  flow->setContentsMargins(0, 0, 0, 0);
  flow->set_gaps(px(8), px(4));
  who_ = add_field(flow, tr("Who"), "look_who", 130, flow_room);
  when_ = add_field(flow, tr("When"), "look_when", 92, flow_room);
  auto* today = new FlatButton(FlatButton::Form::link, tr("Today"), flow_room);
  today->setObjectName(QStringLiteral("look_today"));
  flow->addWidget(today);
  auto* keep = new FlatButton(FlatButton::Form::action, tr("Looked at"), flow_room);
  keep->setObjectName(QStringLiteral("look_keep"));
  flow->addWidget(keep);
  auto* leave = new FlatButton(FlatButton::Form::link, tr("Not now"), flow_room);
  leave->setObjectName(QStringLiteral("look_leave"));
  flow->addWidget(leave);
  outer->addWidget(flow_room);
  wrong_ = words({}, Type::note, theme().flag, this);
  wrong_->setObjectName(QStringLiteral("look_wrong"));
  wrong_->setWordWrap(true);
  wrong_->hide();
  outer->addWidget(wrong_);
  connect(today, &QAbstractButton::clicked, this, [this] {
    when_->setText(QDate::currentDate().toString(Qt::ISODate));
    when_->setFocus();
  });
  connect(keep, &QAbstractButton::clicked, this, &LookForm::answer);
  connect(leave, &QAbstractButton::clicked, this, &LookForm::left);
  connect(who_, &QLineEdit::returnPressed, this, &LookForm::answer);
  connect(when_, &QLineEdit::returnPressed, this, &LookForm::answer);
}

void LookForm::ask(const HoldRow& row) {
  look_at_ = row.look_at;
  constexpr int a_role = 20;  // letters: longer ones say who decides in which case, and are no name
  who_->setText(row.who.size() <= a_role ? row.who : QString());
  when_->clear();
  wrong_->hide();
  who_->setFocus();
  who_->selectAll();
}

// A name and a day, or it is no look.
void LookForm::answer() {
  const QString who = who_->text().trimmed(), when = when_->text().trimmed();
  if (who.isEmpty() || when.isEmpty()) {
    wrong_->setText(who.isEmpty() ? tr("Who looked at it is missing: type a name.")
                                  : tr("The day is missing: type it, or press Today."));
    wrong_->show();
    (who.isEmpty() ? who_ : when_)->setFocus();
    return;
  }
  emit answered(who, when);
}

void LookForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
  emit left();
}

HoldList::HoldList(QWidget* parent) : QWidget(parent), rows_(new QVBoxLayout(this)), form_(new LookForm(this)) {
  setObjectName(QStringLiteral("hold_list"));
  rows_->setContentsMargins(0, 0, 0, 0);
  rows_->setSpacing(px(2));
  form_->hide();
  connect(form_, &LookForm::left, this, [this] { form_->hide(); });
  connect(form_, &LookForm::answered, this, [this](const QString& who, const QString& when) {
    const std::string look_at = form_->look_at();
    form_->hide();
    emit looked(look_at, who, when);
  });
}

void HoldList::show(const std::vector<HoldRow>& rows) {
  if (rows == shown_) return;
  shown_ = rows;
  rows_->removeWidget(form_);
  while (QLayoutItem* item = rows_->takeAt(0)) {
    if (item->widget()) {
      item->widget()->setParent(nullptr);
      item->widget()->deleteLater();  // the tick that was pressed may be in it
    }
    delete item;
  }
  bool asked = false;
  for (const HoldRow& row : shown_) {
    rows_->addWidget(made_row(row));
    if (form_->isHidden() || row.look_at != form_->look_at() || row.seen) continue;
    rows_->addWidget(form_);
    asked = true;
  }
  if (!asked) form_->hide();
}

QWidget* HoldList::made_row(const HoldRow& row) {
  auto* made = new QWidget(this);
  auto* across = new QHBoxLayout(made);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(px(6));
  auto* box = new TickBox(made);
  box->setObjectName(QStringLiteral("hold_tick"));
  box->setChecked(row.seen);
  box->setAccessibleName(row.what);
  across->addWidget(box, 0, Qt::AlignTop);
  auto* text = new QVBoxLayout;
  text->setSpacing(0);
  text->setContentsMargins(0, px(3), 0, px(2));
  const QString what = row.limit.isEmpty() ? row.what : row.what + QStringLiteral(" · ") + row.limit;
  QLabel* name = words(what, Type::text, theme().ink, made);
  name->setWordWrap(true);
  name->setToolTip(plain_tip(row.source));
  text->addWidget(name);
  QString under = row.before.isEmpty() ? QString() : tr("before %1").arg(row.before);
  if (!row.who.isEmpty() && !row.seen) under += (under.isEmpty() ? QString() : QStringLiteral(" · ")) + row.who;
  if (row.seen) under = tr("looked at by %1, %2").arg(row.seen_by, row.seen_when);
  box->setAccessibleDescription(under);
  if (!under.isEmpty()) {
    QLabel* who = words(under, Type::note, row.seen ? theme().good : theme().ink2, made);
    who->setWordWrap(true);
    text->addWidget(who);
  }
  across->addLayout(text, 1);
  connect(box, &QAbstractButton::clicked, this, [this, row, box] { ticked(row, box); });
  return made;
}

void HoldList::ticked(const HoldRow& row, TickBox* box) {
  box->setChecked(row.seen);  // nothing is kept before who and when are known
  if (row.seen) {
    emit taken_back(row.look_at);
    return;
  }
  rows_->removeWidget(form_);
  rows_->insertWidget(rows_->indexOf(box->parentWidget()) + 1, form_);
  form_->show();
  form_->ask(row);
}

}  // namespace ui
