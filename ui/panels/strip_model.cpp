#include "ui/panels/strip_model.h"

#include <QCoreApplication>
#include <QStringList>

#include "ui/panels/panel_words.h"

namespace ui {

namespace {

using takeoff::Stage;

std::array<QString, stage_count> short_names() {
  return {QCoreApplication::translate("ui::Strip", "Protect"),      QCoreApplication::translate("ui::Strip", "Dig"),
          QCoreApplication::translate("ui::Strip", "Under ground"), QCoreApplication::translate("ui::Strip", "Wall"),
          QCoreApplication::translate("ui::Strip", "Base"),         QCoreApplication::translate("ui::Strip", "Coping"),
          QCoreApplication::translate("ui::Strip", "Paving"),       QCoreApplication::translate("ui::Strip", "Joints"),
          QCoreApplication::translate("ui::Strip", "Finish")};
}

std::size_t number(Stage stage) { return static_cast<std::size_t>(stage); }

struct StageOfKind {
  Stage operator()(const plan::PavedArea&) const { return Stage::paving; }
  Stage operator()(const plan::Pool&) const { return Stage::coping; }
  Stage operator()(const plan::Wall&) const { return Stage::wall; }
  Stage operator()(const plan::Steps&) const { return Stage::coping; }
  Stage operator()(const plan::EdgeRun&) const { return Stage::coping; }
  Stage operator()(const plan::DrainRun&) const { return Stage::under_ground; }
  Stage operator()(const plan::Feature&) const { return Stage::finish; }
  Stage operator()(const plan::Level&) const { return Stage::base; }
  // What is there already, and what is only written down, matters from the first day.
  template <class Other>
  Stage operator()(const Other&) const {
    return Stage::protect;
  }
};

void count_problems(std::array<StripCell, stage_count>& cells, const results::Results& results, const plan::Job& job) {
  for (const problem::Problem& said : results.problems()) {
    if (said.severity == problem::Severity::notice || said.code == "no-price") continue;
    const plan::Element* element = job.find(said.place.element);
    StripCell& cell = cells[number(element ? stage_of_kind(element->kind) : Stage::protect)];
    if (said.severity == problem::Severity::flag) {
      ++cell.flags;
    } else {
      ++cell.problems;
      cell.open = true;
    }
  }
  for (const estimate::OrderLine& line : results.estimate.lines) {
    if (line.amount) continue;
    ++cells[number(line.stage)].problems;
    cells[number(line.stage)].open = true;
  }
}

}  // namespace

Stage stage_of_kind(const plan::Kind& kind) { return std::visit(StageOfKind{}, kind); }

std::array<StripCell, stage_count> strip_cells(const results::Results* results, const plan::Job& job) {
  std::array<StripCell, stage_count> cells;
  const std::array<QString, stage_count> names = short_names();
  for (std::size_t i = 0; i < stage_count; ++i) cells[i].name = names[i];
  if (results == nullptr) return cells;
  for (const auto& [stage, total] : results->estimate.stages) {
    if (total.amount() != units::Money()) cells[number(stage)].cost = shown_money(total.amount(), job.heading);
    if (total.hours > 0) cells[number(stage)].hours = shown_hours(total.hours);
  }
  count_problems(cells, *results, job);
  return cells;
}

StripKinds strip_kinds(const plan::Job& job) {
  StripKinds kinds;
  for (const auto& element : job.elements) {
    const plan::Kind& kind = element->kind;
    kinds.pool |= std::holds_alternative<plan::Pool>(kind);
    kinds.wall |= std::holds_alternative<plan::Wall>(kind);
    kinds.pipe |= std::holds_alternative<plan::DrainRun>(kind);
    kinds.kerb |= std::holds_alternative<plan::EdgeRun>(kind);
    kinds.paving |= std::holds_alternative<plan::PavedArea>(kind) || std::holds_alternative<plan::Steps>(kind);
  }
  kinds.any = kinds.pool || kinds.wall || kinds.pipe || kinds.kerb || kinds.paving;
  return kinds;
}

QString strip_cell_told(int number, const StripCell& cell) {
  QStringList parts;
  if (!cell.cost.isEmpty()) parts << cell.cost;
  if (!cell.hours.isEmpty()) parts << cell.hours;
  if (cell.problems > 0) parts << QCoreApplication::translate("ui::Strip", "%1 to solve").arg(cell.problems);
  if (cell.flags > 0) parts << QCoreApplication::translate("ui::Strip", "%1 to decide").arg(cell.flags);
  const QString name = QStringLiteral("%1, %2").arg(number).arg(cell.name);
  return parts.isEmpty() ? name : name + QStringLiteral(": ") + parts.join(QStringLiteral(", "));
}

}  // namespace ui
