// For the office alone: how every number came about, what was assumed, what is wrong.
#include "sheets/all_sheets.h"
#include "sheets/working_parts.h"

namespace sheets {

Sheet working(const Printed& printed) {
  Sheet sheet;
  sheet.word = "working";
  sheet.title = printed.say("Working");
  sheet.money = true;
  const plan::Heading& heading = printed.job().heading;
  for (const std::string& line : {heading.customer, heading.place})
    if (!line.empty()) sheet.about.push_back(line);
  if (heading.invented) sheet.about.push_back(printed.say("An invented job: its place and its people are made up."));
  if (printed.language != "en") sheet.about.push_back(printed.say("The workings themselves are in English."));
  if (!printed.results->final()) {
    const Framed not_final{printed.say("Not final"),
                           {Said(printed.say("A line has no price, or something below has to be mended first."))},
                           false};
    sheet.passages.push_back({{not_final}});
  }
  if (printed.results->estimate.lines.empty())
    sheet.passages.push_back(
        {{Paragraph{Said(printed.say("Nothing is built yet, so there is nothing to work out."))}}});
  add_stages(printed, sheet);
  add_price(printed, sheet);
  add_assumptions(printed, sheet);
  add_site_plans(printed, sheet);
  add_checks(printed, sheet);
  add_problems(printed, sheet);
  return sheet;
}

}  // namespace sheets
