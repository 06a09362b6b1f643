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

Result<catalogue::Stock> CatalogueBook::stock() {
  const auto snapshot = Transaction::begin_reading(database_);
  if (!snapshot) return std::unexpected(snapshot.error());
  return take_stock(database_);
}

Result<catalogue::Catalogue> CatalogueBook::read() {
  const auto all = stock();
  if (!all) return std::unexpected(all.error());
  return all->retired.empty() ? all->all : catalogue::offered(*all);
}

// The book is locked and a transaction has begun.
Result<void> CatalogueBook::write(const catalogue::Change& change, Act act, std::int64_t of) {
  const auto before = take_stock(database_);
  if (!before) return std::unexpected(before.error());
  const auto after = catalogue::changed(*before, change);
  if (!after) return std::unexpected(after.error());
  if (auto put = put_steps(database_, *after, change); !put) return put;
  return note_change(database_, change, act, of);
}

Result<void> CatalogueBook::change(const catalogue::Change& change) {
  if (change.steps.empty()) return {};
  const auto lock = Lock::take(lock_file(folder_), wait_milliseconds);
  if (!lock) return std::unexpected(lock.error());
  auto transaction = Transaction::begin(database_);
  if (!transaction) return std::unexpected(transaction.error());
  if (auto done = write(change, Act::change, 0); !done) return done;
  return transaction->commit();
}

Result<bool> CatalogueBook::step_back(Act act) {
  const auto lock = Lock::take(lock_file(folder_), wait_milliseconds);
  if (!lock) return std::unexpected(lock.error());
  auto transaction = Transaction::begin(database_);
  if (!transaction) return std::unexpected(transaction.error());
  const auto number = next_to(database_, act);
  if (!number) return std::unexpected(number.error());
  if (*number == 0) return false;
  auto change = noted_change(database_, *number);
  if (!change) return std::unexpected(change.error());
  if (act == Act::undo) *change = catalogue::reversed(*change);
  if (auto done = write(*change, act, *number); !done) return std::unexpected(done.error());
  if (auto kept = transaction->commit(); !kept) return std::unexpected(kept.error());
  return true;
}

Result<bool> CatalogueBook::undo() { return step_back(Act::undo); }
Result<bool> CatalogueBook::redo() { return step_back(Act::redo); }

Result<void> CatalogueBook::put(const catalogue::Catalogue& wanted, const std::string& source) {
  const auto now = stock();
  if (!now) return std::unexpected(now.error());
  return change(catalogue::change_to(*now, wanted, source));
}

Result<std::vector<ChangeRow>> CatalogueBook::history(const catalogue::Key& key) { return changes_of(database_, key); }

Result<std::vector<PricePoint>> CatalogueBook::price_history(const catalogue::Id& item) {
  const auto rows = changes_of(database_, {0, item});
  if (!rows) return std::unexpected(rows.error());
  const auto price_in = [](const std::optional<catalogue::Kept>& kept) -> std::optional<catalogue::Price> {
    const auto* found = kept ? std::get_if<catalogue::Item>(&kept->entry) : nullptr;
    return found == nullptr ? std::nullopt : found->price;
  };
  std::vector<PricePoint> points;
  for (const ChangeRow& row : *rows) {
    if (points.empty() && row.step.before) points.push_back({"", "", price_in(row.step.before)});
    const auto price = price_in(row.step.after);
    if (points.empty() || points.back().price != price) points.push_back({row.when, row.source, price});
  }
  if (!points.empty()) return points;
  const auto now = stock();
  if (!now) return std::unexpected(now.error());
  if (const catalogue::Item* there = now->all.item(item)) points.push_back({"", "", there->price});
  return points;
}

Result<void> CatalogueBook::replace_items(const std::vector<catalogue::Item>& items) {
  if (auto good = check_items(items); !good) return good;
  catalogue::Catalogue wanted;
  for (const catalogue::Item& item : items) wanted.items[item.id] = std::make_shared<const catalogue::Item>(item);
  return put(wanted, "file");
}

}  // namespace store
