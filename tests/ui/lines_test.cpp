// Lines of the plan, close to and from far.
#include "ui/paint/lines.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QPainterPath>

namespace {

// The edge of an open dig along y = 200 from `from` to `to`, px.
QImage dig(double from, double to) {
  QImage image(600, 400, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setClipRect(QRectF(0, 0, 600, 400));
  QPainterPath path(QPointF(from, 200));
  path.lineTo(to, 200);
  ui::stroke(painter, path, sheets::Line::open_dig, sheets::Material::none);
  return image;
}

int marks(const QImage& image, int y) {
  int found = 0;
  for (int x = 0; x < image.width(); ++x) found += image.pixelColor(x, y).lightness() < 200 ? 1 : 0;
  return found;
}

TEST(Lines, AHoleOfKilometresHasTheMarksThatAreSeenAndNoOthers) {
  // Marks stand 5 px apart, every second one long; both lines begin at a multiple of 10 px, so that they agree.
  const QImage near = dig(-1'000, 2'000);
  EXPECT_EQ(dig(-100'000'000, 80'000'000), near);
  EXPECT_NEAR(marks(near, 197), 120, 2) << "600 px / 5 px";
  EXPECT_NEAR(marks(near, 193), 60, 2) << "of them the long ones";
  EXPECT_EQ(marks(near, 205), 0) << "on the other side there are none";
}

}  // namespace
