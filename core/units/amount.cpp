#include "units/amount.h"

#include <cstdlib>

namespace units {

static std::string powered(const char* symbol, int power) {
  return power == 1 ? symbol : symbol + std::to_string(power);
}

std::string name(Unit unit) {
  if (unit == piece) return "piece";
  const struct {
    const char* symbol;
    int power;
  } parts[] = {{"N", unit.newton}, {"kg", unit.kilogram}, {"m", unit.metre}, {"h", unit.hour}};
  std::string above;
  std::string below;
  for (const auto& part : parts) {
    if (part.power > 0) above += (above.empty() ? "" : "*") + powered(part.symbol, part.power);
    if (part.power < 0) below += "/" + powered(part.symbol, -part.power);
  }
  return (above.empty() ? "1" : above) + below;
}

}  // namespace units
