// "Fewest cuts", "No slivers", "Survives the site", and "Move this edge" for each free edge: each one action, off the
// window's thread, that shows what was and what is.
#pragma once

#include <QWidget>

#include "ui/desk/desk.h"
#include "ui/desk/edge_cost.h"
#include "ui/desk/work.h"

class QGridLayout;
class QLabel;
class QProgressBar;

namespace ui {

class FlatButton;

// What was and is, as a person reads it: "Cut units 448 → 394". Rows that did not change are left out but the cut
// units.
struct Change {
  QString what;
  QString was;
  QString is;
};
std::vector<Change> changes(const LaidNumbers& was, const LaidNumbers& is);

class StartBox : public QWidget {
  Q_OBJECT
 public:
  explicit StartBox(Desk& desk, QWidget* parent = nullptr);
  void show_element(const plan::ElementId& id);
  void find(takeoff::paving::For what);
  void try_edge(std::size_t row);  // of the free edges shown
  void take_edge();                // what was found for it last
  bool busy() const { return work_.busy(); }
  QString told() const;  // the sentence under the buttons

 private:
  QWidget* make_progress();
  FlatButton* button(const char* name, const QString& words);
  void show_edges();
  void tell(const QString& sentence, const std::vector<Change>& rows);
  void found_start(takeoff::paving::For what, const plan::Job& of, const problem::Result<FoundStart>& found);
  void found_edge(const plan::Job& of, std::size_t row, const problem::Result<EdgeCost>& found);
  Desk& desk_;
  plan::ElementId id_;
  std::vector<FlatButton*> buttons_;
  std::vector<FreeEdge> edges_;
  std::optional<EdgeCost> best_;
  QString best_step_;
  JobPtr best_of_;  // the job that it was found for
  QGridLayout* table_ = nullptr;
  QWidget* rows_ = nullptr;
  QWidget* progress_ = nullptr;
  QProgressBar* bar_ = nullptr;
  QLabel* told_ = nullptr;
  FlatButton* do_it_ = nullptr;
  Work work_;  // last: it is stopped before what it fills goes
};

}  // namespace ui
