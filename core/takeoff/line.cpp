#include "takeoff/line.h"

#include <iterator>

namespace takeoff {

std::optional<double> Measures::get(std::string_view name) const {
  for (const auto& [key, value] : values)
    if (key == name) return value;
  return {};
}

bool Check::passes() const {
  const double value = working.amount().value;
  return at_most ? value <= limit : value >= limit;
}

template <class T>
static void append(std::vector<T>& to, std::vector<T>&& from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

void Share::add(Share other) {
  append(lines, std::move(other.lines));
  append(tasks, std::move(other.tasks));
  append(measures.values, std::move(other.measures.values));
  append(problems, std::move(other.problems));
  append(facts, std::move(other.facts));
  append(checks, std::move(other.checks));
  append(cuts, std::move(other.cuts));
}

}  // namespace takeoff
