#include "ui/panels/fields_making.h"

namespace ui {

namespace {

using plan::Pool;
using units::Length;

std::vector<Field> coping(const plan::ElementId& id, const Pool& pool) {
  const auto way = [](auto member) { return [member](auto& p) { return p.coping ? member(*p.coping) : nullptr; }; };
  plan::Coping fresh;
  fresh.overhang = Length::inch_64ths(96);
  std::vector<Field> found{part<Pool>(id, "coping", Fields::tr("Coping"), [](auto& p) { return &p.coping; }, fresh)};
  if (!pool.coping) return found;
  add(found, {as_item(made<Pool>(id, "coping/item", Fields::tr("Coping unit"), way([](auto& c) { return &c.item; })),
                      {"coping", "slab", "cap", "tread"}),
              made<Pool>(id, "coping/overhang", Fields::tr("Overhang"), way([](auto& c) { return &c.overhang; })),
              not_below_0(made<Pool>(id, "coping/joint", Fields::tr("Joint"), way([](auto& c) { return &c.joint; }))),
              as_words(made<Pool>(id, "coping/make", Fields::tr("On curves"), way([](auto& c) { return &c.make; })),
                       {{"any", Fields::tr("Least cutting")},
                        {"uncut", Fields::tr("Uncut, wedge joints")},
                        {"tapered", Fields::tr("Tapered by cuts")},
                        {"radius", Fields::tr("Radius pieces")}}),
              made<Pool>(id, "coping/level", Fields::tr("Top of coping"), [](auto& p) { return &p.coping_level; })});
  return found;
}

std::vector<Field> surround(const plan::ElementId& id, const Pool& pool) {
  const auto way = [](auto member) { return [member](auto& p) { return p.surround ? member(*p.surround) : nullptr; }; };
  std::vector<Field> found{part<Pool>(
      id, "surround", Fields::tr("Stone round the shell"), [](auto& p) { return &p.surround; },
      plan::Surround{"", Length::inches(12), Length::inches(36)})};
  if (!pool.surround) return found;
  add(found,
      {as_item(made<Pool>(id, "surround/item", Fields::tr("Stone"), way([](auto& s) { return &s.item; })),
               {"aggregate"}),
       not_below_0(
           made<Pool>(id, "surround/clearance", Fields::tr("Width"), way([](auto& s) { return &s.clearance; }))),
       not_below_0(made<Pool>(id, "surround/depth", Fields::tr("Depth"), way([](auto& s) { return &s.depth; })))});
  return found;
}

std::vector<Field> collar(const plan::ElementId& id, const Pool& pool) {
  const auto way = [](auto member) { return [member](auto& p) { return p.collar ? member(*p.collar) : nullptr; }; };
  std::vector<Field> found{part<Pool>(
      id, "collar", Fields::tr("Concrete collar"), [](auto& p) { return &p.collar; },
      plan::Collar{"", "", Length::inches(12), Length::inches(8), {}})};
  if (!pool.collar) return found;
  add(found,
      {as_item(made<Pool>(id, "collar/concrete", Fields::tr("Concrete"), way([](auto& c) { return &c.concrete; })),
               {"concrete"}),
       not_below_0(made<Pool>(id, "collar/width", Fields::tr("Width"), way([](auto& c) { return &c.width; }))),
       not_below_0(
           made<Pool>(id, "collar/thickness", Fields::tr("Thickness"), way([](auto& c) { return &c.thickness; }))),
       or_none(
           as_item(made<Pool>(id, "collar/bar", Fields::tr("Bar"), way([](auto& c) { return &c.bar; })), {"bar"}))});
  for (std::size_t i = 0; i < pool.collar->rings.size(); ++i)
    found.push_back(not_below_0(
        made<Pool>(id, "collar/ring/" + std::to_string(i), Fields::tr("Bar ring %1, out from the shell").arg(i + 1),
                   [i](auto& p) { return p.collar && i < p.collar->rings.size() ? &p.collar->rings[i] : nullptr; })));
  found.push_back(action<Pool>(id, "collar/ring/add", Fields::tr("Add a bar ring"),
                               step_name(Fields::tr("Bar rings"), id), [](Pool& p) {
                                 if (!p.collar) return;
                                 auto& rings = p.collar->rings;
                                 rings.push_back((rings.empty() ? Length() : rings.back()) + Length::inches(3));
                               }));
  if (!pool.collar->rings.empty())
    found.push_back(action<Pool>(id, "collar/ring/out", Fields::tr("Take the last ring out"),
                                 step_name(Fields::tr("Bar rings"), id), [](Pool& p) {
                                   if (p.collar && !p.collar->rings.empty()) p.collar->rings.pop_back();
                                 }));
  return found;
}

std::vector<Field> bonding(const plan::ElementId& id, const Pool& pool) {
  const auto way = [](auto member) { return [member](auto& p) { return p.bonding ? member(*p.bonding) : nullptr; }; };
  plan::Bonding fresh;
  fresh.out = Length::inches(18);
  fresh.depth = Length::inches(5);
  std::vector<Field> found{
      part<Pool>(id, "bonding", Fields::tr("Conductor ring"), [](auto& p) { return &p.bonding; }, fresh)};
  if (!pool.bonding) return found;
  add(found,
      {as_item(made<Pool>(id, "bonding/item", Fields::tr("Conductor"), way([](auto& b) { return &b.item; })),
               {"bonding"}),
       made<Pool>(id, "bonding/out", Fields::tr("Out from the shell"), way([](auto& b) { return &b.out; })),
       not_below_0(made<Pool>(id, "bonding/depth", Fields::tr("Depth"), way([](auto& b) { return &b.depth; }))),
       within(made<Pool>(id, "bonding/ties", Fields::tr("Ties"), way([](auto& b) { return &b.ties; })), 0, 1000)});
  return found;
}

}  // namespace

std::vector<Field> pool_fields(const plan::ElementId& id, const Pool& pool) {
  std::vector<Field> found = headed(Fields::tr("Coping"), coping(id, pool));
  add(found,
      headed(Fields::tr("Shell"),
             {not_below_0(made<Pool>(id, "shell", Fields::tr("Shell thickness"), [](auto& p) { return &p.shell; })),
              made<Pool>(id, "as_built", Fields::tr("Water’s edge measured as built"),
                         [](auto& p) { return &p.as_built; })}));
  add(found, surround(id, pool));
  add(found, collar(id, pool));
  add(found, bonding(id, pool));
  return found;
}

}  // namespace ui
