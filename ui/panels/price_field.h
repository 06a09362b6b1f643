// A small field for the price that a line waits for.
#pragma once

#include <QWidget>

#include "ui/desk/desk.h"

class QLabel;
class QLineEdit;

namespace ui {

// Enter or "Give it" sets the price in the job's own catalogue, one step of history. What can't be a price is said
// under the field in words, and what was typed stays.
class PriceField : public QWidget {
  Q_OBJECT
 public:
  PriceField(Desk& desk, plan::Id item, QWidget* parent = nullptr);
  QLineEdit* field() const { return field_; }
  const plan::Id& item() const { return item_; }

 private:
  void give();
  void by_others();
  void take(const problem::Result<plan::Job>& after);
  QString item_name() const;
  Desk& desk_;
  plan::Id item_;
  QLineEdit* field_;
  QLabel* wrong_;
};

}  // namespace ui
