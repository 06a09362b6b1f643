// Lights, spouts, basins and other counted things.
#include "takeoff/edges/notes.h"
#include "takeoff/water/flow.h"
#include "takeoff/water/water.h"

namespace takeoff::water {

namespace {

catalogue::Id rate_of(const std::string& kind, bool spout) {
  if (spout || kind == "spout") return "spout-set";
  if (kind == "light") return "light-set";
  if (kind == "basin" || kind == "inlet") return "basin-set";
  return {};
}

}  // namespace

Share feature(const plan::Job& job, const plan::Ground& ground) {
  Share share;
  const plan::ElementId& id = ground.element->id;
  const auto* drawn = std::get_if<plan::Feature>(&ground.element->kind);
  if (!drawn) return share;
  share.measures.element = id;
  if (drawn->spout) {
    const plan::Spout& spout = *drawn->spout;
    const double each = flow::weir(spout.length.metres().si(), spout.head.metres().si(), spout.contractions);
    share.measures.put("flow_l_s", each * drawn->count * 1000);
    share.problems.push_back(edges::notice(
        "spout-flow", "the flow of " + id + " is for choosing its pump line: a thin sheet runs within about 15 % of it",
        "set the flow on site; a licensed electrician connects pump and lights by the local code", id));
    share.facts.push_back("water-feature");
  }
  if (drawn->item.empty()) {
    share.problems.push_back(
        edges::notice("item-missing", "nothing is chosen for " + id + ", so nothing is bought", "choose an item", id));
    return share;
  }
  const catalogue::Item* item = edges::wanted(job, drawn->item, id, id, share);
  if (!item || drawn->count <= 0) return share;
  const Working count = term("count", drawn->count, units::piece, id);
  const bool below = item->kind == "inlet" || item->kind == "basin";
  const Stage stage = below ? Stage::under_ground : Stage::finish;
  share.lines.push_back({stage, drawn->item, id, {id}, count, {}, false});
  if (item->kind == "light" || item->kind == "spout" || item->kind == "allowance")
    share.facts.push_back("water-feature");
  const catalogue::Id rate = rate_of(item->kind, drawn->spout.has_value());
  if (!rate.empty()) edges::add_task(job, rate, stage, id, id, count, share);
  return share;
}

}  // namespace takeoff::water
