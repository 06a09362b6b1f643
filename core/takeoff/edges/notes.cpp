#include "takeoff/edges/notes.h"

#include <optional>

#include "units/number.h"
#include "units/read_length.h"

namespace takeoff::edges {

namespace {

const catalogue::Rate* rate_or_notice(const plan::Job& job, const catalogue::Id& id, const plan::ElementId& element,
                                      Share& share) {
  if (const catalogue::Rate* rate = job.catalogue->rate(id)) return rate;
  share.problems.push_back(notice("rate-missing",
                                  "the catalogue has no rate " + id + ", so these hours are not counted",
                                  "add the rate to the job's catalogue", element));
  return nullptr;
}

// The rate's own words are the only place where such a factor is kept: "joint dry and clean; curves x 1.2".
std::optional<double> curve_factor(const catalogue::Rate& rate) {
  static constexpr std::string_view key = "curves x ";
  const std::size_t at = rate.condition.find(key);
  if (at == std::string::npos) return std::nullopt;
  const std::string rest = rate.condition.substr(at + key.size());
  return units::read_number(rest.substr(0, rest.find_first_not_of("0123456789.")));
}

}  // namespace

const catalogue::Item* wanted(const plan::Job& job, const catalogue::Id& id, const std::string& use,
                              const plan::ElementId& element, Share& share) {
  const catalogue::Item* item = id.empty() ? nullptr : job.catalogue->item(id);
  if (!item) {
    share.problems.push_back(id.empty() ? fault("item-missing", "no item is chosen for " + use, "choose one", element)
                                        : fault("item-missing",
                                                "the item " + id + ", chosen for " + use + ", is not in the catalogue",
                                                "choose another item or add it", element));
  }
  return item;
}

void add_task(const plan::Job& job, const catalogue::Id& rate, Stage stage, const std::string& text,
              const plan::ElementId& element, const RunOfWork& work, Share& share) {
  if (work.straight.amount().value <= 0 && work.curved.amount().value <= 0) return;
  const catalogue::Rate* found = rate_or_notice(job, rate, element, share);
  if (!found) return;
  if (work.straight.amount().value > 0) share.tasks.push_back({stage, rate, text, {element}, work.straight, 1, {}});
  if (work.curved.amount().value <= 0) return;
  const std::optional<double> factor = curve_factor(*found);
  share.tasks.push_back(
      {stage, rate, text + ", on curves", {element}, work.curved, factor.value_or(1), factor ? "curves" : ""});
}

void add_task(const plan::Job& job, const catalogue::Id& rate, Stage stage, const std::string& text,
              const plan::ElementId& element, const Working& work, Share& share) {
  if (work.amount().value <= 0 || !rate_or_notice(job, rate, element, share)) return;
  share.tasks.push_back({stage, rate, text, {element}, work, 1, {}});
}

double limit_inches(const plan::Job& job, const catalogue::Id& id, Bound bound, double otherwise_inches) {
  const auto found = job.catalogue->limits.find(id);
  double inches = otherwise_inches;
  if (found != job.catalogue->limits.end() && found->second.unit == "in") {
    inches = (bound == Bound::least ? found->second.least : found->second.greatest).value_or(otherwise_inches);
  }
  return inches * units::metres_per_inch;
}

void add_weight(const plan::Job& job, const catalogue::Item& item, std::int64_t count, const plan::ElementId& element,
                Share& share) {
  const auto found = job.catalogue->limits.find("lift-person");
  const double pounds = found != job.catalogue->limits.end() ? found->second.greatest.value_or(51) : 51;
  if (!item.mass_kg || *item.mass_kg <= pounds * units::kilograms_per_pound || count <= 0) return;
  share.facts.push_back("heavy-unit");
  const bool us = job.heading.units == units::System::us;
  const auto weight = [us](double kilograms) {
    return us ? units::show_number(kilograms / units::kilograms_per_pound, 0) + " lb"
              : units::show_number(kilograms, 1) + " kg";
  };
  share.problems.push_back(flag("heavy-unit",
                                std::to_string(count) + (count == 1 ? " piece of " : " pieces of ") + item.id +
                                    (count == 1 ? " weighs " : " weigh ") + weight(*item.mass_kg) +
                                    (count == 1 ? "" : " each") + ", over the " +
                                    weight(pounds * units::kilograms_per_pound) + " for one person",
                                "lift by two or by machine: the crew lead decides", element));
}

std::string shown(const plan::Job& job, double metres) {
  return units::show_length(units::Length::nearest(units::Metres(metres)), job.heading.units);
}

}  // namespace takeoff::edges
