// Every price that an item had: a list with day, price and source, and a plot of it over the days.
#pragma once

#include <QDate>
#include <QWidget>
#include <vector>

#include "store/catalogue_changes.h"

class QTableWidget;

namespace ui {

// A price holds from its day until the next one, so the line goes in steps. The days lie on the axis as far apart as
// they are; amounts are drawn from 0 up, so that a rise looks as large as it is.
class PricePlot : public QWidget {
  Q_OBJECT
 public:
  struct Point {
    QDate day;
    std::int64_t coins = 0;
  };
  explicit PricePlot(QWidget* parent = nullptr);
  void show_points(std::vector<Point> points);  // in the order in which they were given
  std::vector<QPointF> places() const;          // of the points, px
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QRectF room() const;
  std::vector<Point> points_;
};

class PriceHistory : public QWidget {
  Q_OBJECT
 public:
  explicit PriceHistory(QWidget* parent = nullptr);
  void show_prices(const std::vector<store::PricePoint>& points);  // none: nothing is shown

 private:
  QTableWidget* list_;
  PricePlot* plot_;
};

}  // namespace ui
