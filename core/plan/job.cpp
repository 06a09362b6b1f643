#include "plan/job.h"

#include <algorithm>

namespace plan {

const Element* Job::find(const ElementId& id) const {
  for (const ElementPtr& element : elements)
    if (element->id == id) return element.get();
  return nullptr;
}

bool Option::operator==(const Option& other) const {
  const auto alike = [](const ElementPtr& x, const ElementPtr& y) { return x == y || *x == *y; };
  return id == other.id && name == other.name && text == other.text && alternate == other.alternate &&
         std::ranges::equal(elements, other.elements, alike) && without == other.without && lines == other.lines;
}

bool same(const Job& a, const Job& b) {
  return a.heading == b.heading && a.datum == b.datum && a.choices == b.choices && a.stage_moves == b.stage_moves &&
         a.looked_at == b.looked_at && a.offer == b.offer && a.enquiry == b.enquiry && a.visit == b.visit &&
         catalogue::same(*a.catalogue, *b.catalogue) &&
         std::ranges::equal(a.elements, b.elements,
                            [](const ElementPtr& x, const ElementPtr& y) { return x == y || *x == *y; });
}

Job with(const Job& job, Element element) {
  Job edited = job;
  auto made = std::make_shared<const Element>(std::move(element));
  for (ElementPtr& old : edited.elements) {
    if (old->id != made->id) continue;
    old = std::move(made);
    return edited;
  }
  edited.elements.push_back(std::move(made));
  return edited;
}

Job without(const Job& job, const ElementId& id) {
  Job edited = job;
  std::erase_if(edited.elements, [&id](const ElementPtr& element) { return element->id == id; });
  return edited;
}

}  // namespace plan
