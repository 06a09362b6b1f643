// Jobs in the book: what went in comes out by value, whatever was done to it; a second window is refused by name, and
// the catalogue's commands go on beside an open window.
#include "store/job_book.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QProcess>
#include <thread>

#include "files/random_job.h"
#include "store/catalogue_book.h"
#include "store/folder.h"
#include "store/jobs.h"
#include "store/migrations.h"

namespace store {
namespace {

using JobPtr = std::shared_ptr<const plan::Job>;

JobPtr pointer(plan::Job job) { return std::make_shared<const plan::Job>(std::move(job)); }

TEST(JobBook, DemoJobsComeBackByValue) {
  const std::string folder = own_folder();
  std::vector<std::int64_t> ids;
  {
    JobBook book = opened(folder);
    for (const std::string& name : demo_names()) ids.push_back(good(book.add(demo_job(name))));
  }
  JobBook again = opened(folder);
  for (std::size_t i = 0; i < ids.size(); ++i)
    EXPECT_TRUE(plan::same(good(again.read(ids[i])), demo_job(demo_names()[i]))) << demo_names()[i];
}

TEST(JobBook, AnyJobComesBackByValue) {
  JobBook book = opened(own_folder());
  EXPECT_TRUE(rc::check("added then read is the job", [&] {
    const plan::Job job = random_job::job();
    const std::int64_t id = good(book.add(job));
    RC_ASSERT(plan::same(good(book.read(id)), job));
    well(book.remove(id));
  }));
}

// Random jobs as values one after the other: nothing of the one before stays behind.
TEST(JobBook, AnyJobAfterAnyOtherComesBackByValue) {
  const std::string folder = own_folder();
  EXPECT_TRUE(rc::check("the newest value is what is read", [&] {
    plan::Job last = random_job::job();
    std::int64_t id = 0;
    {
      JobBook book = opened(folder);
      id = good(book.add(last));
      for (int left = 3; left > 0; --left) {
        last = random_job::job();
        book.write(id, pointer(last));
        if (random_job::below(2) == 0) RC_ASSERT(book.settle().has_value());
      }
    }
    JobBook again = opened(folder);
    RC_ASSERT(plan::same(good(again.read(id)), last));
  }));
}

TEST(JobBook, RandomEditsWithUndoComeBackAfterEachStart) {
  const std::string folder = own_folder();
  std::vector<JobPtr> history{pointer(demo_job("pool-terrace-b"))};
  const std::int64_t id = good(opened(folder).add(*history.front()));
  EXPECT_TRUE(rc::check("what was handed over last is in the book", [&] {
    {
      JobBook book = opened(folder);
      RC_ASSERT(plan::same(good(book.read(id)), *history.back()));
      for (int left = random_job::below(12); left > 0; --left) {
        const int n = random_job::below(1000);
        if (history.size() > 1 && n % 4 == 0)
          history.pop_back();
        else
          history.push_back(pointer(edited(*history.back(), n)));
        book.write(id, history.back());
        if (n % 5 == 0) std::this_thread::sleep_for(std::chrono::milliseconds(n % 130));
        RC_ASSERT(plan::same(good(book.read(id)), *history.back()));  // at once, written or not
      }
    }
    JobBook again = opened(folder);
    RC_ASSERT(plan::same(good(again.read(id)), *history.back()));
  }));
}

TEST(JobBook, ListsTheNewestFirstAndCountsItsEdits) {
  JobBook book = opened(own_folder());
  EXPECT_TRUE(good(book.jobs()).empty());
  plan::Job first, second;
  first.catalogue = second.catalogue = std::make_shared<const catalogue::Catalogue>();
  first.heading.name = "Walk";
  first.heading.customer = "O'Dell; DROP TABLE jobs";
  first.heading.place = "12 Elm Row";
  second.heading.name = "Court";
  const auto a = good(book.add(first)), b = good(book.add(second));
  auto rows = good(book.jobs());
  ASSERT_EQ(rows.size(), 2u);
  EXPECT_EQ(rows[0].id, b);
  EXPECT_EQ(rows[1].id, a);
  EXPECT_EQ(rows[1].name, "Walk");
  EXPECT_EQ(rows[1].customer, "O'Dell; DROP TABLE jobs");
  EXPECT_EQ(rows[1].place, "12 Elm Row");
  EXPECT_EQ(rows[1].edits, 1);  // putting it in
  first.heading.name = "Long walk";
  book.write(a, pointer(first));
  rows = good(book.jobs());  // what was handed over is there
  EXPECT_EQ(rows[0].id, a);
  EXPECT_EQ(rows[0].name, "Long walk");
  EXPECT_EQ(rows[0].edits, 2);
  book.write(a, pointer(first));  // the same value again is no edit
  EXPECT_EQ(good(book.jobs())[0].edits, 2);
}

TEST(JobBook, AJobTakenOutIsGoneAndItsNumberIsNotGivenAgain) {
  JobBook book = opened(own_folder());
  const auto a = good(book.add(demo_job("bakery-court")));
  const auto b = good(book.add(demo_job("bakery-court")));
  book.write(b, pointer(edited(demo_job("bakery-court"), 1)));
  ASSERT_TRUE(book.remove(b));
  EXPECT_EQ(book.read(b).error().code, "job-none");
  EXPECT_EQ(book.remove(b).error().code, "job-none");
  EXPECT_TRUE(book.settle()) << "nothing is still to be written for it";
  EXPECT_TRUE(plan::same(good(book.read(a)), demo_job("bakery-court")));  // the catalogue that both share is there
  EXPECT_GT(good(book.add(demo_job("bakery-court"))), b);
}

TEST(JobBook, ASecondWindowIsRefusedByName) {
  const std::string folder = own_folder();
  {
    JobBook book = opened(folder);
    const auto second = JobBook::open(folder);
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code, "book-held");
    const std::string process = "process " + std::to_string(QCoreApplication::applicationPid());
    EXPECT_NE(second.error().text.find(process), std::string::npos) << second.error().text;
  }
  EXPECT_TRUE(JobBook::open(folder));  // let go
}

TEST(JobBook, TheCatalogueIsReadAndChangedBesideAnOpenWindow) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const auto id = good(book.add(demo_job("bakery-court")));
  auto catalogue = CatalogueBook::open(folder);
  ASSERT_TRUE(catalogue) << problem::sentence(catalogue.error());
  auto item = *good(catalogue->read()).item("unit-4x8-60");
  item.price->amount = units::Money::of_coins(777);
  ASSERT_TRUE(catalogue->replace_items({item}));
  book.write(id, pointer(edited(demo_job("bakery-court"), 1)));
  ASSERT_TRUE(book.settle());
  EXPECT_EQ(*good(catalogue->read()).item("unit-4x8-60"), item);
  // What a job copied stays as it was.
  EXPECT_TRUE(plan::same(good(book.read(id)), edited(demo_job("bakery-court"), 1)));
}

TEST(JobBook, CommandsRunBesideAnOpenWindow) {
  JobBook book = opened(data_folder());
  const std::string job = std::string(HOUSE_ROOT) + "/demo-jobs/bakery-court.json";
  for (const QStringList& words : {QStringList{"catalogue", "list"}, QStringList{"takeoff", job.c_str()}}) {
    QProcess program;
    program.start(GROUNDCOURSE, words);
    ASSERT_TRUE(program.waitForFinished(60'000)) << words.front().toStdString();
    EXPECT_EQ(program.exitCode(), 0) << program.readAllStandardError().toStdString();
    EXPECT_GT(program.readAllStandardOutput().size(), 1000);
  }
}

// A book of the form before jobs, as people have it, is brought on and keeps its catalogue.
TEST(JobBook, ABookWithoutJobsIsBroughtOn) {
  const std::string folder = own_folder();
  catalogue::Item item;
  {
    auto catalogue = CatalogueBook::open(folder);
    ASSERT_TRUE(catalogue);
    item = *good(catalogue->read()).item("unit-4x8-60");
    item.price->amount = units::Money::of_coins(4321);
    ASSERT_TRUE(catalogue->replace_items({item}));
  }
  back_to_form(folder + "/book.sqlite", 2);
  JobBook book = opened(folder);
  const auto id = good(book.add(demo_job("bakery-court")));
  EXPECT_TRUE(plan::same(good(book.read(id)), demo_job("bakery-court")));
  EXPECT_EQ(*good(good(CatalogueBook::open(folder)).read()).item("unit-4x8-60"), item);
  EXPECT_EQ(good(Database::open(folder + "/book.sqlite")).form(), newest_form());
}

TEST(JobBook, ARowChangedByHandIsNamed) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const auto id = good(book.add(demo_job("pool-terrace-a")));
  const auto other = good(book.add(demo_job("bakery-court")));
  ASSERT_TRUE(good(Database::open(folder + "/book.sqlite"))
                  .run("UPDATE job_elements SET text = '{\"id\": \"A1\"' WHERE job = ? AND id = 'A1'", {id}));
  const auto refused = book.read(id);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "job-damaged");
  EXPECT_EQ(refused.error().place.element, "A1");
  EXPECT_TRUE(book.read(other));
}

TEST(JobBook, SettingsStay) {
  const std::string folder = own_folder();
  {
    JobBook book = opened(folder);
    EXPECT_EQ(good(book.setting("window/size")), std::nullopt);
    ASSERT_TRUE(book.set("window/size", "1280 800"));
    ASSERT_TRUE(book.set("window/size", "1440 900"));
    ASSERT_TRUE(book.set("empty", ""));
    ASSERT_TRUE(book.set("'; --", "ñ 😀\n"));
  }
  JobBook again = opened(folder);
  EXPECT_EQ(good(again.setting("window/size")), "1440 900");
  EXPECT_EQ(good(again.setting("empty")), "");
  EXPECT_EQ(good(again.setting("'; --")), "ñ 😀\n");
}

}  // namespace
}  // namespace store
