#include "ui/desk/desk.h"

#include <QMetaObject>
#include <algorithm>

namespace ui {

Desk::Desk(JobPtr job, QObject* parent) : QObject(parent), history_(std::move(job)) {
  // Live tells on its own thread; the results are taken on the window's. The queued call is dropped with this object.
  live_ = std::make_unique<results::Live>([this](ResultsPtr made) {
    QMetaObject::invokeMethod(this, [this, made = std::move(made)] { take_results(made); }, Qt::QueuedConnection);
  });
  asked_ = history_.now();
  live_->take(asked_);
}

Desk::~Desk() { live_.reset(); }

bool Desk::computing() const { return asked_ != nullptr; }

const plan::Element* Desk::the_selected() const {
  return selected_.size() == 1 ? job().find(selected_.front()) : nullptr;
}

void Desk::edit(const plan::Job& after, const QString& name) {
  const JobPtr before = history_.now();
  history_.record(std::make_shared<const plan::Job>(after), name.toStdString());
  if (history_.now() != before) changed();
}

void Desk::undo() {
  if (!history_.can_undo()) return;
  history_.undo();
  changed();
}

void Desk::redo() {
  if (!history_.can_redo()) return;
  history_.redo();
  changed();
}

void Desk::open(JobPtr job) {
  history_ = plan::History(std::move(job));
  results_ = nullptr;
  stage_.reset();
  selected_.clear();
  emit opened();
  emit stage_changed();
  emit results_changed();
  changed();
  emit selection_changed();
}

void Desk::changed() {
  // What is gone can't stay selected or lit.
  const auto gone = [this](const plan::ElementId& id) { return job().find(id) == nullptr; };
  const bool fewer = std::erase_if(selected_, gone) > 0;
  if (lit_ != Lit{}) light({});
  const bool was = computing();
  asked_ = history_.now();
  live_->take(asked_);
  emit job_changed();
  if (fewer) emit selection_changed();
  if (!was) emit computing_changed(true);
}

void Desk::take_results(ResultsPtr made) {
  const bool newest = made->job == asked_;
  results_ = std::move(made);
  if (newest) asked_ = nullptr;
  emit results_changed();
  if (newest) emit computing_changed(false);
}

void Desk::select(std::vector<plan::ElementId> ids) {
  std::erase_if(ids, [this](const plan::ElementId& id) { return job().find(id) == nullptr; });
  if (ids == selected_) return;
  selected_ = std::move(ids);
  emit selection_changed();
}

void Desk::show_stage(std::optional<takeoff::Stage> stage) {
  if (stage == stage_) return;
  stage_ = stage;
  emit stage_changed();
}

void Desk::light(Lit lit) {
  if (lit == lit_) return;
  lit_ = std::move(lit);
  emit lit_changed();
}

void Desk::stop() {
  if (!computing()) return;
  live_->stop();
  asked_ = nullptr;
  emit computing_changed(false);
}

void Desk::go_to(const problem::Place& place) {
  if (job().find(place.element) != nullptr) select({place.element});
  emit wanted_in_view(place);
}

void Desk::say(const QString& sentence) { emit said(sentence); }

}  // namespace ui
