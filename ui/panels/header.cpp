#include "ui/panels/header.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMenuBar>
#include <QPainter>
#include <algorithm>

#include "ui/look/plain_tip.h"
#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/words/words.h"

namespace ui {

namespace {

constexpr int mark_width = 40;  // with its margins

// Three courses, each set back from the one below; the middle one is being laid.
void paint_mark(QPainter& painter, QRectF room) {
  const double high = room.height() / 4;
  const auto course = [&](double from, double to, double row, QColor colour) {
    painter.fillRect(QRectF(room.left() + room.width() * from, room.top() + row * (high + high / 2),
                            room.width() * (to - from), high),
                     colour);
  };
  course(0.40, 1.00, 0, theme().ink);
  course(0.15, 0.90, 1, theme().chalk);
  course(0.00, 1.00, 2, theme().ink);
}

}  // namespace

Header::Header(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      menu_room_(new QWidget(this)),
      name_(new QLabel(this)),
      version_(new QLabel(this)),
      undo_(new FlatButton(FlatButton::Form::quiet, tr("Undo"), this)),
      redo_(new FlatButton(FlatButton::Form::quiet, tr("Redo"), this)),
      save_(new FlatButton(FlatButton::Form::action, tr("Save a version"), this)),
      print_(new FlatButton(FlatButton::Form::action, tr("Print sheets"), this)) {
  setObjectName(QStringLiteral("header"));
  setAccessibleName(tr("Header"));
  undo_->setObjectName(QStringLiteral("undo"));
  redo_->setObjectName(QStringLiteral("redo"));
  save_->setObjectName(QStringLiteral("save_version"));
  print_->setObjectName(QStringLiteral("print_sheets"));
  undo_->set_picture(QStringLiteral("undo"));
  redo_->set_picture(QStringLiteral("redo"));
  save_->set_picture(QStringLiteral("save-version"));
  print_->set_picture(QStringLiteral("sheets"));
  name_->setObjectName(QStringLiteral("job_name"));
  name_->setFont(ui::font(Type::text, true));
  name_->setTextFormat(Qt::PlainText);
  version_->setObjectName(QStringLiteral("version_state"));
  version_->setFont(ui::font(Type::note));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(px(mark_width), 0, px(16), 1);
  row->setSpacing(px(8));
  auto* menu_row = new QHBoxLayout(menu_room_);
  menu_row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(menu_room_);
  row->addStretch(1);
  row->addWidget(name_, 0);
  row->addWidget(version_, 0);
  row->addStretch(1);
  for (FlatButton* each : {undo_, redo_}) row->addWidget(each);
  row->addSpacing(px(8));
  for (FlatButton* each : {save_, print_}) row->addWidget(each);
  setFixedHeight(px(44));
  connect(undo_, &QAbstractButton::clicked, this, &Header::wanted_undo);
  connect(redo_, &QAbstractButton::clicked, &desk_, &Desk::redo);
  connect(save_, &QAbstractButton::clicked, this, &Header::wanted_save);
  connect(print_, &QAbstractButton::clicked, this, &Header::wanted_print);
  connect(&desk_, &Desk::job_changed, this, &Header::show_job);
  state_ = tr("working copy");
  allow_save(false);
  show_job();
}

void Header::set_menu(QMenuBar* menu) {
  menu->setParent(menu_room_);
  menu->setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Preferred);
  static_cast<QHBoxLayout*>(menu_room_->layout())->addWidget(menu, 0, Qt::AlignVCenter);
}

void Header::set_version_state(const QString& state) {
  state_ = state;
  show_job();
}

void Header::allow_save(bool allowed) {
  save_->setEnabled(allowed);
  save_->setToolTip(allowed ? QString() : tr("Saved versions come with the job book. Every edit is kept already."));
}

// A long name gives way to the menus and buttons; its tooltip has all of it.
void Header::show_job() {
  const QString name = QString::fromStdString(desk_.job().heading.name);
  const QString shown = name.isEmpty() ? tr("Job without a name") : name;
  int taken = px(mark_width + 16 + 8 * 8);
  for (const QWidget* each : {menu_room_, static_cast<QWidget*>(undo_), static_cast<QWidget*>(redo_),
                              static_cast<QWidget*>(save_), static_cast<QWidget*>(print_)})
    taken += each->sizeHint().width();
  const int room = std::max(width() - taken, px(60));
  const QFontMetrics metrics(name_->font());
  version_->setText(state_);
  QPalette palette = version_->palette();
  palette.setColor(QPalette::WindowText, theme().ink2);
  version_->setPalette(palette);
  const int state_room = version_->sizeHint().width() + px(8);
  const bool both = std::min(metrics.horizontalAdvance(shown), px(160)) + state_room <= room;
  version_->setVisible(both);
  name_->setText(metrics.elidedText(shown, Qt::ElideRight, both ? room - state_room : room));
  name_->setToolTip(plain_tip(shown + QStringLiteral(" · ") + state_));
  name_->setAccessibleName(shown + QStringLiteral(", ") + state_);
  show_steps();
}

void Header::show_steps() {
  const plan::History& history = desk_.history();
  const auto set = [](FlatButton* button, bool can, const QString& words) {
    button->setEnabled(can);
    button->setAccessibleName(words);
    button->setToolTip(words);
  };
  set(undo_, history.can_undo(),
      history.can_undo() ? tr("Undo %1").arg(said(history.undo_name())) : tr("Nothing to undo"));
  set(redo_, history.can_redo(),
      history.can_redo() ? tr("Redo %1").arg(said(history.redo_name())) : tr("Nothing to redo"));
}

void Header::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  show_job();
}

void Header::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), theme().panel);
  painter.fillRect(QRect(0, height() - 1, width(), 1), theme().rule);
  paint_mark(painter, QRectF(px(14), (height() - px(18)) / 2.0, px(22), px(18)));
}

}  // namespace ui
