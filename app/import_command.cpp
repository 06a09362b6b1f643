#include <cstdio>
#include <filesystem>

#include "commands.h"
#include "files/files.h"
#include "files/outlines_under.h"

namespace app {

static problem::Result<std::map<std::string, std::string>> layer_map(const std::vector<std::string>& pairs) {
  std::map<std::string, std::string> layers;
  for (const std::string& pair : pairs) {
    const std::size_t equals = pair.find('=');
    if (equals == 0 || equals == std::string::npos || equals + 1 == pair.size())
      return problem::fault("layer-words", "--layer " + pair + " is not NAME=KIND",
                            "write for instance --layer patio=paved-area");
    layers[pair.substr(0, equals)] = pair.substr(equals + 1);
  }
  return layers;
}

// What was left out, and why, a line each.
static void name_left_out(const std::map<std::string, int>& left_out) {
  for (const auto& [layer, count] : left_out)
    std::fprintf(stderr, "groundcourse: %d feature%s of layer '%s' not mapped to a kind and left out\n", count,
                 count == 1 ? "" : "s", layer.c_str());
}

static bool is_survey(const std::string& file) {
  std::string ending = std::filesystem::path(file).extension().string();
  for (char& c : ending) c = c == 'C' || c == 'S' || c == 'V' ? static_cast<char>(c - 'A' + 'a') : c;
  return ending == ".csv";
}

static int import_points(const std::string& text, const ImportWords& words,
                         const std::map<std::string, std::string>& layers) {
  std::optional<plan::Job> into;
  if (!words.into.empty()) {
    auto job = read_job(words.into);
    if (!job) return refuse(job.error());
    into = std::move(*job);
  }
  const auto imported = files::import_survey(text, words.file, words.units, layers, into ? &*into : nullptr);
  if (!imported) return refuse(imported.error());
  const int code = deliver(files::write_job(imported->job), words.output);
  if (code != 0) return code;
  for (const std::string& column : imported->left_out)
    std::fprintf(stderr, "groundcourse: the column '%s' was left out\n", column.c_str());
  return 0;
}

int import(const ImportWords& words) {
  const auto layers = layer_map(words.layers);
  if (!layers) {
    refuse(layers.error());
    return 2;
  }
  const auto text = files::read_file(words.file);
  if (!text) return refuse(text.error());
  if (is_survey(words.file)) return import_points(*text, words, *layers);
  if (!words.into.empty()) {
    refuse({problem::Severity::problem,
            "into-points",
            "--into adds survey points, and " + words.file + " is no CSV file",
            "import it as a job of its own",
            {}});
    return 2;
  }
  const auto imported = files::is_dxf(words.file) ? files::import_dxf(*text, words.file, words.units, *layers)
                                                  : files::import_geojson(*text, words.file, words.units, *layers);
  if (!imported) return refuse(imported.error());
  const int code = deliver(files::write_job(imported->job), words.output);
  if (code != 0) return code;
  name_left_out(imported->not_mapped);
  for (const problem::Problem& notice : imported->notices)
    std::fprintf(stderr, "groundcourse: %s\n", problem::sentence(notice).c_str());
  return 0;
}

}  // namespace app
