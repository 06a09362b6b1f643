// The starter catalogue holds together: weights follow from sizes, packs from pieces, patterns cover the plane,
// references hold, and what was published comes out.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <set>

#include "catalogue/pattern.h"
#include "files/starter.h"

namespace files {
namespace {

using catalogue::Item;
using units::Length;

const Item& item(const std::string& id) {
  const Item* found = starter().item(id);
  if (found == nullptr) throw std::runtime_error("no item " + id);
  return *found;
}

double metres(const std::optional<Length>& length) { return length.value().metres().si(); }
double price(const std::string& id) { return static_cast<double>(item(id).price->amount.coins()); }

// Box less voids, in cubic metres.
double solid(const Item& of) {
  return metres(of.length) * metres(of.width) * metres(of.height) * (1 - of.void_share.value_or(0));
}

TEST(Starter, SaysThatItIsInvented) {
  EXPECT_NE(starter().note.find("invented, brandless"), std::string::npos);
  for (const auto& [path, text] : starter_texts_on_disk()) {
    EXPECT_EQ(text.find(".md"), std::string::npos) << path;
    EXPECT_NE(text.rfind("\xEF\xBB\xBF", 0), 0u) << path;
  }
}

TEST(Starter, AFileThatIsMissingOrBrokenIsNamed) {
  for (const auto& [path, text] : starter_texts_on_disk()) {
    if (!path.ends_with(".csv")) continue;
    auto texts = starter_texts_on_disk();
    texts.erase(path);
    const auto missing = read_starter(texts);
    ASSERT_FALSE(missing) << path;
    EXPECT_EQ(missing.error().place.file, path);
    texts[path] = text + "one cell\r\n";
    const auto broken = read_starter(texts);
    EXPECT_TRUE(path == "catalogue/note.csv" || !broken) << path;
  }
  auto texts = starter_texts_on_disk();
  texts["patterns/stack.json"] = "{";
  EXPECT_FALSE(read_starter(texts));
  texts = starter_texts_on_disk();
  texts["catalogue/build-up-layers.csv"] += "dense-foot,5,base,agg-none,100,0,,common practice,\r\n";
  const auto lost = read_starter(texts);
  ASSERT_FALSE(lost);
  EXPECT_NE(problem::sentence(lost.error()).find("column item: there is no item agg-none"), std::string::npos);
}

TEST(Starter, WeightsFollowFromSizes) {
  const std::set<std::string> solid_kinds{"paving-unit", "slab",       "permeable-unit", "clay-unit", "coping",
                                          "kerb-unit",   "tread",      "edging-unit",    "step-unit", "wall-block",
                                          "cap",         "pillar-cap", "pillar-block",   "seat-block"};
  for (const auto& [id, of] : starter().items) {
    ASSERT_EQ(of->density_kg_m3.has_value(), solid_kinds.contains(of->kind)) << id;
    // Weights are written to 0.01 kg, so half of that.
    if (of->density_kg_m3) {
      EXPECT_NEAR(solid(*of) * *of->density_kg_m3, *of->mass_kg, 0.0051) << id;
    }
  }
  for (const auto& [id, of] : starter().items)
    if (of->pack.pieces > 0 && of->mass_kg && of->pack.kind == "pallet" && of->density_kg_m3) {
      // A pallet that a fork lifts and a truck carries: common practice.
      EXPECT_GE(of->pack.pieces * *of->mass_kg, 750) << id;
      EXPECT_LE(of->pack.pieces * *of->mass_kg, 1900) << id;
    }
}

TEST(Starter, PublishedWeights) {
  const double at_150 = 150 * 16.0184634 / 2300;  // lb/cu ft for the density of the rows
  // 8 x 4 x 2-3/8 in at 150 lb/cu ft: 76/1728 cu ft x 150 = 6.60 lb.
  EXPECT_NEAR(*item("unit-8x4-full-60").mass_kg / units::kilograms_per_pound * at_150, 6.60, 0.02);
  // No. 3 and 4 bars, from memory of ASTM A615: 0.376 and 0.668 lb/ft.
  EXPECT_NEAR(*item("rebar-3").mass_kg, 20 * 0.376 * units::kilograms_per_pound, 0.006);
  EXPECT_NEAR(*item("rebar-4").mass_kg, 20 * 0.668 * units::kilograms_per_pound, 0.006);
  // Trade rule, 110 lb per sq yd per inch: x 4/3 = 146.67 lb/cu ft.
  EXPECT_NEAR(*item("agg-dense").number("compacted_density_kg_m3"), 110 * 4.0 / 3 * 16.0184634, 0.1);
  // US Navy course 14070, table 10-1, as quoted: sand 111 loose for 95 compacted.
  const Item& sand = item("agg-sand-c33");
  EXPECT_NEAR(*sand.number("compacted_density_kg_m3") / *sand.number("loose_density_kg_m3"), 111.0 / 95, 2e-4);
}

TEST(Starter, StoneIsHeavierPlacedThanLooseAndItsVoidsFit) {
  int stones = 0;
  for (const auto& [id, of] : starter().items) {
    const auto loose = of->number("loose_density_kg_m3"), placed = of->number("compacted_density_kg_m3");
    if (!loose || !placed) continue;
    ++stones;
    EXPECT_GT(*placed, *loose) << id;
    EXPECT_FALSE(of->details.contains("loose_per_compacted")) << id;
    // Solid stone of 2650 kg/m3; densities are rounded to 10, porosity to 0.01 (26.5).
    if (const auto porosity = of->number("porosity")) {
      EXPECT_NEAR(2650 * (1 - *porosity), *placed, 25) << id;
    }
  }
  EXPECT_EQ(stones, 10);
}

TEST(Starter, PacksCoverWhatTheirPiecesCover) {
  // 450 modules of 8 x 4 in are 100 sq ft; 495 clay units of 4 x 8 in laid tight are 110.
  EXPECT_NEAR(450 * catalogue::module_area(item("unit-4x8-60")).si(), 100 * units::square_metres_per_square_foot, 1e-9);
  EXPECT_NEAR(495 * catalogue::module_area(item("clay-full-2.25")).si(), 110 * units::square_metres_per_square_foot,
              1e-9);
  int mixed = 0;
  for (const auto& [id, of] : starter().items) {
    if (of->kind != "mixed-pack") continue;
    ++mixed;
    double area = 0, coins = 0;
    for (const auto& content : of->contents) {
      area += content.pieces * catalogue::module_area(item(content.item)).si();
      coins += content.pieces * catalogue::price_of_one(item(content.item))->coins;
    }
    EXPECT_NEAR(*of->number("pack_area_m2"), area, 1e-9) << id;
    // Invented prices: a pack costs what its pieces do, within 6 %.
    EXPECT_NEAR(coins / catalogue::price_of_one(*of)->coins, 1, 0.06) << id;
  }
  EXPECT_EQ(mixed, 3);
}

TEST(Starter, TheBrickPatio) {
  // Brick Industry Association, Seven Easy Steps part 2: 10 x 20 ft, 900 units; +5 % is 945; +1.5 a foot of 60 ft edge
  // is 1035.
  const double count = 200 * units::square_metres_per_square_foot / catalogue::module_area(item("clay-full-2.25")).si();
  EXPECT_NEAR(count, 900, 1e-9);
  EXPECT_NEAR(count * (1 + item("clay-full-2.25").breakage), 945, 1e-9);
  EXPECT_NEAR(count * (1 + item("clay-full-2.25").breakage) + 1.5 * 60, 1035, 1e-9);
}

TEST(Starter, CurvedAndTaperedPieces) {
  const auto ring = [](const char* id, const char* one, const char* other, double nose) {
    const Item& of = item(id);
    const double a = metres(of.length_of(one)), b = metres(of.length_of(other));
    const double turn = *of.number("turn_deg") * std::numbers::pi / 180;
    const double sector = std::abs(a * a - b * b) / 2 * turn * metres(of.height) * (1 - nose);
    EXPECT_NEAR(sector / solid(of), 1, 3e-4) << id;  // void shares have four decimals
    EXPECT_NEAR(2 * std::max(a, b) * std::sin(turn / 2), metres(of.length), 0.0016)
        << id;  // length to the next 1/16 in
  };
  for (const char* id : {"cop-out-5", "cop-out-8", "cop-in-5", "cop-in-8"})
    ring(id, "nose_radius_mm", "back_radius_mm", 0.02);
  // 16 in front, 10 in back, 12 in deep turn on 16 x 12 / (16 - 10) = 32 in.
  EXPECT_NEAR(item("wb-6x16-taper").length_of("min_outside_radius_mm")->inches(), 32, 1e-9);
  int tapered = 0;
  for (const auto& [id, of] : starter().items) {
    if (!of->length_of("min_outside_radius_mm")) continue;
    const double front = metres(of->length), back = metres(of->length_of("back_length_mm")), depth = metres(of->width);
    EXPECT_NEAR(front * depth / (front - back), metres(of->length_of("min_outside_radius_mm")), 1e-4) << id;
    ++tapered;
  }
  EXPECT_EQ(tapered, 4);
}

TEST(Starter, RollsAndTubes) {
  for (const auto& [id, of] : starter().items)
    if (const auto grams = of->number("mass_g_m2")) {
      EXPECT_NEAR(metres(of->length) * metres(of->width) * *grams / 1000, *of->mass_kg, 0.006) << id;
    }
  const std::pair<const char*, double> ounces[] = {{"adh-10", 10.1},     {"adh-28", 28},       {"seal-tube-10", 10.1},
                                                   {"seal-tube-29", 29}, {"seal-saus-20", 20}, {"seal-pail-192", 192},
                                                   {"seal-primer", 16}};
  for (const auto& [id, count] : ounces)
    EXPECT_NEAR(*item(id).number("volume_l") / 1000, count * units::cubic_metres_per_fluid_ounce, 1e-9) << id;
}

TEST(Starter, HerringboneFitsWhereItIsSaid) {
  const auto fit = [](const Item& of, const char* limit) {
    const catalogue::Limit& joints = starter().limits.at(limit);
    const auto inches = [](double value) { return Length::nearest(units::Metres(value * units::metres_per_inch)); };
    return catalogue::herringbone_fit(*of.length, *of.width, inches(*joints.least), inches(*joints.greatest));
  };
  int said = 0;
  for (const auto& [id, of] : starter().items) {
    if ((of->rule + of->notes).find("lays herringbone") == std::string::npos) continue;
    ++said;
    EXPECT_EQ(of->length->steps(), (2 * *of->width + *of->joint).steps()) << id;  // L = 2 W + j
    const char* limit = of->kind == "clay-unit"        ? "joint-clay"
                        : of->kind == "permeable-unit" ? "joint-permeable"
                                                       : "joint-interlocking";
    EXPECT_TRUE(fit(*of, limit).fits) << id;
  }
  EXPECT_EQ(said, 7);
  // 8 x 4 in full size at exactly 1/8 in: g = 3/16 in, over it.
  const Item& full = item("unit-8x4-full-60");
  EXPECT_FALSE(catalogue::herringbone_fit(*full.length, *full.width, *full.joint, *full.joint).fits);
}

// Which item lies where, the names being the pattern's sizes.
const std::map<std::string, std::map<std::string, std::string>>& examples() {
  static const std::map<std::string, std::map<std::string, std::string>> all{
      {"stack", {{"unit", "slab-16x16-50"}}},
      {"running-half", {{"unit", "unit-6x9-60"}}},
      {"running-third", {{"unit", "unit-4x12-80"}}},
      {"herringbone-90", {{"unit", "unit-4x8-60"}}},
      {"herringbone-45", {{"unit", "unit-4x8-60"}}},
      {"basket-2", {{"unit", "unit-4x8-60"}}},
      {"mixed-three", {{"small", "unit-6x6-60"}, {"middle", "unit-6x9-60"}, {"large", "unit-9x9-60"}}},
      {"mixed-four",
       {{"half", "unit-6x12-60"}, {"small", "slab-12x12-60"}, {"middle", "slab-12x18-60"}, {"large", "slab-18x18-60"}}},
      {"mixed-plank", {{"short", "unit-4x8-80"}, {"middle", "unit-4x12-80"}, {"long", "unit-4x16-80"}}}};
  return all;
}

double side(const catalogue::CellSide& cell, const Item& of) {
  using Of = catalogue::CellSide::Of;
  if (cell.of == Of::fixed) return cell.fixed.inches();
  return (*(cell.of == Of::module_length ? of.length : of.width) + *of.joint).inches() / cell.parts;
}

TEST(Starter, PatternsCoverThePlaneAndFitTheirUnits) {
  ASSERT_EQ(starter().patterns.size(), examples().size());
  for (const auto& [id, pattern] : starter().patterns) {
    std::map<std::pair<int, int>, int> owner;  // cell -> number of the piece that covers it
    int placed = 0, twice = 0;
    for (int b = -30; b <= 60; ++b)
      for (int a = -80; a <= 80; ++a)
        for (const auto& piece : pattern.pieces) {
          ++placed;
          for (int x = 0; x < piece.w; ++x)
            for (int y = 0; y < piece.h; ++y) {
              const int at_x = a * pattern.along + b * pattern.across_x + piece.x + x,
                        at_y = b * pattern.across_y + piece.y + y;
              if (at_x < 0 || at_x >= 36 || at_y < 0 || at_y >= 36) continue;
              if (!owner.emplace(std::pair(at_x, at_y), placed).second) ++twice;
            }
        }
    EXPECT_EQ(owner.size(), 36u * 36u) << id;
    EXPECT_EQ(twice, 0) << id;
    int crosses = 0;
    for (int x = 1; x < 36; ++x)
      for (int y = 1; y < 36; ++y)
        if (std::set{owner[{x, y}], owner[{x - 1, y}], owner[{x, y - 1}], owner[{x - 1, y - 1}]}.size() == 4) ++crosses;
    if (id.starts_with("mixed")) {
      EXPECT_EQ(crosses, 0) << id;
    }
    if (id == "stack") {
      EXPECT_EQ(crosses, 35 * 35);  // every inner corner of the window
    }
    for (const auto& piece : pattern.pieces) {
      const Item& of = item(examples().at(id).at(piece.size));
      double w = piece.w * side(pattern.cell_x, of), h = piece.h * side(pattern.cell_y, of);
      if (w < h) std::swap(w, h);
      EXPECT_NEAR(w, (*of.length + *of.joint).inches(), 1e-9) << id << " " << piece.size;
      EXPECT_NEAR(h, (*of.width + *of.joint).inches(), 1e-9) << id << " " << piece.size;
    }
    EXPECT_EQ(pattern.herringbone, id.starts_with("herringbone")) << id;
  }
  EXPECT_EQ(starter().pattern("herringbone-45")->direction.degrees(), 45);
}

TEST(Starter, TheRodIsTheSmallestStockSizeThatDoes) {
  int rods = 0;
  for (const auto& junction : starter().junctions) {
    if (junction.rod.empty()) continue;
    ++rods;
    std::string best;
    double best_mm = 1e9;
    for (const auto& [id, of] : starter().items)
      if (of->kind == "rod") {
        const double diameter = *of->number("diameter_mm");
        if (diameter >= 1.25 * junction.joint->millimetres() - 1e-9 && diameter < best_mm)
          best = id, best_mm = diameter;
      }
    EXPECT_EQ(junction.rod, best) << junction.id;
  }
  EXPECT_EQ(rods, 7);
}

TEST(Starter, PricesStandInOrder) {
  const std::pair<const char*, const char*> dearer[] = {
      {"unit-4x8-60", "unit-4x8-80"}, {"unit-6x9-60", "unit-6x9-80"},   {"cop-bull-6", "cop-bull-12"},
      {"cop-bull-12", "cop-bull-24"}, {"step-6x16x36", "step-6x16x48"}, {"joint-sand", "joint-polymer"},
      {"agg-dust", "agg-dense"},      {"agg-dense", "agg-no57"},        {"lab-labourer", "lab-layer"},
      {"lab-layer", "lab-foreman"},   {"truck-5", "truck-tandem"},      {"saw-hand-14", "saw-table-20"}};
  for (const auto& [less, more] : dearer) EXPECT_LT(price(less), price(more)) << less;
  EXPECT_LT(price("seal-tube-29") / 29, price("seal-tube-10") / 10.1);
  EXPECT_EQ(price("pallet-credit"), -price("pallet-deposit"));
  for (const auto& [id, of] : starter().items) {
    ASSERT_TRUE(of->price) << id;
    EXPECT_TRUE(catalogue::price_of_one(*of)) << id << " per " << of->price->unit;
  }
}

TEST(Starter, WeepsSayWhatPassesRain) {
  std::map<std::string, std::string> passes;
  for (const auto& [id, of] : starter().items)
    if (of->kind == "weep") {
      passes[of->details.at("kind")] = of->details.at("passes_rain");
      EXPECT_GT(of->length_of("spacing_mm").value(), Length()) << id;
      EXPECT_EQ(of->number("opening_mm2").value() > 0, of->details.at("kind") != "cord-left") << id;
    }
  const std::map<std::string, std::string> expected{{"cord-left", "no"},   {"cord-pulled", "no"}, {"hole", "yes"},
                                                    {"open-joint", "yes"}, {"strip", "yes"},      {"tube", "yes"}};
  EXPECT_EQ(passes, expected);
  EXPECT_EQ(item("weep-cord").length_of("spacing_mm"), starter().length_limit("weep-spacing", {}));
  // 1 in round: pi / 4 x 25.4^2 = 506.7075 mm2.
  EXPECT_NEAR(*item("weep-hole-1").number("opening_mm2"), std::numbers::pi / 4 * 25.4 * 25.4, 1e-4);
}

TEST(Starter, LimitsAsPublished) {
  const auto inches = [](const char* id) { return starter().length_limit(id, {}).inches(); };
  // Construction Tolerances and Recommendations for Interlocking Concrete Pavements: joints 1/16 to 3/16, base 4 in on
  // foot, bedding 1 in, no cut under 3/8 in.
  EXPECT_EQ(*starter().limits.at("joint-interlocking").least, 1.0 / 16);
  EXPECT_EQ(*starter().limits.at("joint-interlocking").greatest, 3.0 / 16);
  EXPECT_EQ(inches("base-foot"), 4);
  EXPECT_EQ(inches("bedding-sand"), 1);
  EXPECT_EQ(inches("cut-least-foot"), 3.0 / 8);
  // COMAR 10.17.01.22: 1/4 to 1/2 in per ft. IRC R311.7.5: risers to 7-3/4 in.
  EXPECT_EQ(*starter().limits.at("fall-deck").least, 0.25);
  EXPECT_EQ(*starter().limits.at("riser-dwelling").greatest, 7.75);
  // House values: slivers 2 in, flat of a tapered coping piece 1/8 in, bonding line 21 in, draw-down 48 h.
  EXPECT_EQ(inches("sliver-width"), 2);
  EXPECT_EQ(inches("coping-flat"), 1.0 / 8);
  EXPECT_EQ(inches("bonding-out"), 21);
  EXPECT_EQ(starter().number_limit("draw-down", 0), 48);
  for (const auto& [id, limit] : starter().limits) EXPECT_TRUE(limit.least || limit.greatest || limit.usual) << id;
}

TEST(Starter, PublishedRates) {
  const auto hours = [](const char* id) { return starter().rate(id)->hours_per_si_unit; };
  // PICP Basic Productivity Estimates, Interlocking Concrete Pavement Magazine, February 2011: stone by barrow 1 ton an
  // hour, by loader 2.5; bedding 100 sq ft an hour. Rates are written to five decimals.
  EXPECT_NEAR(hours("base-barrow"), 1000 / units::kilograms_per_short_ton, 1e-5);
  EXPECT_NEAR(hours("base-machine"), 1000 / units::kilograms_per_short_ton / 2.5, 1e-5);
  EXPECT_NEAR(hours("screed"), 1 / units::square_metres_per_square_foot / 100, 1e-5);
  // NAVFAC P-405 as quoted in Navy course 14045: 160 man-hours per 1,000 sq ft; 448 sq ft are 71.68.
  EXPECT_NEAR(hours("cmu-mortared") * 448 * units::square_metres_per_square_foot, 71.68, 1e-3);
  for (const auto& [id, rate] : starter().rates) {
    for (std::size_t at = rate.crew.find("lab-"); at != std::string::npos; at = rate.crew.find("lab-", at + 1)) {
      const std::string who = rate.crew.substr(at, rate.crew.find(' ', at) - at);
      EXPECT_NE(starter().item(who), nullptr) << id << ": " << who;
    }
    EXPECT_TRUE(std::set<std::string>({"m", "m2", "m3", "t", "piece", "job", "load", "pallet"}).contains(rate.si_unit))
        << id;
  }
}

TEST(Starter, HoldPointsOfEveryStageAndOnlyKnownRules) {
  const std::set<std::string> known{
      "always",     "pool",       "coping",        "building",       "dig",          "base",         "open-base",
      "dense-base", "wall",       "pipe",          "sleeve",         "bonding",      "slab",         "sealed-joint",
      "polymer",    "laid-units", "bedding",       "removal",        "sand-bedding", "open-bedding", "overlay",
      "trench",     "deep-dig",   "water-feature", "firm-formation", "infiltrates",  "tree",         "cuts",
      "heavy-unit", "steps",      "pillar",        "reinforcement",  "retaining",    "kerb"};
  std::set<std::string> stages, rules;
  for (const auto& point : starter().hold_points) stages.insert(point.stage), rules.insert(point.applies);
  for (const auto& caution : starter().cautions) rules.insert(caution.applies);
  EXPECT_EQ(stages.size(), 9u);
  for (std::string rule : rules) {
    std::string word;
    rule += ' ';
    for (const char c : rule)
      if (c != ' ') {
        word += c;
      } else {
        EXPECT_TRUE(word == "and" || word == "or" || known.contains(word)) << rule;
        word.clear();
      }
  }
}

TEST(Starter, BuildUpsStandOnStone) {
  const auto base_of = [](const char* id) -> const Item& {
    for (const auto& layer : starter().build_up(id)->layers)
      if (layer.role == "base") return item(layer.item);
    throw std::runtime_error("no base");
  };
  EXPECT_TRUE(catalogue::open_graded(base_of("hybrid-foot")));
  EXPECT_TRUE(catalogue::open_graded(base_of("open-foot")));
  EXPECT_FALSE(catalogue::open_graded(base_of("dense-foot")));
  EXPECT_FALSE(catalogue::open_graded(base_of("bound-slab")));
  for (const auto& [id, build_up] : starter().build_ups) EXPECT_FALSE(build_up.layers.empty()) << id;
}

}  // namespace
}  // namespace files
