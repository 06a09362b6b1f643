#include "plan/instead.h"

namespace plan {

Job at_prices_of(const Job& job, const catalogue::Catalogue& list) {
  catalogue::Catalogue own = *job.catalogue;
  for (auto& [id, item] : own.items) {
    const catalogue::Item* other = list.item(id);
    if (!other || !other->price || other->price == item->price) continue;
    catalogue::Item priced = *item;
    priced.price = other->price;
    item = std::make_shared<const catalogue::Item>(std::move(priced));
  }
  Job made = job;
  made.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(own));
  return made;
}

Job laid_instead(const Job& job, const std::vector<ElementId>& areas,
                 const std::function<PavedArea(const PavedArea&)>& lay) {
  Job made = job;
  for (const ElementId& id : areas) {
    const Element* element = made.find(id);
    const auto* area = element ? std::get_if<PavedArea>(&element->kind) : nullptr;
    if (area) made = with(made, {element->id, element->name, lay(*area)});
  }
  return made;
}

Job on_build_up(const Job& job, const std::vector<ElementId>& areas, const Id& build_up) {
  return laid_instead(job, areas, [&build_up](PavedArea area) {
    area.build_up = build_up;
    return area;
  });
}

}  // namespace plan
