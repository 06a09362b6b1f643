#include "estimate/packs.h"

#include <algorithm>
#include <cmath>

#include "estimate/own_unit.h"
#include "estimate/words.h"

namespace estimate {

using catalogue::Item;
using takeoff::Term;
using takeoff::term;
using takeoff::Working;

namespace {

Working sum_of(std::vector<Working> parts) {
  return parts.size() == 1 ? parts.front() : Working::sum(std::move(parts));
}

Working net_of(const std::vector<Part>& parts) {
  std::vector<Working> nets;
  for (const Part& part : parts) nets.push_back(part.net);
  return sum_of(std::move(nets));
}

struct Group {
  std::optional<double> allowance;
  std::vector<Working> nets;
};

std::vector<Group> by_allowance(const std::vector<Part>& parts) {
  std::vector<Group> groups;
  for (const Part& part : parts) {
    auto known = std::ranges::find(groups, part.allowance, &Group::allowance);
    if (known == groups.end()) known = groups.insert(groups.end(), {part.allowance, {}});
    known->nets.push_back(part.net);
  }
  return groups;
}

std::optional<double> least_order(const Item& item) {
  if (const auto least = item.number("least_order")) return least;
  if (item.unit == "ton") return item.number("least_order_ton");
  return item.unit == "cu yd" ? item.number("least_order_cu_yd") : std::nullopt;
}

Working up_to(Working needed, const Lot& step, const std::string& unit) {
  if (step.size == 1) return Working::up(std::move(needed));
  const Term size =
      term(step.word.empty() ? "sold by" : unit + "s in a " + step.word, step.size, units::piece, step.of);
  return Working::product({Working::up(Working::quotient(std::move(needed), size)), size});
}

std::string how_bought(double quantity, const Lot& step, const std::string& unit) {
  if (!step.word.empty())
    return ", bought as " + counted(quantity / step.size, step.word) + " of " + in_words(step.size);
  if (step.size != 1) return ", bought by the " + in_words(step.size) + " " + unit;
  return "";
}

struct Needed {
  double net = 0;
  double gross = 0;  // with allowance
  double attic = 0;
  bool raised = false;  // to the least order
};

std::string in_a_sentence(const std::vector<Part>& parts, const Item& item, const Lot& step, const Needed& needed,
                          double quantity) {
  const std::string unit = item.unit.empty() ? "piece" : item.unit;
  std::string text = counted(quantity, unit) + ": " + in_words(needed.net) + " needed";
  if (const auto groups = by_allowance(parts); needed.gross > needed.net) {
    const double counted_up = step.word.empty() && unit != "piece" ? needed.gross : std::ceil(needed.gross - 1e-9);
    text += ", " + in_words(counted_up) + " with ";
    text += groups.size() == 1 ? percent(groups.front().allowance.value_or(item.breakage)) + " on top"
                               : "allowances on top";
  }
  if (needed.attic > 0) text += ", and " + in_words(needed.attic) + " spare for repairs";
  text += how_bought(quantity, step, unit);
  if (needed.raised) text += ", because no less is sold";
  return text;
}

}  // namespace

problem::Result<Working> with_allowance(const std::vector<Part>& parts, const Item& item, double day_hours) {
  std::vector<Working> gross;
  for (Group& group : by_allowance(parts)) {
    const bool several = group.nets.size() > 1;
    Working net = sum_of(std::move(group.nets));
    if (several) net = net.named("net");  // a single net has a name that says more
    auto own = in_own_unit(net, item, day_hours);
    if (!own) return std::unexpected(own.error());
    const double share = group.allowance.value_or(item.breakage);
    if (share == 0) {
      gross.push_back(*std::move(own));
    } else {
      gross.push_back(Working::product(
          {*std::move(own), group.allowance ? term("with " + percent(share) + " on top", 1 + share, units::piece)
                                            : term("with " + percent(share) + " breakage", 1 + share, units::piece,
                                                   item.id + "/breakage")}));
    }
  }
  return sum_of(std::move(gross));
}

Lot lot(const Item& item) {
  if (const auto step = item.number("order_step"); step && *step > 0) return {*step, "", item.id + "/order_step"};
  const catalogue::Pack& pack = item.pack;
  if (item.sold_by != item.unit && !item.sold_by.empty()) {
    if (item.sold_by == "layer" && pack.pieces_per_layer > 0)
      return {static_cast<double>(pack.pieces_per_layer), "layer", item.id + "/pieces_per_layer"};
    if ((item.sold_by == "pack" || item.sold_by == pack.kind) && pack.pieces > 0)
      return {static_cast<double>(pack.pieces), item.sold_by, item.id + "/pieces_per_pack"};
  }
  if (item.kind == "concrete" && (item.unit == "cu yd" || item.unit == "m3")) return {0.5, "", item.id + "/unit"};
  return {};
}

problem::Result<Bought> buy(const std::vector<Part>& parts, const Item& item, double day_hours, double attic_share) {
  auto gross = with_allowance(parts, item, day_hours);
  if (!gross) return std::unexpected(gross.error());
  const auto net = in_own_unit(net_of(parts), item, day_hours);
  if (!net) return std::unexpected(net.error());
  const Lot step = lot(item);
  Needed needed{net->amount().value, gross->amount().value, 0, false};
  Working wanted = *std::move(gross);
  if (!step.word.empty() || attic_share > 0) wanted = Working::up(std::move(wanted));
  if (attic_share > 0) {
    const Working spare =
        Working::up(Working::product({*net, term("spare share", attic_share, units::piece, "choices/attic_share")}));
    needed.attic = spare.amount().value;
    wanted = Working::sum({std::move(wanted), spare});
  }
  // Offcuts that travel between areas are taken off; less than nothing is never sent back.
  if (wanted.amount().value < 0) wanted = Working::greatest({std::move(wanted), term("nothing", 0, units::piece)});
  if (const auto least = least_order(item); least && *least > wanted.amount().value && wanted.amount().value > 0) {
    needed.raised = std::ceil(wanted.amount().value - 1e-9) < *least;
    wanted =
        Working::greatest({std::move(wanted), term("least order", *least, units::piece, item.id + "/least_order")});
  }
  Working order = up_to(std::move(wanted), step, item.unit);
  const double quantity = order.amount().value;
  return Bought{std::move(order), in_a_sentence(parts, item, step, needed, quantity), needed.net, needed.gross,
                needed.attic};
}

}  // namespace estimate
