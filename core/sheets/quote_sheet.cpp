// What the customer is offered: the picture, what is in and what is not, the price at the detail that the office chose,
// what may be added, the terms, and where to sign. Nothing of what it costs the office.
#include "sheets/all_sheets.h"
#include "sheets/quote_parts.h"

namespace sheets {

namespace {

bool nothing_built(const Printed& printed) { return printed.results->estimate.lines.empty(); }

}  // namespace

Sheet quote(const Printed& printed) {
  Sheet sheet;
  sheet.word = "quote";
  sheet.title = printed.say("Quote");
  sheet.money = true;
  const plan::Heading& heading = printed.job().heading;
  if (!heading.customer.empty()) sheet.about.push_back(filled(printed, "For: %1", {heading.customer}));
  if (!heading.place.empty()) sheet.about.push_back(filled(printed, "Place: %1", {heading.place}));
  if (heading.invented)
    sheet.about.push_back(printed.say("An invented job: its place, its people and its prices are made up."));
  if (nothing_built(printed)) {
    sheet.passages.push_back({{Paragraph{Said(printed.say("Nothing is built yet, so there is nothing to quote."))}}});
    return sheet;
  }
  add_picture(printed, sheet);
  add_built(printed, sheet);
  add_not_included(printed, sheet);
  add_price_of(printed, sheet);
  add_options(printed, sheet);
  add_unit_prices(printed, sheet);
  add_payments(printed, sheet);
  add_assumed(printed, sheet);
  add_terms(printed, sheet);
  add_signatures(printed, sheet);
  return sheet;
}

}  // namespace sheets
