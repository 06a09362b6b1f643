#include "store/version_tables.h"

#include <QtCore/QString>

#include "files/files.h"
#include "files/kept_text.h"
#include "store/bodies.h"
#include "store/cell.h"
#include "store/columns.h"
#include "store/now.h"

namespace store {

using problem::Problem;
using problem::Result;

namespace {

template <class Row, class Version>
void version_columns(Row& row, Version& version) {
  row(version.name);
  row(version.note);
  row(version.made);
  row(version.program);
  row(version.currency);
  row(version.decimals);
  row(version.price);
  row(version.total);
  row(version.final);
  row(version.sha256);
}

// The three texts of a version, or their hashes.
struct Texts {
  std::string job;
  std::string catalogue;
  std::string kept;
};

// Each part with its length before it, so that no two lists of parts run together to the same text.
std::string seal(const VersionRow& row, const Texts& texts) {
  std::string whole;
  for (const std::string& part : {std::to_string(row.number), row.name, row.note, row.made, row.program, texts.job,
                                  texts.catalogue, texts.kept}) {
    whole += std::to_string(part.size()) + ":";
    whole += part;
  }
  return sha256(whole);
}

bool is_utf8(const std::string& text) { return QString::fromStdString(text).toStdString() == text; }

std::unexpected<Problem> cannot_keep(const std::string& why) {
  return problem::fault("version-not-kept", "the version can't be saved: " + why,
                        "mend it, and save the version then; nothing was saved");
}

std::unexpected<Problem> damaged(const Database& database, const VersionRow& row, const std::string& why) {
  const std::string name = row.name.empty() ? "" : " (" + row.name.substr(0, 60) + ")";
  return problem::fault("version-damaged",
                        "version " + std::to_string(row.number) + name + " of job " + std::to_string(row.job) +
                            " is not what was saved: " + why,
                        "take it from a copy of the job book", {{}, database.path(), 0, 0, {}});
}

// The columns of a row as `listed` asks for them.
VersionRow row_of(const Row& row) {
  VersionRow version;
  version.id = whole_of(row.at(0));
  version.job = whole_of(row.at(1));
  version.number = whole_of(row.at(2));
  In in(row, 3);
  version_columns(in, version);
  version.documents = whole_of(row.at(13));
  return version;
}

// Whether the row says what the texts say.
bool agrees(const VersionRow& row, const estimate::Kept& kept) {
  return row.program == kept.program && row.currency == kept.currency && row.decimals == kept.decimals &&
         row.price == kept.price && row.total == kept.total && row.final == kept.final;
}

Result<Texts> take_texts(Database& database, const VersionRow& row, const Row& hashes) {
  Texts texts;
  std::string* into[] = {&texts.job, &texts.catalogue, &texts.kept};
  for (std::size_t i = 0; i < 3; ++i) {
    auto text = take_body(database, text_of(hashes.at(i)));
    if (!text) return damaged(database, row, text.error().text);
    *into[i] = std::move(*text);
  }
  if (seal(row, texts) != row.sha256) return damaged(database, row, "its SHA-256 is another one");
  return texts;
}

}  // namespace

Result<NewVersion> new_version(const plan::Job& job, const estimate::Kept& kept, const std::string& name,
                               const std::string& note) {
  if (!is_utf8(name) || !is_utf8(note)) return cannot_keep("its name or its note is not text");
  plan::Job bare = job;
  bare.catalogue = std::make_shared<const catalogue::Catalogue>();
  plan::Job shelf;
  shelf.catalogue = job.catalogue;
  NewVersion made{name, note, files::write_job(bare), files::write_job(shelf), files::write_kept(kept), kept};
  const auto job_back = files::read_job(made.job_text, "");
  if (!job_back) return cannot_keep(job_back.error().text);
  const auto shelf_back = files::read_job(made.catalogue_text, "");
  if (!shelf_back) return cannot_keep("of its catalogue " + shelf_back.error().text);
  const auto kept_back = files::read_kept(made.kept_text, "");
  if (!kept_back) return cannot_keep("of its estimate " + kept_back.error().text);
  if (!plan::same(*job_back, bare) || !plan::same(*shelf_back, shelf) || *kept_back != kept)
    return cannot_keep("what was written does not read back as the same");
  return made;
}

Result<VersionRow> put_version(Database& database, std::int64_t job, const NewVersion& version) {
  const auto last =
      database.rows("SELECT (SELECT max(number) FROM versions WHERE job = jobs.id) FROM jobs WHERE id = ?", {job});
  if (!last) return std::unexpected(last.error());
  if (last->empty())
    return problem::fault("job-none", "the job book has no job " + std::to_string(job), "choose another job",
                          {{}, database.path(), 0, 0, {}});
  VersionRow row{0,
                 job,
                 whole_of(last->front().front()) + 1,
                 version.name,
                 version.note,
                 utc_now(),
                 version.kept.program,
                 version.kept.currency,
                 version.kept.decimals,
                 version.kept.price,
                 version.kept.total,
                 version.kept.final,
                 {},
                 0};
  row.sha256 = seal(row, {version.job_text, version.catalogue_text, version.kept_text});
  Out out{{job, row.number}};
  version_columns(out, row);
  for (const std::string* text : {&version.job_text, &version.catalogue_text, &version.kept_text}) {
    const auto hash = put_body(database, *text, true);
    if (!hash) return std::unexpected(hash.error());
    out(*hash);
  }
  if (auto done =
          database.run("INSERT INTO versions (job, number, name, note, made, program, currency, decimals, price,"
                       " total, final, sha256, job_text, catalogue_text, kept_text)"
                       " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                       out.values);
      !done)
    return std::unexpected(done.error());
  const auto id = database.rows("SELECT last_insert_rowid()");
  if (!id) return std::unexpected(id.error());
  row.id = whole_of(id->front().front());
  return row;
}

Result<std::vector<VersionRow>> take_versions(Database& database, std::int64_t job) {
  const auto rows = database.rows(
      "SELECT id, job, number, name, note, made, program, currency, decimals, price, total, final, sha256,"
      " (SELECT count(*) FROM documents WHERE version = versions.id) FROM versions WHERE job = ? ORDER BY number DESC",
      {job});
  if (!rows) return std::unexpected(rows.error());
  std::vector<VersionRow> versions;
  for (const Row& row : *rows) versions.push_back(row_of(row));
  return versions;
}

Result<Version> take_version(Database& database, std::int64_t id) {
  const auto rows = database.rows(
      "SELECT id, job, number, name, note, made, program, currency, decimals, price, total, final, sha256,"
      " (SELECT count(*) FROM documents WHERE version = versions.id), job_text, catalogue_text, kept_text"
      " FROM versions WHERE id = ?",
      {id});
  if (!rows) return std::unexpected(rows.error());
  if (rows->empty())
    return problem::fault("version-none", "the job book has no version " + std::to_string(id), "choose another version",
                          {{}, database.path(), 0, 0, {}});
  const Row& row = rows->front();
  VersionRow version = row_of(row);
  const auto texts = take_texts(database, version, {row.at(14), row.at(15), row.at(16)});
  if (!texts) return std::unexpected(texts.error());
  auto job = files::read_job(texts->job, database.path());
  if (!job) return damaged(database, version, job.error().text);
  const auto shelf = files::read_job(texts->catalogue, database.path());
  if (!shelf) return damaged(database, version, "of its catalogue " + shelf.error().text);
  job->catalogue = shelf->catalogue;
  auto kept = files::read_kept(texts->kept, database.path());
  if (!kept) return damaged(database, version, "of its estimate " + kept.error().text);
  if (!agrees(version, *kept)) return damaged(database, version, "its totals are not those of its estimate");
  return Version{std::move(version), std::move(*job), std::move(*kept)};
}

Result<bool> has_versions(Database& database, std::int64_t job) {
  const auto rows = database.rows("SELECT count(*) FROM versions WHERE job = ?", {job});
  if (!rows) return std::unexpected(rows.error());
  return whole_of(rows->front().front()) > 0;
}

}  // namespace store
