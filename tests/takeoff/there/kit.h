// What the tests of things that are there share: marks, removals, rules in a line or two, all in inches.
#pragma once

#include <gtest/gtest.h>

#include "takeoff/ground/yard.h"
#include "takeoff/there/there.h"

namespace kit {

using units::Length;
inline constexpr double in = units::metres_per_inch;
inline constexpr double ft = units::metres_per_foot;
inline constexpr double sq_ft = units::square_metres_per_square_foot;
inline constexpr double cu_ft = units::cubic_metres_per_cubic_foot;

inline plan::DrawnShape shape(geometry::Ring ring) { return {{std::move(ring), {}}}; }
inline plan::DrawnLine line(std::vector<geometry::Point> points) {
  plan::DrawnLine made;
  made.end = points.back();
  points.pop_back();
  for (const geometry::Point point : points) made.edges.push_back({point, 0, {}});
  return made;
}

inline plan::Element removal(std::string id, geometry::Ring ring, std::string what, std::string fate, long inches = 4) {
  plan::Removal made;
  made.outline = shape(std::move(ring));
  made.what = std::move(what);
  made.fate = std::move(fate);
  made.thickness = Length::inches(inches);
  return {std::move(id), "", made};
}

inline plan::Element marked(std::string id, std::string what, std::vector<geometry::Point> points) {
  plan::SiteMark made;
  made.what = std::move(what);
  if (points.size() == 1)
    made.points = std::move(points);
  else
    made.line = line(std::move(points));
  return {std::move(id), "", made};
}

inline plan::Element tree(std::string id, geometry::Ring ring, std::optional<long> trunk_inches) {
  plan::KeepOut made;
  made.outline = shape(std::move(ring));
  made.what = "tree";
  if (trunk_inches) made.trunk = Length::inches(*trunk_inches);
  return {std::move(id), "", made};
}

inline plan::Element building(std::string id, geometry::Ring ring, std::optional<long> footing_inches) {
  plan::Building made;
  made.outline = shape(std::move(ring));
  if (footing_inches) made.footing_depth = Length::inches(*footing_inches);
  return {std::move(id), "", made};
}

inline catalogue::SiteRule rule(std::string id, std::string mark, std::string against, long inches,
                                double per_size = 0) {
  return {std::move(id), std::move(mark), std::move(against), Length::inches(inches), per_size, "flag",
          "it is near",  "somebody",      "somewhere"};
}

inline plan::Job with_rules(plan::Job job, std::vector<catalogue::SiteRule> rules) {
  auto all = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  all->site_rules = std::move(rules);
  job.catalogue = all;
  return job;
}

inline std::vector<takeoff::Share> marks(const plan::Job& job, const takeoff::levels::Terrain& terrain = {}) {
  const plan::Site site = plan::site(job);
  return takeoff::there::marks(job, site, takeoff::ground::bodies(job, site), terrain);
}
inline takeoff::Share dangers(const plan::Job& job, const takeoff::levels::Terrain& terrain = {}) {
  const plan::Site site = plan::site(job);
  return takeoff::there::dangers(job, site, takeoff::ground::bodies(job, site), terrain);
}

// The texts of one code, all shares together.
inline std::vector<std::string> texts(const std::vector<takeoff::Share>& shares, const std::string& code) {
  std::vector<std::string> found;
  for (const takeoff::Share& share : shares)
    for (const problem::Problem& one : share.problems)
      if (one.code == code) found.push_back(one.text);
  return found;
}
inline std::vector<std::string> texts(const takeoff::Share& share, const std::string& code) {
  return texts(std::vector<takeoff::Share>{share}, code);
}
inline bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

// Ground or finished surface: z = height + east x, metres, over an oblong of inches.
inline takeoff::levels::SurfacePtr slope(double height, double east, double north, long x0, long y0, long x1, long y1) {
  geometry::Facet facet;
  const auto place = [](long x, long y) {
    return geometry::Vec{static_cast<double>(x) * in, static_cast<double>(y) * in};
  };
  facet.ring = {place(x0, y0), place(x1, y0), place(x1, y1), place(x0, y1)};
  facet.plane = {height, east, north};
  return std::make_shared<const geometry::Surface>(geometry::Point{}, std::vector<geometry::Facet>{facet});
}

}  // namespace kit
