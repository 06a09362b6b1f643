// Jobs into the tables and out of them, element by element. None of these begins or ends a transaction, but whoever
// writes a job does it inside one.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "plan/job.h"
#include "store/job_book.h"

namespace store {

// An element as the book has it. Its value, or, as long as only the row was seen, its text.
struct KeptElement {
  plan::ElementPtr value;
  std::string text;
  std::int64_t place = 0;
};

// What the book has of one job, so that only what differs is written.
struct KeptJob {
  std::string head;
  std::shared_ptr<const catalogue::Catalogue> catalogue;  // null: only its hash was seen
  std::string catalogue_hash;
  std::map<plan::ElementId, KeptElement> elements;
};

problem::Result<std::int64_t> put_new_job(Database& database);        // an empty row; its id is never given again
problem::Result<void> drop_job(Database& database, std::int64_t id);  // refused where it has versions

// What the rows of a job say; refused where the book has no such job.
problem::Result<KeptJob> kept_job(Database& database, std::int64_t id);

// Writes what differs from `kept` and brings `kept` up to it; the caller drops that `kept` where the transaction fails.
// An element told apart by its pointer and then by its value has its row written only when it changed, or its place
// when that moved. A part that could not be read back (a number that is none) is not written: its row stays as it was,
// the rest goes through, and its fault is given back; the next value tries it again.
struct PutJob {
  bool changed = false;
  std::vector<problem::Problem> not_kept;
};
problem::Result<PutJob> put_job(Database& database, std::int64_t id, const plan::Job& job, KeptJob& kept);

problem::Result<plan::Job> take_job(Database& database, std::int64_t id);
problem::Result<std::vector<JobRow>> take_jobs(Database& database);  // the newest first
problem::Result<void> put_state(Database& database, std::int64_t id, State state);
problem::Result<void> put_archived(Database& database, std::int64_t id, bool archived);

}  // namespace store
