#include "sheets/changed_plan.h"

#include <algorithm>
#include <limits>

#include "plan/edits.h"
#include "plan/site.h"
#include "sheets/parts.h"

namespace sheets {

namespace {

constexpr double point_half = 0.15;  // metres

bool takes_no_ground(const plan::Kind& kind) {
  return std::holds_alternative<plan::Note>(kind) || std::holds_alternative<plan::Dimension>(kind) ||
         std::holds_alternative<plan::SitePlan>(kind) || std::holds_alternative<plan::LevelBook>(kind) ||
         std::holds_alternative<plan::BaseLine>(kind) || std::holds_alternative<plan::TapeBook>(kind);
}

std::vector<Contour> contours_of(const plan::Ground& ground) {
  for (const geometry::Region* region : {&ground.footprint, &ground.drawn})
    if (!region->empty()) return contours(*region);
  if (ground.path) return {contour(*ground.path)};
  const std::vector<plan::Grip> corners = plan::corners(*ground.element);
  if (corners.size() != 1) return {};
  const auto [x, y] = geometry::xy(corners.front().at);
  return {rectangle({x - point_half, y - point_half}, {x + point_half, y + point_half})};
}

Vec middle(const std::vector<Contour>& shape) {
  Vec sum;
  double count = 0;
  for (const Turn& turn : shape.front().turns) {
    sum = sum + turn.at;
    ++count;
  }
  return {sum.x / count, sum.y / count};
}

void add_from(const plan::Site& site, const plan::Differences& differences, bool gone,
              std::vector<ChangedShape>& into) {
  for (const auto& ground : site.grounds) {
    const plan::Element& element = *ground->element;
    if (takes_no_ground(element.kind)) continue;
    const auto found = std::ranges::find(differences.elements, element.id, &plan::ElementDifference::id);
    const bool differs = found != differences.elements.end();
    if (gone && !(differs && found->how == plan::Differs::gone)) continue;
    ChangedShape shape{contours_of(*ground), {}, element.id, {}};
    if (shape.contours.empty() || shape.contours.front().turns.empty()) continue;
    if (differs) shape.how = found->how;
    shape.tag = middle(shape.contours);
    into.push_back(std::move(shape));
  }
}

}  // namespace

ChangedPlan changed_plan(const plan::Job& before, const plan::Job& after) {
  const plan::Differences differences = plan::differences(before, after);
  ChangedPlan made;
  add_from(plan::site(after), differences, false, made.shapes);
  add_from(plan::site(before), differences, true, made.shapes);
  std::ranges::stable_sort(made.shapes, {}, [](const ChangedShape& shape) { return shape.how.has_value(); });
  if (made.shapes.empty()) return made;
  constexpr double far = std::numeric_limits<double>::max();
  made.low = {far, far};
  made.high = {-far, -far};
  for (const ChangedShape& shape : made.shapes) {
    for (const Contour& outline : shape.contours) {
      for (const Turn& turn : outline.turns) {
        made.low = {std::min(made.low.x, turn.at.x), std::min(made.low.y, turn.at.y)};
        made.high = {std::max(made.high.x, turn.at.x), std::max(made.high.y, turn.at.y)};
      }
    }
  }
  return made;
}

}  // namespace sheets
