#include "ui/panels/fields_making.h"

namespace ui {

namespace {

using plan::Steps;
using plan::Wall;
using units::Length;
const std::vector<std::string> blocks{"wall-block", "seat-block", "pillar-block"};
const std::vector<std::string> caps{"cap", "coping", "pillar-cap", "tread"};

// Heights along the wall, as many as there are; each a place and a height.
template <class Way>
std::vector<Field> heights(const plan::ElementId& id, const std::string& name, const QString& heading, Way list,
                           std::size_t count, Length at_end) {
  std::vector<Field> found;
  for (std::size_t i = 0; i < count; ++i) {
    const std::string at = name + "/" + std::to_string(i);
    const QString number = QString::number(i + 1);
    found.push_back(made<Wall>(id, at + "/at", Fields::tr("%1: along the wall").arg(number),
                               [list, i](auto& w) { return i < list(w).size() ? &list(w)[i].at : nullptr; }));
    found.push_back(made<Wall>(id, at + "/height", Fields::tr("%1: height").arg(number),
                               [list, i](auto& w) { return i < list(w).size() ? &list(w)[i].height : nullptr; }));
  }
  const QString step = step_name(heading, id);
  found.push_back(action<Wall>(id, name + "/add", count == 0 ? Fields::tr("Give heights") : Fields::tr("Add a height"),
                               step, [list, at_end](Wall& w) {
                                 auto& all = list(w);
                                 if (all.empty()) all.push_back({Length(), Length()});
                                 all.push_back({std::max(at_end, all.back().at), all.back().height});
                               }));
  if (count > 0)
    found.push_back(action<Wall>(id, name + "/out", Fields::tr("Take the last height out"), step, [list](Wall& w) {
      if (!list(w).empty()) list(w).pop_back();
    }));
  return headed(heading, std::move(found));
}

Length straight_length(const plan::DrawnLine& line) {
  double metres = 0;
  for (std::size_t i = 0; i < line.edges.size(); ++i) {
    const geometry::Point to = i + 1 < line.edges.size() ? line.edges[i + 1].from : line.end;
    const geometry::Vec along{(to.x - line.edges[i].from.x).metres().si(), (to.y - line.edges[i].from.y).metres().si()};
    metres += geometry::length(along);
  }
  return Length::nearest(units::Metres(metres));
}

std::vector<Field> built_of(const plan::ElementId& id) {
  return {
      as_item(made<Wall>(id, "block", Fields::tr("Block"), [](auto& w) { return &w.block; }), blocks),
      or_none(as_item(made<Wall>(id, "cap", Fields::tr("Cap"), [](auto& w) { return &w.cap; }), caps)),
      not_below_0(
          made<Wall>(id, "wall/cap_overhang", Fields::tr("Cap overhang"), [](auto& w) { return &w.cap_overhang; })),
      or_none(as_item(made<Wall>(id, "adhesive", Fields::tr("Adhesive"), [](auto& w) { return &w.adhesive; }),
                      {"adhesive"})),
      made<Wall>(id, "glued", Fields::tr("Glued between courses"), [](auto& w) { return &w.glued; }),
      or_none(
          as_item(made<Wall>(id, "curve_block", Fields::tr("Block on curves"), [](auto& w) { return &w.curve_block; }),
                  blocks)),
      or_none(as_item(made<Wall>(id, "half_block", Fields::tr("Half block"), [](auto& w) { return &w.half_block; }),
                      blocks)),
      or_none(as_item(
          made<Wall>(id, "corner_block", Fields::tr("Corner block"), [](auto& w) { return &w.corner_block; }), blocks)),
      or_none(
          as_item(made<Wall>(id, "end_block", Fields::tr("End block"), [](auto& w) { return &w.end_block; }), blocks)),
      or_none(as_item(made<Wall>(id, "curve_cap", Fields::tr("Cap on curves"), [](auto& w) { return &w.curve_cap; }),
                      caps)),
      not_below_0(
          made<Wall>(id, "thickness", Fields::tr("Thickness, 0: of the block"), [](auto& w) { return &w.thickness; }))};
}

std::vector<Field> stands(const plan::ElementId& id) {
  const std::vector<Choice> ends{{"free", Fields::tr("Shows")},
                                 {"grade", Fields::tr("Dies into the ground")},
                                 {"against", Fields::tr("Stands against something")}};
  return {
      made<Wall>(id, "existing", Fields::tr("Stands already"), [](auto& w) { return &w.existing; }),
      made<Wall>(id, "free_standing", Fields::tr("Free standing, two faces"), [](auto& w) { return &w.free_standing; }),
      as_words(made<Wall>(id, "behind", Fields::tr("Body lies"), [](auto& w) { return &w.behind; }),
               {{"left", Fields::tr("Left of the line")}, {"right", Fields::tr("Right of the line")}}),
      as_words(made<Wall>(id, "start_end", Fields::tr("At the start"), [](auto& w) { return &w.start_end; }), ends),
      as_words(made<Wall>(id, "finish_end", Fields::tr("At the end"), [](auto& w) { return &w.finish_end; }), ends)};
}

std::vector<Field> height_fields(const plan::ElementId& id, const Wall& wall) {
  const Length end = straight_length(wall.line);
  std::vector<Field> found = headed(
      Fields::tr("Heights"),
      {made<Wall>(id, "wall/height", Fields::tr("Top above the ground in front"), [](auto& w) { return &w.height; }),
       as_words(made<Wall>(id, "fixed", Fields::tr("Keeps its height"), [](auto& w) { return &w.fixed; }),
                {{"top", Fields::tr("Top")}, {"base", Fields::tr("Base")}}),
       within(made<Wall>(id, "wall/bury_courses", Fields::tr("Courses below ground"),
                         [](auto& w) { return &w.bury_courses; }),
              0, 50)});
  add(found,
      heights(id, "top", Fields::tr("Finished top"), [](auto& w) -> auto& { return w.top; }, wall.top.size(), end));
  add(found, heights(
                 id, "ground", Fields::tr("Ground in front"), [](auto& w) -> auto& { return w.ground; },
                 wall.ground.size(), end));
  add(found, heights(
                 id, "ground_behind", Fields::tr("Ground behind"), [](auto& w) -> auto& { return w.ground_behind; },
                 wall.ground_behind.size(), end));
  return found;
}

std::vector<Field> stone(const plan::ElementId& id, const Wall& wall) {
  const auto way = [](auto member) { return [member](auto& w) { return w.stone ? member(*w.stone) : nullptr; }; };
  std::vector<Field> found{part<Wall>(
      id, "stone", Fields::tr("Stone base and drainage stone"), [](auto& w) { return &w.stone; }, plan::WallStone{})};
  if (!wall.stone) return found;
  const auto one = [&](const char* name, const QString& label, auto member, const char* kind) {
    return or_none(as_item(made<Wall>(id, name, label, way(member)), {kind}));
  };
  add(found, {as_build_up(made<Wall>(id, "stone/build_up", Fields::tr("Base build-up"),
                                     way([](auto& s) { return &s.build_up; })),
                          "wall-base"),
              one(
                  "stone/drain", Fields::tr("Stone behind"), [](auto& s) { return &s.drain; }, "aggregate"),
              not_below_0(made<Wall>(id, "stone/drain_depth", Fields::tr("Its depth, front to back"),
                                     way([](auto& s) { return &s.drain_depth; }))),
              not_below_0(made<Wall>(id, "stone/soil_cap", Fields::tr("Earth over the stone"),
                                     way([](auto& s) { return &s.soil_cap; }))),
              one(
                  "stone/core", Fields::tr("Stone in the voids"), [](auto& s) { return &s.core; }, "aggregate"),
              one(
                  "stone/fabric", Fields::tr("Fabric behind"), [](auto& s) { return &s.fabric; }, "fabric"),
              one("stone/fill", Fields::tr("Fill behind the stone"), [](auto& s) { return &s.fill; }, "aggregate")});
  return found;
}

std::vector<Field> pipe(const plan::Job& job, const plan::ElementId& id, const Wall& wall) {
  const auto way = [](auto member) { return [member](auto& w) { return w.pipe ? member(*w.pipe) : nullptr; }; };
  std::vector<Field> found{
      part<Wall>(id, "pipe", Fields::tr("Pipe behind"), [](auto& w) { return &w.pipe; }, plan::WallPipe{})};
  if (wall.pipe)
    add(found,
        {as_item(made<Wall>(id, "pipe/item", Fields::tr("Pipe"), way([](auto& p) { return &p.item; })), {"pipe"}),
         as_percent(made<Wall>(id, "pipe/fall", Fields::tr("Fall"), way([](auto& p) { return &p.fall; }))),
         or_none(as_item(
             made<Wall>(id, "pipe/outlet_item", Fields::tr("Outlet pipe"), way([](auto& p) { return &p.outlet_item; })),
             {"pipe"})),
         not_below_0(made<Wall>(id, "pipe/outlet_length", Fields::tr("Length of one outlet"),
                                way([](auto& p) { return &p.outlet_length; })))});
  found.push_back(or_none(
      as_words(made<Wall>(id, "drained_by", Fields::tr("Drained by a run"), [](auto& w) { return &w.drained_by; }),
               elements_of(job, {"drain-run"}))));
  return found;
}

}  // namespace

std::vector<Field> wall_fields(const plan::Job& job, const plan::ElementId& id, const Wall& wall) {
  std::vector<Field> found = headed(Fields::tr("Built of"), built_of(id));
  add(found, height_fields(id, wall));
  add(found, headed(Fields::tr("How it stands"), stands(id)));
  add(found, headed(Fields::tr("Base and drainage"), stone(id, wall)));
  if (wall.stone) add(found, layer_fields(job, id));
  add(found, pipe(job, id, wall));
  return found;
}

std::vector<Field> steps_fields(const plan::Job& job, const plan::ElementId& id, const Steps& steps) {
  std::vector<Field> found = headed(
      Fields::tr("Flight"),
      {as_item(made<Steps>(id, "unit", Fields::tr("Step or tread"), [](auto& s) { return &s.unit; }),
               {"step-unit", "tread", "coping", "slab"}),
       or_none(as_item(
           made<Steps>(id, "riser_block", Fields::tr("Riser block"), [](auto& s) { return &s.riser_block; }), blocks)),
       not_below_0(made<Steps>(id, "rise", Fields::tr("Rise, foot to landing"), [](auto& s) { return &s.rise; })),
       within(made<Steps>(id, "risers", Fields::tr("Risers, 0: shared out"), [](auto& s) { return &s.risers; }), 0,
              200),
       within(made<Steps>(id, "up", Fields::tr("Direction up"), [](auto& s) { return &s.up; }), -360, 360),
       as_percent(made<Steps>(id, "tread_fall", Fields::tr("Fall of a tread"), [](auto& s) { return &s.tread_fall; }),
                  0, 0.2),
       not_below_0(made<Steps>(id, "lap", Fields::tr("Lies on the one below by"), [](auto& s) { return &s.lap; })),
       not_below_0(made<Steps>(id, "overhang", Fields::tr("Nose past the riser"), [](auto& s) { return &s.overhang; })),
       or_none(as_item(made<Steps>(id, "adhesive", Fields::tr("Adhesive"), [](auto& s) { return &s.adhesive; }),
                       {"adhesive"})),
       made<Steps>(id, "public_way", Fields::tr("On a public way"), [](auto& s) { return &s.public_way; })});
  add(found,
      headed(Fields::tr("Base"), {as_build_up(made<Steps>(id, "build_up", Fields::tr("Build-up under each tread"),
                                                          [](auto& s) { return &s.build_up; }),
                                              "steps")}));
  add(found, layer_fields(job, id));
  const auto way = [](auto member) { return [member](auto& s) { return s.cheeks ? member(*s.cheeks) : nullptr; }; };
  found.push_back(part<Steps>(
      id, "cheeks", Fields::tr("Walls beside the steps"), [](auto& s) { return &s.cheeks; }, plan::Cheeks{}));
  if (steps.cheeks)
    add(found,
        {as_item(made<Steps>(id, "cheeks/block", Fields::tr("Block"), way([](auto& c) { return &c.block; })), blocks),
         or_none(as_item(made<Steps>(id, "cheeks/cap", Fields::tr("Cap"), way([](auto& c) { return &c.cap; })), caps)),
         made<Steps>(id, "cheeks/left", Fields::tr("On the left, going up"), way([](auto& c) { return &c.left; })),
         made<Steps>(id, "cheeks/right", Fields::tr("On the right, going up"), way([](auto& c) { return &c.right; })),
         made<Steps>(id, "cheeks/above", Fields::tr("Above the tread"), way([](auto& c) { return &c.above; }))});
  return found;
}

}  // namespace ui
