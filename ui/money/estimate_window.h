// The estimate in a window of its own: what the office sets at the left, the price as it comes about at the right.
#pragma once

#include <QDialog>

#include "ui/desk/desk.h"

class QStackedWidget;

namespace ui {

class FieldForm;
class FlatButton;

class EstimateWindow : public QDialog {
  Q_OBJECT
 public:
  explicit EstimateWindow(Desk& desk, QWidget* parent = nullptr);
  static constexpr int pages = 7;  // price, hours, beside the drawing, payments, words, what could bite, options
  static constexpr int bite_page = 5, options_page = 6;
  void show_page(int page);
  FieldForm& form(int page) { return *forms_[static_cast<std::size_t>(page)]; }  // all but the last two have one

 private:
  QWidget* make_page(int page);
  void show_fields();
  Desk& desk_;
  QStackedWidget* stack_;
  std::vector<FlatButton*> tabs_;
  std::vector<FieldForm*> forms_;
};

// Opens it, or brings it to the front.
EstimateWindow* show_estimate_window(Desk& desk, QWidget* parent);

}  // namespace ui
