// What could bite: each open assumption at its low and its high, as bars of money; and the ways onto the site. Worked
// out when asked for, off the window's thread: it takes many takeoffs.
#pragma once

#include <QWidget>
#include <optional>

#include "results/could_bite.h"
#include "ui/desk/desk.h"
#include "ui/desk/work.h"

class QGridLayout;
class QLabel;
class QProgressBar;

namespace ui {

class FlatButton;

// One row of the table: what, at low, at high, the width of the bar in coins.
struct BiteRow {
  QString name;
  QString low;
  QString high;
  double low_coins = 0;
  double high_coins = 0;
};
std::vector<BiteRow> bite_rows(const results::CouldBite& bites, const plan::Heading& heading);

class BiteView : public QWidget {
  Q_OBJECT
 public:
  explicit BiteView(Desk& desk, QWidget* parent = nullptr);

 private:
  void work_out();
  void show_found();
  Desk& desk_;
  Work work_;
  std::shared_ptr<std::optional<results::CouldBite>> found_;
  std::shared_ptr<std::vector<results::Access>> ways_;
  JobPtr of_;  // what they were worked out for
  FlatButton* go_;
  QProgressBar* bar_;
  QLabel* told_;
  QWidget* table_ = nullptr;
};

}  // namespace ui
