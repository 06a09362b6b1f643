// The sheets that a job is printed as, by the words of the command line.
#pragma once

#include "sheets/printed.h"

namespace sheets {

struct SheetKind {
  const char* word;   // "crew-list"
  const char* title;  // "Crew list", English
  const char* about;  // what it is for, in a sentence, English
  Sheet (*make)(const Printed&);
};
// In the order in which a job needs them. Change order and estimate against actual are made from versions and
// deliveries (change_sheet.h, actual_sheet.h) and are not among them.
const std::vector<SheetKind>& sheet_kinds();
const SheetKind* sheet_kind(std::string_view word);  // null: none of that word

Sheet crew_list(const Printed& printed);
Sheet plan_sheet(const Printed& printed);
Sheet sections(const Printed& printed);  // and elevations
Sheet cut_list(const Printed& printed);
Sheet setting_out(const Printed& printed);
Sheet order(const Printed& printed);
Sheet quote(const Printed& printed);
Sheet working(const Printed& printed);
Sheet start_sheet(const Printed& printed);
Sheet staging(const Printed& printed);
Sheet inspection(const Printed& printed);
Sheet field(const Printed& printed);
Sheet close_out(const Printed& printed);

}  // namespace sheets
