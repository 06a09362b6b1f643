// Our drawings lie in the program as SVG in one colour, "currentColor", which is put in place here. An icon asks the
// theme each time it is painted, so that it follows light and dark.
#include <QFile>
#include <QHash>
#include <QIcon>
#include <QIconEngine>
#include <QPainter>
#include <QSvgRenderer>
#include <memory>

#include "ui/look/theme.h"

namespace ui {

namespace {

QByteArray drawing(const QString& name) {
  QFile file(QString(":/icons/%1.svg").arg(name));
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// Null where there is no such drawing.
QSvgRenderer* renderer(const QString& name, const QColor& colour) {
  static QHash<QString, std::shared_ptr<QSvgRenderer>> made;
  const QString key = name + colour.name();
  if (const auto found = made.constFind(key); found != made.constEnd()) return found->get();
  const QByteArray svg = drawing(name).replace("currentColor", colour.name().toLatin1());
  return made.insert(key, svg.isEmpty() ? nullptr : std::make_shared<QSvgRenderer>(svg))->get();
}

QColor colour_of(QIcon::Mode mode, QIcon::State state) {
  const Theme& look = theme();
  if (mode == QIcon::Disabled) return look.rule;
  return state == QIcon::On ? look.chalk : look.ink;
}

class Drawn : public QIconEngine {
 public:
  explicit Drawn(QString name) : name_(std::move(name)) {}
  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override {
    const int side = std::min(rect.width(), rect.height());
    const QPointF at(rect.x() + (rect.width() - side) / 2.0, rect.y() + (rect.height() - side) / 2.0);
    paint_icon(*painter, name_, QRectF(at, QSizeF(side, side)), colour_of(mode, state));
  }
  // Qt gives the size in device px; what is painted is marked with the scale by Qt itself.
  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap picture(size);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    paint(&painter, QRect(QPoint(), size), mode, state);
    return picture;
  }
  QIconEngine* clone() const override { return new Drawn(*this); }
  QString key() const override { return "drawn"; }
  bool isNull() override { return renderer(name_, theme().ink) == nullptr; }

 private:
  QString name_;
};

}  // namespace

QIcon icon(const QString& name) { return QIcon(new Drawn(name)); }

void paint_icon(QPainter& painter, const QString& name, QRectF square, QColor colour) {
  QSvgRenderer* drawn = renderer(name, colour);
  if (drawn == nullptr) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  drawn->render(&painter, square);
  painter.restore();
}

}  // namespace ui
