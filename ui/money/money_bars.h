// Bars of money: a name, a bar as long as its share, the amount. Told to screen readers as a list in words.
#pragma once

#include <QWidget>
#include <vector>

#include "ui/money/price_rows.h"

namespace ui {

class MoneyBars : public QWidget {
  Q_OBJECT
 public:
  explicit MoneyBars(const QString& title, QWidget* parent = nullptr);
  void show_bars(std::vector<Bar> bars);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  int row_height() const;
  QString title_;
  std::vector<Bar> bars_;
};

}  // namespace ui
