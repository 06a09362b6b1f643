#include "estimate/labour.h"

#include <algorithm>
#include <array>
#include <optional>

#include "estimate/factors.h"
#include "estimate/price.h"
#include "estimate/words.h"
#include "units/number.h"

namespace estimate {

using catalogue::Rate;
using problem::Problem;
using problem::Severity;
using takeoff::term;
using takeoff::Working;

namespace {

std::string_view trimmed(std::string_view text) {
  while (text.starts_with(' ')) text.remove_prefix(1);
  while (text.ends_with(' ')) text.remove_suffix(1);
  return text;
}

// "1", "2", "1.5", "1/2".
std::optional<double> heads_of(std::string_view text) {
  const std::size_t slash = text.find('/');
  const auto top = units::read_number(text.substr(0, slash));
  const auto under = slash == std::string_view::npos ? std::optional(1.0) : units::read_number(text.substr(slash + 1));
  if (!top || !under || !(*top > 0) || !(*under > 0)) return std::nullopt;
  return *top / *under;
}

struct SiUnit {
  std::string_view word;
  units::Unit unit;
  double size;  // of `unit`
};
constexpr std::array si_units{
    SiUnit{"m", units::metre, 1},       SiUnit{"m2", units::square_metre, 1}, SiUnit{"m3", units::cubic_metre, 1},
    SiUnit{"t", units::kilogram, 1000}, SiUnit{"kg", units::kilogram, 1},     SiUnit{"h", units::hour, 1},
    SiUnit{"piece", units::piece, 1},   SiUnit{"job", units::piece, 1},       SiUnit{"load", units::piece, 1},
    SiUnit{"pallet", units::piece, 1},
};

std::optional<SiUnit> si_unit(const std::string& word) {
  const auto known = std::ranges::find(si_units, std::string_view(word), &SiUnit::word);
  return known == si_units.end() ? std::nullopt : std::optional(*known);
}

// The tasks of one stage and rate that share a factor.
struct Load {
  double factor = 1;
  std::string condition;
  std::vector<Working> quantities;
};

struct Work {
  takeoff::Stage stage;
  const Rate* rate;
  std::vector<Load> loads;
  std::vector<plan::ElementId> of;

  void add(const takeoff::Task& task) {
    auto known = std::ranges::find_if(
        loads, [&](const Load& load) { return load.factor == task.factor && load.condition == task.condition; });
    if (known == loads.end()) known = loads.insert(loads.end(), {task.factor, task.condition, {}});
    known->quantities.push_back(task.working);
    for (const plan::ElementId& id : task.of)
      if (std::ranges::find(of, id) == of.end()) of.push_back(id);
  }
};

Working hours_of(const Work& work, const SiUnit& unit) {
  const Rate& rate = *work.rate;
  std::vector<Working> parts;
  for (const Load& load : work.loads) {
    Working quantity = load.quantities.size() == 1 ? load.quantities.front() : Working::sum(load.quantities);
    if (unit.size != 1)
      quantity = Working::quotient(std::move(quantity), term("one " + rate.si_unit, unit.size, unit.unit));
    const units::Unit counted_in = quantity.amount().unit;
    std::vector<Working> factors{
        std::move(quantity),
        // A plain count says in the name what it is per, a measure in its unit.
        term(counted_in == units::piece ? "person-hours per " + rate.si_unit : "person-hours", rate.hours_per_si_unit,
             counted_in == units::hour ? units::piece : units::hour / counted_in, rate.id + "/hours_per_si_unit")};
    if (load.factor != 1 || !load.condition.empty())
      factors.push_back(term("factor for " + (load.condition.empty() ? "conditions" : load.condition), load.factor,
                             units::piece, rate.id + "/condition"));
    parts.push_back(Working::product(std::move(factors)));
  }
  return parts.size() == 1 ? parts.front() : Working::sum(std::move(parts));
}

// What an hour of the crew costs, each by the share of heads; nothing where one has no price.
std::optional<double> coins_per_hour(const plan::Job& job, const Rate& rate, const std::vector<Hands>& crew,
                                     const plan::ElementId& of, std::vector<Problem>& problems) {
  double heads = 0, coins = 0;
  bool whole = true;
  for (const Hands& hands : crew) {
    heads += hands.heads;
    const catalogue::Item* item = job.catalogue->item(hands.item);
    const auto price = item && item->unit == "hour" ? coins_of_one(*item) : std::nullopt;
    if (price) {
      coins += hands.heads * *price;
      continue;
    }
    whole = false;
    problems.push_back(
        {Severity::problem,
         item ? "no-price" : "item-unknown",
         item ? "'" + hands.item + "' has no price per hour, so the work '" + rate.name.en + "' is not priced"
              : "the job's catalogue has no '" + hands.item + "' for the work '" + rate.name.en + "'",
         item ? "enter its price per hour in the catalogue" : "choose a crew that it has, or copy it in",
         {of, "", 0, 0, {}}});
  }
  return whole && heads > 0 ? std::optional(coins / heads) : std::nullopt;
}

// "1 Unit layer + 1/2 Labourer"; as it is written where it can't be read.
std::string in_names(const plan::Job& job, const Rate& rate) {
  const auto crew = read_crew(rate.crew);
  if (!crew) return rate.crew;
  std::vector<std::string> names;
  for (const Hands& hands : *crew)
    names.push_back((hands.heads == 0.5 ? "1/2" : in_words(hands.heads)) + " " + name_of(*job.catalogue, hands.item));
  return joined(names, " + ");
}

// Days are those of the people whom the rate names: others of the firm do other work meanwhile.
std::string in_a_sentence(const plan::Job& job, const Rate& rate, double hours) {
  std::string text = counted(hours, "hour") + (rate.crew.empty() ? "" : " by " + in_names(job, rate));
  double heads = 0;
  if (const auto crew = read_crew(rate.crew))
    for (const Hands& hands : *crew) heads += hands.heads;
  const double days = crew_days(hours, heads, job.choices.day_hours);
  if (days > 0)
    text += ": " + counted(days, "day") + " for a crew of " + in_words(heads) + " at " +
            in_words(job.choices.day_hours) + " hours a day";
  if (!rate.source.empty()) text += "; rate: " + rate.source;
  return text;
}

OrderLine line_of(const plan::Job& job, const Work& work, Working hours, std::vector<Problem>& problems) {
  const Rate& rate = *work.rate;
  OrderLine line{work.stage,
                 rate.id,
                 rate.name.en.empty() ? rate.id : rate.name.en,
                 work.of,
                 hours.amount().value,
                 "h",
                 hours.amount().value,
                 "h",
                 {},
                 {},
                 false,
                 true,
                 false,
                 hours,
                 in_a_sentence(job, rate, hours.amount().value)};
  const plan::ElementId of = work.of.empty() ? plan::ElementId() : work.of.front();
  const auto crew = read_crew(rate.crew);
  if (!crew) {
    Problem said = problem::in_element(crew.error(), of);
    said.text = "rate '" + rate.id + "': " + said.text;
    problems.push_back(std::move(said));
    return line;
  }
  if (const auto coins = coins_per_hour(job, rate, *crew, of, problems)) {
    line.unit_price = money_of(*coins);
    line.exact_coins = *coins;
    line.amount = money_of(*coins * line.quantity);
  }
  return line;
}

bool fits(const takeoff::Task& task, const Rate* rate, std::vector<Problem>& problems) {
  const problem::Place place{task.of.empty() ? plan::ElementId() : task.of.front(), "", 0, 0, {}};
  if (!rate) {
    problems.push_back({Severity::problem, "rate-unknown",
                        "the job's catalogue has no labour rate '" + task.rate + "' for: " + task.text,
                        "copy the rate in, or enter one", place});
    return false;
  }
  const auto unit = si_unit(rate->si_unit);
  if (unit && unit->unit == task.working.amount().unit) return true;
  problems.push_back({Severity::problem, "rate-unit",
                      "the labour rate '" + rate->id + "' is per " + rate->si_unit + ", and '" + task.text +
                          "' is counted in " + units::name(task.working.amount().unit),
                      "give the rate per that unit", place});
  return false;
}

}  // namespace

problem::Result<std::vector<Hands>> read_crew(std::string_view text) {
  std::vector<Hands> crew;
  for (std::string_view rest = text;;) {
    const std::size_t plus = rest.find('+');
    const std::string_view part = trimmed(rest.substr(0, plus));
    const std::size_t space = part.find(' ');
    const auto heads = heads_of(part.substr(0, space));
    const std::string_view item = space == std::string_view::npos ? "" : trimmed(part.substr(space));
    if (!heads || item.empty() || item.find(' ') != std::string_view::npos)
      return problem::fault("crew-unknown", "the crew '" + std::string(text) + "' can't be read",
                            "write it as: 1 lab-layer + 1/2 lab-labourer");
    crew.push_back({*heads, std::string(item)});
    if (plus == std::string_view::npos) return crew;
    rest.remove_prefix(plus + 1);
  }
}

double crew_days(double hours, double people, double day_hours) {
  return people > 0 && day_hours > 0 ? hours / (people * day_hours) : 0;
}

std::vector<OrderLine> labour(const plan::Job& job, const std::vector<takeoff::Task>& tasks,
                              std::vector<Problem>& problems) {
  std::vector<Work> all;
  for (const takeoff::Task& task : tasks) {
    const Rate* rate = job.catalogue->rate(task.rate);
    if (!fits(task, rate, problems)) continue;
    auto known =
        std::ranges::find_if(all, [&](const Work& work) { return work.stage == task.stage && work.rate == rate; });
    if (known == all.end()) known = all.insert(all.end(), Work{task.stage, rate, {}, {}});
    known->add(task);
  }
  const std::vector<plan::HoursFactor> factors = hours_factors(job, problems);
  std::vector<OrderLine> lines;
  for (const Work& work : all) {
    Working hours = under_conditions(hours_of(work, *si_unit(work.rate->si_unit)), factors, work.stage);
    lines.push_back(line_of(job, work, std::move(hours), problems));
    lines.back().sentence += conditions_in_words(factors, work.stage);
  }
  return lines;
}

}  // namespace estimate
