#include "files/setting_out_csv.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "files/csv.h"
#include "problem/ensure.h"
#include "units/number.h"

namespace files {

namespace {

using takeoff::setting_out::Diagonal;
using takeoff::setting_out::Mark;
using takeoff::setting_out::Offset;
using takeoff::setting_out::SettingOut;
using takeoff::setting_out::Stake;
using MaybeMetres = std::optional<double>;

// A row under construction: cells by name, in the order of the head line.
class Table {
 public:
  explicit Table(units::System system) : system_(system) {
    for (const char* name : texts) columns_.emplace_back(name);
    for (const char* name : lengths) columns_.emplace_back(name);
    for (const char* name : heights) columns_.emplace_back(name);
    for (const char* name : lengths) columns_.push_back(std::string(name) + "_m");
    for (const char* name : heights) columns_.push_back(std::string(name) + "_m");
    columns_.insert(columns_.end(), {"x_m", "y_m", "note"});
    text_ = csv_row(columns_);
  }

  void begin(const char* kind, const std::string& element, const std::string& what) {
    cells_.assign(columns_.size(), "");
    set("kind", kind);
    set("element", csv_text(element));
    set("what", csv_text(what));
  }
  void set(std::string_view name, std::string cell) { cells_[column(name)] = std::move(cell); }
  // As a tape shows it, and in metres to the micrometre.
  void length(const std::string& column, MaybeMetres metres) {
    if (!metres) return;
    set(column, csv_text(units::show_length(units::Length::nearest(units::Metres(*metres)), system_)));
    set(column + "_m", in_metres(*metres));
  }
  void along(double metres) {
    length("along", std::abs(metres));
    if (metres < -0.0005) set("along", cells_[column("along")] + " before the start");
    set("along_m", in_metres(metres));
  }
  // The side stands in words, so people read no sign; the metres keep it, left positive.
  void out(double metres) {
    length("out", std::abs(metres));
    set("out_m", in_metres(metres));
  }
  // As a rod shows it.
  void height(const std::string& column, MaybeMetres metres) {
    if (!metres) return;
    const bool feet = system_ == units::System::us;
    set(column, units::show_number(feet ? *metres / units::metres_per_foot : *metres, feet ? 2 : 3));
    set(column + "_m", in_metres(*metres));
  }
  void place(geometry::Point at) {
    set("x_m", in_metres(geometry::xy(at).x));
    set("y_m", in_metres(geometry::xy(at).y));
  }
  void note(const std::string& text) { set("note", csv_text(text)); }
  void end() { text_ += csv_row(cells_); }
  std::string text() const { return text_; }

 private:
  std::size_t column(std::string_view name) const {
    const auto found = std::find(columns_.begin(), columns_.end(), name);
    problem::ensure(found != columns_.end(), "a cell is put into a column of the table");
    return static_cast<std::size_t>(found - columns_.begin());
  }
  static std::string in_metres(double metres) { return units::show_number(metres, 6); }

  static constexpr std::array texts{"kind", "element", "what", "side"};
  static constexpr std::array lengths{"along", "out", "tie_from_start", "tie_from_end", "check", "radius", "value"};
  static constexpr std::array heights{"ground", "formation", "finish", "cut_to_formation", "cut_to_finish"};
  units::System system_;
  std::vector<std::string> columns_;
  std::vector<std::string> cells_;
  std::string text_;
};

void put(Table& table, const Mark& mark) {
  table.begin("mark", mark.of, mark.what);
  table.set("side", mark.side);
  table.along(mark.along);
  table.out(mark.out);
  table.length("tie_from_start", mark.tie_from);
  table.length("tie_from_end", mark.tie_to);
  table.length("check", mark.check);
  table.length("radius", mark.radius);
  table.place(mark.at);
  if (mark.poor) table.note("poor crossing: measure the check");
  table.end();
}

void put(Table& table, const Diagonal& diagonal) {
  table.begin("diagonal", diagonal.of, diagonal.what);
  table.length("value", diagonal.length);
  table.note(diagonal.rectangle ? "rectangle: both diagonals alike, and opposite sides too" : "not square");
  table.end();
}

void put(Table& table, const Offset& offset) {
  table.begin(
      "offset", offset.of,
      "edge " + std::to_string(offset.edge) + (offset.part == 0 ? "" : ", part " + std::to_string(offset.part)));
  table.length("along", offset.along);
  table.set("side", offset.out < 0 ? "right of the chord" : "left of the chord");
  table.out(offset.out);
  table.length("value", offset.chord);
  table.place(offset.from);
  table.note("x and y of the chord's start");
  table.end();
}

MaybeMetres less(MaybeMetres a, MaybeMetres b) {
  if (!a || !b) return std::nullopt;
  return *a - *b;
}

std::string in_words(const char* to, MaybeMetres cut) {
  if (!cut || *cut == 0) return "";
  return std::string(*cut > 0 ? "cut" : "fill") + " to " + to;
}

void put(Table& table, const Stake& stake) {
  table.begin("stake", stake.of, stake.what);
  table.height("ground", stake.ground);
  table.height("formation", stake.formation);
  table.height("finish", stake.finish);
  const MaybeMetres formation = less(stake.ground, stake.formation), finish = less(stake.ground, stake.finish);
  table.height("cut_to_formation", formation);
  table.height("cut_to_finish", finish);
  table.place(stake.at);
  std::string note;
  for (const std::string& part : {in_words("formation", formation), in_words("finish", finish),
                                  std::string(stake.guessed ? "the ground here was not measured: a guess" : "")})
    if (!part.empty()) note += (note.empty() ? "" : ", ") + part;
  table.note(note);
  table.end();
}

void put_base_line(Table& table, const plan::Job& job, const SettingOut& out) {
  const plan::Element* element = job.find(out.base_line);
  const auto* line = element ? std::get_if<plan::BaseLine>(&element->kind) : nullptr;
  if (!line) return;
  const double long_m = geometry::length(line->to - line->from) / units::Length::steps_per_metre;
  table.begin("base-line", out.base_line, "start");
  table.length("along", 0.0);
  table.place(line->from);
  table.end();
  table.begin("base-line", out.base_line, "end");
  table.length("along", long_m);
  table.place(line->to);
  table.end();
}

}  // namespace

std::string setting_out_csv(const plan::Job& job, const SettingOut& out) {
  Table table(job.heading.units);
  put_base_line(table, job, out);
  for (const Mark& mark : out.marks) put(table, mark);
  for (const Diagonal& diagonal : out.diagonals) put(table, diagonal);
  for (const Offset& offset : out.offsets) put(table, offset);
  for (const Stake& stake : out.stakes) put(table, stake);
  for (const problem::Problem& said : out.problems) {
    table.begin("notice", said.place.element, "");
    table.note(said.text + (said.mend.empty() ? "" : "; " + said.mend));
    table.end();
  }
  return table.text();
}

}  // namespace files
