#include "sheets/wall_page.h"

#include <algorithm>
#include <cmath>

#include "sheets/elevation_drawing.h"
#include "sheets/numbered.h"
#include "sheets/section_drawing.h"
#include "sheets/source.h"
#include "sheets/wall_elevation.h"
#include "units/number.h"

namespace sheets {

namespace {

using Course = WallElevation::Course;

constexpr std::size_t rows_beside = 16;  // a longer table of courses goes on over pages and stands under the section

// A column of the table of courses: a kind of unit, and the measure that is its sum.
struct Kind {
  const char* title;
  const char* measure;
  int Course::* count;
  bool always;
};
const std::vector<Kind>& kinds() {
  static const std::vector<Kind> all{{"Whole", "units_whole", &Course::whole, true},
                                     {"Half", "units_half", &Course::half, false},
                                     {"Corner", "corner_units", &Course::corner, false},
                                     {"End", "end_units", &Course::end, false},
                                     {"Cut", "units_cut", &Course::cut, true}};
  return all;
}

class Page {
 public:
  Page(const Printed& printed, const plan::Element& element, const WallElevation& face)
      : printed_(printed), id_(element.id), name_(element.name), face_(face) {}

  Passage make() const {
    Passage page;
    page.blocks.emplace_back(NewPage{});
    const std::string called = filled(printed_, "Wall %1", {id_});
    page.blocks.emplace_back(Heading{name_.empty() ? called : called + ", " + name_, length_of_face()});
    page.blocks.emplace_back(Paragraph{
        {printed_.say(
            "The face unrolled, as one sees it who stands before it. Cut units and cut caps are hatched; the heavy "
            "line is "
            "the ground in front, the thin dashed one the ground behind, the heavy dashes are reinforcement.")},
        Paragraph::Kind::note});
    page.blocks.emplace_back(elevation_drawing(printed_, id_, face_));
    put_the_rest(page);
    return page;
  }

 private:
  Said length_of_face() const {
    return {filled(printed_, "%1 along the face", {length_words(printed_, face_.length)}),
            of_measure(id_, "face_length_m")};
  }

  void put_the_rest(Passage& page) const {
    const Table courses = table();
    const bool beside = courses.rows.size() <= rows_beside;
    page.blocks.emplace_back(preliminary());
    page.blocks.emplace_back(Gap{3});
    Beside two;
    two.share = beside ? 0.65 : 0.99;
    if (auto drawing = section(beside)) two.left.emplace_back(std::move(*drawing));
    if (beside) two.right.emplace_back(courses);
    page.blocks.emplace_back(std::make_shared<const Beside>(std::move(two)));
    if (!beside) {
      page.blocks.emplace_back(Heading{filled(printed_, "Courses of wall %1", {id_}), {}, {}, 2});
      page.blocks.emplace_back(courses);
    }
    put_flags(page);
  }

  std::optional<Drawing> section(bool beside) const {
    const auto section = section_figure(*printed_.results, id_, {});
    if (!section) return std::nullopt;
    Drawing drawing = section_drawing(printed_, id_, *section, beside ? 160 : 240, 108);
    drawing.title = filled(printed_, "Section A at %1 along the wall", {length_words(printed_, face_.section_at)}) +
                    "  " + drawing.title;
    return drawing;
  }

  std::optional<double> measured(const std::string& name) const {
    for (const takeoff::Measures& measures : printed_.results->takeoff.measures)
      if (measures.element == id_) return measures.get(name);
    return std::nullopt;
  }

  std::vector<Kind> shown() const {
    std::vector<Kind> some;
    for (const Kind& kind : kinds()) {
      const bool any = std::ranges::any_of(face_.courses, [&](const Course& course) { return course.*kind.count > 0; });
      if (kind.always || any) some.push_back(kind);
    }
    return some;
  }

  // From the top down, a layer of reinforcement between the courses that it lies between.
  Table table() const {
    const std::vector<Kind> some = shown();
    Table table;
    table.small = true;
    table.columns = {{printed_.say("Course"), Align::centre}, {printed_.say("Length"), Align::right}};
    for (const Kind& kind : some) table.columns.push_back({printed_.say(kind.title), Align::right});
    for (auto course = face_.courses.rbegin(); course != face_.courses.rend(); ++course) {
      put_layers(table, course->number);
      table.rows.push_back(row(*course, some));
    }
    table.rows.push_back(sums(some));
    return table;
  }

  void put_layers(Table& table, int course) const {
    for (const WallElevation::Layer& layer : face_.layers) {
      if (layer.on_course != course) continue;
      table.rows.push_back({{filled(printed_, "- - - reinforcement %1 long, from %2 to %3",
                                    {length_words(printed_, layer.length), place(layer.from), place(layer.to)})},
                            Row::Kind::group});
    }
  }
  std::string place(double station) const { return station == 0 ? "0" : length_words(printed_, station); }

  Row row(const Course& course, const std::vector<Kind>& some) const {
    const std::string number = std::to_string(course.number);
    Row row;
    row.cells = {Said{number}, {length_words(printed_, course.length), of_measure(id_, "course_length_m:" + number)}};
    for (const Kind& kind : some)
      row.cells.push_back(counted(course.*kind.count, counted_here(std::string(kind.measure) + " of course " + number +
                                                                   " of " + id_ + ", laid unit by unit")));
    return row;
  }

  Row sums(const std::vector<Kind>& some) const {
    Row row;
    row.kind = Row::Kind::total;
    row.cells = {Said{}, printed_.say("laid")};
    for (const Kind& kind : some) {
      const auto sum = measured(kind.measure);
      row.cells.push_back(counted(sum ? static_cast<int>(std::lround(*sum)) : 0, of_measure(id_, kind.measure)));
    }
    return row;
  }
  static Said counted(int count, const std::string& from) {
    return count == 0 ? Said{"–"} : Said{std::to_string(count), from};
  }

  // What the numbers say that somebody else has to decide. Nothing of it is a design.
  Framed preliminary() const {
    Framed box{printed_.say("Preliminary"), {}, true};
    put_height(box, "height_with_cap_m", "%1 from the bottom of the base to the top of the cap.");
    put_height(box, "height_of_units_m", "%1 from the bottom of the lowest block to the top of the blocks.");
    if (const auto caps = measured("caps"); caps && *caps > 0)
      box.lines.push_back(
          {filled(printed_, "Caps: %1, of them cut %2.",
                  {number_words(printed_, *caps), number_words(printed_, measured("caps_cut").value_or(0))}),
           of_measure(id_, "caps")});
    put_checks(box);
    box.lines.emplace_back(printed_.say("Nothing here is a design: local code and a licensed engineer decide."));
    return box;
  }

  void put_height(Framed& box, const std::string& measure, const std::string& sentence) const {
    if (const auto height = measured(measure))
      box.lines.push_back({filled(printed_, sentence, {length_words(printed_, *height)}), of_measure(id_, measure)});
  }

  void put_checks(Framed& box) const {
    const auto& checks = printed_.results->takeoff.checks;
    int made = 0, failed = 0;
    std::size_t first = checks.size();
    for (std::size_t i = 0; i < checks.size(); ++i) {
      if (checks[i].of != id_) continue;
      ++made;
      failed += checks[i].passes() ? 0 : 1;
      first = std::min(first, i);
    }
    if (made == 0) {
      box.lines.emplace_back(printed_.say("No checks of its stability were made."));
      return;
    }
    box.lines.push_back({filled(printed_, "Checks of its stability: %1, of them failed: %2.",
                                {std::to_string(made), std::to_string(failed)}),
                         of_check(first)});
    for (std::size_t i = 0; i < checks.size(); ++i) {
      const takeoff::Check& check = checks[i];
      if (check.of != id_ || check.passes()) continue;
      const std::string value = units::show_number(check.working.amount().value, 2);
      const std::string limit = units::show_number(check.limit, 2);
      box.lines.push_back(
          {filled(printed_, check.at_most ? "%1: %2, at most %3 is asked for." : "%1: %2, at least %3 is asked for.",
                  {capital(numbered(printed_, check.name)), value, limit}),
           of_check(i)});
    }
  }

  // One line for each thing that somebody has to decide.
  void put_flags(Passage& page) const {
    std::vector<std::string> said;
    for (const problem::Problem& one : printed_.results->takeoff.problems) {
      if (one.place.element != id_ || one.severity != problem::Severity::flag || one.code == "check-failed") continue;
      if (std::ranges::find(said, one.text) == said.end()) said.push_back(one.text);
    }
    if (said.empty()) return;
    page.blocks.emplace_back(Heading{filled(printed_, "To be decided for wall %1", {id_}), {}, {}, 2});
    for (const std::string& text : said)
      page.blocks.emplace_back(Paragraph{{as_sentence(printed_, text)}, Paragraph::Kind::note});
  }

  const Printed& printed_;
  const plan::ElementId& id_;
  const std::string& name_;
  const WallElevation& face_;
};

}  // namespace

std::optional<Passage> wall_page(const Printed& printed, const plan::ElementId& wall) {
  const plan::Element* element = printed.job().find(wall);
  const auto face = element ? wall_elevation(*printed.results, wall) : std::nullopt;
  if (!face) return std::nullopt;
  return Page(printed, *element, *face).make();
}

}  // namespace sheets
