#include "catalogue/differences.h"

#include <algorithm>
#include <memory>

namespace catalogue {

namespace {

using What = PartDifference::What;

template <class T>
bool alike(const T& a, const T& b) {
  return a == b;
}
bool alike(const std::shared_ptr<const Item>& a, const std::shared_ptr<const Item>& b) { return a == b || *a == *b; }

bool only_the_price(const Item& a, const Item& b) {
  Item priced = a;
  priced.price = b.price;
  return priced == b;
}

template <class T>
const Words& name_of(const T& part) {
  return part.name;
}
const Words& name_of(const std::shared_ptr<const Item>& item) { return item->name; }

template <class T>
void tell(PartDifference&, const T&, const T*) {}
void tell(PartDifference& found, const std::shared_ptr<const Item>& job, const std::shared_ptr<const Item>* book) {
  found.in_job = job->price;
  if (book == nullptr) return;
  found.in_book = (*book)->price;
  if (only_the_price(*job, **book)) found.what = What::price;
}

template <class T>
void compare(Part part, const Id& id, const T& job, const T* book, std::vector<PartDifference>& found) {
  if (book != nullptr && alike(job, *book)) return;
  PartDifference one{part, id, name_of(job), book == nullptr ? What::missing : What::other, {}, {}};
  tell(one, job, book);
  found.push_back(std::move(one));
}

template <class T>
void compare(Part part, const std::map<Id, T>& job, const std::map<Id, T>& book, std::vector<PartDifference>& found) {
  for (const auto& [id, one] : job) {
    const auto other = book.find(id);
    compare(part, id, one, other == book.end() ? nullptr : &other->second, found);
  }
}

const Junction* junction(const std::vector<Junction>& list, const Id& id) {
  const auto at = std::find_if(list.begin(), list.end(), [&](const Junction& one) { return one.id == id; });
  return at == list.end() ? nullptr : &*at;
}

// Puts what `from` has under that id into `into`; a junction that `into` lacks comes before the others, because the
// first that fits holds and this one was made for a case of its own.
template <class T>
void bring(const Id& id, const std::map<Id, T>& from, std::map<Id, T>& into) {
  if (const auto at = from.find(id); at != from.end()) into.insert_or_assign(id, at->second);
}
void bring(const Id& id, const std::vector<Junction>& from, std::vector<Junction>& into) {
  const Junction* one = junction(from, id);
  if (one == nullptr) return;
  const auto at = std::find_if(into.begin(), into.end(), [&](const Junction& other) { return other.id == id; });
  if (at == into.end())
    into.insert(into.begin(), *one);
  else
    *at = *one;
}

void bring(Part part, const Id& id, const Catalogue& from, Catalogue& into) {
  switch (part) {
    case Part::item: return bring(id, from.items, into.items);
    case Part::pattern: return bring(id, from.patterns, into.patterns);
    case Part::build_up: return bring(id, from.build_ups, into.build_ups);
    case Part::limit: return bring(id, from.limits, into.limits);
    case Part::rate: return bring(id, from.rates, into.rates);
    case Part::supplier: return bring(id, from.suppliers, into.suppliers);
    case Part::junction: return bring(id, from.junctions, into.junctions);
  }
}

// The items that a part names and that `into` lacks; a mixed pack's pieces are items like others and name none.
std::vector<Id> named_items(Part part, const Id& id, const Catalogue& from) {
  std::vector<Id> items;
  if (part == Part::item) {
    if (const Item* item = from.item(id))
      for (const PackContent& content : item->contents) items.push_back(content.item);
  } else if (part == Part::build_up) {
    if (const BuildUp* build_up = from.build_up(id))
      for (const Layer& layer : build_up->layers) items.push_back(layer.item);
  } else if (part == Part::rate) {
    if (const Rate* rate = from.rate(id)) items.push_back(rate->machine);
  } else if (part == Part::junction) {
    if (const Junction* one = junction(from.junctions, id)) items = {one->rod, one->sealant, one->filler, one->edge};
  }
  return items;
}

void bring_with_items(Part part, const Id& id, const Catalogue& from, Catalogue& into) {
  bring(part, id, from, into);
  for (const Id& item : named_items(part, id, from))
    if (into.item(item) == nullptr && from.item(item) != nullptr) bring_with_items(Part::item, item, from, into);
}

}  // namespace

std::vector<PartDifference> differences(const Catalogue& job, const Catalogue& book) {
  std::vector<PartDifference> found;
  compare(Part::item, job.items, book.items, found);
  compare(Part::pattern, job.patterns, book.patterns, found);
  compare(Part::build_up, job.build_ups, book.build_ups, found);
  compare(Part::limit, job.limits, book.limits, found);
  compare(Part::rate, job.rates, book.rates, found);
  compare(Part::supplier, job.suppliers, book.suppliers, found);
  std::map<Id, const Junction*> junctions;
  for (const Junction& one : job.junctions) junctions.emplace(one.id, &one);
  for (const auto& [id, one] : junctions) compare(Part::junction, id, *one, junction(book.junctions, id), found);
  return found;
}

Settled settled(const Catalogue& job, const Catalogue& book, const std::vector<Chosen>& choices) {
  Settled after{job, book};
  for (const Chosen& one : choices) {
    if (one.choice == Choice::take_books) bring_with_items(one.part, one.id, book, after.job);
    if (one.choice == Choice::put_into_book) bring_with_items(one.part, one.id, job, after.book);
  }
  return after;
}

}  // namespace catalogue
