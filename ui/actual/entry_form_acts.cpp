// What is entered, corrected and taken back.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "estimate/typed_quantity.h"
#include "ui/actual/entry_form.h"
#include "ui/book/book_table.h"
#include "ui/words/words.h"
#include "units/number.h"

namespace ui {

using estimate::Act;
using estimate::Entry;

namespace {

std::string text_of(const QLineEdit* field) { return field->text().trimmed().toStdString(); }

}  // namespace

void EntryForm::refuse(const problem::Problem& fault, QLineEdit* at) {
  said_->setText(said(fault.text) + QStringLiteral("; ") + said(fault.mend));
  said_->show();
  if (at == nullptr) return;
  at->setAccessibleDescription(said_->text());
  at->setFocus();
  at->selectAll();
}

void EntryForm::enter() {
  if (!target_ || closed_) return;
  Entry entry;
  entry.corrects = corrects_;
  entry.act = static_cast<Act>(act_->currentData().toInt());
  entry.line = target_->key;
  entry.date = text_of(date_);
  entry.unit = entry.act == Act::measured ? text_of(unit_) : target_->work ? "h" : target_->unit;
  if (entry.act == Act::measured && entry.unit.empty()) entry.unit = unit_->placeholderText().toStdString();
  const auto read = [&](QLineEdit* from, double& into) {
    const auto value = estimate::read_quantity(text_of(from), entry.unit);
    if (!value) refuse(value.error(), from);
    if (value) into = *value;
    return value.has_value();
  };
  if (!read(quantity_, entry.quantity)) return;
  if (entry.act == Act::measured && !read(whole_, entry.whole)) return;
  if (!price_->isHidden() && !text_of(price_).empty()) {
    const auto price = units::read_money(text_of(price_), heading_.decimals);
    if (!price) return refuse(price.error(), price_);
    entry.price = *price;
  }
  entry.who = text_of(who_);
  if (!ticket_->isHidden()) entry.ticket = text_of(ticket_);
  entry.note = text_of(note_);
  send(entry);
}

void EntryForm::send(const Entry& entry) {
  const auto entered = enter_(entry);
  if (!entered) return refuse(entered.error(), entered.error().code == "ledger-date" ? date_ : nullptr);
  stop_correcting();
  act_chosen();
  quantity_->setFocus();
}

void EntryForm::correct() {
  const Entry* one = chosen();
  if (one == nullptr) return;
  const Entry entry = *one;
  act_->setCurrentIndex(act_->findData(static_cast<int>(entry.act)));
  corrects_ = entry.number;
  act_->setEnabled(false);  // a delivery does not turn into use
  enter_button_->setText(tr("Enter the correction"));
  make_main(enter_button_);
  date_->setText(QString::fromStdString(entry.date));
  quantity_->setText(QString::fromStdString(units::write_number(entry.quantity)));
  whole_->setText(QString::fromStdString(units::write_number(entry.whole)));
  unit_->setText(QString::fromStdString(entry.unit));
  price_->setText(entry.price ? QString::fromStdString(units::write_money(*entry.price, heading_.decimals))
                              : QString());
  who_->setText(QString::fromStdString(entry.who));
  ticket_->setText(QString::fromStdString(entry.ticket));
  note_->setText(QString::fromStdString(entry.note));
  quantity_->setFocus();
  quantity_->selectAll();
}

void EntryForm::take_back() {
  const Entry* one = chosen();
  if (one == nullptr) return;
  Entry none = *one;
  none.corrects = one->number;
  none.number = 0;
  none.quantity = 0;
  send(none);
}

void EntryForm::stop_correcting() {
  corrects_ = 0;
  act_->setEnabled(target_.has_value() && !closed_);
  enter_button_->setText(tr("Enter it"));
  for (QLineEdit* one : {quantity_, whole_, price_, ticket_, note_}) {
    one->clear();
    one->setAccessibleDescription({});
  }
  if (!closed_) said_->hide();
}

}  // namespace ui
