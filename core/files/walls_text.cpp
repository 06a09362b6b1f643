#include "files/walls_text.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "files/sheet_text.h"
#include "files/takeoff_measures.h"
#include "takeoff/working_lines.h"
#include "units/number.h"

namespace files {

namespace {

using takeoff::Check;
using takeoff::Cut;

// What a saw is set to is read in millimetres, not in thousandths of a metre.
std::string small_length(double metres, units::System system) {
  if (system == units::System::us) return units::show_length(units::Length::nearest(units::Metres(metres)), system);
  return units::show_grouped(metres * 1000, 0) + " mm";
}

// A factor to two decimals, anything else in the units that the job is read in.
std::string value_in_words(double value, units::Unit unit, units::System system) {
  if (unit == units::piece) return units::show_grouped(value, 2);
  if (unit == units::metre) return small_length(value, system);
  return takeoff::Working(takeoff::term("", value, unit)).sentence(system);
}

// Columns: check 54, value 14, wanted 24, result: 110 with the indent and the spaces between.
std::string check_row(const Check& check, units::System system) {
  const units::Amount amount = check.working.amount();
  const std::string wanted =
      std::string(check.at_most ? "at most " : "at least ") + value_in_words(check.limit, amount.unit, system);
  const std::string name = "  " + check.name;
  const bool long_name = columns_of(name) > 58;
  return (long_name ? wrapped(check.name, "  ", 4) + std::string(58, ' ') : at_left(name, 58)) +
         at_right(value_in_words(amount.value, amount.unit, system), 14) + "   " + at_left(wanted, 24) +
         (check.passes() ? "passes" : "FAILS") + "\n";
}

// The checks of one element and stretch, in the order found.
struct Stretch {
  std::string of;
  std::string where;
  std::vector<const Check*> checks;
};

std::vector<Stretch> by_stretch(const std::vector<Check>& checks) {
  std::vector<Stretch> all;
  for (const Check& check : checks) {
    const auto same = std::ranges::find_if(
        all, [&check](const Stretch& one) { return one.of == check.of && one.where == check.where; });
    Stretch& to = same == all.end() ? all.emplace_back(Stretch{check.of, check.where, {}}) : *same;
    to.checks.push_back(&check);
  }
  return all;
}

std::string stretch_in_words(const Stretch& stretch, units::System system) {
  std::string text = "\n" + wrapped(stretch.of + (stretch.where.empty() ? "" : ", " + stretch.where), "", 2);
  for (const Check* check : stretch.checks) text += check_row(*check, system);
  takeoff::WorkingLines lines(system);
  std::string how;
  for (const Check* check : stretch.checks)
    for (const std::string& line : lines.tell(check->working, check->name)) how += wrapped(line, "      ", 8);
  return text + "    worked out so:\n" + how;
}

// Each source once, in the order found.
std::string sources_of(const std::vector<Check>& checks) {
  std::vector<std::string> all;
  for (const Check& check : checks) {
    std::string_view rest = check.source;
    while (!rest.empty()) {
      const std::size_t end = rest.find("; ");
      const std::string one(rest.substr(0, end));
      if (std::ranges::find(all, one) == all.end()) all.push_back(one);
      rest = end == std::string_view::npos ? std::string_view{} : rest.substr(end + 2);
    }
  }
  std::string text;
  for (const std::string& one : all) text += wrapped(one, "  ", 4);
  return text.empty() ? text : "\nSources\n" + text;
}

std::string degrees_of(double radians) {
  if (std::abs(radians) < 1e-9) return "square";
  std::string text = units::show_grouped(radians * 180 / std::numbers::pi, 2);
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text;
}

// Cuts for which the saw is set alike and the same part is kept.
struct Setting {
  const Cut* first = nullptr;
  std::string what;  // without its course
  int count = 0;
  std::vector<std::string> places;
};

struct OfItem {
  std::string of;
  std::string item;
  double thickness = 0;
  std::vector<Setting> settings;
};

// "course 3, end piece" and "courses 2, 4 and 6, end piece" are end pieces; nothing where no course is named.
std::string course_of(const std::string& what) {
  if (!what.starts_with("course ") && !what.starts_with("courses ")) return {};
  return what.substr(0, what.rfind(", "));
}
std::string kind_of(const std::string& what) {
  const std::size_t course = course_of(what).size();
  return course > 0 && course + 2 <= what.size() ? what.substr(course + 2) : what;
}

// A tenth of a millimetre tells settings apart, and is less than a saw can be set to.
bool set_alike(const Cut& a, const Cut& b) {
  const auto alike = [](double one, double other) { return std::abs(one - other) < 1e-4; };
  return kind_of(a.what) == kind_of(b.what) && a.keep == b.keep && a.from_offcut == b.from_offcut &&
         alike(a.kept, b.kept) && alike(a.length, b.length) && std::abs(a.angle - b.angle) < 1e-6;
}

// The head of the list says once from where places are measured.
std::string place_of(const Cut& cut) {
  constexpr std::string_view from_start = " from the wall's start";
  std::string_view where = cut.where;
  if (where.ends_with(from_start)) where.remove_suffix(from_start.size());
  const std::string course = course_of(cut.what);
  return course + (course.empty() || where.empty() ? "" : " ") + std::string(where);
}

void take(OfItem& of, const Cut& cut) {
  const auto same =
      std::ranges::find_if(of.settings, [&cut](const Setting& one) { return set_alike(*one.first, cut); });
  Setting& to = same == of.settings.end() ? of.settings.emplace_back(Setting{&cut, kind_of(cut.what), 0, {}}) : *same;
  to.count += cut.count;
  const std::string place = place_of(cut);
  if (!place.empty() && std::ranges::find(to.places, place) == to.places.end()) to.places.push_back(place);
}

std::vector<OfItem> by_item(const std::vector<Cut>& cuts) {
  std::vector<OfItem> all;
  for (const Cut& cut : cuts) {
    const auto same = std::ranges::find_if(all, [&cut](const OfItem& one) {
      return one.of == cut.of && one.item == cut.item && std::abs(one.thickness - cut.thickness) < 1e-4;
    });
    take(same == all.end() ? all.emplace_back(OfItem{cut.of, cut.item, cut.thickness, {}}) : *same, cut);
  }
  for (OfItem& one : all)
    std::ranges::stable_sort(one.settings, [](const Setting& a, const Setting& b) {
      return std::pair(a.first->angle, -a.first->kept) < std::pair(b.first->angle, -b.first->kept);
    });
  return all;
}

// Columns: cuts 7, keeps 14, degrees 9, length of a cut 14, and what is cut.
std::string cut_row(std::string_view count, std::string_view kept, std::string_view degrees, std::string_view length,
                    std::string_view what) {
  return at_right(count, 7) + at_right(kept, 14) + at_right(degrees, 9) + at_right(length, 14) + "  " +
         std::string(what);
}

std::string setting_in_words(const Setting& setting, units::System system) {
  const Cut& cut = *setting.first;
  std::string what = setting.what;
  if (!cut.keep.empty()) what += ", " + cut.keep + " part kept";
  if (cut.from_offcut) what += ", out of an offcut";
  for (std::size_t i = 0; i < setting.places.size(); ++i) what += (i ? "; " : ": ") + setting.places[i];
  const std::string row = cut_row(std::to_string(setting.count), cut.kept > 0 ? small_length(cut.kept, system) : "-",
                                  degrees_of(cut.angle), small_length(cut.length, system), "");
  return wrapped(what, row, columns_of(row));
}

std::string item_in_words(const OfItem& one, const results::Results& results) {
  const units::System system = results.job->heading.units;
  int cuts = 0;
  double metres = 0;
  for (const Setting& setting : one.settings) {
    cuts += setting.count;
    metres += setting.count * setting.first->length;
  }
  const catalogue::Item* item = results.job->catalogue->item(one.item);
  std::string title =
      one.of + ", " + (item && !item->name.en.empty() ? item->name.en + " (" + one.item + ")" : one.item);
  title += ": " + std::to_string(cuts) + (cuts == 1 ? " cut" : " cuts") + " through " +
           small_length(one.thickness, system) + ", " + quantity_in_words(metres, "m", system) + " in all";
  std::string text = "\n" + wrapped(title, "", 2);
  for (const Setting& setting : one.settings) text += setting_in_words(setting, system);
  return text;
}

}  // namespace

std::string checks_text(const results::Results& results) {
  const std::vector<Check>& checks = results.takeoff.checks;
  if (checks.empty()) return {};
  const units::System system = results.job->heading.units;
  std::string text = section("Preliminary checks");
  text += wrapped(
      "These go by the soils, strengths and factors that were entered, and decide nothing: local code does, and a "
      "licensed engineer. Of all stretches of a wall, each check shows the one where it comes out worst. Weights and "
      "forces are those of one running " +
          std::string(system == units::System::us ? "foot" : "metre") + " of wall.",
      "", 2);
  for (const Stretch& stretch : by_stretch(checks)) text += stretch_in_words(stretch, system);
  return text + sources_of(checks);
}

std::string cuts_text(const results::Results& results) {
  if (results.takeoff.cuts.empty()) return {};
  std::string text = section("Cuts of blocks, caps and steps");
  text += wrapped(
      "Places are from the wall's start (which end that is stands with its measures above), left and right as you "
      "face it. Equal cuts stand together, square ones first. Measure each place before cutting: what was built is "
      "what counts.",
      "", 2);
  text += "\n" + cut_row("cuts", "keeps", "degrees", "cut is long", "which") + "\n";
  for (const OfItem& one : by_item(results.takeoff.cuts)) text += item_in_words(one, results);
  return text;
}

std::string start_of(const plan::Element& element) {
  const auto* wall = std::get_if<plan::Wall>(&element.kind);
  if (!wall || wall->existing) return {};
  // Going along the line with the ground behind on the right, the face is on the left: whoever stands before it and
  // looks at it sees the line run to the left.
  const std::string end = wall->behind == geometry::Side::right ? "right" : "left";
  return "places along it are measured from its start, the " + end + " end as you face it";
}

}  // namespace files
