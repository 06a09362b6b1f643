// What the tools say that change what is drawn; beside words.h.
#pragma once

#include <string>
#include <vector>

namespace sketch {
std::vector<std::string> change_words();  // all of these, for the table of a language
}  // namespace sketch

namespace sketch::words {

inline constexpr const char* pick = "Pick";
inline constexpr const char* pick_rest = "Click an element, drag a corner, or take a tool.";
inline constexpr const char* pick_drag = "Let go where it belongs, or press Escape.";
inline constexpr const char* pick_box = "Drag to the right: what lies wholly inside. To the left: what is touched.";
inline constexpr const char* move = "Move";
inline constexpr const char* copy = "Copy";
inline constexpr const char* turn = "Turn";
inline constexpr const char* mirror = "Mirror";
inline constexpr const char* offset = "Offset";
inline constexpr const char* split = "Split";
inline constexpr const char* join = "Join";
inline constexpr const char* hole = "Cut a hole";
inline constexpr const char* edge_to_arc = "Edge to arc";
inline constexpr const char* trace = "Trace an edge";
inline constexpr const char* start_point = "Start point";
inline constexpr const char* select_first = "Select what it is for: click an element.";
inline constexpr const char* select_area = "Select a paved area with a pattern: click it.";
inline constexpr const char* move_from = "Click a point of it to take hold of, or type how far.";
inline constexpr const char* move_to = "Click where that point lies then, or type how far.";
inline constexpr const char* mirror_from = "Click one end of the mirror line.";
inline constexpr const char* mirror_to = "Click the other end.";
inline constexpr const char* offset_wants = "Click the side, as far away as it goes, or type how far.";
inline constexpr const char* split_from = "Click where the cut begins.";
inline constexpr const char* split_to = "Click where the cut ends.";
inline constexpr const char* join_wants = "Click the outline that joins it.";
inline constexpr const char* edge_wants = "Click an edge.";
inline constexpr const char* edge_through =
    "Click a point that the arc goes through, or type a radius. 0 makes it straight.";
inline constexpr const char* trace_from = "Click where it begins, on an edge.";
inline constexpr const char* trace_to = "Click where it ends, on the same outline.";
inline constexpr const char* start_wants = "Click where the pattern starts, or type a move or a direction.";
inline constexpr const char* keep_first = "Keep the first one";
inline constexpr const char* longer_way = "The longer way round";
inline constexpr const char* f_offset = "How far";
inline constexpr const char* f_along = "Along";
inline constexpr const char* f_across = "Across";
inline constexpr const char* nothing_selected = "Nothing is selected";
inline constexpr const char* nothing_selected_mend = "Click an element first";
inline constexpr const char* no_edge_here = "No edge lies there";
inline constexpr const char* no_edge_here_mend = "Click nearer to one";
inline constexpr const char* no_pattern = "This area has no pattern yet";
inline constexpr const char* no_pattern_mend = "Choose one beside its section";
inline constexpr const char* same_place = "That is the same place";
inline constexpr const char* same_place_mend = "Click further away, or type how far";

}  // namespace sketch::words
