// Sums of pages: no bit of the book turns unsaid, wherever it stands.
#include "store/page_sums.h"

#include <sqlite3.h>

#include <fstream>
#include <random>
#include <sstream>

#include "files/files.h"
#include "store/catalogue_book.h"
#include "store/copy.h"
#include "store/folder.h"
#include "store/jobs.h"

namespace store {
namespace {

namespace fs = std::filesystem;

std::string bytes_of(const std::string& path) {
  std::stringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

void write_bytes(const std::string& path, const std::string& bytes) {
  std::ofstream(path, std::ios::binary).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

sqlite3* raw(Database& database) { return static_cast<sqlite3*>(database.handle()); }

// A book with a job, closed, so that all of it lies in its one file.
std::string made(const std::string& folder) {
  JobBook book = opened(folder);
  good(book.add(demo_job("bakery-court")));
  return folder + "/book.sqlite";
}

// All jobs and the catalogue as text, or the first fault.
problem::Result<std::string> all_in(const std::string& folder) {
  auto book = JobBook::open(folder);
  if (!book) return std::unexpected(book.error());
  const auto rows = book->jobs();
  if (!rows) return std::unexpected(rows.error());
  std::string all;
  for (const JobRow& row : *rows) {
    const auto job = book->read(row.id);
    if (!job) return std::unexpected(job.error());
    all += row.name + files::write_job(*job);
  }
  auto catalogue = CatalogueBook::open(folder);
  if (!catalogue) return std::unexpected(catalogue.error());
  const auto items = catalogue->read();
  if (!items) return std::unexpected(items.error());
  plan::Job bare;
  bare.catalogue = std::make_shared<const catalogue::Catalogue>(*items);
  return all + files::write_job(bare);
}

TEST(PageSums, EveryTurnedBitAndEveryOtherPlaceGivesAnotherSum) {
  std::mt19937 random(4096);
  std::vector<unsigned char> page(4096);
  for (unsigned char& byte : page) byte = static_cast<unsigned char>(random());
  const std::uint64_t sum = page_sum(page.data(), 4096, 7);
  for (std::size_t bit = 0; bit < (4096 - sum_bytes) * 8; ++bit) {
    page[bit / 8] = static_cast<unsigned char>(page[bit / 8] ^ (1 << bit % 8));
    ASSERT_NE(page_sum(page.data(), 4096, 7), sum) << bit;
    page[bit / 8] = static_cast<unsigned char>(page[bit / 8] ^ (1 << bit % 8));
  }
  EXPECT_EQ(page_sum(page.data(), 4096, 7), sum);
  EXPECT_NE(page_sum(page.data(), 4096, 8), sum);
}

TEST(PageSums, AreThoseOfTheRuleDoneByHand) {
  // One pair of words, 1 and 2, on page 3: a = 3 + 1 + 0 = 4, b = 0 + 2 + 4 = 6; the last eight bytes don't count.
  const unsigned char page[] = {1, 0, 0, 0, 2, 0, 0, 0, 9, 9, 9, 9, 9, 9, 9, 9};
  EXPECT_EQ(page_sum(page, 16, 3), 4U | std::uint64_t{6} << 32);
}

TEST(PageSums, ALetterOfAJobOrOfTheCatalogueThatChangedIsSaidWhereItIsRead) {
  const std::string folder = own_folder();
  const std::string path = made(folder);
  const std::string whole = bytes_of(path), all = good(all_in(folder));
  for (const char* word : {"Court behind the bakery", "conc-ready"}) {
    int said = 0;
    for (std::size_t at = whole.find(word); at != std::string::npos; at = whole.find(word, at + 1)) {
      std::string changed = whole;
      changed[at] = static_cast<char>(changed[at] ^ 2);
      write_bytes(path, changed);
      const auto now = all_in(folder);
      if (now) {
        EXPECT_EQ(*now, all) << word << " at " << at << ", in an index that nobody asked";
        continue;
      }
      ++said;
      EXPECT_NE(now.error().text.find("damaged"), std::string::npos) << problem::sentence(now.error());
    }
    EXPECT_GT(said, 0) << word;
  }
  write_bytes(path, whole);
  EXPECT_EQ(good(all_in(folder)), all);
}

TEST(PageSums, APageInAnotherOnesPlaceIsSaid) {
  const std::string folder = own_folder();
  const std::string path = made(folder);
  std::string bytes = bytes_of(path);
  ASSERT_GT(bytes.size(), 20U * 4096);
  ASSERT_EQ(bytes.size() % 4096, 0U);
  const std::string tenth = bytes.substr(9 * 4096, 4096);
  bytes.replace(9 * 4096, 4096, bytes.substr(10 * 4096, 4096));
  bytes.replace(10 * 4096, 4096, tenth);
  write_bytes(path, bytes);
  auto database = Database::open(path);
  EXPECT_FALSE(database && check_whole(*database));
}

// A file that SQLite alone made, with the number that tells a job book.
void make_without_sums(const std::string& path) {
  sqlite3* plain = nullptr;
  ASSERT_EQ(sqlite3_open(path.c_str(), &plain), SQLITE_OK);
  EXPECT_EQ(sqlite3_exec(plain, "PRAGMA application_id = 1198670703; CREATE TABLE words (word TEXT)", nullptr, nullptr,
                         nullptr),
            SQLITE_OK);
  sqlite3_close(plain);
}

TEST(PageSums, AFileWithoutThemIsReadWrittenAndCopiedWithout) {
  const std::string folder = own_folder(), path = folder + "/old.sqlite";
  make_without_sums(path);
  {
    auto database = good(Database::open(path));
    EXPECT_FALSE(has_sums(raw(database)));
    auto transaction = good(Transaction::begin(database));
    for (int n = 0; n < 2000; ++n) well(database.run("INSERT INTO words VALUES (?)", {std::string(500, 'a')}));
    well(transaction.commit());
    well(copy_to(database, folder + "/copy.sqlite"));
  }
  for (const char* name : {"/old.sqlite", "/copy.sqlite"}) {
    auto database = good(Database::open(folder + name));
    EXPECT_FALSE(has_sums(raw(database)));
    well(check_whole(database));
    EXPECT_EQ(good(database.rows("SELECT count(*) FROM words")).at(0).at(0), Bound(std::int64_t{2000}));
  }
}

TEST(PageSums, ACopyOfALargeBookHasThemAndABookTakesNoPagesWithout) {
  const std::string folder = own_folder(), path = folder + "/book.sqlite";
  made(folder);
  {
    JobBook book = opened(folder);  // larger than what SQLite keeps in memory while it copies: 2 MB
    for (char letter : {'a', 'b', 'c', 'd', 'e', 'f'}) good(book.keep(std::string(2'000'000, letter)));
  }
  auto database = good(Database::open(path));
  EXPECT_TRUE(has_sums(raw(database)));
  well(copy_to(database, folder + "/copy.sqlite"));
  auto copy = good(Database::open(folder + "/copy.sqlite"));
  EXPECT_TRUE(has_sums(raw(copy)));
  well(check_whole(copy));
  make_without_sums(folder + "/old.sqlite");
  EXPECT_FALSE(good(can_fill(database, folder + "/old.sqlite")));
  EXPECT_TRUE(good(can_fill(database, folder + "/copy.sqlite")));
}

}  // namespace
}  // namespace store
