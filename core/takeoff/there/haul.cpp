#include <map>

#include "takeoff/edges/notes.h"
#include "takeoff/loads.h"
#include "takeoff/there/kinds.h"
#include "takeoff/there/there.h"

namespace takeoff::there {

namespace {

struct Heap {
  std::vector<Working> loose;
  std::vector<Working> weight;
  std::vector<plan::ElementId> of;

  // Of what is used again only the share that breaks.
  void take(const Removed& removed) {
    std::vector<Working> loose_of{removed.volume, removed.bulked};
    std::vector<Working> weight_of{removed.weight};
    if (removed.what->fate == "reuse") {
      const Term lost = term("share that breaks", removed.what->loss, units::piece, removed.id);
      loose_of.push_back(lost);
      weight_of.push_back(lost);
    }
    loose.push_back(Working::product(std::move(loose_of)));
    weight.push_back(Working::product(std::move(weight_of)));
    of.push_back(removed.id);
  }
};

class Hauling {
 public:
  explicit Hauling(const plan::Job& job) : job_(job) {}

  void heap(const std::string& name, const Heap& heap) {
    const Working loose = Working::sum(heap.loose).named("loose volume");
    const Working weight = Working::sum(heap.weight).named("weight");
    const std::string text = name == "rubble" ? "broken concrete and stone" : name;
    std::optional<Working> count;
    if (const catalogue::Item* truck = chosen(job_.choices.truck, "truck", heap.of.front())) {
      auto made = loads(loose, weight, *truck);
      if (made) {
        count = *made;
        share_.lines.push_back({Stage::protect, truck->id, text + " to haul", heap.of, *made, 0, false});
        share_.tasks.push_back({Stage::protect, "load-haul", "load and haul " + text, heap.of, *made, 1, {}});
      } else {
        share_.problems.push_back(problem::in_element(made.error(), heap.of.front()));
      }
    }
    const catalogue::Item* fee = chosen(fee_of(name), "disposal fee", heap.of.front());
    if (!fee) return;
    const bool by_load = fee->sold_by == "load" || fee->unit == "load";
    if (by_load && !count) return;
    share_.lines.push_back({Stage::protect, fee->id, text + (by_load ? ", by the load" : ", by weight"), heap.of,
                            by_load ? *count : weight, 0, false});
  }

  Share done() { return std::move(share_); }

 private:
  // A dump has its own price for what it can crush.
  plan::Id fee_of(const std::string& heap) const {
    const plan::Id own = heap == "rubble" ? "disposal-concrete" : "disposal-" + heap;
    return job_.catalogue->item(own) ? own : job_.choices.disposal;
  }

  const catalogue::Item* chosen(const plan::Id& id, const std::string& what, const plan::ElementId& element) {
    const catalogue::Item* item = id.empty() ? nullptr : job_.catalogue->item(id);
    if (id.empty())
      share_.problems.push_back(edges::notice("haul-not-chosen",
                                              "no " + what + " is chosen, so its cost for what is removed is not here",
                                              "choose one for the job", element));
    else if (!item)
      share_.problems.push_back(edges::fault("item-unknown", "the job's catalogue has no '" + id + "'",
                                             "choose an item that it has, or copy it in", element));
    return item;
  }

  const plan::Job& job_;
  Share share_;
};

}  // namespace

Share haul_removed(const plan::Job& job, const plan::Site& site) {
  std::map<std::string, Heap> heaps;
  for (const auto& ground : site.grounds) {
    Share said_by_the_element;  // its faults are said where it is measured
    const auto removed = measured(job, *ground, said_by_the_element);
    if (!removed || removed->what->fate == "leave") continue;
    if (removed->what->fate == "reuse" && removed->what->loss <= 0) continue;
    heaps[removed->heap].take(*removed);
  }
  Hauling hauling(job);
  for (const auto& [name, heap] : heaps) hauling.heap(name, heap);
  return hauling.done();
}

}  // namespace takeoff::there
