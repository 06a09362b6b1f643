#include "ui/panels/total_model.h"

#include <QCoreApplication>

#include "estimate/labour.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

struct Total {
  Q_DECLARE_TR_FUNCTIONS(Total)
};

units::Money& place_of(plan::CostKind kind, Split& into) {
  switch (kind) {
    case plan::CostKind::labour: return into.labour;
    case plan::CostKind::machine:
    case plan::CostKind::trucking: return into.machines;
    case plan::CostKind::subcontract:
    case plan::CostKind::allowance:
    case plan::CostKind::fee: return into.fees;
    case plan::CostKind::material: break;
  }
  return into.material;
}

}  // namespace

Split split(const results::Results& results) {
  Split made;
  for (const estimate::OrderLine& line : results.estimate.lines)
    place_of(line.kind, made) += line.amount.value_or(units::Money());
  return made;
}

Open open_of(const results::Results& results) {
  Open open;
  for (std::size_t i = 0; i < results.estimate.lines.size(); ++i) {
    if (results.estimate.lines[i].amount) continue;
    ++open.without_price;
    if (open.first_line < 0) open.first_line = static_cast<int>(i);
  }
  for (const problem::Problem& said : results.problems()) {
    if (said.severity != problem::Severity::problem || said.code == "no-price") continue;
    ++open.problems;
    if (!open.problem) open.problem = said;
  }
  return open;
}

QString open_in_words(const Open& open) {
  QStringList reasons;
  if (open.without_price == 1) reasons << Total::tr("1 line has no price");
  if (open.without_price > 1) reasons << Total::tr("%1 lines have no price").arg(open.without_price);
  if (open.problems == 1) reasons << Total::tr("1 problem to solve");
  if (open.problems > 1) reasons << Total::tr("%1 problems to solve").arg(open.problems);
  return reasons.isEmpty() ? QString() : Total::tr("Not final: %1.").arg(reasons.join(QStringLiteral(", ")));
}

QString hours_in_words(double hours, const plan::Choices& choices) {
  QStringList words{shown_hours(hours)};
  words << Total::tr("crew of %1").arg(shown_number(choices.crew));
  const double days = estimate::crew_days(hours, choices.crew, choices.day_hours);
  if (days > 0) {
    const QString number = shown_hours(days).chopped(2);
    words << (number == QLatin1String("1") ? Total::tr("1 day") : Total::tr("%1 days").arg(number));
  }
  return words.join(QStringLiteral(" · "));
}

}  // namespace ui
