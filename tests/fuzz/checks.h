// What has to hold of any bytes at all: run by the fuzzers on what they think up, and by the tests on every seed.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "files/files.h"
#include "files/outlines_under.h"
#include "files/picture_header.h"
#include "problem/ensure.h"

namespace fuzz {

// A refused file has a sentence and a mend, on one line, without control letters of the file.
inline void one_sentence(const problem::Problem& said) {
  problem::ensure(!said.code.empty() && !said.text.empty() && !said.mend.empty(), "a refused file has a sentence");
  for (const char letter : problem::sentence(said))
    problem::ensure(static_cast<unsigned char>(letter) >= 0x20, "a sentence stands on one line");
}

// A drawing, as one kind and unit or another (by its size, so that seeds stay plain files): a job that can be kept.
inline void dxf(std::string_view text) {
  static constexpr std::array kinds{"paved-area", "wall", "removal", "site-mark:gate", "level"};
  static constexpr std::array units{"", "mm", "us-ft"};
  const auto made = files::import_dxf(text, "fuzz.dxf", units[text.size() % units.size()],
                                      {{"*", kinds[text.size() % kinds.size()]}});
  if (!made) return one_sentence(made.error());
  for (const problem::Problem& notice : made->notices) one_sentence(notice);
  if (made->job.elements.size() > 2000) return;  // a block placed very often: keeping it tells nothing new
  const auto back = files::read_job(files::write_job(made->job), "fuzz.json");
  problem::ensure(back.has_value() && plan::same(made->job, *back), "what is imported can be kept");
}

// A table: the same cells after writing and reading, in all three readers of tables.
inline void csv(std::string_view text) {
  const auto rows = files::read_csv_rows(text, "fuzz.csv");
  // A cell that begins with a byte order mark is no text of anybody's, and where it comes first it is taken for one.
  const bool marked = rows && !rows->empty() && rows->front().cells.front().starts_with("\xEF\xBB\xBF");
  if (rows && !marked) {
    std::string written;
    for (const files::CsvRow& row : *rows) written += files::csv_row(row.cells);
    const auto back = files::read_csv_rows(written, "fuzz.csv");
    problem::ensure(back.has_value() && back->size() == rows->size(), "what is read can be written");
    for (std::size_t i = 0; i < rows->size(); ++i)
      problem::ensure((*rows)[i].cells == (*back)[i].cells, "written cells are the same");
  } else if (!rows) {
    one_sentence(rows.error());
  }
  const auto points = files::import_survey(text, "fuzz.csv", "m", {});
  if (points) {
    const auto back = files::read_job(files::write_job(points->job), "fuzz.json");
    problem::ensure(back.has_value() && plan::same(points->job, *back), "what is imported can be kept");
  } else {
    one_sentence(points.error());
  }
  if (const auto items = files::read_catalogue_csv(text, "fuzz.csv"); !items) one_sentence(items.error());
}

// A picture's first bytes: sides that a picture can have, or a sentence; a longer file says the same.
inline void picture(std::string_view bytes) {
  const auto made = files::picture_header(bytes);
  if (!made) return one_sentence(made.error());
  problem::ensure(made->width > 0 && made->height > 0, "a picture has sides");
  const auto longer = files::picture_header(std::string(bytes) + "more");
  problem::ensure(longer && longer->width == made->width && longer->height == made->height, "the header says it all");
}

}  // namespace fuzz
