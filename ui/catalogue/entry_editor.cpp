#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QWheelEvent>
#include <algorithm>

#include "ui/catalogue/entry_form.h"
#include "ui/catalogue/entry_making.h"
#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/item_choice.h"
#include "ui/panels/length_field.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

// A list that the wheel moves only while it has the keyboard: one scrolls past it without changing anything.
class CalmBox : public QComboBox {
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

// Long words are taken when the keyboard leaves them.
class WordsBox : public QPlainTextEdit {
 public:
  WordsBox(std::function<void(const QString&)> given, QWidget* parent)
      : QPlainTextEdit(parent), given_(std::move(given)) {
    setTabChangesFocus(true);
  }

 protected:
  void focusOutEvent(QFocusEvent* event) override {
    QPlainTextEdit::focusOutEvent(event);
    if (document()->isModified()) given_(toPlainText());
  }
  void wheelEvent(QWheelEvent* event) override {
    if (hasFocus())
      QPlainTextEdit::wheelEvent(event);
    else
      event->ignore();
  }

 private:
  std::function<void(const QString&)> given_;
};

int place_of(const std::vector<Choice>& choices, const std::string& key) {
  const auto found = std::ranges::find(choices, key, &Choice::key);
  return found == choices.end() ? -1 : static_cast<int>(found - choices.begin());
}

}  // namespace

EntryEditor::EntryEditor(EntryField field, const catalogue::Stock& stock, units::System system, QWidget* parent)
    : QWidget(parent), field_(std::move(field)), stock_(stock), system_(system) {
  input_ = make();
  input_->setObjectName("entry/" + QString::fromStdString(field_.look.id));
  input_->setAccessibleName(field_.look.label);
  setFocusProxy(input_);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(input_);
}

bool EntryEditor::is_wide(const Field& look) {
  switch (look.editor) {
    case Editor::item:
    case Editor::long_text: return true;
    case Editor::text: return look.fits.empty() && !look.id.starts_with("price/") && look.id != "unit";
    case Editor::words: return type_factor() > 1.25;
    default: return false;
  }
}

QWidget* EntryEditor::make() {
  switch (field_.look.editor) {
    case Editor::yes_no: {
      auto* box = new TickBox(this);
      connect(box, &QAbstractButton::toggled, this, [this](bool on) { emit given(Value(on)); });
      return box;
    }
    case Editor::words: return make_words();
    case Editor::item: return make_choice();
    case Editor::action: {
      auto* button = new FlatButton(FlatButton::Form::action, field_.look.label, this);
      connect(button, &QAbstractButton::clicked, this, [this] { emit given(Value{}); });
      return button;
    }
    case Editor::told: {
      auto* told = new QLabel(this);
      told->setFont(ui::font(Type::text));
      told->setTextFormat(Qt::PlainText);
      told->setTextInteractionFlags(Qt::TextSelectableByMouse);
      told->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
      return told;
    }
    case Editor::long_text: {
      auto* text = new WordsBox([this](const QString& words) { emit given(Value(words.toStdString())); }, this);
      text->setFont(ui::font(Type::text));
      text->setFixedHeight(px(64));
      return text;
    }
    default: return make_typed();
  }
}

QWidget* EntryEditor::make_typed() {
  auto* line = new TypedField(field_.typing.read ? field_.typing : typing_of(field_.look, system_), this);
  line->setMinimumHeight(px(28));
  if (!is_wide(field_.look)) line->setAlignment(Qt::AlignRight);
  if (field_.look.may_be_empty)
    line->setPlaceholderText(field_.look.otherwise.isEmpty() ? Fields::tr("not given") : field_.look.otherwise);
  connect(line, &QLineEdit::textEdited, this, [this](const QString& text) { typed_ = text; });
  connect(line, &TypedField::given, this, [this](const Value& value) { emit given(value); });
  connect(line, &TypedField::refused, this, [this](const QString& sentence) {
    emit refused(Entries::tr("“%1” was not taken. %2").arg(typed_.left(40), sentence));
  });
  return line;
}

QWidget* EntryEditor::make_words() {
  auto* list = new CalmBox(this);
  list->setFont(ui::font(Type::text));
  list->setMinimumHeight(px(28));
  list->setFocusPolicy(Qt::StrongFocus);
  list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  list->setMinimumContentsLength(6);
  for (const Choice& choice : field_.look.choices) list->addItem(choice.label, QString::fromStdString(choice.key));
  if (field_.look.may_be_empty) list->addItem(Fields::tr("None"), QString());
  connect(list, &QComboBox::activated, this,
          [this, list](int at) { emit given(Value(list->itemData(at).toString().toStdString())); });
  return list;
}

std::vector<Offer> EntryEditor::offered() const {
  std::vector<Offer> found;
  for (const auto& [id, item] : stock_.all.items)
    if (std::ranges::find(field_.look.fits, item->kind) != field_.look.fits.end() && !stock_.retired.contains({0, id}))
      found.push_back({id, own_name(item->name, id), shown_price(item->price)});
  std::ranges::sort(found, [](const Offer& a, const Offer& b) {
    const int by_name = QString::localeAwareCompare(a.name, b.name);
    return by_name != 0 ? by_name < 0 : a.id < b.id;
  });
  return found;
}

QWidget* EntryEditor::make_choice() {
  auto* choice = new ItemChoice(this);
  connect(choice, &ItemChoice::given, this, [this](const QString& id) { emit given(Value(id.toStdString())); });
  return choice;
}

void EntryEditor::show_value(EntryField field, const Entry& entry) {
  field_ = std::move(field);
  const Value value = field_.get(entry);
  const auto* text = std::get_if<std::string>(&value);
  const QSignalBlocker quiet(input_);
  if (auto* line = qobject_cast<TypedField*>(input_)) {
    line->set_value(value);
  } else if (auto* box = qobject_cast<TickBox*>(input_)) {
    const bool* on = std::get_if<bool>(&value);
    box->setChecked(on && *on);
  } else if (auto* list = qobject_cast<QComboBox*>(input_)) {
    const std::string key = text ? *text : std::string();
    const auto known = static_cast<int>(field_.look.choices.size()) + (field_.look.may_be_empty ? 1 : 0);
    while (list->count() > known) list->removeItem(known);
    int at = place_of(field_.look.choices, key);
    if (at < 0 && key.empty()) at = field_.look.may_be_empty ? known - 1 : -1;
    if (at < 0 && !key.empty()) {  // what the list does not know is shown as it is
      list->addItem(QString::fromStdString(key), QString::fromStdString(key));
      at = known;
    }
    list->setCurrentIndex(at);
  } else if (auto* choice = qobject_cast<ItemChoice*>(input_)) {
    const catalogue::Item* item = text ? stock_.all.item(*text) : nullptr;
    const Offer now = text && !text->empty()
                          ? Offer{*text, item_name(stock_.all, *text), shown_price(item ? item->price : std::nullopt)}
                          : Offer{};
    choice->show_choice(now, field_.look.may_be_empty, [this] { return offered(); });
  } else if (auto* box_of_words = qobject_cast<QPlainTextEdit*>(input_)) {
    const QString shown = text ? QString::fromStdString(*text) : QString();
    if (!box_of_words->hasFocus() && box_of_words->toPlainText() != shown) box_of_words->setPlainText(shown);
    if (box_of_words->toPlainText() == shown) box_of_words->document()->setModified(false);
  } else if (auto* told = qobject_cast<QLabel*>(input_)) {
    told->setText(text ? QString::fromStdString(*text) : QString());
  }
}

}  // namespace ui
