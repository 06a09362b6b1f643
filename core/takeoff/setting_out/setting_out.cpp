#include "takeoff/setting_out/setting_out.h"

#include <algorithm>
#include <cmath>

#include "takeoff/setting_out/curves.h"
#include "takeoff/setting_out/tapes.h"

namespace takeoff::setting_out {

namespace {

using geometry::Point;
using units::Length;

constexpr double on_the_line = 0.0005;  // metres: what no tape tells

// What the job says about how it is set out.
struct Rules {
  double out_of_square = 0;     // metres
  double crossing_degrees = 0;  // least
  double tape = 0;              // metres
  double chord_step = 0;        // metres
};

Rules rules(const plan::Job& job, const plan::BaseLine* line) {
  const catalogue::Catalogue& all = *job.catalogue;
  const bool us = job.heading.units == units::System::us;
  Length step = us ? all.length_limit("setting-out-chord-us", Length::feet(1))
                   : all.length_limit("setting-out-chord-metric", Length::millimetres(250));
  if (line && line->chord_step && *line->chord_step > Length()) step = *line->chord_step;
  return {all.length_limit("setting-out-square", Length::inch_64ths(16)).metres().si(),
          all.number_limit("setting-out-crossing", 15),
          all.length_limit("setting-out-tape", Length::feet(100)).metres().si(), step.metres().si()};
}

problem::Problem notice(const plan::ElementId& of, const char* code, std::string text, std::string mend) {
  return {problem::Severity::notice, code, std::move(text), std::move(mend), {of, {}, 0, 0, {}}};
}

// The first base line drawn that has a length.
const plan::BaseLine* base_line(const plan::Job& job, SettingOut& out) {
  const plan::BaseLine* found = nullptr;
  for (const plan::ElementPtr& element : job.elements) {
    const auto* line = std::get_if<plan::BaseLine>(&element->kind);
    if (!line) continue;
    if (line->from == line->to) {
      out.problems.push_back(notice(element->id, "base-line-no-length", "this base line starts and ends at one place",
                                    "draw it between two fixed points"));
    } else if (found) {
      out.problems.push_back(notice(element->id, "base-line-several",
                                    "another base line is drawn; everything is set out from " + out.base_line,
                                    "keep one of them"));
    } else {
      found = line;
      out.base_line = element->id;
    }
  }
  if (!found)
    out.problems.push_back(notice("", "base-line-none",
                                  "no base line is drawn, so there are no ties and offsets from it",
                                  "draw one between two fixed points that stay where they are"));
  return found;
}

// Corners of all rings and lines, then the centres of the curves.
std::vector<Mark> places(const plan::ElementId& of, const std::vector<Drawn>& drawings, const Rules& rules) {
  std::vector<Mark> made;
  const auto put = [&](std::string what, Point at) -> Mark& {
    Mark mark;
    mark.of = of;
    mark.what = std::move(what);
    mark.at = at;
    return made.emplace_back(std::move(mark));
  };
  for (const Drawn& drawn : drawings) {
    int number = drawn.first_corner;
    for (const geometry::Curve& curve : drawn.curves) put("corner " + std::to_string(number++), curve.start);
    if (!drawn.closed) put("corner " + std::to_string(number), drawn.curves.back().end);
  }
  for (const Drawn& drawn : drawings)
    for (std::size_t i = 0; i < drawn.curves.size(); ++i) {
      const geometry::Curve& arc = drawn.curves[i];
      const double radius = arc.radius() / Length::steps_per_metre;
      if (arc.straight() || radius > rules.tape) continue;
      put("centre of edge " + std::to_string(drawn.first_edge + static_cast<int>(i)), moved(arc.start, arc.centre()))
          .radius = radius;
    }
  return made;
}

// Fills in what is measured: from the base line, and from the mark before.
void measure(std::vector<Mark>& marks, const plan::BaseLine& line, const Rules& rules) {
  const Xy from = xy(line.from), to = xy(line.to);
  const auto distance = [](Point a, Point b) { return geometry::length(a - b) / Length::steps_per_metre; };
  for (std::size_t i = 0; i < marks.size(); ++i) {
    Mark& mark = marks[i];
    const Station place = station(from, to, xy(mark.at));
    mark.along = place.along;
    mark.out = place.out;
    mark.tie_from = distance(mark.at, line.from);
    mark.tie_to = distance(mark.at, line.to);
    mark.side = std::abs(place.out) <= on_the_line ? "on it" : place.out > 0 ? "left of the base line" : "right of it";
    mark.check = distance(mark.at, marks[i == 0 ? marks.size() - 1 : i - 1].at);
    const bool at_an_end = mark.at == line.from || mark.at == line.to;
    mark.poor = !at_an_end && crossing_degrees(from, to, xy(mark.at)) < rules.crossing_degrees;
  }
}

std::string listed(const std::vector<Mark>& marks, bool (*which)(const Mark&, const Rules&), const Rules& rules) {
  std::string text;
  int more = 0;
  for (const Mark& mark : marks) {
    if (!which(mark, rules)) continue;
    if (text.size() > 60)
      ++more;
    else
      text += (text.empty() ? "" : ", ") + mark.what;
  }
  return more == 0 ? text : text + " and " + std::to_string(more) + " more";
}

void judge(const std::vector<Mark>& marks, const plan::Job& job, const Rules& rules,
           std::vector<problem::Problem>& problems) {
  const std::string poor = listed(marks, [](const Mark& mark, const Rules&) { return mark.poor; }, rules);
  if (!poor.empty())
    problems.push_back(
        notice(marks.front().of, "ties-cross-poorly",
               "the tapes to " + poor + " cross at a poor angle: a small slip moves the place far",
               "measure the check too, or set out by the distances along the base line and out from it"));
  const std::string far = listed(
      marks, [](const Mark& mark, const Rules& by) { return std::max(mark.tie_from, mark.tie_to) > by.tape; }, rules);
  if (!far.empty())
    problems.push_back(notice(marks.front().of, "ties-long",
                              "the ties to " + far + " are longer than " +
                                  units::show_length(Length::nearest(units::Metres(rules.tape)), job.heading.units),
                              "draw the base line nearer"));
}

// How deep the build-up of an area goes below its finished surface.
std::optional<double> depth_of(const plan::ElementId& area, const ground::Bodies& bodies) {
  std::optional<double> deepest;
  for (const ground::Body& body : bodies.bodies)
    if (std::ranges::find(body.of, area) != body.of.end())
      deepest = std::max(deepest.value_or(0), body.top + body.thickness);
  return deepest;
}

// A corner stands on the edge of its surface: what lies a millimetre beside it counts too.
std::optional<double> finish_at(const levels::SurfacePtr& surface, Point at) {
  if (!surface) return std::nullopt;
  if (const auto height = surface->height(at)) return height;
  const Length near = Length::millimetres(1);
  for (const int x : {-1, 0, 1})
    for (const int y : {-1, 0, 1})
      if (const auto height = surface->height(Point{at.x + near * x, at.y + near * y})) return height;
  return std::nullopt;
}

void add_stakes(const plan::ElementId& of, const std::vector<Drawn>& drawings, const ground::Bodies& bodies,
                const levels::Terrain& terrain, SettingOut& out) {
  const auto surface = terrain.finished.find(of);
  const std::optional<double> depth = depth_of(of, bodies);
  bool guessed = false;
  for (const Drawn& drawn : drawings) {
    int number = drawn.first_corner;
    for (const geometry::Curve& curve : drawn.curves) {
      Stake stake{of, curve.start, "corner " + std::to_string(number++), terrain.existing_at(curve.start), {},
                  {}, false};
      if (surface != terrain.finished.end()) stake.finish = finish_at(surface->second, curve.start);
      if (stake.finish && depth) stake.formation = *stake.finish - *depth;
      stake.guessed = stake.ground && terrain.guessed_at(curve.start);
      guessed = guessed || stake.guessed;
      if (stake.ground || stake.finish) out.stakes.push_back(std::move(stake));
    }
  }
  if (guessed)
    out.problems.push_back(
        notice(of, "stakes-guessed", "some of its corners lie beyond the ground that was measured",
               "take levels past the edge of the work; until then its cut and fill there is a guess"));
}

}  // namespace

SettingOut setting_out(const plan::Job& job, const plan::Site& site, const ground::Bodies& bodies,
                       const levels::Terrain& terrain) {
  SettingOut out;
  const plan::BaseLine* line = base_line(job, out);
  const Rules by = rules(job, line);
  for (const auto& ground : site.grounds) {
    const std::vector<Drawn> drawn = drawings(*ground);
    if (drawn.empty()) continue;
    const plan::ElementId& id = ground->element->id;
    if (line) {
      std::vector<Mark> marks = places(id, drawn, by);
      measure(marks, *line, by);
      judge(marks, job, by, out.problems);
      std::ranges::move(marks, std::back_inserter(out.marks));
    }
    for (const Drawn& one : drawn) {
      std::ranges::move(diagonals(id, one, by.out_of_square), std::back_inserter(out.diagonals));
      std::ranges::move(offsets(id, one, by.chord_step), std::back_inserter(out.offsets));
    }
    if (std::holds_alternative<plan::PavedArea>(ground->element->kind)) add_stakes(id, drawn, bodies, terrain, out);
  }
  return out;
}

}  // namespace takeoff::setting_out
