// The fields of a change order one under the other, as the panels' forms are; what is amiss stands under its field.
#pragma once

#include <QWidget>
#include <functional>

#include "ui/office/order_fields.h"

class QLabel;
class QVBoxLayout;

namespace ui {

class OrderForm : public QWidget {
  Q_OBJECT
 public:
  // `given` is told what a person enters.
  using Given = std::function<void(const OrderField& field, const Value& value)>;
  OrderForm(units::System units, Given given, QWidget* parent = nullptr);

  // The same fields again only show their values; others make the form anew, and the keyboard stays in the field of the
  // same id. `faults` are sentences by the field's id.
  void show_order(const estimate::ChangeInput& input, std::vector<OrderField> fields,
                  const std::map<std::string, QString>& faults);
  QWidget* input(const std::string& id) const;  // null where there is none

 private:
  struct Row {
    OrderField field;
    QWidget* input;
    QLabel* fault;
    QString refused;  // what was typed last and can't be
  };
  void make(std::vector<OrderField> fields);
  QWidget* make_input(std::size_t row);
  QWidget* make_typed(std::size_t row);
  QWidget* make_words(std::size_t row);
  QWidget* make_long_text(std::size_t row);
  void lay(QVBoxLayout* column, std::size_t row);
  void show_value(const Row& row, const Value& value);
  void show_fault(const Row& row, const QString& sentence);
  void give(std::size_t row, const Value& value);
  units::System units_;
  Given given_;
  QVBoxLayout* rows_;
  QWidget* body_ = nullptr;
  std::vector<Row> all_;
  std::map<std::string, QString> faults_;
};

}  // namespace ui
