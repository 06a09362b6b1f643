
#include "files/actual_text.h"
#include "files/csv.h"
#include "files/sheet_text.h"
#include "units/number.h"

namespace files {

namespace {

using estimate::CatalogueOffer;
using estimate::Offered;

std::string trimmed(double value, int decimals) {
  std::string text = units::show_number(value, decimals);
  if (text.find('.') == std::string::npos) return text;
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text;
}

std::string spread_in_words(const CatalogueOffer& offer) {
  const auto said = [&](double value) { return offered_in_words(offer, value); };
  const estimate::Spread& spread = *offer.spread;
  return "least " + said(spread.least) + ", lower quartile " + said(spread.lower) + ", median " + said(spread.median) +
         ", upper quartile " + said(spread.upper) + ", most " + said(spread.most);
}

}  // namespace

std::string offered_in_words(const CatalogueOffer& offer, double value) {
  if (offer.what == Offered::breakage) return trimmed(value * 100, 2) + " %";
  return trimmed(value, 4) + " h per " + offer.unit;
}

std::string conditions_in_words(const estimate::JobConditions& conditions, units::System system) {
  std::string text;
  const auto say = [&text](const std::string& words) { text += (text.empty() ? "" : "; ") + words; };
  for (const std::string& factor : conditions.factors) say(factor);
  if (conditions.narrowest) say("way in " + units::show_length(*conditions.narrowest, system));
  if (conditions.curved > 0.005) say(trimmed(conditions.curved * 100, 0) + " % of the outlines curved");
  return text.empty() ? "no conditions noted" : text;
}

std::string offers_text(const std::vector<CatalogueOffer>& offers, units::System system) {
  std::string text = wrapped("What closed jobs say against the catalogue. Offered, not set: look at the jobs.", "", 2);
  if (offers.empty()) text += section("Nothing yet") + "No closed job has entries of use or hours.\n";
  for (const CatalogueOffer& offer : offers) {
    text += section((offer.what == Offered::breakage ? "Broken or spoilt: " : "Hours: ") +
                    (offer.name.empty() ? offer.id : offer.name));
    text += wrapped(offered_in_words(offer, offer.now), at_left("Catalogue", 12), 12);
    text += wrapped(offer.offered ? offered_in_words(offer, *offer.offered) + ", " + offer.note : offer.note,
                    at_left("Offered", 12), 12);
    if (offer.spread) text += wrapped(spread_in_words(offer), at_left("Spread", 12), 12);
    for (const estimate::SeenInJob& job : offer.jobs)
      text += wrapped(job.name + ": " + offered_in_words(offer, job.value) + ", " + job.working + "; " +
                          conditions_in_words(job.conditions, system),
                      "  - ", 6);
  }
  return text;
}

std::string offers_csv(const std::vector<CatalogueOffer>& offers, units::System system) {
  std::string text = csv_row(
      {"what", "id", "name", "unit", "catalogue", "offered", "job", "job_name", "value", "working", "conditions"});
  for (const CatalogueOffer& offer : offers)
    for (const estimate::SeenInJob& job : offer.jobs)
      text += csv_row({offer.what == Offered::breakage ? "breakage" : "rate", csv_text(offer.id), csv_text(offer.name),
                       csv_text(offer.unit), units::write_number(offer.now),
                       offer.offered ? units::write_number(*offer.offered) : "", std::to_string(job.job),
                       csv_text(job.name), units::write_number(job.value), csv_text(job.working),
                       csv_text(conditions_in_words(job.conditions, system))});
  return text;
}

}  // namespace files
