// Random jobs for property tests: every field of every table is drawn, so that a new field is tested without a new line
// here.
#pragma once

#include <rapidcheck.h>

#include <bit>
#include <cmath>
#include <utility>

#include "files/job_fields.h"

namespace random_job {

inline int below(int count) { return *rc::gen::inRange(0, count); }

// Texts with what JSON has to escape, and with characters of two to four bytes.
inline void fill(std::string& into) {
  static const std::vector<std::string> parts{"a",    "Z",    " ", "\"", "\\", "/",  "\n", "\t",
                                              "\x01", "\x7f", "é", "½",  "′",  "🙂", "0"};
  into.clear();
  for (int count = below(6); count > 0; --count)
    into += parts[static_cast<std::size_t>(below(static_cast<int>(parts.size())))];
}
inline void fill(bool& into) { into = below(2) == 1; }
inline void fill(int& into) { into = *rc::gen::inRange(-1'000'000'000, 1'000'000'001); }
inline void fill(double& into) {
  into = std::bit_cast<double>(*rc::gen::arbitrary<std::uint64_t>());
  if (!std::isfinite(into) || into == 0) into = 0.1;
}
inline void fill(units::Length& into) {
  into = units::Length::of_steps(*rc::gen::inRange(-files::most_steps, files::most_steps + 1));
}
inline void fill(units::Angle& into) { into = units::Angle::degrees(below(3) * 22.5); }
inline void fill(units::Money& into) { into = units::Money::of_coins(*rc::gen::inRange(0LL, files::most_coins)); }
inline void fill(geometry::Point& into) {
  fill(into.x);
  fill(into.y);
}
inline void fill(catalogue::CellSide& into) {
  using Of = catalogue::CellSide::Of;
  into = {};
  into.of = static_cast<Of>(below(3));
  if (into.of == Of::fixed) {
    fill(into.fixed);
  } else {
    into.parts = 1 + below(9);
  }
}
inline void fill_edges(geometry::Ring& edges) {
  for (int count = below(5); count > 0; --count) {
    geometry::Edge edge;
    fill(edge.from);
    if (below(3) == 0) fill(edge.bulge);
    edges.push_back(edge);
  }
}
inline void fill_through(std::vector<geometry::Point>& points) {
  for (int count = 1 + below(4); count > 0; --count) fill(points.emplace_back());
}
inline void fill(plan::DrawnRing& into) { below(4) == 0 ? fill_through(into.through) : fill_edges(into.edges); }
inline void fill(plan::DrawnLine& into) {
  if (below(4) == 0) return fill_through(into.through);
  fill_edges(into.edges);
  fill(into.end);
}
// Of an option: a note stands for all kinds, which the job's own list goes through.
inline void fill(plan::ElementPtr& into) {
  plan::Note note;
  fill(note.at);
  fill(note.text);
  into = std::make_shared<const plan::Element>(plan::Element{"element of an option", {}, note});
}
inline void fill(std::map<std::string, std::string>& into) {
  for (int count = below(3); count > 0; --count) {
    std::string name;
    fill(name);
    fill(into[name]);
  }
}

template <files::Worded T>
void fill(T& into);
template <files::Tabled T>
void fill(T& into);
template <class T>
void fill(std::optional<T>& into);
template <class T>
void fill(std::vector<T>& into);

template <files::Worded T>
void fill(T& into) {
  const auto table = words(files::Type<T>{});
  into = table[static_cast<std::size_t>(below(static_cast<int>(table.size())))].value;
}
template <files::Tabled T>
void fill(T& into) {
  const auto one = [&](const auto& field) {
    if (below(3) > 0) fill(into.*field.member);
  };
  std::apply([&](const auto&... field) { (one(field), ...); }, fields(files::Type<T>{}));
}
template <class T>
void fill(std::optional<T>& into) {
  into.reset();
  if (below(2) == 1) fill(into.emplace());
}
template <class T>
void fill(std::vector<T>& into) {
  into.clear();
  for (int count = below(3); count > 0; --count) {
    T entry{};
    fill(entry);
    into.push_back(std::move(entry));
  }
}

// Items and patterns have to be possible ones (catalogue::check); what a draw made impossible is set right.
void fill_item(catalogue::Item& item, int number);
void fill_pattern(catalogue::Pattern& pattern, int number);
catalogue::Catalogue catalogue();
plan::Job job();

}  // namespace random_job
