#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <vector>

#include "estimate/money_words.h"
#include "estimate/statement_rows.h"
#include "estimate/visit.h"

namespace estimate {

namespace {

constexpr auto taken = plan::Statement::What::assumption;
constexpr const char* judged = "A competent person judges the ground and the cut faces before anyone goes in.";

bool digs(const Known& of) { return of.work.has("digging"); }
bool soil_unknown(const Known& of) { return of.job.choices.soil.source == plan::Soil().source; }

std::string named(const Known& of, const plan::Id& id) {
  const catalogue::Item* item = of.job.catalogue->item(id);
  return item && !item->name.en.empty() ? item->name.en : id;
}

std::string way_in(const Known& of) {
  const std::string& access = of.job.choices.access;
  if (access == "hand") return "work by hand with barrows";
  return access == "tight" ? "a small machine that reaches the work" : "machines that reach the work";
}

// "14 loads of Dump truck, tandem axle": whole loads of each line, as they are ordered.
std::string loads(const Known& of) {
  std::vector<std::pair<plan::Id, double>> trucks;
  for (const takeoff::Line& line : of.takeoff.lines) {
    const catalogue::Item* item = of.job.catalogue->item(line.item);
    if (!item || item->kind != "truck") continue;
    auto found = std::ranges::find(trucks, line.item, &std::pair<plan::Id, double>::first);
    if (found == trucks.end()) found = trucks.insert(found, {line.item, 0.0});
    found->second += line.working.amount().value;
  }
  std::string text;
  for (const auto& [id, count] : trucks) {
    const auto whole = static_cast<long long>(std::ceil(count - 1e-9));
    text +=
        (text.empty() ? "" : ", ") + std::to_string(whole) + (whole == 1 ? " load of " : " loads of ") + named(of, id);
  }
  return text;
}

std::string allowances(const Known& of) {
  std::vector<std::string> names;
  for (const takeoff::Line& line : of.takeoff.lines)
    if (line.approximate && std::ranges::find(names, named(of, line.item)) == names.end())
      names.push_back(named(of, line.item));
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : "; ") + name;
  return text;
}

constexpr std::array rows{
    StatementRow{"services-unmarked", taken, "something is dug, and no buried service is marked",
                 [](const Known& of) { return digs(of) && !of.work.shows("buried-service"); },
                 "No buried service is marked on the plan; the price counts on none in the dig.", locating_caution,
                 "services"},
    StatementRow{"services-as-marked", taken, "something is dug, and buried services are marked",
                 [](const Known& of) { return digs(of) && of.work.shows("buried-service"); },
                 "Buried services are taken to lie as marked on the plan, and no others in the dig; none is moved in "
                 "this price.",
                 locating_caution, "services"},
    StatementRow{"barrier-stands", taken, "a pool and its barrier are drawn",
                 [](const Known& of) { return of.work.has("pool") && of.work.shows("barrier"); },
                 "The pool barrier is taken to stand as drawn; it is not built or changed in this price.",
                 "Local code says what barrier the pool must have, also while the work goes on.", "pool-barrier"},
    StatementRow{"soil-unknown", taken, "something is dug, and the soil is the one that a new job has",
                 [](const Known& of) { return digs(of) && soil_unknown(of); },
                 "The soil is not known: it is taken as %1, with the figures of common practice.", judged, "soil",
                 [](const Known& of) { return of.job.choices.soil.name; }},
    StatementRow{"soil-as-given", taken, "something is dug, in a soil that was entered",
                 [](const Known& of) { return digs(of) && !soil_unknown(of); },
                 "The soil is taken as %1; in another soil the dig, the haul and the base are priced anew.", judged,
                 "soil", [](const Known& of) { return of.job.choices.soil.name; }},
    StatementRow{"no-levels", taken, "something is dug, and no level of the ground is known",
                 [](const Known& of) { return digs(of) && !of.work.shows("existing"); },
                 "No levels of the ground were taken: dig and fill are counted as on level ground."},
    StatementRow{"spoil-reuse", taken, "a share of what is dug is placed again",
                 [](const Known& of) { return digs(of) && of.job.choices.soil.reusable > 0; },
                 "%1 of what is dug is taken to be fit to be placed again; if it is not, bought fill and more haul are "
                 "charged.",
                 "Fill that carries a wall or paving is passed by a competent person before it is placed.", "",
                 [](const Known& of) { return exact_percent(of.job.choices.soil.reusable); }},
    StatementRow{"haul", taken, "a truck hauls away", [](const Known& of) { return of.has_kind("truck"); },
                 "Haul is counted as %1, to the usual dump; more is charged by the load.", "", "", loads},
    StatementRow{"access", taken, "something is built", [](const Known&) { return true; },
                 "The hours count on %1; with a narrower way in they are priced anew.", "", "gate", way_in},
    StatementRow{"pool-to-measure", taken, "a pool is drawn whose edge was not measured again",
                 [](const Known& of) { return of.work.has("to-measure"); },
                 "Coping and cuts at the water are counted to the edge as drawn; once the shell is set it is measured "
                 "again and the price follows."},
    StatementRow{"on-backfill", taken, "paving lies on the backfill of a pool or a house",
                 [](const Known& of) { return !of.said_at("deck-on-backfill").empty(); },
                 "Backfill that others placed is taken to be compacted; where it settles, paving is lifted and relaid "
                 "at extra cost: %1.",
                 "", "", [](const Known& of) { return of.said_at("deck-on-backfill"); }},
    StatementRow{"slab-stays", taken, "a slab stays under new paving",
                 [](const Known& of) { return of.work.has("stays"); },
                 "The slab that stays is taken to be sound, and to fall so that water leaves it.", "", "old-work"},
    StatementRow{
        "soaks-away", taken, "the base counts on water going into the ground",
        [](const Known& of) { return of.job.choices.infiltration_counts; },
        "The base counts on ground that takes up water as it was measured (%1).",
        "Soaking away near a house, wall, well or septic field is for a licensed engineer and the local office.", "",
        [](const Known& of) {
          const std::string& source = of.job.choices.infiltration_source;
          return source.empty() ? std::string("no date or name was given") : source;
        }},
    StatementRow{"allowances", taken, "a quantity goes by a rule of thumb",
                 [](const Known& of) { return !allowances(of).empty(); },
                 "Counted by a rule of thumb and settled by what is used: %1.", "", "", allowances},
};

}  // namespace

std::span<const StatementRow> assumption_rows() { return rows; }

}  // namespace estimate
