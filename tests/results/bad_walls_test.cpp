// Six walls that can't be built, each in one way, beside a job that can: each says so under its own name, with what to
// do about it, and nothing else of the job changes.
#include <algorithm>
#include <cstdio>

#include "results/demo_jobs.h"

namespace {

using geometry::Point;
using units::Length;

Point at(std::int64_t x_in, std::int64_t y_in) { return {Length::inches(x_in), Length::inches(y_in)}; }

// The terrace's retaining wall far from everything, on a line of its own: its cap 3 ft above level ground.
plan::Element far_wall(const plan::Job& job, const std::string& id) {
  plan::Element made = *job.find("RW");
  made.id = id;
  made.name = "bad wall " + id;
  auto& wall = std::get<plan::Wall>(made.kind);
  wall.layers.clear();
  wall.loads.reset();
  wall.drained_by.clear();
  wall.base.clear();
  wall.top.clear();
  wall.ground = {{Length{}, Length::inches(1200)}};
  wall.height = Length::inches(36);
  wall.finish_end = plan::Wall::End::free;
  return made;
}

void draw(plan::Element& element, std::int64_t far_out,
          const std::vector<std::pair<std::int64_t, std::int64_t>>& points) {
  plan::DrawnLine line;
  for (const auto& [x, y] : points) line.edges.push_back({at(10000 + x, far_out + y), 0, {}});
  line.end = line.edges.back().from;
  line.edges.pop_back();
  std::get<plan::Wall>(element.kind).line = line;
}

constexpr const char* ids[] = {"bad-height", "bad-top", "bad-cross", "bad-radius", "bad-setback", "bad-layer"};

// Each with the one thing that is wrong with it.
std::vector<plan::Element> bad_walls(const plan::Job& job) {
  std::vector<plan::Element> all;
  for (std::size_t i = 0; i < std::size(ids); ++i) {
    all.push_back(far_wall(job, ids[i]));
    draw(all.back(), 2000 * static_cast<std::int64_t>(i), {{0, 0}, {240, 0}});
  }
  const auto wall = [&](std::size_t i) -> plan::Wall& { return std::get<plan::Wall>(all[i].kind); };
  wall(0).height = Length{};
  wall(1).height.reset();
  wall(1).ground = {{Length{}, Length::inches(1160)}};
  wall(1).top = {{Length{}, Length::inches(1180)}};
  wall(1).base = {{Length{}, Length::inches(1192)}};
  draw(all[2], 4000, {{0, 0}, {240, 0}, {240, 120}, {120, -120}});
  // A quarter of 30 in about the ground behind, the fill on its left: a straight block of 18 in can't turn so.
  draw(all[3], 6000, {{0, 0}, {30, 30}});
  std::get<plan::Wall>(all[3].kind).line.edges[0].bulge = 0.41421356237309503;
  wall(3).behind = geometry::Side::left;
  wall(4).block = "wb-leaning";
  wall(4).corner_block.clear();
  plan::Reinforcement layer;
  layer.on_course = 2;
  layer.item = "grid-6x150";
  layer.length = Length::inches(151 * 12);  // the roll is 150 ft
  wall(5).layers = {layer};
  return all;
}

plan::Job with_bad_walls() {
  plan::Job job = demo::job("pool-terrace-a");
  auto book = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  auto leaning = std::make_shared<catalogue::Item>(*book->item("wb-8x18"));
  leaning->id = "wb-leaning";
  leaning->details["setback_mm"] = "330.2";  // 13 in of a depth of 12
  book->items["wb-leaning"] = leaning;
  job.catalogue = book;
  for (plan::Element& bad : bad_walls(job)) job = plan::with(job, std::move(bad));
  return job;
}

bool is_bad(const std::string& id) { return std::ranges::find(ids, id) != std::end(ids); }

bool of_bad(const std::vector<plan::ElementId>& of) { return std::ranges::any_of(of, is_bad); }

const results::Results& good() {
  static const results::Results made = demo::compute(demo::job("pool-terrace-a"));
  return made;
}
const results::Results& both() {
  static const results::Results made = demo::compute(with_bad_walls());
  return made;
}

const problem::Problem* said(const std::string& id, const std::string& code) {
  static const std::vector<problem::Problem> all = both().problems();
  for (const problem::Problem& one : all)
    if (one.place.element == id && one.code == code) return &one;
  return nullptr;
}

double pieces(const std::string& id, const std::string& item) {
  double sum = 0;
  for (const takeoff::Line& line : both().takeoff.lines)
    if (line.item == item && line.of == std::vector<plan::ElementId>{id}) sum += line.working.amount().value;
  return sum;
}

// Two decimals, as a person would write a factor.
std::string two(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.2f", value);
  return text;
}

struct Bad {
  const char* id;
  const char* code;
  const char* says;  // what the person has to read
};

class BadWall : public testing::TestWithParam<Bad> {};

TEST_P(BadWall, saysWhatIsWrongAndWhatToDo) {
  const problem::Problem* found = said(GetParam().id, GetParam().code);
  ASSERT_NE(found, nullptr) << GetParam().id;
  EXPECT_EQ(found->severity, problem::Severity::problem);
  EXPECT_NE(found->text.find(GetParam().says), std::string::npos) << found->text;
  EXPECT_FALSE(found->mend.empty());
}

INSTANTIATE_TEST_SUITE_P(Six, BadWall,
                         testing::Values(Bad{"bad-height", "wall-height", "above the ground"},
                                         Bad{"bad-top", "wall-height", "under its base"},
                                         Bad{"bad-cross", "wall-crosses-itself", "crosses"},
                                         Bad{"bad-radius", "wall-curve", "radius"},
                                         Bad{"bad-setback", "wall-block", "setback"},
                                         Bad{"bad-layer", "layer-roll", "roll"}),
                         [](const auto& bad) {
                           std::string name = bad.param.id;
                           std::erase(name, '-');
                           return name;
                         });

}  // namespace

TEST(BadWalls, nothingElseOfTheJobChanges) {
  // Spoil is hauled for the whole site together, so what a bad wall digs stands in its lines too.
  const auto others_of = [](const results::Results& results) {
    std::vector<takeoff::Line> others;
    for (const takeoff::Line& line : results.takeoff.lines)
      if (!of_bad(line.of) && line.stage != takeoff::Stage::dig) others.push_back(line);
    return others;
  };
  const std::vector<takeoff::Line> others = others_of(both()), wanted_lines = others_of(good());
  ASSERT_EQ(others.size(), wanted_lines.size());
  for (std::size_t i = 0; i < others.size(); ++i) {
    const takeoff::Line &one = others[i], &wanted = wanted_lines[i];
    EXPECT_EQ(one.item, wanted.item);
    EXPECT_EQ(one.of, wanted.of);
    EXPECT_TRUE(one.stage == wanted.stage && one.text == wanted.text && one.working == wanted.working) << wanted.text;
  }
  const auto tasks_of = [](const results::Results& results) {
    std::vector<takeoff::Task> tasks;
    for (const takeoff::Task& task : results.takeoff.tasks)
      if (!of_bad(task.of) && task.rate != "load-haul") tasks.push_back(task);
    return tasks;
  };
  const std::vector<takeoff::Task> tasks = tasks_of(both()), wanted_tasks = tasks_of(good());
  ASSERT_EQ(tasks.size(), wanted_tasks.size());
  for (std::size_t i = 0; i < tasks.size(); ++i)
    EXPECT_TRUE(tasks[i].rate == wanted_tasks[i].rate && tasks[i].working == wanted_tasks[i].working) << tasks[i].text;
}

TEST(BadWalls, noTotalIsFinalOnThem) {
  EXPECT_FALSE(both().final());
  for (const char* id : {"bad-height", "bad-top", "bad-cross", "bad-setback"})
    EXPECT_EQ(pieces(id, "wb-8x18") + pieces(id, "wb-leaning"), 0) << id;  // no number that nobody can build from
}

// The layer is refused, the wall it belongs to is not: 36 in to the top of the cap less 3 in of cap show 33 in, and 8
// in at least are buried: ceil(41 / 8) = 6 courses of 240 / 18 = 13 1/3 units, 14 bought a course at most.
TEST(BadWalls, aWallWithABadLayerIsStillLaid) {
  EXPECT_EQ(demo::measure(both(), "bad-layer", "courses"), 6);
  EXPECT_GE(pieces("bad-layer", "wb-8x18"), 80);
  EXPECT_LE(pieces("bad-layer", "wb-8x18"), 84);
  EXPECT_EQ(pieces("bad-layer", "grid-6x150"), 0);
}

TEST(FailedChecks, sayWhichAndByHowMuch) {
  int failed = 0;
  for (const takeoff::Check& check : good().takeoff.checks) {
    const double value = check.working.amount().value;
    if (check.at_most ? value <= check.limit : value >= check.limit) continue;
    ++failed;
    const double gap = value > check.limit ? value - check.limit : check.limit - value;
    const bool told = std::ranges::any_of(good().problems(), [&](const problem::Problem& one) {
      const auto holds = [&one](const std::string& part) { return one.text.find(part) != std::string::npos; };
      return one.code == "check-failed" && one.place.element == check.of && holds("preliminary: " + check.name) &&
             holds(two(value)) && holds(two(check.limit)) &&
             holds((check.at_most ? "over by " : "short by ") + two(gap)) && holds(check.where) &&
             one.mend.find("licensed engineer") != std::string::npos;
    });
    EXPECT_TRUE(told) << check.of << " " << check.name;
  }
  EXPECT_GE(failed, 1);
}
