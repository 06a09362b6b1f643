// Versions and what was printed of them: what was saved comes out by value and to the coin, whatever became of the job
// and of its prices; a version that was tampered with is refused by name.
#include "store/version_tables.h"

#include "estimate/estimate.h"
#include "store/bodies.h"
#include "store/folder.h"
#include "store/jobs.h"
#include "store/random_kept.h"

namespace store {
namespace {

// What this program makes of the job, in the form that is kept.
estimate::Kept kept_of(const plan::Job& job) {
  const auto estimate = estimate::estimate(job, takeoff::takeoff(job, plan::site(job)));
  return estimate::kept(job, estimate, estimate::priced(job, estimate), "0.1");
}

plan::Job dearer(const plan::Job& job) {
  auto catalogue = *job.catalogue;
  for (auto& [id, item] : catalogue.items) {
    if (!item->price || item->price->by_others) continue;
    auto changed = *item;
    changed.price->amount = changed.price->amount + changed.price->amount + units::Money::of_coins(7);
    item = std::make_shared<const catalogue::Item>(std::move(changed));
  }
  plan::Job made = job;
  made.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(catalogue));
  return made;
}

std::int64_t count(const std::string& folder, const char* statement) {
  auto database = good(Database::open(folder + "/book.sqlite"));
  return std::get<std::int64_t>(good(database.rows(statement)).at(0).at(0));
}

TEST(Version, AnyJobAndEstimateComeBackByValue) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const std::int64_t job = good(book.add(demo_job("bakery-court")));
  EXPECT_TRUE(rc::check("saved then read is the same", [&] {
    const plan::Job value = random_job::job();
    const estimate::Kept kept = random_job::kept();
    std::string name, note;
    random_job::fill(name);
    random_job::fill(note);
    const VersionRow row = good(book.save_version(job, value, kept, name, note));
    const Version back = good(book.version(row.id));
    RC_ASSERT(back.row == row);
    RC_ASSERT(back.row.name == name);
    RC_ASSERT(back.row.note == note);
    RC_ASSERT(plan::same(back.job, value));
    RC_ASSERT(back.kept == kept);
    RC_ASSERT(good(book.versions(job)).front() == row);
  }));
}

TEST(Version, NumbersAreOfTheJobAndCountFromOne) {
  JobBook book = opened(own_folder());
  const plan::Job value = demo_job("bakery-court");
  const auto a = good(book.add(value)), b = good(book.add(value));
  const estimate::Kept kept = kept_of(value);
  EXPECT_EQ(good(book.save_version(a, value, kept, "first", "")).number, 1);
  EXPECT_EQ(good(book.save_version(b, value, kept, "other", "")).number, 1);
  EXPECT_EQ(good(book.save_version(a, value, kept, "second", "")).number, 2);
  const auto versions = good(book.versions(a));
  ASSERT_EQ(versions.size(), 2u);
  EXPECT_EQ(versions[0].name, "second");
  EXPECT_EQ(versions[1].name, "first");
  const auto none = book.save_version(b + 1, value, kept, "", "");
  ASSERT_FALSE(none.has_value());
  EXPECT_EQ(none.error().code, "job-none");
}

TEST(Version, TheFirstKeepsItsTotalToTheCoinAfterPricesChangedAndTheProgramRanAgain) {
  const std::string folder = own_folder();
  const plan::Job first = demo_job("pool-terrace-a");
  const estimate::Kept was = kept_of(first);
  ASSERT_GT(was.total.coins(), 0);
  std::int64_t job = 0, version = 0;
  {
    JobBook book = opened(folder);
    job = good(book.add(first));
    version = good(book.save_version(job, first, was, "as quoted", "to the owners")).id;
    const plan::Job second = dearer(first);
    book.write(job, std::make_shared<const plan::Job>(second));
    good(book.save_version(job, second, kept_of(second), "new prices", ""));
  }
  JobBook again = opened(folder);
  const Version old = good(again.version(version));
  EXPECT_EQ(old.row.total, was.total);
  EXPECT_EQ(old.kept, was);
  // Its own job with its own prices gives that total once more; today's prices give another one.
  EXPECT_EQ(kept_of(old.job).total, was.total);
  EXPECT_GT(kept_of(good(again.read(job))).total, was.total);
  EXPECT_EQ(good(again.jobs()).at(0).total, good(again.versions(job)).at(0).total);
  EXPECT_EQ(good(again.jobs()).at(0).versions, 2);
}

TEST(Version, AJobThatHasOneStaysInTheBook) {
  JobBook book = opened(own_folder());
  const plan::Job value = demo_job("bakery-court");
  const auto job = good(book.add(value));
  const auto version = good(book.save_version(job, value, kept_of(value), "", ""));
  const auto removed = book.remove(job);
  ASSERT_FALSE(removed.has_value());
  EXPECT_EQ(removed.error().code, "job-has-versions");
  EXPECT_TRUE(plan::same(good(book.read(job)), value));
  well(book.set_archived(job, true));
  EXPECT_TRUE(plan::same(good(book.version(version.id)).job, value));
  EXPECT_TRUE(good(book.jobs(Wanted{})).empty());
}

TEST(Version, TextsThatAreTheSameStandInTheBookOnce) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const plan::Job value = demo_job("pool-terrace-b");
  const estimate::Kept kept = kept_of(value);
  const auto job = good(book.add(value));
  good(book.save_version(job, value, kept, "one", ""));
  const auto bodies = count(folder, "SELECT count(*) FROM bodies");
  for (int i = 0; i < 5; ++i) good(book.save_version(job, value, kept, "again", ""));
  EXPECT_EQ(count(folder, "SELECT count(*) FROM bodies"), bodies);
  // A new price is a new catalogue and leaves the job's text alone; the old catalogue is still the versions'.
  const plan::Job after = dearer(value);
  good(book.save_version(job, after, kept, "dearer", ""));
  EXPECT_EQ(count(folder, "SELECT count(*) FROM bodies"), bodies + 1);
  book.write(job, std::make_shared<const plan::Job>(after));
  well(book.settle());
  EXPECT_TRUE(plan::same(good(book.version(good(book.versions(job)).back().id)).job, value));
}

TEST(Version, NamesOfAnyKindGoThroughUnharmed) {
  const std::string folder = own_folder();
  const std::string names[] = {"'; DROP TABLE versions; --",
                               "%s%n%1",
                               "<b>bold</b>",
                               "\xE2\x80\xAE right to left \xE2\x80\xAC",
                               std::string("a\0b", 3),
                               std::string(65'536, 'x'),
                               "zero\xE2\x80\x8Bwidth",
                               "{}\\\"\n\t",
                               "=1+1",
                               ""};
  JobBook book = opened(folder);
  for (const std::string& name : names) {
    plan::Job value = demo_job("bakery-court");
    value.heading.name = value.heading.customer = value.heading.place = value.heading.number = name;
    const auto job = good(book.add(value));
    const auto row = good(book.save_version(job, value, kept_of(value), name, name));
    const auto sheet = good(book.issue(row.id, name, "en", "%PDF-1.4 of " + name));
    const Version back = good(book.version(row.id));
    EXPECT_EQ(back.row.name, name);
    EXPECT_EQ(back.row.note, name);
    EXPECT_TRUE(plan::same(back.job, value));
    EXPECT_EQ(good(book.document(sheet.id)).row.name, name);
    const JobRow listed = good(book.jobs()).front();
    EXPECT_EQ(listed.name, name);
    EXPECT_EQ(listed.number, name);
    EXPECT_EQ(listed.customer, name);
    EXPECT_EQ(listed.place, name);
  }
  const auto job = good(book.jobs()).front().id;
  const auto refused = book.save_version(job, demo_job("bakery-court"), {}, "not UTF-8: \xFF", "");
  ASSERT_FALSE(refused.has_value());
  EXPECT_EQ(refused.error().code, "version-not-kept");
}

TEST(Version, WhatCouldNotBeReadBackIsNotSaved) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const plan::Job value = demo_job("bakery-court");
  const auto job = good(book.add(value));
  estimate::Kept kept = kept_of(value);
  kept.total = units::Money::of_coins(2'000'000'000'000'000);  // past every sum
  const auto refused = book.save_version(job, value, kept, "", "");
  ASSERT_FALSE(refused.has_value());
  EXPECT_EQ(refused.error().code, "version-not-kept");
  EXPECT_TRUE(good(book.versions(job)).empty());
  kept.total = units::Money::of_coins(900'000'000'000'000);  // a sum may be larger than any price
  EXPECT_EQ(good(book.version(good(book.save_version(job, value, kept, "", "")).id)).row.total, kept.total);
}

// Every part of a version that another hand changed is found: words, time, numbers and texts.
TEST(Version, WhatAnotherHandChangedIsRefusedByName) {
  const char* const changes[] = {
      "UPDATE versions SET name = 'better'",
      "UPDATE versions SET note = 'x'",
      "UPDATE versions SET made = '2020-01-01T00:00:00Z'",
      "UPDATE versions SET program = '9'",
      "UPDATE versions SET total = total - 1",
      "UPDATE versions SET price = price + 1",
      "UPDATE versions SET currency = 'EUR'",
      "UPDATE versions SET decimals = 0",
      "UPDATE versions SET final = 1 - final",
      "UPDATE versions SET number = 2",
      "UPDATE versions SET catalogue_text = job_text",
      "UPDATE bodies SET bytes = CAST(replace(CAST(bytes AS TEXT), '\"total\": ', '\"total\": 1') AS BLOB)"
      " WHERE sha256 = (SELECT kept_text FROM versions)",
      "UPDATE bodies SET bytes = x'' WHERE sha256 = (SELECT job_text FROM versions)",
      "DELETE FROM bodies WHERE sha256 = (SELECT job_text FROM versions)",
  };
  int number = 0;
  for (const char* change : changes) {
    const std::string folder = own_folder() + "/" + std::to_string(++number);
    const plan::Job value = demo_job("bakery-court");
    std::int64_t version = 0;
    {
      JobBook book = opened(folder);
      const auto job = good(book.add(value));
      version = good(book.save_version(job, value, kept_of(value), "as quoted", "")).id;
      ASSERT_TRUE(book.version(version).has_value());
    }
    {
      auto database = good(Database::open(folder + "/book.sqlite"));
      well(database.run("PRAGMA foreign_keys = OFF"));
      well(database.run(change));
      ASSERT_EQ(good(database.rows("SELECT changes()")).at(0).at(0), Bound(std::int64_t{1})) << change;
    }
    JobBook book = opened(folder);
    const auto refused = book.version(version);
    ASSERT_FALSE(refused.has_value()) << change;
    EXPECT_EQ(refused.error().code, "version-damaged") << change;
    EXPECT_TRUE(refused.error().text.contains("version ")) << refused.error().text;
  }
}

TEST(Document, AnIssuedVersionShowsItsOwnBytes) {
  const std::string folder = own_folder();
  const plan::Job value = demo_job("bakery-court");
  std::int64_t version = 0, quote = 0;
  std::string english = "%PDF-1.4\n", spanish;
  for (int i = 0; i < 300; ++i) english += static_cast<char>(i % 256);  // bytes, not text
  spanish = english + "es";
  {
    JobBook book = opened(folder);
    version = good(book.save_version(good(book.add(value)), value, kept_of(value), "", "")).id;
    EXPECT_TRUE(good(book.documents(version)).empty());
    quote = good(book.issue(version, "quote", "en", english)).id;
    good(book.issue(version, "quote", "es", spanish));
  }
  JobBook book = opened(folder);
  const auto sheets = good(book.documents(version));
  ASSERT_EQ(sheets.size(), 2u);
  EXPECT_EQ(sheets[0].language, "en");
  EXPECT_EQ(sheets[1].language, "es");
  EXPECT_EQ(sheets[0].size, static_cast<std::int64_t>(english.size()));
  EXPECT_EQ(good(book.document(quote)).bytes, english);
  EXPECT_EQ(good(book.document(sheets[1].id)).bytes, spanish);
  EXPECT_EQ(good(book.version(version)).row.documents, 2);
  EXPECT_EQ(book.issue(version + 1, "quote", "en", english).error().code, "version-none");
  EXPECT_EQ(book.issue(version, "quote", "en", "").error().code, "document-empty");
  EXPECT_EQ(book.document(999).error().code, "document-none");
  {
    auto other = good(Database::open(folder + "/book.sqlite"));
    well(other.run("UPDATE bodies SET bytes = x'25' WHERE sha256 = ?", {sheets[0].sha256}));
  }
  EXPECT_EQ(book.document(quote).error().code, "document-damaged");
}

}  // namespace
}  // namespace store
