// Plans underneath: read from files that are whole, broken, huge or made to harm, and painted where they belong.
#include <gtest/gtest.h>

#include <QBuffer>
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QPageSize>
#include <QPdfWriter>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>
#include <numbers>

#include "ui/look/theme.h"
#include "ui/plan/picture_file.h"
#include "ui/plan/site_plan_file.h"
#include "ui/plan/site_plan_layer.h"

using ui::load_site_plan;
using ui::LoadLimits;

namespace {

QByteArray file_of(const QImage& image, const char* format) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  EXPECT_TRUE(image.save(&buffer, format));
  return bytes;
}

QImage white(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(Qt::white);
  return image;
}

// Pages of 400 x 600 points; on each a black square 100 points from the left and 200 from the top, 50 wide.
QByteArray pdf(int pages, QSizeF size = {400, 600}) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setPageSize(QPageSize(size, QPageSize::Point, {}, QPageSize::ExactMatch));
  writer.setPageMargins({});
  writer.setResolution(72);
  QPainter painter(&writer);
  for (int page = 0; page < pages; ++page) {
    if (page > 0) writer.newPage();
    painter.fillRect(QRect(100, 200, 50, 50), Qt::black);
  }
  painter.end();
  return bytes;
}

// Ten forms, each drawing the next 30 times: 30^9 squares.
QByteArray pdf_without_end() {
  QByteArray text =
      "%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
      "2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj\n"
      "3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 600 600]/Contents 4 0 R/Resources<</XObject<</F 10 0 R>>"
      ">>>>endobj\n4 0 obj<</Length 5>>stream\n/F Do\nendstream endobj\n";
  for (int i = 0; i < 10; ++i) {
    const QByteArray drawn = i < 9 ? QByteArray("/F Do ").repeated(30) : QByteArray("0 0 600 600 re f");
    text += QByteArray::number(10 + i) +
            " 0 obj<</Type/XObject/Subtype/Form/BBox[0 0 600 600]/Resources<</XObject<</F " +
            QByteArray::number(11 + i) + " 0 R>>>>/Length " + QByteArray::number(drawn.size()) + ">>stream\n" + drawn +
            "\nendstream endobj\n";
  }
  return text + "trailer<</Root 1 0 R/Size 20>>\n%%EOF\n";
}

std::string code_of(const QByteArray& bytes, const QString& name, const LoadLimits& limits = {}, int page = 1) {
  const auto made = load_site_plan(bytes, name, page, limits);
  if (made) return "none";
  EXPECT_FALSE(made.error().text.empty());
  EXPECT_FALSE(made.error().mend.empty());
  EXPECT_EQ(made.error().place.file, name.toStdString());
  return made.error().code;
}

plan::SitePlan placed(double x, double y, double metres_per_pixel, double degrees) {
  plan::SitePlan plan;
  plan.at = {units::Length::nearest(units::Metres(x)), units::Length::nearest(units::Metres(y))};
  plan.metres_per_pixel = metres_per_pixel;
  plan.turn = units::Angle::degrees(degrees);
  plan.opacity = 1;
  return plan;
}

}  // namespace

TEST(SitePlanFile, PicturesAndTheirCopies) {
  const auto png = load_site_plan(file_of(white(2000, 1001), "png"), "plot.png");
  ASSERT_TRUE(png);
  ASSERT_EQ((*png)->copies.size(), 3U);  // 2000, 1000, 500: no longer over 512
  EXPECT_EQ((*png)->copies[1].size(), QSize(1000, 501));
  EXPECT_EQ((*png)->copies[2].size(), QSize(500, 251));
  const auto jpeg = load_site_plan(file_of(white(300, 200), "jpg"), "named-wrongly.png");  // the bytes decide
  ASSERT_TRUE(jpeg);
  EXPECT_EQ((*jpeg)->size(), QSize(300, 200));
}

// 400 x 600 points at 200 dots an inch: 400 / 72 x 200 = 1111.1, 600 / 72 x 200 = 1666.7 px. The middle of the square
// lies at (125, 225) points: px (347, 625).
TEST(SitePlanFile, PageOfAPdf) {
  const auto made = load_site_plan(pdf(2), "plot.pdf", 2);
  ASSERT_TRUE(made) << problem::sentence(made.error());
  EXPECT_EQ((*made)->pages, 2);
  EXPECT_EQ((*made)->dots_per_inch, 200);
  EXPECT_NEAR((*made)->size().width(), 1111.1, 1);
  EXPECT_NEAR((*made)->size().height(), 1666.7, 1);
  EXPECT_EQ(qGray((*made)->copies[0].pixel(347, 625)), 0);
  EXPECT_EQ(qGray((*made)->copies[0].pixel(347, 625 - 100)), 255);
  EXPECT_EQ(code_of(pdf(2), "plot.pdf", {}, 3), "site-plan-page");
  EXPECT_EQ(code_of(pdf(2), "plot.pdf", {}, 0), "site-plan-page");
}

// A large page is drawn less finely, so that it stays within the pixels allowed: 1 million here, at most 998 px a side;
// 998 x 72 / 600 = 119.76 dots an inch.
TEST(SitePlanFile, LargePageIsDrawnLessFinely) {
  LoadLimits limits;
  limits.pixels = 1'000'000;
  const auto made = load_site_plan(pdf(1), "plot.pdf", 1, limits);
  ASSERT_TRUE(made) << problem::sentence(made.error());
  EXPECT_NEAR((*made)->dots_per_inch, 119.76, 1e-9);
  EXPECT_NEAR((*made)->size().height(), 998, 1);
}

TEST(SitePlanFile, BrokenFilesAreRefused) {
  const QByteArray png = file_of(white(200, 200), "png");
  EXPECT_EQ(code_of(png.left(20), "cut.png"), "site-plan-broken");
  EXPECT_EQ(code_of(png.left(png.size() - 40), "cut.png"), "site-plan-broken");
  EXPECT_EQ(code_of("no picture at all", "text.png"), "site-plan-unknown");
  EXPECT_EQ(code_of("", "empty.pdf"), "site-plan-unknown");
  EXPECT_EQ(code_of("%PDF-1.4 and nothing after it", "cut.pdf"), "site-plan-broken");
  EXPECT_EQ(code_of(pdf(1).left(300), "cut.pdf"), "site-plan-broken");
}

// 12,000 x 12,000 = 144 million pixels, in a file of a few thousand bytes.
TEST(SitePlanFile, HugeFilesAreRefused) {
  QImage huge(12000, 12000, QImage::Format_Mono);
  huge.fill(1);
  const QByteArray bytes = file_of(huge, "png");
  EXPECT_LT(bytes.size(), 1'000'000);
  EXPECT_EQ(code_of(bytes, "huge.png"), "site-plan-big");
  LoadLimits limits;
  limits.bytes = 1000;
  EXPECT_EQ(code_of(QByteArray(1001, 'x'), "long.png", limits), "site-plan-big");

  const QTemporaryDir folder;
  const QString path = folder.filePath("long.png");
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(QByteArray(1001, 'x'));
  file.close();
  EXPECT_EQ(ui::site_plan_bytes(path, limits).error().code, "site-plan-big");
  limits.bytes = 1001;
  EXPECT_EQ(ui::site_plan_bytes(path, limits).value().size(), 1001);
  EXPECT_EQ(ui::site_plan_bytes(folder.filePath("none.png")).error().code, "site-plan-unread");
}

// Whatever the program that decodes does, its file is taken only whole and of its size.
TEST(SitePlanFile, PixelsOfAnotherProgramAreLookedAt) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("pixels");
  QImage clear(3, 2, QImage::Format_ARGB32_Premultiplied);
  clear.fill(qRgba(10, 20, 30, 40));
  ASSERT_TRUE(ui::write_picture_file(path, clear));
  EXPECT_EQ(ui::read_picture_file(path, 6).value(), clear);
  EXPECT_FALSE(ui::read_picture_file(path, 5)) << "3 x 2 are 6";
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  const QByteArray whole = file.readAll();
  file.close();
  EXPECT_EQ(whole.size(), ui::picture_file_head + 4 * 6);
  const auto refused = [&](const QByteArray& bytes) {
    QFile into(path);
    EXPECT_TRUE(into.open(QIODevice::WriteOnly));
    into.write(bytes);
    into.close();
    return !ui::read_picture_file(path, 1000);
  };
  EXPECT_FALSE(refused(whole));
  EXPECT_TRUE(refused(whole.left(whole.size() - 1)));
  EXPECT_TRUE(refused(whole + "x"));
  EXPECT_TRUE(refused("x" + whole.mid(1)));
  EXPECT_TRUE(refused(QByteArray(16, '\0')));
  EXPECT_TRUE(refused({}));
}

// A program that never ends, and one that writes something else, in place of the one that decodes.
TEST(SitePlanFile, ADecoderThatHangsOrLiesIsRefused) {
  const QTemporaryDir folder;
  LoadLimits limits;
  limits.programs_in = {folder.path()};
  limits.wait_seconds = 1;
  const auto decoder = [&](const QByteArray& script) {
    QFile file(folder.filePath("groundcourse-picture"));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("#!/bin/sh\n" + script);
    file.close();
    file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    return code_of(file_of(white(20, 20), "png"), "plot.png", limits);
  };
  EXPECT_EQ(decoder("exec sleep 100\n"), "site-plan-slow");
  EXPECT_EQ(decoder("echo no pixels > \"$2\"\n"), "site-plan-broken");
  EXPECT_EQ(decoder("exit 1\n"), "site-plan-broken");
  EXPECT_EQ(decoder("kill -SEGV $$\n"), "site-plan-broken");
}

// It would draw for ages: the limit of 1 s of the processor, or of 1 s on the clock, ends it.
TEST(SitePlanFile, PdfWithoutEndIsStopped) {
  QElapsedTimer timer;
  timer.start();
  LoadLimits limits;
  limits.cpu_seconds = 1;
  EXPECT_EQ(code_of(pdf_without_end(), "bomb.pdf", limits), "site-plan-slow");
  EXPECT_LT(timer.elapsed(), limits.wait_seconds * 1000);
  limits.cpu_seconds = 1000;
  limits.wait_seconds = 1;
  EXPECT_EQ(code_of(pdf_without_end(), "bomb.pdf", limits), "site-plan-slow");
}

// A page of 200 x 200 in is drawn with 9998 x 9998 pixels, which take 300 million bytes: with 150 million it ends.
TEST(SitePlanFile, MemoryIsLimited) {
  LoadLimits limits;
  limits.memory_bytes = 150'000'000;
  EXPECT_EQ(code_of(pdf(1, {14400, 14400}), "plot.pdf", limits), "site-plan-big");
}

TEST(SitePlanFile, MissingProgramIsSaid) {
  LoadLimits limits;
  limits.programs_in = {"/nowhere"};
  EXPECT_EQ(code_of(pdf(1), "plot.pdf", limits), "site-plan-no-poppler");
  EXPECT_EQ(code_of(file_of(white(20, 20), "png"), "plot.png", limits), "site-plan-no-reader");
}

TEST(SitePlanFile, LoadsInAThreadOfItsOwn) {
  QObject owner;
  bool told = false;
  QThread* told_on = nullptr;
  ui::load_site_plan_later(file_of(white(600, 400), "png"), "plot.png", 1, &owner, [&](auto result) {
    told = result.has_value() && (*result)->size() == QSize(600, 400);
    told_on = QThread::currentThread();
  });
  EXPECT_FALSE(told);  // the call came back first: only the event loop tells
  EXPECT_TRUE(QTest::qWaitFor([&] { return told; }, 10000));
  EXPECT_EQ(told_on, QCoreApplication::instance()->thread());

  // An owner that is gone is not told; one asked after it is.
  auto gone = std::make_unique<QObject>();
  bool wrongly = false, after = false;
  ui::load_site_plan_later(file_of(white(6, 4), "png"), "plot.png", 1, gone.get(), [&](auto) { wrongly = true; });
  gone.reset();
  ui::load_site_plan_later(file_of(white(600, 400), "png"), "plot.png", 1, &owner, [&](auto) { after = true; });
  EXPECT_TRUE(QTest::qWaitFor([&] { return after; }, 10000));
  QTest::qWait(50);
  EXPECT_FALSE(wrongly);
}

// --- where it lies

// 200 x 100 px at 0.05 m: 10 x 5 m with its lower left corner at (10, 20).
TEST(SitePlanLayer, PixelsLieAtTheirPlaces) {
  const auto picture = load_site_plan(file_of(white(200, 100), "png"), "plot.png").value();
  const QTransform straight = ui::to_metres(placed(10, 20, 0.05, 0), *picture);
  EXPECT_EQ(straight.map(QPointF(0, 100)), QPointF(10, 20));
  EXPECT_EQ(straight.map(QPointF(200, 0)), QPointF(20, 25));
  // A quarter turn to the left: what lay 10 m east lies 10 m north, what lay 5 m north lies 5 m west.
  const QTransform quarter = ui::to_metres(placed(10, 20, 0.05, 90), *picture);
  EXPECT_EQ(quarter.map(QPointF(200, 100)), QPointF(10, 30));
  EXPECT_EQ(quarter.map(QPointF(0, 0)), QPointF(5, 20));
  // Turned by 30 degrees: pixel (120, 40) lies 6 m along and 3 m up: (10 + 6 cos 30 - 3 sin 30, 20 + 6 sin 30 + 3 cos
  // 30).
  const QPointF turned = ui::to_metres(placed(10, 20, 0.05, 30), *picture).map(QPointF(120, 40));
  EXPECT_NEAR(turned.x(), 10 + 6 * std::sqrt(3.0) / 2 - 1.5, 1e-12);
  EXPECT_NEAR(turned.y(), 20 + 3 + 3 * std::sqrt(3.0) / 2, 1e-12);
  // 40 px a metre, origin of the plan at px (100, 900): (20, 25) m lies at (100 + 800, 900 - 1000).
  EXPECT_EQ(ui::to_window(placed(10, 20, 0.05, 0), *picture, {40, {100, 900}}).map(QPointF(200, 0)),
            QPointF(900, -100));
  EXPECT_EQ(ui::rect_of(placed(10, 20, 0.05, 0), *picture, {40, {100, 900}}), QRectF(500, -100, 400, 200));
}

// A red block of 40 x 40 px in a picture of 1000 x 800 at (600, 200); its middle, pixel (620, 220), lies at 0.02 m a
// pixel 12.4 m along and 11.6 m up. Turned by 30 degrees and seen at 25 px a metre (2 pixels a px) it is red there, and
// 60 px beside it nothing is red; what is outside the clip stays as it was.
TEST(SitePlanLayer, PaintsTurnedAndScaled) {
  QImage image = white(1000, 800);
  QPainter(&image).fillRect(QRect(600, 200, 40, 40), Qt::red);
  const auto picture = load_site_plan(file_of(image, "png"), "plot.png").value();
  const ui::Sight sight{25, {300, 500}};
  const double c = std::cos(std::numbers::pi / 6), s = 0.5;
  const QPointF at = sight.to_px({12.4 * c - 11.6 * s, 12.4 * s + 11.6 * c});
  QImage paper(900, 700, QImage::Format_RGB32);
  paper.fill(Qt::blue);
  QPainter painter(&paper);
  ui::paint_site_plan(painter, placed(0, 0, 0.02, 30), *picture, sight, QRectF(0, 0, 900, 700));
  painter.end();
  EXPECT_EQ(paper.pixelColor(at.toPoint()), QColor(Qt::red));
  EXPECT_EQ(paper.pixelColor(at.toPoint() + QPoint(60, 0)), QColor(Qt::white));
  EXPECT_EQ(paper.pixelColor(sight.to_px({-1, -1}).toPoint()), QColor(Qt::blue));  // outside the picture
}

// Four quarters of a large picture, seen from so far that a sixteenth copy is painted: each lies in its quarter.
TEST(SitePlanLayer, CopiesLieWhereTheWholeLies) {
  QImage image = white(4099, 4003);  // no power of two
  QPainter quarters(&image);
  quarters.fillRect(QRect(0, 0, 2050, 2001), Qt::red);
  quarters.fillRect(QRect(2050, 2001, 2049, 2002), Qt::green);
  quarters.end();
  const auto picture = load_site_plan(file_of(image, "png"), "plot.png").value();
  const ui::Sight sight{10, {0, 400}};  // 0.01 m a pixel, 10 px a metre: 409.9 x 400.3 px
  QImage paper(420, 420, QImage::Format_RGB32);
  paper.fill(Qt::blue);
  QPainter painter(&paper);
  ui::paint_site_plan(painter, placed(0, 0, 0.01, 0), *picture, sight, QRectF(0, 0, 420, 420));
  painter.end();
  EXPECT_EQ(paper.pixelColor(202, 198), QColor(Qt::red));  // 2050 px x 0.1 = 205, 400 - 2002 x 0.1 = 199.8
  EXPECT_EQ(paper.pixelColor(208, 198), QColor(Qt::white));
  EXPECT_EQ(paper.pixelColor(202, 203), QColor(Qt::white));
  EXPECT_EQ(paper.pixelColor(208, 203), QColor(Qt::green));
}

// Half as strong on white: a black picture turns the paper to the middle grey.
TEST(SitePlanLayer, IsAsStrongAsChosen) {
  QImage black(100, 100, QImage::Format_RGB32);
  black.fill(Qt::black);
  const auto picture = load_site_plan(file_of(black, "png"), "plot.png").value();
  QImage paper = white(100, 100);
  QPainter painter(&paper);
  plan::SitePlan plan = placed(0, 0, 0.01, 0);
  plan.opacity = 0.5;
  ui::paint_site_plan(painter, plan, *picture, {100, {0, 100}}, QRectF(0, 0, 100, 100));
  painter.end();
  EXPECT_NEAR(qGray(paper.pixel(50, 50)), 127.5, 1.5);
}

// Nobody has scaled it: a page as 1:100, so 200 dots an inch are 0.0254 / 200 x 100 = 0.0127 m; a picture 30 m wide.
TEST(SitePlanLayer, FirstScale) {
  EXPECT_DOUBLE_EQ(ui::first_metres_per_pixel(*load_site_plan(pdf(1), "plot.pdf").value()), 0.0127);
  const auto picture = load_site_plan(file_of(white(600, 400), "png"), "plot.png").value();
  EXPECT_DOUBLE_EQ(ui::first_metres_per_pixel(*picture), 0.05);
  // An element without a scale is painted as the tool that scales it takes it: 0.02 m, so 600 px are 12 m.
  EXPECT_EQ(ui::to_metres(placed(0, 0, 0, 0), *picture).map(QPointF(600, 400)), QPointF(12, 0));
}

// A triangle in GeoJSON on a plane in feet would be refused without its unit; in metres its corners lie where they are
// written: (4, 3) at 2 m a unit and `at` (10, 20) is (18, 26).
TEST(SitePlanFile, OutlinesOfGeoJson) {
  const QByteArray text =
      R"({"type":"FeatureCollection","crs":{"type":"name","properties":{"name":"local"}},"units":"m","features":[{"type":
    "Feature","properties":{},"geometry":{"type":"LineString","coordinates":[[0,0],[4,3],[4,0]]}}]})";
  const auto made = load_site_plan(text, "plot.geojson");
  ASSERT_TRUE(made) << problem::sentence(made.error());
  EXPECT_FALSE((*made)->picture());
  ASSERT_EQ((*made)->outlines.size(), 1U);
  EXPECT_EQ((*made)->bounds, QRectF(0, 0, 4, 3));
  EXPECT_EQ(ui::first_metres_per_pixel(**made), 1);
  EXPECT_EQ(ui::to_metres(placed(10, 20, 2, 0), **made).map(QPointF(4, 3)), QPointF(18, 26));
  // Painted: 10 px a metre, so the edge from (4, 3) down to (4, 0) lies at px 40.
  QImage paper = white(60, 60);
  QPainter painter(&paper);
  ui::paint_site_plan(painter, placed(0, 0, 1, 0), **made, {10, {0.5, 50.5}}, QRectF(0, 0, 60, 60));
  painter.end();
  EXPECT_LT(qGray(paper.pixel(40, 35)), 220);
  EXPECT_EQ(qGray(paper.pixel(44, 35)), 255);
}

TEST(SitePlanFile, BrokenOutlinesAreRefused) {
  for (const char* name : {"cut.geojson", "cut.dxf"}) EXPECT_FALSE(load_site_plan("{\"type\":", name)) << name;
}
