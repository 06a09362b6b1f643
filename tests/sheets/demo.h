// The demo jobs with all results, computed once for the program.
#pragma once

#include <memory>

#include "files/files.h"
#include "results/results.h"

namespace demo {

inline plan::Job job(const std::string& name) {
  const auto text = files::read_file(std::string(HOUSE_ROOT) + "/demo-jobs/" + name + ".json");
  return files::read_job(text.value(), name + ".json").value();
}
inline const results::Results& results(const std::string& name = "pool-terrace-a") {
  static std::map<std::string, results::Results> known;
  const auto found = known.find(name);
  if (found != known.end()) return found->second;
  return known.emplace(name, results::compute(std::make_shared<const plan::Job>(job(name)))).first->second;
}

}  // namespace demo
