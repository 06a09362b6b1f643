#include <algorithm>
#include <array>
#include <map>

#include "sheets/plan_figure.h"
#include "sheets/quote_parts.h"
#include "sheets/source.h"
#include "units/quantity.h"

namespace sheets {

namespace {

// A customer is shown what it will be, not what the crew measures or what somebody has still to decide.
bool for_the_customer(const Part& part) {
  const auto* mark = std::get_if<Mark>(&part);
  if (!mark) return true;
  constexpr std::array shown{Sign::tag, Sign::name, Sign::tree, Sign::light_point};
  return std::ranges::find(shown, mark->sign) != shown.end();
}

// One row of what is built.
struct Built {
  std::string what;
  Said much;
};

std::optional<double> measured(const Printed& printed, const plan::ElementId& of, std::string_view name) {
  for (const takeoff::Measures& own : printed.results->takeoff.measures)
    if (own.element == of) return own.get(name);
  return std::nullopt;
}

class Telling {
 public:
  Telling(const Printed& printed, const plan::Element& element) : printed_(printed), element_(element) {}

  Built operator()(const plan::PavedArea& area) const {
    std::string what = say("Paving");
    if (area.laying) {
      std::string units;
      for (const auto& [size, item] : area.laying->units)
        if (const std::string name = name_of(printed_, item); units.find(name) == std::string::npos)
          units += (units.empty() ? "" : ", ") + name;
      what = filled(printed_, "%1, pattern: %2", {units, name_of(printed_, area.laying->pattern)});
    }
    for (const plan::BorderCourse& border : area.borders)
      what += "; " + filled(printed_, "border of %1", {name_of(printed_, border.item)});
    if (!area.build_up.empty()) what += "; " + filled(printed_, "on: %1", {name_of(printed_, area.build_up)});
    return {what, area_of("net_area_m2")};
  }
  Built operator()(const plan::Pool& pool) const {
    if (!pool.coping) return {};
    return {name_of(printed_, pool.coping->item), run_of("coping_length_m")};
  }
  Built operator()(const plan::Wall& wall) const {
    if (wall.existing) return {};
    std::string what = name_of(printed_, wall.block);
    if (!wall.cap.empty()) what += "; " + filled(printed_, "cap: %1", {name_of(printed_, wall.cap)});
    return {what, run_of("face_length_m")};
  }
  Built operator()(const plan::Steps& steps) const {
    return {name_of(printed_, steps.unit), count_of("risers", "risers")};
  }
  Built operator()(const plan::KeepOut& kept) const {
    if (!kept.pillar) return {};
    return {name_of(printed_, kept.pillar->block), run_of("pillar_height_m")};
  }
  Built operator()(const plan::EdgeRun& run) const { return {name_of(printed_, run.item), run_of("length_m")}; }
  Built operator()(const plan::DrainRun& run) const { return {name_of(printed_, run.item), run_of("length_m")}; }
  Built operator()(const plan::Feature& feature) const {
    return {name_of(printed_, feature.item), Said("1", of_element(element_.id, "item"))};
  }
  Built operator()(const plan::Removal& removal) const {
    const bool stays = removal.fate == "leave";
    std::string what = removal.what;
    std::ranges::replace(what, '-', ' ');
    return {filled(printed_, stays ? "Stays and is built on: %1" : "Taken out: %1", {say(what)}),
            removal.line ? run_of("length_m") : area_of("outline_area_m2")};
  }
  template <class Other>
  Built operator()(const Other&) const {
    return {};
  }

 private:
  std::string say(const std::string& english) const { return printed_.say(english); }
  Said area_of(const char* measure) const {
    const auto value = measured(printed_, element_.id, measure);
    return value ? Said(area_words(printed_, *value), of_measure(element_.id, measure)) : Said();
  }
  Said run_of(const char* measure) const {
    const auto value = measured(printed_, element_.id, measure);
    return value ? Said(length_words(printed_, *value), of_measure(element_.id, measure)) : Said();
  }
  Said count_of(const char* measure, const char* unit) const {
    const auto value = measured(printed_, element_.id, measure);
    if (!value) return {};
    return {number_words(printed_, *value) + " " + say(unit), of_measure(element_.id, measure)};
  }
  const Printed& printed_;
  const plan::Element& element_;
};

}  // namespace

void add_picture(const Printed& printed, Sheet& sheet) {
  auto figure = std::make_shared<Figure>(plan_figure(*printed.results, {std::nullopt, false, false, false}));
  std::erase_if(figure->parts, [](const Part& part) { return !for_the_customer(part); });
  if (figure->parts.empty()) return;
  Drawing drawing;
  drawing.figure = std::move(figure);
  drawing.title = printed.say("As it will be laid");
  drawing.height_mm = 165;
  drawing.north = 0.0;
  drawing.colour = true;
  drawing.plan = true;
  sheet.passages.push_back({{std::move(drawing)}, std::nullopt, true});
}

void add_built(const Printed& printed, Sheet& sheet) {
  Table table{{{printed.say("On the plan"), Align::left, 0.2},
               {printed.say("What"), Align::left, 0.62},
               {printed.say("How much"), Align::right, 0.18}},
              {}};
  for (const plan::ElementPtr& element : printed.job().elements) {
    const Built built = std::visit(Telling(printed, *element), element->kind);
    if (built.what.empty()) continue;
    table.rows.push_back(
        {{Said(element->id + (element->name.empty() ? "" : "  " + element->name)), Said(built.what), built.much}});
  }
  for (const plan::AddedLine& line : printed.job().offer.lines)
    if (!line.nothing_on_purpose && line.quantity > 0) table.rows.push_back({{{}, Said(printed.say(line.text)), {}}});
  if (table.rows.empty()) return;
  Passage passage;
  passage.blocks.emplace_back(Heading{printed.say("Included"), {}});
  passage.blocks.emplace_back(std::move(table));
  sheet.passages.push_back(std::move(passage));
}

}  // namespace sheets
