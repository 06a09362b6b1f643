// What the sheets of the crew share: the days of a stage, its hold points and cautions, and what is brought for it,
// counted as it comes off the truck. No money in any of it.
#pragma once

#include <functional>
#include <map>
#include <memory>

#include "estimate/deliveries.h"
#include "sheets/printed.h"

namespace sheets {

// True where the job has nothing to bring and nothing to do.
bool nothing_to_do(const Printed& printed);

std::string stage_number(takeoff::Stage stage);  // "1" to "9"
std::string stage_title(const Printed& printed, takeoff::Stage stage);
Heading stage_heading(const Printed& printed, takeoff::Stage stage);  // with hours and days at the right

// Working days of each stage that has hours, counted from 1, the crew and the hours a day as chosen for the job. Stages
// follow each other without a gap, so that one may end and the next begin on the same day.
struct Days {
  double hours = 0;
  double days = 0;  // of the whole crew
  int first = 1;
  int last = 1;
};
std::map<takeoff::Stage, Days> stage_days(const Printed& printed);
std::string days_words(const Printed& printed, const Days& days);  // "day 3", "days 3 to 5"
std::string hours_words(const Printed& printed, double hours);     // "31.5 h"

// Of the takeoff's notes; never null.
const takeoff::StageNotes& notes_of(const Printed& printed, takeoff::Stage stage);
std::vector<Hold> holds(const Printed& printed, takeoff::Stage stage);
// Each with who decides, where that is not the crew lead and it does not say so itself.
std::vector<Caution> cautions(const Printed& printed, takeoff::Stage stage);
// "Start only when ... are signed": nothing where the stage covers no hold point.
std::optional<Paragraph> waits_for(const Printed& printed, takeoff::Stage stage);

// A number and its unit apart: "675" "pieces".
struct Counted {
  std::string number;
  std::string unit;
  std::string words() const { return unit.empty() ? number : number + " " + unit; }
};
Counted parted(const std::string& words);                                 // "14.5 cu yd", at the first space
Counted bought(const Printed& printed, const estimate::OrderLine& line);  // in the unit of order
// A quantity of the takeoff: m, m2, m3, kg, h, piece; in the job's units.
Counted measured(const Printed& printed, double quantity, const std::string& unit);

// True of what somebody brings: material, what others supply, what a licensed trade does. Not of work, machines,
// trucks, fees, deposits and the office's own lines.
bool is_brought(const Printed& printed, const estimate::OrderLine& line);
// How it comes and what of it is needed: "1 pallet of 450 and 5 layers of 45; 645 needed, 30 to spare".
std::string how_it_comes(const Printed& printed, const estimate::OrderLine& line,
                         const std::vector<estimate::Visit>& visits);
std::vector<estimate::Visit> visits_of(const Printed& printed);

// The finished plan with only what a sheet needs of it: parts and tags of these kinds of elements, and of other signs
// those given; its problems are for the office. Its bounds are those of what is left.
struct PlanKeeps {
  std::function<bool(const plan::Element&)> element;
  std::vector<Sign> signs;  // besides tags
};
std::shared_ptr<const Figure> plan_with(const Printed& printed, const PlanKeeps& keeps);

// An empty sheet of that word and English title.
Sheet sheet_named(const Printed& printed, const std::string& word, const std::string& title);
std::string joined(const std::vector<std::string>& parts, const std::string& between);

}  // namespace sheets
