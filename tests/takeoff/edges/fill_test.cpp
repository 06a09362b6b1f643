#include "takeoff/edges/fill.h"
#include "site_kit.h"

namespace {

using namespace site_kit;

Book fill_book() {
  Book book;
  book.sized("unit-4x8-60", "paving-unit", 7.875, 3.875, 2.375, 0.125);
  book.sized("unit-8x4", "paving-unit", 8, 4, 2.375, 0.125);
  book.sized("unit-8x4-80", "paving-unit", 8, 4, 3.125, 0.125);
  book.sized("slab-12", "slab", 12, 12, 2, 0.25);
  catalogue::Item& polymer = book.add("joint-polymer", "joint-sand");
  polymer.details = {{"loose_density_kg_m3", "1600"},
                     {"least_joint_mm", "1.5875"},
                     {"greatest_joint_mm", "12.7"},
                     {"least_depth_mm", "25.4"}};
  book.add("joint-chips", "joint-chips").details = {{"loose_density_kg_m3", "1550"}};
  book.add("agg-no8", "aggregate").details = {{"porosity", "0.4"}};
  book.add("agg-sand-c33", "aggregate");
  book.rate("joint-polymer", {}, "joint");
  book.rate("joint-chips", {}, "joint");
  book.limit("joint-fill-low", 0, 0.5, 0.125, "in");
  for (const auto& [id, bedding] : {std::pair{"hybrid-foot", "agg-no8"}, {"dense-foot", "agg-sand-c33"}}) {
    catalogue::BuildUp build_up;
    build_up.id = id;
    build_up.layers = {{"bedding", bedding, inches(1), {}, {}, {}, {}}};
    book.all->build_ups[id] = build_up;
  }
  return book;
}

// A field of so many m2 with so much of it joints, as laying would hand it over.
struct Field {
  plan::Ground ground;
  takeoff::paving::LaidArea laid;
};
std::unique_ptr<Field> field(const std::string& unit, const std::string& build_up, double area, double joint_share,
                             const std::vector<plan::JointFill>& fill) {
  plan::PavedArea what;
  what.outline = shape({{0, 0}, {480, 0}, {480, 360}, {0, 360}});
  what.build_up = build_up;
  what.laying = plan::Laying{};
  what.laying->units = {{"a", unit}};
  what.joint_fill = fill;
  auto made = std::make_unique<Field>();
  made->ground = ground({"A", "a", what});
  auto layout = std::make_shared<takeoff::paving::Layout>();
  layout->region_area = area * Length::steps_per_metre * Length::steps_per_metre;
  layout->unit_area = layout->region_area * (1 - joint_share);
  made->laid.ground = &made->ground;
  made->laid.layout = layout;
  made->laid.field = made->ground.net;
  return made;
}

takeoff::Share fill_of(const Book& book, const Field& one) {
  return takeoff::edges::joint_fill(job(book, {*one.ground.element}), one.laid, 0);
}

TEST(JointFill, PublishedTwinsOfTheExactShare) {
  // 100 sq ft, share 1 - L W / ((L + j)(W + j)); cu ft per 100 sq ft: 8x4x2-3/8 at 1/8 in, 1/8 in below the top:
  // 0.8479; 8x4x3-1/8 filled whole 1.1776 and 12x12x2 at 1/4 whole 0.6733 (derived).
  struct Case {
    const char* unit;
    double length, width, joint, low, cubic_feet;
  };
  for (const Case& one : {Case{"unit-8x4", 8, 4, 0.125, 0.125, 0.8479}, Case{"unit-8x4", 8, 4, 0.125, 0, 0.8950},
                          Case{"unit-8x4-80", 8, 4, 0.125, 0, 1.1776}, Case{"slab-12", 12, 12, 0.25, 0, 0.6733}}) {
    Book book = fill_book();
    book.limit("joint-fill-low", 0, 0.5, one.low, "in");
    const double share_of = 1 - one.length * one.width / ((one.length + one.joint) * (one.width + one.joint));
    const auto made = field(one.unit, "hybrid-foot", 100 * ft * ft, share_of, {{"joint-polymer", {}}});
    const takeoff::Share share = fill_of(book, *made);
    EXPECT_NEAR(measure(share, "joint_fill_m3") / units::cubic_metres_per_cubic_foot, one.cubic_feet, 5e-5) << one.unit;
    EXPECT_NEAR(quantity(share, "joint-polymer"), measure(share, "joint_fill_m3") * 1600, 1e-9);
  }
}

TEST(JointFill, DemoFields) {
  const Book book = fill_book();
  // Demo answers, version B: A1 field 56.5469801 m2 less units 53.9240995, A2 16.1975982 less 15.4453513, x 2 1/4 in
  // ("unit less 1/8"): they use the endless pattern's share 4.63867 %, 0.192845948 m3; the pieces really laid give
  // 0.192885 (in all 0.02 % more).
  const auto a1 = field("unit-4x8-60", "hybrid-foot", 56.5469801, 1 - 53.9240995 / 56.5469801, {{"joint-polymer", {}}});
  const auto a2 = field("unit-4x8-60", "hybrid-foot", 16.1975982, 1 - 15.4453513 / 16.1975982, {{"joint-polymer", {}}});
  const double both =
      measure(fill_of(book, *a1), "joint_fill_field_m3") + measure(fill_of(book, *a2), "joint_fill_field_m3");
  EXPECT_NEAR(both, (56.5469801 - 53.9240995 + 16.1975982 - 15.4453513) * 2.25 * in, 1e-9);
  EXPECT_NEAR(both, 0.192845948, 0.0003 * 0.192845948);
  EXPECT_TRUE(fact(fill_of(book, *a1), "polymer"));
}

TEST(JointFill, SandBeddingHasRisenIntoTheJoint) {
  // Demo answers fill W 2 1/4 in deep; over a sand bed 3/8 in of that is already full of bedding (common practice): 1
  // 7/8 in.
  const Book book = fill_book();
  const auto open = field("unit-4x8-60", "hybrid-foot", 10, 0.05, {{"joint-polymer", {}}});
  const auto sand = field("unit-4x8-60", "dense-foot", 10, 0.05, {{"joint-polymer", {}}});
  EXPECT_NEAR(measure(fill_of(book, *open), "joint_fill_m3"), 0.5 * 2.25 * in, 1e-12);
  EXPECT_NEAR(measure(fill_of(book, *sand), "joint_fill_m3"), 0.5 * 1.875 * in, 1e-12);
}

TEST(JointFill, ListFromTheTop) {
  // Polymer 1 in deep over chips: 2 1/4 - 1 = 1 1/4 in of chips.
  const Book book = fill_book();
  const auto made = field("unit-4x8-60", "hybrid-foot", 10, 0.05, {{"joint-polymer", inches(1)}, {"joint-chips", {}}});
  const takeoff::Share share = fill_of(book, *made);
  EXPECT_NEAR(quantity(share, "joint-polymer"), 0.5 * 1 * in * 1600, 1e-9);
  EXPECT_NEAR(quantity(share, "joint-chips"), 0.5 * 1.25 * in * 1550, 1e-9);
  EXPECT_NEAR(task(share, "joint-polymer"), made->ground.net.area().si(), 1e-9);  // hours go by the top filler
  const auto open = field("unit-4x8-60", "hybrid-foot", 10, 0.05, {{"joint-polymer", {}}, {"joint-chips", {}}});
  EXPECT_TRUE(said(fill_of(book, *open), "joint-fill-list"));
}

TEST(JointFill, FillerIsHeldToItsJoints) {
  const Book book = fill_book();
  auto wide = field("unit-4x8-60", "hybrid-foot", 10, 0.05, {{"joint-polymer", {}}});
  EXPECT_TRUE(fill_of(book, *wide).problems.empty()) << all_said(fill_of(book, *wide));
  // A border on a curve whose joints open from 1/16 to 9/16 in: over the filler's 1/2 in.
  takeoff::paving::LaidBorder border;
  border.course.item = "unit-4x8-60";
  border.joint_area = 0.1;
  takeoff::paving::RowMake run;
  run.pieces = 20;
  run.near_joint = 0.0625 * in;
  run.far_joint = 0.5625 * in;
  border.runs.push_back(run);
  wide->laid.borders.push_back(border);
  const takeoff::Share share = fill_of(book, *wide);
  EXPECT_TRUE(said(share, "joint-too-wide"));
  EXPECT_FALSE(said(share, "joint-too-narrow"));
  EXPECT_NEAR(measure(share, "joint_fill_border_m3"), 0.1 * 2.25 * in, 1e-12);
  const auto shallow =
      field("unit-4x8-60", "hybrid-foot", 10, 0.05, {{"joint-polymer", inches(0.5)}, {"joint-chips", {}}});
  EXPECT_TRUE(said(fill_of(book, *shallow), "joint-too-shallow"));
}

TEST(JointFill, NoFillerChosenIsSaid) {
  const Book book = fill_book();
  EXPECT_TRUE(said(fill_of(book, *field("unit-4x8-60", "hybrid-foot", 10, 0.05, {})), "joint-fill-missing"));
  EXPECT_TRUE(said(fill_of(book, *field("unit-4x8-60", "hybrid-foot", 10, 0.05, {{"nothing", {}}})), "item-missing"));
}

}  // namespace
