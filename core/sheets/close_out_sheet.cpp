// The close-out: what the owner keeps and the office files when the work is done. Only what the job has, with room to
// write.
#include <memory>

#include "sheets/all_sheets.h"
#include "sheets/close_out_parts.h"
#include "sheets/figure.h"

namespace sheets {

namespace {

Passage plan_passage(const Printed& printed) {
  Drawing drawing;
  drawing.figure = plan_with(printed, {[](const plan::Element&) { return true; },
                                       {Sign::level, Sign::outlet, Sign::weep, Sign::inlet, Sign::name,
                                        Sign::light_point, Sign::plain_point}});
  drawing.title = printed.say("As it was drawn: what came out otherwise is marked by hand");
  drawing.height_mm = 130;
  drawing.north = 0;
  drawing.plan = true;
  return {{drawing}, std::nullopt, true};
}

Passage hand_over_passage(const Printed& printed) {
  return {{Heading{printed.say("Handed over"), {}}, Blanks{{printed.say("Next visit on"), printed.say("For what")}},
           Blanks{{printed.say("Owner"), printed.say("Day")}}, Blanks{{printed.say("Crew lead"), printed.say("Day")}}},
          std::nullopt,
          true};
}

}  // namespace

Sheet close_out(const Printed& printed) {
  Sheet sheet = sheet_named(printed, "close-out", "Close-out");
  sheet.about = {printed.say("What was built, looked at and left behind.")};
  if (nothing_to_do(printed)) {
    sheet.passages.push_back(
        {{Paragraph{{printed.say("Nothing is built in this job yet: there is nothing to hand over.")}}}});
    return sheet;
  }
  for (Passage passage :
       {plan_passage(printed), pipes_passage(printed), outlets_passage(printed), bonding_passage(printed),
        services_passage(printed), looked_at_passage(printed), levels_passage(printed), hose_test_passage(printed),
        care_passage(printed), left_behind_passage(printed), papers_passage(printed), hand_over_passage(printed)})
    if (!passage.blocks.empty()) sheet.passages.push_back(std::move(passage));
  return sheet;
}

}  // namespace sheets
