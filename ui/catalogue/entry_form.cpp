#include "ui/catalogue/entry_form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/catalogue/entry_making.h"
#include "ui/look/theme.h"

namespace ui {

namespace {

bool alike(const EntryField& a, const EntryField& b) {
  const auto same = [](const Choice& c, const Choice& d) { return c.key == d.key && c.label == d.label; };
  return a.look.id == b.look.id && a.look.label == b.look.label && a.look.group == b.look.group &&
         a.look.editor == b.look.editor && bool(a.typing.read) == bool(b.typing.read) &&
         std::ranges::equal(a.look.choices, b.look.choices, same);
}

QLabel* words_of(const QString& text, QWidget* parent, bool bold, const QColor& colour) {
  auto* made = new QLabel(text, parent);
  made->setFont(ui::font(Type::text, bold));
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  QPalette palette = made->palette();
  palette.setColor(QPalette::WindowText, colour);
  made->setPalette(palette);
  return made;
}

int width_of(const Field& look) {
  if (look.editor == Editor::yes_no) return px(24);
  return look.editor == Editor::words ? px(190) : px(120);
}

}  // namespace

CatalogueForm::CatalogueForm(const catalogue::Stock& stock, QWidget* parent) : QWidget(parent), stock_(stock) {
  rows_ = new QVBoxLayout(this);
  rows_->setContentsMargins(0, 0, 0, 0);
}

EntryEditor* CatalogueForm::editor(const std::string& id) const {
  for (const Row& row : editors_)
    if (row.editor->field().look.id == id) return row.editor;
  return nullptr;
}

std::string CatalogueForm::blamed_for(const std::string& code) const {
  for (const Row& row : editors_)
    if (std::ranges::find(row.editor->field().faults, code) != row.editor->field().faults.end())
      return row.editor->field().look.id;
  return {};
}

void CatalogueForm::show_fault(const std::string& field, const QString& sentence) {
  for (const Row& row : editors_) {
    if (row.editor->field().look.id != field) continue;
    row.fault->setText(sentence);
    row.fault->setVisible(!sentence.isEmpty());
    row.editor->input()->setAccessibleDescription(sentence);
  }
}

void CatalogueForm::clear_faults() {
  for (const Row& row : editors_) show_fault(row.editor->field().look.id, {});
}

void CatalogueForm::show_nothing() { make({}); }

void CatalogueForm::settle() {
  for (const Row& row : std::vector<Row>(editors_))
    if (row.editor->input()->hasFocus()) return row.editor->input()->clearFocus();
}

void CatalogueForm::show_entry(const Entry& entry, const Around& around) {
  std::vector<EntryField> fields = fields_of(entry, around);
  const auto same = [](const EntryField& field, const Row& row) { return alike(field, row.editor->field()); };
  system_ = around.system;
  if (!std::ranges::equal(fields, editors_, same)) make(fields);
  for (std::size_t i = 0; i < fields.size(); ++i) editors_[i].editor->show_value(std::move(fields[i]), entry);
}

void CatalogueForm::make(std::vector<EntryField> fields) {
  std::string in_hand;
  for (const Row& row : editors_)
    if (row.editor->input()->hasFocus()) in_hand = row.editor->field().look.id;
  editors_.clear();
  if (body_) {  // it may be in the middle of telling us: it goes when it is done
    rows_->removeWidget(body_);
    body_->hide();
    for (QWidget* child : body_->findChildren<QWidget*>()) child->disconnect(this);
    body_->deleteLater();
  }
  body_ = new QWidget(this);
  auto* column = new QVBoxLayout(body_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(px(4));
  rows_->addWidget(body_, 0, Qt::AlignTop);
  for (EntryField& field : fields) {
    if (!field.look.group.isEmpty()) add_heading(field.look.group);
    auto* editor = new EntryEditor(std::move(field), stock_, system_, body_);
    const QString id = QString::fromStdString(editor->field().look.id);
    auto* fault = words_of({}, body_, true, theme().flag);
    fault->setObjectName("fault/" + id);
    fault->hide();
    connect(editor, &EntryEditor::given, this, [this, id](const Value& value) { emit given(id, value); });
    connect(editor, &EntryEditor::refused, this,
            [this, id](const QString& sentence) { show_fault(id.toStdString(), sentence); });
    editors_.push_back({editor, fault});
    column->addWidget(make_row(editor));
    column->addWidget(fault);
  }
  for (std::size_t i = 1; i < editors_.size(); ++i)
    setTabOrder(editors_[i - 1].editor->input(), editors_[i].editor->input());
  body_->show();
  if (EntryEditor* again = editor(in_hand)) again->input()->setFocus();
}

void CatalogueForm::add_heading(const QString& words) {
  QLabel* heading = words_of(words, body_, true, theme().ink);
  heading->setContentsMargins(0, editors_.empty() ? 0 : px(10), 0, px(2));
  body_->layout()->addWidget(heading);
}

QWidget* CatalogueForm::make_row(EntryEditor* editor) {
  const Field& look = editor->field().look;
  auto* row = new QWidget(body_);
  if (look.editor == Editor::action) {
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(editor);
    line->addStretch(1);
    return row;
  }
  QLabel* label = words_of(look.label, row, false, theme().ink2);
  label->setBuddy(editor->input());
  if (EntryEditor::is_wide(look)) {
    auto* lines = new QVBoxLayout(row);
    lines->setContentsMargins(0, 0, 0, px(2));
    lines->setSpacing(px(2));
    label->setFont(ui::font(Type::note));
    lines->addWidget(label);
    lines->addWidget(editor);
    row->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    return row;
  }
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(px(8));
  const bool tick = look.editor == Editor::yes_no;
  if (look.editor != Editor::told) editor->setFixedWidth(width_of(look));
  if (tick) line->addWidget(editor);
  line->addWidget(label, 1);
  if (!tick) line->addWidget(editor);
  row->setMinimumHeight(px(28));
  return row;
}

}  // namespace ui
