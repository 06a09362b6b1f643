#include "sheets/elevation_drawing.h"

#include <algorithm>
#include <cmath>

#include "sheets/parts.h"
#include "sheets/places.h"
#include "sheets/source.h"

namespace sheets {

namespace {

using What = WallElevation::What;

constexpr double face_wide_mm = 209, face_high_mm = 66;  // what the face may take on the narrower of the two papers
constexpr double beside_mm = 19;                         // for the levels at each end
constexpr double line_mm = 5;                            // a line of words

class Draughtsman {
 public:
  Draughtsman(const Printed& printed, const plan::ElementId& wall, const WallElevation& face)
      : printed_(printed), wall_(wall), face_(face), figure_(face.figure) {
    low_ = figure_.low;
    high_ = figure_.high;
    scale_ = fitting(high_.x - low_.x, high_.y - low_.y, face_wide_mm, face_high_mm, printed.job().heading.units);
  }

  Drawing draw() {
    say_what_is_there();
    rule();
    levels(face_.start, 0);
    levels(face_.finish, face_.length);
    layers();
    section_mark();
    figure_.low = {low_.x - scale_.under(beside_mm), low_.y - scale_.under(below_mm_)};
    figure_.high = {high_.x + scale_.under(beside_mm), high_.y + scale_.under(above_mm_)};
    drawing_.figure = std::make_shared<const Figure>(std::move(figure_));
    drawing_.scale = scale_.one_to;
    drawing_.height_mm = 120;
    return std::move(drawing_);
  }

 private:
  double x(double station) const { return face_.x(station); }
  void stroke(Vec from, Vec to, Line line) {
    figure_.parts.emplace_back(std::in_place_type<Stroke>, Stroke{sheets::line(from, to), line, wall_});
  }
  void label(Vec at, std::string words, const std::string& field, Align align = Align::centre, bool framed = false) {
    drawing_.labels.push_back({at, {std::move(words), of_element(wall_, field)}, align, 0, framed});
  }
  // Corners and curves over the top, at their places.
  void say_what_is_there() {
    double taken_to = -1e9;
    for (const WallElevation::Station& one : in_sight_order()) {
      std::string words;
      if (one.what == What::corner) words = printed_.say("corner");
      if (one.what == What::curve_begins)
        words = filled(printed_, "curve, radius %1", {length_words(printed_, one.radius)});
      if (one.what == What::curve_ends) words = printed_.say("end of the curve");
      if (words.empty()) continue;
      const double half = scale_.under((label_wide_mm(words) + 3) / 2), at = x(one.at);
      // Past the words before it, or a line higher.
      const bool crowded = at - half < taken_to;
      const double up = high_.y + scale_.under(crowded ? 4 + line_mm : 4);
      taken_to = std::max(taken_to, at + half);
      above_mm_ = std::max(above_mm_, crowded ? 8 + line_mm : 8.0);
      stroke({at, low_.y}, {at, up - scale_.under(2)}, Line::later);
      label({at, up}, words, "line");
    }
  }

  std::vector<WallElevation::Station> in_sight_order() const {
    std::vector<WallElevation::Station> all = face_.stations;
    std::ranges::sort(all, {}, [this](const WallElevation::Station& one) { return std::pair(x(one.at), one.what); });
    return all;
  }

  // Running measures from the wall's start, on a line under the ground; one that would stand in the words of the one
  // before goes a line lower.
  void rule() {
    const double y = low_.y - scale_.under(4);
    stroke({x(0), y}, {x(face_.length), y}, Line::cut_edge);
    std::vector<double> ends(3, -1e9);
    double before = -1e9;
    for (const WallElevation::Station& one : in_sight_order()) {
      const double at = x(one.at);
      if (at - before < 1e-3) continue;
      before = at;
      const std::string words = one.at == 0 ? "0" : length_words(printed_, one.at);
      const double half = scale_.under((label_wide_mm(words) + 3) / 2);
      const auto row = std::ranges::find_if(ends, [&](double end) { return at - half >= end; });
      const std::size_t lower = row == ends.end() ? ends.size() - 1 : static_cast<std::size_t>(row - ends.begin());
      ends[lower] = at + half;
      const double down = 4 + line_mm * static_cast<double>(lower);
      stroke({at, y + scale_.under(1.2)}, {at, y - scale_.under(lower == 0 ? 1.2 : down - 2)}, Line::cut_edge);
      label({at, y - scale_.under(down)}, words, "line");
      below_mm_ = std::max(below_mm_, 4 + down + 3);
    }
  }

  // Top, ground and base at one end, outside it; moved apart where they would stand in each other.
  void levels(const WallElevation::End& end, double station) {
    const bool at_left = x(station) < face_.length / 2;
    const double side = at_left ? -1 : 1;
    struct Level {
      double y;
      const char* field;
    };
    std::vector<Level> all{{end.top, "top"}, {end.base, "base"}};
    if (end.ground) all.push_back({*end.ground, "ground"});
    std::ranges::sort(all, {}, [](const Level& one) { return -one.y; });
    double lowest = 1e9;
    for (const Level& one : all) {
      const double y = std::min(one.y, lowest - scale_.under(line_mm));
      lowest = y;
      const double from = x(station) + side * scale_.under(1), to = x(station) + side * scale_.under(6);
      stroke({from, one.y}, {to, y}, Line::cut_edge);
      label({to + side * scale_.under(1), y}, show_height(face_.datum + one.y, printed_.job().heading.units), one.field,
            at_left ? Align::right : Align::left);
    }
  }

  // Words of layers over each other stand side by side.
  void layers() {
    bool early = true;
    for (const WallElevation::Layer& layer : face_.layers) {
      const double share = early ? 0.28 : 0.72;
      early = !early;
      const Vec at{x(layer.from + share * (layer.to - layer.from)), layer.y};
      label(at,
            filled(printed_, "on course %1: %2 long",
                   {std::to_string(layer.on_course), length_words(printed_, layer.length)}),
            "layers", Align::centre, true);
    }
  }

  void section_mark() {
    const double at = x(face_.section_at);
    stroke({at, low_.y}, {at, high_.y + scale_.under(2)}, Line::later);
    label({at - scale_.under(4), high_.y + scale_.under(2)}, "A", "line");
    label({at - scale_.under(4), low_.y + scale_.under(2)}, "A", "line");
  }

  const Printed& printed_;
  const plan::ElementId& wall_;
  const WallElevation& face_;
  Figure figure_;
  Vec low_, high_;  // of the face, without what is written round it
  PaperScale scale_;
  double above_mm_ = 5, below_mm_ = 12;
  Drawing drawing_;
};

}  // namespace

Drawing elevation_drawing(const Printed& printed, const plan::ElementId& wall, const WallElevation& elevation) {
  return Draughtsman(printed, wall, elevation).draw();
}

}  // namespace sheets
