#include "sheets/plan_figure.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "demo.h"
#include "sheets/parts.h"

namespace {

using sheets::Figure;
using sheets::Material;

template <class T>
std::vector<const T*> all(const Figure& figure) {
  std::vector<const T*> found;
  for (const sheets::Part& part : figure.parts)
    if (const auto* it = std::get_if<T>(&part)) found.push_back(it);
  return found;
}

const Figure& finished() {
  static const Figure figure = sheets::plan_figure(demo::results(), {});
  return figure;
}

TEST(PlanFigure, EveryFieldOfUnitsSharesTheTakeoffsOwnLayout) {
  const auto fields = all<sheets::Units>(finished());
  ASSERT_EQ(fields.size(), demo::results().takeoff.layouts.size());
  for (const sheets::Units* field : fields) EXPECT_EQ(field->layout, demo::results().takeoff.layouts.at(field->of));
}

TEST(PlanFigure, EachElementThatTakesGroundHasItsTag) {
  for (const auto& ground : demo::results().site.grounds) {
    if (ground->net.empty()) continue;
    const auto tags = all<sheets::Mark>(finished());
    const auto own = std::ranges::count_if(tags, [&](const sheets::Mark* mark) {
      return mark->sign == sheets::Sign::tag && mark->of == ground->element->id;
    });
    EXPECT_EQ(own, 1) << ground->element->id;
  }
}

}  // namespace
