#include "ui/panels/prompt_note.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/flow_layout.h"
#include "ui/panels/one_line.h"

namespace ui {

PromptNote::PromptNote(const QString& name, QWidget* parent)
    : QWidget(parent), words_(new OneLine(this)), close_(new FlatButton(FlatButton::Form::quiet, tr("Close"), this)) {
  setObjectName(name);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(px(40), px(2), px(8), px(2));
  auto* middle = new QWidget(this);
  flow_ = new FlowLayout(middle);
  flow_->setContentsMargins(0, 0, 0, 0);
  flow_->set_gaps(px(10), 0);
  flow_->set_least_row(px(26));
  words_->setFont(ui::font(Type::text));
  flow_->addWidget(words_);
  row->addWidget(middle, 1);
  close_->setObjectName(name + QStringLiteral("_close"));
  close_->set_picture(QStringLiteral("close"));
  close_->setAccessibleName(tr("Close this sentence"));
  close_->setToolTip(close_->accessibleName());
  row->addWidget(close_, 0, Qt::AlignTop);
  hide();
  connect(close_, &QAbstractButton::clicked, this, [this] {
    hide();
    emit closed();
  });
}

void PromptNote::set_closable(bool closable) { close_->setVisible(closable); }

QString PromptNote::told() const { return isHidden() ? QString() : words_->text(); }

void PromptNote::tell(const QString& sentence) {
  words_->setText(sentence);
  setAccessibleName(sentence);
  QPalette palette = words_->palette();
  palette.setColor(QPalette::WindowText, grave_ ? theme().flag : theme().ink);
  words_->setPalette(palette);
  setVisible(!sentence.isEmpty());
  updateGeometry();
}

void PromptNote::add_link(const QString& words, const QString& id) {
  auto* link = new FlatButton(FlatButton::Form::link, words, this);
  link->setObjectName(QStringLiteral("try_") + id);
  flow_->addWidget(link);
  connect(link, &QAbstractButton::clicked, this, [this, id] { emit followed(id); });
}

void PromptNote::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), grave_ ? theme().flag_wash : theme().raised);
  painter.fillRect(QRect(0, 0, width(), 1), theme().line);
  if (grave_) paint_icon(painter, QStringLiteral("solve"), QRectF(px(14), px(6), px(18), px(18)), theme().flag);
}

}  // namespace ui
