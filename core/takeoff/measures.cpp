#include "takeoff/measures.h"

namespace takeoff {

Share measures(const plan::Ground& ground) {
  Share share;
  share.measures.element = ground.element->id;
  const bool pool = std::holds_alternative<plan::Pool>(ground.element->kind);
  if (!ground.drawn.empty()) {
    share.measures.put("outline_area_m2", ground.drawn.area().si());
    share.measures.put("perimeter_m", ground.drawn.perimeter().si());
    share.measures.put("net_area_m2", ground.net.area().si());
  }
  if (pool && !ground.drawn.empty()) {
    share.measures.put("water_area_m2", ground.drawn.area().si());
    share.measures.put("water_edge_m", ground.drawn.perimeter().si());
  }
  if (ground.path) share.measures.put("length_m", ground.path->length().si());
  return share;
}

}  // namespace takeoff
