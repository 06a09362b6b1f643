// A change order in a window of its own: what is entered at the left, what comes of it at the right, line by line down
// to the contract's running sum.
#pragma once

#include <QDialog>
#include <functional>

#include "ui/office/order_fields.h"

class QLabel;

namespace ui {

class OrderForm;
class OrderResult;

// What an order is made of. The names are those of the two versions, as a person calls them.
struct OrderSource {
  plan::Job quote;  // the job that was agreed: its unit prices, shares and tax hold
  estimate::Comparison comparison;
  int before = 0;  // numbers of the two versions
  int after = 0;
  QString before_name;
  QString after_name;
  units::Money total_before;                // of the version before: the contract where none is known yet
  std::vector<estimate::KeptOrder> orders;  // those of the job that are kept already
};

class ChangeOrderWindow : public QDialog {
  Q_OBJECT
 public:
  // Keeps the orders of the job; a fault is said in the window, and what was entered stays.
  using Keep = std::function<problem::Result<void>(const std::vector<estimate::KeptOrder>&)>;
  // An order that is kept is shown as it was entered. A new one is kept with the first thing that is entered.
  ChangeOrderWindow(OrderSource source, Keep keep, QWidget* parent = nullptr);

  const estimate::ChangeOrder& order() const { return made_; }
  OrderForm& form() { return *form_; }
  std::string text() const;
  QByteArray pdf() const;  // to be signed

 private:
  QWidget* make_foot();
  void given(const OrderField& field, const Value& value);
  void take_out();
  void reckon();
  void show_order();
  void keep();
  void save(const QString& title, const QString& name, const std::string& bytes);
  OrderSource source_;
  Keep keep_;
  estimate::KeptOrder input_;
  estimate::ChangeOrder made_;
  OrderForm* form_;
  OrderResult* result_ = nullptr;
  QLabel* said_ = nullptr;
};

}  // namespace ui
