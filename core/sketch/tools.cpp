#include "sketch/tool.h"

#include "sketch/dimension_tool.h"
#include "sketch/draw_tool.h"
#include "sketch/edge_tool.h"
#include "sketch/hole_tool.h"
#include "sketch/join_tool.h"
#include "sketch/measure_tool.h"
#include "sketch/mirror_tool.h"
#include "sketch/move_tool.h"
#include "sketch/offset_tool.h"
#include "sketch/pick_tool.h"
#include "sketch/point_tool.h"
#include "sketch/site_plan_tool.h"
#include "sketch/split_tool.h"
#include "sketch/start_tool.h"
#include "sketch/steps_tool.h"
#include "sketch/trace_tool.h"
#include "sketch/turn_tool.h"
#include "sketch/within_reach.h"

namespace sketch {

namespace {

std::unique_ptr<Tool> tool_of(Hand hand) {
  switch (hand) {
    case Hand::site_plan: return site_plan_tool();
    case Hand::level:
    case Hand::feature:
    case Hand::note: return point_tool(hand);
    case Hand::steps: return steps_tool();
    case Hand::measure: return measure_tool();
    case Hand::dimension: return dimension_tool();
    case Hand::pick: return pick_tool();
    case Hand::move: return move_tool();
    case Hand::turn: return turn_tool();
    case Hand::copy: return copy_tool();
    case Hand::mirror: return mirror_tool();
    case Hand::offset: return offset_tool();
    case Hand::split: return split_tool();
    case Hand::join: return join_tool();
    case Hand::hole: return hole_tool();
    case Hand::edge_to_arc: return edge_to_arc_tool();
    case Hand::trace: return trace_tool();
    case Hand::start_point: return start_point_tool();
    case Hand::site_mark:
    case Hand::building:
    case Hand::keep_out:
    case Hand::removal:
    case Hand::protection:
    case Hand::wall:
    case Hand::drain:
    case Hand::pool:
    case Hand::area:
    case Hand::edge: break;
  }
  return draw_tool(hand);
}

}  // namespace

std::unique_ptr<Tool> make_tool(Hand hand) { return within_reach(tool_of(hand)); }

}  // namespace sketch
