#include "store/jobs.h"

#include <algorithm>
#include <set>
#include <stdexcept>

#include "files/files.h"

namespace store {

plan::Job demo_job(const std::string& name) {
  const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/" + name + ".json";
  return good(files::read_job(good(files::read_file(path)), path));
}

std::vector<std::string> demo_names() { return {"pool-terrace-a", "pool-terrace-b", "bakery-court"}; }

plan::Job edited(const plan::Job& job, int n) {
  const auto count = job.elements.size();
  const plan::ElementPtr chosen = job.elements[static_cast<std::size_t>(n) % count];
  const std::string number = std::to_string(n);
  if (n % 11 == 3) return plan::with(job, {"N" + number, "added", plan::Note{{}, "note " + number}});
  if (n % 11 == 7 && count > 5) return plan::without(job, chosen->id);
  if (n % 11 == 9) {
    plan::Job moved = job;
    std::ranges::rotate(moved.elements, moved.elements.begin() + static_cast<std::ptrdiff_t>(count / 2));
    return moved;
  }
  plan::Element renamed = *chosen;
  renamed.name = "edit " + number;
  plan::Job after = plan::with(job, std::move(renamed));
  if (n % 11 == 5) after.heading.notes = "edit " + number;
  return after;
}

JobBook opened(const std::string& folder) { return good(JobBook::open(folder)); }

void back_to_form(const std::string& path, int form) {
  auto database = good(Database::open(path));
  well(database.run("PRAGMA foreign_keys = OFF"));
  std::set<std::string> stay{"catalogue_note", "suppliers", "items",     "item_details", "pack_contents",
                             "patterns",       "layers",    "limits",    "rates",        "pattern_pieces",
                             "build_ups",      "cautions",  "junctions", "hold_points",  "site_rules"};
  if (form >= 3) stay.insert({"bodies", "jobs", "job_elements", "settings"});
  if (form >= 6) stay.insert({"versions", "documents", "catalogue_changes", "catalogue_steps", "catalogue_retired"});
  const auto tables =
      good(database.rows("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"));
  for (const Row& row : tables) {
    const auto& name = std::get<std::string>(row.at(0));
    if (!stay.contains(name)) well(database.run(("DROP TABLE " + name).c_str()));
  }
  if (form == 3)
    for (const char* column : {"number", "state", "archived", "changed"})
      well(database.run((std::string("ALTER TABLE jobs DROP COLUMN ") + column).c_str()));
  well(database.run(("PRAGMA user_version = " + std::to_string(form)).c_str()));
}

}  // namespace store
