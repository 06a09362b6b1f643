#include "ui/office/order_form.h"

#include <QComboBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <QWheelEvent>

#include "ui/look/theme.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/length_field.h"

namespace ui {

namespace {

// A list that the wheel leaves alone: one scrolls past it.
class StillList : public QComboBox {
 public:
  using QComboBox::QComboBox;

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

class LongWords : public QPlainTextEdit {
 public:
  LongWords(std::function<void(const QPlainTextEdit*)> given, QWidget* parent)
      : QPlainTextEdit(parent), given_(std::move(given)) {
    setTabChangesFocus(true);
  }

 protected:
  void focusOutEvent(QFocusEvent* event) override {
    QPlainTextEdit::focusOutEvent(event);
    given_(this);
  }

 private:
  std::function<void(const QPlainTextEdit*)> given_;
};

bool alike(const Field& a, const Field& b) {
  const auto same = [](const Choice& c, const Choice& d) { return c.key == d.key && c.label == d.label; };
  return a.id == b.id && a.label == b.label && a.group == b.group && a.editor == b.editor &&
         std::ranges::equal(a.choices, b.choices, same);
}

QLabel* label(const QString& words, QWidget* parent, Type type, bool bold, QColor ink) {
  auto* made = new QLabel(words, parent);
  made->setFont(ui::font(type, bold));
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  QPalette palette = made->palette();
  palette.setColor(QPalette::WindowText, ink);
  made->setPalette(palette);
  return made;
}

QString name_of(const Field& shape) {
  return shape.group.isEmpty() ? shape.label : shape.group + QStringLiteral(", ") + shape.label;
}

// The place of a value among the choices; -1: none of them.
int place_of(const Field& field, const Value& value) {
  if (const auto* whole = std::get_if<std::int64_t>(&value)) return static_cast<int>(*whole);
  const auto* key = std::get_if<std::string>(&value);
  for (std::size_t i = 0; key && i < field.choices.size(); ++i)
    if (field.choices[i].key == *key) return static_cast<int>(i);
  return -1;
}

}  // namespace

OrderForm::OrderForm(units::System units, Given given, QWidget* parent)
    : QWidget(parent), units_(units), given_(std::move(given)), rows_(new QVBoxLayout(this)) {
  rows_->setContentsMargins(0, 0, 0, 0);
}

QWidget* OrderForm::input(const std::string& id) const {
  for (const Row& row : all_)
    if (row.field.shape.id == id) return row.input;
  return nullptr;
}

void OrderForm::show_order(const estimate::ChangeInput& input, std::vector<OrderField> fields,
                           const std::map<std::string, QString>& faults) {
  faults_ = faults;
  const auto same = [](const OrderField& field, const Row& row) { return alike(field.shape, row.field.shape); };
  if (!std::ranges::equal(fields, all_, same)) {
    make(std::move(fields));
  } else {
    for (std::size_t i = 0; i < fields.size(); ++i) all_[i].field = std::move(fields[i]);
  }
  for (const Row& row : all_) {
    show_value(row, row.field.get(input));
    const auto fault = faults_.find(row.field.shape.id);
    show_fault(row, !row.refused.isEmpty() ? row.refused : fault == faults_.end() ? QString() : fault->second);
  }
}

void OrderForm::make(std::vector<OrderField> fields) {
  std::string in_hand;
  for (const Row& row : all_) {
    if (row.input->hasFocus()) in_hand = row.field.shape.id;
    row.input->disconnect(this);  // what it says from now on is of another form
  }
  all_.clear();
  if (body_) {  // it may be in the middle of telling us: it goes when it is done
    rows_->removeWidget(body_);
    body_->hide();
    body_->deleteLater();
  }
  body_ = new QWidget(this);
  auto* column = new QVBoxLayout(body_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(px(4));
  for (OrderField& field : fields) {
    all_.push_back({std::move(field), nullptr, nullptr, {}});
    const std::size_t row = all_.size() - 1;
    all_[row].input = make_input(row);
    lay(column, row);
    if (row > 0) setTabOrder(all_[row - 1].input, all_[row].input);
  }
  rows_->addWidget(body_, 0, Qt::AlignTop);
  body_->show();
  if (QWidget* again = input(in_hand)) again->setFocus();
}

QWidget* OrderForm::make_input(std::size_t row) {
  const Field& shape = all_[row].field.shape;
  QWidget* made = nullptr;
  if (shape.editor == Editor::yes_no) {
    auto* box = new TickBox(body_);
    box->setCheckable(true);
    connect(box, &QAbstractButton::toggled, this, [this, row](bool on) { give(row, on); });
    made = box;
  } else if (shape.editor == Editor::action) {
    auto* button = new FlatButton(FlatButton::Form::action, shape.label, body_);
    connect(button, &QAbstractButton::clicked, this, [this, row] { give(row, {}); });
    made = button;
  } else if (shape.editor == Editor::words) {
    made = make_words(row);
  } else {
    made = shape.editor == Editor::long_text ? make_long_text(row) : make_typed(row);
  }
  made->setObjectName("order/" + QString::fromStdString(shape.id));
  made->setAccessibleName(name_of(shape));
  return made;
}

QWidget* OrderForm::make_typed(std::size_t row) {
  const Field& shape = all_[row].field.shape;
  auto* line = new TypedField(typing_of(shape, units_), body_);
  line->setMinimumHeight(px(28));
  line->setPlaceholderText(shape.otherwise);
  if (!FieldEditor::is_wide(shape)) line->setAlignment(Qt::AlignRight);
  connect(line, &TypedField::given, this, [this, row](const Value& value) { give(row, value); });
  connect(line, &TypedField::refused, this, [this, row](const QString& sentence) {
    all_[row].refused = sentence;
    show_fault(all_[row], sentence);
  });
  return line;
}

QWidget* OrderForm::make_words(std::size_t row) {
  auto* list = new StillList(body_);
  list->setFont(ui::font(Type::text));
  list->setMinimumHeight(px(28));
  list->setFocusPolicy(Qt::StrongFocus);
  list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  list->setMinimumContentsLength(6);
  for (const Choice& choice : all_[row].field.shape.choices) list->addItem(choice.label);
  connect(list, &QComboBox::activated, this, [this, row](int at) {
    const Field& shape = all_[row].field.shape;
    const auto number = static_cast<std::size_t>(at);
    if (number >= shape.choices.size()) return;
    give(row, shape.by_order ? Value(static_cast<std::int64_t>(at)) : Value(shape.choices[number].key));
  });
  return list;
}

QWidget* OrderForm::make_long_text(std::size_t row) {
  auto* text = new LongWords(
      [this, row](const QPlainTextEdit* from) {  // one of an older form is on its way out
        if (row < all_.size() && all_[row].input == from) give(row, from->toPlainText().toStdString());
      },
      body_);
  text->setFont(ui::font(Type::text));
  text->setFixedHeight(px(76));
  return text;
}

void OrderForm::lay(QVBoxLayout* column, std::size_t row) {
  Row& one = all_[row];
  const Field& shape = one.field.shape;
  if (!shape.group.isEmpty()) {
    QLabel* heading = label(shape.group, body_, Type::text, true, theme().ink);
    heading->setContentsMargins(0, row == 0 ? 0 : px(10), 0, px(2));
    column->addWidget(heading);
  }
  one.fault = label({}, body_, Type::note, false, theme().flag);
  one.fault->setObjectName("order-fault/" + QString::fromStdString(shape.id));
  one.fault->hide();
  if (shape.editor == Editor::action) {
    column->addWidget(one.input, 0, Qt::AlignLeft);
    return;
  }
  const bool wide = FieldEditor::is_wide(shape), tick = shape.editor == Editor::yes_no;
  QLabel* words = label(shape.label, body_, wide ? Type::note : Type::text, false, theme().ink2);
  words->setBuddy(one.input);
  if (wide) {
    column->addWidget(words);
    column->addWidget(one.input);
  } else {
    auto* line = new QHBoxLayout;
    line->setSpacing(px(8));
    if (tick) line->addWidget(one.input);
    line->addWidget(words, 1);
    if (!tick) line->addWidget(one.input);
    one.input->setFixedWidth(tick ? px(24) : shape.editor == Editor::words ? px(168) : px(112));
    column->addLayout(line);
  }
  column->addWidget(one.fault);
}

void OrderForm::show_value(const Row& row, const Value& value) {
  const QSignalBlocker quiet(row.input);
  const auto* words = std::get_if<std::string>(&value);
  if (auto* line = qobject_cast<TypedField*>(row.input)) {
    line->set_value(value);
  } else if (auto* box = qobject_cast<TickBox*>(row.input)) {
    const bool* on = std::get_if<bool>(&value);
    box->setChecked(on && *on);
  } else if (auto* list = qobject_cast<QComboBox*>(row.input)) {
    list->setCurrentIndex(place_of(row.field.shape, value));
  } else if (auto* text = qobject_cast<QPlainTextEdit*>(row.input)) {
    const QString shown = words ? QString::fromStdString(*words) : QString();
    if (!text->hasFocus() && text->toPlainText() != shown) text->setPlainText(shown);
  }
}

void OrderForm::show_fault(const Row& row, const QString& sentence) {
  row.fault->setText(sentence);
  row.fault->setVisible(!sentence.isEmpty());
  row.input->setAccessibleName(sentence.isEmpty() ? name_of(row.field.shape)
                                                  : name_of(row.field.shape) + QStringLiteral(": ") + sentence);
}

void OrderForm::give(std::size_t row, const Value& value) {
  if (row >= all_.size()) return;
  for (Row& one : all_) one.refused.clear();  // what could not be is history once something else is given
  given_(OrderField(all_[row].field), value);
}

}  // namespace ui
