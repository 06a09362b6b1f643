// The newest job's results come, in order, and each that has begun is told.
#include "results/live.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <condition_variable>
#include <mutex>

#include "files/files.h"

namespace {

using JobPtr = std::shared_ptr<const plan::Job>;

plan::Job demo() {
  const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/bakery-court.json";
  return files::read_job(files::read_file(path).value(), path).value();
}

JobPtr named(const plan::Job& job, const std::string& name) {
  auto other = std::make_shared<plan::Job>(job);
  other->heading.name = name;
  return other;
}

struct Told {
  std::mutex guard;
  std::condition_variable came;
  std::vector<std::shared_ptr<const results::Results>> all;

  void take(std::shared_ptr<const results::Results> made) {
    {
      const std::lock_guard held(guard);
      all.push_back(std::move(made));
    }
    came.notify_all();
  }
  bool wait_for(const JobPtr& job) {
    std::unique_lock held(guard);
    return came.wait_for(held, std::chrono::seconds(60), [&] { return !all.empty() && all.back()->job == job; });
  }
};

TEST(Live, theNewestJobIsAlwaysTold) {
  Told told;
  const plan::Job job = demo();
  results::Live live([&told](auto made) { told.take(std::move(made)); });
  std::vector<JobPtr> given;
  for (int i = 0; i < 200; ++i) {
    given.push_back(named(job, "edit " + std::to_string(i)));
    live.take(given.back());
  }
  ASSERT_TRUE(told.wait_for(given.back()));
  // In the order in which they were given, none of them twice, and not all 200: the slot keeps the newest.
  std::size_t next = 0;
  for (const auto& made : told.all) {
    const auto at = std::ranges::find(given, made->job) - given.begin();
    EXPECT_GE(static_cast<std::size_t>(at), next);
    next = static_cast<std::size_t>(at) + 1;
  }
  EXPECT_LT(told.all.size(), given.size());
  // What comes is what the plain function gives.
  EXPECT_EQ(files::takeoff_json(*told.all.back()), files::takeoff_json(results::compute(given.back())));
}

TEST(Live, afterStopNothingIsToldUntilAnotherJobIsGiven) {
  Told told;
  const plan::Job job = demo();
  {
    results::Live live([&told](auto made) { told.take(std::move(made)); });
    live.take(named(job, "dropped"));
    live.stop();
    EXPECT_FALSE(live.busy());
    const JobPtr next = named(job, "kept");
    live.take(next);
    ASSERT_TRUE(told.wait_for(next));
  }
  EXPECT_EQ(told.all.size(), 1U);
}

TEST(Live, endingItWhileItWorksEndsInPeace) {
  Told told;
  {
    results::Live live([&told](auto made) { told.take(std::move(made)); });
    live.take(named(demo(), "begun"));
  }
  EXPECT_LE(told.all.size(), 1U);
}

}  // namespace
