#include "files/random_job.h"

#include "takeoff/stage.h"

namespace random_job {

void fill_item(catalogue::Item& item, int number) {
  fill(item);
  item.id = "item-" + std::to_string(number);
  const auto& kinds = catalogue::known_kinds();
  item.kind = kinds[static_cast<std::size_t>(below(static_cast<int>(kinds.size())))];
  for (auto* side : {&item.length, &item.width, &item.height}) {
    if (*side) *side = units::Length::of_steps(1 + std::abs((*side)->steps()));
  }
  if (item.joint) item.joint = units::Length::of_steps(std::abs(item.joint->steps()));
  for (auto* number_of : {&item.mass_kg, &item.density_kg_m3}) {
    if (*number_of) *number_of = std::abs(**number_of);
  }
  if (item.void_share) item.void_share = below(99) / 100.0;
  item.breakage = below(101) / 100.0;
  item.pack = {.kind = item.pack.kind, .pieces_per_layer = below(20), .layers = 0, .pieces = below(500)};
  for (auto& content : item.contents) content = {.item = "size", .pieces = 1 + below(50)};
  if (item.kind == "mixed-pack" && item.contents.empty()) item.contents = {{.item = "size", .pieces = 1}};
  if (!item.contents.empty()) item.pack.pieces = 0;
  if (item.price) {
    item.price->amount = item.price->amount + units::Money::of_coins(1);
    item.price->unit = "sq ft";
    item.price->date = below(2) == 0 ? "" : "2025-03-01";
    if (below(5) == 0) item.price = catalogue::Price{.amount = {}, .unit = "job", .date = {}, .by_others = true};
  }
  const std::string word = item.notes;
  item.details = {{"colour", word}, {"porosity", "0.4"}};
  if (below(2) == 0) item.details.clear();
}

void fill_pattern(catalogue::Pattern& pattern, int number) {
  fill(pattern);
  pattern.id = "pattern-" + std::to_string(number);
  // A running bond of any offset: one piece w cells long, each row moved by `across_x`.
  pattern.along = 1 + below(6);
  pattern.across_x = below(6);
  pattern.across_y = 1 + below(3);
  pattern.pieces = {{.size = "unit", .x = below(5), .y = below(5), .w = pattern.along, .h = pattern.across_y}};
}

namespace {

template <class T>
void fill_by_id(std::map<catalogue::Id, T>& into) {
  for (int number = below(3); number > 0; --number) {
    T entry{};
    fill(entry);
    entry.id = "id-" + std::to_string(number);
    into.emplace(entry.id, entry);
  }
}

template <std::size_t... I>
plan::Kind kind(std::size_t number, std::index_sequence<I...>) {
  plan::Kind made;
  ((number == I ? fill(made.emplace<I>()) : void()), ...);
  return made;
}

}  // namespace

catalogue::Catalogue catalogue() {
  catalogue::Catalogue made;
  for (int number = below(4); number > 0; --number) {
    catalogue::Item item;
    fill_item(item, number);
    made.items.emplace(item.id, std::make_shared<const catalogue::Item>(item));
  }
  for (int number = below(3); number > 0; --number) {
    catalogue::Pattern pattern;
    fill_pattern(pattern, number);
    made.patterns.emplace(pattern.id, pattern);
  }
  fill_by_id(made.build_ups);
  fill_by_id(made.limits);
  fill_by_id(made.rates);
  fill_by_id(made.suppliers);
  fill(made.junctions);
  for (std::size_t i = 0; i < made.junctions.size(); ++i) made.junctions[i].id = "junction-" + std::to_string(i);
  fill(made.hold_points);
  fill(made.cautions);
  fill(made.site_rules);
  fill(made.note);
  return made;
}

plan::Job job() {
  plan::Job made;
  fill(made.heading);
  fill(made.datum);
  fill(made.choices);
  fill(made.stage_moves);
  fill(made.looked_at);
  fill(made.enquiry);
  fill(made.visit);
  fill(made.offer);
  const auto stage = [] {
    constexpr int stages = static_cast<int>(takeoff::all_stages.size());
    return takeoff::word(takeoff::all_stages[static_cast<std::size_t>(below(stages))]);
  };
  for (auto& move : made.stage_moves) move.stage = stage();
  for (auto& looked : made.looked_at) looked.stage = stage();
  for (auto& factor : made.offer.factors) factor.stage = stage();
  for (auto& line : made.offer.lines) line.stage = stage();
  for (auto& payment : made.offer.payments) payment.stage = stage();
  for (auto& option : made.offer.options)
    for (auto& line : option.lines) line.stage = stage();
  made.catalogue = std::make_shared<const catalogue::Catalogue>(catalogue());
  constexpr std::size_t kinds = std::variant_size_v<plan::Kind>;
  for (std::size_t number = 0; number < kinds; ++number) {
    if (below(3) == 0) continue;
    plan::Element element;
    fill(element.name);
    element.id = "element " + std::to_string(number);
    element.kind = kind(number, std::make_index_sequence<kinds>());
    made.elements.push_back(std::make_shared<const plan::Element>(std::move(element)));
  }
  return made;
}

}  // namespace random_job
