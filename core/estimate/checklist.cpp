#include "estimate/checklist.h"

#include <algorithm>
#include <array>

#include "estimate/added.h"

namespace estimate {

using plan::CostKind;
using takeoff::Stage;

namespace {

struct Row {
  const char* code;
  const char* name;
  Stage stage;
  CostKind kind;
  // What answers it beside an added line: the kind of an item, an item or rate itself, or how its id starts.
  const char* item_kind = nullptr;
  const char* item = nullptr;
  const char* starts = nullptr;
};

constexpr std::array rows{
    Row{"permit", "Permit and inspections", Stage::protect, CostKind::fee, nullptr, "permit-allow"},
    Row{"engineer", "Engineer", Stage::protect, CostKind::subcontract, nullptr, "engineer-allow"},
    Row{"locate", "Locating buried services", Stage::protect, CostKind::fee},
    Row{"mobilise", "Moving on and off the site", Stage::protect, CostKind::trucking},
    Row{"machine-move", "Bringing and fetching machines", Stage::dig, CostKind::trucking},
    Row{"fuel", "Fuel", Stage::dig, CostKind::machine},
    Row{"dump", "Dump fees", Stage::dig, CostKind::fee, "disposal"},
    Row{"toilet", "Toilet for the crew", Stage::protect, CostKind::fee},
    Row{"protection", "Protection of lawn, plants and drive", Stage::protect, CostKind::material, "protection",
        "protect-allow"},
    Row{"lawn-repair", "Lawn made good", Stage::finish, CostKind::material},
    Row{"irrigation-repair", "Irrigation made good", Stage::finish, CostKind::subcontract},
    Row{"delivery", "Delivery", Stage::base, CostKind::trucking, nullptr, nullptr, "delivery:"},
    Row{"pallet-deposit", "Deposit on pallets", Stage::paving, CostKind::trucking, "deposit"},
    Row{"saw-blades", "Saw blades", Stage::paving, CostKind::material, "blade"},
    Row{"small-tools", "Small tools", Stage::protect, CostKind::material},
    Row{"wash-down", "Washing down", Stage::finish, CostKind::labour},
    Row{"punch-list", "Last list of small faults", Stage::finish, CostKind::labour},
    Row{"warranty-reserve", "Reserve for the warranty", Stage::finish, CostKind::allowance},
    Row{"card-fee", "Fee on card payments", Stage::finish, CostKind::fee},
};

bool answers(const plan::Job& job, const Row& row, const OrderLine& line) {
  if (line.item == std::string(added_prefix) + row.code) return true;
  if (row.starts && line.item.starts_with(row.starts)) return true;
  if (row.item && line.item == row.item) return true;
  const catalogue::Item* item = row.item_kind ? job.catalogue->item(line.item) : nullptr;
  return item && item->kind == row.item_kind;
}

bool nothing_on_purpose(const plan::Job& job, const Row& row) {
  return std::ranges::any_of(
      job.offer.lines, [&row](const plan::AddedLine& line) { return line.id == row.code && line.nothing_on_purpose; });
}

}  // namespace

std::vector<ChecklistPoint> checklist(const plan::Job& job, const Estimate& estimate) {
  using Answer = ChecklistPoint::Answer;
  std::vector<ChecklistPoint> points;
  for (const Row& row : rows) {
    ChecklistPoint point{row.code, row.name, row.stage, row.kind, Answer::open, {}, {}};
    bool more = false;  // than a line that is nothing on purpose
    for (const OrderLine& line : estimate.lines) {
      if (!answers(job, row, line)) continue;
      if (point.by.empty()) point.by = line.item;
      point.amount += line.amount.value_or(units::Money());
      more = more || line.amount != units::Money();
    }
    if (!point.by.empty()) point.answer = !more && nothing_on_purpose(job, row) ? Answer::nothing : Answer::line;
    points.push_back(std::move(point));
  }
  return points;
}

}  // namespace estimate
