#include "sketch/change_words.h"

namespace sketch {

std::vector<std::string> change_words() {
  using namespace words;
  return {pick,
          pick_rest,
          pick_drag,
          pick_box,
          move,
          copy,
          turn,
          mirror,
          offset,
          split,
          join,
          hole,
          edge_to_arc,
          trace,
          start_point,
          select_first,
          select_area,
          move_from,
          move_to,
          mirror_from,
          mirror_to,
          offset_wants,
          split_from,
          split_to,
          join_wants,
          edge_wants,
          edge_through,
          trace_from,
          trace_to,
          start_wants,
          keep_first,
          longer_way,
          f_offset,
          f_along,
          f_across,
          nothing_selected,
          nothing_selected_mend,
          no_edge_here,
          no_edge_here_mend,
          no_pattern,
          no_pattern_mend,
          same_place,
          same_place_mend};
}

}  // namespace sketch
