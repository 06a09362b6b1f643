// Staging: where pallets and stone stand, what comes when in how many loads, which area empties which pallet.
#include <algorithm>
#include <cmath>
#include <memory>

#include "sheets/all_sheets.h"
#include "sheets/figure.h"
#include "sheets/source.h"
#include "sheets/staging_parts.h"

namespace sheets {

using estimate::OrderLine;

namespace {

// The elements that are brought something on pallets or in piles, each with the drop spot nearest to it.
std::vector<plan::ElementId> served(const Printed& printed) {
  std::vector<plan::ElementId> ids;
  for (const OrderLine& line : printed.results->estimate.lines)
    if (is_brought(printed, line)) ids.insert(ids.end(), line.of.begin(), line.of.end());
  return tags(printed, ids);
}

// A way as one steps it off: whole feet, half metres.
std::string stepped(const Printed& printed, double metres) {
  const double step = printed.job().heading.units == units::System::us ? 0.3048 : 0.5;
  return length_words(printed, std::round(metres / step) * step);
}

Row spot_row(const Printed& printed, const std::vector<DropSpot>& spots, const DropSpot& spot) {
  std::vector<std::string> ids;
  double farthest = 0;
  for (const plan::ElementId& id : served(printed)) {
    const auto middle = middle_of(printed, id);
    if (!middle || nearest(printed, spots, *middle) != &spot) continue;
    ids.push_back(id);
    farthest = std::max(farthest, carry(printed, spot.at, *middle));
  }
  Said room, way;
  if (spot.area > 0) room = {area_words(printed, spot.area), of_measure(spot.id, "outline_area_m2")};
  if (farthest > 0)
    way = {stepped(printed, farthest),
           counted_here("from the middle of the drop spot to the middle of the farthest element that it serves")};
  return {{spot.id + " " + spot.name, room, joined(ids, ", "), way}};
}

Passage spots_passage(const Printed& printed) {
  const std::vector<DropSpot> spots = drop_spots(printed);
  Passage passage{{Heading{printed.say("Drop spots"), {}}}};
  if (spots.empty()) {
    passage.blocks.push_back(Paragraph{{printed.say(
        "No drop spot is drawn: nobody has said yet where pallets, stone and spoil may stand. Draw it, or mark it here "
        "by hand before the first truck.")}});
  } else {
    Table table{{{printed.say("Drop spot"), Align::left, 0.34},
                 {printed.say("Room"), Align::right, 0.14},
                 {printed.say("Serves"), Align::left, 0.32},
                 {printed.say(has_path(printed) ? "Farthest way, by the way in" : "Farthest way, straight"),
                  Align::right, 0.2}},
                {}};
    for (const DropSpot& spot : spots) table.rows.push_back(spot_row(printed, spots, spot));
    passage.blocks.push_back(std::move(table));
  }
  passage.blocks.push_back(Caution{printed.say(
      "Pallets, stone and spoil stay off the dig and 2 ft (0.6 m) back from its edge, off roots and septic fields, as "
      "far behind a wall as it is high and as far from a pool as its shell is deep. No load is lifted within 10 ft (3 "
      "m) "
      "of an overhead line; local rules may ask for more.")});
  for (Caution& caution : stored_wrongly(printed)) passage.blocks.push_back(std::move(caution));
  return passage;
}

Passage ways_passage(const Printed& printed) {
  Table table{{{printed.say("Way in"), Align::left, 0.6}, {printed.say("Clear width"), Align::right, 0.4}}, {}};
  for (const plan::ElementPtr& element : printed.job().elements) {
    const auto* mark = std::get_if<plan::SiteMark>(&element->kind);
    if (!mark || (mark->what != "gate" && mark->what != "path")) continue;
    Said width;
    if (mark->width) width = {length_words(printed, mark->width->metres().si()), of_element(element->id, "width")};
    table.rows.push_back({{element->id + " " + element->name, width}});
  }
  if (table.rows.empty()) return {};
  return {{Heading{printed.say("Ways in"), {}}, table}};
}

bool on_the_map(const plan::Element& element) {
  const auto* mark = std::get_if<plan::SiteMark>(&element.kind);
  if (mark) return mark->what == "drop-spot" || mark->what == "gate" || mark->what == "path";
  return std::holds_alternative<plan::PavedArea>(element.kind) ||
         std::holds_alternative<plan::Building>(element.kind) || std::holds_alternative<plan::Pool>(element.kind) ||
         std::holds_alternative<plan::Wall>(element.kind) || std::holds_alternative<plan::Steps>(element.kind);
}

Drawing map(const Printed& printed) {
  Drawing drawing;
  drawing.figure = plan_with(printed, {on_the_map, {Sign::name, Sign::plain_point}});
  drawing.title = printed.say("For the driver");
  drawing.height_mm = 100;
  drawing.north = 0;
  drawing.plan = true;
  for (const DropSpot& spot : drop_spots(printed))
    drawing.notes.push_back({spot.at, {filled(printed, "set down here: %1", {spot.id})}});
  return drawing;
}

// The drop spots with the map at their side, where that fits on a page.
std::vector<Passage> places(const Printed& printed) {
  constexpr std::size_t beside_a_map = 6;
  Passage spots = spots_passage(printed), ways = ways_passage(printed);
  Drawing drawn = map(printed);
  std::vector<Block> all = spots.blocks;
  all.insert(all.end(), ways.blocks.begin(), ways.blocks.end());
  if (drawn.figure->parts.empty()) return {{std::move(all)}};
  if (drop_spots(printed).size() > beside_a_map) return {{std::move(all)}, {{std::move(drawn)}, std::nullopt, true}};
  return {{{std::make_shared<const Beside>(Beside{std::move(all), {std::move(drawn)}, 0.5})}}};
}

}  // namespace

Sheet staging(const Printed& printed) {
  Sheet sheet = sheet_named(printed, "staging", "Staging and deliveries");
  sheet.about = {printed.say("Where it stands, what comes when, who empties which pallet.")};
  sheet.landscape = true;
  const auto visits = visits_of(printed);
  if (visits.empty()) {
    sheet.passages.push_back({{Paragraph{{printed.say("Nothing is brought to this job yet.")}}}});
    return sheet;
  }
  sheet.passages = places(printed);
  for (Passage passage : {loads_passage(printed, visits), trucks_passage(printed, visits),
                          room_passage(printed, visits), pallets_passage(printed)})
    if (!passage.blocks.empty()) sheet.passages.push_back(std::move(passage));
  return sheet;
}

}  // namespace sheets
