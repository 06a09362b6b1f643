// `groundcourse print`: a sheet as a PDF, the plan as a picture; without a display.
#pragma once

#include <string>
#include <vector>

#include "commands.h"

namespace app {

struct PrintWords {
  std::string sheet;
  std::string job;
  std::string output;
  std::string language = "en";
  std::string detail = "stages";  // of the quote's price: total, stages, lines
  std::string paper;              // a4, letter; empty: as the job's units have it
};

std::vector<std::string> sheet_words();
std::string sheets_told();  // a line each, for --help

// The plan as SVG or PNG, in the colours of the materials.
int draw_picture(int count, char** argument_words, const DrawWords& words);

// Makes its own application: `count` and `words` as main has them. 0 done, 1 a fault (nothing written).
int print(int count, char** argument_words, const PrintWords& words);

}  // namespace app
