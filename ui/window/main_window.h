// The window: header, tools, prompt and plan, the order of work under them, and at the right what is selected, the
// takeoff and the total. It owns nothing of the job: the desk does.
#pragma once

#include <QMainWindow>
#include <functional>
#include <memory>

#include "takeoff/paving/start.h"
#include "ui/desk/desk.h"
#include "ui/print/sheets_shelf.h"
#include "ui/window/actions.h"

class QSplitter;
class QStackedWidget;

namespace ui {

class Header;
class PlanView;
class Prompt;
class SelectedPanel;
enum class Settling;
class SitePlans;
class StagePanel;
class StartPage;
class Strip;
class TakeoffPanel;
class ToolList;
class TotalPanel;

// What the window asks of whoever keeps jobs; each may be empty (then the action is not possible).
struct Shelf {
  std::function<void()> show_book;  // the job book: its jobs and their versions
  std::function<void()> save_version;
  std::function<void()> compare;                                      // the newest version with the job as it stands
  std::vector<std::pair<const char*, std::function<void()>>> office;  // what else is done there, by the action's id
  std::function<QString()> version_state;                             // of the open job, for the header
  std::function<void(plan::Job)> take_job;                            // a new job, or one from a file: kept and opened
  std::function<std::shared_ptr<const catalogue::Catalogue>()> catalogue;  // the book's, for new jobs and choices
  std::function<problem::Result<void>(const catalogue::Catalogue&)>
      put_items;                                       // those of it that the book has otherwise
  std::function<std::string(const QByteArray&)> keep;  // a picture's bytes: gives its SHA-256
  std::function<QByteArray(const std::string&)> body;
  SheetsShelf sheets;                  // what printed sheets ask of the book
  std::function<void()> look_changed;  // language, light or size: the window is made anew
};

class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  MainWindow(Desk& desk, Shelf shelf, QWidget* parent = nullptr);
  ~MainWindow() override;

  Actions& actions_by_id() { return actions_; }
  PlanView& plan() { return *plan_; }
  Prompt& prompt() { return *prompt_; }
  QWidget& right_side() { return *right_; }
  void show_version_state();  // asks the shelf anew
  void show_first_start();    // the demo job's note with three things to do

  void write_plan_picture();  // SVG or PNG, by the name that the person gives
  // Brings the job's order list to a CSV file; false with a sentence said where it can't be written.
  bool write_material_list(const QString& file);
  bool write_job_file(const QString& file) { return write_job_file(file, desk_->job()); }
  bool write_job_file(const QString& file, const plan::Job& job);
  bool read_job_file(const QString& file);
  // Asks where the open job's catalogue is not as the book's; what is taken of the book is one edit.
  void settle_prices(Settling settling);
  bool bring_in_site_plan(const QString& file, int page = 1);
  bool bring_in_outlines(const QString& file);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* make_left();
  QWidget* make_right();
  void connect_actions();
  void connect_files();
  void connect_stages();
  void connect_tools();
  void follow_desk();
  void undo();
  void show_prompt();
  void find_start(takeoff::paving::For what);
  void try_first(const QString& what);
  void next_part();
  void new_job();
  void find();
  void show_keys();
  void fold(bool narrow);
  void place_drawer();
  void refuse(const problem::Problem& problem);
  bool settle_with_book(plan::Job& job, Settling settling);
  template <class Slot>
  void on(const char* id, Slot slot) {
    connect(&actions_[id], &QAction::triggered, this, slot);
  }

  Desk* desk_;
  Shelf shelf_;
  Actions actions_;
  Header* header_ = nullptr;
  ToolList* tools_ = nullptr;
  Prompt* prompt_ = nullptr;
  PlanView* plan_ = nullptr;
  StartPage* start_ = nullptr;
  Strip* strip_ = nullptr;
  SelectedPanel* selected_ = nullptr;
  StagePanel* stage_ = nullptr;
  QStackedWidget* upper_right_ = nullptr;
  TakeoffPanel* takeoff_ = nullptr;
  TotalPanel* total_ = nullptr;
  QWidget* right_ = nullptr;
  QSplitter* sides_ = nullptr;
  std::unique_ptr<SitePlans> site_plans_;
  bool narrow_ = false;
};

}  // namespace ui
