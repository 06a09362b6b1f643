#include "ui/plan/site_plans.h"

#include <cmath>

#include "plan/edits.h"
#include "ui/plan/plan_view.h"
#include "ui/plan/site_plan_layer.h"

namespace ui {

namespace {

QString in_words(const problem::Problem& problem) {
  return QString::fromStdString(problem.text + (problem.mend.empty() ? "" : ": " + problem.mend));
}

// "SHA-256/NAME": 64 hexadecimal digits and a name.
constexpr std::size_t digits = 64;
bool in_book(const std::string& file) { return file.size() > digits + 1 && file[digits] == '/'; }
QString shown_name(const std::string& file) {
  return QString::fromStdString(in_book(file) ? file.substr(digits + 1) : file);
}

}  // namespace

SitePlans::SitePlans(Desk& desk, PlanView& view, std::function<QByteArray(const std::string&)> body)
    : desk_(&desk), view_(&view), body_(std::move(body)) {
  view.set_under([this](QPainter& painter, const Sight& sight, const QRectF& clip) { paint(painter, sight, clip); },
                 [this] { return room(); });
  connect(desk_, &Desk::job_changed, this, &SitePlans::follow_job);
  follow_job();
}

void SitePlans::follow_job() {
  bool any = false;
  for (const auto& element : desk_->job().elements) {
    const auto* plan = std::get_if<plan::SitePlan>(&element->kind);
    if (plan == nullptr || plan->file.empty()) continue;
    any = true;
    if (!loaded_.contains({plan->file, plan->page})) load(plan->file, plan->page);
  }
  if (any) view_->refresh_under();
}

void SitePlans::load(const std::string& file, int page) {
  loaded_[{file, page}] = nullptr;
  QByteArray bytes;
  if (in_book(file)) {
    if (body_) bytes = body_(file.substr(0, digits));
  } else if (auto read = site_plan_bytes(QString::fromStdString(file))) {
    bytes = std::move(*read);
  }
  if (bytes.isEmpty()) {
    desk_->say(tr("The site plan %1 is not there any more: bring it in again").arg(shown_name(file)));
    return;
  }
  load_site_plan_later(bytes, shown_name(file), page, this, [this, file, page](problem::Result<LoadedPlanPtr> made) {
    if (!made) {
      desk_->say(in_words(made.error()));
      return;
    }
    loaded_[{file, page}] = *made;
    view_->refresh_under();
  });
}

void SitePlans::bring_in(plan::SitePlan plan, const QByteArray& bytes, std::function<void(const QString&)> told) {
  load_site_plan_later(bytes, shown_name(plan.file), plan.page, this,
                       [this, plan, told = std::move(told)](problem::Result<LoadedPlanPtr> made) mutable {
                         if (!made) {
                           told(in_words(made.error()));
                           return;
                         }
                         loaded_[{plan.file, plan.page}] = *made;
                         plan.metres_per_pixel = first_metres_per_pixel(**made);
                         // Its middle in the middle of the view.
                         const QRectF room = (*made)->picture() ? QRectF(QPointF(), (*made)->size()) : (*made)->bounds;
                         const geometry::Vec middle = view_->sight().to_metres(QRectF(view_->rect()).center());
                         const auto steps = [](double metres) {
                           return units::Length::of_steps(std::llround(metres * units::Length::steps_per_metre));
                         };
                         const QPointF half =
                             (*made)->picture() ? QPointF(room.width() / 2, room.height() / 2) : room.center();
                         plan.at = {steps(middle.x - half.x() * plan.metres_per_pixel),
                                    steps(middle.y - half.y() * plan.metres_per_pixel)};
                         plan::Element element;
                         element.name = shown_name(plan.file).toStdString();
                         element.kind = plan;
                         element.id = plan::free_id(desk_->job(), element.kind);
                         const plan::ElementId id = element.id;
                         desk_->edit(plan::with(desk_->job(), std::move(element)), tr("Bring in a site plan"));
                         desk_->select({id});
                         view_->refresh_under();
                         told({});
                       });
}

bool SitePlans::loaded(const plan::ElementId& id) const {
  const plan::Element* element = desk_->job().find(id);
  const auto* plan = element != nullptr ? std::get_if<plan::SitePlan>(&element->kind) : nullptr;
  if (plan == nullptr) return false;
  const auto found = loaded_.find({plan->file, plan->page});
  return found != loaded_.end() && found->second != nullptr;
}

QRectF SitePlans::room() const {
  QRectF all;
  for (const auto& element : desk_->job().elements) {
    const auto* plan = std::get_if<plan::SitePlan>(&element->kind);
    if (plan == nullptr) continue;
    const auto found = loaded_.find({plan->file, plan->page});
    if (found == loaded_.end() || !found->second) continue;
    const LoadedPlan& loaded = *found->second;
    const QRectF own = loaded.picture() ? QRectF(QPointF(), loaded.size()) : loaded.bounds;
    all = all.united(to_metres(*plan, loaded).mapRect(own).normalized());
  }
  return all;
}

void SitePlans::paint(QPainter& painter, const Sight& sight, const QRectF& clip) const {
  for (const auto& element : desk_->job().elements) {
    const auto* plan = std::get_if<plan::SitePlan>(&element->kind);
    if (plan == nullptr) continue;
    const auto found = loaded_.find({plan->file, plan->page});
    if (found != loaded_.end() && found->second) paint_site_plan(painter, *plan, *found->second, sight, clip);
  }
}

}  // namespace ui
