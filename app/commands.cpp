#include "commands.h"

#include <cstdio>

#include "files/files.h"
#include "files/takeoff_xlsx.h"
#include "results/results.h"

namespace app {

int refuse(const problem::Problem& fault) {
  std::fprintf(stderr, "groundcourse: %s\n", problem::sentence(fault).c_str());
  return 1;
}

int deliver(const std::string& text, const std::string& file) {
  if (file.empty()) {
    const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
    return written ? 0 : refuse({problem::Severity::problem, "output-broken", "standard output took no more", "", {}});
  }
  const auto written = files::write_file(file, text);
  return written ? 0 : refuse(written.error());
}

problem::Result<plan::Job> read_job(const std::string& path) {
  const auto text = files::read_file(path);
  if (!text) return std::unexpected(text.error());
  return files::read_job(*text, path);
}

// Words that do not go together are wrong usage.
static int refuse_words(const char* code, const std::string& text, const std::string& mend) {
  refuse({problem::Severity::problem, code, text, mend, {}});
  return 2;
}

int takeoff(const TakeoffWords& words) {
  if (words.form == "xlsx" && words.output.empty())
    return refuse_words("output-words", "a spreadsheet is no text for a terminal",
                        "name its file with --output F.xlsx");
  if (words.form != "csv" && (!words.separator.empty() || words.byte_order_mark))
    return refuse_words("csv-words", "--separator and --bom are for CSV", "add --as csv, or leave them out");
  auto job = read_job(words.job);
  if (!job) return refuse(job.error());
  const results::Results results = results::compute(std::make_shared<const plan::Job>(std::move(*job)));
  if (words.form == "csv") {
    const char separator = words.separator == "tab" ? '\t' : words.separator == ";" ? ';' : ',';
    return deliver(files::takeoff_csv(results, {separator, words.byte_order_mark}), words.output);
  }
  if (words.form == "xlsx") {
    const auto made = files::takeoff_xlsx(results);
    return made ? deliver(*made, words.output) : refuse(problem::in_file(made.error(), words.output));
  }
  if (words.form == "json") return deliver(files::takeoff_json(results), words.output);
  return deliver(files::takeoff_text(results), words.output);
}

int check(const std::string& path) {
  auto job = read_job(path);
  if (!job) return refuse(job.error());
  const results::Results results = results::compute(std::make_shared<const plan::Job>(std::move(*job)));
  bool any_problem = false;
  std::string text;
  for (const problem::Problem& said : results.problems()) {
    any_problem = any_problem || said.severity == problem::Severity::problem;
    text += problem::word(said.severity) + ": " + problem::sentence(said) + "\n";
  }
  const int code = deliver(text, "");
  return any_problem ? 1 : code;
}

}  // namespace app
