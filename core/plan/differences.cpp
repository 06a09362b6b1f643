#include "plan/differences.h"

#include <algorithm>
#include <map>

namespace plan {

namespace {

std::map<ElementId, const Element*> by_id(const Job& job) {
  std::map<ElementId, const Element*> all;
  for (const ElementPtr& element : job.elements) all.emplace(element->id, element.get());
  return all;
}

// Ids that both have, as they come in `job`.
std::vector<ElementId> shared(const Job& job, const std::map<ElementId, const Element*>& other) {
  std::vector<ElementId> ids;
  for (const ElementPtr& element : job.elements)
    if (other.contains(element->id)) ids.push_back(element->id);
  return ids;
}

struct Told {
  const Job& before;
  const Job& after;
  Differences made;

  ElementDifference of(Differs how, const Element& element, std::vector<std::string> what = {}) const {
    return {how, element.id, element.name, kind_name(element.kind), std::move(what)};
  }

  void elements() {
    const auto old = by_id(before);
    const auto now = by_id(after);
    for (const ElementPtr& element : after.elements) {
      const auto found = old.find(element->id);
      if (found == old.end()) {
        made.elements.push_back(of(Differs::added, *element));
      } else if (found->second != element.get()) {
        if (auto what = what_differs(*found->second, *element); !what.empty())
          made.elements.push_back(of(Differs::changed, *element, std::move(what)));
      }
    }
    for (const ElementPtr& element : before.elements)
      if (!now.contains(element->id)) made.elements.push_back(of(Differs::gone, *element));
    if (shared(before, now) != shared(after, old)) made.job.emplace_back("order of drawing");
  }

  template <class Value>
  void say(const char* words, const Value& a, const Value& b) {
    if (!(a == b) && std::ranges::find(made.job, words) == made.job.end()) made.job.emplace_back(words);
  }

  void heading() {
    const Heading &a = before.heading, &b = after.heading;
    say("name", a.name, b.name);
    say("number", a.number, b.number);
    say("customer", a.customer, b.customer);
    say("place", a.place, b.place);
    say("notes", a.notes, b.notes);
    say("units", a.units, b.units);
    say("currency", a.currency, b.currency);
    say("currency", a.decimals, b.decimals);
    say("invented", a.invented, b.invented);
    say("datum", before.datum, after.datum);
  }

  void choices() {
    const Choices &a = before.choices, &b = after.choices;
    say("reach of the junctions", a.reach, b.reach);
    say("offcuts used again", a.reuse, b.reuse);
    say("least cut piece", a.sliver_share, b.sliver_share);
    say("least cut piece", a.sliver_width, b.sliver_width);
    say("saw", a.kerf, b.kerf);
    say("saw", a.saw, b.saw);
    say("tolerance of the start", a.start_tolerance, b.start_tolerance);
    say("soil", a.soil, b.soil);
    say("truck", a.truck, b.truck);
    say("disposal", a.disposal, b.disposal);
    say("access", a.access, b.access);
    say("crew", a.crew, b.crew);
    say("hours of a day", a.day_hours, b.day_hours);
    say("spare units", a.count_attic, b.count_attic);
    say("spare units", a.attic_share, b.attic_share);
    say("firmness of the ground", a.cbr, b.cbr);
    say("infiltration", a.infiltration_counts, b.infiltration_counts);
    say("infiltration", a.infiltration_m_s, b.infiltration_m_s);
    say("infiltration", a.infiltration_source, b.infiltration_source);
    say("rain", a.rain_mm_h, b.rain_mm_h);
    say("rain", a.rain_source, b.rain_source);
    say("stages of lines", before.stage_moves, after.stage_moves);
    say("hold points seen", before.looked_at, after.looked_at);
  }

  void offer() {
    const Offer &a = before.offer, &b = after.offer;
    say("factors on hours", a.factors, b.factors);
    say("added lines", a.lines, b.lines);
    say("overhead", a.overhead, b.overhead);
    say("contingency", a.contingency, b.contingency);
    say("profit", a.profit, b.profit);
    say("profit", a.profit_as, b.profit_as);
    say("how shares are counted", a.chained, b.chained);
    say("tax", a.tax, b.tax);
    say("tax", a.taxed, b.taxed);
    say("rounding of the price", a.round_to, b.round_to);
    say("date of the quote", a.date, b.date);
    say("validity", a.valid_days, b.valid_days);
    say("basis", a.basis, b.basis);
    say("terms", a.terms, b.terms);
    say("cancellation notice", a.cancellation, b.cancellation);
    say("exclusions and assumptions", a.statements, b.statements);
    say("unit prices", a.unit_prices, b.unit_prices);
    say("payments", a.payments, b.payments);
    say("options", a.options, b.options);
    say("enquiry", before.enquiry, after.enquiry);
    say("site visit", before.visit, after.visit);
  }

  template <class Value>
  void rows(const char* word, const std::map<Id, Value>& a, const std::map<Id, Value>& b) {
    const auto tell = [&](const Id& id) { made.catalogue.push_back(std::string(word) + " " + id); };
    for (const auto& [id, value] : a) {
      const auto found = b.find(id);
      if (found == b.end() || !(found->second == value)) tell(id);
    }
    for (const auto& [id, value] : b)
      if (!a.contains(id)) tell(id);
  }

  void items(const catalogue::Catalogue& a, const catalogue::Catalogue& b) {
    std::map<Id, catalogue::Item> old, now;  // without what is told apart
    for (const auto& [id, item] : a.items) old.emplace(id, *item);
    for (const auto& [id, item] : b.items) now.emplace(id, *item);
    for (auto& [id, item] : old) {
      const auto found = now.find(id);
      if (found == now.end() || item.price == found->second.price) continue;
      made.prices.push_back(id);
      item.price = found->second.price;
    }
    rows("item", old, now);
  }

  void catalogues() {
    if (before.catalogue == after.catalogue || !before.catalogue || !after.catalogue) return;
    const catalogue::Catalogue &a = *before.catalogue, &b = *after.catalogue;
    items(a, b);
    rows("pattern", a.patterns, b.patterns);
    rows("build-up", a.build_ups, b.build_ups);
    rows("limit", a.limits, b.limits);
    rows("rate", a.rates, b.rates);
    rows("supplier", a.suppliers, b.suppliers);
    if (a.junctions != b.junctions) made.catalogue.emplace_back("junctions");
    if (a.hold_points != b.hold_points) made.catalogue.emplace_back("hold points");
    if (a.cautions != b.cautions) made.catalogue.emplace_back("cautions");
    if (a.site_rules != b.site_rules) made.catalogue.emplace_back("site rules");
    if (a.note != b.note) made.catalogue.emplace_back("note");
  }
};

}  // namespace

Differences differences(const Job& before, const Job& after) {
  Told told{before, after, {}};
  told.heading();
  told.choices();
  told.offer();
  told.elements();
  told.catalogues();
  return std::move(told.made);
}

}  // namespace plan
