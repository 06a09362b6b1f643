#include "store/catalogue_changes.h"

#include <algorithm>
#include <set>

#include "files/catalogue_fields.h"
#include "files/from_json.h"
#include "files/to_json.h"
#include "store/catalogue_tables.h"
#include "store/now.h"

namespace store {

namespace {

using catalogue::Change;
using catalogue::Entry;
using catalogue::Kept;
using catalogue::Key;
using catalogue::Stock;
using problem::Result;

std::string json_of(const std::optional<Kept>& kept) {
  if (!kept) return "";
  return files::write_json(std::visit([](const auto& value) { return files::to_json(value); }, kept->entry));
}

template <std::size_t I = 0>
bool read_entry(const files::Value& value, std::size_t kind, Entry& into, files::Reading& reading) {
  if constexpr (I == std::variant_size_v<Entry>) {
    return false;
  } else {
    if (I != kind) return read_entry<I + 1>(value, kind, into, reading);
    return files::read(value, into.emplace<I>(), reading);
  }
}

Result<std::optional<Kept>> kept_of(const std::string& text, std::size_t kind, bool retired, const std::string& file) {
  if (text.empty()) return std::nullopt;
  const auto value = files::parse_json(text, file);
  if (!value) return std::unexpected(value.error());
  files::Reading reading{file, {}};
  Kept kept;
  if (!read_entry(*value, kind, kept.entry, reading)) return std::unexpected(reading.told());
  kept.retired = retired;
  return kept;
}

std::int64_t number_at(const Row& row, std::size_t at) {
  const auto* value = std::get_if<std::int64_t>(&row.at(at));
  return value == nullptr ? 0 : *value;
}

std::string text_at(const Row& row, std::size_t at) {
  const auto* value = std::get_if<std::string>(&row.at(at));
  return value == nullptr ? "" : *value;
}

// kind, before, after, was_retired, is_retired from `at` on.
Result<catalogue::Step> step_of(const Row& row, std::size_t at, const std::string& file) {
  const auto& words = catalogue::kind_words();
  const auto found = std::find(words.begin(), words.end(), text_at(row, at));
  const auto kind = static_cast<std::size_t>(found - words.begin());
  if (found == words.end())
    return problem::fault("book-damaged", "a change of the catalogue is of no known kind", "restore a backup",
                          {{}, file, 0, 0, {}});
  auto before = kept_of(text_at(row, at + 1), kind, number_at(row, at + 3) != 0, file);
  if (!before) return std::unexpected(before.error());
  auto after = kept_of(text_at(row, at + 2), kind, number_at(row, at + 4) != 0, file);
  if (!after) return std::unexpected(after.error());
  return catalogue::Step{*before, *after};
}

const std::string& word_of(const Key& key) { return catalogue::kind_words().at(key.kind); }

std::int64_t yes(const std::optional<Kept>& kept) { return kept && kept->retired ? 1 : 0; }

}  // namespace

std::vector<const char*> catalogue_change_tables() {
  return {
      "CREATE TABLE catalogue_retired (kind TEXT NOT NULL, id TEXT NOT NULL, PRIMARY KEY (kind, id)) STRICT",
      "CREATE TABLE catalogue_changes (number INTEGER PRIMARY KEY AUTOINCREMENT, made TEXT NOT NULL,"
      " act INTEGER NOT NULL, of_change INTEGER NOT NULL, source TEXT NOT NULL) STRICT",
      "CREATE TABLE catalogue_steps (change INTEGER NOT NULL REFERENCES catalogue_changes, place INTEGER NOT NULL,"
      " kind TEXT NOT NULL, id TEXT NOT NULL, before TEXT NOT NULL, after TEXT NOT NULL,"
      " was_retired INTEGER NOT NULL, is_retired INTEGER NOT NULL, PRIMARY KEY (change, place)) STRICT",
      "CREATE INDEX catalogue_steps_id ON catalogue_steps (kind, id)",
      "PRAGMA user_version = 6",
  };
}

Result<Stock> take_stock(Database& database) {
  auto all = take_catalogue(database);
  if (!all) return std::unexpected(all.error());
  Stock stock{std::move(*all), {}};
  const auto rows = database.rows("SELECT kind, id FROM catalogue_retired");
  if (!rows) return std::unexpected(rows.error());
  const auto& words = catalogue::kind_words();
  for (const Row& row : *rows) {
    const auto found = std::find(words.begin(), words.end(), text_at(row, 0));
    stock.retired.insert({static_cast<std::size_t>(found - words.begin()), text_at(row, 1)});
  }
  return stock;
}

Result<void> put_steps(Database& database, const Stock& after, const Change& change) {
  std::set<std::size_t> kinds;
  Result<void> done;
  for (const catalogue::Step& step : change.steps)
    for (const auto& kept : {step.before, step.after}) {
      if (!kept || !done) continue;
      const Key key = catalogue::key_of(kept->entry);
      const catalogue::Item* item = key.kind == 0 ? after.all.item(key.id) : nullptr;
      if (item != nullptr)
        done = put_item(database, *item);
      else if (key.kind == 0)
        done = database.run("DELETE FROM items WHERE id = ?", {key.id});
      else
        kinds.insert(key.kind);
      if (done) done = database.run("DELETE FROM catalogue_retired WHERE kind = ? AND id = ?", {word_of(key), key.id});
      if (done && after.retired.contains(key))
        done = database.run("INSERT INTO catalogue_retired VALUES (?, ?)", {word_of(key), key.id});
    }
  for (const std::size_t kind : kinds)
    if (done) done = replace_kind(database, after.all, kind);
  return done;
}

Result<void> note_change(Database& database, const Change& change, Act act, std::int64_t of) {
  auto done = database.run("INSERT INTO catalogue_changes (made, act, of_change, source) VALUES (?, ?, ?, ?)",
                           {utc_now(), static_cast<std::int64_t>(act), of, change.source});
  for (std::size_t i = 0; done && i < change.steps.size(); ++i) {
    const auto& step = change.steps[i];
    if (!step.before && !step.after) continue;
    const Key key = catalogue::key_of((step.after ? step.after : step.before)->entry);
    done = database.run(
        "INSERT INTO catalogue_steps VALUES ((SELECT max(number) FROM catalogue_changes), ?, ?, ?, ?, ?, ?, ?)",
        {static_cast<std::int64_t>(i), word_of(key), key.id, json_of(step.before), json_of(step.after),
         yes(step.before), yes(step.after)});
  }
  return done;
}

Result<Change> noted_change(Database& database, std::int64_t number) {
  const auto rows = database.rows(
      "SELECT c.source, s.kind, s.before, s.after, s.was_retired, s.is_retired FROM catalogue_changes c"
      " JOIN catalogue_steps s ON s.change = c.number WHERE c.number = ? ORDER BY s.place",
      {number});
  if (!rows) return std::unexpected(rows.error());
  Change change;
  for (const Row& row : *rows) {
    change.source = text_at(row, 0);
    auto step = step_of(row, 1, database.path());
    if (!step) return std::unexpected(step.error());
    change.steps.push_back(std::move(*step));
  }
  return change;
}

Result<std::int64_t> next_to(Database& database, Act act) {
  const auto rows = database.rows("SELECT number, act, of_change FROM catalogue_changes ORDER BY number");
  if (!rows) return std::unexpected(rows.error());
  std::vector<std::int64_t> done, undone;
  for (const Row& row : *rows) {
    const auto of = number_at(row, 2);
    switch (static_cast<Act>(number_at(row, 1))) {
      case Act::change:
        done.push_back(number_at(row, 0));
        undone.clear();
        break;
      case Act::undo:
        std::erase(done, of);
        undone.push_back(of);
        break;
      case Act::redo:
        std::erase(undone, of);
        done.push_back(of);
        break;
    }
  }
  const auto& from = act == Act::undo ? done : undone;
  return from.empty() ? 0 : from.back();
}

Result<std::vector<ChangeRow>> changes_of(Database& database, const Key& key) {
  const auto rows = database.rows(
      "SELECT c.number, c.made, c.act, c.source, s.kind, s.before, s.after, s.was_retired, s.is_retired"
      " FROM catalogue_steps s JOIN catalogue_changes c ON s.change = c.number"
      " WHERE s.kind = ? AND s.id = ? ORDER BY c.number, s.place",
      {word_of(key), key.id});
  if (!rows) return std::unexpected(rows.error());
  std::vector<ChangeRow> found;
  for (const Row& row : *rows) {
    auto step = step_of(row, 4, database.path());
    if (!step) return std::unexpected(step.error());
    found.push_back({number_at(row, 0), text_at(row, 1), static_cast<Act>(number_at(row, 2)), text_at(row, 3), *step});
  }
  return found;
}

}  // namespace store
