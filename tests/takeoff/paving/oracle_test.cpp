// Laying by rows held to the slow way, over random grounds, patterns, directions and starts.
#include "oracle.h"

#include <rapidcheck.h>
#include <numbers>

using namespace laying;

namespace {

constexpr double rule = takeoff::paving::grazing;
constexpr takeoff::paving::Slivers limits{1.0 / 3, 2 * inch};

// A star of straight and curved edges round a middle, in steps.
Ring star(double x, double y, double least, double greatest, int corners, bool arcs) {
  Ring made;
  for (int i = 0; i < corners; ++i) {
    const double angle = 2 * std::numbers::pi * (i + *rc::gen::inRange(0, 600) / 1000.0) / corners;
    const double r = least + (greatest - least) * *rc::gen::inRange(0, 1001) / 1000.0;
    const double bulge = arcs && *rc::gen::inRange(0, 3) == 0 ? *rc::gen::inRange(-400, 401) / 1000.0 : 0;
    made.push_back({at(x + r * std::cos(angle), y + r * std::sin(angle)), bulge, {7, i}});
  }
  return made;
}

std::optional<Region> random_region() {
  const bool arcs = *rc::gen::arbitrary<bool>();
  std::vector<Ring> rings{star(0, 0, 0.5 * metre, 1.2 * metre, *rc::gen::inRange(3, 12), arcs)};
  const int holes = *rc::gen::inRange(0, 3);
  for (int h = 0; h < holes; ++h) {
    const double size = *rc::gen::element(0.02, 0.06, 0.15) * metre;  // some fit inside one unit
    rings.push_back(star((h == 0 ? -0.2 : 0.2) * metre, 0, size / 2, size, *rc::gen::inRange(3, 7), arcs));
  }
  auto made = geometry::shape(rings);
  // A ring may cross itself by less than the 0.5 mm within which outlines are checked (an arc close to its neighbour);
  // what is left of a unit there is not the rule's to say.
  if (!made || !oracle::chords_are_simple(made->region)) return std::nullopt;
  return made->region;
}

Lattice random_lattice() {
  std::vector<std::string> ids;
  for (const auto& [id, units] : meant_units()) ids.push_back(id);
  const double degrees = *rc::gen::element(0.0, 90.0, 45.0, 30.0, *rc::gen::inRange(0, 360000) / 1000.0);
  return lattice_of(*rc::gen::elementOf(ids), at(*rc::gen::inRange(-99999, 99999), *rc::gen::inRange(-99999, 99999)),
                    degrees);
}

// Units within 2 steps of the 0.5 mm limit are named by laying with either; such a case says nothing of the rule.
bool at_the_limit(const oracle::Answer& low, const oracle::Answer& high) {
  if (low.whole != high.whole || low.cut.size() != high.cut.size()) return true;
  return low.pieces() != high.pieces();
}

std::map<oracle::Key, std::vector<oracle::UnitPart>> cut_of(const Layout& layout) {
  std::map<oracle::Key, std::vector<oracle::UnitPart>> made;
  for (const auto& p : layout.pieces) made[{p.kind, p.a, p.b}].push_back({p.area, p.least_width});
  for (auto& [key, parts] : made)
    std::sort(parts.begin(), parts.end(), [](auto& l, auto& r) { return l.area > r.area; });
  return made;
}

std::map<oracle::Key, bool> whole_of(const Layout& layout) {
  std::map<oracle::Key, bool> made;
  for (const auto& run : layout.runs) {
    for (int a = run.first; a <= run.last; ++a) {
      const bool fresh = made.emplace(oracle::Key{run.kind, a, run.b}, true).second;
      EXPECT_TRUE(fresh) << "a unit stands in two runs";
    }
  }
  return made;
}

Ring turned(const Ring& ring, double degrees) { return geometry::turned(ring, {}, units::Angle::degrees(degrees)); }

std::vector<Ring> rings_of(const Region& region) {
  std::vector<Ring> rings;
  for (const auto* outline : region.outlines()) rings.push_back(outline->edges());
  return rings;
}

}  // namespace

TEST(LayingOracle, EveryUnitClipped) {
  EXPECT_TRUE(rc::check("rows and chains find what clipping every unit finds", [] {
    const auto region = random_region();
    RC_PRE(region.has_value());
    const Lattice lattice = random_lattice();
    const oracle::Answer low = oracle::lay(*region, lattice, rule - 2);
    const oracle::Answer slow = oracle::lay(*region, lattice, rule, true);
    RC_PRE(!at_the_limit(low, oracle::lay(*region, lattice, rule + 2)));
    const Layout fast = lay(*region, lattice, limits);

    RC_ASSERT(whole_of(fast) == slow.whole);
    const auto cut = cut_of(fast);
    for (const auto& [key, parts] : cut) {
      if (slow.cut.contains(key)) continue;
      RC_LOG() << "only by rows: kind " << std::get<0>(key) << ", a " << std::get<1>(key) << ", b " << std::get<2>(key)
               << ", area " << parts[0].area << ", width " << parts[0].least_width << '\n';
    }
    RC_ASSERT(cut.size() == slow.cut.size());
    for (const auto& [key, parts] : slow.cut) {
      RC_ASSERT(cut.contains(key));
      const auto& mine = cut.at(key);
      RC_ASSERT(mine.size() == parts.size());
      for (std::size_t i = 0; i < parts.size(); ++i) {
        // Doubles of 1e6 steps squared lose 1e-4 steps squared; a unit has 1e9.
        RC_ASSERT(std::abs(mine[i].area - parts[i].area) < 1);
      }
    }
    // Every part that laying keeps or gives away lies within 0.5 mm of an edge.
    double perimeter = 0;
    for (const auto* outline : region->outlines()) perimeter += outline->perimeter().si() * metre;
    RC_ASSERT(std::abs(fast.unit_area - slow.clipped_area) < perimeter * rule);
    RC_ASSERT(std::abs(fast.unit_area - (slow.whole_area + slow.cut_area)) < 1e3);

    const auto counts = takeoff::paving::count(*region, lattice, limits);
    RC_ASSERT(counts.whole == fast.whole());
    RC_ASSERT(counts.cut == static_cast<std::int64_t>(fast.pieces.size()));
    RC_ASSERT(counts.slivers ==
              std::count_if(fast.pieces.begin(), fast.pieces.end(), [](auto& p) { return p.sliver; }));
  }));
}

TEST(LayingOracle, LeastWidthsOfSimplePieces) {
  EXPECT_TRUE(rc::check("the least width is that of the part's corners", [] {
    const auto region = random_region();
    RC_PRE(region.has_value());
    const Lattice lattice = random_lattice();
    const oracle::Answer slow = oracle::lay(*region, lattice, rule);
    const auto cut = cut_of(lay(*region, lattice, limits));
    for (const auto& [key, parts] : slow.cut) {
      if (!cut.contains(key) || cut.at(key).size() != parts.size()) continue;
      for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i + 1 < parts.size() && parts[i].area - parts[i + 1].area < 10) break;  // equal areas: order says nothing
        RC_ASSERT(std::abs(cut.at(key)[i].least_width - parts[i].least_width) < 0.01);
      }
    }
  }));
}

TEST(LayingOracle, UnitsAndJointsAddUpToTheGround) {
  EXPECT_TRUE(rc::check("whole, cut and joints add up to the area within perimeter x 0.5 mm", [] {
    const auto region = random_region();
    RC_PRE(region.has_value());
    const Lattice lattice = random_lattice();
    // Modules tile the plane: units laid as wide as their modules leave no joint at all.
    Lattice modules = lattice;
    for (auto& kind : modules.kinds) {
      kind.low = kind.low - Vec{lattice.joint / 2, lattice.joint / 2};
      kind.width += lattice.joint;
      kind.height += lattice.joint;
    }
    double perimeter = 0;
    for (const auto* outline : region->outlines()) perimeter += outline->perimeter().si() * metre;
    const Layout laid = lay(*region, modules, limits);
    RC_ASSERT(std::abs(laid.unit_area - laid.region_area) < perimeter * rule);
    RC_ASSERT(lay(*region, lattice, limits).unit_area < laid.unit_area + perimeter * rule);
  }));
}

TEST(LayingOracle, MovedByGridStepsNothingChanges) {
  EXPECT_TRUE(rc::check("the same to the bit", [] {
    const auto region = random_region();
    RC_PRE(region.has_value());
    Lattice lattice = random_lattice();
    const Layout here = lay(*region, lattice, limits);
    const Vec by{static_cast<double>(*rc::gen::inRange(-900000000, 900000000)),
                 static_cast<double>(*rc::gen::inRange(-900000000, 900000000))};
    std::vector<Ring> rings;
    for (const Ring& ring : rings_of(*region)) rings.push_back(geometry::moved(ring, by));
    const auto moved = geometry::shape(rings);
    RC_ASSERT(moved.has_value());
    lattice.start = geometry::moved(lattice.start, by);
    const Layout there = lay(moved->region, lattice, limits);
    RC_ASSERT(there.region_area == here.region_area);
    RC_ASSERT(there.unit_area == here.unit_area);
    RC_ASSERT(there.runs.size() == here.runs.size());
    RC_ASSERT(there.pieces.size() == here.pieces.size());
    for (std::size_t i = 0; i < here.pieces.size(); ++i) {
      RC_ASSERT(there.pieces[i].area == here.pieces[i].area);
      RC_ASSERT(there.pieces[i].least_width == here.pieces[i].least_width);
      RC_ASSERT(there.pieces[i].cut_length == here.pieces[i].cut_length);
    }
  }));
}

TEST(LayingOracle, QuarterTurns) {
  EXPECT_TRUE(rc::check("counts are equal, areas within 1e-9", [] {
    const auto region = random_region();
    RC_PRE(region.has_value());
    const auto degrees = *rc::gen::element(0.0, 45.0, 17.0);
    const std::string id = *rc::gen::element<std::string>("herringbone-45", "running-half", "mixed-three");
    const int quarters = *rc::gen::inRange(1, 4);
    std::vector<Ring> rings;
    for (const Ring& ring : rings_of(*region)) rings.push_back(turned(ring, 90 * quarters));
    const auto there_region = geometry::shape(rings);
    RC_ASSERT(there_region.has_value());
    const Layout here = lay(*region, lattice_of(id, {}, degrees), limits);
    const Layout there = lay(there_region->region, lattice_of(id, {}, degrees + 90 * quarters), limits);
    RC_ASSERT(here.whole() == there.whole());
    RC_ASSERT(here.pieces.size() == there.pieces.size());
    RC_ASSERT(std::abs(here.unit_area - there.unit_area) <= 1e-9 * here.unit_area);
  }));
}

TEST(LayingOracle, AnyAngle) {
  EXPECT_TRUE(rc::check("ground and pattern turned together lay alike, but at the limit", [] {
    const auto region = random_region();
    RC_PRE(region.has_value());
    const double degrees = *rc::gen::inRange(1, 360000) / 1000.0;
    const std::string id = *rc::gen::element<std::string>("herringbone-45", "running-half", "mixed-three", "stack");
    std::vector<Ring> rings;
    for (const Ring& ring : rings_of(*region)) rings.push_back(turned(ring, degrees));
    const auto there_region = geometry::shape(rings);
    RC_PRE(there_region.has_value());
    const Lattice lattice = lattice_of(id);
    RC_PRE(!at_the_limit(oracle::lay(*region, lattice, rule - 2), oracle::lay(*region, lattice, rule + 2)));
    const Layout here = lay(*region, lattice, limits);
    const Layout there = lay(there_region->region, lattice_of(id, {}, degrees), limits);
    RC_ASSERT(here.whole() == there.whole());
    RC_ASSERT(here.pieces.size() == there.pieces.size());
  }));
}
