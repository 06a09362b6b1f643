// What a person did, in the plan's own measure: no pixels, no keyboards, no Qt.
#pragma once

#include <string>
#include <variant>

#include "geometry/point.h"

namespace sketch {

// What is held down beside the pointer: `steps` keeps angles at 15 degrees from the last edge, `free` takes hold of
// nothing.
struct Hold {
  bool steps = false;
  bool free = false;
  bool more = false;  // adds to what is selected
  bool operator==(const Hold&) const = default;
};

struct Moved {  // the pointer, pressed or not
  geometry::Point at;
  Hold hold;
};
struct Pressed {
  geometry::Point at;
  Hold hold;
  bool twice = false;  // second press of a double click
};
struct Released {
  geometry::Point at;
  Hold hold;
};
// One press of a key by its meaning. `undo` takes back one point while something is in hand.
enum class Key { enter, escape, back, undo, line_or_arc, erase, next_below };
// The whole text of one field of the prompt after each change. `locked`: Enter or Tab was pressed in it, so that the
// value holds until the point is set.
struct Typed {
  std::string field;
  std::string text;
  bool locked = false;
};
struct Nudged {  // an arrow key, in steps of the grid
  geometry::Vec by;
};
// A choice of the prompt's row of choices, by its id ("rectangle", "centre-start-end", "keep").
struct Chosen {
  std::string id;
};

using Event = std::variant<Moved, Pressed, Released, Key, Typed, Nudged, Chosen>;

}  // namespace sketch
