// The price as it comes about, beside the form that sets it: steps with their workings, what falls due, where the money
// goes. Follows the desk.
#pragma once

#include <QWidget>

#include "ui/desk/desk.h"

class QGridLayout;
class QLabel;

namespace ui {

class MoneyBars;

class PriceView : public QWidget {
  Q_OBJECT
 public:
  explicit PriceView(Desk& desk, QWidget* parent = nullptr);

 private:
  void show_price();
  Desk& desk_;
  QLabel* state_;
  QWidget* table_ = nullptr;
  QWidget* room_;
  MoneyBars* kinds_;
  MoneyBars* stages_;
};

}  // namespace ui
