#include "ui/panels/fields_making.h"

namespace ui {

namespace {

using plan::Finish;
using plan::PavedArea;
using units::Length;

// A way to a member of the area's finish.
template <class Member>
auto of_finish(Member member) {
  return [member](auto& area) { return area.finish ? member(*area.finish) : nullptr; };
}

Field way_field(const plan::ElementId& id) {
  Field field;
  field.id = "finish/way";
  field.label = Fields::tr("Finished surface");
  field.editor = Editor::words;
  field.may_be_empty = true;
  field.by_order = true;
  field.step = step_name(field.label, id);
  field.choices = {{"edges", Fields::tr("Falls away from edges")},
                   {"plane", Fields::tr("One plane")},
                   {"two-falls", Fields::tr("Two falls from a line")},
                   {"levels", Fields::tr("Through finished levels")},
                   {"along", Fields::tr("Along a line with heights")}};
  field.get = [id](const plan::Job& job) -> Value {
    const plan::Element* element = job.find(id);
    const auto* area = element ? std::get_if<PavedArea>(&element->kind) : nullptr;
    return area && area->finish ? Value(static_cast<std::int64_t>(area->finish->way)) : Value{};
  };
  field.set = [id](const plan::Job& job, const Value& value) {
    const auto* way = std::get_if<std::int64_t>(&value);
    return changed<PavedArea>(job, id, [&](PavedArea& area) {
      if (!way) return area.finish.reset();
      if (!area.finish) area.finish.emplace();
      area.finish->way = static_cast<Finish::Way>(*way);
    });
  };
  return field;
}

std::vector<Field> one_fall(const plan::Job& job, const plan::ElementId& id, std::size_t i) {
  const std::string at = "finish/from/" + std::to_string(i) + "/";
  const auto way = [i](auto member) {
    return [i, member](auto& area) {
      return area.finish && i < area.finish->from.size() ? member(area.finish->from[i]) : nullptr;
    };
  };
  std::vector<Field> found{
      or_none(as_words(
          made<PavedArea>(id, at + "element", Fields::tr("Away from"), way([](auto& f) { return &f.element; })),
          elements_of(job, {"pool", "building", "wall", "drain-run", "edge-run"}))),
      within(
          made<PavedArea>(id, at + "edge", Fields::tr("Edge, empty: all of it"), way([](auto& f) { return &f.edge; })),
          0, 10000),
      made<PavedArea>(id, at + "height", Fields::tr("Height there"), way([](auto& f) { return &f.height; })),
      made<PavedArea>(id, at + "height_end", Fields::tr("At its end"), way([](auto& f) { return &f.height_end; })),
      made<PavedArea>(id, at + "lip", Fields::tr("Starts lower by"), way([](auto& f) { return &f.lip; })),
      as_percent(made<PavedArea>(id, at + "fall", Fields::tr("Fall"), way([](auto& f) { return &f.fall; })), -0.5, 0.5),
      action<PavedArea>(id, at + "out", Fields::tr("Take this one out"), step_name(Fields::tr("Falls"), id),
                        [i](PavedArea& area) {
                          if (area.finish && i < area.finish->from.size())
                            area.finish->from.erase(area.finish->from.begin() + static_cast<std::ptrdiff_t>(i));
                        })};
  return headed(Fields::tr("Falls away from, %1").arg(i + 1), std::move(found));
}

std::vector<Field> edges(const plan::Job& job, const plan::ElementId& id, const Finish& finish) {
  std::vector<Field> found;
  for (std::size_t i = 0; i < finish.from.size(); ++i) add(found, one_fall(job, id, i));
  found.push_back(action<PavedArea>(id, "finish/from/add", Fields::tr("Add what it falls away from"),
                                    step_name(Fields::tr("Falls"), id), [](PavedArea& area) {
                                      if (area.finish) area.finish->from.emplace_back();
                                    }));
  return found;
}

Field fall(const plan::ElementId& id, const QString& label) {
  return as_percent(made<PavedArea>(id, "finish/fall", label, of_finish([](auto& f) { return &f.fall; })), -0.5, 0.5);
}
Field height(const plan::ElementId& id, const QString& label) {
  return made<PavedArea>(id, "finish/height", label, of_finish([](auto& f) { return &f.height; }));
}

std::vector<Field> plane(const plan::ElementId& id) {
  return {
      height(id, Fields::tr("Height")),
      made<PavedArea>(id, "finish/x", Fields::tr("Of the point, east"), of_finish([](auto& f) { return &f.at.x; })),
      made<PavedArea>(id, "finish/y", Fields::tr("Of the point, north"), of_finish([](auto& f) { return &f.at.y; })),
      fall(id, Fields::tr("Fall")),
      within(made<PavedArea>(id, "finish/direction", Fields::tr("Falls towards"),
                             of_finish([](auto& f) { return &f.direction; })),
             -360, 360)};
}

std::vector<Field> two_falls(const plan::ElementId& id) {
  return {height(id, Fields::tr("Height at the line’s start")),
          made<PavedArea>(id, "finish/height_end", Fields::tr("At the line’s end"),
                          of_finish([](auto& f) { return &f.height_end; })),
          fall(id, Fields::tr("Fall on the left")),
          as_percent(made<PavedArea>(id, "finish/fall_right", Fields::tr("Fall on the right"),
                                     of_finish([](auto& f) { return &f.fall_right; })),
                     -0.5, 0.5)};
}

std::vector<Field> along(const plan::ElementId& id, const Finish& finish) {
  std::vector<Field> found;
  for (std::size_t i = 0; i < finish.heights.size(); ++i) {
    const std::string at = "finish/heights/" + std::to_string(i);
    const auto way = [i](auto member) {
      return of_finish([i, member](auto& f) { return i < f.heights.size() ? member(f.heights[i]) : nullptr; });
    };
    found.push_back(made<PavedArea>(id, at + "/at", Fields::tr("%1: along the line").arg(i + 1),
                                    way([](auto& h) { return &h.at; })));
    found.push_back(made<PavedArea>(id, at + "/height", Fields::tr("%1: height").arg(i + 1),
                                    way([](auto& h) { return &h.height; })));
  }
  found.push_back(action<PavedArea>(
      id, "finish/heights/add", Fields::tr("Add a height"), step_name(Fields::tr("Heights"), id), [](PavedArea& area) {
        if (!area.finish) return;
        auto& all = area.finish->heights;
        all.push_back(all.empty() ? plan::HeightAt{}
                                  : plan::HeightAt{all.back().at + Length::feet(10), all.back().height});
      }));
  found.push_back(fall(id, Fields::tr("Fall across, to the right")));
  return found;
}

std::vector<Field> of_way(const plan::Job& job, const plan::ElementId& id, const Finish& finish) {
  switch (finish.way) {
    case Finish::Way::edges: return edges(job, id, finish);
    case Finish::Way::plane: return plane(id);
    case Finish::Way::two_falls: return two_falls(id);
    case Finish::Way::along: return along(id, finish);
    case Finish::Way::levels: break;
  }
  int named = 0;
  for (const plan::ElementPtr& element : job.elements)
    if (const auto* level = std::get_if<plan::Level>(&element->kind)) named += level->of == id ? 1 : 0;
  Field told;
  told.id = "finish/levels";
  told.label = Fields::tr("Finished levels that name %1").arg(QString::fromStdString(id));
  told.editor = Editor::told;
  told.get = [named](const plan::Job&) -> Value { return static_cast<std::int64_t>(named); };
  told.set = [](const plan::Job& now, const Value&) { return now; };
  return {std::move(told)};
}

}  // namespace

std::vector<Field> area_levels(const plan::Job& job, const plan::ElementId& id, const PavedArea& area) {
  std::vector<Field> found{way_field(id)};
  if (area.finish) add(found, of_way(job, id, *area.finish));
  add(found,
      headed(Fields::tr("Use and water"), {made<PavedArea>(id, "access", Fields::tr("Access route, falls have limits"),
                                                           [](auto& a) { return &a.access; }),
                                           or_none(as_words(made<PavedArea>(id, "water_to", Fields::tr("Water goes to"),
                                                                            [](auto& a) { return &a.water_to; }),
                                                            elements_of(job, {"drain-run"})))}));
  return found;
}

}  // namespace ui
