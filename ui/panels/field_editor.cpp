#include "ui/panels/field_editor.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QSignalBlocker>

#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/item_choice.h"
#include "ui/panels/length_field.h"

namespace ui {

namespace {

// A list that the wheel moves only while it has the keyboard: one scrolls past it without changing the job.
class CalmList : public QComboBox {
 public:
  using QComboBox::QComboBox;

 protected:
  void wheelEvent(QWheelEvent* event) override {
    if (hasFocus())
      QComboBox::wheelEvent(event);
    else
      event->ignore();
  }
};

class LongText : public QPlainTextEdit {
 public:
  LongText(std::function<void(const QString&)> given, QWidget* parent)
      : QPlainTextEdit(parent), given_(std::move(given)) {
    setTabChangesFocus(true);
  }

 protected:
  void focusOutEvent(QFocusEvent* event) override {
    QPlainTextEdit::focusOutEvent(event);
    given_(toPlainText());
  }

 private:
  std::function<void(const QString&)> given_;
};

// Which of the choices a value is: words by their key, enums by their order. -1: none of them.
int number_of(const Field& field, const Value& value) {
  if (const auto* whole = std::get_if<std::int64_t>(&value)) return static_cast<int>(*whole);
  const auto* key = std::get_if<std::string>(&value);
  for (std::size_t i = 0; key && i < field.choices.size(); ++i)
    if (field.choices[i].key == *key) return static_cast<int>(i);
  return -1;
}

}  // namespace

FieldEditor::FieldEditor(Desk& desk, const Source& book, Field field, QWidget* parent)
    : QWidget(parent), desk_(desk), book_(book), field_(std::move(field)), units_(desk.units()) {
  setObjectName("editor/" + QString::fromStdString(field_.id));
  input_ = make();
  input_->setObjectName("field/" + QString::fromStdString(field_.id));
  input_->setAccessibleName(field_.group.isEmpty() ? field_.label : field_.group + ", " + field_.label);
  setFocusProxy(input_);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(input_);
  refresh();
}

bool FieldEditor::is_wide(const Field& field) {
  // Words that would not fit beside their label; in large type none do.
  if (field.editor == Editor::words && type_factor() > 1.25) return true;
  const QFontMetrics metrics(ui::font(Type::text));
  for (const Choice& choice : field.choices)
    if (metrics.horizontalAdvance(choice.label) > px(128)) return true;
  return field.editor == Editor::item || field.editor == Editor::build_up || field.editor == Editor::pattern ||
         field.editor == Editor::text || field.editor == Editor::long_text;
}

QWidget* FieldEditor::make() {
  switch (field_.editor) {
    case Editor::yes_no: {
      auto* box = new TickBox(this);
      box->setCheckable(true);
      connect(box, &QAbstractButton::toggled, this, [this](bool on) { give(on); });
      return box;
    }
    case Editor::words: return make_words();
    case Editor::item:
    case Editor::build_up:
    case Editor::pattern: return make_choice();
    case Editor::long_text: return make_long_text();
    case Editor::action: return make_action();
    case Editor::told: return make_told();
    default: return make_typed();
  }
}

QWidget* FieldEditor::make_typed() {
  auto* line = new TypedField(typing_of(field_, units_), this);
  line->setMinimumHeight(px(28));
  if (!is_wide(field_)) line->setAlignment(Qt::AlignRight);
  if (field_.may_be_empty)
    line->setPlaceholderText(field_.otherwise.isEmpty() ? Fields::tr("not given") : field_.otherwise);
  connect(line, &TypedField::given, this, &FieldEditor::give);
  connect(line, &TypedField::refused, this, [this](const QString& sentence) { desk_.say(sentence); });
  return line;
}

QWidget* FieldEditor::make_told() {
  auto* told = new QLabel(this);
  told->setFont(ui::font(Type::text));
  told->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  return told;
}

QWidget* FieldEditor::make_words() {
  auto* list = new CalmList(this);
  list->setFont(ui::font(Type::text));
  list->setMinimumHeight(px(28));
  list->setFocusPolicy(Qt::StrongFocus);
  list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  list->setMinimumContentsLength(6);
  for (const Choice& choice : field_.choices) list->addItem(choice.label, QString::fromStdString(choice.key));
  if (field_.may_be_empty) list->addItem(Fields::tr("None"), QString());
  connect(list, &QComboBox::activated, this, [this](int at) {
    const auto number = static_cast<std::size_t>(at);
    if (number >= field_.choices.size())
      return number == field_.choices.size() && field_.may_be_empty ? give({}) : refresh();
    give(field_.by_order ? Value(static_cast<std::int64_t>(at)) : Value(field_.choices[number].key));
  });
  return list;
}

QWidget* FieldEditor::make_choice() {
  auto* choice = new ItemChoice(this);
  connect(choice, &ItemChoice::given, this, [this](const QString& id) {
    const auto book = book_ ? book_() : nullptr;
    desk_.edit(chosen(desk_.job(), book.get(), field_, id.toStdString()), field_.step);
  });
  return choice;
}

QWidget* FieldEditor::make_long_text() {
  auto* text = new LongText([this](const QString& given) { give(given.toStdString()); }, this);
  text->setFont(ui::font(Type::text));
  text->setFixedHeight(px(76));
  return text;
}

QWidget* FieldEditor::make_action() {
  auto* button = new FlatButton(FlatButton::Form::action, field_.label, this);
  connect(button, &QAbstractButton::clicked, this, [this] { give({}); });
  return button;
}

void FieldEditor::give(const Value& value) { desk_.edit(field_.set(desk_.job(), value), field_.step); }

void FieldEditor::show_field(Field field) {
  field_ = std::move(field);
  refresh();
}

void FieldEditor::refresh() {
  const Value value = field_.get(desk_.job());
  const QSignalBlocker quiet(input_);
  if (auto* line = qobject_cast<TypedField*>(input_)) {
    if (units_ != desk_.units()) line->set_typing(typing_of(field_, units_ = desk_.units()));
    line->set_value(value);
  } else if (auto* box = qobject_cast<TickBox*>(input_)) {
    const bool* on = std::get_if<bool>(&value);
    box->setChecked(on && *on);
  } else if (auto* list = qobject_cast<QComboBox*>(input_)) {
    const int at = number_of(field_, value);
    const auto* key = std::get_if<std::string>(&value);
    const auto known = static_cast<int>(field_.choices.size()) + (field_.may_be_empty ? 1 : 0);
    while (list->count() > known) list->removeItem(known);
    if (at < 0 && key && !key->empty()) list->addItem(QString::fromStdString(*key));  // what the list does not know
    list->setCurrentIndex(at >= 0 ? at : key && !key->empty() ? known : field_.may_be_empty ? known - 1 : -1);
  } else if (auto* choice = qobject_cast<ItemChoice*>(input_)) {
    const auto* id = std::get_if<std::string>(&value);
    const Offer now = id && !id->empty() ? offer_of(desk_.job(), field_, *id) : Offer{};
    choice->show_choice(now, field_.may_be_empty, [this] {
      const auto book = book_ ? book_() : nullptr;
      return offers(desk_.job(), book.get(), field_);
    });
  } else if (auto* text = qobject_cast<QPlainTextEdit*>(input_)) {
    const auto* words = std::get_if<std::string>(&value);
    const QString shown = words ? QString::fromStdString(*words) : QString();
    if (!text->hasFocus() && text->toPlainText() != shown) text->setPlainText(shown);
  } else if (auto* told = qobject_cast<QLabel*>(input_)) {
    const auto* whole = std::get_if<std::int64_t>(&value);
    const auto* words = std::get_if<std::string>(&value);
    told->setText(whole ? QString::number(*whole) : words ? QString::fromStdString(*words) : QString());
  }
}

}  // namespace ui
