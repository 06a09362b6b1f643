#include "sheets/all_sheets.h"

#include <algorithm>

namespace sheets {

// Each row stands where a job needs the sheet.
const std::vector<SheetKind>& sheet_kinds() {
  static const std::vector<SheetKind> kinds{
      {"crew-list", "Crew list", "What to bring, in the order of building", crew_list},
  };
  return kinds;
}

const SheetKind* sheet_kind(std::string_view word) {
  const auto& kinds = sheet_kinds();
  const auto found = std::ranges::find_if(kinds, [&](const SheetKind& kind) { return word == kind.word; });
  return found == kinds.end() ? nullptr : &*found;
}

}  // namespace sheets
