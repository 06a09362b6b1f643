#include "ui/panels/fields_making.h"

namespace ui {

namespace {

using units::Length;

// Words that stand in the job's own files; what is not among them is kept and shown as it is.
std::vector<Choice> marks() {
  return {{"buried-service", Fields::tr("Buried service")},
          {"overhead-line", Fields::tr("Overhead line")},
          {"lot-line", Fields::tr("Lot line")},
          {"setback", Fields::tr("Setback")},
          {"easement", Fields::tr("Easement")},
          {"flood", Fields::tr("Flood line")},
          {"barrier", Fields::tr("Pool barrier")},
          {"septic", Fields::tr("Septic field")},
          {"well", Fields::tr("Well")},
          {"gate", Fields::tr("Gate")},
          {"path", Fields::tr("Way in")},
          {"drop-spot", Fields::tr("Drop spot")},
          {"downspout", Fields::tr("Downspout")}};
}
std::vector<Choice> removed() {
  return {{"concrete", Fields::tr("Concrete")},
          {"asphalt", Fields::tr("Asphalt")},
          {"unit-paving", Fields::tr("Unit paving")},
          {"wall", Fields::tr("Wall")},
          {"coping", Fields::tr("Coping")},
          {"sod", Fields::tr("Sod")},
          {"stump", Fields::tr("Stump")}};
}
std::vector<Choice> kept_out() {
  return {{"pillar", Fields::tr("Pillar")}, {"column", Fields::tr("Column")},       {"planter", Fields::tr("Planter")},
          {"tree", Fields::tr("Tree")},     {"equipment", Fields::tr("Equipment")}, {"inlet", Fields::tr("Inlet")}};
}

struct Of {
  const plan::Job& job;
  const plan::ElementId& id;

  template <class Kind, class Way>
  Field one(std::string name, const QString& label, Way way) const {
    return made<Kind>(id, std::move(name), label, way);
  }

  std::vector<Field> operator()(const plan::Building&) const {
    using K = plan::Building;
    std::vector<Field> found{one<K>("face", Fields::tr("Face"), [](auto& b) { return &b.face; }),
                             not_below_0(one<K>("footing_depth", Fields::tr("Footing below the ground"),
                                                [](auto& b) { return &b.footing_depth; }))};
    add(found, headed(Fields::tr("Heights"),
                      {one<K>("floor", Fields::tr("Floor inside"), [](auto& b) { return &b.floor; }),
                       one<K>("sill", Fields::tr("Lowest sill"), [](auto& b) { return &b.sill; }),
                       one<K>("weep", Fields::tr("Lowest weep"), [](auto& b) { return &b.weep; }),
                       one<K>("siding", Fields::tr("Bottom of siding"), [](auto& b) { return &b.siding; }),
                       one<K>("vent", Fields::tr("Lowest vent"), [](auto& b) { return &b.vent; })}));
    return found;
  }

  std::vector<Field> operator()(const plan::KeepOut& out) const {
    using K = plan::KeepOut;
    std::vector<Field> found{as_words(one<K>("what", Fields::tr("What"), [](auto& k) { return &k.what; }), kept_out())};
    if (out.what == "tree")
      found.push_back(not_below_0(one<K>("trunk", Fields::tr("Trunk, across"), [](auto& k) { return &k.trunk; })));
    found.push_back(
        part<K>(id, "pillar", Fields::tr("Built here of blocks"), [](auto& k) { return &k.pillar; }, plan::Pillar{}));
    if (!out.pillar) return found;
    const auto way = [](auto member) { return [member](auto& k) { return k.pillar ? member(*k.pillar) : nullptr; }; };
    add(found,
        {as_item(one<K>("pillar/block", Fields::tr("Block"), way([](auto& p) { return &p.block; })),
                 {"pillar-block", "wall-block", "seat-block"}),
         or_none(as_item(one<K>("pillar/cap", Fields::tr("Cap"), way([](auto& p) { return &p.cap; })),
                         {"pillar-cap", "cap"})),
         or_none(as_item(one<K>("pillar/adhesive", Fields::tr("Adhesive"), way([](auto& p) { return &p.adhesive; })),
                         {"adhesive"})),
         not_below_0(
             one<K>("pillar/height", Fields::tr("Height above the ground"), way([](auto& p) { return &p.height; }))),
         within(one<K>("pillar/bury", Fields::tr("Courses below ground"), way([](auto& p) { return &p.bury_courses; })),
                0, 50),
         as_build_up(one<K>("pillar/build_up", Fields::tr("Base build-up"), way([](auto& p) { return &p.build_up; })),
                     "wall-base")});
    add(found, layer_fields(job, id));
    return found;
  }

  std::vector<Field> operator()(const plan::Level&) const {
    using K = plan::Level;
    return {as_words(one<K>("what", Fields::tr("What"), [](auto& l) { return &l.what; }),
                     {{"existing", Fields::tr("Ground as it lies")},
                      {"finished", Fields::tr("Finished")},
                      {"bench-mark", Fields::tr("Bench mark")},
                      {"invert", Fields::tr("Invert")}}),
            one<K>("level", Fields::tr("Height, empty: from the level book"), [](auto& l) { return &l.height; }),
            or_none(as_words(one<K>("of", Fields::tr("Of the area"), [](auto& l) { return &l.of; }),
                             elements_of(job, {"paved-area"}))),
            one<K>("x", Fields::tr("East"), [](auto& l) { return &l.at.x; }),
            one<K>("y", Fields::tr("North"), [](auto& l) { return &l.at.y; })};
  }

  std::vector<Field> operator()(const plan::Feature& feature) const {
    using K = plan::Feature;
    std::vector<Field> found{as_item(one<K>("item", Fields::tr("Item"), [](auto& f) { return &f.item; }),
                                     {"light", "spout", "basin", "finish", "allowance"}),
                             within(one<K>("count", Fields::tr("Count"), [](auto& f) { return &f.count; }), 0, 100000),
                             one<K>("x", Fields::tr("East"), [](auto& f) { return &f.at.x; }),
                             one<K>("y", Fields::tr("North"), [](auto& f) { return &f.at.y; }),
                             part<K>(
                                 id, "spout", Fields::tr("Water over an edge"), [](auto& f) { return &f.spout; },
                                 plan::Spout{Length::inches(24), Length::inches(1), 0})};
    if (!feature.spout) return found;
    const auto way = [](auto member) { return [member](auto& f) { return f.spout ? member(*f.spout) : nullptr; }; };
    add(found,
        {not_below_0(one<K>("spout/length", Fields::tr("Length of the edge"), way([](auto& s) { return &s.length; }))),
         not_below_0(one<K>("spout/head", Fields::tr("Depth of water on it"), way([](auto& s) { return &s.head; }))),
         within(one<K>("spout/contractions", Fields::tr("Ends that draw in"),
                       way([](auto& s) { return &s.contractions; })),
                0, 2)});
    return found;
  }

  std::vector<Field> operator()(const plan::Removal& gone) const {
    using K = plan::Removal;
    std::vector<Field> found{
        as_words(one<K>("what", Fields::tr("What"), [](auto& r) { return &r.what; }), removed()),
        not_below_0(one<K>("thickness", Fields::tr("Thickness"), [](auto& r) { return &r.thickness; })),
        as_words(one<K>("fate", Fields::tr("Fate"), [](auto& r) { return &r.fate; }),
                 {{"haul", Fields::tr("Hauled away")},
                  {"reuse", Fields::tr("Used here again")},
                  {"leave", Fields::tr("Stays, built on")}}),
        one<K>("steel", Fields::tr("Steel in it"), [](auto& r) { return &r.steel; })};
    if (gone.line) found.push_back(not_below_0(one<K>("width", Fields::tr("Width"), [](auto& r) { return &r.width; })));
    if (gone.fate == "reuse")
      found.push_back(as_percent(one<K>("loss", Fields::tr("Breaks on the way"), [](auto& r) { return &r.loss; })));
    if (gone.fate == "leave")
      found.push_back(one<K>("top", Fields::tr("Top, empty: the ground"), [](auto& r) { return &r.top; }));
    return found;
  }

  std::vector<Field> operator()(const plan::SiteMark& mark) const {
    using K = plan::SiteMark;
    std::vector<Field> found{as_words(one<K>("what", Fields::tr("What"), [](auto& m) { return &m.what; }), marks())};
    const auto is = [&mark](std::string_view what) { return mark.what == what; };
    if (is("buried-service") || mark.depth)
      found.push_back(not_below_0(one<K>("depth", Fields::tr("Depth"), [](auto& m) { return &m.depth; })));
    if (is("overhead-line") || is("barrier") || mark.height)
      found.push_back(not_below_0(one<K>("height", Fields::tr("Above the ground"), [](auto& m) { return &m.height; })));
    if (is("gate") || is("path") || mark.width)
      found.push_back(not_below_0(one<K>("width", Fields::tr("Clear width"), [](auto& m) { return &m.width; })));
    if (!is("downspout") && !mark.roof_area_m2) return found;
    found.push_back(
        as_area(one<K>("roof_area", Fields::tr("Roof that it drains"), [](auto& m) { return &m.roof_area_m2; })));
    found.push_back(or_none(as_words(one<K>("into", Fields::tr("Into"), [](auto& m) { return &m.into; }),
                                     elements_of(job, {"drain-run"}))));
    return found;
  }

  std::vector<Field> operator()(const plan::Protection&) const {
    return {
        as_item(one<plan::Protection>("item", Fields::tr("Item"), [](auto& p) { return &p.item; }), {"protection"})};
  }

  std::vector<Field> operator()(const plan::Note&) const {
    Field text = one<plan::Note>("text", Fields::tr("Text"), [](auto& n) { return &n.text; });
    text.editor = Editor::long_text;
    return {std::move(text)};
  }

  std::vector<Field> operator()(const plan::BaseLine&) const {
    return {not_below_0(one<plan::BaseLine>("chord_step", Fields::tr("Offsets along a chord, apart"),
                                            [](auto& b) { return &b.chord_step; }))};
  }

  template <class Other>
  std::vector<Field> operator()(const Other&) const {
    return {};
  }
};

}  // namespace

std::vector<Field> site_fields(const plan::Job& job, const plan::Element& element) {
  return std::visit(Of{job, element.id}, element.kind);
}

}  // namespace ui
