// The day at the saw: every setting once, with how many pieces and where they go; then what is cut off rolls and
// sticks.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "estimate/estimate.h"
#include "sheets/all_sheets.h"
#include "sheets/saw_cuts.h"
#include "sheets/source.h"
#include "sheets/stock_pieces.h"
#include "units/quantity.h"

namespace sheets {

namespace {

std::string run_words(const Printed& printed, double metres) {
  const bool us = printed.job().heading.units == units::System::us;
  const double value = us ? metres / units::metres_per_foot : metres;
  return number_words(printed, std::round(value * 10) / 10) + (us ? " ft" : " m");
}

// All settings of one item and thickness.
struct OfItem {
  std::size_t first = 0;
  std::size_t count = 0;
  int pieces = 0;
  double metres = 0;
};

std::vector<OfItem> by_item(const std::vector<SawCut>& cuts) {
  std::vector<OfItem> all;
  for (std::size_t at = 0; at < cuts.size(); ++at) {
    const bool same = !all.empty() && cuts[all.back().first].item == cuts[at].item &&
                      std::abs(cuts[all.back().first].thickness - cuts[at].thickness) < 1e-4;
    if (!same) all.push_back({at, 0, 0, 0});
    OfItem& one = all.back();
    one.count += 1;
    one.pieces += cuts[at].pieces;
    one.metres += cuts[at].metres;
  }
  return all;
}

std::string passes_words(const Printed& printed, double thickness) {
  if (printed.job().choices.saw.empty() || thickness <= 0) return {};
  const int passes = passes_through(printed, thickness);
  return passes == 0 ? printed.say("not through") : std::to_string(passes);
}

Table saw_day(const Printed& printed, const std::vector<SawCut>& cuts, const std::vector<OfItem>& items) {
  Table table;
  table.columns = {{printed.say("What"), Align::left, 0.34},           {printed.say("Settings"), Align::right, 0.11},
                   {printed.say("Pieces"), Align::right, 0.11},        {printed.say("Through"), Align::right, 0.12},
                   {printed.say("Length of cut"), Align::right, 0.12}, {printed.say("Passes"), Align::right, 0.08},
                   {printed.say("Blade goes"), Align::right, 0.12}};
  OfItem all;
  double blade = 0;
  for (const OfItem& one : items) {
    const SawCut& first = cuts[one.first];
    const std::string from = counted_here("settings of " + first.item + " below");
    const double goes = one.metres * std::max(1, passes_through(printed, first.thickness));
    table.rows.push_back(
        {{Said(name_of(printed, first.item)), Said(std::to_string(one.count), from),
          Said(std::to_string(one.pieces), from),
          first.thickness > 0 ? Said(length_words(printed, first.thickness), of_item(first.item, "height")) : Said(),
          Said(run_words(printed, one.metres), from),
          Said(passes_words(printed, first.thickness), of_item(printed.job().choices.saw, "cut_depth_mm")),
          Said(run_words(printed, goes), from)}});
    all.count += one.count;
    all.pieces += one.pieces;
    all.metres += one.metres;
    blade += goes;
  }
  const std::string from = counted_here("the rows above");
  table.rows.push_back({{Said(printed.say("All")),
                         Said(std::to_string(all.count), from),
                         Said(std::to_string(all.pieces), from),
                         {},
                         Said(run_words(printed, all.metres), from),
                         {},
                         Said(run_words(printed, blade), from)},
                        Row::Kind::total});
  return table;
}

// Hours of the work lines whose rate is for cutting.
double cutting_hours(const Printed& printed, Table& table) {
  double hours = 0;
  for (const estimate::OrderLine& line : printed.results->estimate.lines) {
    const catalogue::Rate* rate = line.work ? printed.job().catalogue->rate(line.item) : nullptr;
    if (!rate || (rate->line_kind != "cut" && rate->line_kind != "saw") || line.order_unit != "h") continue;
    hours += line.order_quantity;
    std::string where;
    for (const std::string& tag : tags(printed, line.of)) where += (where.empty() ? "" : ", ") + tag;
    table.rows.push_back({{Said(name_of(printed, line.item)), Said(where),
                           Said(number_words(printed, std::round(line.order_quantity * 60)), of_line(printed, line))}});
  }
  return hours;
}

std::string about_saw(const Printed& printed) {
  const catalogue::Item* saw = printed.job().catalogue->item(printed.job().choices.saw);
  if (!saw) return printed.say("No saw is chosen: passes can't be told.");
  const auto water = saw->details.find("water");
  return filled(printed, water != saw->details.end() && water->second == "yes" ? "Saw: %1, with water." : "Saw: %1.",
                {name_of(printed, saw->id)});
}

void add_minutes(const Printed& printed, Passage& passage) {
  Table table;
  table.columns = {{printed.say("Work, by the rates of the estimate"), Align::left, 0.6},
                   {printed.say("Where"), Align::left, 0.24},
                   {printed.say("Minutes"), Align::right, 0.16}};
  const double hours = cutting_hours(printed, table);
  const catalogue::Item* saw = printed.job().catalogue->item(printed.job().choices.saw);
  const auto water = saw ? saw->number("water_l_per_min") : std::nullopt;
  if (!table.rows.empty()) {
    if (water)
      table.rows.push_back(
          {{Said(printed.say("Water, litres")),
            {},
            Said(number_words(printed, std::ceil(hours * 60 * *water)), of_item(saw->id, "water_l_per_min"))},
           Row::Kind::sum});
    passage.blocks.emplace_back(std::move(table));
    passage.blocks.emplace_back(Paragraph{
        Said(printed.say("Tapers of borders and copings are in the minutes of laying them.")), Paragraph::Kind::note});
  }
  passage.blocks.emplace_back(Caution{printed.say(
      "Cutting makes silica dust: cut wet or with dust capture at the blade (29 CFR 1926.1153, Table 1), and pick dust "
      "and dried slurry up wet or with a filtered vacuum, never by dry sweeping. No slurry into a storm inlet.")});
  const double limit = printed.job().catalogue->number_limit("silica-hours", 4);
  if (hours > limit)
    passage.blocks.emplace_back(Caution{filled(
        printed,
        "By the rates this is more than %1 h at the saw: outdoors, a hand-held wet saw for more than that in one "
        "shift needs a respirator. Local rules and the competent person decide.",
        {number_words(printed, limit)})});
}

std::string degrees_words(const Printed& printed, const SawCut& cut) {
  if (cut.angle != 0) return number_words(printed, std::round(cut.angle * 180 / std::numbers::pi * 10) / 10) + "°";
  return cut.marked ? "" : printed.say("square");
}

std::string fence_words(const Printed& printed, const SawCut& cut) {
  if (cut.most <= 0) return {};
  if (cut.most - cut.least < 1e-4) return length_words(printed, cut.most);
  return filled(printed, "%1 to %2", {length_words(printed, cut.least), length_words(printed, cut.most)});
}

std::string piece_words(const Printed& printed, const SawCut& cut) {
  std::string text = printed.say(cut.what);
  if (!cut.keep.empty()) text += ", " + printed.say(cut.keep + " part kept");
  if (cut.from_offcut) text += ", " + printed.say("out of an offcut");
  if (cut.marked) text += ", " + printed.say("marked in its place");
  return text;
}

std::string where_words(const SawCut& cut) {
  std::string text;
  for (const SawCut::Where& one : cut.where) {
    if (!text.empty()) text += "; ";
    text += one.of + (one.place.empty() ? "" : " " + one.place);
    if (cut.where.size() > 1) text += ": " + std::to_string(one.pieces);
  }
  return text;
}

Passage settings(const Printed& printed, const std::vector<SawCut>& cuts, const OfItem& item) {
  Table table;
  table.columns = {{"", Align::left, 0, true},
                   {printed.say("Fence"), Align::right, 0.17},
                   {printed.say("Angle"), Align::right, 0.1},
                   {printed.say("Pieces"), Align::right, 0.09},
                   {printed.say("Cut"), Align::left, 0.28},
                   {printed.say("Where it goes"), Align::left, 0.36}};
  for (std::size_t at = item.first; at < item.first + item.count; ++at) {
    const SawCut& cut = cuts[at];
    const std::string from = "saw/" + std::to_string(at);
    table.rows.push_back({{{},
                           Said(fence_words(printed, cut), from),
                           Said(degrees_words(printed, cut), from),
                           Said(std::to_string(cut.pieces), from),
                           Said(piece_words(printed, cut)),
                           Said(where_words(cut))}});
  }
  Passage passage;
  passage.blocks.emplace_back(
      Heading{name_of(printed, cuts[item.first].item),
              {filled(printed, item.pieces == 1 ? "%1 piece" : "%1 pieces", {std::to_string(item.pieces)}),
               counted_here("settings below")},
              "",
              2});
  passage.blocks.emplace_back(std::move(table));
  return passage;
}

}  // namespace

Sheet cut_list(const Printed& printed) {
  Sheet sheet;
  sheet.word = "cut-list";
  sheet.title = printed.say("Cut list");
  const std::vector<SawCut> cuts = saw_cuts(printed);
  const std::vector<OfItem> items = by_item(cuts);
  if (!cuts.empty()) {
    sheet.about.push_back(about_saw(printed));
    sheet.about.push_back(
        printed.say("Measure each place before cutting: what was built is what counts. Left and right are as seen "
                    "facing the wall; places along it are from its start."));
    Passage day;
    day.blocks.emplace_back(Heading{printed.say("At the saw"), {}});
    day.blocks.emplace_back(saw_day(printed, cuts, items));
    add_minutes(printed, day);
    sheet.passages.push_back(std::move(day));
  }
  for (const OfItem& item : items) sheet.passages.push_back(settings(printed, cuts, item));
  add_stock(printed, sheet);
  if (sheet.passages.empty()) sheet.passages.push_back({{Paragraph{Said(printed.say("Nothing is cut on this job."))}}});
  return sheet;
}

}  // namespace sheets
