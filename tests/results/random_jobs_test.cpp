// Random jobs through the whole chain.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>

#include "results/demo_jobs.h"

namespace {

using units::Length;

geometry::Point shifted(geometry::Point p, Length dx, Length dy) { return {p.x + dx, p.y + dy}; }

void shift(plan::DrawnShape& shape, Length dx, Length dy) {
  for (plan::DrawnRing& ring : shape) {
    for (geometry::Edge& edge : ring.edges) edge.from = shifted(edge.from, dx, dy);
    for (geometry::Point& point : ring.through) point = shifted(point, dx, dy);
  }
}
void shift(plan::DrawnLine& line, Length dx, Length dy) {
  for (geometry::Edge& edge : line.edges) edge.from = shifted(edge.from, dx, dy);
  for (geometry::Point& point : line.through) point = shifted(point, dx, dy);
  line.end = shifted(line.end, dx, dy);
}

struct Shift {
  Length dx, dy;
  void operator()(plan::PavedArea& area) const {
    shift(area.outline, dx, dy);
    if (area.laying) area.laying->start = shifted(area.laying->start, dx, dy);
    if (!area.finish) return;
    area.finish->at = shifted(area.finish->at, dx, dy);
    if (area.finish->line) shift(*area.finish->line, dx, dy);
  }
  void operator()(plan::Pool& pool) const { shift(pool.outline, dx, dy); }
  void operator()(plan::Building& building) const { shift(building.outline, dx, dy); }
  void operator()(plan::KeepOut& out) const { shift(out.outline, dx, dy); }
  void operator()(plan::Steps& steps) const { shift(steps.outline, dx, dy); }
  void operator()(plan::EdgeRun& run) const { shift(run.line, dx, dy); }
  void operator()(plan::Wall& wall) const { shift(wall.line, dx, dy); }
  void operator()(plan::DrainRun& run) const { shift(run.line, dx, dy); }
  void operator()(plan::Level& level) const { level.at = shifted(level.at, dx, dy); }
  void operator()(plan::BaseLine& base) const {
    base.from = shifted(base.from, dx, dy);
    base.to = shifted(base.to, dx, dy);
  }
  void operator()(plan::Removal& removal) const {
    shift(removal.outline, dx, dy);
    if (removal.line) shift(*removal.line, dx, dy);
  }
  void operator()(plan::SiteMark& mark) const {
    for (geometry::Point& point : mark.points) point = shifted(point, dx, dy);
    shift(mark.outline, dx, dy);
    if (mark.line) shift(*mark.line, dx, dy);
  }
  void operator()(plan::Feature& feature) const { feature.at = shifted(feature.at, dx, dy); }
  template <class Other>
  void operator()(Other&) const {}
};

plan::Job moved(const plan::Job& job, Length dx, Length dy) {
  plan::Job all = job;
  for (const plan::ElementPtr& element : job.elements) {
    plan::Element copy = *element;
    std::visit(Shift{dx, dy}, copy.kind);
    all = plan::with(all, std::move(copy));
  }
  return all;
}

// The whole takeoff as text of numbers, to the bit.
std::string numbers(const results::Results& results) {
  std::string all;
  for (const takeoff::Measures& measures : results.takeoff.measures)
    for (const auto& [name, value] : measures.values)
      all += measures.element + " " + name + " " + units::write_number(value) + "\n";
  for (const estimate::OrderLine& line : results.estimate.lines)
    all += line.item + " " + units::write_number(line.quantity) + " " + units::write_number(line.order_quantity) + " " +
           (line.amount ? std::to_string(line.amount->coins()) : "-") + "\n";
  return all;
}

}  // namespace

TEST(RandomJobs, movingAJobByWholeStepsIsEqualToTheBit) {
  for (const char* name : {"pool-terrace-a", "pool-terrace-b", "bakery-court"}) {
    const plan::Job job = demo::job(name);
    const std::string before = numbers(demo::compute(job));
    for (const auto& [dx, dy] : {std::pair{1LL, 0LL}, {-7LL, 13LL}, {123456789LL, -98765432LL}})
      EXPECT_EQ(numbers(demo::compute(moved(job, Length::of_steps(dx), Length::of_steps(dy)))), before)
          << name << " by " << dx << ", " << dy;
  }
}

TEST(RandomJobs, theSameJobGivesTheSameTakeoffTwice) {
  const plan::Job job = demo::job("pool-terrace-b");
  EXPECT_EQ(files::takeoff_json(demo::compute(job)), files::takeoff_json(demo::compute(job)));
}

TEST(RandomJobs, writingAndReadingAJobChangesNoNumber) {
  const plan::Job job = demo::job("pool-terrace-a");
  const auto again = files::read_job(files::write_job(job), "again.json");
  ASSERT_TRUE(again.has_value());
  EXPECT_TRUE(plan::same(job, *again));
  EXPECT_EQ(numbers(demo::compute(job)), numbers(demo::compute(*again)));
}

// A pool anywhere over a deck, whatever its size: units and joints add up to the field within perimeter x 0.5 mm.
TEST(RandomJobs, unitsAndJointsAddUpToTheField) {
  const plan::Job terrace = demo::job("pool-terrace-b");
  EXPECT_TRUE(rc::check("whole, cut and joint areas are the field", [&terrace] {
    const double x = *rc::gen::inRange(0, 500), y = *rc::gen::inRange(0, 320), r = *rc::gen::inRange(20, 150);
    plan::Job job = plan::without(terrace, "P");
    plan::KeepOut pond;
    pond.what = "planter";
    const auto at = [](double inches) { return Length::inch_64ths(static_cast<long long>(inches * 64)); };
    pond.outline = {{{{{at(x - r), at(y)}, 1, {}}, {{at(x + r), at(y)}, 1, {}}}, {}}};
    job = plan::with(job, {"pond", "", pond});
    const results::Results results = demo::compute(job);
    const auto found = results.takeoff.layouts.find("A1");
    if (found == results.takeoff.layouts.end()) return;  // the pond has all of A1
    const takeoff::paving::Layout& layout = *found->second;
    const double m2 = 1 / (Length::steps_per_metre * Length::steps_per_metre);
    // Joint share of an endless field holds within what the edges can hide: one unit's joint for each metre of edge.
    const double units_m2 = layout.unit_area * m2, field_m2 = layout.region_area * m2;
    RC_ASSERT(units_m2 < field_m2 + 1e-9);
    RC_ASSERT(std::abs((1 - units_m2 / field_m2) - layout.lattice.joint_share) * field_m2 <
              0.003175 * results.site.find("A1")->net.perimeter().si() + 1e-6);
  }));
}
