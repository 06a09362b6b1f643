#include "store/migrations.h"

#include <filesystem>

#include "store/backup.h"
#include "store/catalogue_changes.h"
#include "store/copy.h"
#include "store/ledger_tables.h"
#include "store/now.h"

namespace store {

using problem::Result;

namespace {

struct Step {
  int form;
  std::vector<const char*> statements;  // the last writes the form's number, so that it stands or falls with the rest
};

// Lengths are whole steps of 1/320 mm, money is whole coins. `place` is the order of a list.
std::vector<const char*> catalogue_tables() {
  return {
      "PRAGMA application_id = 1198670703",
      "CREATE TABLE catalogue_note (note TEXT NOT NULL) STRICT",
      "CREATE TABLE suppliers (id TEXT PRIMARY KEY, name_en TEXT NOT NULL, name_es TEXT NOT NULL, sells TEXT NOT NULL,"
      " delivery INTEGER NOT NULL, lead_days INTEGER NOT NULL, least_order TEXT NOT NULL, notes TEXT NOT NULL) STRICT",
      "CREATE TABLE items (id TEXT PRIMARY KEY, kind TEXT NOT NULL, name_en TEXT NOT NULL, name_es TEXT NOT NULL,"
      " supplier TEXT NOT NULL, unit TEXT NOT NULL, length INTEGER, width INTEGER, height INTEGER, joint INTEGER,"
      " mass_kg REAL, density_kg_m3 REAL, void_share REAL, sold_by TEXT NOT NULL, pack_kind TEXT NOT NULL,"
      " pack_pieces_per_layer INTEGER NOT NULL, pack_layers INTEGER NOT NULL, pack_pieces INTEGER NOT NULL,"
      " price INTEGER, price_unit TEXT, price_date TEXT, price_by_others INTEGER, breakage REAL NOT NULL,"
      " rule TEXT NOT NULL, rule_source TEXT NOT NULL, notes TEXT NOT NULL) STRICT",
      "CREATE TABLE item_details (item TEXT NOT NULL REFERENCES items ON DELETE CASCADE, key TEXT NOT NULL,"
      " value TEXT NOT NULL, PRIMARY KEY (item, key)) STRICT",
      "CREATE TABLE pack_contents (pack TEXT NOT NULL REFERENCES items ON DELETE CASCADE, place INTEGER NOT NULL,"
      " piece TEXT NOT NULL, pieces INTEGER NOT NULL, PRIMARY KEY (pack, place)) STRICT",
      "CREATE TABLE patterns (id TEXT PRIMARY KEY, name_en TEXT NOT NULL, name_es TEXT NOT NULL,"
      " cell_x_of INTEGER NOT NULL, cell_x_parts INTEGER NOT NULL, cell_x_fixed INTEGER NOT NULL,"
      " cell_y_of INTEGER NOT NULL, cell_y_parts INTEGER NOT NULL, cell_y_fixed INTEGER NOT NULL,"
      " direction REAL NOT NULL, along INTEGER NOT NULL, across_x INTEGER NOT NULL, across_y INTEGER NOT NULL,"
      " herringbone INTEGER NOT NULL, fits TEXT NOT NULL, advice TEXT NOT NULL) STRICT",
      "CREATE TABLE pattern_pieces (pattern TEXT NOT NULL REFERENCES patterns ON DELETE CASCADE, place INTEGER NOT "
      "NULL,"
      " size TEXT NOT NULL, x INTEGER NOT NULL, y INTEGER NOT NULL, w INTEGER NOT NULL, h INTEGER NOT NULL,"
      " PRIMARY KEY (pattern, place)) STRICT",
      "CREATE TABLE build_ups (id TEXT PRIMARY KEY, use TEXT NOT NULL, name_en TEXT NOT NULL, name_es TEXT NOT NULL,"
      " surface TEXT NOT NULL, water TEXT NOT NULL, notes TEXT NOT NULL) STRICT",
      "CREATE TABLE layers (build_up TEXT NOT NULL REFERENCES build_ups ON DELETE CASCADE, place INTEGER NOT NULL,"
      " role TEXT NOT NULL, item TEXT NOT NULL, thickness INTEGER, past_edge INTEGER NOT NULL, lift INTEGER,"
      " source TEXT NOT NULL, notes TEXT NOT NULL, PRIMARY KEY (build_up, place)) STRICT",
      "CREATE TABLE limits (id TEXT PRIMARY KEY, part TEXT NOT NULL, name_en TEXT NOT NULL, name_es TEXT NOT NULL,"
      " least REAL, greatest REAL, usual REAL, unit TEXT NOT NULL, source TEXT NOT NULL, known TEXT NOT NULL,"
      " notes TEXT NOT NULL) STRICT",
      "CREATE TABLE rates (id TEXT PRIMARY KEY, stage TEXT NOT NULL, line_kind TEXT NOT NULL, name_en TEXT NOT NULL,"
      " name_es TEXT NOT NULL, si_unit TEXT NOT NULL, hours_per_si_unit REAL NOT NULL, crew TEXT NOT NULL,"
      " machine TEXT NOT NULL, condition TEXT NOT NULL, source TEXT NOT NULL, known TEXT NOT NULL,"
      " notes TEXT NOT NULL) STRICT",
      "CREATE TABLE junctions (place INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, side_a TEXT NOT NULL,"
      " side_b TEXT NOT NULL, condition TEXT NOT NULL, name_en TEXT NOT NULL, name_es TEXT NOT NULL,"
      " built TEXT NOT NULL, joint INTEGER, rod TEXT NOT NULL, sealant TEXT NOT NULL, filler TEXT NOT NULL,"
      " edge TEXT NOT NULL, other TEXT NOT NULL, source TEXT NOT NULL, known TEXT NOT NULL,"
      " notes TEXT NOT NULL) STRICT",
      "CREATE TABLE hold_points (place INTEGER PRIMARY KEY, stage TEXT NOT NULL, look_at TEXT NOT NULL,"
      " bound TEXT NOT NULL, before TEXT NOT NULL, who TEXT NOT NULL, source TEXT NOT NULL,"
      " applies TEXT NOT NULL) STRICT",
      "CREATE TABLE cautions (place INTEGER PRIMARY KEY, stage TEXT NOT NULL, text TEXT NOT NULL, who TEXT NOT NULL,"
      " source TEXT NOT NULL, applies TEXT NOT NULL) STRICT",
      "PRAGMA user_version = 1",
  };
}

// Books made before this form have no rules for site marks; the catalogue offers the starter's.
std::vector<const char*> site_rule_table() {
  return {
      "CREATE TABLE site_rules (place INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, mark TEXT NOT NULL,"
      " against TEXT NOT NULL, distance INTEGER, per_size REAL NOT NULL, severity TEXT NOT NULL, text TEXT NOT NULL,"
      " who TEXT NOT NULL, source TEXT NOT NULL) STRICT",
      "PRAGMA user_version = 2",
  };
}

// Jobs, element by element, so that an edit writes the row it changed. `head` is a job file without elements and
// catalogue, `catalogue` the body of a job file with nothing but its catalogue, `text` an element as the job file
// writes it. `place` is the order of drawing and may have gaps; `written` grows with every write of any job. A body
// that is `kept` stays whether or not a job names it.
std::vector<const char*> job_tables() {
  return {
      "CREATE TABLE bodies (sha256 TEXT PRIMARY KEY, kept INTEGER NOT NULL, bytes BLOB NOT NULL) STRICT",
      "CREATE TABLE jobs (id INTEGER PRIMARY KEY AUTOINCREMENT, name TEXT NOT NULL, customer TEXT NOT NULL,"
      " place TEXT NOT NULL, edits INTEGER NOT NULL, written INTEGER NOT NULL,"
      " catalogue TEXT NOT NULL REFERENCES bodies, head TEXT NOT NULL) STRICT",
      "CREATE INDEX jobs_written ON jobs (written)",
      "CREATE INDEX jobs_catalogue ON jobs (catalogue)",
      "CREATE TABLE job_elements (job INTEGER NOT NULL REFERENCES jobs ON DELETE CASCADE, id TEXT NOT NULL,"
      " place INTEGER NOT NULL, text TEXT NOT NULL, PRIMARY KEY (job, id)) STRICT",
      "CREATE TABLE settings (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT",
      "PRAGMA user_version = 3",
  };
}

// Versions with their three texts as bodies, what was printed of them, and what the list of jobs shows. Nothing changes
// or drops a version or a document, so a job that has one stays. A job written before this form has its number in its
// head.
std::vector<const char*> version_tables() {
  return {
      "ALTER TABLE jobs ADD COLUMN number TEXT NOT NULL DEFAULT ''",
      "ALTER TABLE jobs ADD COLUMN state TEXT NOT NULL DEFAULT 'asked'",
      "ALTER TABLE jobs ADD COLUMN archived INTEGER NOT NULL DEFAULT 0",
      "ALTER TABLE jobs ADD COLUMN changed TEXT NOT NULL DEFAULT ''",
      "UPDATE jobs SET number = coalesce(json_extract(head, '$.heading.number'), '') WHERE json_valid(head)",
      "CREATE TABLE versions (id INTEGER PRIMARY KEY AUTOINCREMENT, job INTEGER NOT NULL REFERENCES jobs,"
      " number INTEGER NOT NULL, name TEXT NOT NULL, note TEXT NOT NULL, made TEXT NOT NULL, program TEXT NOT NULL,"
      " currency TEXT NOT NULL, decimals INTEGER NOT NULL, price INTEGER NOT NULL, total INTEGER NOT NULL,"
      " final INTEGER NOT NULL, sha256 TEXT NOT NULL, job_text TEXT NOT NULL REFERENCES bodies,"
      " catalogue_text TEXT NOT NULL REFERENCES bodies, kept_text TEXT NOT NULL REFERENCES bodies,"
      " UNIQUE (job, number)) STRICT",
      "CREATE TABLE documents (id INTEGER PRIMARY KEY AUTOINCREMENT, version INTEGER NOT NULL REFERENCES versions,"
      " name TEXT NOT NULL, language TEXT NOT NULL, made TEXT NOT NULL, size INTEGER NOT NULL,"
      " body TEXT NOT NULL REFERENCES bodies) STRICT",
      "CREATE INDEX documents_version ON documents (version)",
      "PRAGMA user_version = 4",
  };
}

const std::vector<Step>& steps() {
  static const std::vector<Step> all{
      {1, catalogue_tables()}, {2, site_rule_table()},         {3, job_tables()},
      {4, version_tables()},   {6, catalogue_change_tables()}, {7, ledger_table_statements()}};
  return all;
}

Result<void> do_steps(Database& database, int from) {
  auto transaction = Transaction::begin(database);
  if (!transaction) return std::unexpected(transaction.error());
  for (const Step& step : steps()) {
    if (step.form <= from) continue;
    for (const char* statement : step.statements)
      if (auto done = database.run(statement); !done) return done;
  }
  return transaction->commit();
}

Result<void> try_on_a_copy(Database& database, const std::string& trial, int from) {
  if (auto copied = copy_to(database, trial); !copied) return copied;
  auto copy = Database::open(trial);
  if (!copy) return std::unexpected(copy.error());
  if (auto done = do_steps(*copy, from); !done) return done;
  return check_whole(*copy);
}

Result<void> prove(Database& database, int from) {
  const std::filesystem::path path(database.path());
  if (auto kept = back_up(database, path.parent_path().string(), Why::new_form, utc_now()); !kept)
    return std::unexpected(kept.error());
  const std::string trial = database.path() + ".trial";
  auto tried = try_on_a_copy(database, trial, from);
  std::error_code error;
  for (const char* tail : {"", "-journal"}) std::filesystem::remove(trial + tail, error);
  return tried;
}

}  // namespace

int newest_form() { return steps().back().form; }

Result<void> check_form(Database& database) {
  const auto form = database.form();
  if (!form) return std::unexpected(form.error());
  if (*form <= newest_form()) return {};
  return problem::fault("book-newer",
                        "the job book was written by a newer Groundcourse (its form is " + std::to_string(*form) +
                            ", this program knows up to " + std::to_string(newest_form()) + ")",
                        "use the newer program", {{}, database.path(), 0, 0, {}});
}

Result<void> migrate(Database& database) {
  if (auto known = check_form(database); !known) return known;
  const auto form = database.form();
  if (!form) return std::unexpected(form.error());
  if (*form == newest_form()) return {};
  // A file just made holds nothing that could be lost.
  if (*form > 0)
    if (auto proved = prove(database, *form); !proved) return proved;
  return do_steps(database, *form);
}

}  // namespace store
