// What the tests along edges share: a small invented catalogue, the demo's pool, jobs in a few lines.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <memory>
#include <numbers>
#include <string>
#include <vector>

#include "plan/site.h"
#include "takeoff/edges/edges.h"

namespace site_kit {

using units::Length;
inline constexpr double in = 0.0254;  // metres, exact
inline constexpr double ft = 0.3048;  // metres, exact
inline constexpr double pi = std::numbers::pi;

// 64ths of an inch, so that every size of the trade is exact.
inline Length inches(double value) { return Length::of_steps(static_cast<std::int64_t>(value * 8128)); }
inline geometry::Point at(double x, double y) { return {inches(x), inches(y)}; }

// tan(sweep / 4) of an arc of so many radians, counter-clockwise positive.
inline double bulge(double sweep) { return std::tan(sweep / 4); }

struct Corner {
  double x = 0;
  double y = 0;
  double bulge = 0;
};
inline geometry::Ring ring(const std::vector<Corner>& corners) {
  geometry::Ring edges;
  for (const Corner& corner : corners) edges.push_back({at(corner.x, corner.y), corner.bulge, {}});
  return edges;
}
inline plan::DrawnShape shape(const std::vector<Corner>& corners) { return {plan::DrawnRing{ring(corners), {}}}; }
inline plan::DrawnLine line(const std::vector<Corner>& corners, double x, double y) {
  return {ring(corners), at(x, y), {}};
}

struct Book {
  std::shared_ptr<catalogue::Catalogue> all = std::make_shared<catalogue::Catalogue>();

  catalogue::Item& add(const std::string& id, const std::string& kind) {
    auto item = std::make_shared<catalogue::Item>();
    item->id = id;
    item->kind = kind;
    item->unit = "piece";
    catalogue::Item& kept = *item;
    all->items[id] = std::move(item);
    return kept;
  }
  catalogue::Item& sized(const std::string& id, const std::string& kind, double l, double w, double h, double joint) {
    catalogue::Item& item = add(id, kind);
    item.length = inches(l);
    item.width = inches(w);
    item.height = inches(h);
    item.joint = inches(joint);
    return item;
  }
  void rate(const std::string& id, const std::string& condition = {}, const std::string& line_kind = {}) {
    catalogue::Rate rate;
    rate.id = id;
    rate.condition = condition;
    rate.line_kind = line_kind;
    all->rates[id] = rate;
  }
  void limit(const std::string& id, std::optional<double> least, std::optional<double> greatest,
             std::optional<double> usual, const std::string& unit) {
    catalogue::Limit limit;
    limit.id = id;
    limit.least = least;
    limit.greatest = greatest;
    limit.usual = usual;
    limit.unit = unit;
    all->limits[id] = limit;
  }
};

inline plan::Job job(const Book& book, const std::vector<plan::Element>& elements) {
  plan::Job made;
  made.catalogue = book.all;
  for (const plan::Element& element : elements) made = plan::with(made, element);
  return made;
}

// The ground of one element as its trade reads it, made by hand so that a test here stands on these trades alone.
inline plan::Ground ground(const plan::Element& element) {
  plan::Ground made;
  made.element = std::make_shared<const plan::Element>(element);
  const auto area = [&](const plan::DrawnShape& drawn) {
    geometry::Drawn rings;
    const std::uint64_t mark = plan::mark(element.id);
    std::int32_t number = 0;
    for (const plan::DrawnRing& one : drawn) {
      rings.push_back(one.edges);
      for (geometry::Edge& edge : rings.back()) edge.origin = {mark, number++};
    }
    auto shape_of = geometry::shape(rings);
    EXPECT_TRUE(shape_of.has_value());
    if (shape_of) made.drawn = made.footprint = made.net = std::move(shape_of->region);
  };
  if (const auto* pool_of = std::get_if<plan::Pool>(&element.kind)) area(pool_of->outline);
  if (const auto* paved = std::get_if<plan::PavedArea>(&element.kind)) area(paved->outline);
  if (const auto* run = std::get_if<plan::EdgeRun>(&element.kind)) {
    auto path = geometry::Path::make(run->line.edges, run->line.end);
    EXPECT_TRUE(path.has_value());
    if (path) made.path = std::move(*path);
  }
  return made;
}

inline double measure(const takeoff::Share& share, const std::string& name) {
  const auto value = share.measures.get(name);
  EXPECT_TRUE(value.has_value()) << name;
  return value.value_or(-1);
}
inline const takeoff::Line* line_of(const takeoff::Share& share, const std::string& item) {
  const auto found = std::ranges::find(share.lines, item, &takeoff::Line::item);
  return found == share.lines.end() ? nullptr : &*found;
}
inline double quantity(const takeoff::Share& share, const std::string& item) {
  double sum = 0;
  bool any = false;
  for (const takeoff::Line& line : share.lines) {
    if (line.item != item) continue;
    sum += line.working.amount().value;
    any = true;
  }
  EXPECT_TRUE(any) << item;
  return sum;
}
inline const problem::Problem* said(const takeoff::Share& share, const std::string& code) {
  const auto found = std::ranges::find(share.problems, code, &problem::Problem::code);
  return found == share.problems.end() ? nullptr : &*found;
}
inline std::string all_said(const takeoff::Share& share) {
  std::string text;
  for (const problem::Problem& one : share.problems) text += problem::sentence(one) + "\n";
  return text;
}
inline double task(const takeoff::Share& share, const std::string& rate) {
  double sum = 0;
  for (const takeoff::Task& one : share.tasks)
    if (one.rate == rate) sum += one.working.amount().value;
  return sum;
}
inline bool fact(const takeoff::Share& share, const std::string& word) {
  return std::ranges::find(share.facts, word) != share.facts.end();
}

// The demo's pool: four arcs that meet without a kink, radii 80, 95 (the waist, centre in the deck), 45 and 360 in.
// Their turns follow from the outward directions (0, -1), (-3/5, 4/5), (3/5, 4/5), (-3/5, -4/5) where they meet.
inline plan::DrawnShape pool_shape() {
  const double waist = 2 * std::asin(0.6);  // 73.740 degrees
  const double long_side = std::asin(0.6);  // 36.870
  return shape({{318, 72, bulge(pi + long_side)},
                {270, 216, bulge(-waist)},
                {156, 216, bulge(pi)},
                {102, 144, bulge(long_side)}});
}
inline plan::Element pool(plan::Pool what = {}) {
  what.outline = pool_shape();
  return {"P", "pool", what};
}

}  // namespace site_kit
