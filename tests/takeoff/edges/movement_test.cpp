#include "takeoff/edges/movement.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using units::Length;

geometry::Point at(long x, long y) { return {Length::inches(x), Length::inches(y)}; }

// A deck of slabs 12 x 12 in without joints, bound on a slab, from (0, 0) to feet_x x feet_y.
takeoff::Share joints_of(long feet_x, long feet_y) {
  auto all = std::make_shared<catalogue::Catalogue>();
  const auto put = [&all](const char* id, const char* kind, long size) {
    catalogue::Item item;
    item.id = id;
    item.kind = kind;
    item.length = item.width = item.height = Length::inches(size);
    item.joint = Length();
    if (item.kind == "rod") item.details["diameter_mm"] = "15.875";
    all->items[id] = std::make_shared<const catalogue::Item>(item);
  };
  put("slab", "slab", 12);
  put("rod", "rod", 1);
  put("seal", "sealant", 1);
  catalogue::Pattern stack;
  stack.id = "stack";
  stack.cell_x = {catalogue::CellSide::Of::module_length, 1, {}};
  stack.cell_y = {catalogue::CellSide::Of::module_width, 1, {}};
  stack.pieces = {{"unit", 0, 0, 1, 1}};
  all->patterns["stack"] = stack;
  catalogue::Layer bed;
  bed.role = "mortar";
  bed.item = "mortar";
  all->build_ups["bound"] = {"bound", "paving", {}, "", "", "", {bed}};
  catalogue::Junction row;
  row.side_a = "paving";
  row.side_b = "coping";
  row.sealant = "seal";
  all->junctions = {row};
  plan::PavedArea area;
  area.outline = {{{{at(0, 0), 0, {}},
                    {at(12 * feet_x, 0), 0, {}},
                    {at(12 * feet_x, 12 * feet_y), 0, {}},
                    {at(0, 12 * feet_y), 0, {}}},
                   {}}};
  area.build_up = "bound";
  area.laying = plan::Laying{"stack", {{"unit", "slab"}}, at(0, 0), {}, {}};
  plan::Job job;
  job.catalogue = all;
  job = plan::with(job, {"A1", "", area});
  const plan::Site site = plan::site(job);
  return takeoff::edges::movement(job, takeoff::paving::lay_area(job, site, *site.grounds[0]));
}

}  // namespace

// 24 x 36 ft with joints at most 12 ft apart: one line of 36 ft across the short way, two of 24 ft across the long: 84
// ft.
TEST(Movement, aGridNoPartOfWhichIsTooLong) {
  const takeoff::Share share = joints_of(24, 36);
  EXPECT_NEAR(*share.measures.get("movement_joint_m") / 0.3048, 84, 1e-6);
  ASSERT_EQ(share.lines.size(), 2u);
  EXPECT_EQ(share.lines[0].item, "rod");
  // Sealant 1/2 in wide and 1/4 in deep (half the width): 84 ft x 12 x 1/2 x 1/4 = 126 cubic inches.
  EXPECT_NEAR(share.lines[1].working.amount().value, 126 * std::pow(0.0254, 3), 1e-9);
}

TEST(Movement, aSmallDeckHasNone) {
  const takeoff::Share share = joints_of(12, 12);
  EXPECT_EQ(*share.measures.get("movement_joint_m"), 0);
  EXPECT_TRUE(share.lines.empty());
}
