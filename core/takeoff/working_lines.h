// A working told as a hand calculation: a line for each part that has a name, in place of one long sentence.
#pragma once

#include <string>
#include <vector>

#include "takeoff/working.h"

namespace takeoff {

// Tells workings that share parts: "weight of the wall = courses 4 x weight of a course 82.325 lb/ft = 329.3 lb/ft".
// Each named part stands on a line of its own above the first line that uses it, and after that only with its number.
// Numbers and units are those of Working::sentence.
class WorkingLines {
 public:
  explicit WorkingLines(units::System system) : system_(system) {}
  // The lines that were not told before; the last one is the working itself, under its name or, where it has none,
  // under `name`.
  std::vector<std::string> tell(const Working& working, const std::string& name);

 private:
  units::System system_;
  std::vector<std::string> told_;
};

}  // namespace takeoff
