#include "plan/edge_numbers.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "geometry/index.h"

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

// The fall from a part of its edge: a height that changes along the edge is that of the part's ends.
FallFrom part_of(FallFrom from, int number, double low, double high) {
  from.edge = number;
  if (!from.height || !from.height_end) return from;
  const Length start = *from.height;
  const auto rise = static_cast<double>((*from.height_end - start).steps());
  from.height = start + Length::of_steps(std::llround(low * rise));
  from.height_end = start + Length::of_steps(std::llround(high * rise));
  return from;
}

std::optional<geometry::Curve> edge_of_number(const Element& element, int number) {
  for (const DrawnEdge& edge : drawn_edges(element)) {
    if (static_cast<int>(edge_number(element, edge.start)) == number) return edge.curve;
  }
  return std::nullopt;
}

// How much of both edges the first is, after one was made two.
double share_of_first(const Element& element, int first) {
  const auto one = edge_of_number(element, first);
  const auto two = edge_of_number(element, first + 1);
  const double both = (one ? one->length() : 0) + (two ? two->length() : 0);
  return both > 0 && one ? one->length() / both : 0.5;
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
  auto* area = std::get_if<PavedArea>(&element.kind);
  if (area == nullptr) return;
  const int at = static_cast<int>(number);
  change_numbers(element, [at](int& edge) {
    if (edge > at) ++edge;
    return true;
  });
  const double share = share_of_first(element, at);
  std::vector<EdgeChoice> choices;
  for (const EdgeChoice& choice : area->edges) {
    choices.push_back(choice);
    if (choice.edge == at) choices.push_back({at + 1, choice.junction});
  }
  area->edges = std::move(choices);
  if (!area->finish) return;
  std::vector<FallFrom> falls;
  for (const FallFrom& from : area->finish->from) {
    const bool both = from.element.empty() && from.edge == at;
    falls.push_back(both ? part_of(from, at, 0, share) : from);
    if (both) falls.push_back(part_of(from, at + 1, share, 1));
  }
  area->finish->from = std::move(falls);
}

void edge_was_taken(Element& element, std::size_t number) {
  const int at = static_cast<int>(number);
  change_numbers(element, [at](int& edge) {
    if (edge == at) return false;
    if (edge > at) --edge;
    return true;
  });
}

void follow_edges(Element& element, const std::vector<EdgePiece>& now) {
  auto* area = std::get_if<PavedArea>(&element.kind);
  if (area == nullptr) return;
  std::vector<EdgeChoice> choices;
  std::vector<FallFrom> falls;
  if (area->finish)
    std::ranges::copy_if(area->finish->from, std::back_inserter(falls),
                         [](const FallFrom& from) { return !from.element.empty() || !from.edge; });
  for (std::size_t i = 0; i < now.size(); ++i) {
    const int number = static_cast<int>(i);
    for (const EdgeChoice& choice : area->edges) {
      if (choice.edge == now[i].was) choices.push_back({number, choice.junction});
    }
    if (!area->finish) continue;
    for (const FallFrom& from : area->finish->from) {
      if (!from.element.empty() || !from.edge || *from.edge != now[i].was) continue;
      const auto old = edge_of_number(element, *from.edge);
      const double low = old ? geometry::nearest(*old, now[i].curve.start).share : 0;
      const double high = old ? geometry::nearest(*old, now[i].curve.end).share : 1;
      falls.push_back(part_of(from, number, low, high));
    }
  }
  area->edges = std::move(choices);
  if (area->finish) area->finish->from = std::move(falls);
}

}  // namespace plan
