// One wall drawn in other ways: walked from its other end, mirrored, moved, turned, with a level that says nothing new.
// What it takes stays the same. And what hostile numbers do to it.
#include <rapidcheck.h>

#include "takeoff/walls/base_choice.h"
#include "takeoff/walls/caps.h"
#include "takeoff/walls/laid_kit.h"

namespace {

using namespace kit;
using takeoff::walls::Make;

// A face in metres, and heights along it in inches.
struct Place {
  double x = 0, y = 0, bulge = 0;
};
struct Level {
  double at = 0, height = 0;  // `at` metres, height inches
};
struct Sketch {
  std::vector<Place> line;  // the last one ends it
  bool left = true;
  std::vector<Level> base, top, ground;
  bool corner = false, half = false, end = false, curve = false;
};

double length_of(const Sketch& sketch) {
  double sum = 0;
  for (std::size_t i = 0; i + 1 < sketch.line.size(); ++i) {
    const Place &a = sketch.line[i], &b = sketch.line[i + 1];
    const double chord = std::hypot(b.x - a.x, b.y - a.y), sweep = 4 * std::atan(std::abs(a.bulge));
    sum += sweep > 0 ? chord / (2 * std::sin(sweep / 2)) * sweep : chord;
  }
  return sum;
}

Length steps(double metres) { return Length::nearest(units::Metres(metres)); }

std::vector<plan::HeightAt> heights(const std::vector<Level>& levels) {
  std::vector<plan::HeightAt> made;
  for (const Level& one : levels) made.push_back({steps(one.at), inches(one.height)});
  return made;
}

plan::Wall drawn(const Sketch& sketch, geometry::Vec by = {}) {
  plan::Wall wall;
  for (const Place& p : sketch.line) {
    const geometry::Point at{steps(p.x) + Length::of_steps(static_cast<std::int64_t>(by.x)),
                             steps(p.y) + Length::of_steps(static_cast<std::int64_t>(by.y))};
    if (&p == &sketch.line.back()) {
      wall.line.end = at;
    } else {
      wall.line.edges.push_back({at, p.bulge, {}});
    }
  }
  wall.block = "wb-8x18";
  if (sketch.curve) wall.curve_block = "wb-8x18-taper";
  if (sketch.corner) wall.corner_block = "wb-8x18-corner";
  if (sketch.half) wall.half_block = "wb-8x9-half";
  if (sketch.end) wall.end_block = "wb-8x18";
  wall.cap = "cap-18";
  wall.behind = sketch.left ? geometry::Side::left : geometry::Side::right;
  wall.ground = heights(sketch.ground);
  wall.base = heights(sketch.base);
  wall.top = heights(sketch.top);
  return wall;
}

Sketch reversed(const Sketch& sketch) {
  Sketch made = sketch;
  made.left = !sketch.left;
  std::ranges::reverse(made.line);
  for (std::size_t i = 0; i + 1 < made.line.size(); ++i) made.line[i].bulge = -made.line[i + 1].bulge;
  made.line.back().bulge = 0;
  const double length = length_of(sketch);
  for (auto* of : {&made.base, &made.top, &made.ground}) {
    std::ranges::reverse(*of);
    for (Level& one : *of) one.at = length - one.at;
  }
  return made;
}

Sketch mirrored(Sketch sketch) {
  sketch.left = !sketch.left;
  for (Place& p : sketch.line) p.x = -p.x, p.bulge = -p.bulge;
  return sketch;
}

Sketch turned(Sketch sketch, double angle) {
  for (Place& p : sketch.line) {
    p = {p.x * std::cos(angle) - p.y * std::sin(angle), p.x * std::sin(angle) + p.y * std::cos(angle), p.bulge};
  }
  return sketch;
}

bool on_arcs(const Sketch& sketch) {
  return std::ranges::any_of(sketch.line, [](const Place& p) { return p.bulge != 0; });
}

// A step nearer than 6 in to a corner stands on it: the setback uses a shorter stretch up.
double off_corners(Sketch sketch, double at) {
  while (sketch.line.size() > 2) {
    sketch.line.pop_back();
    const double corner = length_of(sketch);
    if (std::abs(at - corner) < 6 * in) return corner;
  }
  return at;
}

// Legs of whole inches with corners of all kinds, one of them perhaps an arc; base and top step at whole inches, or the
// ground slopes and the base goes by the rule.
Sketch any_sketch() {
  Sketch made;
  double x = 0, y = 0, way = 0;
  const int legs = *rc::gen::inRange(1, 5);
  for (int i = 0; i < legs; ++i) {
    // 150 to 400 in, no two of a length: of equal legs the one drawn first has its long face lowest.
    const double length = (*rc::gen::inRange(30, 80) * 5 + i) * in;
    const bool arc = *rc::gen::inRange(0, 4) == 0;
    const double sweep = arc ? pi / 6 : 0;
    made.line.push_back({x, y, arc ? bulge(sweep) : 0});
    x += length * std::cos(way + sweep / 2);
    y += length * std::sin(way + sweep / 2);
    way += sweep + *rc::gen::element(0.0, pi / 2, -pi / 2, pi / 4, -pi / 6);
  }
  made.line.push_back({x, y, 0});
  made.left = *rc::gen::arbitrary<bool>();
  made.corner = *rc::gen::arbitrary<bool>();
  made.half = *rc::gen::arbitrary<bool>();
  made.end = *rc::gen::arbitrary<bool>();
  made.curve = *rc::gen::arbitrary<bool>();
  const double length = length_of(made);
  if (*rc::gen::arbitrary<bool>()) {
    made.ground = {{0, 0}, {length, *rc::gen::inRange(-40, 41) * 1.0}};
    made.top = {{0, 76}, {length, 76}};
    return made;
  }
  made.ground = {{0, 24}, {length, 24}};
  double at = 0;
  while (at < length) {
    const double next = at + *rc::gen::inRange(40, 200) * in;
    const double to = next > length - 24 * in ? length : off_corners(made, next);
    const double base = *rc::gen::inRange(0, 3) * 8, top = base + *rc::gen::inRange(1, 7) * 8 + 3;
    for (const double end : {at, to}) made.base.push_back({end, base}), made.top.push_back({end, top});
    at = to;
  }
  return made;
}

struct Needs {
  std::map<std::string, double> of;
  bool operator==(const Needs&) const = default;
};
std::ostream& operator<<(std::ostream& out, const Needs& needs) {
  for (const auto& [name, value] : needs.of) out << name << " " << value << "; ";
  return out;
}

// Crossing lines have no profile, whichever way they are drawn: then it is empty.
Needs needs(const Sketch& sketch, geometry::Vec by = {}) {
  static const WallBook all = book();
  Laying laid(all, drawn(sketch, by));
  if (!laid.profile) return {};
  laid.lay();
  takeoff::Share share = laid.counted();
  share.add(walls::caps(laid.job, laid.ground, *laid.profile, *laid.blocks, &laid.courses));
  Needs made;
  for (const char* name : {"courses", "units_whole", "units_half", "corner_units", "end_units", "units_cut",
                           "units_for_cut_pieces", "units", "caps"})
    made.of[name] = measure(share, name);
  return made;
}

// Where choices cost the same, the pieces may be of other lengths and pair otherwise in the units bought for them.
TEST(Walked, FromTheOtherEnd) {
  EXPECT_TRUE(rc::check("a wall counts the same walked from its other end", [] {
    const Sketch sketch = any_sketch();
    Needs there = needs(sketch), back = needs(reversed(sketch));
    if (there.of.empty() || back.of.empty()) return RC_ASSERT(there == back);
    // A joint just where a straight meets an arc belongs to one of them.
    if (on_arcs(sketch)) return;
    for (Needs* of : {&there, &back}) of->of.erase("units_for_cut_pieces"), of->of.erase("units");
    RC_ASSERT(there == back);
  }));
}

TEST(Walked, Mirrored) {
  EXPECT_TRUE(rc::check("a wall counts the same in a mirror", [] {
    const Sketch sketch = any_sketch();
    RC_ASSERT(needs(sketch) == needs(mirrored(sketch)));
  }));
}

TEST(Walked, Turned) {
  EXPECT_TRUE(rc::check("a wall counts the same turned by any angle", [] {
    const Sketch sketch = any_sketch();
    const double angle = *rc::gen::inRange(1, 6283) / 1000.0;
    const Needs there = needs(sketch), askew = needs(turned(sketch, angle));
    const bool at_an_edge = on_arcs(sketch) || sketch.base.empty();
    if (!at_an_edge || there.of.empty() || askew.of.empty()) return RC_ASSERT(there == askew);
    // A misfit just as large as the joints of an arc take up is cut here and taken up there; sloping ground that just
    // reaches a course at a module may fall short of it by a thousandth of a millimetre.
    RC_ASSERT(std::abs(there.of.at("units") - askew.of.at("units")) <= 1 + there.of.at("units") / 50);
  }));
}

// 27 ft is 18 units: askew it is a few thousandths of a millimetre off, which is no piece to saw.
TEST(Walked, WholeUnitsStayWholeAskew) {
  Sketch sketch;
  sketch.line = {{0, 0}, {324 * in, 0}};
  sketch.ground = {{0, 0}};
  sketch.top = {{0, 37}};
  sketch.half = true;
  for (const double angle : {0.0, 0.23, 0.7, 2.0}) {
    const Needs got = needs(turned(sketch, angle));
    EXPECT_EQ(got.of.at("units_cut"), 0) << angle;
    EXPECT_EQ(got.of.at("caps"), 18) << angle;
  }
}

TEST(Walked, MovedByWholeStepsItIsTheSameToTheBit) {
  EXPECT_TRUE(rc::check("moving changes no bit", [] {
    static const WallBook all = book();
    const Sketch sketch = any_sketch();
    const geometry::Vec by{*rc::gen::inRange(-100000000, 100000000) * 1.0,
                           *rc::gen::inRange(-100000000, 100000000) * 1.0};
    Laying here(all, drawn(sketch)), there(all, drawn(sketch, by));
    RC_ASSERT(here.profile == there.profile);
    if (!here.profile) return;
    here.lay(), there.lay();
    RC_ASSERT(here.courses.bays.size() == there.courses.bays.size());
    for (std::size_t i = 0; i < here.courses.bays.size(); ++i)
      RC_ASSERT(*here.courses.bays[i] == *there.courses.bays[i]);
  }));
}

TEST(Walked, ALevelThatSaysNothingNew) {
  EXPECT_TRUE(rc::check("a level within a flat stretch changes nothing", [] {
    const Sketch sketch = any_sketch();
    Sketch more = sketch;
    const auto number = *rc::gen::inRange<std::size_t>(0, more.top.size() - 1);
    if (more.top[number].height != more.top[number + 1].height) return;
    const double middle = (more.top[number].at + more.top[number + 1].at) / 2;
    more.top.insert(more.top.begin() + static_cast<std::ptrdiff_t>(number) + 1, {middle, more.top[number].height});
    RC_ASSERT(needs(sketch) == needs(more));
  }));
}

// Lengths of pieces by course, counts of the cut list, and the units bought for cuts against the length that they need.
TEST(Walked, TheBooksBalance) {
  EXPECT_TRUE(rc::check("pieces fill their runs, and lists agree with counts", [] {
    static const WallBook all = book();
    Laying laid(all, drawn(any_sketch()));
    if (!laid.profile) return;
    const takeoff::Share share = laid.lay().counted();
    double pieces = 0, shown = 0, sawn = 0;
    for (const auto& bay : laid.courses.bays) {
      for (const walls::Run& run : bay->runs) {
        double sum = 0;
        for (const walls::Laid& one : run.units) sum += one.length, sawn += one.make == Make::cut ? one.length : 0;
        RC_ASSERT(std::abs(sum - run.length - run.hidden) < in / 32);
        pieces += sum - run.hidden;
      }
    }
    for (int i = 0; i < laid.profile->courses; ++i) shown += laid.courses.length(i);
    RC_ASSERT(std::abs(pieces - shown) < in);
    int listed = 0;
    for (const takeoff::Cut& cut : share.cuts) listed += cut.count;
    RC_ASSERT(listed == measure(share, "units_cut"));
    RC_ASSERT(measure(share, "units_for_cut_pieces") >= sawn / (18 * in) - 1e-3);
    RC_ASSERT(measure(share, "units_for_cut_pieces") <= measure(share, "units_cut"));
  }));
}

// 40 ft at 12 in pieces: courses 1, 3, 5 have them at one end and 2, 4, 6 at the other.
TEST(CutList, EqualCutsOfOneStretchStandTogether) {
  const takeoff::Share share = Laying(book(), straight(480, 36)).lay().counted();
  ASSERT_EQ(share.cuts.size(), 2u);
  for (const takeoff::Cut& cut : share.cuts) EXPECT_EQ(cut.count, 3) << cut.what;
  EXPECT_NE(share.cuts[0].what.find("1, 3 and 5"), std::string::npos) << share.cuts[0].what;
  EXPECT_NE(share.cuts[0].keep, share.cuts[1].keep);
}

// 40 ft, ground in front rises 16 in over it, top level: by the rule the base goes up in whole courses.
TEST(BaseChoice, BothTotalsAreShown) {
  plan::Wall wall = straight(480, 60);
  wall.ground = {level(0, 0), level(480, 16)};
  const Laying laid = Laying(book(), wall).lay();
  const double units = measure(laid.counted(), "units");
  const auto flat = walls::on_level_base(*laid.profile);
  ASSERT_TRUE(flat);
  int saved = 0;  // a unit of every course and 18 in that is not buried
  for (const walls::Column& c : laid.profile->columns) saved += static_cast<int>(c.base * c.length() / in / 18);
  const takeoff::Share share = walls::base_choice(laid.job, laid.ground, *laid.profile, *laid.blocks, units);
  const auto* told = said(share, "wall-steps");
  ASSERT_NE(told, nullptr);
  const std::string level_total = "one level base takes ";
  const double more = std::stod(told->text.substr(told->text.find(level_total) + level_total.size()));
  EXPECT_NE(told->text.find("takes " + std::to_string(static_cast<int>(units)) + " units"), std::string::npos);
  EXPECT_GE(more - units, saved - 1);
  EXPECT_LE(more - units, saved + laid.profile->courses);
  wall.base = {level(0, -8)};
  const Laying given = Laying(book(), wall).lay();
  EXPECT_EQ(said(walls::base_choice(given.job, given.ground, *given.profile, *given.blocks, units), "wall-steps"),
            nullptr);
}

std::string refusal(const plan::Wall& wall, const WallBook& all = book()) {
  const Laying laid(all, wall);
  if (laid.profile || laid.share.problems.empty()) return {};
  return laid.share.problems.front().code;
}

// Nothing of this is to be laid: it would take for ever, or all memory.
TEST(Hostile, WallsBeyondReasonAreRefused) {
  plan::Wall buried = straight(480, 36);
  buried.bury_courses = 1'000'000'000;
  EXPECT_EQ(refusal(buried), "wall-height");
  plan::Wall high = straight(480, 36);
  high.top = {level(0, 1e9)};
  EXPECT_EQ(refusal(high), "wall-height");
  EXPECT_EQ(refusal(straight(480, 60 * 8)), "wall-height");  // and one course buried: 61
  EXPECT_EQ(refusal(straight(480, 50 * 8)), "");
  plan::Wall under = straight(480, 36);
  under.base = {level(0, 1e9)};
  EXPECT_EQ(refusal(under), "wall-height");
  plan::Wall many = straight(480, 36);
  for (int i = 0; i < 100'000; ++i) many.ground.push_back(level(i * 0.004, i % 2));
  EXPECT_EQ(refusal(many), "wall-heights");
}

TEST(Hostile, BlocksBeyondReasonAreRefused) {
  WallBook all = book();
  all.block("thin", "wall-block", 0.75, 12, 8, 0, 0, 1);  // 19 mm
  plan::Wall wall = straight(480, 36);
  wall.block = "thin";
  EXPECT_EQ(refusal(wall, all), "wall-block");
  all.block("least", "wall-block", 1, 12, 8, 0, 0, 1);
  wall.block = "least";
  EXPECT_EQ(refusal(wall, all), "");
}

}  // namespace
