// A tool, a job and a pointer without a window: events go in, edits are taken up as the window takes them up.
#pragma once

#include <cmath>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "catalogue/catalogue.h"
#include "sketch/tool.h"

namespace hands {

using geometry::Point;
using units::Length;

inline Point feet(double x, double y) {
  const auto steps = [](double v) { return Length::of_steps(std::llround(v * 12 * Length::steps_per_inch)); };
  return {steps(x), steps(y)};
}

inline plan::Job empty_job(units::System system = units::System::us) {
  plan::Job job;
  job.heading.units = system;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  return job;
}

struct Bench {
  plan::Job job = empty_job();
  std::unique_ptr<sketch::Tool> tool;
  double reach = 12.0 * Length::steps_per_inch;  // a foot: places a yard apart are told from each other
  double grid = 0;
  std::vector<plan::ElementId> selected = {};
  std::vector<std::string> names = {};  // of the edits
  sketch::Answer last = {};

  sketch::Answer feed(const sketch::Event& event) {
    const sketch::Snaps snaps(job);
    last = tool->take(event, {job, snaps, reach, grid, selected});
    if (last.select) selected = *last.select;
    if (last.edit) {
      job = last.edit->after;
      selected = last.edit->selected;
      names.push_back(last.edit->name);
    }
    return last;
  }
  sketch::View view() const {
    const sketch::Snaps snaps(job);
    return tool->view({job, snaps, reach, grid, selected});
  }

  void point(double x, double y, sketch::Hold hold = {}) { feed(sketch::Moved{feet(x, y), hold}); }
  void click(double x, double y, sketch::Hold hold = {}) {
    feed(sketch::Moved{feet(x, y), hold});
    const sketch::Answer pressed = feed(sketch::Pressed{feet(x, y), hold, false});
    feed(sketch::Released{feet(x, y), hold});
    last = pressed;
  }
  void click_twice(double x, double y) {
    click(x, y);
    feed(sketch::Pressed{feet(x, y), {}, true});
  }
  void type(const std::string& field, const std::string& text, bool locked = true) {
    feed(sketch::Typed{field, text, locked});
  }
  // Enter in a field: it locks the value, then it is Enter.
  void enter(const std::string& field, const std::string& text) {
    type(field, text);
    feed(sketch::Key::enter);
  }
  void choose(const std::string& id) { feed(sketch::Chosen{id}); }
  void key(sketch::Key key) { feed(key); }

  const plan::Element& newest() const { return *job.elements.back(); }
  const sketch::Field* field(const std::string& id) const {
    shown_ = view();
    for (const sketch::Field& one : shown_.fields)
      if (one.id == id) return &one;
    return nullptr;
  }
  template <class T>
  const T& newest_of() const {
    return std::get<T>(newest().kind);
  }

 private:
  mutable sketch::View shown_;
};

}  // namespace hands
