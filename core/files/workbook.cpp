#include "files/workbook.h"

#include <locale.h>
#include <xlsxwriter.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdlib>
#include <filesystem>

#include "files/files.h"
#include "files/sheet_text.h"

namespace files {

namespace {

constexpr std::size_t most_letters = 32'767;
constexpr std::size_t most_rows = 1'048'576;

// The library prints numbers by the locale of the thread: a decimal comma would break the file.
class PlainThread {
 public:
  PlainThread() : plain_(::newlocale(LC_ALL_MASK, "C", nullptr)), before_(::uselocale(plain_)) {}
  ~PlainThread() {
    ::uselocale(before_);
    if (plain_ != nullptr) ::freelocale(plain_);
  }
  PlainThread(const PlainThread&) = delete;
  PlainThread& operator=(const PlainThread&) = delete;

 private:
  locale_t plain_;
  locale_t before_;
};

// A folder of its own for the file while it is made; gone with all in it at the end.
class Workplace {
 public:
  Workplace() {
    std::error_code failed;
    const auto temporary = std::filesystem::temp_directory_path(failed);
    std::string name = (failed ? std::filesystem::path("/tmp") : temporary) / "groundcourse-XXXXXX";
    if (::mkdtemp(name.data()) != nullptr) folder_ = name;
  }
  ~Workplace() {
    std::error_code ignored;
    if (!folder_.empty()) std::filesystem::remove_all(folder_, ignored);
  }
  Workplace(const Workplace&) = delete;
  Workplace& operator=(const Workplace&) = delete;
  const std::string& folder() const { return folder_; }
  std::string file() const { return folder_ + "/book.xlsx"; }

 private:
  std::string folder_;
};

std::time_t seconds_of(const std::string& date) {
  using namespace std::chrono;
  const auto part = [&date](std::size_t from, std::size_t length) {
    int number = 0;
    const char* begin = date.data() + from;
    const auto [end, error] = std::from_chars(begin, begin + length, number);
    return error == std::errc() && end == begin + length ? number : 0;
  };
  year_month_day day{year(2000), month(1), std::chrono::day(1)};
  if (date.size() == 10 && date[4] == '-' && date[7] == '-') {
    const year_month_day told{year(part(0, 4)), month(static_cast<unsigned>(part(5, 2))),
                              std::chrono::day(static_cast<unsigned>(part(8, 2)))};
    if (told.ok() && part(0, 4) >= 1980) day = told;
  }
  return duration_cast<seconds>(sys_days(day).time_since_epoch()).count();
}

std::string within_a_cell(const std::string& text) {
  if (text.size() <= most_letters) return text;
  std::size_t end = most_letters - 3;
  while ((static_cast<unsigned char>(text[end]) & 0xC0u) == 0x80) --end;
  return text.substr(0, end) + "...";
}

// In so many lines a text stands in a column, broken at blanks. Widths count figures, most letters are narrower.
std::size_t lines_in(std::string_view text, double width) {
  const std::size_t room = std::max<std::size_t>(static_cast<std::size_t>(width), 1);
  std::size_t lines = 1, used = 0;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    const std::size_t word = columns_of(text.substr(0, end));
    if (used > 0 && used + 1 + word > room) {
      ++lines;
      used = 0;
    }
    used += (used > 0 ? 1 : 0) + word;
    if (used > room) {  // a word longer than a line
      lines += (used - 1) / room;
      used = (used - 1) % room + 1;
    }
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

// Rows are as high as their texts ask for: not every program finds that out by itself.
constexpr double height_of_line = 15;   // points
constexpr std::size_t most_lines = 27;  // a row is at most 409 points high
std::size_t lines_of(const std::vector<Cell>& row, const std::vector<double>& widths) {
  std::size_t lines = 1;
  for (std::size_t i = 0; i < std::min(row.size(), widths.size()); ++i)
    if (row[i].look == Look::wrapped) lines = std::max(lines, lines_in(row[i].text, widths[i]));
  return std::min(lines, most_lines);
}

// Writes one workbook by the library and remembers the first thing that went wrong.
class Writer {
 public:
  Writer(const std::string& file, const std::string& folder, const Workbook& from) : from_(from) {
    std::string place = folder;
    lxw_workbook_options options{};
    options.tmpdir = place.data();
    book_ = ::workbook_new_opt(file.c_str(), &options);
    if (book_ == nullptr) return;
    std::string title = from.title;
    lxw_doc_properties told{};
    told.title = title.data();
    told.created = seconds_of(from.date);
    note(::workbook_set_properties(book_, &told));
    make_formats();
  }

  void write(const Sheet& sheet) {
    if (book_ == nullptr) return;
    lxw_worksheet* into = ::workbook_add_worksheet(book_, sheet.name.c_str());
    if (into == nullptr || sheet.rows.size() > most_rows) {
      note(LXW_ERROR_WORKSHEET_INDEX_OUT_OF_RANGE);
      return;
    }
    set_up(into, sheet);
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
      const std::size_t lines = lines_of(sheet.rows[row], sheet.widths);
      if (lines > 1)
        note(::worksheet_set_row(into, static_cast<lxw_row_t>(row), height_of_line * static_cast<double>(lines),
                                 nullptr));
      for (std::size_t column = 0; column < sheet.rows[row].size(); ++column)
        put(into, static_cast<lxw_row_t>(row), static_cast<lxw_col_t>(column), sheet.rows[row][column]);
    }
  }

  lxw_error close() {
    if (book_ == nullptr) return LXW_ERROR_MEMORY_MALLOC_FAILED;
    note(::workbook_close(book_));
    return fault_;
  }

 private:
  void note(lxw_error error) {
    if (fault_ == LXW_NO_ERROR) fault_ = error;
  }

  // How many decimals a number of that size is shown with: by its row here.
  static std::size_t size_of(double value) {
    const double size = std::abs(value);
    if (value == std::floor(value) && size < 1e15) return 0;
    return size >= 100 ? 1 : size >= 1 ? 2 : size >= 0.001 ? 3 : 4;
  }

  void make_formats() {
    static constexpr std::array numbers{"#,##0", "#,##0.00", "0.00#", "0.00###", "0.00E+00"};
    const std::string money = "#,##0" + (from_.decimals > 0 ? "." + std::string(at_most_nine(), '0') : std::string());
    for (std::size_t i = 0; i < looks; ++i)
      for (std::size_t size = 0; size < numbers.size(); ++size) {
        const Look look = static_cast<Look>(i);
        lxw_format* format = ::workbook_add_format(book_);
        ::format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
        if (look == Look::wrapped || look == Look::head) ::format_set_text_wrap(format);
        if (look == Look::title || look >= Look::head) ::format_set_bold(format);
        if (look == Look::title) ::format_set_font_size(format, 14);
        if (look == Look::unit || look == Look::unit_head || look == Look::total_unit) ::format_set_indent(format, 1);
        if (look == Look::number_head) ::format_set_align(format, LXW_ALIGN_RIGHT);
        if (look >= Look::head && look <= Look::number_head) ::format_set_bottom(format, LXW_BORDER_THIN);
        if (look >= Look::total) ::format_set_top(format, LXW_BORDER_THIN);
        if (look == Look::money || look == Look::total_money) ::format_set_num_format(format, money.c_str());
        if (look == Look::price) ::format_set_num_format(format, "#,##0.0000");
        if (look == Look::number || look == Look::total_number) ::format_set_num_format(format, numbers[size]);
        formats_[i][size] = format;
      }
  }
  std::size_t at_most_nine() const { return static_cast<std::size_t>(std::min(from_.decimals, 9)); }

  void set_up(lxw_worksheet* into, const Sheet& sheet) {
    for (std::size_t i = 0; i < sheet.widths.size(); ++i)
      note(
          ::worksheet_set_column(into, static_cast<lxw_col_t>(i), static_cast<lxw_col_t>(i), sheet.widths[i], nullptr));
    const auto frozen = static_cast<lxw_row_t>(sheet.frozen);
    if (frozen > 0) {
      ::worksheet_freeze_panes(into, frozen, 0);
      note(::worksheet_repeat_rows(into, 0, frozen - 1));
    }
    if (sheet.filter && frozen > 0 && !sheet.widths.empty())
      note(::worksheet_autofilter(into, frozen - 1, 0, frozen - 1 + static_cast<lxw_row_t>(sheet.filtered),
                                  static_cast<lxw_col_t>(sheet.widths.size() - 1)));
    ::worksheet_set_landscape(into);
    ::worksheet_set_paper(into, from_.letter ? 1 : 9);
    ::worksheet_fit_to_pages(into, 1, 0);
    note(::worksheet_set_footer(into, "&L&F, &A&R&P / &N"));
  }

  void put(lxw_worksheet* into, lxw_row_t row, lxw_col_t column, const Cell& cell) {
    lxw_format* format = formats_[static_cast<std::size_t>(cell.look)][size_of(cell.value)];
    switch (cell.what) {
      case Cell::What::empty:
        if (cell.look >= Look::head) note(::worksheet_write_blank(into, row, column, format));
        break;
      case Cell::What::text:
        note(::worksheet_write_string(into, row, column, within_a_cell(cell.text).c_str(), format));
        break;
      case Cell::What::number: note(::worksheet_write_number(into, row, column, cell.value, format)); break;
      case Cell::What::formula:
        note(::worksheet_write_formula_num(into, row, column, ("=" + cell.text).c_str(), format, cell.value));
        break;
    }
  }

  const Workbook& from_;
  lxw_workbook* book_ = nullptr;
  lxw_error fault_ = LXW_NO_ERROR;
  static constexpr std::size_t looks = static_cast<std::size_t>(Look::total_money) + 1;
  std::array<std::array<lxw_format*, 5>, looks> formats_{};
};

std::unexpected<problem::Problem> not_written(const std::string& why) {
  return problem::fault("xlsx-written", "the spreadsheet can't be made: " + why,
                        "look at the room on the disk, or write it as CSV");
}

}  // namespace

Cell text_cell(std::string text, Look look) {
  return {text.empty() ? Cell::What::empty : Cell::What::text, std::move(text), 0, look};
}
Cell number_cell(double value, Look look) { return {Cell::What::number, "", value, look}; }
Cell formula_cell(std::string formula, double value, Look look) {
  return {Cell::What::formula, std::move(formula), value, look};
}

std::string cell_name(std::size_t row, std::size_t column, bool fixed) {
  std::string letters;
  for (std::size_t rest = column + 1; rest > 0; rest = (rest - 1) / 26)
    letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % 26));
  const std::string mark = fixed ? "$" : "";
  return mark + letters + mark + std::to_string(row + 1);
}

problem::Result<std::string> write_workbook(const Workbook& workbook) {
  const PlainThread plain;
  const Workplace place;
  if (place.folder().empty()) return not_written("there is no folder for temporary files");
  Writer writer(place.file(), place.folder(), workbook);
  for (const Sheet& sheet : workbook.sheets) writer.write(sheet);
  if (const lxw_error error = writer.close(); error != LXW_NO_ERROR) return not_written(::lxw_strerror(error));
  return read_file(place.file());
}

}  // namespace files
