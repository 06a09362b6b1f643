#include "app/run_program.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>
#include <sstream>

#include "files/csv.h"
#include "units/number.h"

namespace program {

namespace fs = std::filesystem;

static int unique() {
  static int count = 0;
  return ++count;
}

Folder::Folder()
    : path_(fs::temp_directory_path() / ("groundcourse-" + std::to_string(getpid()) + "-" + std::to_string(unique()))) {
  fs::create_directories(path_);
}

Folder::~Folder() { fs::remove_all(path_); }

std::string text_of(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

void put_text(const std::string& path, const std::string& text) { std::ofstream(path, std::ios::binary) << text; }

std::string data(const std::string& name) { return std::string(HOUSE_ROOT) + "/tests/data/" + name; }
std::string demo(const std::string& name) { return std::string(HOUSE_ROOT) + "/demo-jobs/" + name; }

Said run(const std::vector<std::string>& words) {
  const Folder folder;
  const std::string out = folder.file("out"), err = folder.file("err");
  const pid_t child = fork();
  if (child == 0) {
    const int to_out = open(out.c_str(), O_CREAT | O_WRONLY, 0600),
              to_err = open(err.c_str(), O_CREAT | O_WRONLY, 0600);
    dup2(to_out, 1);
    dup2(to_err, 2);
    std::vector<char*> argv{const_cast<char*>(GROUNDCOURSE)};
    for (const std::string& word : words) argv.push_back(const_cast<char*>(word.c_str()));
    argv.push_back(nullptr);
    execv(GROUNDCOURSE, argv.data());
    _exit(127);
  }
  int status = 0;
  waitpid(child, &status, 0);
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status), text_of(out), text_of(err)};
}

std::vector<std::map<std::string, std::string>> rows(const std::string& path) {
  std::vector<std::map<std::string, std::string>> all;
  const auto table = files::read_csv(text_of(path), path);
  if (!table) {
    ADD_FAILURE() << problem::sentence(table.error());
    return all;
  }
  for (const files::CsvRow& row : table->rows) {
    all.emplace_back();
    for (std::size_t c = 0; c < table->columns.size() && c < row.cells.size(); ++c)
      all.back()[table->columns[c]] = row.cells[c];
  }
  return all;
}

double number(const files::Value& value) { return units::read_number(value.text).value_or(0.0 / 0.0); }

static std::string text(const files::Value& object, const char* key) {
  const files::Value* found = object.find(key);
  return found ? found->text : "";
}

std::map<std::string, double> Taken::measures(const std::string& element) const {
  std::map<std::string, double> all;
  const files::Value* elements = json.find("elements");
  for (const files::Value& one : elements ? elements->children : std::vector<files::Value>{}) {
    if (text(one, "id") != element) continue;
    const files::Value* values = one.find("measures");
    for (std::size_t i = 0; values && i < values->keys.size(); ++i)
      all[values->keys[i].name] = number(values->children[i]);
  }
  return all;
}

std::vector<std::string> Taken::elements(const std::string& kind) const {
  std::vector<std::string> ids;
  if (const files::Value* all = json.find("elements"))
    for (const files::Value& one : all->children)
      if (kind.empty() || text(one, "kind") == kind) ids.push_back(text(one, "id"));
  return ids;
}

std::vector<const files::Value*> Taken::problems(const std::string& element) const {
  std::vector<const files::Value*> found;
  if (const files::Value* all = json.find("problems"))
    for (const files::Value& one : all->children)
      if (text(one, "element") == element) found.push_back(&one);
  return found;
}

double Taken::sum(const std::string& kind, const std::string& measure) const {
  double total = 0;
  for (const std::string& id : elements(kind)) {
    const auto all = measures(id);
    const auto found = all.find(measure);
    if (found != all.end()) total += found->second;
  }
  return total;
}

Taken take_job(const std::string& job) {
  const Said taken = run({"takeoff", job, "--as", "json"});
  EXPECT_EQ(taken.code, 0) << taken.err;
  auto json = files::parse_json(taken.out, "takeoff.json");
  EXPECT_TRUE(json.has_value()) << (json ? "" : problem::sentence(json.error()));
  return {json ? std::move(*json) : files::Value{}, {}};
}

Taken take(const std::string& file, const std::vector<std::string>& layers) {
  const Folder folder;
  std::vector<std::string> words{"import", file};
  for (const std::string& layer : layers) words.insert(words.end(), {"--layer", layer});
  words.insert(words.end(), {"--output", folder.file("job.json")});
  const Said imported = run(words);
  EXPECT_EQ(imported.code, 0) << file << ": " << imported.err;
  Taken taken = take_job(folder.file("job.json"));
  taken.import_said = imported.err;
  return taken;
}

}  // namespace program
