// The office's side of the window: the job book, versions and their comparison, for the job that is open. It joins the
// windows of the book with the desk; what they show and how they are kept is theirs.
#pragma once

#include <QObject>
#include <functional>

#include "ui/desk/desk.h"
#include "ui/window/keeper.h"
#include "ui/window/main_window.h"

namespace ui {

class BookWindow;

class Office : public QObject {
  Q_OBJECT
 public:
  // `window` gives the window of the moment: it is made anew when its language or light changes.
  Office(Desk& desk, store::JobBook& book, Keeper& keeper, std::function<MainWindow*()> window);

  // Opens the job book's window, or brings it to the front.
  BookWindow* show_book();
  // Asks for a name and keeps the open job with its numbers as they stand. Says so, also where they are still being
  // worked out and nothing is kept.
  void save_version();
  void compare_with_now();        // the newest version with the job as it stands: what has changed since
  QString version_state() const;  // "working copy, after version 3"; empty: no version yet

 private:
  void open_job(std::int64_t job);
  void work_on_from(std::int64_t version);
  void compare(std::int64_t before, std::int64_t after);
  void write_job(std::int64_t job);
  void refresh();
  void tell(const problem::Problem& problem);
  Desk& desk_;
  store::JobBook& book_;
  Keeper& keeper_;
  std::function<MainWindow*()> window_;
};

}  // namespace ui
