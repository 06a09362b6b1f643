#include "results/options.h"

#include <algorithm>

#include "problem/ensure.h"

namespace results {

plan::Job with_option(const plan::Job& job, const plan::Option& option) {
  plan::Job made = job;
  for (const plan::ElementId& id : option.without) made = plan::without(made, id);
  for (const plan::ElementPtr& element : option.elements)
    if (element) made = plan::with(made, *element);
  for (const plan::AddedLine& line : option.lines) {
    auto& lines = made.offer.lines;
    const auto known = std::ranges::find(lines, line.id, &plan::AddedLine::id);
    if (known == lines.end())
      lines.push_back(line);
    else
      *known = line;
  }
  return made;
}

std::vector<OptionPrice> option_prices(const Results& base) {
  problem::ensure(base.job != nullptr, "options are priced beside a base that was worked out");
  std::vector<OptionPrice> all;
  Memory memory;
  for (const plan::Option& option : base.job->offer.options) {
    const Results with = compute(std::make_shared<const plan::Job>(with_option(*base.job, option)), memory);
    OptionPrice made{option.id,
                     with.priced.direct - base.priced.direct,
                     with.priced.price - base.priced.price,
                     with.priced.total - base.priced.total,
                     with.estimate.total.hours - base.estimate.total.hours,
                     base.final() && with.final(),
                     {}};
    for (const plan::ElementId& id : option.without)
      if (!base.job->find(id))
        made.problems.push_back({problem::Severity::problem,
                                 "option-element",
                                 "the option '" + option.name + "' takes away '" + id + "', which is not on the plan",
                                 "take it out of the option",
                                 {}});
    made.final = made.final && made.problems.empty();
    all.push_back(std::move(made));
  }
  return all;
}

}  // namespace results
