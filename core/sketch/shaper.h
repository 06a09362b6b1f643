// Draws one outline or one line from the events of a gesture: corner by corner with lines and arcs, as a rectangle, as
// a circle, or freeform through points.
//
// A click, or Enter after something was typed, sets the next point. Enter, a double click or a click on the first point
// closes an outline; Enter or a double click ends a line (a click on its first point closes the line). Back and undo
// take the last point, Escape drops the shape in hand; with nothing in hand Escape leaves. Nothing is set from a text
// that is not understood, and an edge of no length is refused; what is in hand stays.
#pragma once

#include "sketch/next_edge.h"
#include "sketch/whole_shape.h"

namespace sketch {

// One outline (counter-clockwise) or one line.
struct Finished {
  bool closes = false;
  plan::DrawnRing ring;
  plan::DrawnLine line;
  geometry::Point first;  // where it was begun
  geometry::Vec along;    // the unit direction of its first edge
};

class Shaper {
 public:
  enum class Way { corners, rectangle, circle, across, three, freeform };
  struct Step {
    std::optional<Finished> done;
    std::optional<problem::Problem> refused;
    bool leave = false;
  };

  explicit Shaper(bool closes = true);
  Step take(const Event& event, const Scene& scene);
  void show(View& view, const Scene& scene) const;
  bool busy() const { return !points_.empty(); }
  std::optional<geometry::Point> first() const;  // where the shape in hand begins
  void take_way(Way way);                        // as if it were chosen, with nothing in hand
  void drop();                                   // what is in hand
  void close(bool closes);                       // outlines or lines from now on; drops what is in hand
  bool closes() const { return closes_; }

 private:
  Step press(const Pressed& pressed, const Scene& scene);
  Step key(Key key, const Scene& scene);
  Step type(const Typed& typed, const Scene& scene);
  Step choose(const std::string& id);
  Step set_point(const Scene& scene);
  Step set_first(const Scene& scene);
  Step set_edge(const Scene& scene);
  Step set_whole(const Scene& scene);
  Step add_control(const Scene& scene);
  Step add_edge(const Next& next);
  Step finish();
  Step finish_whole(const geometry::Ring& ring);
  void take_back();
  Pointer pointer() const;
  void move(const Pointer& pointer);
  void renew_fields();
  bool enough() const;
  std::optional<problem::Problem> wrong_text() const;

  std::optional<Whole> whole() const;
  Start start() const;
  WholeStart whole_start(const Scene& scene) const;
  Aimed control_point(const Scene& scene) const;
  std::string wants() const;
  void show_corners(View& view, Fields& fields, const Scene& scene) const;
  void show_whole_shape(View& view, Fields& fields, const Scene& scene) const;
  void show_freeform(View& view, Fields& fields, const Scene& scene) const;
  void show_choices(View& view) const;
  plan::DrawnLine set_so_far() const;

  bool closes_ = true;
  Way way_ = Way::corners;
  EdgeWay edge_way_ = EdgeWay::line;
  EdgeWay last_arc_ = EdgeWay::tangent;
  std::vector<geometry::Point> points_;
  std::vector<double> bulges_;          // of the edges between them
  std::optional<geometry::Point> set_;  // of the arc under way
  double swing_ = 0;
  std::optional<geometry::Vec> along_;  // of the edge on which the first point was set
  std::optional<Pointer> pointer_;      // none: it never moved here
  Fields fields_;
};

// The ids of choices: "corners", "rectangle" ..., "line", "tangent", "through-third", "centre-start-end".
std::optional<Shaper::Way> shape_way(const std::string& id);
std::optional<EdgeWay> edge_way(const std::string& id);
std::string word(EdgeWay way);

}  // namespace sketch
