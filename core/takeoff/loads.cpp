#include "takeoff/loads.h"

#include "problem/ensure.h"
#include "units/quantity.h"

namespace takeoff {

problem::Result<Working> loads(Working loose, Working weight, const catalogue::Item& truck) {
  problem::ensure(loose.amount().unit == units::cubic_metre, "loose volume is in cubic metres");
  problem::ensure(weight.amount().unit == units::kilogram, "weight is in kilograms");
  std::vector<Working> ways;
  if (const auto yards = truck.number("volume_limit_cu_yd"))
    ways.push_back(
        Working::up(Working::quotient(std::move(loose), term("body", *yards * units::cubic_metres_per_cubic_yard,
                                                             units::cubic_metre, truck.id + "/volume_limit_cu_yd"))));
  if (const auto tons = truck.number("weight_limit_ton"))
    ways.push_back(
        Working::up(Working::quotient(std::move(weight), term("payload", *tons * units::kilograms_per_short_ton,
                                                              units::kilogram, truck.id + "/weight_limit_ton"))));
  if (ways.empty())
    return problem::fault("truck-limits", "'" + truck.id + "' names neither a volume nor a weight that it carries",
                          "give volume_limit_cu_yd or weight_limit_ton in the catalogue");
  if (ways.size() == 1) return ways.front();
  return Working::greatest(std::move(ways));
}

}  // namespace takeoff
