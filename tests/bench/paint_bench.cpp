// How long one frame of the plan takes, without a display: a plaza of half a million units at every way it is painted,
// and the demo job whole and near. A frame has 16 ms.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <cmath>
#include <numbers>

#include "files/files.h"
#include "geometry/validity.h"
#include "sheets/plan_figure.h"
#include "ui/look/theme.h"
#include "ui/paint/figure_painter.h"

namespace {

constexpr double inch = 8128;
constexpr double unit_short = 4 * 0.0254;  // metres

// Units of 4 x 8 in, each row shifted by half, at 45 degrees, on a round plaza of 6,000 corners.
sheets::Units plaza(double units) {
  const double radius = std::sqrt(units * 32 * inch * inch / std::numbers::pi);
  geometry::Ring ring;
  for (int i = 0; i < 6000; ++i) {
    const double angle = 2 * std::numbers::pi * i / 6000;
    const auto step = [&](double share) { return units::Length::of_steps(std::llround(radius * share)); };
    ring.push_back({{step(std::cos(angle)), step(std::sin(angle))}, 0, {1, i}});
  }
  takeoff::paving::Lattice lattice;
  lattice.cosine = lattice.sine = std::sqrt(0.5);
  lattice.along = 8 * inch;
  lattice.across = {4 * inch, 4 * inch};
  lattice.joint = inch / 8;
  takeoff::paving::Kind kind;
  kind.low = {inch / 16, inch / 16};
  kind.width = 8 * inch - inch / 8;
  kind.height = 4 * inch - inch / 8;
  lattice.kinds = {kind};
  const geometry::Region region = geometry::shape({ring})->region;
  const auto layout = takeoff::paving::lay(region, lattice, {1.0 / 3, 2 * inch});
  return {std::make_shared<const takeoff::paving::Layout>(layout), sheets::contours(region), sheets::Material::paving,
          "A1"};
}

const ui::FigurePainter& half_a_million() {
  static const ui::FigurePainter made = [] {
    sheets::Figure figure;
    figure.parts.emplace_back(plaza(500000));
    return ui::FigurePainter(std::make_shared<const sheets::Figure>(std::move(figure)));
  }();
  return made;
}

const ui::FigurePainter& demo() {
  static const ui::FigurePainter made = [] {
    const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/pool-terrace-a.json";
    const auto job = files::read_job(files::read_file(path).value(), path);
    const auto results = results::compute(std::make_shared<const plan::Job>(job.value()));
    return ui::FigurePainter(std::make_shared<const sheets::Figure>(sheets::plan_figure(results, {})));
  }();
  return made;
}

void frame(benchmark::State& state, const ui::FigurePainter& figure, const ui::Sight& sight) {
  QImage image(952, 688, QImage::Format_ARGB32_Premultiplied);
  const QRectF clip(image.rect());
  for (auto _ : state) {
    image.fill(ui::theme().paper);
    QPainter painter(&image);
    figure.paint(painter, sight, clip);
    figure.paint_marks(painter, sight, clip);
  }
}

// Argument: tenths of a px that the short side of a unit is long.
void plaza_frame(benchmark::State& state) {
  const double scale = static_cast<double>(state.range(0)) / 10 / unit_short;
  frame(state, half_a_million(), {scale, {476, 344}});
}
// The same with the plaza's edge in the middle, where units are cut.
void plaza_edge_frame(benchmark::State& state) {
  const double scale = static_cast<double>(state.range(0)) / 10 / unit_short;
  const double radius = std::sqrt(500000 * 32 * inch * inch / std::numbers::pi) / 320000;
  frame(state, half_a_million(),
        {scale, {476 - radius * std::sqrt(0.5) * scale, 344 + radius * std::sqrt(0.5) * scale}});
}
// Argument: px a metre.
void demo_frame(benchmark::State& state) {
  const double scale = static_cast<double>(state.range(0));
  const sheets::Figure& figure = demo().figure();
  const geometry::Vec middle = 0.5 * (figure.low + figure.high);
  frame(state, demo(), {scale, {476 - middle.x * scale, 344 + middle.y * scale}});
}

BENCHMARK(plaza_frame)->Arg(5)->Arg(15)->Arg(30)->Arg(60)->Arg(90)->Arg(150)->Arg(400)->Unit(benchmark::kMillisecond);
BENCHMARK(plaza_edge_frame)->Arg(30)->Arg(60)->Arg(90)->Arg(150)->Unit(benchmark::kMillisecond);
BENCHMARK(demo_frame)->Arg(20)->Arg(60)->Arg(200)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int count, char** words) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(count, words);
  if (const QString fault = ui::prepare(application); !fault.isEmpty()) return 1;
  benchmark::Initialize(&count, words);
  benchmark::RunSpecifiedBenchmarks();
}
