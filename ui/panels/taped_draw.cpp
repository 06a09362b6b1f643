// Elements through points that were found with the tape.
#include "plan/edits.h"
#include "sketch/defaults.h"
#include "sketch/shapes.h"
#include "sketch/taped_outline.h"
#include "ui/panels/taped_panel.h"

namespace ui {

namespace {

bool closes(sketch::Hand hand) { return hand != sketch::Hand::wall && hand != sketch::Hand::edge; }

void add(DrawnThrough& drawn, plan::Kind kind) {
  plan::Element element{plan::free_id(drawn.after, kind), {}, std::move(kind)};
  drawn.ids.push_back(element.id);
  drawn.after = plan::with(drawn.after, std::move(element));
}

problem::Result<DrawnThrough> levels(const plan::Job& job, const sketch::Measured& measured,
                                     const std::vector<sketch::Through>& names) {
  DrawnThrough drawn{job, {}};
  if (names.empty()) return problem::fault("tape-too-few", "no point is named", "name the points, such as A, B, C");
  for (const sketch::Through& through : names) {
    const geometry::Point* at = measured.find(through.name);
    if (at == nullptr)
      return problem::fault("tape-point-unknown", "no point named \"" + through.name + "\" is found",
                            "look at its name, or at what it still needs");
    add(drawn, sketch::fresh(sketch::Hand::level, job, {{}, *at}, "existing"));
  }
  return drawn;
}

}  // namespace

problem::Result<DrawnThrough> drawn_through(const plan::Job& job, const sketch::Measured& measured,
                                            const std::string& names, sketch::Hand hand, bool smooth) {
  const std::vector<sketch::Through> points = sketch::read_through(names);
  if (hand == sketch::Hand::level) return levels(job, measured, points);
  sketch::Finished shape;
  shape.closes = closes(hand);
  if (shape.closes) {
    auto ring = sketch::ring_through(measured, points, smooth);
    if (!ring) return std::unexpected(ring.error());
    shape.ring = std::move(*ring);
  } else {
    auto line = sketch::line_through(measured, points, smooth);
    if (!line) return std::unexpected(line.error());
    shape.line = std::move(*line);
  }
  const auto curves = shape.closes ? sketch::drawn_curves(shape.ring) : sketch::drawn_curves(shape.line);
  shape.first = curves.front().start;
  shape.along = curves.front().direction(0);
  DrawnThrough drawn{job, {}};
  add(drawn, sketch::fresh(hand, job, {shape, shape.first}, sketch::last_what(hand, job)));
  return drawn;
}

}  // namespace ui
