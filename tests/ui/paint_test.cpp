// What is painted is what the figure says: grounds, arcs, hatches that keep their size, units, marks that keep apart.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <QImage>
#include <array>
#include <cmath>
#include <numbers>

#include "geometry/validity.h"
#include "sheets/parts.h"
#include "ui/look/theme.h"
#include "ui/paint/figure_painter.h"
#include "ui/paint/figure_paths.h"
#include "ui/paint/hatches.h"
#include "ui/paint/lines.h"
#include "ui/paint/marks.h"
#include "ui/paint/units_painter.h"

namespace {

using sheets::Area;
using sheets::Figure;
using sheets::Line;
using sheets::Mark;
using sheets::Material;
using sheets::Sign;

constexpr int side = 400;

template <class... Parts>
ui::FigurePainter painter_of(Parts... parts) {
  Figure figure;
  (figure.parts.emplace_back(std::move(parts)), ...);
  return ui::FigurePainter(std::make_shared<const Figure>(std::move(figure)));
}

QImage painted(const ui::FigurePainter& figure, const ui::Sight& sight, QRectF clip = {0, 0, side, side}) {
  QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
  image.fill(ui::theme().paper);
  QPainter painter(&image);
  figure.paint(painter, sight, clip);
  return image;
}

int count(const QImage& image, const QColor& colour) {
  int found = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) found += image.pixelColor(x, y) == colour;
  }
  return found;
}

Area area(sheets::Contour contour, Material material, Line line = Line::none) {
  Area made;
  made.contours.push_back(std::move(contour));
  made.material = material;
  made.line = line;
  return made;
}

// Two half circles of radius 1 m about (2, 2), 100 px a metre: pi x 100^2 px, less the ring of mixed px at its edge.
TEST(Paint, arcsAreRound) {
  sheets::Contour circle{{{{3, 2}, 1}, {{1, 2}, 1}}, true};
  const QImage image = painted(painter_of(area(circle, Material::kerb)), {100, {0, side}});
  const double whole = std::numbers::pi * 100 * 100, edge = 2 * std::numbers::pi * 100;
  const int inside = count(image, ui::ground_of(Material::kerb, 0));
  EXPECT_LE(inside, whole);
  EXPECT_GE(inside, whole - 2 * edge);
}

// bulge tan(sweep / 4): a quarter to the left from (1, 0) about the origin ends in (0, 1) and passes (0.7071, 0.7071).
TEST(Paint, anArcTurnsToTheSideThatItsBulgeSays) {
  const sheets::Contour quarter{{{{1, 0}, std::tan(std::numbers::pi / 8)}, {{0, 1}, 0}}, false};
  const QPointF middle = ui::path_in_metres(quarter).pointAtPercent(0.5);
  EXPECT_NEAR(middle.x(), std::sqrt(0.5), 1e-3);
  EXPECT_NEAR(middle.y(), std::sqrt(0.5), 1e-3);
}

TEST(Paint, aHoleStaysOpen) {
  Area ring = area(sheets::rectangle({0, 0}, {4, 4}), Material::kerb);
  ring.contours.push_back(sheets::rectangle({1, 1}, {3, 3}));
  const QImage image = painted(painter_of(ring), {100, {0, side}});
  EXPECT_EQ(count(image, ui::theme().paper), 200 * 200);
  EXPECT_EQ(count(image, ui::ground_of(Material::kerb, 0)), 400 * 400 - 200 * 200);
}

TEST(Paint, whatComesLaterIsALineAndHasNoGround) {
  Area later = area(sheets::rectangle({1, 1}, {3, 3}), Material::dense_base);
  later.later = true;
  const QImage image = painted(painter_of(later), {100, {0, side}});
  EXPECT_EQ(image.pixelColor(200, 200), ui::theme().paper);
  EXPECT_EQ(count(image, ui::ground_of(Material::dense_base, 0)), 0);
  EXPECT_LT(count(image, ui::theme().paper), side * side);
}

TEST(Paint, hatchesKeepTheirSizeAndRepeatWithoutASeam) {
  const Area ground = area(sheets::rectangle({-100, -100}, {100, 100}), Material::dense_base);
  const QImage near = painted(painter_of(ground), {100, {0, 0}});
  const QImage far = painted(painter_of(ground), {20, {0, 0}});
  EXPECT_EQ(near, far);
  // The tile of stone is 80 px.
  EXPECT_EQ(near.copy(0, 0, 160, 160), near.copy(80, 160, 160, 160));
  EXPECT_NE(near.copy(0, 0, 160, 160), near.copy(40, 0, 160, 160));
  // It moves with what it fills.
  const QImage moved = painted(painter_of(ground), {100, {13, 7}});
  EXPECT_EQ(near.copy(0, 0, 200, 200), moved.copy(13, 7, 200, 200));
}

TEST(Paint, nothingIsPaintedOutsideTheClip) {
  const Area ground = area(sheets::rectangle({-100, -100}, {100, 100}), Material::kerb, Line::element);
  const QImage image = painted(painter_of(ground), {100, {0, 0}}, {50, 60, 100, 120});
  EXPECT_EQ(count(image, ui::ground_of(Material::kerb, 0)), 100 * 120);
  EXPECT_EQ(count(image, ui::theme().paper), side * side - 100 * 120);
}

// The lines that say something are told apart without colour: no two have the same weight and dash.
TEST(Paint, everyLineHasAWeightOrDashOfItsOwn) {
  const Line lines[] = {Line::house, Line::house_joint, Line::coping_joint, Line::geotextile,
                        Line::pipe,  Line::cut_edge,    Line::later,        Line::element};
  for (const Line a : lines) {
    for (const Line b : lines) {
      if (a == b) continue;
      const QPen first = ui::pen_of(a), second = ui::pen_of(b);
      EXPECT_FALSE(first.widthF() == second.widthF() && first.dashPattern() == second.dashPattern())
          << static_cast<int>(a) << " and " << static_cast<int>(b);
    }
  }
}

// ---- units

constexpr double inch = 8128;

// Running units of 12 x 6 in, every row shifted by half, turned about a point that is not the origin.
takeoff::paving::Lattice running(double turn) {
  takeoff::paving::Lattice lattice;
  lattice.start = {units::Length::inches(7), units::Length::inches(-5)};
  lattice.cosine = std::cos(turn);
  lattice.sine = std::sin(turn);
  lattice.along = 12 * inch;
  lattice.across = {6 * inch, 6 * inch};
  lattice.joint = inch / 8;
  takeoff::paving::Kind kind;
  kind.low = {inch / 16, inch / 16};
  kind.width = 12 * inch - inch / 8;
  kind.height = 6 * inch - inch / 8;
  lattice.kinds = {kind};
  return lattice;
}

sheets::Units deck(double turn) {
  const auto ring = geometry::Ring{{{units::Length::feet(0), units::Length::feet(0)}, 0, {}},
                                   {{units::Length::feet(20), units::Length::feet(0)}, 0, {}},
                                   {{units::Length::feet(20), units::Length::feet(12)}, 0, {}},
                                   {{units::Length::feet(0), units::Length::feet(12)}, 0, {}}};
  const geometry::Region region = geometry::shape({ring})->region;
  const auto layout = takeoff::paving::lay(region, running(turn), {1.0 / 3, 2 * inch});
  return {std::make_shared<const takeoff::paving::Layout>(layout), sheets::contours(region), Material::paving, "A1"};
}

// Slow and obvious: does any whole unit hold the point, any cut piece, or none?
enum class Holds { whole, cut, sliver, joint };
struct Held {
  Holds what = Holds::joint;
  int a = 0;  // which one
  int b = 0;
  bool operator==(const Held&) const = default;
};
Held held(const takeoff::paving::Layout& layout, geometry::Vec metres) {
  const takeoff::paving::Lattice& l = layout.lattice;
  const double x = metres.x * 320000 - static_cast<double>(l.start.x.steps());
  const double y = metres.y * 320000 - static_cast<double>(l.start.y.steps());
  const QPointF q(l.cosine * x + l.sine * y, -l.sine * x + l.cosine * y);
  const auto corner = [&](int kind, int a, int b) {
    const auto& k = l.kinds[static_cast<std::size_t>(kind)];
    return QPointF(k.low.x + a * l.along + b * l.across.x, k.low.y + b * l.across.y);
  };
  for (const auto& run : layout.runs) {
    const auto& k = l.kinds[static_cast<std::size_t>(run.kind)];
    for (int a = run.first; a <= run.last; ++a)
      if (QRectF(corner(run.kind, a, run.b), QSizeF(k.width, k.height)).contains(q)) return {Holds::whole, a, run.b};
  }
  for (const auto& piece : layout.pieces) {
    QPolygonF shape;
    for (const auto& s : piece.sides) shape << corner(piece.kind, piece.a, piece.b) + QPointF(s.from.x, s.from.y);
    if (shape.containsPoint(q, Qt::OddEvenFill)) return {piece.sliver ? Holds::sliver : Holds::cut, piece.a, piece.b};
  }
  return {};
}

// At 160 px a metre a unit is 48 x 24 px. A px counts where all places within 2 px of it are of one unit.
TEST(Paint, unitsLieWhereTheyAreLaid) {
  for (const double turn : {0.0, 0.3, std::numbers::pi / 4, 2.0}) {
    const sheets::Units units = deck(turn);
    const ui::Sight sight{160, {-90, 420}};
    const QImage image = painted(painter_of(units), sight);
    const ui::MaterialLook& look = ui::look(Material::paving);
    int seen = 0;
    for (int y = 5; y < side; y += 9) {
      for (int x = 5; x < side; x += 7) {
        const Held here = held(*units.layout, sight.to_metres({x + 0.5, y + 0.5}));
        bool clear = here.what != Holds::joint;
        for (const QPointF& by : {QPointF(2, 0), QPointF(-2, 0), QPointF(0, 2), QPointF(0, -2)})
          clear = clear && held(*units.layout, sight.to_metres(QPointF(x + 0.5, y + 0.5) + by)) == here;
        if (!clear) continue;
        ++seen;
        const QColor colour = image.pixelColor(x, y);
        if (here.what == Holds::cut) {
          EXPECT_EQ(colour, look.cut) << x << ", " << y;
        }
        if (here.what == Holds::sliver) {
          EXPECT_EQ(colour, look.line) << x << ", " << y;
        }
        if (here.what != Holds::whole) continue;
        EXPECT_GE(colour.red(), look.low.red());
        EXPECT_LE(colour.red(), look.high.red());
      }
    }
    EXPECT_GT(seen, 500);
  }
}

double mean_light(const QImage& image, const QRect& part) {
  double sum = 0;
  for (int y = part.top(); y <= part.bottom(); ++y) {
    for (int x = part.left(); x <= part.right(); ++x) sum += image.pixelColor(x, y).lightnessF();
  }
  return sum / (part.width() * part.height());
}

// From afar the same field is painted in other ways; it must not flash as one zooms. 20 ft x 12 ft is 6.1 x 3.66 m.
TEST(Paint, aFieldKeepsItsTonePaintedInAnyWay) {
  const sheets::Units units = deck(0.3);
  const ui::FigurePainter figure = painter_of(units);
  double before = 0;
  for (const double unit_px : {12.0, 7.0, 4.0, 2.0, 1.2}) {
    const double scale = unit_px / 0.15;  // the short side is 5.875 in, 0.149 m
    const QImage image = painted(figure, {scale, {20, 380}});
    const QRect inner(20 + static_cast<int>(0.5 * scale), 380 - static_cast<int>(3 * scale),
                      static_cast<int>(5 * scale), static_cast<int>(2.4 * scale));
    const double now = mean_light(image, inner & image.rect());
    if (before > 0) {
      EXPECT_NEAR(now, before, 0.06) << unit_px;
    }
    before = now;
  }
}

// ---- marks

Mark mark(Sign sign, double x, double y, std::string text) { return {sign, {x, y}, 0, std::move(text), "A1"}; }

std::vector<ui::Placed> placed(const std::vector<Mark>& marks, double scale = 40) {
  std::vector<const Mark*> all;
  for (const Mark& one : marks) all.push_back(&one);
  return ui::place_marks(all, {scale, {0, 1000}}, {0, 0, 1000, 1000});
}

TEST(Paint, twoTagsAtOnePlaceStepAside) {
  const std::vector<Mark> marks{mark(Sign::tag, 5, 5, "A1"), mark(Sign::tag, 5, 5, "A2")};
  const auto found = placed(marks);
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].at, QPointF(200, 800));
  EXPECT_FALSE(found[0].room.intersects(found[1].room));
}

TEST(Paint, levelsThinOutAndComeBackNearer) {
  std::vector<Mark> marks;
  for (int i = 0; i < 10; ++i) marks.push_back(mark(Sign::level, 1 + 0.3 * i, 5, "100.00"));
  const std::size_t far = placed(marks, 40).size();
  EXPECT_GE(far, 1u);
  EXPECT_LT(far, 10u);
  EXPECT_EQ(placed(marks, 180).size(), 10u);  // 0.3 m is 54 px, a level takes less
}

TEST(Paint, aFaultsWordsStandBeforeThoseOfWhatIsToBeDecided) {
  const auto found = placed({mark(Sign::care, 5, 5, "heavy: lift by two"), mark(Sign::problem, 5, 5, "no price")});
  ASSERT_EQ(found.size(), 2u);  // both flags are there, whether their words are or not
  EXPECT_EQ(found[0].mark->sign, Sign::problem);
  EXPECT_FALSE(found[0].chip.isEmpty());
}

// Few tags find room wherever they are put.
RC_GTEST_PROP(Paint, tagsNeverCoverEachOther, ()) {
  const int many = *rc::gen::inRange(1, 20);
  std::vector<Mark> marks;
  for (int i = 0; i < many; ++i)
    marks.push_back(mark(Sign::tag, *rc::gen::inRange(100, 2000) / 100.0, *rc::gen::inRange(100, 2000) / 100.0,
                         "A" + std::to_string(i)));
  const auto found = placed(marks);
  RC_ASSERT(found.size() == marks.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    for (std::size_t j = i + 1; j < found.size(); ++j) RC_ASSERT(!found[i].room.intersects(found[j].room));
  }
}

// Words of flags, names and levels keep clear of each other, however many there are.
RC_GTEST_PROP(Paint, wordsNeverCoverWords, ()) {
  constexpr std::array signs{Sign::care, Sign::problem, Sign::level, Sign::name};
  std::vector<Mark> marks;
  const int many = *rc::gen::inRange(1, 60);
  for (int i = 0; i < many; ++i)
    marks.push_back(mark(signs[static_cast<std::size_t>(*rc::gen::inRange(0, 4))], *rc::gen::inRange(100, 2000) / 100.0,
                         *rc::gen::inRange(100, 2000) / 100.0, "some words"));
  const auto words = [](const ui::Placed& p) {
    return p.mark->sign == Sign::care || p.mark->sign == Sign::problem ? p.chip : p.room;
  };
  const auto found = placed(marks);
  for (std::size_t i = 0; i < found.size(); ++i) {
    for (std::size_t j = i + 1; j < found.size(); ++j) RC_ASSERT(!words(found[i]).intersects(words(found[j])));
  }
}

}  // namespace
