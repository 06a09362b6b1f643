// What was entered against the lines of a version, entry by entry as estimate/ledger.h has it. Entries are put in and
// taken out, and nothing here changes or drops one. None of these begins or ends a transaction, but whoever puts one in
// does it inside one.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "estimate/ledger.h"
#include "store/database.h"
#include "store/version_tables.h"

namespace store {

// Puts the entry behind those of its version, with its number and the time, and gives it back as it stands. Refused
// with nothing written: a version that there is not, what estimate::check refuses, words that are not UTF-8
// (ledger-words).
problem::Result<estimate::Entry> put_entry(Database& database, std::int64_t version, const estimate::Entry& entry);

// In the order in which they were entered. A row that can't be an entry (someone changed the file by hand) is refused
// by name (ledger-damaged).
problem::Result<std::vector<estimate::Entry>> take_entries(Database& database, std::int64_t version);

// A closed job's newest version that has entries.
struct ClosedLedger {
  std::int64_t job = 0;
  std::string name;    // the job's
  std::string number;  // the office's own
  Version version;
  std::vector<estimate::Entry> entries;
};
struct ClosedLedgers {
  std::vector<ClosedLedger> jobs;          // by their id
  std::vector<problem::Problem> left_out;  // why one could not be read
};
problem::Result<ClosedLedgers> take_closed_ledgers(Database& database);

// The statements that make the table (migrations.cpp).
std::vector<const char*> ledger_table_statements();

}  // namespace store
