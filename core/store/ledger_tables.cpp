#include "store/ledger_tables.h"

#include <QtCore/QString>

#include "estimate/kinds.h"
#include "files/kept_text.h"
#include "store/bodies.h"
#include "store/cell.h"
#include "store/job_rows.h"
#include "store/now.h"

namespace store {

using estimate::Entry;
using problem::Result;

namespace {

bool is_utf8(const std::string& text) { return QString::fromStdString(text).toStdString() == text; }

double number_of(const Bound& cell) {
  const auto* number = std::get_if<double>(&cell);
  return number == nullptr ? 0 : *number;
}

problem::Place place_of(const Database& database) { return {{}, database.path(), 0, 0, {}}; }

// What is kept of the version's estimate, without its drawing: an entry is checked against its lines alone.
Result<estimate::Kept> kept_of(Database& database, std::int64_t version) {
  const auto rows = database.rows("SELECT kept_text FROM versions WHERE id = ?", {version});
  if (!rows) return std::unexpected(rows.error());
  if (rows->empty())
    return problem::fault("version-none", "the job book has no version " + std::to_string(version),
                          "choose another version", place_of(database));
  const auto text = take_body(database, text_of(rows->front().front()));
  if (!text) return std::unexpected(text.error());
  return files::read_kept(*text, database.path());
}

Result<void> check_words(const Entry& entry) {
  for (const std::string* text :
       {&entry.line.stage, &entry.line.item, &entry.date, &entry.unit, &entry.who, &entry.ticket, &entry.note})
    if (!is_utf8(*text))
      return problem::fault("ledger-words", "what is said of the entry is not text",
                            "type it again; nothing was entered");
  return {};
}

Row row_of(std::int64_t version, const Entry& entry) {
  Bound price;
  if (entry.price) price = entry.price->coins();
  return {version,
          entry.number,
          entry.corrects,
          estimate::word(entry.act),
          entry.line.stage,
          entry.line.item,
          estimate::word(entry.line.kind),
          entry.date,
          entry.quantity,
          entry.whole,
          entry.unit,
          price,
          entry.who,
          entry.ticket,
          entry.note,
          entry.entered};
}

// Columns from `number` on, as `take_entries` asks for them.
Result<Entry> entry_of(const Database& database, const Row& row) {
  const auto act = estimate::act_of(text_of(row.at(2)));
  const auto kind = estimate::cost_kind(text_of(row.at(5)));
  const std::int64_t number = whole_of(row.at(0));
  if (!act || !kind)
    return problem::fault("ledger-damaged", "entry " + std::to_string(number) + " is not what was entered",
                          "take it from a copy of the job book", place_of(database));
  Entry entry{number,
              whole_of(row.at(1)),
              *act,
              {text_of(row.at(3)), text_of(row.at(4)), *kind},
              text_of(row.at(6)),
              number_of(row.at(7)),
              number_of(row.at(8)),
              text_of(row.at(9)),
              {},
              text_of(row.at(11)),
              text_of(row.at(12)),
              text_of(row.at(13)),
              text_of(row.at(14))};
  if (std::holds_alternative<std::int64_t>(row.at(10))) entry.price = units::Money::of_coins(whole_of(row.at(10)));
  return entry;
}

Result<ClosedLedger> closed_ledger(Database& database, const Row& row) {
  ClosedLedger made{whole_of(row.at(0)), text_of(row.at(1)), text_of(row.at(2)), {}, {}};
  const std::int64_t version = whole_of(row.at(3));
  auto whole = take_version(database, version);
  if (!whole) return std::unexpected(whole.error());
  auto entries = take_entries(database, version);
  if (!entries) return std::unexpected(entries.error());
  made.version = std::move(*whole);
  made.entries = std::move(*entries);
  return made;
}

}  // namespace

Result<Entry> put_entry(Database& database, std::int64_t version, const Entry& entry) {
  if (auto words = check_words(entry); !words) return std::unexpected(words.error());
  const auto kept = kept_of(database, version);
  if (!kept) return std::unexpected(kept.error());
  const auto before = take_entries(database, version);
  if (!before) return std::unexpected(before.error());
  if (auto fits = estimate::check(*kept, *before, entry); !fits) return std::unexpected(fits.error());
  Entry entered = entry;
  entered.number = before->empty() ? 1 : before->back().number + 1;
  entered.entered = utc_now();
  auto done = database.run(
      "INSERT INTO ledger (version, number, corrects, act, stage, item, kind, date, quantity, whole, unit, price, who,"
      " ticket, note, entered) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      row_of(version, entered));
  if (!done) return std::unexpected(done.error());
  return entered;
}

Result<std::vector<Entry>> take_entries(Database& database, std::int64_t version) {
  const auto rows = database.rows(
      "SELECT number, corrects, act, stage, item, kind, date, quantity, whole, unit, price, who, ticket, note, entered"
      " FROM ledger WHERE version = ? ORDER BY number",
      {version});
  if (!rows) return std::unexpected(rows.error());
  std::vector<Entry> entries;
  for (const Row& row : *rows) {
    auto entry = entry_of(database, row);
    if (!entry) return std::unexpected(entry.error());
    entries.push_back(*std::move(entry));
  }
  return entries;
}

Result<ClosedLedgers> take_closed_ledgers(Database& database) {
  const auto rows = database.rows(
      "SELECT jobs.id, jobs.name, jobs.number, max(versions.id) FROM jobs JOIN versions ON versions.job = jobs.id"
      " WHERE jobs.state = ? AND versions.id IN (SELECT version FROM ledger) GROUP BY jobs.id ORDER BY jobs.id",
      {word(State::closed)});
  if (!rows) return std::unexpected(rows.error());
  ClosedLedgers all;
  for (const Row& row : *rows) {
    auto one = closed_ledger(database, row);
    if (one) {
      all.jobs.push_back(*std::move(one));
    } else {
      all.left_out.push_back(one.error());
    }
  }
  return all;
}

// Money is whole coins. `number` counts the entries of a version from 1; `corrects` names the one whose place an entry
// takes, 0: none.
std::vector<const char*> ledger_table_statements() {
  return {
      "CREATE TABLE ledger (version INTEGER NOT NULL REFERENCES versions, number INTEGER NOT NULL,"
      " corrects INTEGER NOT NULL, act TEXT NOT NULL, stage TEXT NOT NULL, item TEXT NOT NULL, kind TEXT NOT NULL,"
      " date TEXT NOT NULL, quantity REAL NOT NULL, whole REAL NOT NULL, unit TEXT NOT NULL, price INTEGER,"
      " who TEXT NOT NULL, ticket TEXT NOT NULL, note TEXT NOT NULL, entered TEXT NOT NULL,"
      " PRIMARY KEY (version, number)) STRICT",
      "PRAGMA user_version = 7",
  };
}

}  // namespace store
