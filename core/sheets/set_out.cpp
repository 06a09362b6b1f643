#include "sheets/set_out.h"

#include <algorithm>
#include <array>

#include "units/number.h"

namespace sheets {

namespace {

std::string at(geometry::Point point) {
  return "at " + units::show_number(point.x.metres().si(), 3) + ", " + units::show_number(point.y.metres().si(), 3) +
         " m from the job's origin";
}

}  // namespace

takeoff::setting_out::SettingOut set_out(const results::Results& results) {
  const plan::Job& job = *results.job;
  return takeoff::setting_out::setting_out(job, results.site, takeoff::ground::bodies(job, results.site),
                                           takeoff::levels::terrain(job, results.site));
}

std::optional<std::string> working_of_set_out(const Printed& printed, const std::string& list,
                                              const std::string& number) {
  static constexpr std::array lists{"mark", "diagonal", "offset", "stake"};
  if (std::find(lists.begin(), lists.end(), list) == lists.end()) return std::nullopt;
  const auto value = units::read_number(number);
  if (!value || *value < 0) return std::nullopt;
  const auto wanted = static_cast<std::size_t>(*value);
  const takeoff::setting_out::SettingOut all = set_out(*printed.results);
  if (list == "mark" && wanted < all.marks.size()) {
    const auto& mark = all.marks[wanted];
    return mark.what + " of " + mark.of + ", " + at(mark.at) + ", against base line " + all.base_line;
  }
  if (list == "diagonal" && wanted < all.diagonals.size())
    return all.diagonals[wanted].what + " of " + all.diagonals[wanted].of;
  if (list == "offset" && wanted < all.offsets.size()) {
    const auto& offset = all.offsets[wanted];
    return "edge " + std::to_string(offset.edge) + " of " + offset.of + ", chord " + at(offset.from);
  }
  if (list == "stake" && wanted < all.stakes.size()) {
    const auto& stake = all.stakes[wanted];
    return stake.what + " of " + stake.of + ", " + at(stake.at);
  }
  return std::nullopt;
}

}  // namespace sheets
