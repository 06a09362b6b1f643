#include "ui/panels/fields_making.h"

namespace ui {

namespace {

using plan::DrainRun;
using plan::EdgeRun;
using units::Length;

std::vector<std::string> edge_kinds(const EdgeRun& run) {
  if (run.what == "kerb") return {"kerb-unit", "edging-unit"};
  return {"restraint", "edging-unit", "kerb-unit"};
}

std::vector<Field> footing(const plan::ElementId& id, const EdgeRun& run) {
  const auto way = [](auto member) { return [member](auto& r) { return r.footing ? member(*r.footing) : nullptr; }; };
  std::vector<Field> found{part<EdgeRun>(
      id, "footing", Fields::tr("Concrete footing"), [](auto& r) { return &r.footing; },
      plan::Footing{"", Length::inches(12), Length::inches(6), Length::inches(4)})};
  if (!run.footing) return found;
  add(found,
      {as_item(made<EdgeRun>(id, "footing/concrete", Fields::tr("Concrete"), way([](auto& f) { return &f.concrete; })),
               {"concrete"}),
       not_below_0(made<EdgeRun>(id, "footing/width", Fields::tr("Width"), way([](auto& f) { return &f.width; }))),
       not_below_0(
           made<EdgeRun>(id, "footing/thickness", Fields::tr("Thickness"), way([](auto& f) { return &f.thickness; }))),
       not_below_0(made<EdgeRun>(id, "footing/haunch", Fields::tr("Haunch"), way([](auto& f) { return &f.haunch; })))});
  return found;
}

std::vector<Field> weeps(const plan::ElementId& id, const EdgeRun& run) {
  const auto way = [](auto member) { return [member](auto& r) { return r.weeps ? member(*r.weeps) : nullptr; }; };
  std::vector<Field> found{
      part<EdgeRun>(id, "weeps", Fields::tr("Weeps"), [](auto& r) { return &r.weeps; }, plan::Weeps{})};
  if (!run.weeps) return found;
  add(found,
      {as_item(made<EdgeRun>(id, "weeps/item", Fields::tr("Weep"), way([](auto& w) { return &w.item; })), {"weep"}),
       not_below_0(made<EdgeRun>(id, "weeps/spacing", Fields::tr("Apart"), way([](auto& w) { return &w.spacing; })))});
  return found;
}

std::vector<Field> spikes(const plan::ElementId& id, const EdgeRun& run) {
  const auto way = [](auto member) { return [member](auto& r) { return r.spikes ? member(*r.spikes) : nullptr; }; };
  std::vector<Field> found{part<EdgeRun>(
      id, "spikes", Fields::tr("Spikes"), [](auto& r) { return &r.spikes; },
      plan::Spikes{"", Length::inches(24), Length::inches(12)})};
  if (!run.spikes) return found;
  add(found,
      {as_item(made<EdgeRun>(id, "spikes/item", Fields::tr("Spike"), way([](auto& s) { return &s.item; })), {"spike"}),
       not_below_0(made<EdgeRun>(id, "spikes/spacing", Fields::tr("Apart"), way([](auto& s) { return &s.spacing; }))),
       not_below_0(made<EdgeRun>(id, "spikes/on_curves", Fields::tr("Apart on curves"),
                                 way([](auto& s) { return &s.on_curves; })))});
  return found;
}

}  // namespace

std::vector<Field> edge_run_fields(const plan::ElementId& id, const EdgeRun& run) {
  std::vector<Field> found{
      as_words(
          made<EdgeRun>(id, "what", Fields::tr("What"), [](auto& r) { return &r.what; }),
          {{"restraint", Fields::tr("Restraint")}, {"kerb", Fields::tr("Kerb")}, {"edging", Fields::tr("Edging")}}),
      as_item(made<EdgeRun>(id, "item", Fields::tr("Unit"), [](auto& r) { return &r.item; }), edge_kinds(run)),
      or_none(as_item(
          made<EdgeRun>(id, "item_on_curves", Fields::tr("Unit on curves"), [](auto& r) { return &r.item_on_curves; }),
          edge_kinds(run))),
      as_words(made<EdgeRun>(id, "paving", Fields::tr("Paving lies"), [](auto& r) { return &r.paving; }),
               {{"left", Fields::tr("Left of the line")}, {"right", Fields::tr("Right of the line")}}),
      not_below_0(
          made<EdgeRun>(id, "upstand", Fields::tr("Above the paving, 0: flush"), [](auto& r) { return &r.upstand; }))};
  add(found, footing(id, run));
  add(found, weeps(id, run));
  add(found, spikes(id, run));
  return found;
}

std::vector<Field> drain_run_fields(const plan::Job& job, const plan::ElementId& id, const DrainRun& run) {
  std::vector<Choice> others = elements_of(job, {"drain-run"});
  std::erase_if(others, [&id](const Choice& choice) { return choice.key == id; });
  const std::vector<std::string> kinds = run.what == "channel"  ? std::vector<std::string>{"channel"}
                                         : run.what == "sleeve" ? std::vector<std::string>{"conduit", "pipe"}
                                                                : std::vector<std::string>{"pipe"};
  std::vector<Field> found{
      as_words(made<DrainRun>(id, "what", Fields::tr("What"), [](auto& r) { return &r.what; }),
               {{"pipe", Fields::tr("Pipe")}, {"channel", Fields::tr("Channel")}, {"sleeve", Fields::tr("Sleeve")}}),
      as_item(made<DrainRun>(id, "item", Fields::tr("Item"), [](auto& r) { return &r.item; }), kinds),
      not_below_0(made<DrainRun>(id, "width", Fields::tr("Width at the surface"), [](auto& r) { return &r.width; }))};
  add(found,
      headed(Fields::tr("Levels"),
             {made<DrainRun>(id, "start", Fields::tr("Invert at the start"), [](auto& r) { return &r.start; }),
              as_percent(made<DrainRun>(id, "fall", Fields::tr("Fall"), [](auto& r) { return &r.fall; }), -0.5, 1),
              made<DrainRun>(id, "outlet_ground", Fields::tr("Ground at the outlet"),
                             [](auto& r) { return &r.outlet_ground; })}));
  add(found,
      headed(Fields::tr("Where it goes"),
             {or_none(as_words(made<DrainRun>(id, "into", Fields::tr("Into"), [](auto& r) { return &r.into; }),
                               std::move(others))),
              or_none(as_item(made<DrainRun>(id, "joiner", Fields::tr("Joined by"), [](auto& r) { return &r.joiner; }),
                              {"fitting"})),
              or_none(as_item(
                  made<DrainRun>(id, "outlet_item", Fields::tr("Outlet"), [](auto& r) { return &r.outlet_item; }),
                  {"outlet"})),
              or_none(as_item(made<DrainRun>(id, "bend", Fields::tr("Bend"), [](auto& r) { return &r.bend; }),
                              {"fitting"}))}));
  add(found,
      headed(Fields::tr("Trench"), {as_build_up(made<DrainRun>(id, "build_up", Fields::tr("Build-up of the trench"),
                                                               [](auto& r) { return &r.build_up; }),
                                                "pipe")}));
  add(found, layer_fields(job, id));
  if (run.what == "sleeve")
    found.push_back(
        made<DrainRun>(id, "caps_and_string", Fields::tr("Closed by"), [](auto& r) { return &r.caps_and_string; }));
  return found;
}

}  // namespace ui
