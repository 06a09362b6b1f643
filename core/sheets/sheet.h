// What a printed sheet says, before it is laid on pages: blocks from the top down, as plain values. Whoever lays them
// out (ui/print) knows fonts and paper; nothing here does. Every number says where it comes from (source.h).
//
// Words are in the language of the sheet already. Lengths on paper are millimetres.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "sheets/figure.h"
#include "takeoff/stage.h"

namespace sheets {

// Words on paper; `from` leads a number among them back to its working. Empty: no number, or one that a person wrote.
struct Said {
  Said() = default;
  Said(std::string said) : words(std::move(said)) {}  // NOLINT(google-explicit-constructor): words are said
  Said(const char* said) : words(said) {}             // NOLINT(google-explicit-constructor)
  Said(std::string said, std::string source) : words(std::move(said)), from(std::move(source)) {}
  std::string words;
  std::string from;
  bool operator==(const Said&) const = default;
};

// `number`: in a black disc, of a stage. Level 1 has a heavy rule under it.
struct Heading {
  std::string words;
  Said right;
  std::string number = {};
  int level = 1;  // 1 stage or part, 2 inside it
};

struct Paragraph {
  enum class Kind { body, note, strong };
  Said said;
  Kind kind = Kind::body;
};

// One thing to bring, order or do: a box to tick, its name, a smaller line under it, how much, and the tags of where it
// goes.
struct Bring {
  std::string name;
  Said detail;
  Said quantity;
  std::string unit;
  std::vector<std::string> tags;
};

// What must be looked at before it is covered: framed, with a box, a line for who looked and one for the day. With
// `who` and `when` it was looked at already.
struct Hold {
  std::string look_at;
  std::string limit;  // what it must be, and before what; may be empty
  std::string by;     // whose business it is: "engineer"; may be empty
  std::string who = {};
  std::string when = {};
};

struct Caution {
  std::string words;
};

// A framed box that nobody overlooks: "Preliminary".
struct Framed {
  std::string title;
  std::vector<Said> lines;
  bool caution = false;  // with the triangle
};

enum class Align { left, right, centre };
struct Column {
  std::string title;
  Align align = Align::left;
  double share = 0;   // of the width; 0: as much as its widest words take
  bool tick = false;  // a box to tick in every row that says nothing there
};
struct Row {
  // group: one cell across, bold; note: one cell across, plain, about the row above it, the first never parted from it;
  // sum and total have a rule above.
  enum class Kind { plain, group, note, sum, total };
  std::vector<Said> cells;
  Kind kind = Kind::plain;
};
// The head is repeated on every page that the table goes on to.
struct Table {
  std::vector<Column> columns;
  std::vector<Row> rows;
  bool small = false;    // 9 pt, for the office only
  bool written = false;  // filled in by hand: high rows, cells parted by lines
};

struct Dimension {
  Vec from;
  Vec to;
  double out_mm = 8;  // the line's distance on paper, to the left of the way from `from` to `to`
  Said said;
};
struct Label {
  Vec at;
  Said said;
  Align align = Align::centre;
  double turn = 0;      // radians
  bool framed = false;  // on white, with a thin frame
};
struct Note {
  Vec at;  // end of the leader
  Said said;
};
// A figure to scale. Black on white, or in the colours of the materials where a customer is shown what it will be.
struct Drawing {
  std::shared_ptr<const Figure> figure;
  std::string title;
  double height_mm = 0;                        // at most; 0: what is left of the page
  int scale = 0;                               // 1 : scale; 0: the largest usual one that fits
  bool bar = true;                             // with a scale bar and its words
  std::optional<double> north = std::nullopt;  // with an arrow; radians from the page's up, anticlockwise
  bool colour = false;
  bool plan = false;  // its marks (tags, levels) are shown too
  std::vector<Dimension> dimensions = {};
  std::vector<Label> labels = {};
  std::vector<Note> notes = {};  // beside it at the right, from the top down, each with its leader
};

// Lines to write on, side by side: "Signed ______ Date ______".
struct Blanks {
  std::vector<std::string> labels;
  int rows = 1;
};
// Squared paper to draw on.
struct Squares {
  double height_mm = 0;  // 0: what is left of the page
  double step_mm = 5;
};
// Where the money goes: bars one under the other, in words and by length.
struct Bars {
  struct Bar {
    std::string name;
    double share = 0;  // of the longest, 0 to 1
    Said said;
  };
  std::vector<Bar> bars;
};
struct Rule {};
struct Gap {
  double mm = 4;
};
struct NewPage {};

struct Beside;
using Block = std::variant<Heading, Paragraph, Bring, Hold, Caution, Framed, Table, Drawing, Blanks, Squares, Bars,
                           Rule, Gap, NewPage, std::shared_ptr<const Beside>>;
// Two columns; they are never parted over pages, so they must be short of one.
struct Beside {
  std::vector<Block> left;
  std::vector<Block> right;
  double share = 0.5;  // of the left one
};

// Blocks that belong together. `whole`: on one page where they fit on one. Otherwise the first two blocks stay
// together, and the last two (a heading is never left alone; a stage's hold points and cautions keep to its last line).
struct Passage {
  std::vector<Block> blocks;
  std::optional<takeoff::Stage> stage = std::nullopt;
  bool whole = false;
};

struct Sheet {
  std::string word;                // "crew-list"
  std::string title;               // "Crew list"
  std::vector<std::string> about;  // short lines under the job's name
  bool landscape = false;
  bool key_plan = false;  // a small plan with tags at the head of every page, and the strip of the stages under it,
                          // those of the page inverted
  bool money = false;     // shows prices: never for the crew
  std::vector<Passage> passages;
};

}  // namespace sheets
