#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

#include "sheets/paper_scale.h"
#include "sheets/parts.h"
#include "sheets/setting_out_parts.h"
#include "sheets/source.h"

namespace sheets {

namespace {

using takeoff::setting_out::Mark;
using takeoff::setting_out::SettingOut;

constexpr double wide_mm = 150, high_mm = 140;
constexpr double letter_mm = 2.2, line_mm = 4.2, cross_mm = 1.2;

struct Box {
  Vec low;
  Vec high;
  bool meets(const Box& other) const {
    return low.x < other.high.x && other.low.x < high.x && low.y < other.high.y && other.low.y < high.y;
  }
};

// The marks at one place, by their numbers.
struct Spot {
  Vec at;
  std::string words;
  std::size_t first = 0;
};

std::vector<Spot> spots(const SettingOut& out) {
  std::vector<Spot> all;
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
    for (const Spot& spot : spots_) extent_.take(spot.at);
    scale_ = fitting(extent_.high().x - extent_.low().x, extent_.high().y - extent_.low().y, wide_mm, high_mm,
                     printed.job().heading.units);
  }

  Drawing draw() {
    for (const Spot& spot : spots_) cross(spot.at);
    base_line();
    for (const Spot& spot : spots_) number(spot);
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
    taken_.push_back({{at.x - arm, at.y - arm}, {at.x + arm, at.y + arm}});
  }

  void base_line() {
    const plan::BaseLine* base = line();
    if (!base) return;
    const Vec from = metres(base->from), to = metres(base->to);
    stroke(sheets::line(from, to), Line::house_joint, out_.base_line);
    label(from, filled(printed_, "start of %1", {out_.base_line}), of_element(out_.base_line, "start"));
    label(to, filled(printed_, "end of %1", {out_.base_line}), of_element(out_.base_line, "end"));
  }

  void number(const Spot& spot) { label(spot.at, spot.words, of_setting_out("mark", spot.first)); }

  // Beside its place, where it covers neither a mark nor another number; the first side tried where all are taken.
  void label(Vec at, const std::string& words, const std::string& from) {
    const auto letters = std::ranges::count_if(words, [](char byte) { return (byte & 0xC0) != 0x80; });
    const double wide = scale_.under(letter_mm * static_cast<double>(letters) + 0.8), high = scale_.under(line_mm);
    const auto box = [&](int side, double out_mm) {
      const double angle = (side * 2 + 1) * std::numbers::pi / 8;
      const Vec way = from_angle(angle);
      const double out = scale_.under(out_mm);
      const Vec middle = at + Vec{way.x * (out + wide / 2), way.y * (out + high / 2)};
      return Box{{middle.x - wide / 2, middle.y - high / 2}, {middle.x + wide / 2, middle.y + high / 2}};
    };
    Box chosen = box(0, 1.5);
    bool found = false;
    for (const double out_mm : {1.5, 4.0, 7.0}) {
      for (int side = 0; side < 8 && !found; ++side) {
        const Box tried = box(side, out_mm);
        found = std::ranges::none_of(taken_, [&](const Box& other) { return other.meets(tried); });
        if (found) chosen = tried;
      }
    }
    taken_.push_back(chosen);
    drawing_.labels.push_back({0.5 * (chosen.low + chosen.high), {words, from}});
  }

  const Printed& printed_;
  const SettingOut& out_;
  std::vector<Spot> spots_;
  Figure figure_;
  Extent extent_;
  PaperScale scale_;
  std::vector<Box> taken_;
  Drawing drawing_;
};

}  // namespace

std::optional<Drawing> set_out_drawing(const Printed& printed, const SettingOut& out) {
  if (out.marks.empty()) return std::nullopt;
  return Draughtsman(printed, out).draw();
}

}  // namespace sheets
