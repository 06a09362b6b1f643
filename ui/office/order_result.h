// What comes of a change order: its lines with their amounts, what comes on top, the contract's running sum, and what
// is to be mended or decided.
#pragma once

#include <QWidget>

#include "estimate/change_order.h"

class QLabel;
class QTreeWidget;
class QVBoxLayout;

namespace ui {

class OrderResult : public QWidget {
  Q_OBJECT
 public:
  explicit OrderResult(plan::Heading heading, QWidget* parent = nullptr);  // of the quote: its money
  void set_names(const QString& names);                                    // of the two versions
  // `problems` are those that stand by no field of the form.
  void show_order(const estimate::ChangeOrder& order, const std::vector<problem::Problem>& problems);

 private:
  void show_lines(const estimate::ChangeOrder& order);
  void show_sums(const estimate::ChangeOrder& order);
  void show_problems(const std::vector<problem::Problem>& problems);
  QString money(units::Money amount) const;
  QString by(units::Money amount) const;  // with its sign
  plan::Heading heading_;
  QVBoxLayout* rows_ = nullptr;
  QLabel* names_ = nullptr;
  QTreeWidget* lines_ = nullptr;
  QLabel* amount_ = nullptr;
  QLabel* running_ = nullptr;
  QLabel* days_ = nullptr;
  QWidget* problems_ = nullptr;
};

}  // namespace ui
