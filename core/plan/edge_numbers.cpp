#include "plan/edge_numbers.h"

#include <algorithm>

namespace plan {

namespace {

template <class Change>
void change_numbers(Element& element, Change change) {
  auto* area = std::get_if<PavedArea>(&element.kind);
  if (area == nullptr) return;
  std::erase_if(area->edges, [&](EdgeChoice& choice) { return !change(choice.edge); });
  if (!area->finish) return;
  std::erase_if(area->finish->from,
                [&](FallFrom& from) { return from.element.empty() && from.edge && !change(*from.edge); });
}

}  // namespace

std::size_t edge_number(const Element& element, Corner start) {
  std::size_t before = 0;
  if (start.ring > 0) {
    for (const Grip& grip : corners(element)) before += grip.corner.ring >= 0 && grip.corner.ring < start.ring ? 1 : 0;
  }
  return before + static_cast<std::size_t>(std::max(0, start.number));
}

void edge_was_split(Element& element, std::size_t number) {
  const int at = static_cast<int>(number);
  std::vector<EdgeChoice> also;
  if (const auto* area = std::get_if<PavedArea>(&element.kind)) {
    for (const EdgeChoice& choice : area->edges) {
      if (choice.edge == at) also.push_back({at + 1, choice.junction});
    }
  }
  change_numbers(element, [at](int& edge) {
    if (edge > at) ++edge;
    return true;
  });
  if (auto* area = std::get_if<PavedArea>(&element.kind)) {
    area->edges.insert(area->edges.end(), also.begin(), also.end());
    std::ranges::stable_sort(area->edges, {}, &EdgeChoice::edge);
  }
}

void edge_was_taken(Element& element, std::size_t number) {
  const int at = static_cast<int>(number);
  change_numbers(element, [at](int& edge) {
    if (edge == at) return false;
    if (edge > at) --edge;
    return true;
  });
}

void renumber(Element& element, const std::vector<int>& now) {
  change_numbers(element, [&now](int& edge) {
    if (edge < 0 || static_cast<std::size_t>(edge) >= now.size()) return false;
    edge = now[static_cast<std::size_t>(edge)];
    return edge >= 0;
  });
}

}  // namespace plan
