#include "ui/compare/changed_view.h"

#include <QPainter>

#include "ui/look/theme.h"
#include "ui/paint/figure_paths.h"

namespace ui {

namespace {

Qt::BrushStyle hatch_of(plan::Differs how) {
  switch (how) {
    case plan::Differs::added: return Qt::FDiagPattern;
    case plan::Differs::gone: return Qt::BDiagPattern;
    case plan::Differs::changed: return Qt::DiagCrossPattern;
  }
  return Qt::NoBrush;
}

QString words_of(plan::Differs how) {
  switch (how) {
    case plan::Differs::added: return ChangedView::tr("added");
    case plan::Differs::gone: return ChangedView::tr("gone");
    case plan::Differs::changed: return ChangedView::tr("changed");
  }
  return {};
}

constexpr plan::Differs all_ways[] = {plan::Differs::added, plan::Differs::gone, plan::Differs::changed};

}  // namespace

QString sign_of(plan::Differs how) {
  return how == plan::Differs::added  ? QStringLiteral("+")
         : how == plan::Differs::gone ? QStringLiteral("−")
                                      : QStringLiteral("≠");
}

ChangedView::ChangedView(sheets::ChangedPlan plan, QWidget* parent) : QWidget(parent), plan_(std::move(plan)) {
  setObjectName(QStringLiteral("changed-plan"));
  setAccessibleName(tr("Plan with what changed"));
  setMinimumSize(px(320), px(240));
  QStringList told;
  for (const sheets::ChangedShape& shape : plan_.shapes)
    if (shape.how) told << QString::fromStdString(shape.of) + QStringLiteral(" ") + words_of(*shape.how);
  setAccessibleDescription(told.isEmpty() ? tr("Nothing drawn has changed") : told.join(QStringLiteral(", ")));
}

void ChangedView::paint_shape(QPainter& painter, const sheets::ChangedShape& shape, const QTransform& to_px) const {
  const QPainterPath path = to_px.map(path_in_metres(shape.contours));
  const bool open = !shape.contours.front().closed;
  QPen pen(shape.how ? theme().ink : theme().ink3, shape.how ? px(2) : 1);
  if (shape.how == plan::Differs::gone) pen.setStyle(Qt::DashLine);
  painter.setPen(pen);
  painter.setBrush(shape.how && !open ? QBrush(theme().ink2, hatch_of(*shape.how)) : QBrush(Qt::NoBrush));
  painter.drawPath(path);
}

void ChangedView::paint_legend(QPainter& painter) const {
  painter.setFont(ui::font(Type::note));
  const int height = QFontMetrics(painter.font()).height();
  int x = px(12);
  for (const plan::Differs how : all_ways) {
    const QRect swatch(x, px(10), px(22), height);
    painter.setPen(theme().ink);
    painter.setBrush(QBrush(theme().ink2, hatch_of(how)));
    painter.drawRect(swatch);
    const QString words = sign_of(how) + QStringLiteral(" ") + words_of(how);
    const int wide = QFontMetrics(painter.font()).horizontalAdvance(words);
    painter.drawText(QRect(swatch.right() + px(6), swatch.top(), wide + 2, height), Qt::AlignVCenter, words);
    x = swatch.right() + px(6) + wide + px(20);
  }
}

void ChangedView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), theme().paper);
  paint_legend(painter);
  if (plan_.shapes.empty()) return;
  const QRectF room = QRectF(rect()).adjusted(px(20), px(46), -px(20), -px(20));
  const double wide = std::max(0.1, plan_.high.x - plan_.low.x), tall = std::max(0.1, plan_.high.y - plan_.low.y);
  const double scale = std::min(room.width() / wide, room.height() / tall);
  const Sight sight{
      scale,
      {room.center().x() - scale * (plan_.low.x + wide / 2), room.center().y() + scale * (plan_.low.y + tall / 2)}};
  const QTransform metres_to_px = to_px(sight);
  for (const sheets::ChangedShape& shape : plan_.shapes) paint_shape(painter, shape, metres_to_px);
  painter.setFont(ui::font(Type::note, true));
  for (const sheets::ChangedShape& shape : plan_.shapes) {
    if (!shape.how) continue;
    const QString words = sign_of(*shape.how) + QStringLiteral(" ") + QString::fromStdString(shape.of);
    QRectF box = QFontMetricsF(painter.font()).boundingRect(words).adjusted(-px(4), -px(2), px(4), px(2));
    box.moveCenter(sight.to_px(shape.tag));
    painter.setPen(theme().ink);
    painter.setBrush(theme().raised);
    painter.drawRect(box);
    painter.drawText(box, Qt::AlignCenter, words);
  }
}

}  // namespace ui
