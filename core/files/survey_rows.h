// The rows of a file of survey points, still in the file's coordinates.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "files/csv.h"

namespace files {

// One point as the file has it.
struct SurveyShot {
  int line = 0;
  std::string point;
  double north = 0;  // metres
  double east = 0;
  std::optional<double> height;
  std::string description;
};

struct SurveyRows {
  std::vector<SurveyShot> shots;
  std::vector<std::string> left_out;  // columns of the head line that mean nothing here
};

// `unit` is metres of one unit of the file. Refused with line and reason: see import_survey.
problem::Result<SurveyRows> read_survey_rows(std::string_view text, const std::string& file, double unit);

std::string small_letters(std::string_view text);  // A to Z only
std::string_view trimmed(std::string_view text);   // without spaces and tabs at its ends

}  // namespace files
