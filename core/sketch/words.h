// Every word that the drawing tools say, in one place, so that a table can put them into another language. None is put
// together from parts but the names of edits (a verb, the kind, the id).
#pragma once

#include <string>
#include <vector>

namespace sketch {

// All labels and sentences of the tools, for the table of a language.
std::vector<std::string> all_words();

namespace words {
// Fields.
inline constexpr const char* f_length = "Length";
inline constexpr const char* f_direction = "Direction";
inline constexpr const char* f_sweep = "Sweep";
inline constexpr const char* f_turn = "Turn";
inline constexpr const char* f_east = "East";
inline constexpr const char* f_north = "North";
inline constexpr const char* f_radius = "Radius";
inline constexpr const char* f_width = "Width";
inline constexpr const char* f_diameter = "Diameter";
inline constexpr const char* f_depth = "Depth";
inline constexpr const char* f_rise = "Rise";
inline constexpr const char* f_height = "Height";
inline constexpr const char* f_up = "Way up";
inline constexpr const char* f_total = "Total";
inline constexpr const char* f_area = "Area";
inline constexpr const char* f_opacity = "Opacity, %";
inline constexpr const char* f_error = "Error";
inline constexpr const char* f_text = "Text";
inline constexpr const char* angle_refused = "An angle is a number of degrees between -360 and 360, such as 45 or 22.5";
inline constexpr const char* number_refused = "This takes a plain number, such as 3 or 0.6";
// What is refused, and the mend.
inline constexpr const char* no_size = "This shape has no size";
inline constexpr const char* no_size_mend = "Click further away, or type its sides";
inline constexpr const char* in_line = "The three points lie in one line";
inline constexpr const char* in_line_mend = "Click a point beside that line";
inline constexpr const char* no_length = "This edge has no length";
inline constexpr const char* no_length_mend = "Click further away, or type a length";
inline constexpr const char* too_far = "That place lies more than 5 km from the start of the job";
inline constexpr const char* too_far_mend = "Draw nearer, or type a shorter length";
inline constexpr const char* outline_too_few = "An outline needs three corners, or an arc";
inline constexpr const char* line_too_few = "A line needs two points";
inline constexpr const char* too_few_mend = "Click another point, or press Escape to drop this one";
inline constexpr const char* arc_too_small = "No arc of that radius reaches so far";
inline constexpr const char* arc_too_small_mend = "Type a larger radius";
inline constexpr const char* finish_first = "This shape is not finished";
inline constexpr const char* finish_first_mend = "Finish it, or press Escape to drop it";
inline constexpr const char* text_wrong_mend = "Type it again, or clear the field";
// What a shape wants next.
inline constexpr const char* first_corner = "Click the first corner.";
inline constexpr const char* first_point = "Click the first point.";
inline constexpr const char* next_corner = "Click the next corner, or type a length.";
inline constexpr const char* next_or_close = "Click the next corner, or type a length. Enter closes it.";
inline constexpr const char* next_or_end = "Click the next point, or type a length. Enter ends it.";
inline constexpr const char* arc_end = "Click where the arc ends, or type a length.";
inline constexpr const char* arc_point = "Click a point on the arc, or type a radius.";
inline constexpr const char* arc_centre = "Click the centre of the arc, or type a radius.";
inline constexpr const char* arc_swing = "Click where the arc ends, or type its sweep.";
inline constexpr const char* arc_tangent = "Click where the arc ends, or type a radius.";
inline constexpr const char* opposite_corner = "Click the opposite corner, or type the sides.";
inline constexpr const char* circle_centre = "Click the centre.";
inline constexpr const char* circle_radius = "Click a point on the circle, or type a radius.";
inline constexpr const char* circle_point = "Click a point on the circle.";
inline constexpr const char* circle_opposite = "Click the point opposite, or type the diameter.";
inline constexpr const char* circle_second = "Click a second point on the circle.";
inline constexpr const char* circle_third = "Click a third point on the circle.";
inline constexpr const char* curve_close = "Click points along the curve. Enter closes it.";
inline constexpr const char* curve_end = "Click points along the curve. Enter ends it.";
// Ways to draw.
inline constexpr const char* corners = "Corner by corner";
inline constexpr const char* rectangle = "Rectangle";
inline constexpr const char* circle = "Circle";
inline constexpr const char* across = "Circle across";
inline constexpr const char* three = "Circle through 3 points";
inline constexpr const char* freeform = "Freeform";
inline constexpr const char* line = "Line";
inline constexpr const char* arc_tangent_way = "Arc on from the edge";
inline constexpr const char* arc_through_way = "Arc through a point";
inline constexpr const char* arc_centre_way = "Arc about a centre";
inline constexpr const char* as_outline = "Outline";
inline constexpr const char* as_line = "Along a line";
inline constexpr const char* as_point = "Point";
// What is in hand.
inline constexpr const char* area = "Area";
inline constexpr const char* pool = "Pool";
inline constexpr const char* wall = "Wall";
inline constexpr const char* building = "Building";
inline constexpr const char* keep_out = "Keep-out";
inline constexpr const char* edge = "Edge";
inline constexpr const char* drain = "Drain";
inline constexpr const char* removal = "Removal";
inline constexpr const char* protection = "Protection";
inline constexpr const char* site_mark = "Site mark";
inline constexpr const char* steps = "Steps";
inline constexpr const char* level = "Level";
inline constexpr const char* feature = "Feature";
inline constexpr const char* note = "Note";
// Its first sentence.
inline constexpr const char* pool_begin = "Click the first corner of the water's edge.";
inline constexpr const char* wall_begin = "Click where the wall begins, at its face.";
inline constexpr const char* edge_begin = "Click where the edge begins.";
inline constexpr const char* drain_begin = "Click the high end of the run.";
inline constexpr const char* removal_begin = "Click the first corner of what goes.";
inline constexpr const char* protection_begin = "Click the first corner of what is protected.";
inline constexpr const char* site_mark_begin = "Choose what it is, then click its first point.";
inline constexpr const char* steps_begin = "Click the first corner of the flight.";
inline constexpr const char* level_begin = "Click a place, then type its height.";
inline constexpr const char* feature_begin = "Click its place.";
inline constexpr const char* note_begin = "Click its place, then type the note.";
inline constexpr const char* click_place = "Click its place.";
inline constexpr const char* level_height = "Type its height, then Enter. Without one the level book gives it.";
inline constexpr const char* note_text = "Type the note, then Enter.";
inline constexpr const char* note_empty = "This note says nothing";
inline constexpr const char* note_empty_mend = "Type its text, or press Escape to drop it";
inline constexpr const char* steps_up = "Click towards the landing, or type the way up. Type the rise.";
inline constexpr const char* rise_down = "A flight rises";
inline constexpr const char* rise_down_mend = "Type the rise as a positive length, and turn the way up round instead";
inline constexpr const char* measure = "Measure";
inline constexpr const char* measure_begin = "Click where to measure from.";
inline constexpr const char* measure_next = "Click the next point. Enter ends it.";
inline constexpr const char* dimension = "Dimension";
inline constexpr const char* dimension_begin = "Click where the dimension begins.";
inline constexpr const char* dimension_end = "Click where it ends.";
// The site plan.
inline constexpr const char* site_plan = "Site plan";
inline constexpr const char* plan_place = "Place";
inline constexpr const char* plan_turn = "Turn";
inline constexpr const char* plan_scale = "Scale";
inline constexpr const char* plan_check = "Check length";
inline constexpr const char* plan_lock = "Lock";
inline constexpr const char* plan_unlock = "Unlock";
inline constexpr const char* plan_none = "Bring in a site plan, or select one of them.";
inline constexpr const char* plan_drag = "Drag the site plan, or type how far it moves.";
inline constexpr const char* turn_about = "Click the point that stays, or type the turn.";
inline constexpr const char* turn_from = "Click a point to turn, or type the turn.";
inline constexpr const char* turn_to = "Click where that point lies then, or type the turn.";
inline constexpr const char* scale_begin = "Click one end of a length that you know.";
inline constexpr const char* check_begin = "Click one end of another length that you know.";
inline constexpr const char* length_end = "Click its other end.";
inline constexpr const char* type_length = "Type its length, then Enter.";
inline constexpr const char* plan_locked = "This site plan is locked";
inline constexpr const char* plan_locked_mend = "Unlock it to move it";
inline constexpr const char* scale_length = "The length between the two points is missing";
inline constexpr const char* scale_length_mend = "Type a length of more than 0";
inline constexpr const char* scale_points = "The two points lie on one spot";
inline constexpr const char* scale_points_mend = "Click a second point further away";
inline constexpr const char* scale_size = "This length makes the site plan far too small or too large";
inline constexpr const char* scale_size_mend = "Look at its unit, and at the two points";
inline constexpr const char* opacity_range = "Opacity goes from 0 to 100 %";
inline constexpr const char* opacity_range_mend = "Type a number between them";
inline constexpr const char* edit_place_plan = "Place site plan";
inline constexpr const char* edit_turn_plan = "Turn site plan";
inline constexpr const char* edit_scale_plan = "Scale site plan";
inline constexpr const char* edit_check_plan = "Check site plan";
inline constexpr const char* edit_lock_plan = "Lock site plan";
inline constexpr const char* edit_unlock_plan = "Unlock site plan";
inline constexpr const char* edit_opacity = "Set opacity of site plan";
// What the element is.
inline constexpr const char* planter = "Planter";
inline constexpr const char* tree = "Tree";
inline constexpr const char* pillar = "Pillar";
inline constexpr const char* column = "Column";
inline constexpr const char* equipment = "Equipment";
inline constexpr const char* inlet = "Inlet";
inline constexpr const char* restraint = "Restraint";
inline constexpr const char* kerb = "Kerb";
inline constexpr const char* edging = "Edging";
inline constexpr const char* pipe = "Pipe";
inline constexpr const char* channel = "Channel";
inline constexpr const char* sleeve = "Sleeve";
inline constexpr const char* concrete = "Concrete";
inline constexpr const char* asphalt = "Asphalt";
inline constexpr const char* unit_paving = "Unit paving";
inline constexpr const char* wall_there = "Wall";
inline constexpr const char* coping = "Coping";
inline constexpr const char* sod = "Sod";
inline constexpr const char* stump = "Stump";
inline constexpr const char* buried_service = "Buried service";
inline constexpr const char* overhead_line = "Overhead line";
inline constexpr const char* lot_line = "Lot line";
inline constexpr const char* setback = "Setback";
inline constexpr const char* easement = "Easement";
inline constexpr const char* flood = "Flood line";
inline constexpr const char* barrier = "Pool barrier";
inline constexpr const char* septic = "Septic";
inline constexpr const char* well = "Well";
inline constexpr const char* gate = "Gate";
inline constexpr const char* path = "Way in";
inline constexpr const char* drop_spot = "Drop spot";
inline constexpr const char* downspout = "Downspout";
inline constexpr const char* existing = "Existing";
inline constexpr const char* finished = "Finished";
inline constexpr const char* bench_mark = "Bench mark";
inline constexpr const char* invert = "Invert";
}  // namespace words

}  // namespace sketch
