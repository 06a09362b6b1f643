#include "estimate/estimate_kit.h"

#include <algorithm>
#include <filesystem>

#include "files/files.h"

namespace estimate_kit {

const catalogue::Catalogue& starter() {
  static const catalogue::Catalogue book = [] {
    std::map<std::string, std::string> texts;
    const std::filesystem::path root = std::filesystem::path(HOUSE_ROOT) / "resources";
    for (const char* folder : {"catalogue", "patterns"})
      for (const auto& file : std::filesystem::directory_iterator(root / folder))
        texts[std::string(folder) + "/" + file.path().filename().string()] =
            files::read_file(file.path().string()).value_or("");
    auto read = files::read_starter(texts);
    EXPECT_TRUE(read.has_value()) << (read ? "" : problem::sentence(read.error()));
    return read ? *read : catalogue::Catalogue();
  }();
  return book;
}

plan::Job job_with(catalogue::Catalogue book) {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(book));
  return job;
}

plan::Job starter_job() { return job_with(starter()); }

plan::Element area_laid_with(const std::string& id, const std::map<std::string, std::string>& units) {
  plan::PavedArea area;
  area.laying.emplace();
  area.laying->units = units;
  return {id, "", area};
}

takeoff::Working amount(double value, units::Unit unit) { return takeoff::term("net", value, unit, "A1"); }

takeoff::Line line(takeoff::Stage stage, const std::string& item, takeoff::Working working,
                   std::vector<std::string> of) {
  return {stage, item, item, std::move(of), std::move(working), {}, false};
}

takeoff::Takeoff takeoff_of(std::vector<takeoff::Line> lines, std::vector<takeoff::Task> tasks) {
  takeoff::Takeoff made;
  made.lines = std::move(lines);
  made.tasks = std::move(tasks);
  return made;
}

bool has_line(const estimate::Estimate& made, const std::string& item) {
  return std::ranges::find(made.lines, item, &estimate::OrderLine::item) != made.lines.end();
}

const estimate::OrderLine& line_of(const estimate::Estimate& made, const std::string& item) {
  static const estimate::OrderLine none{takeoff::Stage::finish,  {}, {}, {}, 0, {}, 0, {}, {}, {}, false, false, false,
                                        amount(0, units::piece), {}};
  EXPECT_EQ(std::ranges::count(made.lines, item, &estimate::OrderLine::item), 1) << item;
  const auto found = std::ranges::find(made.lines, item, &estimate::OrderLine::item);
  return found == made.lines.end() ? none : *found;
}

const problem::Problem* said(const estimate::Estimate& made, const std::string& code) {
  const auto found = std::ranges::find(made.problems, code, &problem::Problem::code);
  return found == made.problems.end() ? nullptr : &*found;
}

std::int64_t coins(const estimate::OrderLine& line) { return line.amount ? line.amount->coins() : -1; }

}  // namespace estimate_kit
