#include "files/level_book_text.h"

#include <gtest/gtest.h>

#include "files/sheet_text.h"
#include "results/demo_jobs.h"

namespace {

plan::Length ft(double feet) { return units::Length::nearest(units::Metres(feet * units::metres_per_foot)); }

plan::Job job(plan::LevelBook book, units::System units = units::System::us) {
  plan::Job made;
  made.catalogue = std::make_shared<const catalogue::Catalogue>();
  made.heading.units = units;
  return plan::with(made, {"LB", "deck", std::move(book)});
}

// Bench mark 100.50, sights as read; see the level book's own tests for its sums.
plan::LevelBook terrace() {
  plan::LevelBook book;
  book.start = ft(100.50);
  book.finish = ft(100.50);
  book.readings = {{"BM", ft(3.42), {}, {}, ""},
                   {"coping", {}, ft(3.92), {}, "top, at the step"},
                   {"TP", ft(5.81), {}, ft(6.08), ""},
                   {"BM", {}, {}, ft(3.14), ""}};
  return book;
}

}  // namespace

TEST(LevelBookText, standsAsAFieldBookWithItsSums) {
  EXPECT_EQ(files::level_books_text(job(terrace())),
            files::section("Level book LB, deck (ft)") +
                "  point                        back    between       fore instrument     height\n"
                "  BM                           3.42                           103.92     100.50\n"
                "  coping                                  3.92                           100.00             top, at "
                "the step\n"
                "  TP                           5.81                  6.08     103.65      97.84\n"
                "  BM                                                 3.14                100.51\n"
                "  Arithmetic check: backsights 9.23 less foresights 9.22 = +0.01; last height as read 100.51 less the "
                "first\n"
                "  100.50 = +0.01.\n"
                "  Misclosure: 100.51 less the known 100.50 = +0.01 ft over 2 set-ups.\n");
}

// 0.01 over two set-ups: 0.005 at the turning point is a hundredth as shown, or none; both books show what they hold.
TEST(LevelBookText, sharedOutHeightsShowTheirCorrection) {
  plan::LevelBook book = terrace();
  book.readings.back().fore = ft(3.10);  // 100.55: 0.05 high, 0.025 at each set-up
  book.share_out = true;
  const std::string text = files::level_books_text(job(book));
  EXPECT_NE(text.find("shared\n"), std::string::npos) << text;
  EXPECT_NE(text.find("3.10                100.50      -0.05\n"), std::string::npos) << text;
  EXPECT_NE(text.find("+0.05 ft over 2 set-ups, shared out evenly over them."), std::string::npos) << text;
  EXPECT_NE(text.find("last height as read 100.55"), std::string::npos) << text;
}

TEST(LevelBookText, metresInAMetricJob) {
  const std::string text = files::level_books_text(job(terrace(), units::System::metric));
  EXPECT_NE(text.find("30.632"), std::string::npos) << text;  // 100.50 ft x 0.3048
  EXPECT_NE(text.find("+0.003 m over"), std::string::npos) << text;
}

TEST(LevelBookText, aJobWithoutABookOrWithABadOneShowsNone) {
  EXPECT_EQ(files::level_books_text(job({})), "");  // no readings: a problem, said elsewhere
  plan::LevelBook open = terrace();
  open.finish.reset();
  EXPECT_NE(files::level_books_text(job(open)).find("not closed"), std::string::npos);
}

TEST(LevelBookText, theDemoJobsBookClosesAHundredthHigh) {
  const std::string text = files::level_books_text(demo::job("pool-terrace-a"));
  EXPECT_NE(text.find("backsights 9.23 less foresights 9.22 = +0.01"), std::string::npos) << text;
  EXPECT_NE(text.find("100.51 less the known 100.50 = +0.01 ft over 2 set-ups."), std::string::npos) << text;
}
