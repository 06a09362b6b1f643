#include "sketch/trace_tool.h"

#include "sketch/change.h"
#include "sketch/change_words.h"
#include "sketch/defaults.h"
#include "sketch/draw_tool.h"
#include "sketch/words.h"

namespace sketch {

namespace {

using geometry::Point;

class TraceTool : public Tool {
 public:
  Answer take(const Event& event, const Scene& scene) override {
    if (const auto* moved = std::get_if<Moved>(&event)) at_ = moved->at;
    if (const auto* chosen = std::get_if<Chosen>(&event)) {
      if (chosen->id == "longer") longer_ = !longer_;
      if (chosen->id == "edge") hand_ = Hand::edge;
      if (chosen->id == "wall") hand_ = Hand::wall;
      if (chosen->id == "drain") hand_ = Hand::drain;
    }
    if (const auto* pressed = std::get_if<Pressed>(&event); pressed != nullptr && !pressed->twice) {
      at_ = pressed->at;
      return press(scene);
    }
    const auto* key = std::get_if<Key>(&event);
    if (key == nullptr) return {};
    if (*key == Key::escape || *key == Key::back || *key == Key::undo) {
      const bool leave = id_.empty() && *key == Key::escape;
      id_.clear();
      return {{}, {}, {}, leave};
    }
    return {};
  }

  View view(const Scene& scene) const override {
    View view;
    view.hand = words::trace;
    view.busy = !id_.empty();
    view.wants = id_.empty() ? words::trace_from : words::trace_to;
    view.choices = {{"edge", words::edge, hand_ == Hand::edge, false},
                    {"wall", words::wall, hand_ == Hand::wall, false},
                    {"drain", words::drain, hand_ == Hand::drain, false},
                    {"longer", words::longer_way, longer_, false}};
    const auto near = at_ ? place(scene) : std::nullopt;
    if (near) view.marks.push_back({near->takes == Takes::corner ? Takes::corner : Takes::edge, near->at});
    if (id_.empty() || !near) return view;
    if (const auto line = plan::traced(*scene.job.find(id_), from_, near->at, longer_))
      view.strokes.push_back({*line, false, Pen::rubber});
    return view;
  }

 private:
  // The nearest edge (of the element in hand once there is one), or its corner where one is as near.
  std::optional<Taken> place(const Scene& scene) const {
    const Taken corner = scene.snaps.take(*at_, scene.reach);
    if (corner.takes == Takes::corner && (id_.empty() || corner.of == id_)) return corner;
    for (const Taken& edge : scene.snaps.edges(*at_, scene.reach)) {
      if (id_.empty() || edge.of == id_) return edge;
    }
    return std::nullopt;
  }

  Answer press(const Scene& scene) {
    const auto near = place(scene);
    if (!near) return refuse("no-edge", words::no_edge_here, words::no_edge_here_mend);
    if (id_.empty()) {
      id_ = near->of;
      from_ = near->at;
      return {};
    }
    const plan::Element* element = scene.job.find(id_);
    const auto line = element != nullptr ? plan::traced(*element, from_, near->at, longer_)
                                         : problem::fault("no-edge", words::no_edge_here, words::no_edge_here_mend);
    if (!line) return refuse(line.error());
    Finished finished;
    finished.line = *line;
    finished.first = line->edges.front().from;
    Edit edit = drawn(hand_, scene.job, fresh(hand_, scene.job, {finished, {}}, ""));
    edit.name = edit_name("Trace", edit.after, edit.selected);
    id_.clear();
    return {std::move(edit), {}, {}, false};
  }

  Hand hand_ = Hand::edge;
  bool longer_ = false;
  plan::ElementId id_;
  Point from_;
  std::optional<Point> at_;
};

}  // namespace

std::unique_ptr<Tool> trace_tool() { return std::make_unique<TraceTool>(); }

}  // namespace sketch
