#include "files/survey_rows.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "files/json_read.h"
#include "units/number.h"

namespace files {

std::string small_letters(std::string_view text) {
  std::string made(text);
  for (char& c : made)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return made;
}

std::string_view trimmed(std::string_view text) {
  const std::size_t from = text.find_first_not_of(" \t");
  if (from == std::string_view::npos) return {};
  return text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

namespace {

constexpr double highest_m = 10000;  // no height of a yard lies further from its datum

enum Column : std::size_t { point_column, northing, easting, height_column, description, columns_count };
constexpr std::array<std::string_view, columns_count> column_names{"point", "northing", "easting", "height",
                                                                   "description"};

// The column that a head line means by a name.
std::optional<Column> column_of(std::string_view name) {
  static const std::map<std::string, Column, std::less<>> known{{"point", point_column}, {"pt", point_column},
                                                                {"no", point_column},    {"number", point_column},
                                                                {"id", point_column},    {"name", point_column},
                                                                {"p", point_column},     {"northing", northing},
                                                                {"north", northing},     {"n", northing},
                                                                {"y", northing},         {"easting", easting},
                                                                {"east", easting},       {"e", easting},
                                                                {"x", easting},          {"height", height_column},
                                                                {"z", height_column},    {"elevation", height_column},
                                                                {"elev", height_column}, {"level", height_column},
                                                                {"h", height_column},    {"description", description},
                                                                {"desc", description},   {"code", description},
                                                                {"d", description}};
  const auto found = known.find(small_letters(trimmed(name)));
  if (found == known.end()) return std::nullopt;
  return found->second;
}

// In which cell of a row each column stands.
struct Columns {
  std::array<std::optional<std::size_t>, columns_count> at;
  std::size_t cells = 0;  // of a row; without a head line the description may be missing
  bool description_optional = false;
};

// Reads rows into shots; the first fault is kept.
class SurveyReader {
 public:
  SurveyReader(const std::string& file, double unit) : file_(file), unit_(unit) {}

  problem::Result<std::vector<SurveyShot>> shots(const std::vector<CsvRow>& rows) {
    if (rows.empty()) return fault(1, "survey-empty", "there are no points in the file", "export the points again");
    std::size_t first = 0;
    if (has_head(rows.front())) {
      if (auto good = read_head(rows.front()); !good) return std::unexpected(good.error());
      first = 1;
    } else {
      columns_ = {{0, 1, 2, 3, 4}, columns_count, true};
    }
    std::vector<SurveyShot> made;
    for (std::size_t i = first; i < rows.size(); ++i) {
      auto shot = read_row(rows[i]);
      if (!shot) return std::unexpected(shot.error());
      made.push_back(std::move(*shot));
    }
    if (made.empty())
      return fault(rows.front().line, "survey-empty", "there are no points under the head line",
                   "export the points again");
    return made;
  }

  std::unexpected<problem::Problem> fault(int line, const char* code, const std::string& what,
                                          const std::string& mend) const {
    return problem::fault(code, what, mend, csv_place(file_, line));
  }

  const std::vector<std::string>& left_out() const { return left_out_; }

 private:
  // A row of points has a number in its second or third cell; a head line has none there.
  static bool has_head(const CsvRow& row) {
    const auto number = [&](std::size_t i) {
      return i < row.cells.size() && units::read_number(trimmed(row.cells[i])).has_value();
    };
    return !number(1) && !number(2);
  }

  problem::Result<void> read_head(const CsvRow& row) {
    columns_.cells = row.cells.size();
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      const auto column = column_of(row.cells[i]);
      if (!column) {
        left_out_.push_back(row.cells[i]);
        continue;
      }
      if (columns_.at[*column])
        return fault(row.line, "survey-columns",
                     "two columns stand for the " + std::string(column_names[*column]) + ": " +
                         in_quotes(row.cells[*columns_.at[*column]]) + " and " + in_quotes(row.cells[i]),
                     "take one of them out");
      columns_.at[*column] = i;
    }
    for (const Column needed : {point_column, northing, easting, height_column})
      if (!columns_.at[needed])
        return fault(row.line, "survey-columns",
                     "the head line has no column for the " + std::string(column_names[needed]),
                     "name the columns point, northing, easting, height and description in the first row, or leave the "
                     "head line out and keep that order");
    return {};
  }

  std::string cell(const CsvRow& row, Column column) const {
    const auto at = columns_.at[column];
    return at && *at < row.cells.size() ? text_of_csv(trimmed(row.cells[*at])) : "";
  }

  problem::Result<std::optional<double>> number(const CsvRow& row, Column column) const {
    const std::string text = cell(row, column);
    if (text.empty()) return std::nullopt;
    const auto value = units::read_number(text);
    const std::string name(column_names[column]);
    if (!value)
      return fault(row.line, "survey-number", "the " + name + " " + in_quotes(text) + " is not a number",
                   "write digits with a dot before the decimals and no unit");
    if (std::abs(*value) > 1e9)
      return fault(row.line, "survey-number", "the " + name + " " + in_quotes(text) + " is no place on earth",
                   "look at its decimal point");
    return value;
  }

  problem::Result<double> needed(const CsvRow& row, Column column) const {
    auto value = number(row, column);
    if (!value) return std::unexpected(value.error());
    if (*value) return **value;
    return fault(row.line, "survey-number", "the " + std::string(column_names[column]) + " is empty", "fill it in");
  }

  problem::Result<SurveyShot> read_row(const CsvRow& row) {
    const std::size_t least = columns_.description_optional ? columns_.cells - 1 : columns_.cells;
    if (row.cells.size() < least || row.cells.size() > columns_.cells)
      return fault(
          row.line, "survey-row",
          "the row has " + std::to_string(row.cells.size()) + " cells instead of " + std::to_string(columns_.cells),
          "give point, northing, easting, height and description, and put cells with commas in quotes");
    SurveyShot shot{row.line, cell(row, point_column), 0, 0, {}, cell(row, description)};
    if (auto good = check_point(shot); !good) return std::unexpected(good.error());
    const auto north = needed(row, northing);
    if (!north) return std::unexpected(north.error());
    const auto east = needed(row, easting);
    if (!east) return std::unexpected(east.error());
    const auto height = number(row, height_column);
    if (!height) return std::unexpected(height.error());
    shot.north = *north * unit_;
    shot.east = *east * unit_;
    if (*height) shot.height = **height * unit_;
    if (shot.height && std::abs(*shot.height) > highest_m)
      return fault(row.line, "survey-height", "the height of " + in_quotes(shot.point) + " is over 10 km",
                   "look at the height and at --units");
    return shot;
  }

  problem::Result<void> check_point(const SurveyShot& shot) {
    if (shot.point.empty()) return fault(shot.line, "survey-point", "the point has no name", "give each point its own");
    for (const std::string& text : {shot.point, shot.description})
      if (std::ranges::any_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }))
        return fault(shot.line, "survey-point", "a name holds a control character", "take it out");
    const auto [before, is_new] = lines_.emplace(shot.point, shot.line);
    if (!is_new)
      return fault(shot.line, "survey-doubled",
                   "the point " + in_quotes(shot.point) + " stands in line " + std::to_string(before->second) + " too",
                   "give each point a name of its own, or take one of the two out");
    return {};
  }

  const std::string& file_;
  double unit_;
  Columns columns_;
  std::map<std::string, int> lines_;
  std::vector<std::string> left_out_;
};

}  // namespace

problem::Result<SurveyRows> read_survey_rows(std::string_view text, const std::string& file, double unit) {
  const auto rows = read_csv_rows(text, file);
  if (!rows) return std::unexpected(rows.error());
  SurveyReader reader(file, unit);
  auto shots = reader.shots(*rows);
  if (!shots) return std::unexpected(shots.error());
  return SurveyRows{std::move(*shots), reader.left_out()};
}

}  // namespace files
