#include <algorithm>
#include <cmath>

#include "sheets/numbered.h"
#include "sheets/parts.h"
#include "sheets/setting_out_parts.h"
#include "sheets/source.h"
#include "takeoff/levels/book.h"

namespace sheets {

namespace {

using takeoff::levels::BookRow;
using takeoff::levels::Reduced;
using takeoff::setting_out::SettingOut;
using takeoff::setting_out::Stake;
using MaybeMetres = std::optional<double>;

std::string height_words(const Printed& printed, double metres) {
  return show_height(metres, printed.job().heading.units);
}

Said height(const Printed& printed, MaybeMetres metres, const std::string& from) {
  return metres ? Said{height_words(printed, *metres), from} : Said{};
}

// How far the ground lies over what is wanted there.
Said cut_or_fill(const Printed& printed, MaybeMetres ground, MaybeMetres wanted, const std::string& from) {
  if (!ground || !wanted) return {};
  const double cut = *ground - *wanted;
  const std::string size = height_words(printed, std::abs(cut));
  if (size == height_words(printed, 0)) return {printed.say("at grade"), from};
  return {filled(printed, cut > 0 ? "cut %1" : "fill %1", {size}), from};
}

Row stake_row(const Printed& printed, const Stake& stake, std::size_t number) {
  const std::string from = of_setting_out("stake", number);
  Row row;
  row.cells = {Said{},
               {numbered(printed, stake.what) + (stake.guessed ? " *" : ""), from},
               height(printed, stake.ground, from),
               height(printed, stake.formation, from),
               cut_or_fill(printed, stake.ground, stake.formation, from),
               height(printed, stake.finish, from),
               cut_or_fill(printed, stake.ground, stake.finish, from)};
  return row;
}

// Sums and what the book comes to.
void put_check(const Printed& printed, const Reduced& reduced, const plan::ElementId& of, std::vector<Block>& blocks) {
  if (!reduced.misclosure) {
    blocks.emplace_back(
        Paragraph{{printed.say("The run was not closed: nothing shows how well it was read.")}, Paragraph::Kind::note});
    return;
  }
  const double off = *reduced.misclosure;
  const std::string size = length_words(printed, std::abs(off));
  const std::string words = std::abs(off) < 0.0005 ? printed.say("The run closes exactly.")
                            : off > 0              ? filled(printed, "The run closes %1 too high.", {size})
                                                   : filled(printed, "The run closes %1 too low.", {size});
  blocks.emplace_back(Paragraph{{words, of_element(of, "misclosure")}, Paragraph::Kind::note});
}

Table book_table(const Printed& printed, const plan::LevelBook& book, const Reduced& reduced,
                 const plan::ElementId& of) {
  Table table;
  table.columns = {{printed.say("Point")},
                   {printed.say("Backsight"), Align::right},
                   {printed.say("Between"), Align::right},
                   {printed.say("Foresight"), Align::right},
                   {printed.say("Instrument"), Align::right},
                   {printed.say("Height"), Align::right}};
  const bool notes = std::ranges::any_of(book.readings, [](const auto& one) { return !one.note.empty(); });
  if (notes) table.columns.push_back({printed.say("Note")});
  const auto read = [](const std::optional<units::Length>& length) -> MaybeMetres {
    return length ? MaybeMetres(length->metres().si()) : std::nullopt;
  };
  for (std::size_t i = 0; i < reduced.rows.size() && i < book.readings.size(); ++i) {
    const plan::RodReading& reading = book.readings[i];
    const BookRow& made = reduced.rows[i];
    const std::string from = of_element(of, "row " + std::to_string(i + 1));
    Row row;
    row.cells = {Said{made.point},
                 height(printed, read(reading.back), from),
                 height(printed, read(reading.between), from),
                 height(printed, read(reading.fore), from),
                 height(printed, made.instrument, from),
                 height(printed, made.height, from),
                 Said{reading.note}};
    table.rows.push_back(std::move(row));
  }
  Row sums;
  sums.kind = Row::Kind::sum;
  const std::string from = of_element(of, "sums of its sights");
  sums.cells = {Said{printed.say("Sum")},
                {height_words(printed, reduced.sum_back), from},
                Said{},
                {height_words(printed, reduced.sum_fore), from}};
  sums.cells.resize(table.columns.size());
  table.rows.push_back(std::move(sums));
  return table;
}

}  // namespace

Table stake_table(const Printed& printed, const SettingOut& out) {
  Table table;
  table.columns = {{{}, Align::centre, 0, true},
                   {printed.say("Stake at")},
                   {printed.say("Ground"), Align::right},
                   {printed.say("Formation"), Align::right},
                   {printed.say("To formation"), Align::right},
                   {printed.say("Finish"), Align::right},
                   {printed.say("To finish"), Align::right}};
  plan::ElementId before;
  for (std::size_t i = 0; i < out.stakes.size(); ++i) {
    if (out.stakes[i].of != before) table.rows.push_back({{tag_and_name(printed, out.stakes[i].of)}, Row::Kind::group});
    before = out.stakes[i].of;
    table.rows.push_back(stake_row(printed, out.stakes[i], i));
  }
  return table;
}

std::vector<Block> level_book(const Printed& printed, const plan::Element& element) {
  const auto& book = std::get<plan::LevelBook>(element.kind);
  const auto reduced = takeoff::levels::reduce(book, element.id);
  std::vector<Block> blocks{Heading{filled(printed, "Level book %1", {tag_and_name(printed, element.id)}), {}, {}, 2}};
  if (!reduced) {
    blocks.emplace_back(Paragraph{{as_sentence(printed, reduced.error().text)}});
    return blocks;
  }
  blocks.emplace_back(book_table(printed, book, *reduced, element.id));
  put_check(printed, *reduced, element.id, blocks);
  return blocks;
}

}  // namespace sheets
