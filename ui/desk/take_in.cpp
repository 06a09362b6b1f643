#include "ui/desk/take_in.h"

#include <algorithm>

namespace ui {

namespace {

class Taking {
 public:
  Taking(const catalogue::Catalogue& job, const catalogue::Catalogue& book) : made_(job), book_(book) {}

  void item(const catalogue::Id& id) {
    if (id.empty() || made_.items.contains(id)) return;
    const auto found = book_.items.find(id);
    if (found == book_.items.end()) return;
    made_.items.insert(*found);
    const catalogue::Item& taken = *found->second;
    if (const auto supplier = book_.suppliers.find(taken.supplier); supplier != book_.suppliers.end())
      made_.suppliers.insert(*supplier);
    for (const catalogue::PackContent& content : taken.contents) item(content.item);
    packs_with(id);
  }

  void pattern(const catalogue::Id& id) {
    if (const auto found = book_.patterns.find(id); found != book_.patterns.end()) made_.patterns.insert(*found);
  }

  void build_up(const catalogue::Id& id) {
    if (made_.build_ups.contains(id)) return;
    const auto found = book_.build_ups.find(id);
    if (found == book_.build_ups.end()) return;
    made_.build_ups.insert(*found);
    for (const catalogue::Layer& layer : found->second.layers) item(layer.item);
  }

  void junctions() {
    for (const catalogue::Junction& row : std::vector(made_.junctions))
      for (const catalogue::Id& id : {row.rod, row.sealant, row.filler, row.edge}) item(id);
  }

  catalogue::Catalogue made() { return std::move(made_); }

 private:
  void packs_with(const catalogue::Id& piece) {
    for (const auto& [id, pack] : book_.items)
      if (std::ranges::find(pack->contents, piece, &catalogue::PackContent::item) != pack->contents.end()) item(id);
  }

  catalogue::Catalogue made_;
  const catalogue::Catalogue& book_;
};

}  // namespace

catalogue::Catalogue with_needs(const catalogue::Catalogue& job, const catalogue::Catalogue& book,
                                const Wanted& wanted) {
  Taking taking(job, book);
  for (const catalogue::Id& id : wanted.items) taking.item(id);
  for (const catalogue::Id& id : wanted.patterns) taking.pattern(id);
  for (const catalogue::Id& id : wanted.build_ups) taking.build_up(id);
  taking.junctions();
  return taking.made();
}

}  // namespace ui
