// The list of jobs, and what the office says of one.
#include "store/cell.h"
#include "store/job_tables.h"
#include "store/now.h"

namespace store {

using problem::Result;

Result<std::vector<JobRow>> take_jobs(Database& database) {
  const auto rows = database.rows(
      "SELECT jobs.id, jobs.name, customer, place, edits, jobs.number, state, archived, changed, newest.number,"
      " newest.currency, newest.decimals, newest.total FROM jobs LEFT JOIN versions AS newest ON newest.job = jobs.id"
      " AND newest.number = (SELECT max(number) FROM versions WHERE job = jobs.id)"
      " ORDER BY written DESC, jobs.id DESC");
  if (!rows) return std::unexpected(rows.error());
  std::vector<JobRow> jobs;
  jobs.reserve(rows->size());
  for (const Row& row : *rows) {
    JobRow& job = jobs.emplace_back();
    job.id = whole_of(row.at(0));
    job.name = text_of(row.at(1));
    job.customer = text_of(row.at(2));
    job.place = text_of(row.at(3));
    job.edits = whole_of(row.at(4));
    job.number = text_of(row.at(5));
    job.state = state_of(text_of(row.at(6))).value_or(State::asked);
    job.archived = whole_of(row.at(7)) != 0;
    job.changed = text_of(row.at(8));
    job.versions = whole_of(row.at(9));  // they are counted from 1 without a gap; none: no number
    if (job.versions == 0) continue;
    job.currency = text_of(row.at(10));
    job.decimals = static_cast<int>(whole_of(row.at(11)));
    job.total = units::Money::of_coins(whole_of(row.at(12)));
  }
  return jobs;
}

namespace {

// `changed` and the order of the list go with what the office says of a job, too.
Result<void> put_word(Database& database, std::int64_t id, const char* statement, Bound value) {
  const auto there = database.rows("SELECT id FROM jobs WHERE id = ?", {id});
  if (!there) return std::unexpected(there.error());
  if (there->empty())
    return problem::fault("job-none", "the job book has no job " + std::to_string(id), "choose another job",
                          {{}, database.path(), 0, 0, {}});
  return database.run(statement, {std::move(value), utc_now(), id});
}

}  // namespace

Result<void> put_state(Database& database, std::int64_t id, State state) {
  return put_word(database, id,
                  "UPDATE jobs SET state = ?, changed = ?, written = (SELECT max(written) + 1 FROM jobs) WHERE id = ?",
                  word(state));
}

Result<void> put_archived(Database& database, std::int64_t id, bool archived) {
  return put_word(
      database, id,
      "UPDATE jobs SET archived = ?, changed = ?, written = (SELECT max(written) + 1 FROM jobs) WHERE id = ?",
      std::int64_t{archived ? 1 : 0});
}

}  // namespace store
