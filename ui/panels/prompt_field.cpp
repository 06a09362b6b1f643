#include "ui/panels/prompt_field.h"

#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>

#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

void colour(QWidget* widget, QColor ink) {
  QPalette palette = widget->palette();
  palette.setColor(QPalette::WindowText, ink);
  widget->setPalette(palette);
}

}  // namespace

PromptField::PromptField(const QString& id, QWidget* parent)
    : QWidget(parent), id_(id), label_(new QLabel(this)), edit_(new QLineEdit(this)), echo_(new QLabel(this)) {
  setObjectName(QStringLiteral("prompt_") + id);
  edit_->setObjectName(QStringLiteral("field_") + id);
  edit_->setFont(ui::font(Type::text));
  edit_->setFixedSize(px(84), px(28));
  label_->setFont(ui::font(Type::note));
  label_->setBuddy(edit_);
  colour(label_, theme().ink2);
  echo_->setFont(ui::font(Type::small));
  echo_->setObjectName(QStringLiteral("echo_") + id);
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(px(6));
  grid->setVerticalSpacing(0);
  grid->addWidget(label_, 0, 0);
  grid->addWidget(edit_, 0, 1);
  grid->addWidget(echo_, 1, 0, 1, 2, Qt::AlignRight);
  edit_->installEventFilter(this);
  setFocusProxy(edit_);
  connect(edit_, &QLineEdit::textEdited, this, [this](const QString& text) {
    typing_ = true;
    locked_ = false;
    emit typed(text, false);
  });
}

void PromptField::show(const sketch::Field& field) {
  const QString text = QString::fromStdString(field.text);
  label_->setText(said(field.label));
  edit_->setAccessibleName(label_->text());
  if (text != edit_->text()) {
    typing_ = false;
    edit_->setText(text);
    if (edit_->hasFocus()) edit_->selectAll();  // the pointer's figure: typing takes its place
  }
  wrong_ = field.wrong;
  locked_ = field.locked;
  const QString read = QString::fromStdString(field.understood);
  const QString shown = wrong_ ? tr("not read") : locked_ ? tr("holds: %1").arg(read.isEmpty() ? text : read) : read;
  echo_->setText(shown);
  colour(echo_, wrong_ ? theme().flag : theme().ink2);
  edit_->setAccessibleDescription(wrong_ ? tr("Not read. %1").arg(said(field.understood)) : shown);
  edit_->setToolTip(wrong_ ? said(field.understood) : QString());
  update();
}

void PromptField::begin(const QString& text) {
  edit_->setFocus(Qt::OtherFocusReason);
  edit_->setText(text);
  edit_->setCursorPosition(static_cast<int>(text.size()));
  typing_ = true;
  emit typed(text, false);
}

bool PromptField::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn && !typing_) edit_->selectAll();
  if (event->type() == QEvent::FocusOut) update();
  // Undo takes back what was typed; with nothing typed it is the window's.
  if (event->type() == QEvent::ShortcutOverride && !typing_ && static_cast<QKeyEvent*>(event) == QKeySequence::Undo) {
    event->ignore();
    return true;
  }
  if (event->type() == QEvent::KeyPress && take(*static_cast<QKeyEvent*>(event))) return true;
  return QWidget::eventFilter(watched, event);
}

// Tab and Enter lock what was typed; Tab goes on to the next field, Enter is then Enter for the tool.
bool PromptField::take(QKeyEvent& event) {
  const int key = event.key();
  const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
  if (key == Qt::Key_Escape || (key == Qt::Key_Backspace && !typing_)) {
    typing_ = false;
    emit keyed(key == Qt::Key_Escape ? sketch::Key::escape : sketch::Key::back);
    return true;
  }
  if (enter && (locked_ || !typing_)) {
    emit entered();
    return true;
  }
  if (!enter && (key != Qt::Key_Tab || !typing_ || locked_)) return false;
  locked_ = true;
  emit typed(edit_->text(), true);
  if (enter) emit entered();
  return enter;
}

// What was not read has a heavy border as well as the word under it.
void PromptField::paintEvent(QPaintEvent*) {
  if (!wrong_) return;
  QPainter painter(this);
  painter.setPen(QPen(theme().flag, 2));
  painter.drawRect(edit_->geometry().adjusted(-1, -1, 1, 1));
}

}  // namespace ui
