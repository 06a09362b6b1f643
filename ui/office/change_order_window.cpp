#include "ui/office/change_order_window.h"

#include <QFileDialog>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "files/change_order_text.h"
#include "files/files.h"
#include "sheets/change_sheet.h"
#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/look/theme.h"
#include "ui/office/order_form.h"
#include "ui/office/order_result.h"
#include "ui/print/print_sheet.h"

namespace ui {

namespace {

QLabel* label(QWidget* parent, const char* name, Type type = Type::text, bool bold = false) {
  auto* made = new QLabel(parent);
  made->setObjectName(QString::fromLatin1(name));
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  made->setFont(ui::font(type, bold));
  made->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  return made;
}

QScrollArea* scrolled(QWidget* inside, QWidget* parent) {
  auto* area = new QScrollArea(parent);
  area->setWidget(inside);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  return area;
}

}  // namespace

ChangeOrderWindow::ChangeOrderWindow(OrderSource source, Keep keep, QWidget* parent)
    : QDialog(parent), source_(std::move(source)), keep_(std::move(keep)) {
  setObjectName(QStringLiteral("change-order-window"));
  setWindowTitle(tr("Change order"));
  setAttribute(Qt::WA_DeleteOnClose);
  const estimate::KeptOrder* kept = estimate::find(source_.orders, source_.before, source_.after);
  input_ = kept ? *kept : estimate::begun(source_.orders, source_.before, source_.after, source_.total_before);
  auto* room = new QWidget(this);
  auto* column = new QVBoxLayout(room);
  column->setContentsMargins(px(16), px(12), px(16), px(12));
  form_ = new OrderForm(
      source_.quote.heading.units, [this](const OrderField& field, const Value& value) { given(field, value); }, room);
  column->addWidget(form_);
  column->addStretch(1);
  auto* left = scrolled(room, this);
  left->setAccessibleName(tr("What is entered"));
  left->setMinimumWidth(px(360));
  auto* sides = new QHBoxLayout;
  sides->setContentsMargins(0, 0, 0, 0);
  sides->addWidget(left, 2);
  result_ = new OrderResult(source_.quote.heading, this);
  result_->set_names(tr("From %1 to %2").arg(source_.before_name, source_.after_name));
  sides->addWidget(result_, 3);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->addLayout(sides, 1);
  rows->addWidget(make_foot());
  reckon();
  show_order();
  resize(px(1080), px(720));
}

QWidget* ChangeOrderWindow::make_foot() {
  auto* made = new QWidget(this);
  auto* all = new QVBoxLayout(made);
  all->setContentsMargins(px(16), px(4), px(16), px(12));
  said_ = label(made, "order-said");
  said_->hide();
  all->addWidget(said_);
  auto* row = new QHBoxLayout;
  const auto button = [&](const char* name, const QString& words) {
    auto* one = new QPushButton(words, made);
    one->setObjectName(QString::fromLatin1(name));
    one->setAutoDefault(false);  // Enter in a field of the form sends nothing off
    return one;
  };
  auto* text = button("order-text", tr("Save as text ..."));
  auto* paper = button("order-pdf", tr("Save as PDF ..."));
  auto* out = button("order-out", tr("Drop the order ..."));
  auto* close = button("order-close", tr("Close"));
  make_main(close);
  row->addWidget(text);
  row->addWidget(paper);
  row->addWidget(out);
  row->addStretch(1);
  row->addWidget(close);
  all->addLayout(row);
  connect(text, &QPushButton::clicked, this,
          [this] { save(tr("Save as text"), tr("change-order-%1.txt"), this->text()); });
  connect(paper, &QPushButton::clicked, this,
          [this] { save(tr("Save as PDF"), tr("change-order-%1.pdf"), pdf().toStdString()); });
  connect(out, &QPushButton::clicked, this, &ChangeOrderWindow::take_out);
  connect(close, &QPushButton::clicked, this, &QDialog::close);
  return made;
}

void ChangeOrderWindow::given(const OrderField& field, const Value& value) {
  estimate::ChangeInput after = input_.input;
  field.set(after, value);
  if (after == input_.input) return;
  input_.input = std::move(after);
  source_.orders = estimate::with(std::move(source_.orders), input_);
  reckon();
  keep();
  show_order();
}

// An order that is dropped begins anew with the next thing that is entered.
void ChangeOrderWindow::take_out() {
  QMessageBox box(QMessageBox::Question, tr("Drop the change order"),
                  tr("Drop change order %1? What was entered for it is gone then.")
                      .arg(QString::fromStdString(input_.input.number.substr(0, 40)).simplified()),
                  QMessageBox::NoButton, this);
  box.setTextFormat(Qt::PlainText);
  auto* yes = box.addButton(tr("Drop it"), QMessageBox::AcceptRole);
  yes->setObjectName(QStringLiteral("order-drop"));
  box.setDefaultButton(box.addButton(tr("Leave it"), QMessageBox::RejectRole));
  box.exec();
  if (box.clickedButton() != yes) return;
  source_.orders = estimate::without(std::move(source_.orders), source_.before, source_.after);
  input_ = estimate::begun(source_.orders, source_.before, source_.after, source_.total_before);
  reckon();
  const auto kept = keep_(source_.orders);
  said_->setText(kept ? tr("The order is dropped") : told(kept.error()));
  said_->show();
  show_order();
}

// What it comes to is kept with it: later orders of the job count it.
void ChangeOrderWindow::reckon() {
  estimate::ChangeInput input = input_.input;
  input.earlier = estimate::earlier(source_.orders, source_.before, source_.after);
  made_ = estimate::change_order(source_.quote, source_.comparison, std::move(input));
  input_.amount = made_.amount;
}

void ChangeOrderWindow::keep() {
  source_.orders = estimate::with(std::move(source_.orders), input_);
  const auto kept = keep_(source_.orders);
  said_->setText(kept ? QString() : told(kept.error()));
  said_->setVisible(!kept);
}

void ChangeOrderWindow::show_order() {
  const OrderGround ground{source_.quote, source_.comparison, source_.orders, source_.before, source_.after};
  std::map<std::string, QString> by_field;
  std::vector<problem::Problem> rest;
  for (const problem::Problem& problem : made_.problems) {
    std::string field = field_of(problem, input_.input);
    if (by_field.contains(field)) field = "days_cause";  // it lacks both whys
    if (field.empty())
      rest.push_back(problem);
    else
      by_field[field] = told(problem);
  }
  form_->show_order(input_.input, order_fields(input_.input, ground), by_field);
  result_->show_order(made_, rest);
}

std::string ChangeOrderWindow::text() const { return files::change_order_text(source_.quote, made_); }

QByteArray ChangeOrderWindow::pdf() const {
  const sheets::Printed with = printed_of(source_.quote, std::to_string(source_.after), input_.input.date);
  return print_made(sheets::change_sheet(made_, with), with);
}

void ChangeOrderWindow::save(const QString& title, const QString& name, const std::string& bytes) {
  const QString path = QFileDialog::getSaveFileName(this, title, name.arg(QString::fromStdString(input_.input.number)));
  if (path.isEmpty()) return;
  const auto saved = files::write_file(path.toStdString(), bytes);
  said_->setText(saved ? tr("The change order is in %1").arg(path) : told(saved.error()));
  said_->show();
}

}  // namespace ui
