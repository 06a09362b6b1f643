#include "ui/catalogue/price_history.h"

#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/book/book_table.h"
#include "ui/catalogue/entry_making.h"
#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"

namespace ui {

namespace {

// The day that the price itself gives; else the one on which the book got it.
QDate day_of(const store::PricePoint& point) {
  const std::string date = point.price && !point.price->date.empty() ? point.price->date : point.when.substr(0, 10);
  return QDate::fromString(QString::fromStdString(date), Qt::ISODate);
}

QString shown_day(const QDate& day) {
  return day.isValid() ? QLocale(language()).toString(day, QStringLiteral("d MMM yyyy")) : Entries::tr("not known");
}

QString shown_coins(std::int64_t coins) { return shown_money(units::Money::of_coins(coins), plan::Heading()); }

QString source_of(const store::PricePoint& point) {
  if (point.source.empty()) return Entries::tr("as it came");
  return point.source == "typed" ? Entries::tr("typed") : QString::fromStdString(point.source);
}

}  // namespace

PricePlot::PricePlot(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("catalogue-plot"));
  setAccessibleName(Entries::tr("Price over the days"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize PricePlot::sizeHint() const { return {px(320), px(120)}; }

void PricePlot::show_points(std::vector<Point> points) {
  points_ = std::move(points);
  QStringList told;
  for (const Point& point : points_) told << shown_day(point.day) + QStringLiteral(" ") + shown_coins(point.coins);
  setAccessibleDescription(told.join(QStringLiteral("; ")));
  update();
}

QRectF PricePlot::room() const {
  const QFontMetrics metrics(ui::font(Type::small));
  int amounts = 0;
  for (const Point& point : points_) amounts = std::max(amounts, metrics.horizontalAdvance(shown_coins(point.coins)));
  return QRectF(rect()).adjusted(amounts + px(10), px(10), -px(10), -metrics.height() - px(8));
}

std::vector<QPointF> PricePlot::places() const {
  std::vector<QPointF> places;
  if (points_.empty()) return places;
  const auto [first, last] = std::ranges::minmax_element(points_, {}, &Point::day);
  std::int64_t low = 0, high = 1;
  for (const Point& point : points_) {
    low = std::min(low, point.coins);
    high = std::max(high, point.coins);
  }
  const QRectF at = room();
  const double days = static_cast<double>(std::max<qint64>(first->day.daysTo(last->day), 1));
  for (const Point& point : points_)
    places.emplace_back(
        at.left() + static_cast<double>(first->day.daysTo(point.day)) / days * at.width(),
        at.bottom() - static_cast<double>(point.coins - low) / static_cast<double>(high - low) * at.height());
  return places;
}

void PricePlot::paintEvent(QPaintEvent*) {
  if (points_.empty()) return;
  QPainter painter(this);
  const QRectF at = room();
  painter.setFont(ui::font(Type::small));
  const QFontMetrics metrics(ui::font(Type::small));
  painter.setPen(QPen(theme().rule, 1));
  painter.drawLine(at.bottomLeft().toPoint(), at.bottomRight().toPoint());
  const auto all = places();
  painter.setPen(QPen(theme().ink, 1.5, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  QPolygonF line;
  for (const QPointF& place : all) {
    if (!line.isEmpty()) line << QPointF(place.x(), line.back().y());
    line << place;
  }
  line << QPointF(at.right(), line.back().y());
  painter.drawPolyline(line);
  const auto [least, most] = std::ranges::minmax_element(points_, {}, &Point::coins);
  const double mark = px(3);
  for (std::size_t i = 0; i < all.size(); ++i) {
    painter.fillRect(QRectF(all[i].x() - mark, all[i].y() - mark, 2 * mark, 2 * mark), theme().ink);
    const Point& point = points_[i];
    const bool named = &point == &*most || (&point == &*least && most->coins != least->coins);
    if (!named) continue;
    painter.setPen(theme().ink2);
    painter.drawText(QRectF(0, all[i].y() - metrics.height() / 2.0, at.left() - px(6), metrics.height()),
                     Qt::AlignRight | Qt::AlignVCenter, shown_coins(point.coins));
  }
  painter.setPen(theme().ink2);
  const auto [first, last] = std::ranges::minmax_element(points_, {}, &Point::day);
  const QRectF below(at.left(), at.bottom() + px(4), at.width(), metrics.height());
  painter.drawText(below, Qt::AlignLeft | Qt::AlignTop, shown_day(first->day));
  if (last->day != first->day) painter.drawText(below, Qt::AlignRight | Qt::AlignTop, shown_day(last->day));
}

PriceHistory::PriceHistory(QWidget* parent)
    : QWidget(parent), list_(new QTableWidget(0, 3, this)), plot_(new PricePlot(this)) {
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, px(12), 0, 0);
  auto* heading = new QLabel(Entries::tr("Prices so far"), this);
  heading->setFont(ui::font(Type::text, true));
  list_->setHorizontalHeaderLabels({Entries::tr("Day"), Entries::tr("Price"), Entries::tr("From")});
  make_list(list_, "catalogue-prices", Entries::tr("Prices so far"));
  list_->setSelectionMode(QAbstractItemView::SingleSelection);
  rows->addWidget(heading);
  rows->addWidget(list_);
  rows->addWidget(plot_);
  hide();
}

void PriceHistory::show_prices(const std::vector<store::PricePoint>& points) {
  setVisible(!points.empty());
  list_->setRowCount(static_cast<int>(points.size()));
  std::vector<PricePlot::Point> drawn;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const store::PricePoint& point = points[points.size() - 1 - i];  // the newest on top
    const QString price = point.price ? shown_price(point.price) : Entries::tr("no price");
    const QString cells[] = {shown_day(day_of(point)), price, source_of(point)};
    for (int column = 0; column < 3; ++column) {
      auto* cell = new QTableWidgetItem(cells[column]);
      cell->setToolTip(cells[column]);
      list_->setItem(static_cast<int>(i), column, cell);
    }
  }
  set_widths(list_, 2);
  const int shown = std::clamp(list_->rowCount(), 2, 5);
  list_->setFixedHeight(list_->horizontalHeader()->sizeHint().height() + shown * px(26) + px(6));
  // Only prices for the same measure can be drawn on one axis: those of the newest.
  for (const store::PricePoint& point : points)
    if (point.price && !point.price->by_others && points.back().price &&
        point.price->unit == points.back().price->unit && day_of(point).isValid())
      drawn.push_back({day_of(point), point.price->amount.coins()});
  plot_->setVisible(!drawn.empty());
  plot_->show_points(std::move(drawn));
}

}  // namespace ui
