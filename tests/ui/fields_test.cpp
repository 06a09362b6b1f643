// What the panel of the selected element does to a job, without a widget: fields, build-ups of a place's own, what is
// taken in from the book, units that a pattern can be laid with, better starts, edges that are moved.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "files/starter.h"
#include "results/demo_jobs.h"
#include "ui/desk/edge_cost.h"
#include "ui/desk/find_start.h"
#include "ui/desk/lay_pattern.h"
#include "ui/desk/own_build_up.h"
#include "ui/desk/take_in.h"
#include "ui/panels/edge_fields.h"
#include "ui/panels/offers.h"
#include "ui/panels/six_measures.h"

using ui::Editor;
using ui::Field;
using ui::Page;
using ui::Value;
using units::Length;

namespace {

const plan::Job& terrace() {
  static const plan::Job job = demo::job("pool-terrace-a");
  return job;
}

std::vector<Field> all_fields(const plan::Job& job, const plan::ElementId& id) {
  std::vector<Field> all;
  for (const Page page : {Page::build_up, Page::pattern, Page::levels})
    for (Field& field : ui::fields_of(job, id, page)) all.push_back(std::move(field));
  return all;
}

Field field(const plan::Job& job, const plan::ElementId& id, const std::string& name) {
  for (Field& one : all_fields(job, id))
    if (one.id == name) return std::move(one);
  ADD_FAILURE() << id << " has no field " << name;
  return ui::name_of(id);
}

const plan::PavedArea& area(const plan::Job& job, const plan::ElementId& id) {
  return std::get<plan::PavedArea>(job.find(id)->kind);
}

double thickness_in(const plan::Job& job, const plan::ElementId& id, std::size_t layer) {
  return job.catalogue->build_up(area(job, id).build_up)->layers.at(layer).thickness->inches();
}

plan::DrawnRing ring(const std::vector<std::pair<double, double>>& inches) {
  plan::DrawnRing made;
  for (const auto& [x, y] : inches)
    made.edges.push_back(
        {{Length::nearest(units::Metres(x * 0.0254)), Length::nearest(units::Metres(y * 0.0254))}, 0, {}});
  return made;
}

// 61 x 48 in of 6 in modules in straight rows from the lower left corner.
plan::Job ten_columns_and_an_inch() {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>(starter());
  plan::PavedArea made;
  made.outline = {ring({{0, 0}, {61, 0}, {61, 48}, {0, 48}})};
  made.laying = plan::Laying{"stack", {{"unit", "unit-6x6-60"}}, {}, {}, {}};
  return plan::with(job, {"A1", "patio", made});
}

}  // namespace

TEST(Fields, GivenTheValueThatTheyHaveTheJobStaysAsItIs) {
  int seen = 0;
  for (const char* name : {"pool-terrace-a", "pool-terrace-b", "bakery-court"}) {
    const plan::Job job = demo::job(name);
    for (const plan::ElementPtr& element : job.elements)
      for (const Field& one : all_fields(job, element->id)) {
        if (one.editor == Editor::action) continue;
        EXPECT_TRUE(plan::same(one.set(job, one.get(job)), job)) << name << " " << element->id << " " << one.id;
        ++seen;
      }
  }
  EXPECT_GT(seen, 300);
}

TEST(Fields, ALengthThatIsGivenIsTheLengthThatIsShown) {
  for (const plan::ElementPtr& element : terrace().elements)
    for (const Field& one : all_fields(terrace(), element->id)) {
      if (one.editor != Editor::length) continue;
      const plan::Job after = one.set(terrace(), Value(Length::inch_64ths(333)));
      EXPECT_EQ(one.get(after), Value(Length::inch_64ths(333))) << element->id << " " << one.id;
    }
}

TEST(Fields, IdsOfOneElementDiffer) {
  for (const plan::ElementPtr& element : terrace().elements) {
    std::set<std::string> ids;
    for (const Field& one : all_fields(terrace(), element->id))
      EXPECT_TRUE(ids.insert(one.id).second) << element->id << one.id;
  }
}

TEST(Fields, NothingHappensToAnElementThatIsGone) {
  const std::vector<Field> fields = all_fields(terrace(), "A1");
  const plan::Job without = plan::without(terrace(), "A1");
  for (const Field& one : fields) {
    EXPECT_EQ(one.get(without) == Value{} || one.editor == Editor::told || one.editor == Editor::yes_no, true)
        << one.id;
    EXPECT_TRUE(plan::same(one.set(without, Value(Length::inches(3))), without)) << one.id;
  }
}

TEST(Fields, APartIsPutInAndTakenOut) {
  const Field collar = field(terrace(), "P", "collar");
  const plan::Job without = collar.set(terrace(), Value(false));
  EXPECT_FALSE(std::get<plan::Pool>(without.find("P")->kind).collar);
  const plan::Job again = field(without, "P", "collar").set(without, Value(true));
  EXPECT_EQ(std::get<plan::Pool>(again.find("P")->kind).collar->width, Length::inches(12));
}

TEST(Fields, BorderCoursesAreAddedMovedInAndTakenOut) {
  plan::Job job = field(terrace(), "A1", "border/add").set(terrace(), {});
  ASSERT_EQ(area(job, "A1").borders.size(), 2u);
  job = field(job, "A1", "border/1/item").set(job, Value(std::string("unit-6x9-60")));
  job = field(job, "A1", "border/0/in").set(job, {});
  EXPECT_EQ(area(job, "A1").borders[0].item, "unit-6x9-60");
  EXPECT_EQ(area(job, "A1").borders[1].item, "unit-4x8-60");
  job = field(job, "A1", "border/0/out").set(job, {});
  EXPECT_EQ(area(job, "A1").borders, area(terrace(), "A1").borders);
}

TEST(Fields, DirectionIsTakenFromAnEdge) {
  // Edge 1 of the walk goes straight up from (0, 1463040): 90 degrees.
  const plan::Job job = field(terrace(), "W", "direction/along").set(terrace(), Value(std::int64_t{0}));
  EXPECT_EQ(area(job, "W").laying->direction.degrees(), 90);
}

TEST(Fields, WhatSeveralHaveInCommonIsChangedInOneStep) {
  const std::vector<Field> common = ui::common_fields(terrace(), {"A1", "A2", "W"});
  const auto build_up = std::ranges::find(common, std::string("build_up"), &Field::id);
  ASSERT_NE(build_up, common.end());
  EXPECT_EQ(build_up->get(terrace()), Value{});  // hybrid-foot twice, dense-foot once
  const plan::Job after = build_up->set(terrace(), Value(std::string("dense-foot")));
  for (const char* id : {"A1", "A2", "W"}) EXPECT_EQ(area(after, id).build_up, "dense-foot");
  const plan::Job gone = common.back().set(terrace(), {});
  EXPECT_EQ(gone.elements.size(), terrace().elements.size() - 3);
}

TEST(Fields, AWallAndAPoolHaveNoFieldInCommonButBeingTakenOut) {
  EXPECT_EQ(ui::common_fields(terrace(), {"P", "L-g1"}).size(), 1u);
}

// --- a build-up of its own

TEST(OwnBuildUp, AnEditedLayerIsThatAreasOnly) {
  const plan::Job job = field(terrace(), "A1", "layer/2/thickness").set(terrace(), Value(Length::inches(8)));
  EXPECT_EQ(area(job, "A1").build_up, "hybrid-foot-of-a1");
  EXPECT_EQ(thickness_in(job, "A1", 2), 8);
  EXPECT_EQ(job.catalogue->build_up("hybrid-foot-of-a1")->name.en,
            "Pool deck: open base and bedding under sealed joints of A1");
  EXPECT_EQ(area(job, "A2").build_up, "hybrid-foot");
  EXPECT_EQ(thickness_in(job, "A2", 2), 6);  // 48,768 steps of 8,128 to the inch
  EXPECT_EQ(terrace().catalogue->build_up("hybrid-foot-of-a1"), nullptr);
}

TEST(OwnBuildUp, EditedAgainItIsChangedInPlace) {
  plan::Job job = field(terrace(), "A1", "layer/2/thickness").set(terrace(), Value(Length::inches(8)));
  job = field(job, "A1", "layer/1/thickness").set(job, Value(Length::inches(1)));
  EXPECT_EQ(area(job, "A1").build_up, "hybrid-foot-of-a1");
  EXPECT_EQ(thickness_in(job, "A1", 1), 1);
  EXPECT_EQ(thickness_in(job, "A1", 2), 8);
  EXPECT_EQ(job.catalogue->build_ups.size(), terrace().catalogue->build_ups.size() + 1);
}

TEST(OwnBuildUp, TakenOverBySomethingElseItIsNotChangedUnderIt) {
  plan::Job job = field(terrace(), "A1", "layer/2/thickness").set(terrace(), Value(Length::inches(8)));
  job = field(job, "A2", "build_up").set(job, Value(std::string("hybrid-foot-of-a1")));
  job = field(job, "A1", "layer/2/thickness").set(job, Value(Length::inches(10)));
  EXPECT_EQ(thickness_in(job, "A2", 2), 8);
  EXPECT_EQ(thickness_in(job, "A1", 2), 10);
  EXPECT_EQ(area(job, "A1").build_up, "hybrid-foot-of-a1-2");
  job = field(job, "A2", "layer/2/thickness").set(job, Value(Length::inches(5)));
  EXPECT_EQ(area(job, "A2").build_up, "hybrid-foot-of-a1");  // only A2 has it now
  EXPECT_EQ(thickness_in(job, "A1", 2), 10);
}

TEST(OwnBuildUp, TheTakeoffOrdersTheThickerBase) {
  const plan::Job job = field(terrace(), "A1", "layer/2/thickness").set(terrace(), Value(Length::inches(8)));
  const auto stone = [](const results::Results& results) {
    double sum = 0;
    for (const takeoff::Line& line : results.takeoff.lines)
      if (line.item == "agg-no57" && line.stage == takeoff::Stage::base) sum += line.working.amount().value;
    return sum;
  };
  EXPECT_GT(stone(demo::compute(job)), stone(demo::compute(terrace())));
}

RC_GTEST_PROP(OwnBuildUp, WhateverIsEditedOnlyThatElementsLayersChange, ()) {
  const std::vector<plan::ElementId> ids{"A1", "A2", "W", "S", "RW"};
  plan::Job job = terrace();
  for (int i = 0; i < 6; ++i) {
    const plan::ElementId id = *rc::gen::elementOf(ids);
    const auto layer = *rc::gen::inRange<std::size_t>(0, 4);
    const auto inches = *rc::gen::inRange(1, 20);
    const plan::Job after =
        ui::with_layer(job, id, layer, [&](catalogue::Layer& one) { one.thickness = Length::inches(inches); });
    for (const plan::ElementId& other : ids) {
      const catalogue::BuildUp& was = *job.catalogue->build_up(*ui::build_up_of(*job.find(other)));
      const catalogue::BuildUp& is = *after.catalogue->build_up(*ui::build_up_of(*after.find(other)));
      if (other != id) RC_ASSERT(was.layers == is.layers);
      if (other == id && layer < is.layers.size()) RC_ASSERT(is.layers[layer].thickness == Length::inches(inches));
    }
    job = after;
  }
}

// --- taken in from the book

TEST(TakeIn, ABuildUpBringsTheItemsOfItsLayersAndTheirSuppliers) {
  const catalogue::Catalogue empty;
  const catalogue::Catalogue made = ui::with_needs(empty, starter(), {{}, {}, {"hybrid-foot"}});
  EXPECT_EQ(made.build_ups.size(), 1u);
  for (const char* id : {"agg-no8", "agg-no57", "fabric-nw-12"}) EXPECT_NE(made.item(id), nullptr) << id;
  EXPECT_TRUE(made.suppliers.contains("stone-yard"));
  EXPECT_EQ(made.items.size(), 3u);
}

TEST(TakeIn, APieceBringsTheMixedPacksThatHoldItAndAllTheirPieces) {
  const catalogue::Catalogue empty;
  const catalogue::Catalogue made = ui::with_needs(empty, starter(), {{"unit-9x9-60"}, {}, {}});
  for (const char* id : {"unit-9x9-60", "pack-three-60", "unit-6x6-60", "unit-6x9-60"})
    EXPECT_NE(made.item(id), nullptr) << id;
}

TEST(TakeIn, WhatTheJobHasKeepsItsPrice) {
  catalogue::Catalogue job = *terrace().catalogue;
  catalogue::Item dear = *job.item("unit-4x8-60");
  dear.price->amount = units::Money::of_coins(99900);
  job.items["unit-4x8-60"] = std::make_shared<const catalogue::Item>(dear);
  const catalogue::Catalogue made = ui::with_needs(job, starter(), {{"unit-4x8-60"}, {"herringbone-90"}, {}});
  EXPECT_EQ(made.item("unit-4x8-60")->price->amount.coins(), 99900);
  EXPECT_NE(made.pattern("herringbone-90"), nullptr);
}

TEST(TakeIn, WhatNeitherHasIsLeftOut) {
  const catalogue::Catalogue made =
      ui::with_needs(*terrace().catalogue, starter(), {{"nobody"}, {"nothing"}, {"nowhere"}});
  EXPECT_EQ(made.items.count("nobody") + made.patterns.count("nothing") + made.build_ups.count("nowhere"), 0u);
}

TEST(Offers, TheJobsOwnComeFirstEachWithItsPrice) {
  const Field unit = field(terrace(), "W", "unit/unit");
  const std::vector<ui::Offer> all = ui::offers(terrace(), &starter(), unit);
  ASSERT_GT(all.size(), 10u);
  EXPECT_FALSE(all.front().from_book);
  EXPECT_TRUE(all.back().from_book);
  EXPECT_TRUE(std::ranges::is_sorted(all, {}, &ui::Offer::from_book));
  for (const ui::Offer& offer : all) EXPECT_FALSE(offer.price.isEmpty()) << offer.id;
  const auto small = std::ranges::find(all, std::string("unit-4x8-60"), &ui::Offer::id);
  EXPECT_EQ(small->price, "$4.95 a sq ft");
}

TEST(Offers, AnItemWithoutAPriceSaysSo) {
  plan::Job job = terrace();
  auto catalogue = std::make_shared<catalogue::Catalogue>(*job.catalogue);
  catalogue::Item item = *catalogue->item("unit-4x8-60");
  item.price.reset();
  catalogue->items["unit-4x8-60"] = std::make_shared<const catalogue::Item>(item);
  job.catalogue = catalogue;
  EXPECT_EQ(ui::offer_of(job, field(job, "W", "unit/unit"), "unit-4x8-60").price, "no price");
}

TEST(Offers, APatternOfTheBookComesWithUnitsThatItCanBeLaidWith) {
  const plan::Job job = ui::chosen(terrace(), &starter(), field(terrace(), "W", "pattern"), "herringbone-90");
  EXPECT_EQ(area(job, "W").laying->pattern, "herringbone-90");
  EXPECT_EQ(area(job, "W").laying->units,
            (std::map<std::string, plan::Id>{{"unit", "unit-4x8-60"}}));  // 8 = 2 x 4 in modules
  EXPECT_TRUE(ui::laid_numbers(job, "W"));
}

TEST(LayPattern, EveryPatternOfTheBookFindsUnits) {
  for (const auto& [id, pattern] : starter().patterns) {
    const auto units = ui::units_for(starter(), pattern, {});
    ASSERT_TRUE(units) << id;
    EXPECT_EQ(units->size(), catalogue::sizes(pattern).size()) << id;
  }
}

// --- laid anew

TEST(LaidNumbers, OneAreaLaidAloneIsWhatTheWholeTakeoffSays) {
  const results::Results whole = demo::compute(terrace());
  for (const char* id : {"A1", "A2", "W"}) {
    const auto alone = ui::laid_numbers(ui::only_ground(terrace()), id);
    ASSERT_TRUE(alone) << id;
    EXPECT_EQ(static_cast<double>(alone->whole), demo::measure(whole, id, "units_whole")) << id;
    EXPECT_EQ(static_cast<double>(alone->cut), demo::measure(whole, id, "units_cut")) << id;
    EXPECT_EQ(static_cast<double>(alone->slivers), demo::measure(whole, id, "slivers")) << id;
    EXPECT_EQ(static_cast<double>(alone->bought), demo::measure(whole, id, "bought_area")) << id;
    EXPECT_EQ(alone->net_area_m2, demo::measure(whole, id, "net_area_m2")) << id;
  }
}

TEST(FindStart, FewestCutsAreNoMoreThanBeforeAndAreThoseOfTheWholeTakeoff) {
  const auto found = ui::find_start(terrace(), "W", takeoff::paving::For::cuts, 300);
  ASSERT_TRUE(found);
  EXPECT_LE(found->is.cut, found->was.cut);
  EXPECT_EQ(static_cast<double>(found->is.cut), demo::measure(demo::compute(found->after), "W", "units_cut"));
}

TEST(FindStart, SliversAreSharedOutOnBothSides) {
  // 61 in is 10 modules and an inch: some cuts stay wherever it starts; 48 in is 8 modules, so no row is cut.
  const auto found = ui::find_start(ten_columns_and_an_inch(), "A1", takeoff::paving::For::slivers, 500);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->was.slivers, 8);  // 8 rows end in a piece of 15/16 in
  EXPECT_EQ(found->is.slivers, 0);   // halves share it out: 2 columns of about 3-7/16 in
  EXPECT_TRUE(found->better);
}

TEST(FindStart, StoppedItGivesTheBestSoFar) {
  int asked = 0;
  const auto found = ui::find_start(ten_columns_and_an_inch(), "A1", takeoff::paving::For::cuts, 500,
                                    [&asked](double) { return ++asked < 5; });
  ASSERT_TRUE(found);
  EXPECT_EQ(asked, 5);
}

TEST(EdgeCost, AnInchTooMuchIsTakenIn) {
  const plan::Job job = ten_columns_and_an_inch();
  const auto edges = ui::free_edges(plan::site(job), job, "A1");
  ASSERT_EQ(edges.size(), 4u);
  EXPECT_EQ(edges[1].length, Length::inches(48));
  const auto cost = ui::edge_cost(job, "A1", edges[1], {}, Length::inch_64ths(16));
  ASSERT_TRUE(cost);
  EXPECT_EQ(cost->was.laid.cut, 8);
  EXPECT_EQ(cost->was.laid.slivers, 8);
  EXPECT_EQ(cost->best.out, Length::inches(-1));
  EXPECT_EQ(cost->best.laid.cut, 0);
  EXPECT_EQ(cost->best.laid.whole, 80);  // 10 x 8
  EXPECT_NEAR(cost->best.laid.net_area_m2 - cost->was.laid.net_area_m2, -48 * 0.0254 * 0.0254, 1e-9);
}

TEST(EdgeCost, TheRowsEndIsFoundBetweenTheSteps) {
  // An edge that must move by 0.37 in, with steps of 1/2 in: only the sides of the units that it cuts lead there.
  plan::Job job = ten_columns_and_an_inch();
  plan::Element element = *job.find("A1");
  std::get<plan::PavedArea>(element.kind).outline = {ring({{0, 0}, {60.37, 0}, {60.37, 48}, {0, 48}})};
  job = plan::with(job, element);
  const auto cost =
      ui::edge_cost(job, "A1", ui::free_edges(plan::site(job), job, "A1").at(1), {}, Length::inch_64ths(32));
  ASSERT_TRUE(cost);
  EXPECT_EQ(cost->was.laid.cut, 8);
  EXPECT_EQ(cost->best.laid.cut, 0);
}

TEST(EdgeCost, ItIsWhatTheWholeComputationGives) {
  const plan::Job& job = terrace();
  const results::Results before = demo::compute(job);
  const auto edges = ui::free_edges(before.site, job, "W");
  ASSERT_FALSE(edges.empty());
  const auto cost = ui::edge_cost(job, "W", edges.front(), Length::inches(1), Length::inch_64ths(32));
  ASSERT_TRUE(cost);
  const results::Results after = demo::compute(cost->after);
  EXPECT_EQ(static_cast<double>(cost->best.laid.cut), demo::measure(after, "W", "units_cut"));
  EXPECT_EQ(static_cast<double>(cost->best.laid.slivers), demo::measure(after, "W", "slivers"));
  EXPECT_EQ(cost->best.laid.net_area_m2, demo::measure(after, "W", "net_area_m2"));
  if (cost->money) {
    EXPECT_EQ(*cost->money, after.estimate.total.amount() - before.estimate.total.amount());
  }
}

// --- edges and measures as told

TEST(EdgeFields, StretchesOfTheDeckAreToldWithWhatIsBuilt) {
  const results::Results results = demo::compute(terrace());
  const std::vector<Field> fields = ui::edge_fields(results, terrace(), "A1");
  const auto along_pool = std::ranges::find_if(fields, [](const Field& one) { return one.label.contains("coping P"); });
  ASSERT_NE(along_pool, fields.end());
  EXPECT_TRUE(along_pool->label.contains("Expansion joint along the coping"));
}

TEST(EdgeFields, AChoiceStandsInTheJobAndIsTakenBack) {
  const results::Results results = demo::compute(terrace());
  const std::vector<Field> fields = ui::edge_fields(results, terrace(), "A1");
  const auto choice = std::ranges::find(fields, std::string("edge/2"), &Field::id);
  ASSERT_NE(choice, fields.end());
  const plan::Job none = choice->set(terrace(), Value(std::string("none")));
  EXPECT_EQ(area(none, "A1").edges, (std::vector<plan::EdgeChoice>{{2, "none"}}));
  EXPECT_TRUE(plan::same(choice->set(none, Value(std::string())), terrace()));
}

TEST(SixMeasures, OfTheDeckInTheJobsUnits) {
  const results::Results results = demo::compute(terrace());
  const auto told = ui::six_measures(results, *terrace().find("A1"));
  ASSERT_EQ(told.size(), 6u);
  EXPECT_EQ(told[0].label, "Net area");
  // The answer is in m2; a square foot is 0.09290304 m2.
  EXPECT_EQ(told[0].value, ui::shown_area(demo::answer("A", "A1", "net_area_m2"), units::System::us));
  EXPECT_EQ(ui::shown_area(0.09290304 * 1234.56, units::System::us), "1,234.6 ft²");
}
