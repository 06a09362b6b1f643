#include "files/level_book_text.h"

#include <array>

#include "files/sheet_text.h"
#include "takeoff/levels/book.h"
#include "units/number.h"

namespace files {

namespace {

using takeoff::levels::Reduced;

// Levels are booked in decimal feet or metres, never in inches.
class Shown {
 public:
  explicit Shown(units::System system) : feet_(system == units::System::us) {}
  std::string unit() const { return feet_ ? "ft" : "m"; }
  std::string height(double metres) const {
    return units::show_number(feet_ ? metres / units::metres_per_foot : metres, feet_ ? 2 : 3);
  }
  std::string change(double metres) const {
    const std::string text = height(metres);
    return text.starts_with('-') || height(0) == text ? text : "+" + text;
  }
  std::string sight(const std::optional<plan::Length>& read) const { return read ? height(read->metres().si()) : ""; }

 private:
  bool feet_;
};

constexpr std::size_t point_columns = 22;
constexpr std::size_t number_columns = 11;

std::string row_of(const std::string& point, const std::array<std::string, 6>& cells, const std::string& note) {
  std::string row = "  " + at_left(cut(point, point_columns), point_columns);
  for (const std::string& cell : cells) row += at_right(cell, number_columns);
  if (!note.empty()) row += "  " + cut(note, sheet_width - columns_of(row) - 2);
  while (row.ends_with(' ')) row.pop_back();
  return row + "\n";
}

std::string rows_of(const plan::LevelBook& book, const Reduced& reduced, const Shown& shown) {
  const bool shared = book.share_out && reduced.misclosure;
  std::string text = row_of("point", {"back", "between", "fore", "instrument", "height", shared ? "shared" : ""}, "");
  for (std::size_t i = 0; i < reduced.rows.size(); ++i) {
    const plan::RodReading& read = book.readings[i];
    const takeoff::levels::BookRow& row = reduced.rows[i];
    text += row_of(row.point,
                   {shown.sight(read.back), shown.sight(read.between), shown.sight(read.fore),
                    read.back && row.instrument ? shown.height(*row.instrument) : "", shown.height(row.height),
                    shared ? shown.change(row.correction) : ""},
                   read.note);
  }
  return text;
}

// Height as read of the point that the run was carried to: the last foresight's.
double carried_to(const plan::LevelBook& book, const Reduced& reduced) {
  for (std::size_t i = book.readings.size(); i-- > 0;)
    if (book.readings[i].fore) return reduced.rows[i].height - reduced.rows[i].correction;
  return book.start.metres().si();
}

// The two sides of the check are worked out apart: from the sums of the readings, and from the heights.
std::string sums_of(const plan::LevelBook& book, const Reduced& reduced, const Shown& shown) {
  const double first = book.start.metres().si();
  const double last = carried_to(book, reduced);
  std::string text =
      wrapped("Arithmetic check: backsights " + shown.height(reduced.sum_back) + " less foresights " +
                  shown.height(reduced.sum_fore) + " = " + shown.change(reduced.sum_back - reduced.sum_fore) +
                  "; last height as read " + shown.height(last) + " less the first " + shown.height(first) + " = " +
                  shown.change(last - first) + ".",
              "  ", 2);
  if (!reduced.misclosure) return text + wrapped("The run was not closed on a known height.", "  ", 2);
  const std::string set_ups = std::to_string(reduced.set_ups) + " set-up" + (reduced.set_ups == 1 ? "" : "s");
  return text +
         wrapped("Misclosure: " + shown.height(last) + " less the known " + shown.height(book.finish->metres().si()) +
                     " = " + shown.change(*reduced.misclosure) + " " + shown.unit() + " over " + set_ups +
                     (book.share_out ? ", shared out evenly over them." : "."),
                 "  ", 2);
}

}  // namespace

std::string level_books_text(const plan::Job& job) {
  const Shown shown(job.heading.units);
  std::string text;
  for (const plan::ElementPtr& element : job.elements) {
    const auto* book = std::get_if<plan::LevelBook>(&element->kind);
    if (book == nullptr) continue;
    const auto reduced = takeoff::levels::reduce(*book, element->id);
    if (!reduced) continue;
    text += section("Level book " + element->id + (element->name.empty() ? "" : ", " + element->name) + " (" +
                    shown.unit() + ")");
    text += rows_of(*book, *reduced, shown) + sums_of(*book, *reduced, shown);
  }
  return text;
}

}  // namespace files
