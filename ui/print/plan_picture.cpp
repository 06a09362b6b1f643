#include "ui/print/plan_picture.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>
#include <algorithm>
#include <cmath>

#include "sheets/plan_figure.h"
#include "ui/look/theme.h"
#include "ui/paint/figure_painter.h"

namespace ui {

namespace {

constexpr double air = 24;  // px about the drawing

struct Picture {
  std::shared_ptr<const sheets::Figure> figure;
  QSize size;
  Sight sight;
};

Picture picture(const results::Results& results, int longest) {
  Picture made;
  made.figure = std::make_shared<const sheets::Figure>(sheets::plan_figure(results, {}));
  const double wide = made.figure->high.x - made.figure->low.x, high = made.figure->high.y - made.figure->low.y;
  const double side = std::clamp(longest, 64, 8000);
  made.sight.scale = (side - 2 * air) / std::max({wide, high, 1e-3});
  made.size = QSize(static_cast<int>(std::ceil(wide * made.sight.scale + 2 * air)),
                    static_cast<int>(std::ceil(high * made.sight.scale + 2 * air)));
  made.sight.origin =
      QPointF(air - made.figure->low.x * made.sight.scale, air + made.figure->high.y * made.sight.scale);
  return made;
}

void paint(QPainter& painter, const Picture& picture) {
  const OnPaper paper(true);
  const QRectF all(QPointF(), QSizeF(picture.size));
  painter.fillRect(all, Qt::white);
  const FigurePainter figure(picture.figure);
  figure.paint(painter, picture.sight, all);
  figure.paint_marks(painter, picture.sight, all);
}

}  // namespace

QByteArray plan_svg(const results::Results& results, int longest) {
  const Picture made = picture(results, longest);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setSize(made.size);
  generator.setViewBox(QRect(QPoint(), made.size));
  generator.setTitle(QString::fromStdString(results.job->heading.name));
  QPainter painter(&generator);
  paint(painter, made);
  painter.end();
  return bytes;
}

QByteArray plan_png(const results::Results& results, int longest) {
  const Picture made = picture(results, longest);
  QImage image(made.size, QImage::Format_RGB32);
  QPainter painter(&image);
  paint(painter, made);
  painter.end();
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes;
}

}  // namespace ui
