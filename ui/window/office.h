// The office's side of the window: the job book, versions and their comparison, for the job that is open. It joins the
// windows of the book with the desk; what they show and how they are kept is theirs.
#pragma once

#include <QObject>
#include <functional>

#include "ui/desk/desk.h"
#include "ui/office/side_by_side.h"
#include "ui/window/keeper.h"
#include "ui/window/main_window.h"

namespace ui {

class BookWindow;

class Office : public QObject {
  Q_OBJECT
 public:
  // `window` gives the window of the moment: it is made anew when its language or light changes. Of the
  // shelf the catalogue and the keeping of pictures are used; `folder` is the book's.
  Office(Desk& desk, store::JobBook& book, Keeper& keeper, std::function<MainWindow*()> window, const Shelf& shelf = {},
         std::string folder = store::data_folder());
  static constexpr int start_again = 64;  // what the program ends with where it shall be started once more

  // Opens the job book's window, or brings it to the front.
  BookWindow* show_book();
  // Asks for a name and keeps the open job with its numbers as they stand. Says so, also where they are still being
  // worked out and nothing is kept.
  void save_version();
  void compare_with_now();        // the newest version with the job as it stands: what has changed since
  QString version_state() const;  // "working copy, after version 3"; empty: no version yet
  std::vector<std::pair<const char*, std::function<void()>>> actions();  // the rest of the menu, by the action's id
  SheetsShelf sheets();  // printed sheets are named after the newest version, and kept with it
  SideBySide& side_by_side() { return side_by_side_; }

 private:
  std::optional<store::VersionRow> version_as_it_stands();  // the newest, where the open job equals it
  void open_job(std::int64_t job);
  void work_on_from(std::int64_t version);
  // The version chosen in the job book, else the newest one of the open job; says so where there is none.
  std::optional<std::int64_t> chosen_version();
  void write_job(std::int64_t job);
  void change_order(std::int64_t before, std::int64_t after);
  void show_backups();
  void restore(const QString& backup);
  void change_order_of_newest();  // of the two versions chosen in the job book, else of the two newest
  void refresh();
  void tell(const problem::Problem& problem);
  void say(const QString& sentence);  // in the job book's window where it is open, else in the prompt
  Desk& desk_;
  store::JobBook& book_;
  Keeper& keeper_;
  std::function<MainWindow*()> window_;
  std::function<std::string(const QByteArray&)> keep_;
  std::string folder_;
  SideBySide side_by_side_;
};

}  // namespace ui
