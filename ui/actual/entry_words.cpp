#include "ui/actual/entry_words.h"

#include <QCoreApplication>

#include "ui/panels/panel_words.h"
#include "ui/words/words.h"

namespace ui {

namespace {

struct ActWords {
  Q_DECLARE_TR_FUNCTIONS(ui::ActWords)
 public:
  static QString of(estimate::Act act) {
    using estimate::Act;
    switch (act) {
      case Act::planned: return tr("Planned");
      case Act::asked: return tr("Asked for");
      case Act::ordered: return tr("Ordered");
      case Act::confirmed: return tr("Confirmed");
      case Act::delivered: return tr("Delivered");
      case Act::used: return tr("Used");
      case Act::returned: return tr("Returned");
      case Act::hours: return tr("Hours worked");
      case Act::measured: return tr("Done to date");
    }
    return {};
  }
};

}  // namespace

QString act_name(estimate::Act act) { return ActWords::of(act); }

QString stage_name(const std::string& stage) {
  const auto known = takeoff::stage_of(stage);
  return known ? said(takeoff::title(*known)) : QString::fromStdString(stage);
}

QString quantity_of(double quantity, const std::string& unit) {
  return quantity == 0 ? QStringLiteral("–") : shown_count(quantity, unit);
}

QString share_of(const std::optional<double>& share) {
  return share ? shown_number(*share * 100) + QStringLiteral(" %") : QStringLiteral("–");
}

QString signed_sum(units::Money money, const plan::Heading& heading) {
  return (money > units::Money() ? QStringLiteral("+") : QString()) + shown_money(money, heading);
}

QString sum_or(const std::optional<units::Money>& money, const plan::Heading& heading, const QString& otherwise) {
  return money ? shown_money(*money, heading) : otherwise;
}

}  // namespace ui
