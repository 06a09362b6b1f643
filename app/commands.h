// Commands without a window. Each reads its files, calls the core once, writes, and gives the program's exit code:
// 0 done, 1 a fault in the input (one sentence on standard error; nothing written), 2 wrong usage.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "plan/job.h"
#include "problem/problem.h"

namespace app {

// Says the fault on standard error as one sentence; gives 1.
int refuse(const problem::Problem& fault);

problem::Result<plan::Job> read_job(const std::string& path);

// To the file, or to standard output where none is named.
int deliver(const std::string& text, const std::string& file);

struct TakeoffWords {
  std::string job;
  std::string form = "text";  // text, csv, json, xlsx
  std::string output;         // needed for xlsx, which is no text
  std::string separator;      // of csv: "," ";" or "tab"; empty: ","
  bool byte_order_mark = false;
};
int takeoff(const TakeoffWords& words);

// The drawing of the job, for other programs.
struct DrawWords {
  std::string job;
  std::string form = "dxf";  // dxf, geojson; svg, png: see draw_picture
  std::string output;
};
int draw(const DrawWords& words);

// Every problem of the job, a line each; 1 if one of them is of severity problem.
int check(const std::string& job);

struct StartWords {
  std::string job;
  std::string element;
  std::string what = "cuts";  // cuts, slivers, site
  std::string output;         // the job with the best start
  int show = 10;
};
int start(const StartWords& words);

// GeoJSON, or survey points where the file's name ends in .csv.
struct ImportWords {
  std::string file;
  std::string units;                // empty: as the file says
  std::vector<std::string> layers;  // NAME=KIND
  std::string into;                 // survey points: the job that they are added to; empty: a new one
  std::string output;
};
int import(const ImportWords& words);

struct SettingOutWords {
  std::string job;
  std::string output;
};
int setting_out(const SettingOutWords& words);  // CSV of what the crew sets out from the base line

int catalogue_list();
int catalogue_import(const std::string& file);
int catalogue_export(const std::string& file);

}  // namespace app
