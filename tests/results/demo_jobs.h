// The demo jobs, read once and computed, and the answers to the pool terrace that were worked out apart from the
// program.
#pragma once

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "files/csv.h"
#include "files/files.h"
#include "results/results.h"
#include "units/number.h"

namespace demo {

inline std::string text_of(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

inline plan::Job job(const std::string& name) {
  const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/" + name + ".json";
  auto read = files::read_job(text_of(path), path);
  if (read) return std::move(*read);
  ADD_FAILURE() << problem::sentence(read.error());
  plan::Job none;
  none.catalogue = std::make_shared<const catalogue::Catalogue>();
  return none;
}

inline results::Results compute(plan::Job job) {
  return results::compute(std::make_shared<const plan::Job>(std::move(job)));
}

inline double measure(const results::Results& results, const std::string& element, const std::string& name) {
  for (const takeoff::Measures& measures : results.takeoff.measures)
    if (measures.element == element)
      if (const auto value = measures.get(name)) return *value;
  ADD_FAILURE() << element << " has no " << name;
  return -1;
}

// demo-answers.csv: worked by plain formulas and by clipping every unit, see its column `method`.
inline double answer(const std::string& version, const std::string& element, const std::string& name) {
  static const auto table =
      files::read_csv(text_of(std::string(HOUSE_ROOT) + "/tests/data/demo-answers.csv"), "demo-answers.csv");
  for (const files::CsvRow& row : table->rows)
    if (row.cells[0].find(version) != std::string::npos && row.cells[1] == element && row.cells[2] == name)
      return units::read_number(row.cells[3]).value_or(-1);
  ADD_FAILURE() << "no answer " << element << " " << name;
  return -1;
}

inline bool raised(const results::Results& results, const std::string& code, const std::string& element = {}) {
  for (const problem::Problem& said : results.problems())
    if (said.code == code && (element.empty() || said.place.element == element)) return true;
  return false;
}

}  // namespace demo
