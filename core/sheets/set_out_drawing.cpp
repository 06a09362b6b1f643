#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

#include "sheets/parts.h"
#include "sheets/places.h"
#include "sheets/plan_parts.h"
#include "sheets/setting_out_parts.h"
#include "sheets/source.h"

namespace sheets {

namespace {

using takeoff::setting_out::Mark;
using takeoff::setting_out::SettingOut;

constexpr double wide_mm = 150, high_mm = 140;
constexpr double cross_mm = 1.2;

// The marks at one place, by their numbers.
struct Numbered {
  Vec at;
  std::string words;
  std::size_t first = 0;
};

std::vector<Numbered> spots(const SettingOut& out) {
  std::vector<Numbered> all;
  std::map<std::pair<std::int64_t, std::int64_t>, std::size_t> known;
  for (std::size_t i = 0; i < out.marks.size(); ++i) {
    const geometry::Point at = out.marks[i].at;
    const auto [place, fresh] = known.try_emplace({at.x.steps(), at.y.steps()}, all.size());
    if (fresh) all.push_back({metres(at), {}, i});
    std::string& words = all[place->second].words;
    words += (words.empty() ? "" : ", ") + std::to_string(i + 1);
  }
  return all;
}

class Draughtsman {
 public:
  Draughtsman(const Printed& printed, const SettingOut& out) : printed_(printed), out_(out), spots_(spots(out)) {
    outlines();
    for (const Numbered& spot : spots_) extent_.take(spot.at);
    scale_ = fitting(extent_.high().x - extent_.low().x, extent_.high().y - extent_.low().y, wide_mm, high_mm,
                     printed.job().heading.units);
    places_.emplace(scale_);
  }

  Drawing draw() {
    for (const Numbered& spot : spots_) cross(spot.at);
    base_line();
    for (const Numbered& spot : spots_) number(spot);
    tags();
    const double room = scale_.under(8);
    figure_.low = {extent_.low().x - room, extent_.low().y - room};
    figure_.high = {extent_.high().x + room, extent_.high().y + room};
    drawing_.figure = std::make_shared<const Figure>(std::move(figure_));
    drawing_.scale = scale_.one_to;
    drawing_.north = 0;
    return std::move(drawing_);
  }

 private:
  void stroke(Contour contour, Line line, const plan::ElementId& of) {
    figure_.parts.emplace_back(std::in_place_type<Stroke>, Stroke{std::move(contour), line, of});
  }

  void outlines() {
    std::set<plan::ElementId> wanted;
    for (const Mark& mark : out_.marks) wanted.insert(mark.of);
    for (const auto& ground : printed_.results->site.grounds) {
      const plan::Element& element = *ground->element;
      const bool house = std::holds_alternative<plan::Building>(element.kind);
      if (!house && !wanted.contains(element.id)) continue;
      std::vector<Contour> drawn = contours(ground->drawn);
      if (ground->path) drawn.push_back(contour(*ground->path));
      for (Contour& one : drawn) {
        if (!house) extent_.take(one);
        stroke(std::move(one), house ? Line::house : Line::element, element.id);
      }
    }
    if (const plan::BaseLine* base = line()) {
      extent_.take(metres(base->from));
      extent_.take(metres(base->to));
    }
  }

  const plan::BaseLine* line() const {
    const plan::Element* element = printed_.job().find(out_.base_line);
    return element ? std::get_if<plan::BaseLine>(&element->kind) : nullptr;
  }

  void cross(Vec at) {
    const double arm = scale_.under(cross_mm);
    stroke(sheets::line({at.x - arm, at.y}, {at.x + arm, at.y}), Line::cut_edge, {});
    stroke(sheets::line({at.x, at.y - arm}, {at.x, at.y + arm}), Line::cut_edge, {});
    places_->take({at, 2 * cross_mm, 2 * cross_mm});
  }

  void base_line() {
    const plan::BaseLine* base = line();
    if (!base) return;
    const Vec from = metres(base->from), to = metres(base->to);
    stroke(sheets::line(from, to), Line::house_joint, out_.base_line);
    label(from, filled(printed_, "start of %1", {out_.base_line}), of_element(out_.base_line, "start"));
    label(to, filled(printed_, "end of %1", {out_.base_line}), of_element(out_.base_line, "end"));
  }

  void number(const Numbered& spot) { label(spot.at, spot.words, of_setting_out("mark", spot.first)); }

  // Beside its place, where it covers neither a mark nor another number; the first side tried where all are taken.
  void label(Vec at, const std::string& words, const std::string& from, bool framed = false) {
    const double wide = label_wide_mm(words) + (framed ? 3 : 0), high = label_high_mm;
    std::vector<Spot> spots;
    if (framed) spots.push_back({at, wide, high});
    for (const double out_mm : {1.2, 3.5, 6.0, 9.0})
      for (int side = 0; side < 8; ++side) {
        const Vec way = from_angle((side * 2 + 1) * std::numbers::pi / 8);
        const double x = way.x * (out_mm + wide / 2), y = way.y * (out_mm + high / 2);
        spots.push_back({at + Vec{places_->scale().under(x), places_->scale().under(y)}, wide, high});
      }
    const int found = places_->take_first(spots);
    const Vec middle = spots[found < 0 ? 0 : static_cast<std::size_t>(found)].middle;
    drawing_.labels.push_back({middle, {words, from}, Align::centre, 0, framed});
  }

  // The tag of everything that is set out, in the middle of it.
  void tags() {
    for (const auto& ground : printed_.results->site.grounds) {
      const plan::ElementId& id = ground->element->id;
      if (std::ranges::find(out_.marks, id, &Mark::of) == out_.marks.end()) continue;
      if (const auto at = middle(*ground)) label(*at, id, of_element(id, "place"), true);
    }
  }

  const Printed& printed_;
  const SettingOut& out_;
  std::vector<Numbered> spots_;
  Figure figure_;
  Extent extent_;
  PaperScale scale_;
  std::optional<Places> places_;
  Drawing drawing_;
};

}  // namespace

std::optional<Drawing> set_out_drawing(const Printed& printed, const SettingOut& out) {
  if (out.marks.empty()) return std::nullopt;
  return Draughtsman(printed, out).draw();
}

}  // namespace sheets
