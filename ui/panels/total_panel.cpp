#include "ui/panels/total_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QProgressBar>
#include <QVBoxLayout>

#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/one_line.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

void ink(QLabel* label, QColor colour) {
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, colour);
  label->setPalette(palette);
}

void slant(QLabel* label, bool italic) {
  QFont font = label->font();
  font.setItalic(italic);
  label->setFont(font);
}

constexpr int say_after_ms = 100;
constexpr int bar_after_ms = 1000;
constexpr int stop_after_ms = 5000;

}  // namespace

TotalPanel::TotalPanel(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      label_(new OneLine(this)),
      hours_(new QLabel(this)),
      amount_(new QLabel(this)),
      split_(new OneLine(this)),
      open_row_(new QWidget(this)),
      open_words_(new OneLine(open_row_)),
      go_to_(new FlatButton(FlatButton::Form::link, tr("Go to it"), open_row_)),
      bar_(new QProgressBar(this)),
      stop_(new FlatButton(FlatButton::Form::action, tr("Stop"), this)) {
  setObjectName(QStringLiteral("total_panel"));
  setAccessibleName(tr("Total"));
  add_rows();
  connect(&desk_, &Desk::results_changed, this, &TotalPanel::show_total);
  connect(&desk_, &Desk::job_changed, this, &TotalPanel::show_total);
  connect(&desk_, &Desk::computing_changed, this, [this](bool computing) {
    if (computing) since_.start();
    computing ? tick_.start(say_after_ms) : tick_.stop();
    show_total();
  });
  connect(&tick_, &QTimer::timeout, this, &TotalPanel::show_waiting);
  connect(stop_, &QAbstractButton::clicked, &desk_, &Desk::stop);
  connect(go_to_, &QAbstractButton::clicked, this, &TotalPanel::go_to);
  if (desk_.computing()) {
    since_.start();
    tick_.start(say_after_ms);
  }
  show_total();
}

void TotalPanel::add_rows() {
  label_->setObjectName(QStringLiteral("total_label"));
  hours_->setObjectName(QStringLiteral("total_hours"));
  amount_->setObjectName(QStringLiteral("total_amount"));
  split_->setObjectName(QStringLiteral("total_split"));
  open_words_->setObjectName(QStringLiteral("total_open"));
  go_to_->setObjectName(QStringLiteral("total_go_to"));
  stop_->setObjectName(QStringLiteral("stop"));
  bar_->setObjectName(QStringLiteral("computing_bar"));
  bar_->setRange(0, 0);
  bar_->setTextVisible(false);
  bar_->setFixedHeight(px(6));
  bar_->setAccessibleName(tr("Computing"));
  for (QLabel* label : {label_, hours_, split_}) label->setFont(ui::font(Type::note));
  open_words_->setFont(ui::font(Type::note, true));
  amount_->setFont(ui::font(Type::total, true));
  amount_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(8), px(16), px(8));
  rows->setSpacing(px(2));
  auto* top = new QHBoxLayout;
  top->addWidget(label_, 1);
  top->addWidget(hours_);
  rows->addLayout(top);
  auto* middle = new QHBoxLayout;
  middle->addWidget(amount_);
  middle->addSpacing(px(16));
  middle->addWidget(bar_, 1, Qt::AlignVCenter);
  middle->addWidget(stop_, 0, Qt::AlignVCenter);
  middle->addStretch(1);
  rows->addLayout(middle);
  rows->addSpacing(px(9));  // for the rule
  rows->addStretch(1);
  auto* row = new QHBoxLayout(open_row_);
  row->setContentsMargins(px(22), 0, 0, 0);
  row->addWidget(open_words_, 1);
  row->addWidget(go_to_, 0, Qt::AlignTop);
  rows->addWidget(open_row_);
  rows->addWidget(split_);
}

void TotalPanel::show_total() {
  const ResultsPtr results = desk_.results();
  const plan::Heading& heading = desk_.job().heading;
  open_ = results ? open_of(*results) : Open();
  const bool final = results && results->final();
  amount_->setMinimumHeight(QFontMetrics(amount_->font()).height());
  amount_->setText(results ? shown_money(results->estimate.total.amount(), heading) : QStringLiteral("—"));
  hours_->setText(results ? hours_in_words(results->estimate.total.hours, desk_.job().choices) : QString());
  const QString words = final ? QString() : open_in_words(open_);
  open_words_->setText(words);
  ink(open_words_, theme().flag);
  open_row_->setVisible(!words.isEmpty());
  split_->setVisible(words.isEmpty());  // one or the other: the room is that of the strip
  split_->setAccessibleName(tr("Where the money goes"));
  if (results) {
    const Split parts = split(*results);
    QStringList said_parts{tr("Material %1").arg(shown_money(parts.material, heading)),
                           tr("Labour %1").arg(shown_money(parts.labour, heading))};
    if (parts.machines != units::Money()) said_parts << tr("Machines %1").arg(shown_money(parts.machines, heading));
    if (parts.fees != units::Money()) said_parts << tr("Fees %1").arg(shown_money(parts.fees, heading));
    for (QString& part : said_parts) part.replace(QLatin1Char(' '), QChar::Nbsp);
    split_->setText(said_parts.join(QStringLiteral("   ")));
  } else {
    split_->clear();
  }
  setAccessibleDescription(amount_->text() + QStringLiteral(". ") + words);
  show_waiting();
}

// Old numbers are quiet and slanted from the first moment; the words and the bar wait, so that nothing flickers.
void TotalPanel::show_waiting() {
  const ResultsPtr results = desk_.results();
  const bool computing = desk_.computing();
  const qint64 ms = computing && since_.isValid() ? since_.elapsed() : 0;
  const bool old = computing || (results && results->job != desk_.job_ptr());
  for (QLabel* label : {amount_, hours_, split_}) {
    slant(label, old);
    ink(label, old ? theme().ink3 : label == amount_ ? theme().ink : theme().ink2);
  }
  QString state = !results ? tr("Whole job") : results->final() ? tr("Whole job, finished") : tr("Whole job so far");
  if (computing && ms >= say_after_ms) state = tr("Whole job, computing");
  if (!computing && old) state = tr("Whole job, out of date");
  label_->setText(state);
  ink(label_, !computing && old ? theme().care : theme().ink2);
  bar_->setVisible(computing && ms >= bar_after_ms);
  stop_->setVisible(computing && ms >= stop_after_ms);
  update();
}

void TotalPanel::go_to() {
  if (open_.first_line >= 0) {
    emit wanted_line(open_.first_line);
  } else if (open_.problem) {
    emit wanted_problem();
    desk_.go_to(open_.problem->place);
  }
}

void TotalPanel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const ResultsPtr results = desk_.results();
  if (open_row_->isVisible())
    paint_icon(painter, QStringLiteral("solve"),
               QRectF(open_row_->x(), open_row_->y() + (open_row_->height() - px(16)) / 2.0, px(16), px(16)),
               theme().flag);
  if (!results) return;
  const QRect under = amount_->geometry();
  const int y = under.bottom() + px(2);
  if (results->final()) {
    painter.fillRect(QRect(under.left(), y, under.width(), px(2)), theme().ink);
    painter.fillRect(QRect(under.left(), y + px(4), under.width(), 1), theme().ink);
    return;
  }
  painter.setPen(QPen(theme().flag, px(2), Qt::CustomDashLine));
  QPen pen(theme().flag, px(2));
  pen.setDashPattern({3, 2});
  pen.setCapStyle(Qt::FlatCap);
  painter.setPen(pen);
  painter.drawLine(under.left(), y + px(2), under.right(), y + px(2));
}

}  // namespace ui
