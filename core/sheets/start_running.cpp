// Running measures and squares, for the start sheet.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "sheets/source.h"
#include "sheets/start_parts.h"

namespace sheets {

namespace {

// A small length as a tape tells it: 1/64 in, or tenths of a millimetre.
std::string small_words(const Printed& printed, double metres) {
  if (printed.job().heading.units == units::System::metric)
    return number_words(printed, std::round(metres * 10000) / 10) + " mm";
  const int parts = static_cast<int>(std::round(metres / 0.0254 * 64));
  const int common = std::gcd(parts, 64);
  if (parts % 64 == 0) return std::to_string(parts / 64) + "″";
  return std::to_string(parts / common) + "/" + std::to_string(64 / common) + "″";
}

std::string way_of(const Running& one) { return "running/" + one.of + "/" + (one.along ? "along" : "out"); }

std::string step_name(const Running& one) {
  if (!one.along) return one.units ? "courses" : "rows of the repeat";
  return one.units ? "units" : "repeats";
}

// What the joints must be so that the field comes out whole, or what is left of the last course.
std::optional<Paragraph> whole_words(const Printed& printed, const Running& one) {
  constexpr double told = 0.0254 / 128;  // metres a joint: less than half of 1/64 in is nothing to open
  if (!one.whole && !(one.last > 0)) return std::nullopt;
  const std::string where = printed.say(one.along ? "Along the rows" : "Out from the start line");
  if (!one.whole)
    return Paragraph{
        {filled(printed, "%1: does not come out whole; the last one is cut to %2, or shared with the one before.",
                {where, length_words(printed, one.last)}),
         way_of(one)}};
  const std::string count = std::to_string(one.whole->count) + " " + printed.say(step_name(one));
  if (std::abs(one.whole->open) < told)
    return Paragraph{{filled(printed, "%1: %2 come out whole at the usual joint.", {where, count}), way_of(one)}};
  const char* sentence = one.whole->open > 0 ? "%1: open each joint by %3 over %2 and they come out whole."
                                             : "%1: close each joint by %3 over %2 and they come out whole.";
  return Paragraph{
      {filled(printed, sentence, {where, count, small_words(printed, std::abs(one.whole->open))}), way_of(one)}};
}

Said measure_at(const Printed& printed, const Running& one, int step) {
  const auto steps = marked_steps(one);
  if (std::ranges::find(steps, step) == steps.end()) return {};
  return {length_words(printed, step * one.module), way_of(one)};
}

}  // namespace

Square square_for(double along, double out, units::System system) {
  const double part = system == units::System::us ? 0.3048 : 0.25;  // a foot, a quarter of a metre
  const double most = std::floor(std::min(along / (4 * part), out / (3 * part)) + 1e-9);
  const double size = part * std::clamp(most, 1.0, 10.0);
  return {4 * size, 3 * size, 5 * size};
}

std::vector<Block> running_blocks(const Printed& printed, const std::vector<Running>& measures) {
  if (measures.size() != 2) return {};
  const Running &along = measures[0], &out = measures[1];
  std::vector<Block> blocks;
  const Square square = square_for(along.back + along.ahead, out.back + out.ahead, printed.job().heading.units);
  blocks.emplace_back(
      Paragraph{{filled(printed, "Square corner at the start: %1 along the start line, %2 out, %3 across.",
                        {length_words(printed, square.along), length_words(printed, square.out),
                         length_words(printed, square.across)}),
                 counted_here("4, 3 and 5 equal parts: 4 x 4 + 3 x 3 = 5 x 5")}});
  Table table{{{printed.say("From the start line, after"), Align::left, 0.3},
               {filled(printed, "Along the row: %1", {printed.say(step_name(along))}), Align::right, 0.35},
               {filled(printed, "Out: %1", {printed.say(step_name(out))}), Align::right, 0.35}},
              {}};
  std::vector<int> steps = marked_steps(along);
  for (const int step : marked_steps(out))
    if (std::ranges::find(steps, step) == steps.end()) steps.push_back(step);
  std::ranges::sort(steps);
  for (const int step : steps)
    table.rows.push_back(
        {{{std::to_string(step), way_of(out)}, measure_at(printed, along, step), measure_at(printed, out, step)}});
  if (!table.rows.empty()) blocks.emplace_back(std::move(table));
  if (out.shift > 0.0005)
    blocks.emplace_back(Paragraph{
        {filled(printed, "Each row is moved by %1 along against the one before.", {length_words(printed, out.shift)}),
         way_of(out)}});
  for (const Running& one : measures)
    if (auto words = whole_words(printed, one)) blocks.emplace_back(*std::move(words));
  return blocks;
}

}  // namespace sheets
