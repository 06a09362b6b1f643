#include "ui/desk/own_build_up.h"

#include <algorithm>

namespace ui {

namespace {

template <class Pointer>
struct BuildUpOf {
  template <class Kind>
  Pointer operator()(Kind& kind) const {
    if constexpr (requires { kind.build_up; })
      return &kind.build_up;
    else if constexpr (requires { kind.pillar->build_up; })
      return kind.pillar ? &kind.pillar->build_up : nullptr;
    else if constexpr (requires { kind.stone->build_up; })
      return kind.stone ? &kind.stone->build_up : nullptr;
    else
      return nullptr;
  }
};

// "A1" as it may stand in an id of the catalogue: small letters, digits, dot, dash and underscore.
std::string as_id(const plan::ElementId& element) {
  std::string made;
  for (const char letter : element) {
    const bool large = letter >= 'A' && letter <= 'Z';
    const bool plain =
        large || (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9') || letter == '.' || letter == '-';
    made += !plain ? '_' : large ? static_cast<char>(letter - 'A' + 'a') : letter;
  }
  return made;
}

constexpr std::string_view mark = "-of-";

bool is_own(const plan::Id& build_up) { return build_up.find(mark) != std::string::npos; }

// The id of the catalogue's build-up that an own one was made from.
plan::Id origin(const plan::Id& build_up) { return build_up.substr(0, build_up.rfind(mark)); }

plan::Id free_id(const catalogue::Catalogue& catalogue, const plan::Id& from, const plan::ElementId& element) {
  const plan::Id wanted = (is_own(from) ? origin(from) : from) + std::string(mark) + as_id(element);
  plan::Id id = wanted;
  for (int number = 2; catalogue.build_up(id); ++number) id = wanted + "-" + std::to_string(number);
  return id;
}

// "... of A1", without the "of A2" that it may have had.
std::string named(const std::string& name, const std::string& of, const plan::ElementId& element) {
  const std::size_t before = name.rfind(of);
  return (before == std::string::npos ? name : name.substr(0, before)) + of + element;
}

plan::Job pointed_to(const plan::Job& job, const plan::Element& element, const plan::Id& build_up) {
  plan::Element after = element;
  if (plan::Id* id = std::visit(BuildUpOf<plan::Id*>{}, after.kind)) *id = build_up;
  return plan::with(job, std::move(after));
}

}  // namespace

const plan::Id* build_up_of(const plan::Element& element) {
  return std::visit(BuildUpOf<const plan::Id*>{}, element.kind);
}

std::vector<plan::ElementId> users_of(const plan::Job& job, const plan::Id& build_up) {
  std::vector<plan::ElementId> found;
  for (const plan::ElementPtr& element : job.elements) {
    const plan::Id* id = build_up_of(*element);
    if (id && *id == build_up) found.push_back(element->id);
  }
  return found;
}

plan::Job with_layers(const plan::Job& job, const plan::ElementId& element,
                      const std::function<void(std::vector<catalogue::Layer>&)>& change) {
  const plan::Element* under = job.find(element);
  const plan::Id* id = under ? build_up_of(*under) : nullptr;
  const catalogue::BuildUp* now = id ? job.catalogue->build_up(*id) : nullptr;
  if (!now) return job;
  catalogue::BuildUp made = *now;
  change(made.layers);
  if (made == *now) return job;
  auto catalogue = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  plan::Job after = job;
  const bool in_place = is_own(*id) && users_of(job, *id).size() == 1;
  if (!in_place) {
    made.id = free_id(*catalogue, *id, element);
    const bool had = is_own(*id);
    made.name.en = had ? named(made.name.en, " of ", element) : made.name.en + " of " + element;
    made.name.es = had ? named(made.name.es, " de ", element) : made.name.es + " de " + element;
    after = pointed_to(after, *under, made.id);
  }
  catalogue->build_ups[made.id] = std::move(made);
  after.catalogue = std::move(catalogue);
  return after;
}

plan::Job with_layer(const plan::Job& job, const plan::ElementId& element, std::size_t layer,
                     const std::function<void(catalogue::Layer&)>& change) {
  return with_layers(job, element, [&](std::vector<catalogue::Layer>& layers) {
    if (layer < layers.size()) change(layers[layer]);
  });
}

}  // namespace ui
