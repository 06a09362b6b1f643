// The part of the cut list that needs no saw: rolls and sticks.
#include <cmath>

#include "sheets/source.h"
#include "sheets/stock_pieces.h"

namespace sheets {

namespace {

Said counted(std::size_t pieces, const char* list, std::size_t number) {
  return {std::to_string(pieces), list + ("/" + std::to_string(number))};
}

std::string length_of(const Printed& printed, units::Length length) {
  return length_words(printed, length.metres().si());
}

Passage titled(const Printed& printed, const char* title, Table table) {
  Passage passage;
  passage.blocks.emplace_back(Heading{printed.say(title), {}});
  passage.blocks.emplace_back(std::move(table));
  return passage;
}

void add_layers(const Printed& printed, Sheet& sheet) {
  const std::vector<StockPiece> all = layer_pieces(printed);
  if (all.empty()) return;
  Table table;
  table.columns = {{"", Align::left, 0, true},
                   {printed.say("Pieces"), Align::right, 0.1},
                   {printed.say("Cut to"), Align::right, 0.14},
                   {printed.say("Off the roll"), Align::left, 0.34},
                   {printed.say("Where it goes"), Align::left, 0.26},
                   {printed.say("The last one is only"), Align::right, 0.16}};
  for (std::size_t at = 0; at < all.size(); ++at) {
    const StockPiece& one = all[at];
    const std::string from = "layer/" + std::to_string(at);
    table.rows.push_back({{{},
                           counted(static_cast<std::size_t>(one.pieces), "layer", at),
                           Said(length_of(printed, one.length), from),
                           Said(name_of(printed, one.item)),
                           Said(one.of + " " + one.place),
                           one.width > units::Length() ? Said(length_of(printed, one.width), from) : Said()}});
  }
  Passage passage = titled(printed, "Reinforcement", std::move(table));
  passage.blocks.emplace_back(
      Paragraph{Said(printed.say(
                    "Each piece runs from the face of the wall into the fill, its strong way with it, beside the next "
                    "one, without a splice, and is pulled tight before it is covered. How long and on which course "
                    "is the engineer's design; where there is none, local code and a licensed engineer decide.")),
                Paragraph::Kind::note});
  sheet.passages.push_back(std::move(passage));
}

void add_plans(const Printed& printed, Sheet& sheet) {
  const std::vector<RollPlan> plans = roll_plans(printed);
  if (plans.empty()) return;
  Table table;
  table.columns = {{"", Align::left, 0, true},
                   {printed.say("Rolls"), Align::right, 0.1},
                   {printed.say("Off the roll"), Align::left, 0.36},
                   {printed.say("For"), Align::left, 0.1},
                   {printed.say("Cut each into"), Align::left, 0.44}};
  for (std::size_t at = 0; at < plans.size(); ++at)
    for (const RollPlan::Way& way : plans[at].ways) {
      std::string into;
      for (const auto& [length, pieces] : way.pieces)
        into += (into.empty() ? "" : " + ") + std::to_string(pieces) + " × " + length_of(printed, length);
      table.rows.push_back({{{},
                             counted(static_cast<std::size_t>(way.rolls), "roll", at),
                             Said(name_of(printed, plans[at].item)),
                             Said(plans[at].of),
                             Said(into)}});
    }
  sheet.passages.push_back(titled(printed, "How the rolls are cut", std::move(table)));
}

void add_fabric(const Printed& printed, Sheet& sheet) {
  const std::vector<StockPiece> all = fabric_pieces(printed);
  if (all.empty()) return;
  Table table;
  table.columns = {{"", Align::left, 0, true},
                   {printed.say("Strips"), Align::right, 0.1},
                   {printed.say("Cut to"), Align::right, 0.16},
                   {printed.say("Off the roll"), Align::left, 0.4},
                   {printed.say("Where it goes"), Align::left, 0.34}};
  for (std::size_t at = 0; at < all.size(); ++at) {
    const StockPiece& one = all[at];
    table.rows.push_back({{{},
                           counted(static_cast<std::size_t>(one.pieces), "strip", at),
                           Said(length_of(printed, one.length), "strip/" + std::to_string(at)),
                           Said(name_of(printed, one.item)),
                           Said(one.place)}});
  }
  sheet.passages.push_back(titled(printed, "Fabric under the base", std::move(table)));
}

void add_lengths(const Printed& printed, Sheet& sheet) {
  const std::vector<StockLength> all = stock_lengths(printed);
  if (all.empty()) return;
  Table table;
  table.columns = {{"", Align::left, 0, true},
                   {printed.say("What"), Align::left, 0.36},
                   {printed.say("Where it goes"), Align::left, 0.14},
                   {printed.say("Length"), Align::right, 0.14},
                   {printed.say("Comes in"), Align::right, 0.12},
                   {printed.say("Whole ones"), Align::right, 0.1},
                   {printed.say("and one cut to"), Align::right, 0.14}};
  for (const StockLength& one : all) {
    std::string where;
    for (const std::string& tag : tags(printed, one.of)) where += (where.empty() ? "" : ", ") + tag;
    table.rows.push_back({{{},
                           Said(name_of(printed, one.item)),
                           Said(where),
                           Said(length_words(printed, one.metres), one.from),
                           Said(length_of(printed, one.stock), of_item(one.item, "length")),
                           Said(std::to_string(one.whole), one.from),
                           one.rest > 0 ? Said(length_words(printed, one.rest), one.from) : Said()}});
  }
  Passage passage = titled(printed, "Pipe and what else comes by the length", std::move(table));
  passage.blocks.emplace_back(Paragraph{
      Said(printed.say("Counted end to end, without the joints that bends and fittings ask for: measure, then cut.")),
      Paragraph::Kind::note});
  sheet.passages.push_back(std::move(passage));
}

}  // namespace

void add_stock(const Printed& printed, Sheet& sheet) {
  add_layers(printed, sheet);
  add_plans(printed, sheet);
  add_fabric(printed, sheet);
  add_lengths(printed, sheet);
}

}  // namespace sheets
