#include "estimate/mixed_packs.h"

#include <algorithm>
#include <cmath>
#include <set>

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
      if (std::ranges::find(order.of, id) == order.of.end()) order.of.push_back(id);
    order.approximate = order.approximate || line.approximate;
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
      // What others supply costs nothing here, and would always win.
      if (own->price && !own->price->by_others) need.single_coins = coins_of_one(*own);
      need.single_lot = lot(*own).size;
    }
    all.push_back(need);
  }
  return all;
}

// What of a size the packs don't bring.
double beside(const SizeNeed& size, int packs) {
  return std::max(0.0, size.needed - static_cast<double>(packs) * size.in_pack);
}

Working packs_working(const Draw& draw, const std::vector<Size>& sizes, const std::vector<SizeNeed>& choose,
                      int packs) {
  std::vector<Working> ways;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    Working out_of_packs = sizes[i].needed;
    if (const double singly = beside(choose[i], packs); singly > 0)
      out_of_packs =
          Working::difference(std::move(out_of_packs), term("of them singly for least price", singly, units::piece));
    ways.push_back(Working::up(Working::quotient(
        std::move(out_of_packs),
        term("in one pack", sizes[i].content->pieces, units::piece, draw.pack.id + "/" + sizes[i].content->item))));
  }
  return ways.size() == 1 ? ways.front() : Working::greatest(std::move(ways));
}

// The sizes that are used up before any other.
std::string first_out(const plan::Job& job, const std::vector<Size>& sizes, const std::vector<SizeNeed>& choose) {
  double most = 0;
  for (const SizeNeed& size : choose) most = std::max(most, size.needed / size.in_pack);
  std::vector<std::string> names;
  for (std::size_t i = 0; i < sizes.size(); ++i)
    if (choose[i].needed / choose[i].in_pack >= most - 1e-9)
      names.push_back(name_of(*job.catalogue, sizes[i].content->item));
  return joined(names, " and ") + (names.size() == 1 ? " runs" : " run") + " out first";
}

std::string money_in_words(const plan::Job& job, double coins) {
  const auto money = money_of(coins);
  return money ? units::write_money(*money, job.heading.decimals) + " " + job.heading.currency : "no price";
}

// "whole packs alone would be 10 for 5049.00 USD, because the 9x9 runs out first"
std::string packs_alone_in_words(const plan::Job& job, const std::vector<Size>& sizes,
                                 const std::vector<SizeNeed>& choose, const Mix& alone) {
  return "whole packs alone would be " + in_words(alone.packs) + " for " + money_in_words(job, alone.coins) +
         ", because " + first_out(job, sizes, choose);
}

std::string in_a_sentence(const plan::Job& job, const std::vector<Size>& sizes, const std::vector<SizeNeed>& choose,
                          const Mix& mix, const Mix& alone) {
  std::vector<std::string> singly, left;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const std::string of =
        " of " + name_of(*job.catalogue, sizes[i].content->item) + " (" + in_words(choose[i].needed) + " needed)";
    if (const double single = beside(choose[i], mix.packs); single > 0)
      singly.push_back(in_words(single) + of);
    else
      left.push_back(in_words(mix.left[i]) + of);
  }
  std::string text = counted(mix.packs, "pack");
  if (singly.empty())
    text += ", because " + first_out(job, sizes, choose);
  else
    text += " and single pieces cost least, " + money_in_words(job, mix.coins) + "; " +
            packs_alone_in_words(job, sizes, choose, alone) + "; bought singly are " + joined(singly, ", ");
  return text + (left.empty() ? "" : "; left over are " + joined(left, "; "));
}

OrderLine pack_line(const plan::Job& job, const Draw& draw, const std::vector<Size>& sizes,
                    const std::vector<SizeNeed>& choose, const Mix& mix) {
  Working working = packs_working(draw, sizes, choose, mix.packs);
  const double packs = working.amount().value;
  double net = 0;
  for (std::size_t i = 0; i < sizes.size(); ++i)
    net += std::min(sizes[i].net, static_cast<double>(mix.packs) * choose[i].in_pack);
  const Cost money = cost(draw.pack, packs);
  OrderLine line{draw.order.stage,
                 draw.pack.id,
                 name_of(*job.catalogue, draw.pack.id),
                 draw.order.of,
                 net,
                 "piece",
                 packs,
                 draw.pack.unit,
                 money.unit_price,
                 money.amount,
                 money.by_others,
                 false,
                 draw.order.approximate,
                 std::move(working),
                 {}};
  line.exact_coins = money.coins;
  return line;
}

problem::Result<void> finish(const plan::Job& job, Draw& draw) {
  const auto sizes = needs(job, draw);
  if (!sizes) return std::unexpected(sizes.error());
  const std::vector<SizeNeed> choose = to_choose(job, *sizes);
  const auto pack_coins = coins_of_one(draw.pack);
  const Mix alone = packs_alone(choose, pack_coins);
  const Mix mix = cheapest_mix(choose, pack_coins).value_or(alone);
  for (std::size_t i = 0; i < sizes->size(); ++i) {
    if (!(beside(choose[i], mix.packs) > 0)) continue;
    const Size& size = (*sizes)[i];
    const Working brought = Working::product(
        {term("packs", mix.packs, units::piece, draw.pack.id),
         term("in one pack", size.content->pieces, units::piece, draw.pack.id + "/" + size.content->item)});
    const Working rest = mix.packs > 0 ? Working::difference(size.needed, brought) : size.needed;
    const std::string name = name_of(*job.catalogue, draw.pack.id);
    draw.order.singles.push_back(
        {size.content->item,
         {rest.named("beside " + draw.pack.id), 0.0},
         mix.packs > 0
             ? "; " + in_words(rest.amount().value) + " of them beside " + counted(mix.packs, "pack") + " of " + name
             : "; cheaper than any of " + name + ": " + packs_alone_in_words(job, *sizes, choose, alone)});
  }
  if (mix.packs == 0) return {};
  draw.order.line = pack_line(job, draw, *sizes, choose, mix);
  draw.order.line->sentence = in_a_sentence(job, *sizes, choose, mix, alone);
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
      draws.try_emplace(line.stage, Draw{*pack, {}, {{}, line.stage, {}, false, {}, {}}}).first->second.add(i, line);
    }
    for (auto& [stage, draw] : draws) {
      // Sizes that can't be counted stay with the single items, which say why.
      if (const auto made = finish(job, draw); !made) {
        problems.push_back(made.error());
        continue;
      }
      orders.push_back(std::move(draw.order));
    }
  }
  return orders;
}

}  // namespace estimate
