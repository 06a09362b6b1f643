#include "files/drawn_things.h"

#include <algorithm>

#include "geometry/flatten.h"
#include "plan/footprint.h"
#include "units/read_length.h"

namespace files {

namespace {

class Maker {
 public:
  explicit Maker(const plan::Job& job) : job_(job) {}

  DrawnThings made() {
    for (const plan::ElementPtr& element : job_.elements) {
      element_ = element.get();
      count_ = 0;
      std::visit([this](const auto& kind) { of(kind); }, element->kind);
    }
    return std::move(made_);
  }

 private:
  DrawnThing& add(DrawnAs drawn, const std::string& layer) {
    ++count_;
    const std::string id = count_ == 1 ? element_->id : element_->id + "#" + std::to_string(count_);
    made_.things.push_back({id, element_->name, layer, drawn, {}, {}});
    return made_.things.back();
  }
  std::string layer() const { return plan::kind_name(element_->kind); }

  void shape(const plan::DrawnShape& drawn, const std::string& layer) {
    geometry::Drawn rings = plan::drawing(drawn, plan::mark(element_->id));
    std::erase_if(rings, [](const geometry::Ring& ring) { return ring.size() < 2; });
    if (!rings.empty()) add(DrawnAs::polygon, layer).rings = std::move(rings);
  }
  void line(const plan::DrawnLine& drawn, const std::string& layer) {
    const auto path = plan::path(drawn, plan::mark(element_->id));
    if (!path) {
      made_.left_out.push_back(element_->id);
      return;
    }
    DrawnThing& thing = add(DrawnAs::line, layer);
    thing.rings = {path->edges()};
    thing.end = path->end();
  }
  DrawnThing& point(geometry::Point at, const std::string& layer) {
    DrawnThing& thing = add(DrawnAs::point, layer);
    thing.end = at;
    return thing;
  }

  // What has an outline, a line or both.
  template <class Kind>
  void drawn(const Kind& kind, const std::string& layer) {
    if constexpr (requires { kind.outline; }) shape(kind.outline, layer);
    if constexpr (requires { kind.line.has_value(); }) {
      if (kind.line) line(*kind.line, layer);
    } else if constexpr (requires { kind.line; }) {
      line(kind.line, layer);
    }
  }

  template <class Kind>
  void of(const Kind& kind) {
    drawn(kind, layer());
  }
  void of(const plan::SiteMark& mark) {
    const std::string own = layer() + ":" + mark.what;
    drawn(mark, own);
    for (const geometry::Point& at : mark.points) point(at, own);
  }
  void of(const plan::Level& level) {
    DrawnThing& thing = point(level.at, level.height ? layer() : layer() + "-no-height");
    thing.height = level.height;
    if (level.height) thing.text = units::show_length(*level.height, job_.heading.units);
  }
  void of(const plan::Feature& feature) { point(feature.at, layer()); }
  void of(const plan::Note& note) { point(note.at, layer()).text = note.text; }
  void of(const plan::Dimension& dimension) {
    straight(dimension.from, dimension.to).text =
        units::show_length(units::Length::nearest(units::Metres(geometry::length(dimension.to - dimension.from) /
                                                                units::Length::steps_per_metre)),
                           job_.heading.units);
  }
  void of(const plan::BaseLine& base) { straight(base.from, base.to); }
  void of(const plan::SitePlan&) {}
  void of(const plan::LevelBook&) {}
  void of(const plan::TapeBook&) {}

  DrawnThing& straight(geometry::Point from, geometry::Point to) {
    DrawnThing& thing = add(DrawnAs::line, layer());
    thing.rings = {{{from, 0, {}}}};
    thing.end = to;
    return thing;
  }

  const plan::Job& job_;
  const plan::Element* element_ = nullptr;
  int count_ = 0;
  DrawnThings made_{};
};

std::vector<problem::Xy> corners_of(const geometry::Ring& ring) {
  std::vector<problem::Xy> corners;
  for (const geometry::Point& point : geometry::flatten(ring)) corners.push_back(geometry::xy(point));
  return corners;
}

double middle_height(const std::vector<problem::Xy>& corners) {
  const auto [low, high] = std::ranges::minmax(corners, {}, &problem::Xy::y);
  return (low.y + high.y) / 2;
}

// Where a level line crosses the rings, from left to right. Corners on it count with the side above.
std::vector<double> crossings(const std::vector<std::vector<problem::Xy>>& rings, double y) {
  std::vector<double> found;
  for (const auto& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const problem::Xy a = ring[i], b = ring[(i + 1) % ring.size()];
      if ((a.y > y) != (b.y > y)) found.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
    }
  std::ranges::sort(found);
  return found;
}

// In the middle of the widest piece of ground that a line across the shape at half its height meets.
problem::Xy inside(const DrawnThing& thing) {
  std::vector<std::vector<problem::Xy>> rings;
  for (const geometry::Ring& ring : thing.rings) rings.push_back(corners_of(ring));
  const double y = middle_height(rings.front());
  const std::vector<double> across = crossings(rings, y);
  if (across.size() < 2) return rings.front().front();
  std::size_t widest = 0;
  for (std::size_t i = 0; i + 1 < across.size(); i += 2)
    if (across[i + 1] - across[i] > across[widest + 1] - across[widest]) widest = i;
  return {(across[widest] + across[widest + 1]) / 2, y};
}

}  // namespace

DrawnThings drawn_things(const plan::Job& job) { return Maker(job).made(); }

problem::Xy place_of_tag(const DrawnThing& thing) {
  if (thing.drawn == DrawnAs::point) return geometry::xy(thing.end);
  if (thing.drawn == DrawnAs::polygon) return inside(thing);
  const geometry::Ring& edges = thing.rings.front();
  const std::size_t middle = edges.size() / 2;
  const geometry::Point to = middle + 1 < edges.size() ? edges[middle + 1].from : thing.end;
  const geometry::Vec half = geometry::Curve{edges[middle].from, to, edges[middle].bulge}.at(0.5);
  return geometry::xy(geometry::moved(edges[middle].from, half));
}

}  // namespace files
