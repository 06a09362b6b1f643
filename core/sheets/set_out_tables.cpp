#include <cmath>

#include "sheets/numbered.h"
#include "sheets/setting_out_parts.h"
#include "sheets/source.h"

namespace sheets {

namespace {

using takeoff::setting_out::Diagonal;
using takeoff::setting_out::Mark;
using takeoff::setting_out::Offset;
using takeoff::setting_out::SettingOut;

constexpr double nothing = 0.0005;  // metres: what a tape doesn't show
constexpr int pairs = 4;            // offsets in one row

Column tick() { return {{}, Align::centre, 0, true}; }

std::string out_words(const Printed& printed, double out) {
  if (std::abs(out) < nothing) return printed.say("on the line");
  return filled(printed, out > 0 ? "%1 L" : "%1 R", {length_words(printed, std::abs(out))});
}

std::string along_words(const Printed& printed, double along) {
  if (along > -nothing) return length_words(printed, std::max(0.0, along));
  return filled(printed, "%1 before", {length_words(printed, -along)});
}

std::string what_words(const Printed& printed, const Mark& mark) {
  std::string words = numbered(printed, mark.what);
  if (mark.radius) words = filled(printed, "%1, R %2", {words, length_words(printed, *mark.radius)});
  return mark.poor ? words + " *" : words;
}

Row mark_row(const Printed& printed, const Mark& mark, std::size_t number) {
  const std::string from = of_setting_out("mark", number);
  Row row;
  row.cells = {Said{},
               {std::to_string(number + 1), from},
               {what_words(printed, mark), from},
               {along_words(printed, mark.along), from},
               {out_words(printed, mark.out), from},
               {length_words(printed, mark.tie_from), from},
               {length_words(printed, mark.tie_to), from},
               {length_words(printed, mark.check), from}};
  return row;
}

void group(const Printed& printed, Table& table, const plan::ElementId& of, plan::ElementId& before) {
  if (of == before) return;
  before = of;
  table.rows.push_back({{tag_and_name(printed, of)}, Row::Kind::group});
}

bool same_curve(const Offset& a, const Offset& b) { return a.of == b.of && a.edge == b.edge && a.part == b.part; }

std::string curve_words(const Printed& printed, const Offset& offset) {
  const std::string edge = std::to_string(offset.edge), chord = length_words(printed, offset.chord);
  const std::string side = printed.say(offset.out < 0 ? "right of the chord" : "left of the chord");
  if (offset.part == 0) return filled(printed, "%1, edge %2: chord %3, offsets %4", {offset.of, edge, chord, side});
  return filled(printed, "%1, edge %2, part %5: chord %3, offsets %4",
                {offset.of, edge, chord, side, std::to_string(offset.part)});
}

}  // namespace

std::string tag_and_name(const Printed& printed, const plan::ElementId& of) {
  const plan::Element* element = printed.job().find(of);
  return element && !element->name.empty() ? of + "  " + element->name : of;
}

Table mark_table(const Printed& printed, const SettingOut& out) {
  Table table;
  table.columns = {tick(),
                   {printed.say("No."), Align::right},
                   {printed.say("Mark")},
                   {printed.say("Along"), Align::right},
                   {printed.say("Out"), Align::right},
                   {printed.say("Tie, start"), Align::right},
                   {printed.say("Tie, end"), Align::right},
                   {printed.say("Check"), Align::right}};
  plan::ElementId before;
  for (std::size_t i = 0; i < out.marks.size(); ++i) {
    group(printed, table, out.marks[i].of, before);
    table.rows.push_back(mark_row(printed, out.marks[i], i));
  }
  return table;
}

Table diagonal_table(const Printed& printed, const SettingOut& out) {
  Table table;
  table.columns = {
      tick(), {printed.say("Of")}, {printed.say("Between")}, {printed.say("Length"), Align::right}, {std::string()}};
  for (std::size_t i = 0; i < out.diagonals.size(); ++i) {
    const Diagonal& one = out.diagonals[i];
    const std::string from = of_setting_out("diagonal", i);
    Row row;
    row.cells = {Said{},
                 Said{one.of},
                 {numbered(printed, one.what), from},
                 {length_words(printed, one.length), from},
                 Said{printed.say(one.rectangle ? "both alike: square" : "not square")}};
    table.rows.push_back(std::move(row));
  }
  return table;
}

Table offset_table(const Printed& printed, const SettingOut& out) {
  Table table;
  for (int i = 0; i < pairs; ++i) {
    table.columns.push_back({printed.say("Along"), Align::right});
    table.columns.push_back({printed.say("Out"), Align::right});
  }
  for (std::size_t i = 0; i < out.offsets.size(); ++i) {
    const Offset& one = out.offsets[i];
    const bool first = i == 0 || !same_curve(one, out.offsets[i - 1]);
    if (first) table.rows.push_back({{{curve_words(printed, one), of_setting_out("offset", i)}}, Row::Kind::group});
    if (first || table.rows.back().cells.size() == table.columns.size()) table.rows.emplace_back();
    const std::string from = of_setting_out("offset", i);
    table.rows.back().cells.emplace_back(length_words(printed, one.along), from);
    table.rows.back().cells.emplace_back(length_words(printed, std::abs(one.out)), from);
  }
  return table;
}

}  // namespace sheets
