#include "estimate/mixed_packs.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "estimate/packs.h"
#include "estimate/price.h"
#include "estimate/words.h"

namespace estimate {

using catalogue::Item;
using takeoff::term;
using takeoff::Working;

namespace {

int packs_for(const SizeNeed& size) {
  return size.needed > 0 ? static_cast<int>(std::min(1e9, std::ceil(size.needed / size.in_pack - 1e-9))) : 0;
}

// Nothing where a size is short and not sold by itself.
std::optional<Mix> with_packs(int packs, const std::vector<SizeNeed>& sizes, double pack_coins) {
  Mix mix{packs, {}, {}, packs * pack_coins};
  for (const SizeNeed& size : sizes) {
    const double come = static_cast<double>(packs) * size.in_pack;
    double bought = 0;
    if (size.needed > come) {
      if (!size.single_coins) return std::nullopt;
      bought = std::ceil((size.needed - come) / size.single_lot - 1e-9) * size.single_lot;
      mix.coins += bought * *size.single_coins;
    }
    mix.singles.push_back(bought);
    mix.left.push_back(come + bought - size.needed);
  }
  return mix;
}

double left_over(const Mix& mix) {
  double sum = 0;
  for (const double left : mix.left) sum += left;
  return sum;
}

}  // namespace

Mix packs_alone(const std::vector<SizeNeed>& sizes, std::optional<double> pack_coins) {
  int packs = 0;
  for (const SizeNeed& size : sizes) packs = std::max(packs, packs_for(size));
  return *with_packs(packs, sizes, pack_coins.value_or(0));
}

std::optional<Mix> cheapest_mix(const std::vector<SizeNeed>& sizes, std::optional<double> pack_coins) {
  if (!pack_coins) return std::nullopt;
  std::optional<Mix> best;
  const int most = packs_alone(sizes, pack_coins).packs;
  for (int packs = 0; packs <= most; ++packs) {
    auto mix = with_packs(packs, sizes, *pack_coins);
    if (!mix) continue;
    const bool cheaper = !best || mix->coins < best->coins - 1e-6;
    if (cheaper || (mix->coins <= best->coins + 1e-6 && left_over(*mix) < left_over(*best))) best = std::move(mix);
  }
  return best;
}

namespace {

std::set<plan::Id> held(const Item& pack) {
  std::set<plan::Id> sizes;
  for (const catalogue::PackContent& content : pack.contents) sizes.insert(content.item);
  return sizes;
}

// Areas laid with just the sizes of the pack.
std::set<plan::ElementId> laid_with(const plan::Job& job, const std::set<plan::Id>& sizes) {
  std::set<plan::ElementId> found;
  for (const plan::ElementPtr& element : job.elements) {
    const auto* area = std::get_if<plan::PavedArea>(&element->kind);
    if (!area || !area->laying) continue;
    std::set<plan::Id> used;
    for (const auto& [size, item] : area->laying->units) used.insert(item);
    if (used == sizes) found.insert(element->id);
  }
  return found;
}

// What one mixed pack is ordered for, in one stage.
struct Draw {
  const Item& pack;
  std::map<plan::Id, std::vector<Part>> parts;  // of each size
  MixedOrder order;

  void add(std::size_t number, const takeoff::Line& line) {
    parts[line.item].push_back({line.working, line.allowance});
    order.from.push_back(number);
    for (const plan::ElementId& id : line.of)
      if (std::ranges::find(order.line.of, id) == order.line.of.end()) order.line.of.push_back(id);
    order.line.allowance = order.line.allowance || line.approximate;
  }
};

struct Size {
  const catalogue::PackContent* content;
  Working needed;
  double net;
};

problem::Result<std::vector<Size>> needs(const plan::Job& job, const Draw& draw) {
  std::vector<Size> sizes;
  for (const catalogue::PackContent& content : draw.pack.contents) {
    const auto found = draw.parts.find(content.item);
    if (found == draw.parts.end()) continue;
    const Item* own = job.catalogue->item(content.item);
    Item stand_in = own ? *own : draw.pack;
    if (!own) stand_in.unit = "piece";
    auto gross = with_allowance(found->second, stand_in, job.choices.day_hours);
    if (!gross) return std::unexpected(gross.error());
    double net = 0;
    for (const Part& part : found->second) net += part.net.amount().value;
    sizes.push_back({&content, Working::up(*std::move(gross)).named(content.item + " needed"), net});
  }
  return sizes;
}

std::vector<SizeNeed> to_choose(const plan::Job& job, const std::vector<Size>& sizes) {
  std::vector<SizeNeed> all;
  for (const Size& size : sizes) {
    SizeNeed need{size.needed.amount().value, size.content->pieces, {}, 1};
    if (const Item* own = job.catalogue->item(size.content->item)) {
      need.single_coins = coins_of_one(*own);
      need.single_lot = lot(*own).size;
    }
    all.push_back(need);
  }
  return all;
}

Working packs_working(const Draw& draw, const std::vector<Size>& sizes) {
  std::vector<Working> ways;
  for (const Size& size : sizes)
    ways.push_back(Working::up(Working::quotient(size.needed, term("in one pack", size.content->pieces, units::piece,
                                                                   draw.pack.id + "/" + size.content->item))));
  return ways.size() == 1 ? ways.front() : Working::greatest(std::move(ways));
}

std::string cheaper_in_words(const plan::Job& job, const std::vector<Size>& sizes, const Mix& alone, const Mix& best) {
  const auto saved = money_of(alone.coins - best.coins);
  if (!saved || *saved <= units::Money()) return "";
  std::vector<std::string> buys;
  if (best.packs > 0) buys.push_back(counted(best.packs, "pack"));
  for (std::size_t i = 0; i < sizes.size(); ++i)
    if (best.singles[i] > 0)
      buys.push_back(in_words(best.singles[i]) + " of " + name_of(*job.catalogue, sizes[i].content->item));
  return ". Cheaper by " + units::write_money(*saved, job.heading.decimals) + " " + job.heading.currency + ": " +
         joined(buys, " and ");
}

std::string in_a_sentence(const plan::Job& job, const std::vector<Size>& sizes, const std::vector<SizeNeed>& choose,
                          const Mix& alone) {
  std::vector<std::string> decide, left;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const std::string name = name_of(*job.catalogue, sizes[i].content->item);
    if (packs_for(choose[i]) == alone.packs) decide.push_back(name);
    left.push_back(in_words(alone.left[i]) + " of " + name + " (" + in_words(choose[i].needed) + " needed)");
  }
  return counted(alone.packs, "pack") + ", because " + joined(decide, " and ") +
         (decide.size() == 1 ? " runs" : " run") + " out first; left over are " + joined(left, "; ");
}

problem::Result<void> finish(const plan::Job& job, Draw& draw) {
  OrderLine& line = draw.order.line;
  line.item = draw.pack.id;
  line.description = name_of(*job.catalogue, draw.pack.id);
  line.unit = "piece";
  line.order_unit = draw.pack.unit;
  const auto sizes = needs(job, draw);
  if (!sizes) return std::unexpected(sizes.error());
  for (const Size& size : *sizes) line.quantity += size.net;
  const std::vector<SizeNeed> choose = to_choose(job, *sizes);
  const auto pack_coins = coins_of_one(draw.pack);
  const Mix alone = packs_alone(choose, pack_coins);
  line.working = packs_working(draw, *sizes);
  line.order_quantity = line.working.amount().value;
  const Cost money = cost(draw.pack, line.order_quantity);
  line.unit_price = money.unit_price;
  line.amount = money.amount;
  line.by_others = money.by_others;
  line.sentence = in_a_sentence(job, *sizes, choose, alone);
  if (const auto best = cheapest_mix(choose, pack_coins)) line.sentence += cheaper_in_words(job, *sizes, alone, *best);
  return {};
}

}  // namespace

std::vector<MixedOrder> mixed_packs(const plan::Job& job, const takeoff::Takeoff& takeoff,
                                    std::vector<problem::Problem>& problems) {
  std::vector<MixedOrder> orders;
  std::vector<bool> taken(takeoff.lines.size(), false);
  for (const auto& [id, pack] : job.catalogue->items) {
    if (!pack || pack->kind != "mixed-pack" || pack->contents.size() < 2) continue;
    const std::set<plan::Id> sizes = held(*pack);
    const std::set<plan::ElementId> areas = laid_with(job, sizes);
    if (areas.empty()) continue;
    std::map<takeoff::Stage, Draw> draws;
    for (std::size_t i = 0; i < takeoff.lines.size(); ++i) {
      const takeoff::Line& line = takeoff.lines[i];
      const bool inside = std::ranges::all_of(line.of, [&](const plan::ElementId& of) { return areas.contains(of); });
      if (taken[i] || !inside || line.of.empty() || !sizes.contains(line.item)) continue;
      if (line.working.amount().unit != units::piece) continue;
      taken[i] = true;
      draws
          .try_emplace(line.stage, Draw{*pack,
                                        {},
                                        {{},
                                         OrderLine{line.stage,
                                                   {},
                                                   {},
                                                   {},
                                                   0,
                                                   {},
                                                   0,
                                                   {},
                                                   {},
                                                   {},
                                                   false,
                                                   false,
                                                   false,
                                                   term("none", 0, units::piece),
                                                   {}}}})
          .first->second.add(i, line);
    }
    for (auto& [stage, draw] : draws) {
      if (const auto made = finish(job, draw); !made) problems.push_back(made.error());
      orders.push_back(std::move(draw.order));
    }
  }
  return orders;
}

}  // namespace estimate
