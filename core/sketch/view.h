// What a tool shows of itself: words and fields for the prompt, lines and marks for the plan. Plain values; the window
// draws them as it likes.
#pragma once

#include <string>
#include <vector>

#include "plan/drawn.h"

namespace sketch {

// A field of the prompt. Its text is what the person typed, else what the pointer gives. `understood` is how a typed
// text was read ("12' 6 1/2\""), or what is wrong with it, then `wrong` is set.
struct Field {
  std::string id;
  std::string label;
  std::string text;
  std::string understood;
  bool wrong = false;
  bool locked = false;
};

// A choice of the prompt: ways to draw, things to do now. One of a group may be taken.
struct Choice {
  std::string id;
  std::string label;
  bool taken = false;
  bool action = false;  // a button, not a way
};

enum class Pen {
  in_hand,  // set already
  rubber,   // follows the pointer
  guide,    // a help line
  tape      // of the measure tool
};
struct Stroke {
  plan::DrawnLine line;
  bool closed = false;
  Pen pen = Pen::in_hand;
};

// What the pointer took hold of. Each has a mark of a shape of its own.
enum class Takes {
  nothing,
  corner,
  crossing,
  middle,
  centre,
  edge,
  square,
  parallel,
  tangent,
  equal,
  closing,
  grid,
  angle
};
struct Mark {
  Takes takes = Takes::nothing;
  geometry::Point at;
};
// A length or an angle beside what is drawn, turned with it (radians, so that it reads from below or from the right).
struct Chip {
  geometry::Point at;
  double turn = 0;
  std::string text;
};

struct View {
  std::string hand;   // what is in hand: "Area"
  std::string wants;  // what it wants next, one sentence
  std::vector<Field> fields;
  std::vector<Choice> choices;
  std::vector<Stroke> strokes;
  std::vector<Mark> marks;
  std::vector<Chip> chips;
  bool busy = false;  // something unfinished is in hand: Escape drops it, undo takes back a point of it
};

}  // namespace sketch
