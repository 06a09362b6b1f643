// One connection to the job book's database. Values are bound, never written into a statement: every statement is a
// constant. What only SQLite has (journal, application id, form number, copies) stands in database.cpp, in copy.cpp and
// in the statements of migrations.cpp.
//
// A QCoreApplication must live before the first connection: it finds the driver. A connection belongs to the thread
// that opened it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "problem/problem.h"

namespace store {

// Bytes of any kind, kept as they are.
struct Bytes {
  std::string bytes;
  bool operator==(const Bytes&) const = default;
};

// NULL, a whole number, a number, a text in UTF-8, bytes.
using Bound = std::variant<std::monostate, std::int64_t, double, std::string, Bytes>;
using Row = std::vector<Bound>;

// Which file it is, whatever it is called.
struct FileId {
  std::uint64_t disk = 0;
  std::uint64_t number = 0;
  bool operator==(const FileId&) const = default;
};

// Where the job book lies: groundcourse/ in the person's data folder (XDG_DATA_HOME moves it).
std::string data_folder();
// Makes a folder with those above it; one that is there is left alone.
problem::Result<void> make_folder(const std::string& folder);

class Database {
 public:
  // Opens the file, or makes an empty one, whose pages have sums (page_sums.h); its folder must exist. A file that is a
  // database of something else, or none at all, is refused by name.
  static problem::Result<Database> open(const std::string& path);
  // Opens a file that is there, to read alone: nothing in it can be changed, whoever else writes it. In a folder that
  // can't be written either it is read as it lies.
  static problem::Result<Database> open_to_read(const std::string& path);

  Database(Database&& other) noexcept;
  Database& operator=(Database&&) = delete;
  Database(const Database&) = delete;
  Database& operator=(const Database&) = delete;
  ~Database();

  problem::Result<void> run(const char* statement, const Row& values = {});
  problem::Result<std::vector<Row>> rows(const char* statement, const Row& values = {});

  // Number of the last migration that the file has seen; 0 in a file just made.
  problem::Result<int> form();
  // Write-ahead log, so that readers never wait for the writer. It stays with the file; set it while nobody else has it
  // open.
  problem::Result<void> use_write_ahead_log();

  const std::string& path() const { return path_; }
  // Refused (book-gone) where another file lies at the path by now, or none: what is written would be lost with it.
  problem::Result<void> check_place() const;

  // The driver's own connection (sqlite3*), for copy.cpp: what can't be said in a statement.
  void* handle();

 private:
  static problem::Result<Database> open(const std::string& path, const char* more, const char* options);
  Database(std::string path, std::string connection) : path_(std::move(path)), connection_(std::move(connection)) {}
  std::string path_;
  std::string connection_;  // empty once moved from
  std::optional<FileId> file_{};
};

// All or nothing: what was done since `begin` is undone unless `commit` said yes.
class Transaction {
 public:
  // To write; refused where the file has gone.
  static problem::Result<Transaction> begin(Database& database);
  static problem::Result<Transaction> begin_reading(Database& database);  // sees the database as it stands now

  Transaction(Transaction&& other) noexcept : database_(other.database_) { other.database_ = nullptr; }
  Transaction& operator=(Transaction&&) = delete;
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  ~Transaction();

  problem::Result<void> commit();

 private:
  explicit Transaction(Database& database) : database_(&database) {}
  Database* database_;  // null once committed
};

}  // namespace store
