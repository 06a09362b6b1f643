#include <algorithm>
#include <cmath>
#include <filesystem>
#include <unordered_set>

#include "files/files.h"
#include "files/json_read.h"
#include "files/survey_rows.h"
#include "units/number.h"

namespace files {

namespace {

constexpr double reach_m = 5000;  // geometry::reach_of_plan
using Shots = std::vector<SurveyShot>;

std::optional<double> metres_of(std::string_view unit) {
  if (unit == "m") return 1;
  if (unit == "mm") return 0.001;
  if (unit == "ft") return units::metres_per_foot;
  if (unit == "us-ft") return 1200.0 / 3937;  // the US survey foot (Mendenhall order, 1893)
  if (unit == "in") return units::metres_per_inch;
  return std::nullopt;
}

using Places = std::map<std::string, std::string>;  // code or description in small letters -> what the level is

problem::Result<Places> places_of(const std::map<std::string, std::string>& layers) {
  Places made{{"eg", "existing"},       {"fg", "finished"},       {"bm", "bench-mark"},         {"inv", "invert"},
              {"existing", "existing"}, {"finished", "finished"}, {"bench-mark", "bench-mark"}, {"invert", "invert"}};
  for (const auto& [name, kind] : layers) {
    const bool plain = kind == "level";
    if (!plain && (!kind.starts_with("level:") || kind.size() == 6))
      return problem::fault("layer-kind",
                            "survey points called " + in_quotes(name) + " can't become " + in_quotes(kind),
                            "use level, or level:finished, level:bench-mark, level:invert, level:other");
    made[small_letters(name)] = plain ? "existing" : kind.substr(6);
  }
  return made;
}

// The letters that a description begins with: "FG edge" is FG, "BM1" is BM, "bench-mark 2" is bench-mark.
std::string code_of(std::string_view description) {
  std::size_t count = 0;
  const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || c == '-'; };
  const std::string text = small_letters(description);
  while (count < text.size() && letter(text[count])) ++count;
  return text.substr(0, count);
}

std::string what_of(const Places& places, const std::string& description) {
  for (const std::string& key : {small_letters(description), code_of(description), std::string("*")})
    if (const auto found = places.find(key); !key.empty() && found != places.end()) return found->second;
  return "existing";
}

// "FG edge of the deck, area A1" is of A1; "FG in the area of the shed" names none.
std::string area_of(const std::string& description) {
  constexpr std::string_view word = "area ";
  const std::size_t at = small_letters(description).rfind(word);
  if (at == std::string::npos || (at > 0 && description[at - 1] != ' ' && description[at - 1] != ',')) return "";
  const std::string_view name = trimmed(std::string_view(description).substr(at + word.size()));
  return name.find(' ') == std::string_view::npos ? std::string(name) : "";
}

// What is taken off the file's coordinates, metres.
struct Origin {
  double east = 0;
  double north = 0;
};

bool near_own_origin(const Shots& shots) {
  return std::ranges::all_of(
      shots, [](const SurveyShot& shot) { return std::abs(shot.east) <= reach_m && std::abs(shot.north) <= reach_m; });
}

problem::Result<Origin> origin_of(const Shots& shots, const plan::Job* into, const std::string& file,
                                  plan::Datum& datum) {
  if (into != nullptr) {
    datum = into->datum;
    if (datum.what == "wgs84")
      return problem::fault(
          "survey-datum", "the job lies by longitude and latitude, and survey points can't be laid onto that",
          "import them as a job of their own, or the drawing in the survey's coordinates", csv_place(file));
    return Origin{datum.easting_m, datum.northing_m};
  }
  const SurveyShot& first = shots.front();
  if (near_own_origin(shots)) {
    datum.what = "local";
    return Origin{};
  }
  datum = {.what = "plane", .longitude = 0, .latitude = 0, .easting_m = first.east, .northing_m = first.north};
  return Origin{first.east, first.north};
}

units::Length length_of(double metres) { return units::Length::nearest(units::Metres(metres)); }

plan::Level level_of(const SurveyShot& shot, const Origin& origin, const Places& places) {
  plan::Level level;
  level.at = {length_of(shot.east - origin.east), length_of(shot.north - origin.north)};
  if (shot.height) level.height = length_of(*shot.height);
  level.what = what_of(places, shot.description);
  if (level.what == "finished") level.of = area_of(shot.description);
  return level;
}

problem::Result<void> add_levels(const Shots& shots, const Origin& origin, const Places& places,
                                 const std::string& file, plan::Job& job) {
  std::unordered_set<std::string> ids;
  for (const plan::ElementPtr& element : job.elements) ids.insert(element->id);
  for (const SurveyShot& shot : shots) {
    const double out = std::max(std::abs(shot.east - origin.east), std::abs(shot.north - origin.north));
    if (out > reach_m)
      return problem::fault("survey-far",
                            in_quotes(shot.point) + " lies " + units::show_number(out / 1000, 1) +
                                " km from the job's origin, and a job reaches no further than 5 km",
                            "look at --units and at the order of northing and easting, or make it another job",
                            csv_place(file, shot.line));
    if (!ids.insert(shot.point).second)
      return problem::fault("survey-doubled", "the job already has an element " + in_quotes(shot.point),
                            "rename the point, or take the element out of the job", csv_place(file, shot.line));
    job.elements.push_back(std::make_shared<const plan::Element>(
        plan::Element{shot.point, shot.description, level_of(shot, origin, places)}));
  }
  return {};
}

}  // namespace

problem::Result<SurveyImport> import_survey(std::string_view text, const std::string& file, std::string_view units,
                                            const std::map<std::string, std::string>& layers, const plan::Job* into) {
  const auto unit = metres_of(units);
  if (!unit)
    return problem::fault(
        "survey-units",
        units.empty() ? "survey points don't say their unit" : in_quotes(units) + " is no unit of survey points",
        "name it with --units: m, mm, ft, us-ft or in", csv_place(file));
  const auto places = places_of(layers);
  if (!places) return std::unexpected(places.error());
  auto rows = read_survey_rows(text, file, *unit);
  if (!rows) return std::unexpected(rows.error());
  SurveyImport made;
  if (into != nullptr) {
    made.job = *into;
  } else {
    made.job.catalogue = std::make_shared<const catalogue::Catalogue>();
    made.job.heading.name = std::filesystem::path(file).stem().string();
    made.job.heading.units = units == "m" || units == "mm" ? units::System::metric : units::System::us;
  }
  const auto origin = origin_of(rows->shots, into, file, made.job.datum);
  if (!origin) return std::unexpected(origin.error());
  if (auto good = add_levels(rows->shots, *origin, *places, file, made.job); !good)
    return std::unexpected(good.error());
  made.points = rows->shots.size();
  made.left_out = std::move(rows->left_out);
  return made;
}

}  // namespace files
