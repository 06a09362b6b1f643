#include "ui/money/price_rows.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/panels/panel_words.h"

namespace ui {

namespace {

class PriceWords {
  Q_DECLARE_TR_FUNCTIONS(PriceWords)
};

}  // namespace

QString kind_in_words(plan::CostKind kind) {
  switch (kind) {
    case plan::CostKind::material: return PriceWords::tr("Material");
    case plan::CostKind::labour: return PriceWords::tr("Labour");
    case plan::CostKind::machine: return PriceWords::tr("Machines");
    case plan::CostKind::trucking: return PriceWords::tr("Trucking");
    case plan::CostKind::subcontract: return PriceWords::tr("Subcontract");
    case plan::CostKind::allowance: return PriceWords::tr("Allowances");
    case plan::CostKind::fee: return PriceWords::tr("Fees");
  }
  return {};
}

QString shown_share(double share) {
  // Half a hundredth of a per cent is the least that is told: 12.5 %, 8.33 %.
  QString number = QString::number(share * 100, 'f', 2);
  while (number.endsWith(QLatin1Char('0'))) number.chop(1);
  if (number.endsWith(QLatin1Char('.'))) number.chop(1);
  return number + QChar(QChar::Nbsp) + QLatin1Char('%');
}

std::vector<PriceRow> price_rows(const results::Results& results) {
  const estimate::Priced& priced = results.priced;
  const plan::Heading& heading = results.job->heading;
  std::vector<PriceRow> rows;
  bool price_told = false;
  const auto tell_price = [&] {
    if (price_told) return;
    rows.push_back({PriceRow::Kind::sum, PriceWords::tr("Price before tax"), {}, shown_money(priced.price, heading)});
    price_told = true;
  };
  for (const estimate::PriceStep& step : priced.steps) {
    if (step.code == "tax") tell_price();
    rows.push_back({PriceRow::Kind::step, said(step.name), QString::fromStdString(step.working),
                    shown_money(step.amount, heading)});
  }
  tell_price();
  if (priced.total != priced.price)
    rows.push_back({PriceRow::Kind::sum, PriceWords::tr("Total with tax"), {}, shown_money(priced.total, heading)});
  rows.push_back({PriceRow::Kind::note,
                  PriceWords::tr("What stands over the cost"),
                  PriceWords::tr("%1 of the cost (markup) is %2 of the price (margin)")
                      .arg(shown_share(priced.markup), shown_share(priced.margin)),
                  {}});
  for (const estimate::Due& due : priced.payments) {
    const auto stage = takeoff::stage_of(due.stage);
    rows.push_back({PriceRow::Kind::note, QString::fromStdString(due.name),
                    stage ? PriceWords::tr("with: %1").arg(said(takeoff::title(*stage))) : PriceWords::tr("on signing"),
                    shown_money(due.amount, heading)});
  }
  return rows;
}

std::vector<Bar> by_kind(const results::Results& results) {
  std::vector<Bar> bars;
  for (const auto& [kind, amount] : results.priced.by_kind) {
    if (amount == units::Money()) continue;
    bars.push_back(
        {kind_in_words(kind), shown_money(amount, results.job->heading), static_cast<double>(amount.coins())});
  }
  std::ranges::stable_sort(bars, std::ranges::greater(), &Bar::coins);
  return bars;
}

std::vector<Bar> by_stage(const results::Results& results) {
  std::vector<Bar> bars;
  for (const auto& [stage, total] : results.estimate.stages) {
    const units::Money amount = total.amount();
    bars.push_back(
        {said(takeoff::title(stage)), shown_money(amount, results.job->heading), static_cast<double>(amount.coins())});
  }
  return bars;
}

}  // namespace ui
