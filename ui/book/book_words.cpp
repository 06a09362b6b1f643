#include "ui/book/book_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QPainter>

#include "plan/job.h"
#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"

namespace ui {

QString state_name(store::State state) {
  switch (state) {
    case store::State::asked: return QCoreApplication::translate("ui::BookWindow", "Asked for");
    case store::State::quoted: return QCoreApplication::translate("ui::BookWindow", "Quoted");
    case store::State::agreed: return QCoreApplication::translate("ui::BookWindow", "Agreed");
    case store::State::building: return QCoreApplication::translate("ui::BookWindow", "Building");
    case store::State::closed: return QCoreApplication::translate("ui::BookWindow", "Closed");
  }
  return {};
}

QIcon state_sign(store::State state) {
  const int side = px(14);
  constexpr int times = 3;  // sharp on dense screens too
  QPixmap picture(side * times, side * times);
  picture.setDevicePixelRatio(times);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF disc(1.5, 1.5, side - 3.0, side - 3.0);
  painter.setPen(QPen(theme().ink, 1.25));
  painter.drawEllipse(disc);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme().ink);
  painter.drawPie(disc, 90 * 16, -90 * 16 * static_cast<int>(state));  // from the top, clockwise
  return QIcon(picture);
}

QString shown_when(const std::string& utc) {
  const QDateTime when = QDateTime::fromString(QString::fromStdString(utc), Qt::ISODate);
  if (!when.isValid()) return {};
  return QLocale(language()).toString(when.toLocalTime(), QStringLiteral("d MMM yyyy, HH:mm"));
}

QString shown_sum(units::Money sum, const std::string& currency, int decimals) {
  plan::Heading heading;
  heading.currency = currency;
  heading.decimals = decimals;
  return shown_money(sum, heading);
}

QString told(const problem::Problem& problem) {
  QString said = QString::fromStdString(problem.text);
  if (!problem.mend.empty()) said += QStringLiteral(": ") + QString::fromStdString(problem.mend);
  return said;
}

}  // namespace ui
