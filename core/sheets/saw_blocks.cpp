// Blocks, caps and steps at the saw, from the takeoff's own list of cuts.
#include "sheets/saw_list.h"

namespace sheets {

namespace {

// "course 3, end piece" and "wall beside the steps, course 3": its course and what it is; "cap, closer" has no course.
struct Piece {
  std::string course;  // "3", "2, 4, 6"; empty: none
  std::string what;
};
Piece parted(const std::string& what) {
  const bool one = what.starts_with("course "), several = what.starts_with("courses ");
  if (const std::size_t last = what.rfind(", course "); last != std::string::npos)
    return {what.substr(last + 9), what.substr(0, last)};
  const std::size_t end = what.rfind(", ");
  if ((!one && !several) || end == std::string::npos) return {"", what};
  Piece piece{what.substr(one ? 7 : 8, end - (one ? 7 : 8)), what.substr(end + 2)};
  if (const std::size_t last = piece.course.find(" and "); last != std::string::npos)
    piece.course.replace(last, 5, ", ");
  return piece;
}

std::string course_in_words(const Printed& printed, const std::string& course) {
  if (course.empty()) return {};
  return filled(printed, course.find(',') == std::string::npos ? "course %1" : "courses %1", {course});
}

// "12' 6\" to 14' from the wall's start" and "at 3' from the wall's start"; the head of the list says from where.
std::string place_in_words(const Printed& printed, std::string where) {
  constexpr std::string_view from_start = " from the wall's start";
  if (!where.ends_with(from_start)) return printed.say(where);
  where.resize(where.size() - from_start.size());
  if (where.starts_with("at ")) return filled(printed, "at %1", {where.substr(3)});
  const std::size_t to = where.find(" to ");
  return to == std::string::npos ? where : filled(printed, "%1 to %2", {where.substr(0, to), where.substr(to + 4)});
}

}  // namespace

void add_blocks(SawList& list) {
  const Printed& printed = list.printed();
  for (const takeoff::Cut& cut : printed.results->takeoff.cuts) {
    const Piece piece = parted(cut.what);
    SawCut one;
    one.item = cut.item;
    one.what = piece.what;
    one.keep = cut.keep;
    one.from_offcut = cut.from_offcut;
    one.least = one.most = by_fence(printed, cut.kept);
    one.angle = cut.angle;
    one.pieces = cut.count;
    one.metres = cut.count * cut.length;
    one.thickness = cut.thickness;
    std::string place = course_in_words(printed, piece.course);
    const std::string where = place_in_words(printed, cut.where);
    if (!where.empty()) place += (place.empty() ? "" : ", ") + where;
    list.add(std::move(one), cut.of, place);
  }
}

}  // namespace sheets
