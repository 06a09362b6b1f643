#include "ui/panels/field_form.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/look/theme.h"

namespace ui {

namespace {

bool alike(const Field& a, const Field& b) {
  const auto same = [](const Choice& c, const Choice& d) { return c.key == d.key && c.label == d.label; };
  return a.id == b.id && a.label == b.label && a.group == b.group && a.editor == b.editor && a.fits == b.fits &&
         std::ranges::equal(a.choices, b.choices, same);
}

QLabel* label(const QString& words, QWidget* parent) {
  auto* made = new QLabel(words, parent);
  made->setFont(ui::font(Type::text));
  made->setWordWrap(true);
  QPalette palette = made->palette();
  palette.setColor(QPalette::WindowText, theme().ink2);
  made->setPalette(palette);
  return made;
}

// A button at the left, as wide as its words.
QWidget* left(QWidget* button, QWidget* parent) {
  auto* row = new QWidget(parent);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(button);
  line->addStretch(1);
  return row;
}

// How wide the input beside its label is.
int width_of(const Field& field) {
  switch (field.editor) {
    case Editor::words: return px(168);
    case Editor::yes_no: return px(22);
    case Editor::told: return px(96);
    default: return px(96);
  }
}

}  // namespace

FieldForm::FieldForm(Desk& desk, const Source& book, QWidget* parent) : QWidget(parent), desk_(desk), book_(book) {
  rows_ = new QVBoxLayout(this);
  rows_->setContentsMargins(0, 0, 0, 0);
}

FieldEditor* FieldForm::editor(const std::string& id) const {
  for (FieldEditor* editor : editors_)
    if (editor->field().id == id) return editor;
  return nullptr;
}

void FieldForm::show_fields(std::vector<Field> fields) {
  const auto same = [](const Field& field, const FieldEditor* editor) { return alike(field, editor->field()); };
  if (!std::ranges::equal(fields, editors_, same)) return make(std::move(fields));
  for (std::size_t i = 0; i < fields.size(); ++i) editors_[i]->show_field(std::move(fields[i]));
}

void FieldForm::make(std::vector<Field> fields) {
  std::string in_hand;
  for (const FieldEditor* editor : editors_)
    if (editor->input()->hasFocus()) in_hand = editor->field().id;
  // What is being typed is taken now, not while its field is on its way out.
  if (FieldEditor* typing = editor(in_hand)) typing->input()->clearFocus();
  editors_.clear();
  if (body_) {  // it may be in the middle of telling us: it goes when it is done
    rows_->removeWidget(body_);
    body_->hide();
    body_->deleteLater();
  }
  body_ = new QWidget(this);
  auto* column = new QVBoxLayout(body_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(px(4));
  rows_->addWidget(body_, 0, Qt::AlignTop);
  for (Field& field : fields) {
    if (!field.group.isEmpty()) add_heading(field.group);
    auto* editor = new FieldEditor(desk_, book_, std::move(field), body_);
    editors_.push_back(editor);
    column->addWidget(make_row(editor));
  }
  for (std::size_t i = 1; i < editors_.size(); ++i) setTabOrder(editors_[i - 1]->input(), editors_[i]->input());
  body_->show();
  if (FieldEditor* again = editor(in_hand)) again->input()->setFocus();
}

void FieldForm::add_heading(const QString& words) {
  QLabel* heading = label(words, body_);
  heading->setFont(ui::font(Type::text, true));
  heading->setContentsMargins(0, editors_.empty() ? 0 : px(10), 0, px(2));
  QPalette palette = heading->palette();
  palette.setColor(QPalette::WindowText, theme().ink);
  heading->setPalette(palette);
  body_->layout()->addWidget(heading);
}

QWidget* FieldForm::make_row(FieldEditor* editor) {
  const Field& field = editor->field();
  if (field.editor == Editor::action) return left(editor, body_);
  auto* row = new QWidget(body_);
  QLabel* words = label(field.label, row);
  words->setBuddy(editor->input());
  if (FieldEditor::is_wide(field)) {
    auto* lines = new QVBoxLayout(row);
    lines->setContentsMargins(0, 0, 0, px(2));
    lines->setSpacing(px(2));
    words->setFont(ui::font(Type::note));
    lines->addWidget(words);
    lines->addWidget(editor);
    row->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    return row;
  }
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(px(8));
  editor->setFixedWidth(width_of(field));
  const bool tick = field.editor == Editor::yes_no;
  if (tick) line->addWidget(editor);
  line->addWidget(words, 1);
  if (!tick) line->addWidget(editor);
  row->setMinimumHeight(px(28));
  return row;
}

}  // namespace ui
