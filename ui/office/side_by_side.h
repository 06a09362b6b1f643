// What is set side by side: versions of the book with each other and with the job as it stands, a version at today's
// prices, a job built otherwise. What is not kept is worked out off the window's thread and only shown: no version and
// no job is changed.
#pragma once

#include <QObject>

#include "store/job_book.h"
#include "ui/compare/compare_window.h"
#include "ui/desk/desk.h"
#include "ui/desk/work.h"
#include "ui/office/otherwise.h"

namespace ui {

class SideBySide : public QObject {
  Q_OBJECT
 public:
  // `window` gives whoever is the parent of what is opened; `catalogue` the book's.
  SideBySide(Desk& desk, store::JobBook& book, std::function<QWidget*()> window, Source catalogue);

  void versions(std::int64_t before, std::int64_t after);
  void with_now(std::int64_t job);   // the newest version of that job, which is on the desk, with how it stands
  void today(std::int64_t version);  // as it was quoted, and with the prices that the book has now
  // The same in another pattern or on another build-up; the person is asked which. 0: the job on the desk.
  void otherwise(std::int64_t version);
  bool busy() const { return work_.busy(); }

 signals:
  void said(QString sentence);
  void change_order(qint64 before, qint64 after);

 private:
  // One side: what is not there yet of it is worked out.
  struct Side {
    JobPtr job;
    std::optional<estimate::Kept> kept;
    QString name;
    std::int64_t id = 0;
  };
  std::optional<Side> version(std::int64_t id);
  Side now() const;
  void show(Side before, Side after);
  void open(const Side& before, const Side& after);
  Desk& desk_;
  store::JobBook& book_;
  std::function<QWidget*()> window_;
  Source catalogue_;
  Work work_;
};

}  // namespace ui
