#include "ui/print/scales.h"

#include <array>
#include <cmath>

namespace ui {

namespace {

constexpr double metres_per_foot = 0.3048;

struct Named {
  int scale;
  const char* words;
};
// Inches to the foot, then feet to the inch.
constexpr std::array us_scales{
    Named{1, "1 : 1"},        Named{2, "6″ = 1′"},       Named{4, "3″ = 1′"},      Named{8, "1 1/2″ = 1′"},
    Named{12, "1″ = 1′"},     Named{16, "3/4″ = 1′"},    Named{24, "1/2″ = 1′"},   Named{32, "3/8″ = 1′"},
    Named{48, "1/4″ = 1′"},   Named{64, "3/16″ = 1′"},   Named{96, "1/8″ = 1′"},   Named{120, "1″ = 10′"},
    Named{192, "1/16″ = 1′"}, Named{240, "1″ = 20′"},    Named{360, "1″ = 30′"},   Named{480, "1″ = 40′"},
    Named{600, "1″ = 50′"},   Named{720, "1″ = 60′"},    Named{1200, "1″ = 100′"}, Named{2400, "1″ = 200′"},
    Named{4800, "1″ = 400′"}, Named{12000, "1″ = 1000′"}};
constexpr std::array metric_scales{1,   2,   5,   10,  20,   25,   50,   75,   100,  125,
                                   150, 200, 250, 500, 1000, 1250, 2000, 2500, 5000, 10000};

}  // namespace

int fitting_scale(double metres_on_paper, units::System units) {
  const double least = 1 / metres_on_paper * (1 - 1e-9);
  if (units == units::System::us) {
    for (const Named& named : us_scales)
      if (named.scale >= least) return named.scale;
  } else {
    for (const int scale : metric_scales)
      if (scale >= least) return scale;
  }
  return static_cast<int>(std::ceil(least / 1000)) * 1000;
}

QString scale_words(int scale, units::System units) {
  const QString plain = QStringLiteral("1 : %1").arg(scale);
  if (units == units::System::metric) return plain;
  for (const Named& named : us_scales)
    if (named.scale == scale && scale > 1) return plain + QStringLiteral(" (%1)").arg(QString::fromUtf8(named.words));
  return plain;
}

ScaleBar scale_bar(int scale, units::System units) {
  const double unit = units == units::System::us ? metres_per_foot : 1;
  const double longest = 0.07 * scale / unit;  // in ft or m, 70 mm on paper
  double length = std::pow(10, std::floor(std::log10(longest)));
  for (const double step : {5.0, 4.0, 2.0})
    if (length * step <= longest) {
      length *= step;
      break;
    }
  ScaleBar bar;
  bar.metres = length * unit;
  const bool inches = units == units::System::us && length < 1;
  const bool small = units == units::System::metric && length < 1;
  if (inches) {
    const double whole = std::max(1.0, std::floor(longest * 12));
    bar.metres = whole * metres_per_foot / 12;
    bar.words = QStringLiteral("%1 in").arg(whole);
  } else if (small) {
    bar.words = QStringLiteral("%1 mm").arg(length * 1000);
  } else {
    bar.words = QStringLiteral("%1 %2").arg(length).arg(units == units::System::us ? "ft" : "m");
  }
  return bar;
}

}  // namespace ui
