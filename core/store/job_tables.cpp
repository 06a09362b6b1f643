#include "store/job_tables.h"

#include <set>

#include "files/element_text.h"
#include "files/files.h"
#include "store/bodies.h"
#include "store/cell.h"
#include "store/now.h"
#include "store/version_tables.h"

namespace store {

using problem::Problem;
using problem::Result;

namespace {

std::string called(const Database& database, std::int64_t id) {
  return database.path() + ", job " + std::to_string(id);
}

std::unexpected<Problem> no_job(const Database& database, std::int64_t id) {
  return problem::fault("job-none", "the job book has no job " + std::to_string(id), "choose another job",
                        {{}, database.path(), 0, 0, {}});
}

// The job without elements and catalogue, and one with nothing but the catalogue: each is a job file of its own.
plan::Job head_of(const plan::Job& job) {
  plan::Job head = job;
  head.catalogue = std::make_shared<catalogue::Catalogue>();
  head.elements.clear();
  return head;
}

plan::Job catalogue_of(const plan::Job& job) {
  plan::Job bare;
  bare.catalogue = job.catalogue;
  return bare;
}

Problem cannot_keep(const std::string& what, const Problem& why, const std::string& element) {
  return {problem::Severity::problem,
          "job-not-kept",
          what + " can't be kept in the job book: " + why.text,
          "mend it, or undo the edit; the book has it as it was before",
          {element, {}, 0, 0, {}}};
}

const Problem unlike{
    problem::Severity::problem, "job-unlike", "what was written does not read back as the same", "", {}};

// Nothing where the text reads back as the job it was made of.
std::optional<Problem> unreadable(const std::string& text, const plan::Job& as) {
  const auto back = files::read_job(text, "");
  if (!back) return back.error();
  if (!plan::same(*back, as)) return unlike;
  return {};
}

std::optional<Problem> unreadable(const std::string& text, const plan::Element& as) {
  const auto back = files::read_element(text, "");
  if (!back) return back.error();
  if (*back != as) return unlike;
  return {};
}

// The job's row apart from its count of edits; true where it changed.
Result<bool> put_head(Database& database, std::int64_t id, const plan::Job& job, KeptJob& kept,
                      std::vector<Problem>& not_kept) {
  const plan::Job head = head_of(job);
  std::string text = files::write_job(head);
  if (text == kept.head) return false;
  if (const auto why = unreadable(text, head)) {
    not_kept.push_back(cannot_keep("the heading of the job", *why, ""));
    return false;
  }
  auto done = database.run("UPDATE jobs SET name = ?, number = ?, customer = ?, place = ?, head = ? WHERE id = ?",
                           {job.heading.name, job.heading.number, job.heading.customer, job.heading.place, text, id});
  if (!done) return std::unexpected(done.error());
  kept.head = std::move(text);
  return true;
}

bool same_catalogue(const plan::Job& job, const KeptJob& kept) {
  return kept.catalogue != nullptr &&
         (job.catalogue == kept.catalogue || catalogue::same(*job.catalogue, *kept.catalogue));
}

Result<bool> put_catalogue_body(Database& database, std::int64_t id, const plan::Job& job, KeptJob& kept,
                                std::vector<Problem>& not_kept) {
  if (same_catalogue(job, kept)) {
    kept.catalogue = job.catalogue;
    return false;
  }
  const plan::Job bare = catalogue_of(job);
  const std::string text = files::write_job(bare);
  if (sha256(text) == kept.catalogue_hash) {
    kept.catalogue = job.catalogue;
    return false;
  }
  if (const auto why = unreadable(text, bare)) {
    not_kept.push_back(cannot_keep("the catalogue of the job", *why, ""));
    return false;
  }
  const auto hash = put_body(database, text, false);
  if (!hash) return std::unexpected(hash.error());
  if (auto done = database.run("UPDATE jobs SET catalogue = ? WHERE id = ?", {*hash, id}); !done)
    return std::unexpected(done.error());
  if (auto done = drop_unused_body(database, kept.catalogue_hash); !done) return std::unexpected(done.error());
  kept.catalogue = job.catalogue;
  kept.catalogue_hash = *hash;
  return true;
}

// The text to write, or none where the book has this value already; `old` then knows the newer pointer.
std::optional<std::string> changed_text(const plan::ElementPtr& element, KeptElement* old) {
  if (old != nullptr && old->value != nullptr) {
    if (old->value != element && *old->value != *element) return files::write_element(*element);
    old->value = element;
    return {};
  }
  std::string text = files::write_element(*element);
  if (old == nullptr || old->text != text) return text;
  *old = {element, {}, old->place};
  return {};
}

Result<bool> put_element(Database& database, std::int64_t id, const plan::ElementPtr& element, std::int64_t& last,
                         KeptJob& kept, std::vector<Problem>& not_kept) {
  const auto found = kept.elements.find(element->id);
  KeptElement* old = found == kept.elements.end() ? nullptr : &found->second;
  const auto text = changed_text(element, old);
  const auto why = text ? unreadable(*text, *element) : std::nullopt;
  if (why) {
    not_kept.push_back(cannot_keep("this element", *why, element->id));
    if (old == nullptr) return false;
  }
  const std::int64_t place = old != nullptr && old->place > last ? old->place : last + 1;
  last = place;
  Result<void> done;
  if (text && !why) {
    done = database.run("INSERT OR REPLACE INTO job_elements VALUES (?, ?, ?, ?)", {id, element->id, place, *text});
    if (done) kept.elements[element->id] = {element, {}, place};
  } else if (place != old->place) {
    done = database.run("UPDATE job_elements SET place = ? WHERE job = ? AND id = ?", {place, id, element->id});
    old->place = place;
  } else {
    return false;
  }
  if (!done) return std::unexpected(done.error());
  return true;
}

Result<bool> drop_gone(Database& database, std::int64_t id, const std::set<plan::ElementId>& there, KeptJob& kept) {
  bool changed = false;
  for (auto at = kept.elements.begin(); at != kept.elements.end();) {
    if (there.contains(at->first)) {
      ++at;
      continue;
    }
    if (auto done = database.run("DELETE FROM job_elements WHERE job = ? AND id = ?", {id, at->first}); !done)
      return std::unexpected(done.error());
    at = kept.elements.erase(at);
    changed = true;
  }
  return changed;
}

Result<bool> put_elements(Database& database, std::int64_t id, const plan::Job& job, KeptJob& kept,
                          std::vector<Problem>& not_kept) {
  std::set<plan::ElementId> there;
  for (const plan::ElementPtr& element : job.elements) there.insert(element->id);
  auto changed = drop_gone(database, id, there, kept);
  std::int64_t last = 0;
  for (const plan::ElementPtr& element : job.elements) {
    if (!changed) return changed;
    const auto put = put_element(database, id, element, last, kept, not_kept);
    changed = put ? Result<bool>(*changed || *put) : put;
  }
  return changed;
}

std::unexpected<Problem> damaged(const Database& database, std::int64_t id, const std::string& what, const Problem& why,
                                 const std::string& element = {}) {
  return problem::fault("job-damaged", "the job " + std::to_string(id) + " can't be read: " + what + why.text,
                        "put a copy of the job book in its place", {element, database.path(), 0, 0, {}});
}

Result<void> take_elements(Database& database, std::int64_t id, plan::Job& into) {
  const auto rows = database.rows("SELECT id, text FROM job_elements WHERE job = ? ORDER BY place", {id});
  if (!rows) return std::unexpected(rows.error());
  for (const Row& row : *rows) {
    auto element = files::read_element(text_of(row.at(1)), called(database, id));
    if (!element) return damaged(database, id, "of its element ", element.error(), text_of(row.at(0)));
    into.elements.push_back(std::make_shared<const plan::Element>(std::move(*element)));
  }
  return {};
}

}  // namespace

Result<std::int64_t> put_new_job(Database& database) {
  const auto body = put_body(database, "", false);
  if (!body) return std::unexpected(body.error());
  if (auto done = database.run("INSERT INTO jobs (name, customer, place, edits, written, catalogue, head)"
                               " VALUES ('', '', '', 0, 0, ?, '')",
                               {*body});
      !done)
    return std::unexpected(done.error());
  const auto id = database.rows("SELECT last_insert_rowid()");
  if (!id) return std::unexpected(id.error());
  return whole_of(id->front().front());
}

Result<void> drop_job(Database& database, std::int64_t id) {
  const auto kept = database.rows("SELECT catalogue FROM jobs WHERE id = ?", {id});
  if (!kept) return std::unexpected(kept.error());
  if (kept->empty()) return no_job(database, id);
  const auto versions = has_versions(database, id);
  if (!versions) return std::unexpected(versions.error());
  if (*versions)
    return problem::fault("job-has-versions", "versions of this job were saved, so it stays in the job book",
                          "archive it: it leaves the list, and its versions can be read",
                          {{}, database.path(), 0, 0, {}});
  if (auto done = database.run("DELETE FROM jobs WHERE id = ?", {id}); !done) return done;
  return drop_unused_body(database, text_of(kept->front().front()));
}

Result<KeptJob> kept_job(Database& database, std::int64_t id) {
  const auto rows = database.rows("SELECT head, catalogue FROM jobs WHERE id = ?", {id});
  if (!rows) return std::unexpected(rows.error());
  if (rows->empty()) return no_job(database, id);
  KeptJob kept{text_of(rows->front().at(0)), nullptr, text_of(rows->front().at(1)), {}};
  const auto elements = database.rows("SELECT id, place, text FROM job_elements WHERE job = ?", {id});
  if (!elements) return std::unexpected(elements.error());
  for (const Row& row : *elements)
    kept.elements[text_of(row.at(0))] = {nullptr, text_of(row.at(2)), whole_of(row.at(1))};
  return kept;
}

Result<PutJob> put_job(Database& database, std::int64_t id, const plan::Job& job, KeptJob& kept) {
  PutJob put;
  for (const auto part : {put_head, put_catalogue_body, put_elements}) {
    const auto changed = part(database, id, job, kept, put.not_kept);
    if (!changed) return std::unexpected(changed.error());
    put.changed = put.changed || *changed;
  }
  if (!put.changed) return put;
  auto counted = database.run(
      "UPDATE jobs SET edits = edits + 1, written = (SELECT max(written) + 1 FROM jobs), changed = ? WHERE id = ?",
      {utc_now(), id});
  if (!counted) return std::unexpected(counted.error());
  return put;
}

Result<plan::Job> take_job(Database& database, std::int64_t id) {
  const auto rows = database.rows("SELECT head, catalogue FROM jobs WHERE id = ?", {id});
  if (!rows) return std::unexpected(rows.error());
  if (rows->empty()) return no_job(database, id);
  auto job = files::read_job(text_of(rows->front().at(0)), called(database, id));
  if (!job) return damaged(database, id, "", job.error());
  const auto body = take_body(database, text_of(rows->front().at(1)));
  if (!body) return damaged(database, id, "", body.error());
  const auto catalogue = files::read_job(*body, called(database, id));
  if (!catalogue) return damaged(database, id, "of its catalogue ", catalogue.error());
  job->catalogue = catalogue->catalogue;
  if (auto taken = take_elements(database, id, *job); !taken) return std::unexpected(taken.error());
  return job;
}

}  // namespace store
