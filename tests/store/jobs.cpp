#include "store/jobs.h"

#include <algorithm>
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

}  // namespace store
