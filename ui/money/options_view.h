// Options and alternates: what each is, and what it makes of the price. Priced when asked for, off the window's thread:
// each takes a takeoff of its own.
#pragma once

#include <QWidget>

#include "results/options.h"
#include "ui/desk/desk.h"
#include "ui/desk/work.h"

class QLabel;
class QProgressBar;

namespace ui {

class FieldForm;
class FlatButton;

class OptionsView : public QWidget {
  Q_OBJECT
 public:
  explicit OptionsView(Desk& desk, QWidget* parent = nullptr);
  FieldForm& form() { return *form_; }
  const std::vector<results::OptionPrice>& prices() const { return shown_; }

 private:
  void tell(const QString& sentence);
  void follow();
  void work_out();
  void show_prices();
  void make_option(bool leaves_out);
  Desk& desk_;
  Work work_;
  std::shared_ptr<std::vector<results::OptionPrice>> found_;
  std::vector<results::OptionPrice> shown_;
  JobPtr of_;  // what they were worked out for
  FlatButton* go_;
  FlatButton* bring_;
  FlatButton* leave_out_;
  QProgressBar* bar_;
  QLabel* told_;
  QWidget* table_ = nullptr;
  FieldForm* form_;
};

}  // namespace ui
