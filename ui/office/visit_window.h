// How the job came to the office, and what is looked at on the site: the enquiry and the site visit.
#pragma once

#include <QDialog>

#include "ui/office/visit_page.h"
#include "ui/panels/fields.h"

class QStackedWidget;

namespace ui {

class FieldForm;
class FlatButton;

std::vector<Field> enquiry_fields();  // the job's number, and its enquiry

class VisitWindow : public QDialog {
  Q_OBJECT
 public:
  VisitWindow(Desk& desk, VisitPage::KeepBytes keep, const QString& today, QWidget* parent = nullptr);
  void show_page(int page);  // 0: the enquiry, 1: the site visit
  FieldForm& enquiry() { return *form_; }
  VisitPage& visit() { return *visit_; }

 private:
  QStackedWidget* stack_;
  FieldForm* form_;
  VisitPage* visit_;
  std::vector<FlatButton*> tabs_;
};

// Opens it, or brings it to the front.
VisitWindow* show_visit_window(Desk& desk, VisitPage::KeepBytes keep, QWidget* parent);

}  // namespace ui
