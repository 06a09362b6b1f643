// The plan to scale: as it is finished, and what lies under it.
#include <algorithm>

#include "sheets/all_sheets.h"
#include "sheets/numbered.h"
#include "sheets/paper_scale.h"
#include "sheets/parts.h"
#include "sheets/plan_figure.h"
#include "sheets/plan_sheet_parts.h"

namespace sheets {

namespace {

// What a plan may take of the first page, its legend beside it or under it, on the smaller of the two papers each way;
// and what of that goes to the words round it.
constexpr double beside_wide_mm = 205, beside_high_mm = 141, under_wide_mm = 253, under_high_mm = 110;
constexpr double round_wide_mm = 24, round_high_mm = 36;

bool wanted_level(const Printed& printed, const Mark& mark, bool deep) {
  const plan::Element* element = printed.job().find(mark.of);
  const auto* level = element ? std::get_if<plan::Level>(&element->kind) : nullptr;
  if (!level) return true;
  // Inverts stand at the ends of their runs.
  return level->what != "invert" && level->what != (deep ? "finished" : "existing");
}

// Flags and cautions stand on other sheets, and so does what is only there while it is built.
bool wanted(const Printed& printed, const Mark& mark, bool deep) {
  if (mark.sign == Sign::problem || mark.sign == Sign::care) return false;
  const plan::Element* element = printed.job().find(mark.of);
  if (element && std::holds_alternative<plan::SiteMark>(element->kind)) return false;  // named with their depth
  return mark.sign != Sign::level || wanted_level(printed, mark, deep);
}

const plan::ElementId& of(const Part& part) {
  return std::visit([](const auto& one) -> const plan::ElementId& { return one.of; }, part);
}

// Of site marks only what lies in the ground, and that on the plan of what lies under it.
bool shown(const Printed& printed, const Part& part, bool deep) {
  const plan::Element* element = printed.job().find(of(part));
  if (!element) return true;
  if (const auto* mark = std::get_if<plan::SiteMark>(&element->kind)) return deep && mark->depth.has_value();
  return !std::holds_alternative<plan::Removal>(element->kind) &&
         !std::holds_alternative<plan::Protection>(element->kind);
}

// A tag whose middle lies off the plan (a house of which one wall is seen) comes to the plan's edge; other marks there
// are left out. False: it is left out.
bool brought_in(const Printed& printed, const PlanRoom& room, Mark& mark) {
  if (room.empty) return true;
  const Vec at = mark.at;
  if (at.x >= room.low.x && at.x <= room.high.x && at.y >= room.low.y && at.y <= room.high.y) return true;
  constexpr double edge = 0.4;  // metres
  const Vec in{std::clamp(mark.at.x, room.low.x + edge, room.high.x - edge),
               std::clamp(mark.at.y, room.low.y + edge, room.high.y - edge)};
  const plan::Element* element = printed.job().find(mark.of);
  if (mark.sign != Sign::tag || !element || !std::holds_alternative<plan::Building>(element->kind)) return false;
  mark.at = in;
  return true;
}

void put_starts(const Printed& printed, Figure& figure) {
  for (const auto& ground : printed.results->site.grounds) {
    const auto* area = std::get_if<plan::PavedArea>(&ground->element->kind);
    if (!area || !area->laying || ground->net.empty()) continue;
    figure.parts.emplace_back(std::in_place_type<Mark>, Mark{Sign::start_point,
                                                             metres(area->laying->start),
                                                             area->laying->direction.radians(),
                                                             {},
                                                             ground->element->id});
  }
}

std::shared_ptr<const Figure> figure_of(const Printed& printed, const PlanRoom& room, bool deep) {
  PlanWants wants;
  if (deep) wants.stage = takeoff::Stage::under_ground;
  wants.junctions = !deep;
  const Figure whole = plan_figure(*printed.results, wants);
  auto figure = std::make_shared<Figure>();
  for (const Part& part : whole.parts) {
    if (!shown(printed, part, deep)) continue;
    const auto* mark = std::get_if<Mark>(&part);
    if (!mark) {
      figure->parts.push_back(part);
      continue;
    }
    Mark own = *mark;
    if (!wanted(printed, own, deep) || !brought_in(printed, room, own)) continue;
    if (own.sign == Sign::name || own.sign == Sign::plain_point) own.text = numbered(printed, own.text);
    figure->parts.emplace_back(std::in_place_type<Mark>, std::move(own));
  }
  if (!deep) put_starts(printed, *figure);
  figure->low = room.empty ? whole.low : room.low;
  figure->high = room.empty ? whole.high : room.high;
  return figure;
}

// Where the legend goes leaves the plan the larger scale.
bool legend_beside(const Printed& printed, const PlanRoom& room) {
  const auto scale = [&](double wide, double high) {
    return fitting(room.high.x - room.low.x, room.high.y - room.low.y, wide - round_wide_mm, high - round_high_mm,
                   printed.job().heading.units)
        .one_to;
  };
  return scale(beside_wide_mm, beside_high_mm) <= scale(under_wide_mm, under_high_mm);
}

Drawing plan_drawing(const Printed& printed, const PlanRoom& room, bool deep, bool beside) {
  Drawing drawing;
  drawing.figure = figure_of(printed, room, deep);
  drawing.height_mm = beside ? beside_high_mm : under_high_mm;
  drawing.north = 0;
  drawing.plan = true;
  const double wide = (beside ? beside_wide_mm : under_wide_mm) - round_wide_mm;
  const double high = (beside ? beside_high_mm : under_high_mm) - round_high_mm;
  (deep ? measure_drains : measure_plan)(printed, room, wide, high, drawing);
  return drawing;
}

Passage plan_page(const Printed& printed, bool deep) {
  const PlanRoom room = plan_room(printed, deep);
  const bool beside = legend_beside(printed, room);
  Drawing drawing = plan_drawing(printed, room, deep, beside);
  Passage page;
  page.whole = true;
  if (deep) page.blocks.emplace_back(NewPage{});
  Heading heading{printed.say(deep ? "Under the ground" : "Finished"), {}, {}, 2};
  Table legend = plan_legend(printed, *drawing.figure, beside ? 1 : 3);
  if (!beside) {
    page.blocks.emplace_back(std::move(heading));
    page.blocks.emplace_back(std::move(drawing));
    page.blocks.emplace_back(std::move(legend));
    return page;
  }
  Beside two;
  two.share = beside_wide_mm / (under_wide_mm - 6);
  two.left.emplace_back(std::move(drawing));
  two.right.emplace_back(std::move(heading));
  two.right.emplace_back(std::move(legend));
  page.blocks.emplace_back(std::make_shared<const Beside>(std::move(two)));
  return page;
}

bool has_drains(const Printed& printed) {
  return std::ranges::any_of(printed.job().elements, [](const plan::ElementPtr& element) {
    const auto* wall = std::get_if<plan::Wall>(&element->kind);
    return std::holds_alternative<plan::DrainRun>(element->kind) || (wall && wall->pipe);
  });
}

}  // namespace

Sheet plan_sheet(const Printed& printed) {
  Sheet sheet;
  sheet.word = "plan";
  sheet.title = printed.say("Plan");
  sheet.landscape = true;
  const bool anything = std::ranges::any_of(printed.results->site.grounds, [](const auto& ground) {
    return !ground->drawn.empty() || ground->path.has_value();
  });
  if (!anything) {
    sheet.passages.push_back({{Paragraph{printed.say("Nothing is drawn yet.")}}});
    return sheet;
  }
  sheet.passages.push_back(plan_page(printed, false));
  if (has_drains(printed)) sheet.passages.push_back(plan_page(printed, true));
  Table elements = plan_elements(printed);
  if (!elements.rows.empty())
    sheet.passages.push_back({{NewPage{}, Heading{printed.say("What the tags say"), {}}, std::move(elements)}});
  return sheet;
}

}  // namespace sheets
