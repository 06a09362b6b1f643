#include "takeoff/walls/bay.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/edges/rows.h"

namespace takeoff::walls {

namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr double sharpest = 150 * degree;  // sharper corners take as much off as this one: no wall is built like that

double taken_off(double corner) { return std::tan(std::clamp(corner, -sharpest, sharpest) / 2); }

}  // namespace

std::size_t CourseLine::leg_at(double own) const {
  const auto next = std::ranges::upper_bound(starts, own);
  return next == starts.begin() ? 0 : static_cast<std::size_t>(next - starts.begin()) - 1;
}

double CourseLine::own(double station) const {
  const auto next = std::ranges::upper_bound(bay->legs, station, {}, &Leg::from);
  const std::size_t leg = next == bay->legs.begin() ? 0 : static_cast<std::size_t>(next - bay->legs.begin()) - 1;
  return starts[leg] + (station - bay->legs[leg].from) * scales[leg];
}

double CourseLine::station(double own) const {
  const std::size_t leg = leg_at(own);
  return bay->legs[leg].from + (own - starts[leg]) / scales[leg];
}

CourseLine course_line(const Bay& bay, double setback, int course, double outside) {
  const double back = course * setback;
  CourseLine line;
  line.bay = &bay;
  double own = -back * taken_off(bay.before);
  for (const Leg& leg : bay.legs) {
    double scale = 1 - back * leg.bend / leg.length();
    if (leg.radius != 0) scale = (leg.radius - back) / leg.radius;
    if (leg.radius < 0) scale += outside / -leg.radius;
    scale = std::max(scale, dust);
    line.starts.push_back(own);
    line.scales.push_back(scale);
    own += leg.length() * scale;
  }
  line.length = std::max(0.0, own - back * taken_off(bay.legs.back().corner));
  return line;
}

std::vector<CourseLine> counted_lines(const Bay& bay, const Blocks& blocks, const LayRules& rules) {
  int courses = 0;
  for (const Column& c : bay.columns) courses = std::max(courses, c.top);
  std::vector<CourseLine> lines;
  for (int i = 0; i < courses; ++i) {
    lines.push_back(course_line(bay, blocks.block.setback, i, rules.free_standing ? rules.depth : 0));
  }
  return lines;
}

const Unit& unit_of(const Bay& bay, const Blocks& blocks) {
  return blocks.curve && bay.legs.front().radius != 0 ? *blocks.curve : blocks.block;
}

namespace {

// Blocks for curves of another face length can't go on in the bond of the straight ones: their joint runs through.
bool parts(const Leg& a, const Leg& b, const Blocks& blocks) {
  if (a.corner != 0) return true;
  const bool changes = (a.radius != 0) != (b.radius != 0);
  return changes && blocks.curve && std::abs(blocks.curve->length - blocks.block.length) > dust;
}

Column across(const Column& column) { return {0, 0, column.base, column.top}; }

// Of the two legs at a corner, whether the one before has the long face, or runs through, in courses 1, 3, 5: the
// longer one, so that a wall counts the same whichever way it is drawn. Round a closed line every leg does so at its
// end.
bool first_before(const Profile& profile, std::size_t leg) {
  return profile.closed || profile.legs[leg].length() > profile.legs[leg + 1].length() - thin;
}

void clip(Bay& bay, const Profile& profile, std::size_t& column) {
  const double from = bay.legs.front().from, to = bay.legs.back().to;
  while (column > 0 && profile.columns[column].from > from - dust) --column;
  for (; column < profile.columns.size(); ++column) {
    Column c = profile.columns[column];
    if (c.to < from + dust) continue;
    if (c.from > to - dust) break;
    if (c.from < from + dust) c.from = from;
    if (c.to > to - dust) c.to = to;
    bay.columns.push_back(c);
  }
  if (column == profile.columns.size()) --column;
}

}  // namespace

std::vector<Bay> bays(const Profile& profile, const Blocks& blocks) {
  std::vector<Bay> all;
  for (std::size_t i = 0; i < profile.legs.size(); ++i) {
    const bool begins = i == 0 || parts(profile.legs[i - 1], profile.legs[i], blocks);
    if (begins) {
      all.emplace_back();
      if (i > 0) {
        all.back().before = profile.legs[i - 1].corner;
        all.back().first_at_start = !first_before(profile, i - 1);
      }
      if (i == 0 && profile.closed) all.back().before = profile.legs.back().corner;
    }
    all.back().legs.push_back(profile.legs[i]);
    all.back().first_at_finish = i + 1 == profile.legs.size() || first_before(profile, i);
  }
  std::size_t column = 0;
  for (Bay& bay : all) clip(bay, profile, column);
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (i > 0) all[i].left = across(all[i - 1].columns.back());
    if (i + 1 < all.size()) all[i].right = across(all[i + 1].columns.front());
  }
  if (profile.closed) {
    all.front().left = across(all.back().columns.back());
    all.back().right = across(all.front().columns.front());
  }
  return all;
}

namespace {

bool square(double corner) { return std::abs(std::abs(corner) - 90 * degree) < edges::corner_from * degree; }

// The face that a unit keeps where its end is cut to a mitre; at inside corners its back is the longer side.
double mitred_face(double corner, double unit, double depth) {
  return unit - (corner < 0 ? depth * taken_off(-corner) : 0);
}

}  // namespace

Meeting meeting(double corner, const Blocks& blocks, const LayRules& rules) {
  if (corner == 0) return Meeting::none;
  if (corner > 0) return square(corner) && blocks.corner ? Meeting::square_out : Meeting::mitre;
  const double half_face = mitred_face(corner, blocks.block.length, rules.depth) / 2;
  return square(corner) || half_face < std::max(rules.sliver, blocks.block.length / 4) ? Meeting::through
                                                                                       : Meeting::mitre;
}

namespace {

struct Filling {
  const Bay& bay;
  const Blocks& blocks;
  const LayRules& rules;
  const Unit& unit;
};

bool stands(const std::optional<Column>& column, int course) {
  return column && column->base <= course && course < column->top;
}

// One end of a run: the piece there, and what of it is hidden behind the other leg.
struct End {
  Fixed fixed;
  double hidden = 0;
  bool corner = false;
};

End end_at_corner(const Filling& f, double corner, int course, bool first) {
  const bool turn = first == (course % 2 == 0);  // courses 1, 3, 5 as people count

  switch (meeting(corner, f.blocks, f.rules)) {
    case Meeting::square_out:
      return {{Make::corner, turn ? f.blocks.corner->length : f.blocks.corner->depth, 0}, 0, true};
    case Meeting::mitre: {
      const double face = mitred_face(corner, f.unit.length, f.rules.depth);
      return {{Make::cut, turn ? face : face / 2, std::abs(corner) / 2}, 0, true};
    }
    case Meeting::through: {
      // The depth of the other leg is crossed askew; its own end is cut to lie against this one.
      if (turn) return {{}, f.rules.depth / std::max(0.5, std::sin(-corner)), true};
      if (square(corner)) return {{}, 0, true};
      return {{Make::cut, f.unit.length, std::min(std::abs(90 * degree + corner), 60 * degree)}, 0, true};
    }
    case Meeting::none: break;
  }
  return {};
}

End end_of(const Filling& f, const std::optional<Column>& beyond, double corner, int course, bool first,
           bool wall_end_shows) {
  if (stands(beyond, course)) return end_at_corner(f, corner, course, first);
  const bool shows = beyond ? beyond->top <= course : wall_end_shows;
  if (shows && f.blocks.end) return {{Make::end, f.blocks.end->length, 0}, 0, false};
  return {};
}

double metres_on_arcs(const Bay& bay, const CourseLine& line, double from, double to) {
  double sum = 0;
  for (std::size_t i = 0; i < bay.legs.size(); ++i) {
    const Leg& leg = bay.legs[i];
    if (leg.radius != 0) sum += std::max(0.0, std::min(to, leg.to) - std::max(from, leg.from)) * line.scales[i];
  }
  return sum;
}

// Which of two fixed pieces stays where there is no room for both.
int weight(const Fixed& piece) {
  if (piece.length <= 0) return 0;
  return piece.make == Make::corner ? 3 : piece.angle > 0 ? 2 : 1;
}

// A run too short for its fixed pieces is one piece, or keeps the corner unit that it counts, a mitre before an end.
void make_room(Slot& slot, const Filling& f) {
  const double whole = slot.own_to - slot.own_from;
  if (slot.start.length + slot.finish.length == 0 || slot.fill() > f.rules.sliver - thin) return;
  if (std::abs(slot.fill()) < thin) return;
  const int heavier = std::max(weight(slot.start), weight(slot.finish));
  if (heavier < 3 && whole < f.unit.length + thin) {
    slot.start = {Make::cut, whole, std::max(slot.start.angle, slot.finish.angle)};
    slot.finish = {};
  }
  if (slot.fill() > -thin) return;
  const bool keeps_finish = weight(slot.finish) > weight(slot.start) || slot.finish.make == Make::corner;
  (keeps_finish ? slot.start : slot.finish) = {};
  Fixed& kept = keeps_finish ? slot.finish : slot.start;
  kept.length = std::min(kept.length, whole);
}

Slot slot(const Filling& f, std::size_t first, std::size_t last, int course, const CourseLine& counted,
          const CourseLine& face) {
  const auto& columns = f.bay.columns;
  Slot made;
  made.course = course;
  made.from = columns[first].from;
  made.to = columns[last].to;
  const bool at_start = first == 0, at_end = last + 1 == columns.size();
  const auto from_on = [&](const CourseLine& line) {
    return at_start ? 0 : std::clamp(line.own(made.from), 0.0, line.length);
  };
  const auto to_on = [&](const CourseLine& line) {
    return at_end ? line.length : std::clamp(line.own(made.to), 0.0, line.length);
  };
  made.own_from = from_on(counted);
  made.own_to = to_on(counted);
  made.shows = to_on(face) - from_on(face);
  const std::optional<Column> left = at_start ? f.bay.left : columns[first - 1];
  const std::optional<Column> right = at_end ? f.bay.right : columns[last + 1];
  const End a = end_of(f, left, at_start ? f.bay.before : 0, course, f.bay.first_at_start, f.rules.start_shows);
  const End b =
      end_of(f, right, at_end ? f.bay.legs.back().corner : 0, course, f.bay.first_at_finish, f.rules.finish_shows);
  made.own_from -= a.hidden;
  made.own_to += b.hidden;
  made.hidden = a.hidden + b.hidden;
  made.start = a.fixed;
  made.finish = b.fixed;
  made.corner_before = a.corner;
  made.corner_after = b.corner;
  made.on_arcs = metres_on_arcs(f.bay, counted, made.from, made.to);
  make_room(made, f);
  return made;
}

}  // namespace

std::vector<Slot> slots(const Bay& bay, const Blocks& blocks, const LayRules& rules,
                        const std::vector<CourseLine>& lines) {
  const Filling f{bay, blocks, rules, unit_of(bay, blocks)};
  std::vector<Slot> all;
  const auto& columns = bay.columns;
  for (std::size_t number = 0; number < lines.size(); ++number) {
    const int course = static_cast<int>(number);
    const CourseLine face = course_line(bay, blocks.block.setback, course, 0);
    for (std::size_t i = 0; i < columns.size(); ++i) {
      if (!stands(columns[i], course)) continue;
      std::size_t last = i;
      while (last + 1 < columns.size() && stands(columns[last + 1], course)) ++last;
      Slot made = slot(f, i, last, course, lines[number], face);
      if (made.own_to - made.own_from > thin) all.push_back(made);
      i = last;
    }
  }
  return all;
}

}  // namespace takeoff::walls
