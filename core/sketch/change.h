// What the tools share that change what is drawn: names of edits, edits of all that is selected at once, and the
// collecting of a few points.
#pragma once

#include <functional>
#include <span>

#include "sketch/fields.h"
#include "sketch/guides.h"
#include "sketch/tool.h"

namespace sketch {

std::string noun(const plan::Kind& kind);  // "area", "wall" ... for the names of edits
// "Move area A1", "Move 3 elements".
std::string edit_name(const std::string& verb, const plan::Job& job, std::span<const plan::ElementId> ids);

Answer refuse(problem::Problem why);
Answer refuse(const char* code, const char* text, const char* mend);
Answer done(plan::Job after, std::string name, std::vector<plan::ElementId> selected);

// The selected elements that may be changed: a locked site plan may not.
std::vector<plan::ElementId> free_of(const Scene& scene);
// Each of them through `change`; the first fault ends it.
problem::Result<plan::Job> changed(const plan::Job& job, std::span<const plan::ElementId> ids,
                                   const std::function<problem::Result<plan::Element>(plan::Element)>& change);

// The outlines of elements as strokes, changed by `change` (what can't be changed is left out): rubber shapes.
void add_strokes(View& view, const plan::Job& job, std::span<const plan::ElementId> ids, Pen pen,
                 const std::function<problem::Result<plan::Element>(plan::Element)>& change);
void add_strokes(View& view, const plan::Element& element, Pen pen);

// A tool that acts on what is selected after `count` points are set, by clicks or by what is typed. Escape drops the
// points, then leaves; back and undo take one back. Where nothing is selected a click selects.
class PointsTool : public Tool {
 public:
  PointsTool(const char* hand, std::size_t count, std::vector<FieldKind> fields);
  Answer take(const Event& event, const Scene& scene) final;
  View view(const Scene& scene) const final;

 protected:
  // With as many points as there are, the last one where the pointer is or what is typed gives.
  virtual Answer finish(const std::vector<geometry::Point>& points, const Scene& scene) = 0;
  virtual const char* wants(std::size_t set) const = 0;
  virtual void show(View& view, const std::vector<geometry::Point>& points, const Scene& scene) const = 0;
  virtual bool typed_is_enough(std::size_t set) const;  // Enter finishes with what is typed, without further points
  virtual bool choose(const std::string& id);
  virtual void show_fields(Fields& fields, const std::vector<geometry::Point>& points, const Scene& scene) const;
  const Fields& fields() const { return fields_; }

 private:
  Answer press(const Pressed& pressed, const Scene& scene);
  Answer set(geometry::Point at, const Scene& scene);
  Answer end(const std::vector<geometry::Point>& points, const Scene& scene);
  Aimed aim(const Scene& scene) const;
  std::vector<geometry::Point> with_pointer(const Scene& scene) const;

  const char* hand_;
  std::size_t count_;
  Fields fields_;
  std::vector<geometry::Point> points_;
  std::optional<Pointer> pointer_;
};

}  // namespace sketch
