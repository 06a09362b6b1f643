#include "ui/actual/entry_form.h"

#include <QComboBox>
#include <QDate>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/actual/entry_words.h"
#include "ui/book/book_table.h"
#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"
#include "units/number.h"

namespace ui {

using estimate::Act;
using estimate::Entry;

namespace {

QLabel* plain_label(QWidget* parent, Type type, bool bold = false) {
  auto* label = new QLabel(parent);
  label->setTextFormat(Qt::PlainText);  // a line may be called <b>
  label->setWordWrap(true);
  label->setFont(font(type, bold));
  return label;
}

// "Delivered 20 tons"
QString words_of(const Entry& entry) {
  const QString quantity = shown_count(entry.quantity, entry.unit);
  if (entry.act == Act::hours) return EntryForm::tr("%1 worked").arg(quantity);
  if (entry.act == Act::measured)
    return EntryForm::tr("%1 of %2 done").arg(shown_number(entry.quantity), shown_count(entry.whole, entry.unit));
  return act_name(entry.act) + QLatin1Char(' ') + quantity;
}

QString today() { return QDate::currentDate().toString(Qt::ISODate); }

}  // namespace

QString EntryForm::id(const char* name) const { return name_ + QLatin1Char('-') + QString::fromLatin1(name); }

QLineEdit* EntryForm::field(const char* name, const QString& label, const QString& hint) {
  auto* made = new QLineEdit(this);
  made->setObjectName(id(name));
  made->setAccessibleName(label);
  made->setPlaceholderText(hint);
  form_->addRow(label, made);
  connect(made, &QLineEdit::returnPressed, this, &EntryForm::enter);
  connect(made, &QLineEdit::textEdited, said_, &QLabel::hide);
  return made;
}

EntryForm::EntryForm(const char* name, const std::vector<Act>& acts, const plan::Heading& heading, Enter enter,
                     QWidget* parent)
    : QWidget(parent),
      name_(QString::fromLatin1(name)),
      heading_(heading),
      enter_(std::move(enter)),
      form_(new QFormLayout),
      title_(plain_label(this, Type::text, true)),
      facts_(plain_label(this, Type::note)),
      act_(new QComboBox(this)),
      said_(plain_label(this, Type::note)),
      list_(new QTableWidget(0, 3, this)) {
  setObjectName(id("form"));
  title_->setObjectName(id("title"));
  facts_->setObjectName(id("facts"));
  make_fields(acts);
  make_buttons();
  make_entries();
  lay_out();
  setFixedWidth(px(352));
  show_target({}, {});
}

void EntryForm::make_fields(const std::vector<Act>& acts) {
  act_->setObjectName(id("act"));
  act_->setAccessibleName(tr("What is entered"));
  for (const Act act : acts) act_->addItem(act_name(act), static_cast<int>(act));
  form_->setContentsMargins(0, 0, 0, 0);
  form_->setHorizontalSpacing(px(8));
  form_->setVerticalSpacing(px(4));
  form_->addRow(tr("What"), act_);
  date_ = field("date", tr("Date"), QStringLiteral("2026-11-28"));
  date_->setText(today());
  quantity_ = field("quantity", tr("Quantity"), {});
  whole_ = field("whole", tr("Of in all"), {});
  unit_ = field("unit", tr("Measured in"),
                heading_.units == units::System::us ? QStringLiteral("sq ft") : QStringLiteral("m2"));
  price_ = field("price", tr("Price of one"), tr("as estimated"));
  who_ = field("who", tr("Who"), {});
  ticket_ = field("ticket", tr("Ticket"), {});
  note_ = field("note", tr("Note"), {});
  connect(act_, &QComboBox::currentIndexChanged, this, &EntryForm::act_chosen);
}

void EntryForm::make_buttons() {
  said_->setObjectName(id("said"));
  QPalette wrong = said_->palette();
  wrong.setColor(QPalette::WindowText, theme().flag);
  said_->setPalette(wrong);
  said_->hide();
  const auto button = [this](const char* its, const QString& words, void (EntryForm::*does)()) {
    auto* made = new QPushButton(words, this);
    made->setObjectName(id(its));
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, does);
    return made;
  };
  enter_button_ = button("enter", tr("Enter it"), &EntryForm::enter);
  make_main(enter_button_);
  correct_ = button("correct", tr("Correct it"), &EntryForm::correct);
  take_back_ = button("take-back", tr("Take it back"), &EntryForm::take_back);
}

void EntryForm::make_entries() {
  list_->setHorizontalHeaderLabels({tr("Date"), tr("What"), tr("Note")});
  make_list(list_, "", tr("What was entered"));
  list_->setObjectName(id("entries"));
  list_->setSelectionMode(QAbstractItemView::SingleSelection);
  connect(list_, &QTableWidget::itemSelectionChanged, this, [this] {
    const Entry* one = chosen();
    correct_->setEnabled(!closed_ && one != nullptr);
    take_back_->setEnabled(!closed_ && one != nullptr && one->act != Act::ordered);
  });
}

void EntryForm::lay_out() {
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(12), 0, 0, 0);
  rows->setSpacing(px(6));
  rows->addWidget(title_);
  rows->addWidget(facts_);
  rows->addLayout(form_);
  rows->addWidget(said_);
  rows->addWidget(enter_button_, 0, Qt::AlignLeft);
  rows->addWidget(list_, 1);
  auto* under = new QHBoxLayout;
  under->addWidget(correct_);
  under->addWidget(take_back_);
  under->addStretch(1);
  rows->addLayout(under);
}

// Only what the sort of entry asks for is shown.
void EntryForm::act_chosen() {
  const auto act = static_cast<Act>(act_->currentData().toInt());
  const auto show = [this](QLineEdit* one, bool shown) { form_->setRowVisible(one, shown); };
  show(whole_, act == Act::measured);
  show(unit_, act == Act::measured);
  show(price_, act == Act::confirmed || act == Act::delivered || act == Act::returned || act == Act::hours);
  show(ticket_, act != Act::hours && act != Act::measured && act != Act::used);
  const bool work = target_ && target_->work;
  quantity_->setPlaceholderText(act == Act::hours                          ? QStringLiteral("h")
                                : !work && target_ && act != Act::measured ? QString::fromStdString(target_->unit)
                                                                           : QString());
  if (act == Act::measured && corrects_ == 0) show_last_measure();
  if (!closed_) said_->hide();
}

// The whole is measured once; it stands there the next time.
void EntryForm::show_last_measure() {
  const auto last =
      std::find_if(shown_.rbegin(), shown_.rend(), [](const Entry& one) { return one.act == Act::measured; });
  if (last == shown_.rend() || !whole_->text().isEmpty()) return;
  whole_->setText(QString::fromStdString(units::write_number(last->whole)));
  unit_->setText(QString::fromStdString(last->unit));
}

void EntryForm::show_facts(const QString& facts) {
  facts_->setText(facts);
  facts_->setVisible(!facts.isEmpty());
}

void EntryForm::set_closed(const QString& why) {
  closed_ = true;
  enter_button_->setEnabled(false);
  enter_button_->setToolTip(why);
  said_->setText(why);
  said_->show();
}

void EntryForm::show_target(const std::optional<EntryTarget>& target, const std::vector<Entry>& entries) {
  const bool other = !target_ || !target || target_->key != target->key || target_->unit != target->unit;
  target_ = target;
  title_->setText(target ? target->name : tr("Choose a line to enter something of it"));
  if (!target) show_facts({});
  if (other) stop_correcting();
  for (QWidget* one :
       std::initializer_list<QWidget*>{act_, date_, quantity_, whole_, unit_, price_, who_, ticket_, note_})
    one->setEnabled(target.has_value() && !closed_);
  enter_button_->setEnabled(target.has_value() && !closed_);
  show_entries(entries);
  act_chosen();
}

void EntryForm::show_entries(const std::vector<Entry>& entries) {
  shown_.clear();
  for (const Entry& one : estimate::in_force(entries)) {
    if (!target_ || one.line != target_->key) continue;
    if (!target_->work && one.unit != target_->unit) continue;
    shown_.push_back(one);
  }
  list_->setRowCount(static_cast<int>(shown_.size()));
  for (int row = 0; row < list_->rowCount(); ++row) {
    const Entry& one = shown_[static_cast<std::size_t>(row)];
    const QString note = QString::fromStdString(one.note.empty() ? one.ticket : one.note).simplified();
    const QStringList cells{QString::fromStdString(one.date), words_of(one), note};
    for (int column = 0; column < cells.size(); ++column) {
      auto* cell = new QTableWidgetItem(cells[column]);
      cell->setToolTip(cells[column].toHtmlEscaped());
      list_->setItem(row, column, cell);
    }
  }
  set_widths(list_, 2);
  list_->clearSelection();
  correct_->setEnabled(false);
  take_back_->setEnabled(false);
}

const Entry* EntryForm::chosen() const {
  const auto rows = list_->selectionModel()->selectedRows();
  return rows.isEmpty() ? nullptr : &shown_[static_cast<std::size_t>(rows.front().row())];
}

}  // namespace ui
