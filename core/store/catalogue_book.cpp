#include "store/catalogue_book.h"

#include <filesystem>
#include <set>

#include "files/files.h"
#include "store/catalogue_tables.h"
#include "store/lock.h"
#include "store/migrations.h"
#include "store/starter.h"

namespace store {

namespace {

using problem::Result;

constexpr int wait_milliseconds = 10'000;

std::string lock_file(const std::string& folder) { return folder + "/book.lock"; }

Result<bool> is_filled(Database& database) {
  const auto notes = database.rows("SELECT count(*) FROM catalogue_note");
  if (!notes) return std::unexpected(notes.error());
  return notes->at(0).at(0) != Bound(std::int64_t{0});
}

Result<bool> is_ready(Database& database) {
  const auto form = database.form();
  if (!form) return std::unexpected(form.error());
  if (*form != newest_form()) return false;
  return is_filled(database);
}

Result<void> fill(Database& database) {
  const auto filled = is_filled(database);
  if (!filled) return std::unexpected(filled.error());
  if (*filled) return {};
  const auto starter = files::read_starter(starter_texts());
  if (!starter) return std::unexpected(starter.error());
  auto transaction = Transaction::begin(database);
  if (!transaction) return std::unexpected(transaction.error());
  if (auto put = put_catalogue(database, *starter); !put) return put;
  return transaction->commit();
}

Result<void> make_ready(Database& database) {
  if (auto log = database.use_write_ahead_log(); !log) return log;
  if (auto moved = migrate(database); !moved) return moved;
  return fill(database);
}

Result<void> check_items(const std::vector<catalogue::Item>& items) {
  std::set<catalogue::Id> ids;
  for (const catalogue::Item& item : items) {
    if (auto good = catalogue::check(item); !good) return good;
    if (!ids.insert(item.id).second)
      return problem::fault("item-doubled", "the item " + item.id + " stands there twice", "take one of them out");
  }
  return {};
}

Result<void> check_packs(Database& database) {
  const auto lost = database.rows(
      "SELECT pack, piece FROM pack_contents WHERE piece NOT IN (SELECT id FROM items) ORDER BY pack, place LIMIT 1");
  if (!lost) return std::unexpected(lost.error());
  if (lost->empty()) return {};
  const Row& row = lost->front();
  return problem::fault("item-contents",
                        "the pack " + std::get<std::string>(row.at(0)) + " holds " + std::get<std::string>(row.at(1)) +
                            ", which is no item of the catalogue",
                        "add that item, or correct the pack");
}

}  // namespace

Result<CatalogueBook> CatalogueBook::open(const std::string& folder) {
  if (auto made = make_folder(folder); !made) return std::unexpected(made.error());
  const std::string path = folder + "/book.sqlite";
  if (std::filesystem::exists(path)) {
    auto database = Database::open(path);
    if (!database) return std::unexpected(database.error());
    const auto ready = is_ready(*database);
    if (!ready) return std::unexpected(ready.error());
    if (*ready) return CatalogueBook(std::move(*database), folder);
  }
  // One program at a time makes the book or brings it to a new form; whoever waited finds it done.
  const auto lock = Lock::take(lock_file(folder), wait_milliseconds);
  if (!lock) return std::unexpected(lock.error());
  auto database = Database::open(path);
  if (!database) return std::unexpected(database.error());
  if (auto done = make_ready(*database); !done) return std::unexpected(done.error());
  return CatalogueBook(std::move(*database), folder);
}

Result<catalogue::Catalogue> CatalogueBook::read() {
  const auto snapshot = Transaction::begin_reading(database_);
  if (!snapshot) return std::unexpected(snapshot.error());
  return take_catalogue(database_);
}

Result<void> CatalogueBook::replace_items(const std::vector<catalogue::Item>& items) {
  if (auto good = check_items(items); !good) return good;
  const auto lock = Lock::take(lock_file(folder_), wait_milliseconds);
  if (!lock) return std::unexpected(lock.error());
  auto transaction = Transaction::begin(database_);
  if (!transaction) return std::unexpected(transaction.error());
  for (const catalogue::Item& item : items)
    if (auto put = put_item(database_, item); !put) return put;
  if (auto good = check_packs(database_); !good) return good;
  return transaction->commit();
}

}  // namespace store
