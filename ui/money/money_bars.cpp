#include "ui/money/money_bars.h"

#include <QPainter>
#include <algorithm>

#include "ui/look/theme.h"

namespace ui {

MoneyBars::MoneyBars(const QString& title, QWidget* parent) : QWidget(parent), title_(title) {
  setAccessibleName(title);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void MoneyBars::show_bars(std::vector<Bar> bars) {
  bars_ = std::move(bars);
  QStringList told;
  for (const Bar& bar : bars_) told << bar.name + QStringLiteral(" ") + bar.amount;
  setAccessibleDescription(told.join(QStringLiteral("; ")));
  updateGeometry();
  update();
}

int MoneyBars::row_height() const { return QFontMetrics(ui::font(Type::text)).height() + px(8); }

QSize MoneyBars::sizeHint() const {
  return {px(420),
          QFontMetrics(ui::font(Type::note, true)).height() + px(6) + static_cast<int>(bars_.size()) * row_height()};
}

QSize MoneyBars::minimumSizeHint() const { return {px(300), sizeHint().height()}; }

void MoneyBars::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const QFont head = ui::font(Type::note, true);
  painter.setFont(head);
  painter.setPen(theme().ink2);
  const int head_height = QFontMetrics(head).height();
  painter.drawText(QRect(0, 0, width(), head_height), Qt::AlignLeft | Qt::AlignVCenter, title_);
  if (bars_.empty()) return;
  const QFont text = ui::font(Type::text);
  const QFontMetrics metrics(text);
  int names = 0, amounts = 0;
  double longest = 0;
  for (const Bar& bar : bars_) {
    names = std::max(names, metrics.horizontalAdvance(bar.name) + px(2));
    amounts = std::max(amounts, metrics.horizontalAdvance(bar.amount));
    longest = std::max(longest, std::abs(bar.coins));
  }
  names = std::min(names, width() / 2);
  const int gap = px(10);
  const int room = std::max(px(20), width() - names - amounts - 2 * gap);
  painter.setFont(text);
  int top = head_height + px(6);
  for (const Bar& bar : bars_) {
    const QRect row(0, top, width(), row_height());
    painter.setPen(theme().ink);
    painter.drawText(QRect(0, top, names, row.height()), Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(bar.name, Qt::ElideRight, names));
    painter.drawText(QRect(width() - amounts, top, amounts, row.height()), Qt::AlignRight | Qt::AlignVCenter,
                     bar.amount);
    const int length = longest > 0 ? static_cast<int>(std::abs(bar.coins) / longest * room) : 0;
    const QRect drawn(names + gap, top + px(6), std::max(1, length), row.height() - px(12));
    // What comes back (a credit) is drawn open.
    if (bar.coins < 0) {
      painter.setBrush(Qt::NoBrush);
      painter.setPen(theme().ink2);
      painter.drawRect(drawn.adjusted(0, 0, -1, -1));
    } else {
      painter.fillRect(drawn, theme().ink3);
    }
    top += row_height();
  }
}

}  // namespace ui
