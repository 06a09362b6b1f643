// What was really used against one version of a job: entries are made here, and estimate and actual stand side by side.
#pragma once

#include <QDialog>
#include <string>

#include "estimate/actual.h"
#include "store/job_book.h"

class QLabel;
class QTabWidget;
class QTreeWidget;

namespace ui {

class EntryForm;
class OffersPage;

// Entries are in the book when the table shows them. Of a book that is only read everything is shown and nothing can be
// entered.
class ActualWindow : public QDialog {
  Q_OBJECT
 public:
  // `folder` is the book's, for its catalogue. `version` was read from the book.
  ActualWindow(store::JobBook& book, store::Version version, std::string folder, QWidget* parent = nullptr);

  const estimate::Actual& actual() const { return actual_; }
  std::string text() const;
  std::string csv() const;
  QByteArray pdf() const;

 private:
  QWidget* make_lines();
  QWidget* make_work();
  QWidget* make_cost();
  QWidget* make_foot();
  problem::Result<void> enter(const estimate::Entry& entry);
  void reload();
  void show_line();
  void show_work();
  void show_totals();
  void find_edit();
  void enter_edit();
  void save(const QString& title, const char* ending, const std::string& text);
  store::JobBook& book_;
  store::Version version_;
  std::vector<estimate::Entry> entries_;
  std::vector<estimate::Entry> edit_;  // what a newer version asks to add and return
  estimate::Actual actual_;
  QLabel* total_;
  QLabel* problems_;
  QLabel* edit_said_;
  QPushButton* edit_enter_;
  QTreeWidget *lines_, *work_, *cost_;
  EntryForm *line_form_, *work_form_;
  OffersPage* offers_;
};

// Opens it, not modal; it deletes itself when closed. Null where the version can't be read: that was said.
ActualWindow* show_actual_window(store::JobBook& book, std::int64_t version, QWidget* parent,
                                 const std::string& folder = store::data_folder());

}  // namespace ui
