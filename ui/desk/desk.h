// The open job as the window sees it: its history, its newest results, what is selected and which stage is shown. All
// panels read it and follow its signals; every edit goes through `edit`. It is the only owner of the job in the window.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "plan/history.h"
#include "results/live.h"
#include "takeoff/stage.h"

namespace ui {

using JobPtr = std::shared_ptr<const plan::Job>;
using ResultsPtr = std::shared_ptr<const results::Results>;

// What an opened line of the takeoff lights up: the line's number in the estimate, and the term of its working that the
// person points at (-1: all of it). `of` are the elements and catalogue fields that it was measured from.
struct Lit {
  int line = -1;
  int term = -1;
  std::vector<std::string> of;
  bool operator==(const Lit&) const = default;
};

class Desk : public QObject {
  Q_OBJECT
 public:
  explicit Desk(JobPtr job, QObject* parent = nullptr);
  ~Desk() override;

  const plan::Job& job() const { return *history_.now(); }
  JobPtr job_ptr() const { return history_.now(); }
  const plan::History& history() const { return history_; }
  units::System units() const { return job().heading.units; }

  // The newest results there are: of `job()` unless `computing()`, of a value before it then. Null before the first.
  ResultsPtr results() const { return results_; }
  bool computing() const;

  const std::vector<plan::ElementId>& selected() const { return selected_; }
  const plan::Element* the_selected() const;  // where one element is selected
  std::optional<takeoff::Stage> stage() const { return stage_; }
  const Lit& lit() const { return lit_; }

 public slots:
  // One step of history. Nothing happens where the job is as before.
  void edit(const plan::Job& after, const QString& name);
  void undo();
  void redo();
  void open(ui::JobPtr job);  // another job: history begins anew
  void select(std::vector<plan::ElementId> ids);
  void show_stage(std::optional<takeoff::Stage> stage);  // none: the finished job
  void light(ui::Lit lit);
  void stop();                              // drops the computation that waits or runs
  void go_to(const problem::Place& place);  // selects its element and asks the plan to show the place
  void say(const QString& sentence);        // one sentence for the prompt

 signals:
  void opened();  // another job is on the desk; told before job_changed
  void job_changed();
  void results_changed();
  void computing_changed(bool computing);
  void selection_changed();
  void stage_changed();
  void lit_changed();
  void wanted_in_view(problem::Place place);
  void said(QString sentence);

 private:
  void changed();
  void take_results(ResultsPtr made);
  plan::History history_;
  ResultsPtr results_;
  std::vector<plan::ElementId> selected_;
  std::optional<takeoff::Stage> stage_;
  Lit lit_;
  JobPtr asked_;  // the job value that results are awaited for; null: none
  std::unique_ptr<results::Live> live_;
};

}  // namespace ui
