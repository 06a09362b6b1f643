#include "takeoff/edges/notes.h"
#include "takeoff/there/there.h"

namespace takeoff::there {

Share protection(const plan::Job& job, const plan::Ground& ground) {
  Share share;
  share.measures.element = ground.element->id;
  const auto* what = std::get_if<plan::Protection>(&ground.element->kind);
  if (!what || !ground.computed) return share;
  const plan::ElementId& id = ground.element->id;
  const catalogue::Item* item = edges::wanted(job, what->item, "protection", id, share);
  const auto lay = [&](const Working& working, const plan::Id& rate) {
    if (item) share.lines.push_back({Stage::protect, item->id, "protection", {id}, working, std::nullopt, false});
    edges::add_task(job, rate, Stage::protect, "put down and take up", id, working, share);
  };
  if (!ground.drawn.empty()) {
    share.measures.put("protection_area_m2", ground.drawn.area().si());
    lay(term("area", ground.drawn.area().si(), units::square_metre, id), "protect-area");
  }
  if (ground.path) {
    share.measures.put("protection_length_m", ground.path->length().si());
    lay(term("length", ground.path->length().si(), units::metre, id), "protect-line");
  }
  share.facts.push_back("protection");
  return share;
}

}  // namespace takeoff::there
