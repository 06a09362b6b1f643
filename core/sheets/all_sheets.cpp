#include "sheets/all_sheets.h"

#include <algorithm>

namespace sheets {

// Each row stands where a job needs the sheet.
const std::vector<SheetKind>& sheet_kinds() {
  static const std::vector<SheetKind> kinds{
      {"crew-list", "Crew list", "What to bring, in the order of building", crew_list},
      {"plan", "Plan", "To scale: sizes, levels, patterns, joints, and what lies under the ground", plan_sheet},
      {"sections", "Sections and elevations", "How each thing is built up; walls course by course", sections},
      {"cut-list", "Cut list", "What is cut: the settings of the saw, and what comes off rolls and sticks", cut_list},
      {"setting-out", "Setting out and levels", "Ties, offsets, stakes with cut and fill, the level book", setting_out},
      {"order", "Order", "What each supplier is asked for, and when it is wanted", order},
      {"start-sheet", "Start sheet", "Where the first unit lies, running measures, levels, the first pallets",
       start_sheet},
      {"staging", "Staging and deliveries", "Where goods stand, loads by stage, pallet by pallet", staging},
      {"inspection", "Inspection record", "What is looked at before it is covered, by whom", inspection},
      {"field", "Field sheet", "Empty: what was measured, counted and changed on site", field},
      {"close-out", "Close-out", "What was built, looked at, tested and left behind", close_out},
      {"quote", "Quote", "What the customer is offered", quote},
      {"working", "Working", "How every number came about", working},
  };
  return kinds;
}

const SheetKind* sheet_kind(std::string_view word) {
  const auto& kinds = sheet_kinds();
  const auto found = std::ranges::find_if(kinds, [&](const SheetKind& kind) { return word == kind.word; });
  return found == kinds.end() ? nullptr : &*found;
}

}  // namespace sheets
