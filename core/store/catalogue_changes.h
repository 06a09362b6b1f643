// What was changed in the book's catalogue, kept for ever: when, by what, each entry before and after as JSON. None of
// these begins or ends a transaction.
#pragma once

#include "catalogue/change.h"
#include "store/database.h"

namespace store {

// `change` is a person's or a file's; `undo` and `redo` are changes of their own and name the one they take back or do
// again.
enum class Act { change, undo, redo };

struct ChangeRow {
  std::int64_t number = 0;
  std::string when;  // 2026-11-28T21:47:26Z
  Act act = Act::change;
  std::string source;  // "typed", or the name of a file
  catalogue::Step step;
};

// A price that an item had from `when` on. The first has the time at which the book got it where that is known, else
// nothing.
struct PricePoint {
  std::string when;
  std::string source;
  std::optional<catalogue::Price> price;
};

problem::Result<catalogue::Stock> take_stock(Database& database);

// Puts what the steps touch into the tables as `after` has it.
problem::Result<void> put_steps(Database& database, const catalogue::Stock& after, const catalogue::Change& change);

problem::Result<void> note_change(Database& database, const catalogue::Change& change, Act act, std::int64_t of);
problem::Result<catalogue::Change> noted_change(Database& database, std::int64_t number);

// The change that undo or redo is about; 0: none. A new change ends what could be done again.
problem::Result<std::int64_t> next_to(Database& database, Act act);

problem::Result<std::vector<ChangeRow>> changes_of(Database& database, const catalogue::Key& key);  // oldest first

// The statements that make the tables (migrations.cpp).
std::vector<const char*> catalogue_change_tables();

}  // namespace store
