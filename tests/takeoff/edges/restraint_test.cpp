#include "site_kit.h"
#include "takeoff/edges/spikes.h"

namespace {

using namespace site_kit;

geometry::Path path(const std::vector<Corner>& corners, double x, double y) {
  return *geometry::Path::make(ring(corners), at(x, y));
}
double spikes_on(const geometry::Path& path, double straight, double curves) {
  return takeoff::edges::spikes(path, inches(straight), inches(curves), "E").amount().value;
}

TEST(Spikes, BothEndsAreHeld) {
  // ceil(E/s) + 1: 60 ft at 2 ft 31; 61 ft 32 (the floor form gives 31 and leaves the far end loose).
  EXPECT_EQ(spikes_on(path({{0, 0}}, 720, 0), 24, 24), 31);
  EXPECT_EQ(spikes_on(path({{0, 0}}, 732, 0), 24, 24), 32);
  // A closed line of 60 ft: ceil(E/s) = 30.
  EXPECT_EQ(spikes_on(path({{0, 0}, {180, 0}, {180, 180}, {0, 180}}, 0, 0), 24, 24), 30);
}

TEST(Spikes, CloserOnCurves) {
  // 120 in straight at 12 in: 10; quarter of radius 96 in at 8 in: ceil(150.80 / 8) = 19; 120 straight: 10; one at the
  // end.
  const geometry::Path bend = path({{0, 0}, {120, 0, bulge(pi / 2)}, {216, 96}}, 216, 216);
  EXPECT_EQ(spikes_on(bend, 12, 8), 10 + 19 + 10 + 1);
  // With one spacing all along it is one part: ceil((240 + 150.80) / 12) + 1 = 33 + 1.
  EXPECT_EQ(spikes_on(bend, 12, 12), 34);
}

Book edging_book() {
  Book book;
  book.add("restraint-plastic-8", "restraint").length = Length::feet(8);
  book.add("spike-10", "spike");
  book.rate("restraint");
  book.limit("spike-spacing", {}, 36, 12, "in");
  return book;
}

plan::Element run(const std::string& id, const plan::DrawnLine& drawn, double spacing) {
  plan::EdgeRun what;
  what.line = drawn;
  what.what = "restraint";
  what.item = "restraint-plastic-8";
  what.spikes = plan::Spikes{"spike-10", inches(spacing), inches(spacing)};
  return {id, id, what};
}

// The demo's walk, version B: outer side 120 + 126 pi/2 + 132 in, inner 120 + 66 pi/2 + 132 in.
TEST(Restraint, DemoWalk) {
  const plan::Element outer = run("outer", line({{0, 234}, {-120, 234, bulge(pi / 2)}, {-246, 108}}, -246, -24), 12);
  const plan::Element inner = run("inner", line({{0, 174}, {-120, 174, bulge(pi / 2)}, {-186, 108}}, -186, -24), 12);
  const plan::Job made = job(edging_book(), {outer, inner});
  takeoff::Share share = takeoff::edges::restraint(made, {}, ground(outer));
  EXPECT_NEAR(measure(share, "restraint_m"), (252 + 63 * pi) * in, 1e-5);
  EXPECT_EQ(measure(share, "spikes"), 39);  // 449.92 / 12 = 37.49 -> 38, and one
  share.add(takeoff::edges::restraint(made, {}, ground(inner)));
  // Demo answers: 20.4620595 m, both sides. They count 68 spikes by the floor form; both ends held need 39 + 31 = 70.
  double both = 0;
  double spikes = 0;
  for (const auto& [name, value] : share.measures.values) {
    both += name == "restraint_m" ? value : 0;
    spikes += name == "spikes" ? value : 0;
  }
  EXPECT_NEAR(both, 20.4620595, 20e-6);
  EXPECT_EQ(spikes, 70);
  EXPECT_NEAR(quantity(share, "restraint-plastic-8"), 8.3916, 1e-4);  // 67.13274 ft / 8 ft, as in the demo's order list
  EXPECT_NEAR(task(share, "restraint"), both, 1e-12);
}

TEST(Restraint, FaultsHaveWords) {
  Book book = edging_book();
  const auto told = [&](double spacing) {
    const plan::Element element = run("E", line({{0, 0}}, 240, 0), spacing);
    return takeoff::edges::restraint(job(book, {element}), {}, ground(element));
  };
  ASSERT_TRUE(said(told(48), "spike-spacing"));  // over 36 in
  EXPECT_EQ(said(told(48), "spike-spacing")->severity, problem::Severity::flag);
  ASSERT_TRUE(said(told(0), "spike-spacing"));
  EXPECT_EQ(said(told(0), "spike-spacing")->severity, problem::Severity::problem);
  book.all->items.erase("restraint-plastic-8");
  EXPECT_TRUE(said(told(12), "item-missing"));
}

TEST(Restraint, SpikedEdgingOnOpenStoneIsRemarked) {
  Book book = edging_book();
  book.add("agg-no57", "aggregate").details = {{"porosity", "0.4"}};
  catalogue::BuildUp open;
  open.id = "open-foot";
  open.layers = {{"base", "agg-no57", inches(6), {}, {}, {}, {}}};
  book.all->build_ups["open-foot"] = open;
  const plan::Element edge = run("E", line({{0, 0}}, 240, 0), 12);
  plan::PavedArea what;
  what.build_up = "open-foot";
  what.outline = shape({{0, 0}, {240, 0}, {240, 120}, {0, 120}});
  const plan::Element deck{"A", "deck", what};
  const plan::Job made = job(book, {deck, edge});
  auto area = std::make_shared<plan::Ground>(ground(deck));
  area->stretches.push_back({0, 0, 0, 240 * in, {}, plan::Meets::restraint, "E", 0, 0, 0});
  plan::Site site;
  site.grounds.push_back(area);
  EXPECT_TRUE(said(takeoff::edges::restraint(made, site, ground(edge)), "spikes-in-open-stone"));
  EXPECT_FALSE(said(takeoff::edges::restraint(made, {}, ground(edge)), "spikes-in-open-stone"));
}

}  // namespace
