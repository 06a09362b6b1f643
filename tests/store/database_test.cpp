// The database under the job book: bound values come back, transactions are all or nothing, and only our own files
// open.
#include "store/database.h"

#include <fstream>

#include "store/folder.h"
#include "store/migrations.h"

namespace store {
namespace {

Database made(const std::string& path) {
  auto database = Database::open(path);
  if (!database) throw std::runtime_error(problem::sentence(database.error()));
  if (auto done = migrate(*database); !done) throw std::runtime_error(problem::sentence(done.error()));
  return std::move(*database);
}

std::int64_t count_of_notes(Database& database) {
  return std::get<std::int64_t>(database.rows("SELECT count(*) FROM catalogue_note")->at(0).at(0));
}

TEST(DataFolder, GoesWhereXdgSays) {
  const char* home = std::getenv("XDG_DATA_HOME");
  ASSERT_NE(home, nullptr);
  EXPECT_EQ(data_folder(), std::string(home) + "/groundcourse");
}

TEST(Database, ValuesComeBackAsTheyWere) {
  Database database = made(own_folder() + "/book.sqlite");
  ASSERT_TRUE(database.run("CREATE TEMP TABLE t (place INTEGER, value ANY) STRICT"));
  const Row values{std::monostate{},
                   std::int64_t{0},
                   std::int64_t{-9007199254740993},
                   0.1,
                   1e-300,
                   std::string(""),
                   std::string("'; DROP TABLE t; --"),
                   std::string("%s%n"),
                   std::string("\xE2\x80\xAE"
                               "abc\xE2\x80\xAC 😀 ñ"),
                   std::string("two\r\nlines")};
  for (std::size_t i = 0; i < values.size(); ++i)
    ASSERT_TRUE(database.run("INSERT INTO t VALUES (?, ?)", {static_cast<std::int64_t>(i), values[i]}));
  const auto rows = database.rows("SELECT value FROM t ORDER BY place");
  ASSERT_TRUE(rows);
  ASSERT_EQ(rows->size(), values.size());
  for (std::size_t i = 0; i < values.size(); ++i) EXPECT_EQ(rows->at(i).at(0), values[i]) << i;
}

TEST(Database, ATransactionIsAllOrNothing) {
  Database database = made(own_folder() + "/book.sqlite");
  {
    auto transaction = Transaction::begin(database);
    ASSERT_TRUE(transaction);
    ASSERT_TRUE(database.run("INSERT INTO catalogue_note VALUES (?)", {std::string("lost")}));
    EXPECT_EQ(count_of_notes(database), 1);
  }
  EXPECT_EQ(count_of_notes(database), 0);
  {
    auto transaction = Transaction::begin(database);
    ASSERT_TRUE(database.run("INSERT INTO catalogue_note VALUES (?)", {std::string("kept")}));
    ASSERT_TRUE(transaction->commit());
  }
  EXPECT_EQ(count_of_notes(database), 1);
}

TEST(Database, IsDurableAndLetsReadersIn) {
  const std::string path = own_folder() + "/book.sqlite";
  Database database = made(path);
  ASSERT_TRUE(database.use_write_ahead_log());
  EXPECT_EQ(database.rows("PRAGMA journal_mode")->at(0).at(0), Bound(std::string("wal")));
  EXPECT_EQ(database.rows("PRAGMA synchronous")->at(0).at(0), Bound(std::int64_t{2}));  // FULL
  EXPECT_EQ(database.rows("PRAGMA foreign_keys")->at(0).at(0), Bound(std::int64_t{1}));
  auto writing = Transaction::begin(database);
  ASSERT_TRUE(writing);
  ASSERT_TRUE(database.run("INSERT INTO catalogue_note VALUES (?)", {std::string("not yet")}));
  auto reader = Database::open(path);
  ASSERT_TRUE(reader);
  EXPECT_EQ(count_of_notes(*reader), 0);
}

TEST(Database, AFaultySentenceIsAProblem) {
  Database database = made(own_folder() + "/book.sqlite");
  const auto fault = database.run("INSERT INTO no_table VALUES (?)", {std::int64_t{1}});
  ASSERT_FALSE(fault);
  EXPECT_EQ(fault.error().code, "book-database");
  EXPECT_EQ(fault.error().place.file, database.path());
}

TEST(Database, WhatIsNoJobBookIsRefused) {
  const std::string folder = own_folder();
  std::ofstream(folder + "/garbage.sqlite") << std::string(5000, 'x');
  EXPECT_EQ(Database::open(folder + "/garbage.sqlite").error().code, "book-database");
  {
    auto other = Database::open(folder + "/other.sqlite");
    ASSERT_TRUE(other);
    ASSERT_TRUE(other->run("CREATE TABLE theirs (a INTEGER)"));
  }
  EXPECT_EQ(Database::open(folder + "/other.sqlite").error().code, "book-foreign");
  EXPECT_EQ(Database::open(folder + "/no such folder/book.sqlite").error().code, "book-database");
}

TEST(Migrations, GoOnceAndRefuseANewerForm) {
  const std::string path = own_folder() + "/book.sqlite";
  Database database = made(path);
  EXPECT_EQ(database.form(), newest_form());
  EXPECT_TRUE(migrate(database));  // nothing left to do
  ASSERT_TRUE(database.run("PRAGMA user_version = 99"));
  const auto newer = migrate(database);
  ASSERT_FALSE(newer);
  EXPECT_EQ(newer.error().code, "book-newer");
  EXPECT_EQ(problem::sentence(newer.error()), path +
                                                  ": the job book was written by a newer Groundcourse (its form is 99, "
                                                  "this program knows up to " +
                                                  std::to_string(newest_form()) + "); use the newer program");
}

}  // namespace
}  // namespace store
