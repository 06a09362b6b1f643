#include "sheets/paper_scale.h"

#include <array>

namespace sheets {

namespace {

constexpr std::array us{8, 12, 16, 24, 32, 48, 64, 96, 120, 192, 240, 360, 480, 600, 720, 1200, 2400, 4800};
constexpr std::array metric{5, 10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 500, 1000, 1250, 2000, 2500, 5000};

template <class Scales>
int least_over(const Scales& scales, double least) {
  const auto found = std::ranges::find_if(scales, [least](int scale) { return scale >= least * (1 - 1e-9); });
  return found == scales.end() ? static_cast<int>(std::ceil(least / 1000)) * 1000 : *found;
}

}  // namespace

PaperScale fitting(double wide, double high, double wide_mm, double high_mm, units::System system) {
  const double least = std::max(wide / wide_mm, high / high_mm) * 1000;
  return {system == units::System::us ? least_over(us, least) : least_over(metric, least)};
}

}  // namespace sheets
