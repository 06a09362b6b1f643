// The live takeoff: what is ordered and what is worked, each line opening to its working, and beside it what is to
// solve.
#pragma once

#include <QSet>
#include <QWidget>
#include <map>

#include "ui/desk/desk.h"
#include "ui/panels/takeoff_model.h"

class QStackedLayout;

namespace ui {

class FlatButton;
class SolvePanel;
class TakeoffItems;
class TakeoffView;

// The scope follows what the person does: a stage that is shown, else an element that is selected, else the whole job;
// once "Whole job" is pressed it stays until another scope is pressed or a stage is chosen.
class TakeoffPanel : public QWidget {
  Q_OBJECT
 public:
  TakeoffPanel(Desk& desk, QWidget* parent = nullptr);

  Scope scope() const { return scope_; }
  void set_scope(Scope scope);
  TakeoffView* list() const { return view_; }
  SolvePanel* solve() const { return solve_; }

 public slots:
  void show_line(int number);  // of the estimate: in the whole job if need be, opened, its price field with the cursor
  void show_takeoff();
  void show_solve();
  void next_problem();

 signals:
  void wanted_in_catalogue(QString of);  // "item/field", "build-up/layer"
  void wanted_choices(QString of);       // "choices/..." or "soil/..."

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void make_head();
  void place_scopes();
  void choose_scope();
  void show_rows();
  void add_price_field(const QModelIndex& row, const plan::Id& item);
  void opened(const QModelIndex& line);
  void closed(const QModelIndex& line);
  void light_line(const QModelIndex& line);
  void pointed(const QModelIndex& index);
  void follow(const QModelIndex& index);
  void say_where(const QModelIndex& index);
  Asked asked() const;
  Desk& desk_;
  Scope scope_ = Scope::job;
  bool stays_ = false;  // the whole job was asked for
  QSet<QString> open_;  // keys of the lines that are open
  bool filling_ = false;
  std::map<plan::Id, QString> typed_;  // prices being typed: new results must not take them away
  plan::Id typing_;                    // the one with the cursor
  TakeoffItems* items_;
  TakeoffView* view_;
  SolvePanel* solve_;
  QWidget* head_;
  QWidget* scopes_;
  FlatButton* takeoff_tab_;
  FlatButton* solve_tab_;
  FlatButton* of_element_;
  FlatButton* of_stage_;
  FlatButton* of_job_;
  QStackedLayout* pages_;
};

}  // namespace ui
