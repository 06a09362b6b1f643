#include "sheets/stock_pieces.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "takeoff/cutting_stock.h"
#include "takeoff/walls/reinforcement.h"
#include "units/number.h"

namespace sheets {

namespace {

namespace walls = takeoff::walls;
using units::Length;

constexpr double hair = 1e-6;

// The layers of one wall with what they lie in.
struct Reinforced {
  const plan::Job& job;
  const Printed& printed;
  const plan::ElementId& of;
  const plan::Wall& wall;
  walls::Profile profile;

  std::string course(std::size_t k) const {
    return filled(printed, "on course %1", {std::to_string(wall.layers[k].on_course)});
  }
  std::string shown(Length length) const { return units::show_length(length, job.heading.units); }
};

// Pieces across the wall, side by side.
void across(const Reinforced& in, std::size_t k, const catalogue::Item& roll, std::vector<StockPiece>& found) {
  StockPiece piece{roll.id, in.of, in.course(k), in.wall.layers[k].length, 0, {}, 0, {}};
  const double wide = roll.width->metres().si();
  for (const walls::LayerPart& part : walls::layer_parts(in.profile, in.wall, k, wide)) {
    piece.pieces += part.strips + part.gaps;
    if (part.strips > 0 && part.last <= wide / 2 + hair) ++piece.halves;
    if (part.strips > 0 && part.last < wide - hair) piece.width = Length::nearest(units::Metres(part.last));
    piece.how += (piece.how.empty() ? "" : " + ") + std::to_string(part.strips) + " strips over " +
                 in.shown(Length::nearest(units::Metres(part.face + part.past))) + " of face";
    if (part.gaps > 0) piece.how += " + " + std::to_string(part.gaps) + " over the gaps of its curve";
  }
  piece.how += ", the roll " + in.shown(*roll.width) + " wide";
  if (piece.pieces > 0) found.push_back(std::move(piece));
}

// Lengths of roll end to end along each leg.
void along(const Reinforced& in, std::size_t k, const catalogue::Item& roll, std::vector<StockPiece>& found) {
  for (const walls::Extent& extent : walls::extents(in.profile, in.wall.layers[k]))
    for (const walls::Leg& leg : in.profile.legs) {
      double left = std::min(extent.to, leg.to) - std::max(extent.from, leg.from);
      for (; left > 1e-4; left -= roll.length->metres().si()) {
        const Length length = std::min(*roll.length, Length::nearest(units::Metres(left)));
        found.push_back({roll.id,
                         in.of,
                         in.course(k) + ", " + in.printed.say("along the wall"),
                         length,
                         1,
                         {},
                         0,
                         "what is left of the leg, at most a roll"});
      }
    }
}

void pieces_of(const Printed& printed, const plan::Ground& ground, std::vector<StockPiece>& found) {
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall || wall->existing || wall->layers.empty() || !ground.path) return;
  takeoff::Share said;
  const auto blocks = walls::chosen_blocks(printed.job(), *wall, ground.element->id, said);
  auto profile = blocks ? walls::profile(printed.job(), ground, blocks->block, said) : std::nullopt;
  if (!profile) return;
  const Reinforced in{printed.job(), printed, ground.element->id, *wall, *std::move(profile)};
  for (std::size_t k = 0; k < wall->layers.size(); ++k) {
    const plan::Reinforcement& layer = wall->layers[k];
    if (!walls::holds_at_all(in.job, layer, blocks->block)) continue;
    (layer.along ? along : across)(in, k, *in.job.catalogue->item(layer.item), found);
  }
}

std::size_t number_of(const std::string& text, std::size_t below) {
  const auto number = units::read_number(text);
  return !number || *number < 0 || *number >= static_cast<double>(below) ? below : static_cast<std::size_t>(*number);
}

}  // namespace

std::vector<StockPiece> layer_pieces(const Printed& printed) {
  std::vector<StockPiece> found;
  for (const auto& ground : printed.results->site.grounds) pieces_of(printed, *ground, found);
  return found;
}

std::vector<StockPiece> fabric_pieces(const Printed& printed) {
  std::vector<StockPiece> found;
  for (const takeoff::Line& line : printed.results->takeoff.lines) {
    const catalogue::Item* item = printed.job().catalogue->item(line.item);
    if (!item || item->kind != "fabric") continue;
    const std::size_t first = found.size();
    for (const takeoff::Term& term : line.working.terms()) {
      if (!term.name.starts_with("strip ") || term.amount.unit != units::metre) continue;
      const Length length = Length::nearest(units::Metres(term.amount.value));
      const auto same = std::find_if(found.begin() + static_cast<std::ptrdiff_t>(first), found.end(),
                                     [&](const StockPiece& one) { return one.length == length; });
      if (same != found.end()) {
        same->pieces += 1;
        continue;
      }
      std::string place;
      for (const plan::ElementId& id : line.of) place += (place.empty() ? "" : ", ") + id;
      found.push_back({item->id,
                       line.of.empty() ? plan::ElementId() : line.of.front(),
                       place,
                       length,
                       1,
                       {},
                       0,
                       "strips of this length under the base, side by side with their laps"});
    }
    std::sort(found.begin() + static_cast<std::ptrdiff_t>(first), found.end(),
              [](const StockPiece& a, const StockPiece& b) { return a.length > b.length; });
  }
  return found;
}

namespace {

RollPlan plan_of(const Printed& printed, const plan::ElementId& of, const catalogue::Id& roll,
                 const std::vector<StockPiece>& all) {
  std::vector<Length> demands;
  std::map<Length, std::pair<int, int>> halves;  // by length: pieces, and last ones of at most half a roll
  for (const StockPiece& piece : all) {
    if (piece.of != of || piece.item != roll) continue;
    halves[piece.length].first += piece.pieces;
    halves[piece.length].second += piece.halves;
  }
  for (auto length = halves.rbegin(); length != halves.rend(); ++length)
    demands.insert(demands.end(), static_cast<std::size_t>(length->second.first - length->second.second / 2),
                   length->first);
  const auto cut = takeoff::cutting_stock(demands, *printed.job().catalogue->item(roll)->length, Length());
  RollPlan plan{roll, of, cut.bought, cut.bound, {}};
  for (const auto& one : cut.cuts) {
    RollPlan::Way way{1, {}};
    for (const std::size_t number : one) {
      if (way.pieces.empty() || way.pieces.back().first != demands[number]) way.pieces.emplace_back(demands[number], 0);
      ++way.pieces.back().second;
    }
    const auto known = std::ranges::find(plan.ways, way.pieces, &RollPlan::Way::pieces);
    if (known == plan.ways.end())
      plan.ways.push_back(std::move(way));
    else
      known->rolls += 1;
  }
  return plan;
}

constexpr std::array by_the_length{std::string_view("pipe"), std::string_view("channel"), std::string_view("restraint"),
                                   std::string_view("bar")};

// Metres that a line needs: its own, or what was divided by the stock length.
std::optional<double> metres_of(const takeoff::Line& line, const catalogue::Item& item) {
  const units::Amount amount = line.working.amount();
  if (amount.unit == units::metre) return amount.value;
  if (amount.unit != units::piece) return std::nullopt;
  double metres = 0;
  bool divided = false;
  for (const takeoff::Term& term : line.working.terms()) {
    if (term.amount.unit != units::metre) continue;
    if (term.of == item.id + "/length")
      divided = true;
    else
      metres += term.amount.value;
  }
  return divided ? std::optional(metres) : std::nullopt;
}

}  // namespace

std::vector<RollPlan> roll_plans(const Printed& printed) {
  const std::vector<StockPiece> all = layer_pieces(printed);
  std::vector<RollPlan> plans;
  for (const StockPiece& piece : all)
    if (std::ranges::none_of(plans,
                             [&](const RollPlan& plan) { return plan.of == piece.of && plan.item == piece.item; }))
      plans.push_back(plan_of(printed, piece.of, piece.item, all));
  return plans;
}

std::vector<StockLength> stock_lengths(const Printed& printed) {
  std::vector<StockLength> found;
  const auto& lines = printed.results->takeoff.lines;
  for (std::size_t number = 0; number < lines.size(); ++number) {
    const takeoff::Line& line = lines[number];
    const catalogue::Item* item = printed.job().catalogue->item(line.item);
    if (!item || !item->length || *item->length <= Length()) continue;
    if (std::ranges::find(by_the_length, item->kind) == by_the_length.end()) continue;
    const std::optional<double> metres = metres_of(line, *item);
    if (!metres || *metres <= 0) continue;
    StockLength one{item->id, line.of, line.text, *metres, *item->length, 0, 0, "need/" + std::to_string(number)};
    const double stock = item->length->metres().si();
    one.whole = static_cast<int>(std::floor(*metres / stock + 1e-6));
    one.rest = *metres - one.whole * stock;
    if (one.rest < 1e-4) one.rest = 0;
    found.push_back(std::move(one));
  }
  return found;
}

std::optional<std::string> working_of_need(const Printed& printed, const std::string& list, const std::string& number) {
  const auto told = [&](const auto& all, auto&& how) -> std::optional<std::string> {
    const std::size_t at = number_of(number, all.size());
    return at < all.size() ? std::optional<std::string>(how(all[at])) : std::nullopt;
  };
  const auto piece = [](const StockPiece& one) { return one.how + " = " + std::to_string(one.pieces); };
  if (list == "layer") return told(layer_pieces(printed), piece);
  if (list == "strip") return told(fabric_pieces(printed), piece);
  if (list == "roll")
    return told(roll_plans(printed), [](const RollPlan& plan) {
      return std::to_string(plan.rolls) + " rolls of " + plan.item + " for " + plan.of +
             ", cut longest first; no plan does with fewer than " + std::to_string(plan.bound);
    });
  if (list != "need") return std::nullopt;
  return told(printed.results->takeoff.lines, [&](const takeoff::Line& line) {
    return line.text + ": " + line.working.sentence(printed.job().heading.units);
  });
}

}  // namespace sheets
