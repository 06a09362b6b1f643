#include "sketch/edge_tool.h"

#include <cmath>

#include "sketch/change.h"
#include "sketch/change_words.h"
#include "sketch/chips.h"
#include "sketch/grips.h"
#include "sketch/words.h"

namespace sketch {

namespace {

using geometry::Curve;
using geometry::Point;

// Of a typed radius: the shorter arc on the side on which the pointer is; none where the circle is too small.
std::optional<double> bulge_of_radius(const Curve& curve, double radius, double side) {
  if (radius == 0) return 0;
  const double half = geometry::length(curve.chord()) / 2;
  if (radius < half) return std::nullopt;
  const double bulge = std::tan(std::asin(half / radius) / 2);
  return side < 0 ? -bulge : bulge;
}

class EdgeTool : public Tool {
 public:
  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* moved = std::get_if<Moved>(&event)) at_ = moved->at;
    if (const auto* typed = std::get_if<Typed>(&event)) {
      fields_.take(*typed, scene.job.heading.units);
      return {};
    }
    if (const auto* pressed = std::get_if<Pressed>(&event); pressed != nullptr && !pressed->twice) {
      at_ = pressed->at;
      return id_.empty() ? take_edge(scene) : bend(scene);
    }
    const auto* key = std::get_if<Key>(&event);
    if (key == nullptr) return {};
    if (*key == Key::enter && !id_.empty()) return bend(scene);
    if (*key == Key::escape || *key == Key::back || *key == Key::undo) {
      const bool leave = id_.empty() && *key == Key::escape;
      drop();
      return {{}, {}, {}, leave};
    }
    return {};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::edge_to_arc;
    view.busy = !id_.empty();
    view.wants = id_.empty() ? words::edge_wants : words::edge_through;
    const auto curve = edge(scene);
    if (!curve) {
      const auto near = at_ ? scene.snaps.edges(*at_, scene.reach) : std::vector<Taken>{};
      if (!near.empty()) view.marks.push_back({Takes::edge, near.front().at});
      return view;
    }
    const Curve bent{curve->start, curve->end, bulge(*curve).value_or(curve->bulge)};
    Fields fields = fields_;
    if (!bent.straight())
      fields.point("radius", units::Length::of_steps(std::llround(bent.radius())), scene.job.heading.units);
    view.fields = fields.shown();
    view.strokes.push_back({{{{bent.start, bent.bulge, {}}}, bent.end, {}}, false, Pen::rubber});
    view.chips.push_back(bent.straight() ? length_chip(bent, scene.job.heading.units)
                                         : radius_chip(bent, scene.job.heading.units));
    return view;
  }

 private:
  Answer take_edge(const Scene& scene) {
    const auto near = scene.snaps.edges(*at_, scene.reach);
    if (near.empty()) return refuse("no-edge", words::no_edge_here, words::no_edge_here_mend);
    id_ = near.front().of;
    start_ = near.front().edge;
    return {{}, std::vector{id_}, {}, false};
  }

  std::optional<Curve> edge(const Scene& scene) const {
    const plan::Element* element = id_.empty() ? nullptr : scene.job.find(id_);
    if (element == nullptr) return std::nullopt;
    for (const plan::DrawnEdge& drawn : plan::drawn_edges(*element)) {
      if (drawn.start == start_) return drawn.curve;
    }
    return std::nullopt;
  }

  std::optional<double> bulge(const Curve& curve) const {
    if (fields_.has("radius")) {
      const double side = at_ ? geometry::cross(curve.chord(), curve.start - *at_) : 1;
      return bulge_of_radius(curve, static_cast<double>(fields_.length("radius")->steps()), side);
    }
    return at_ ? bulge_through(curve, *at_) : 0;
  }

  Answer bend(const Scene& scene) {
    const auto curve = edge(scene);
    if (!curve) {
      drop();
      return {};
    }
    const auto bent = bulge(*curve);
    if (!bent) return refuse("arc-too-small", words::arc_too_small, words::arc_too_small_mend);
    auto made = plan::with_bulge(*scene.job.find(id_), start_, *bent);
    if (!made) return refuse(made.error());
    Answer answer =
        done(plan::with(scene.job, std::move(*made)), "Edge of " + id_ + (*bent == 0 ? " straight" : " to arc"), {id_});
    drop();
    return answer;
  }

  void drop() {
    id_.clear();
    fields_.clear();
  }

  plan::ElementId id_;
  plan::Corner start_;
  std::optional<Point> at_;
  Fields fields_{{field::radius()}};
};

}  // namespace

std::unique_ptr<Tool> edge_to_arc_tool() { return std::make_unique<EdgeTool>(); }

}  // namespace sketch
