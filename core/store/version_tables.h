// Versions of a job: the job, the catalogue that it used and what its estimate came to, as they were on the day. They
// are put in and taken out, and nothing here changes or drops one. None of these begins or ends a transaction, but
// whoever puts one in does it inside one.
//
// A version's texts are bodies, once each: the job file without its catalogue, a job file with nothing but the
// catalogue (the same body as the job's own as long as no price changed), what is kept of the estimate
// (files/kept_text.h). Its SHA-256 is taken over number, name, note, time, program and the three texts, so that a
// change of any of them by another hand is found.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "estimate/kept.h"
#include "plan/job.h"
#include "store/database.h"

namespace store {

struct VersionRow {
  std::int64_t id = 0;
  std::int64_t job = 0;
  std::int64_t number = 0;  // of this job's versions, from 1
  std::string name;
  std::string note;
  std::string made;     // 2026-11-28T21:47:26Z (UTC)
  std::string program;  // its version
  std::string currency;
  int decimals = 2;
  units::Money price;  // before tax
  units::Money total;  // with tax
  bool final = false;
  std::string sha256;
  std::int64_t documents = 0;  // printed of it and kept; issued where there is one
  bool operator==(const VersionRow&) const = default;
};

struct Version {
  VersionRow row;
  plan::Job job;
  estimate::Kept kept;
};

// A version before it is put in: its texts, which were read back and are the same.
struct NewVersion {
  std::string name;
  std::string note;
  std::string job_text;
  std::string catalogue_text;
  std::string kept_text;
  estimate::Kept kept;
};

// Refused (version-not-kept): a number that is none, words that are not UTF-8, whatever could not be read back later.
problem::Result<NewVersion> new_version(const plan::Job& job, const estimate::Kept& kept, const std::string& name,
                                        const std::string& note);

problem::Result<VersionRow> put_version(Database& database, std::int64_t job, const NewVersion& version);
problem::Result<std::vector<VersionRow>> take_versions(Database& database, std::int64_t job);  // the newest first

// Refused by name (version-damaged) where a text or the row is no longer what was put in.
problem::Result<Version> take_version(Database& database, std::int64_t id);

problem::Result<bool> has_versions(Database& database, std::int64_t job);

}  // namespace store
