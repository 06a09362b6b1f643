// Runs the program with words, as a person at a terminal would.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "files/json_read.h"

namespace program {

struct Said {
  int code = -1;
  std::string out;
  std::string err;
};

Said run(const std::vector<std::string>& words);

// A folder of its own for one test, gone afterwards.
class Folder {
 public:
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  std::string file(const std::string& name) const { return (path_ / name).string(); }
  bool holds(const std::string& name) const { return std::filesystem::exists(path_ / name); }

 private:
  std::filesystem::path path_;
};

std::string data(const std::string& name);  // tests/data
std::string demo(const std::string& name);  // demo-jobs
std::string text_of(const std::string& path);
void put_text(const std::string& path, const std::string& text);

// Rows of a CSV file with a head line, by column name. Cells may be quoted.
std::vector<std::map<std::string, std::string>> rows(const std::string& path);

// The takeoff of an imported file as JSON: import with layers NAME=KIND, then takeoff. Fails the test where one of them
// does.
struct Taken {
  files::Value json;
  std::string import_said;
  std::map<std::string, double> measures(const std::string& element) const;
  std::vector<std::string> elements(const std::string& kind = {}) const;
  std::vector<const files::Value*> problems(const std::string& element) const;
  double sum(const std::string& kind, const std::string& measure) const;
};
Taken take(const std::string& file, const std::vector<std::string>& layers);
Taken take_job(const std::string& job);

double number(const files::Value& value);

}  // namespace program
