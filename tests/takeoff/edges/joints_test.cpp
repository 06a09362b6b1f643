#include <cmath>

#include "site_kit.h"
#include "takeoff/edges/junction.h"
#include "takeoff/edges/seal.h"

namespace {

using namespace site_kit;
using plan::Meets;

catalogue::Junction row(const std::string& id, const std::string& side_b, const std::string& condition, double joint,
                        const std::string& rod, const std::string& sealant, const std::string& filler) {
  catalogue::Junction made;
  made.id = id;
  made.side_a = "paving";
  made.side_b = side_b;
  made.condition = condition;
  made.name.en = id;
  if (joint > 0) made.joint = inches(joint);
  made.rod = rod;
  made.sealant = sealant;
  made.filler = filler;
  return made;
}

Book joint_book() {
  Book book;
  for (const auto& [id, eighths] :
       {std::pair{"rod-3_8", 3.0}, {"rod-1_2", 4.0}, {"rod-5_8", 5.0}, {"rod-7_8", 7.0}, {"rod-1", 8.0}})
    book.add(id, "rod").details = {{"diameter_mm", std::to_string(eighths / 8 * 25.4)}};
  book.add("seal-tube-29", "sealant").breakage = 0.05;
  book.add("seal-plain", "sealant");
  book.add("joint-broadcast", "joint-sand");
  book.add("joint-chips", "joint-chips").details = {{"loose_density_kg_m3", "1550"}};
  book.add("fabric-strip-1", "fabric");
  catalogue::Item& strip = book.add("isolation-strip-4", "filler-strip");
  strip.height = inches(0.5);
  book.sized("edging-24", "edging-unit", 23.875, 2, 8, 0.125);
  book.add("restraint-plastic-8", "restraint").length = Length::feet(8);
  book.add("spike-10", "spike");
  book.add("agg-no57", "aggregate").details = {{"porosity", "0.4"}};
  book.add("agg-dense", "aggregate");
  book.add("mortar-bag-80", "concrete");
  for (const char* id : {"joint-seal", "isolation", "restraint"}) book.rate(id, "curves x 1.2");
  const auto built = [&](const std::string& id, const std::vector<catalogue::Layer>& layers) {
    catalogue::BuildUp build_up;
    build_up.id = id;
    build_up.layers = layers;
    book.all->build_ups[id] = build_up;
  };
  built("hybrid-foot", {{"base", "agg-no57", inches(6), {}, {}, {}, {}}});
  built("dense-foot", {{"base", "agg-dense", inches(4), {}, {}, {}, {}}});
  built("bound-slab",
        {{"mortar", "mortar-bag-80", inches(0.5), {}, {}, {}, {}}, {"base", "agg-dense", inches(4), {}, {}, {}, {}}});
  auto& table = book.all->junctions;
  table.push_back(row("paving-coping", "coping", "same level", 0.5, "rod-5_8", "seal-tube-29", "joint-broadcast"));
  table.push_back(row("paving-coping-bound", "coping", "bound deck", 0.75, "rod-1", "seal-tube-29", "joint-broadcast"));
  table.push_back(row("paving-building", "building", "any", 0.5, "rod-5_8", "seal-tube-29", ""));
  table.push_back(row("paving-wall-face", "wall face", "in front", 0.25, "", "", "joint-chips"));
  table.push_back(row("paving-planting", "planting", "dense base", 0, "", "", ""));
  table.back().edge = "restraint-plastic-8";
  table.back().other = "spike-10 at 12 in, curves 8 in";
  table.push_back(row("paving-planting-open", "planting", "open base", 0, "", "", ""));
  table.push_back(row("paving-paving-flush", "paving", "same level, other pattern or unit", 0.125, "", "", "area"));
  table.push_back(
      row("paving-paving-base", "paving", "same level, open base meets dense base", 0.125, "", "", "fabric-strip-1"));
  table.push_back(row("paving-channel", "channel", "both sides", 0.25, "rod-3_8", "seal-tube-29", ""));
  table.back().built = "units above the grate; sealed where the base is open";
  table.push_back(row("paving-inlet", "keep-out", "inlet or cover", 0.125, "", "", "area"));
  table.push_back(row("paving-pillar", "keep-out", "pillar or post", 0.125, "", "", "area"));
  table.push_back(row("paving-tree", "keep-out", "tree or planter", 0, "", "", ""));
  table.back().edge = "edging-24";
  return book;
}

plan::Element deck(const std::string& id, const std::string& build_up, const plan::DrawnShape& outline) {
  plan::PavedArea what;
  what.outline = outline;
  what.build_up = build_up;
  return {id, id, what};
}

// One stretch for each edge of the ground's outlines, in order, meeting what is said.
struct Facing {
  Meets meets = Meets::planting;
  plan::ElementId other;
};
void face(plan::Ground& ground, const std::vector<Facing>& facing) {
  std::size_t next = 0;
  int number = 0;
  for (const geometry::Outline* outline : ground.net.outlines()) {
    const auto curves = geometry::curves(outline->edges());
    for (std::size_t i = 0; i < curves.size(); ++i) {
      const Facing& one = facing.at(std::min(next, facing.size() - 1));
      ++next;
      ground.stretches.push_back({number, static_cast<int>(i), 0, curves[i].length() / Length::steps_per_metre,
                                  outline->edges()[i].origin, one.meets, one.other, 0, 0,
                                  curves[i].radius() / Length::steps_per_metre});
    }
    ++number;
  }
}

takeoff::Share joints_of(const Book& book, const std::vector<plan::Element>& elements, const plan::Ground& ground) {
  takeoff::paving::LaidArea laid;
  laid.ground = &ground;
  laid.field = ground.net;
  return takeoff::edges::joints(job(book, elements), {}, laid);
}

TEST(Sealant, DepthIsHalfTheWidthWithinLimits) {
  // Architectural detailing text, sealant joints: 1/4 -> 1/4, 3/4 -> 3/8, 1-1/4 -> 1/2.
  const plan::Job made = job(joint_book(), {});
  const auto depth = [&](double width) {
    return takeoff::edges::seal_depth(made, takeoff::term("w", width * in, units::metre)).amount().value / in;
  };
  EXPECT_NEAR(depth(0.25), 0.25, 1e-12);
  EXPECT_NEAR(depth(0.5), 0.25, 1e-12);
  EXPECT_NEAR(depth(0.75), 0.375, 1e-12);
  EXPECT_NEAR(depth(1.25), 0.5, 1e-12);
  EXPECT_NEAR(depth(2), 0.5, 1e-12);
}

TEST(Sealant, RodIsTheSmallestOfAQuarterMore) {
  // ASTM D5249: 25 to 35 % wider: 1/2 -> 5/8. 1/4 -> 5/16, seldom stocked: 3/8. 3/4 -> 15/16: 1. Nothing for 2 in.
  const plan::Job made = job(joint_book(), {});
  const auto rod = [&](double joint) {
    const catalogue::Item* item = takeoff::edges::rod_for(made, inches(joint));
    return item ? item->id : std::string("none");
  };
  EXPECT_EQ(rod(0.5), "rod-5_8");
  EXPECT_EQ(rod(0.25), "rod-3_8");
  EXPECT_EQ(rod(0.375), "rod-1_2");
  EXPECT_EQ(rod(0.75), "rod-1");
  EXPECT_EQ(rod(2), "none");
}

TEST(Sealant, CoverageRowsToTheDigit) {
  // ft per gallon = 231 / (12 w d) = 19.25 / (w d): 308.00, 154.00, 68.44; ft per 29 oz by 1.8046875 cu in an ounce.
  // The joint is 100 ft along a building, so that the middle line is as long as the stretch.
  struct Row {
    double width;
    double feet_per_gallon;
  };
  for (const Row& one : {Row{0.25, 308.00}, Row{0.375, 205.33}, Row{0.5, 154.00}, Row{0.75, 68.44}, Row{1, 38.50}}) {
    Book book = joint_book();
    for (catalogue::Junction& junction : book.all->junctions)
      if (junction.id == "paving-building") junction.joint = inches(one.width);
    const plan::Element area = deck("A", "hybrid-foot", shape({{0, 0}, {1200, 0}, {1200, 120}, {0, 120}}));
    plan::Ground ground = site_kit::ground(area);
    face(ground, {{Meets::building, "H"}, {Meets::restraint, "E"}, {Meets::restraint, "E"}, {Meets::restraint, "E"}});
    const takeoff::Share share = joints_of(book, {area}, ground);
    const double gallons = measure(share, "sealant_m3") / units::cubic_metres_per_gallon;
    EXPECT_NEAR(100 / gallons, one.feet_per_gallon, 0.005) << one.width;
  }
}

// The demo's deck A1 in outline, cut by the coping's back line, with the channel, wall, seat wall, walk and kerb round
// it.
TEST(Joints, DemoCopingHouseAndChannel) {
  const Book book = joint_book();
  // Back of the coping 10 1/2 in outside the water: radii 90.5, 84.5, 55.5 and 370.5 in about the same centres.
  const geometry::Region water = *geometry::region(ring({{318, 72, bulge(pi + std::asin(0.6))},
                                                         {270, 216, bulge(-2 * std::asin(0.6))},
                                                         {156, 216, bulge(pi)},
                                                         {102, 144, bulge(std::asin(0.6))}}));
  const geometry::Region back = *geometry::offset(water, inches(10.5), geometry::Corner::mitred);
  geometry::Drawn drawn{ring({{0, 0}, {480, 0}, {480, 307}, {0, 307}}), back.polygons().front().outer.edges()};
  const plan::Element area = deck("A1", "hybrid-foot", shape({{0, 0}, {480, 0}, {480, 307}, {0, 307}}));
  plan::Ground ground;
  ground.element = std::make_shared<const plan::Element>(area);
  ground.net = geometry::shape(drawn)->region;
  face(ground, {{Meets::kerb, "K1"},
                {Meets::wall_face, "RW"},
                {Meets::channel, "CH"},
                {Meets::kerb, "K1"},
                {Meets::coping, "P"}});
  const takeoff::Share share = joints_of(book, {area}, ground);
  // "coping (mid line, d = 10.75)": 20.2718614 + 2 pi 10.75 in; one side of the channel 40 ft.
  EXPECT_NEAR(measure(share, "sealed_joint_m:paving-coping"), 20.2718614 + 2 * pi * 10.75 * in, 22e-6);
  EXPECT_NEAR(measure(share, "sealed_joint_m:paving-channel"), 40 * ft, 1e-6);
  // Both sides of the channel and 30 ft of house make the demo's 55.5154852 m.
  EXPECT_NEAR(measure(share, "sealed_joint_m") + 70 * ft, 55.5154852, 55e-6);
  // The demo counts 5 tubes of 29 oz (52.336 cu in): 1/2 x 1/4 in along coping and house, 1/4 x 1/4 along the channel,
  // x 1.05.
  const double cubic_inches = measure(share, "sealant_m3") / (in * in * in) + 30 * 12 * 0.125 + 40 * 12 * 0.0625;
  EXPECT_EQ(std::ceil(cubic_inches * 1.05 / (29 * 1.8046875)), 5);
  EXPECT_NEAR(quantity(share, "rod-5_8"), measure(share, "sealed_joint_m:paving-coping"), 1e-12);
  EXPECT_TRUE(said(share, "rod-wide"));  // 3/8 in in a 1/4 in joint is 50 % over
  // Chips in front of the wall: 307 in x 1/4 in; no units are laid here, so no depth is known and nothing is claimed.
  EXPECT_FALSE(share.measures.get("gap_fill_m3"));
  // 0.5 lb of sand a sq ft of the sealant's face.
  EXPECT_NEAR(quantity(share, "joint-broadcast") / units::kilograms_per_pound,
              0.5 * (measure(share, "sealed_joint_m:paving-coping") / ft) * (0.5 / 12), 1e-9);
  EXPECT_TRUE(line_of(share, "joint-broadcast")->approximate);
  EXPECT_FALSE(line_of(share, "seal-tube-29")->allowance);  // its own 5 %
  EXPECT_TRUE(fact(share, "sealed-joint"));
  EXPECT_NEAR(measure(share, "meets_m:wall face"), 307 * in, 1e-9);
  EXPECT_NEAR(task(share, "joint-seal"), measure(share, "sealed_joint_m"), 1e-9);
}

TEST(Joints, OnTheSiteOfTheDemo) {
  // The deck A1 and the pool P as drawn, the rest of the job left out: the site itself says what faces what.
  Book book = joint_book();
  book.sized("cop-bull-6", "coping", 5.875, 12, 2.375, 0.125);
  plan::Pool water;
  water.coping = plan::Coping{"cop-bull-6", inches(1.5), {}, plan::Coping::Make::any};
  const plan::Element area =
      deck("A1", "dense-foot", shape({{0, 60, bulge(pi / 2)}, {60, 0}, {480, 0}, {480, 307}, {0, 307}}));
  const plan::Job made = job(book, {area, pool(water)});
  const plan::Site site = plan::site(made);
  takeoff::paving::LaidArea laid;
  laid.ground = site.find("A1");
  ASSERT_TRUE(laid.ground);
  laid.field = laid.ground->net;
  const takeoff::Share share = takeoff::edges::joints(made, site, laid);
  // Demo answers: coping stretch 21.9475869 m, net area (and two pillars, 24 x 24 in), perimeter 39.3254936 m.
  EXPECT_NEAR(measure(share, "meets_m:coping"), 21.9475869, 22e-6);
  EXPECT_NEAR(laid.ground->net.area().si(), 64.6608614 + 2 * 24 * 24 * in * in, 65e-6);
  EXPECT_NEAR(measure(share, "sealed_joint_m"), 20.2718614 + 2 * pi * 10.75 * in, 22e-6);
  EXPECT_NEAR(measure(share, "meets_m:planting"), 39.3254936, 39e-6);
  // All round is free here, a closed line: the corner's arc of 30 pi in at 8 in, the rest, 1454 in, at 12 in:
  // ceil(94.25 / 8) + ceil(1454 / 12) = 12 + 122.
  EXPECT_NEAR(measure(share, "restraint_m"), 39.3254936, 39e-6);
  EXPECT_EQ(measure(share, "spikes"), 134);
}

TEST(Joints, MiddleLineTurnsWithTheCorners) {
  // A pool of 20 x 10 ft to the back of its coping: the joint's middle line, 1/4 in out, is 8 x 1/4 in longer.
  const plan::Element area = deck("A", "dense-foot", shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}}));
  plan::Ground ground = site_kit::ground(area);
  ground.net = geometry::shape({ring({{0, 0}, {480, 0}, {480, 360}, {0, 360}}),
                                ring({{120, 120}, {360, 120}, {360, 240}, {120, 240}})})
                   ->region;
  face(ground, {{Meets::restraint, "E"},
                {Meets::restraint, "E"},
                {Meets::restraint, "E"},
                {Meets::restraint, "E"},
                {Meets::coping, "P"}});
  const takeoff::Share share = joints_of(joint_book(), {area}, ground);
  EXPECT_NEAR(measure(share, "sealed_joint_m"), (720 + 2) * in, 1e-6);
}

TEST(Joints, SealantWithoutItsOwnBreakageTakesTenPercent) {
  Book book = joint_book();
  for (catalogue::Junction& junction : book.all->junctions)
    if (junction.id == "paving-building") junction.sealant = "seal-plain";
  const plan::Element area = deck("A", "dense-foot", shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}}));
  plan::Ground ground = site_kit::ground(area);
  face(ground, {{Meets::building, "H"}, {Meets::restraint, "E"}});
  const takeoff::Share share = joints_of(book, {area}, ground);
  ASSERT_TRUE(line_of(share, "seal-plain"));
  EXPECT_EQ(line_of(share, "seal-plain")->allowance, 0.10);  // common practice
  EXPECT_NEAR(quantity(share, "isolation-strip-4"), 40 * ft, 1e-9);
  EXPECT_NEAR(measure(share, "isolation_m"), 40 * ft, 1e-9);
}

TEST(Joints, BuildingIsIsolatedButSealedOnlyWhereTheTableSays) {
  Book book = joint_book();
  for (catalogue::Junction& junction : book.all->junctions)
    if (junction.id == "paving-building") junction.sealant = junction.rod = "";
  const plan::Element area = deck("A", "dense-foot", shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}}));
  plan::Ground ground = site_kit::ground(area);
  face(ground, {{Meets::building, "H"}, {Meets::restraint, "E"}});
  const takeoff::Share share = joints_of(book, {area}, ground);
  EXPECT_TRUE(line_of(share, "isolation-strip-4"));
  EXPECT_FALSE(line_of(share, "seal-tube-29"));
  EXPECT_FALSE(share.measures.get("sealed_joint_m"));
}

TEST(Joints, ChannelIsSealedOnlyOverOpenStone) {
  const plan::DrawnShape outline = shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}});
  for (const auto& [build_up, is_sealed] : {std::pair{"hybrid-foot", true}, {"dense-foot", false}}) {
    const plan::Element area = deck("A", build_up, outline);
    plan::Ground ground = site_kit::ground(area);
    face(ground, {{Meets::channel, "CH"}, {Meets::restraint, "E"}});
    const takeoff::Share share = joints_of(joint_book(), {area}, ground);
    EXPECT_EQ(share.measures.get("sealed_joint_m").has_value(), is_sealed) << build_up;
  }
}

TEST(Joints, WidthOutsideTheSealantsLimitsIsAProblem) {
  Book book = joint_book();
  for (catalogue::Junction& junction : book.all->junctions)
    if (junction.id == "paving-building") junction.joint = inches(0.125);
  const plan::Element area = deck("A", "dense-foot", shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}}));
  plan::Ground ground = site_kit::ground(area);
  face(ground, {{Meets::building, "H"}, {Meets::restraint, "E"}});
  EXPECT_TRUE(said(joints_of(book, {area}, ground), "seal-width"));
}

TEST(Joints, BetweenPavingsTheOneListedFirstBuilds) {
  const plan::Element a = deck("A", "hybrid-foot", shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}}));
  const plan::Element w = deck("W", "dense-foot", shape({{-240, 0}, {0, 0}, {0, 60}, {-240, 60}}));
  plan::Ground of_a = site_kit::ground(a);
  face(of_a, {{Meets::paving, "W"}, {Meets::restraint, "E"}});
  plan::Ground of_w = site_kit::ground(w);
  face(of_w, {{Meets::paving, "A"}, {Meets::restraint, "E"}});
  const Book book = joint_book();
  EXPECT_NEAR(quantity(joints_of(book, {a, w}, of_a), "fabric-strip-1"), 40 * ft, 1e-9);
  EXPECT_FALSE(line_of(joints_of(book, {a, w}, of_w), "fabric-strip-1"));
  EXPECT_FALSE(line_of(joints_of(book, {w, a}, of_a), "fabric-strip-1"));
}

TEST(Joints, FreeEdgesGetTheRestraintOfTheTable) {
  // 40 ft free at 12 in: 41 spikes; restraint in 8 ft lengths: 5.
  const plan::Element area = deck("A", "dense-foot", shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}}));
  plan::Ground ground = site_kit::ground(area);
  face(ground, {{Meets::planting, ""}, {Meets::kerb, "K"}});
  const takeoff::Share share = joints_of(joint_book(), {area}, ground);
  EXPECT_NEAR(measure(share, "restraint_m"), 40 * ft, 1e-9);
  EXPECT_NEAR(quantity(share, "restraint-plastic-8"), 5, 1e-9);
  EXPECT_EQ(quantity(share, "spike-10"), 41);
  // Nothing chosen, nothing built.
  const plan::Element bare = deck("B", "", shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}}));
  plan::Ground of_bare = site_kit::ground(bare);
  face(of_bare, {{Meets::planting, ""}});
  EXPECT_TRUE(joints_of(joint_book(), {bare}, of_bare).lines.empty());
}

TEST(Junction, TheTableIsAskedByWhatIsMetAndHow) {
  const Book book = joint_book();
  const auto found = [&](const std::string& build_up, Meets meets, const plan::ElementId& other = {}) -> std::string {
    const plan::Element a = deck("A", build_up, shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}}));
    const plan::Element w = deck("W", "dense-foot", shape({{-240, 0}, {0, 0}, {0, 60}, {-240, 60}}));
    plan::Ground ground = site_kit::ground(a);
    face(ground, {{meets, other}});
    const catalogue::Junction* junction =
        takeoff::edges::junction_for(job(book, {a, w}), ground, ground.stretches.front());
    return junction ? junction->id : "";
  };
  EXPECT_EQ(found("hybrid-foot", Meets::coping), "paving-coping");
  EXPECT_EQ(found("bound-slab", Meets::coping), "paving-coping-bound");
  EXPECT_EQ(found("dense-foot", Meets::planting), "paving-planting");
  EXPECT_EQ(found("hybrid-foot", Meets::planting), "paving-planting-open");
  EXPECT_EQ(found("bound-slab", Meets::planting), "");
  EXPECT_EQ(found("hybrid-foot", Meets::paving, "W"), "paving-paving-base");
  EXPECT_EQ(found("dense-foot", Meets::paving, "W"), "paving-paving-flush");
  EXPECT_EQ(found("dense-foot", Meets::pillar), "paving-pillar");
  EXPECT_EQ(found("dense-foot", Meets::inlet), "paving-inlet");
  EXPECT_EQ(found("dense-foot", Meets::planter), "paving-tree");
  EXPECT_EQ(found("dense-foot", Meets::water), "");
}

TEST(Junction, ThePersonsChoiceGoesFirst) {
  const Book book = joint_book();
  plan::Element area = deck("A", "dense-foot", shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}}));
  std::get<plan::PavedArea>(area.kind).edges = {{0, "paving-channel"}, {1, "none"}};
  plan::Ground ground = site_kit::ground(area);
  face(ground, {{Meets::building, "H"}});
  const plan::Job made = job(book, {area});
  EXPECT_EQ(takeoff::edges::junction_for(made, ground, ground.stretches[0])->id, "paving-channel");
  EXPECT_EQ(takeoff::edges::junction_for(made, ground, ground.stretches[1]), nullptr);
  EXPECT_EQ(takeoff::edges::junction_for(made, ground, ground.stretches[2])->id, "paving-building");
}

// A ring of planter in a deck: edging of 23 7/8 in stands 2 in inside the line. At 36 in the near line is 34 in: a
// chord within 1/4 in of it has a = acos(34 / 34.25) = 6.9 degrees, a near face of 2 x 34 tan a = 8.3 in, under half a
// unit. At 30 ft the chord may be a = 2.1 degrees wide: 2 x 358 tan a = 26.8 in, longer than the unit, so that it
// tapers.
TEST(Joints, StraightEdgingDoesNotFollowATightCurve) {
  const auto round = [](double radius) {
    const plan::Element area = deck("A", "dense-foot",
                                    {plan::DrawnRing{ring({{-900, -900}, {900, -900}, {900, 900}, {-900, 900}}), {}},
                                     plan::DrawnRing{ring({{-radius, 0, 1}, {radius, 0, 1}}), {}}});
    plan::Ground meeting = ground(area);
    face(meeting, {{Meets::planting, ""},
                   {Meets::planting, ""},
                   {Meets::planting, ""},
                   {Meets::planting, ""},
                   {Meets::planter, "T"}});
    Book book = joint_book();
    book.rate("kerb-set", "curves x 1.4");
    return joints_of(book, {area}, meeting);
  };
  const takeoff::Share tight = round(36);
  ASSERT_TRUE(said(tight, "edging-curve")) << all_said(tight);
  EXPECT_EQ(said(tight, "edging-curve")->severity, problem::Severity::flag);
  EXPECT_TRUE(said(tight, "edging-footing"));
  EXPECT_NEAR(task(tight, "kerb-set"), 2 * pi * 36 * in, 1e-5);
  EXPECT_EQ(quantity(tight, "edging-24"), 10);  // 226.2 / 24 = 9.4
  EXPECT_FALSE(said(round(360), "edging-curve"));
}

TEST(Joints, TheGapAtAWallIsToBeChecked) {
  const plan::Element area = deck("A", "dense-foot", shape({{0, 0}, {120, 0}, {120, 120}, {0, 120}}));
  plan::Ground meeting = ground(area);
  face(meeting, {{Meets::wall_face, "W"}});
  EXPECT_TRUE(said(joints_of(joint_book(), {area}, meeting), "wall-gap"));
  meeting.stretches.clear();
  face(meeting, {{Meets::planting, ""}});
  EXPECT_FALSE(said(joints_of(joint_book(), {area}, meeting), "wall-gap"));
}

}  // namespace
