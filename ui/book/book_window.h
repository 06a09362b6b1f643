// The job book in a window of its own: its jobs, and the versions of the one that is chosen. What belongs to the open
// job (opening another one, comparing, saving a version) is asked for by signals; the rest is done in the book at once.
#pragma once

#include <QDialog>
#include <cstdint>
#include <functional>
#include <vector>

#include "store/job_book.h"
#include "ui/book/book_models.h"

class QPushButton;
class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QTableView;

namespace ui {

class BookWindow : public QDialog {
  Q_OBJECT
 public:
  explicit BookWindow(store::JobBook& book, QWidget* parent = nullptr);

  void set_open_job(std::int64_t id);                 // the one on the plan: a version can be saved of it alone
  std::int64_t chosen_job() const;                    // 0: none
  std::vector<std::int64_t> chosen_versions() const;  // as they stand in the list, the newest first

 public slots:
  void refresh();  // reads the list anew; call it after something was written
  void choose(std::int64_t job);
  void tell(const QString& fault);  // one sentence at the foot; empty takes it away

 signals:
  void open_job(qint64 job);
  void new_job();
  void bring_in_job();         // from a job file
  void write_job(qint64 job);  // into a job file
  void save_version(qint64 job);
  void compare_versions(qint64 before, qint64 after);  // the older one first
  void at_todays_prices(qint64 version);               // beside it; the version stays as it is
  void built_otherwise(qint64 version);                // the same
  void work_on_from(qint64 version);                   // the job becomes what it was in that version

 private:
  QWidget* make_jobs();
  QWidget* make_versions();
  QTableView* make_table(QAbstractItemModel* model, const char* name, const QString& spoken);
  QPushButton* button(const char* name, const QString& words, std::function<void()> does);
  void job_chosen();
  void versions_chosen();
  void search();
  void copy_job();
  void archive_job();
  void set_state(int state);
  void open_version();
  void write_sheet(const store::Document& sheet, const QString& file);

  store::JobBook& book_;
  JobModel* jobs_;
  VersionModel* versions_;
  QTableView* job_table_ = nullptr;
  QTableView* version_table_ = nullptr;
  QLineEdit* words_ = nullptr;
  QComboBox* sorted_ = nullptr;
  QCheckBox* archived_ = nullptr;
  QComboBox* state_ = nullptr;
  QLabel* counted_ = nullptr;
  QLabel* of_job_ = nullptr;
  QLabel* said_ = nullptr;
  QPushButton *open_ = nullptr, *copy_ = nullptr, *archive_ = nullptr, *write_ = nullptr;
  QPushButton *save_ = nullptr, *show_ = nullptr, *compare_ = nullptr, *work_on_ = nullptr;
  QPushButton *today_ = nullptr, *otherwise_ = nullptr;
  std::int64_t open_job_ = 0;
};

// The book's window over `parent`, made where there is none yet. The caller connects its signals once it is new.
BookWindow* show_book_window(store::JobBook& book, QWidget* parent);

}  // namespace ui
