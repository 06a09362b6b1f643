// The live takeoff: its rows as plain values, then as a person opens, prices and solves them.
#include "ui/panels/takeoff_panel.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QTest>
#include <algorithm>
#include <cmath>
#include <set>

#include "files/files.h"
#include "ui/panels/price_field.h"
#include "ui/panels/solve_panel.h"
#include "ui/panels/stage_model.h"
#include "ui/panels/stage_panel.h"
#include "ui/panels/takeoff_items.h"
#include "ui/panels/takeoff_view.h"
#include "ui/panels/total_panel.h"

namespace {

using takeoff::Stage;
using takeoff::Working;

plan::Job demo() {
  const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/pool-terrace-b.json";
  return files::read_job(files::read_file(path).value(), path).value();
}

plan::Job without_price(const plan::Job& job, const std::string& id) {
  catalogue::Catalogue own = *job.catalogue;
  catalogue::Item item = *own.items.at(id);
  item.price.reset();
  own.items[id] = std::make_shared<const catalogue::Item>(item);
  plan::Job after = job;
  after.catalogue = std::make_shared<const catalogue::Catalogue>(own);
  return after;
}

// Computed once: the tests below only read it.
const results::Results& demo_results() {
  static const results::Results made = results::compute(std::make_shared<const plan::Job>(demo()));
  return made;
}

// --- shares

estimate::OrderLine order(double tons, std::vector<plan::ElementId> of, Working working) {
  return {Stage::base, "stone", "Stone", std::move(of), working.amount().value, "m3", tons, "ton", {}, {}, false, false,
          false,       working, {}};
}

takeoff::Line need(double cubic_metres, std::vector<plan::ElementId> of, std::optional<double> allowance = {}) {
  return {Stage::base, "stone", "base", std::move(of), takeoff::term("volume", cubic_metres, units::cubic_metre),
          allowance,   false};
}

TEST(Shares, followWhatEachElementNeeds) {
  plan::Job job;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  takeoff::Takeoff made;
  made.lines = {need(3, {"A1"}), need(1, {"A2"})};
  const auto line = order(8, {"A1", "A2"}, takeoff::term("volume", 4, units::cubic_metre));
  EXPECT_DOUBLE_EQ(*ui::share_of("A1", line, made, job), 0.75);  // 3 of 4 m3
  EXPECT_DOUBLE_EQ(*ui::share_of("A2", line, made, job), 0.25);
  // 1 m3 with a half on top weighs as 1.5 m3: 3 of 4.5, 1.5 of 4.5.
  made.lines[1].allowance = 0.5;
  EXPECT_DOUBLE_EQ(*ui::share_of("A1", line, made, job), 3 / 4.5);
  // A need of both at once can't be parted.
  made.lines.push_back(need(2, {"A1", "A2"}));
  EXPECT_FALSE(ui::share_of("A1", line, made, job));
}

TEST(Shares, ofAllElementsMakeUpEachLineOfTheDemoJob) {
  const results::Results& results = demo_results();
  int parted = 0;
  for (const estimate::OrderLine& line : results.estimate.lines) {
    if (line.of.size() < 2) continue;
    double sum = 0;
    bool apart = true;
    for (const plan::ElementId& id : line.of) {
      const auto share = ui::share_of(id, line, results.takeoff, *results.job);
      apart = apart && share.has_value();
      sum += share.value_or(0);
    }
    if (!apart) continue;
    ++parted;
    EXPECT_NEAR(sum, 1, 1e-12) << line.description;  // dust of adding a dozen quotients
  }
  EXPECT_GT(parted, 10);
}

// --- rows

TEST(TakeoffRows, ofEachStageMakeUpTheJob) {
  const results::Results& results = demo_results();
  std::multiset<int> of_stages, of_job;
  for (const Stage stage : takeoff::all_stages)
    for (const ui::TakeoffRow& row : ui::takeoff_rows(results, {ui::Scope::stage, {}, stage})) {
      EXPECT_EQ(row.stage, stage);
      of_stages.insert(row.line);
    }
  for (const ui::TakeoffRow& row : ui::takeoff_rows(results, {}))
    if (row.kind == ui::TakeoffRow::Kind::line) of_job.insert(row.line);
  EXPECT_EQ(of_stages, of_job);
  EXPECT_EQ(of_job.size(), results.estimate.lines.size());
}

TEST(TakeoffRows, ofTheJobHaveTheWorkInAGroupOfItsOwn) {
  const auto rows = ui::takeoff_rows(demo_results(), {});
  const auto group = std::ranges::find(rows, ui::TakeoffRow::Kind::group, &ui::TakeoffRow::kind);
  ASSERT_NE(group, rows.end());
  EXPECT_TRUE(std::all_of(rows.begin(), group, [](const auto& row) { return !row.work; }));
  EXPECT_TRUE(std::all_of(group, rows.end(), [](const auto& row) { return row.work; }));
}

TEST(TakeoffRows, ofAnElementAreItsOwn) {
  const results::Results& results = demo_results();
  const auto rows = ui::takeoff_rows(results, {ui::Scope::element, "W", {}});
  ASSERT_FALSE(rows.empty());
  for (const ui::TakeoffRow& row : rows) {
    const auto& of = results.estimate.lines[static_cast<std::size_t>(row.line)].of;
    EXPECT_NE(std::ranges::find(of, "W"), of.end()) << row.what.toStdString();
  }
}

TEST(Split, addsUpToTheTotal) {
  const results::Results& results = demo_results();
  const ui::Split parts = ui::split(results);
  EXPECT_EQ(parts.all(), results.estimate.total.amount());
  EXPECT_EQ(parts.labour, results.estimate.total.work);
  EXPECT_GT(parts.machines, units::Money());
  EXPECT_GT(parts.fees, units::Money());
}

// --- workings

// (2 m x 3 m + 4 m2) x 0.5 m = 5 m3, by 2000 kg/m3 10,000 kg, by the ton of 907.18474 kg 11.0231 tons, so 12.
TEST(WorkingRows, readAsAHandCalculation) {
  plan::Job job;
  job.heading.units = units::System::metric;
  plan::Element area{"A1", "", plan::PavedArea{}};
  catalogue::Catalogue own;
  catalogue::Item stone;
  stone.id = "stone";
  stone.unit = "ton";
  own.items["stone"] = std::make_shared<const catalogue::Item>(stone);
  own.build_ups["foot"] = {};
  job.catalogue = std::make_shared<const catalogue::Catalogue>(own);
  job = plan::with(job, area);
  const Working net = Working::sum({Working::product({takeoff::term("length", 2, units::metre, "A1"),
                                                      takeoff::term("width", 3, units::metre, "A1")}),
                                    takeoff::term("past the edge", 4, units::square_metre, "foot/past_edge")})
                          .named("base");
  const Working weight = Working::product(
      {net, takeoff::term("depth", 0.5, units::metre, "foot/base"),
       takeoff::term("placed density", 2000, units::kilogram_per_cubic_metre, "stone/compacted_density_kg_m3")});
  const Working tons = Working::quotient(weight, takeoff::term("one ton", 907.18474, units::kilogram, "stone/unit"));
  auto line = order(12, {"A1"}, Working::up(tons));
  line.sentence = "12 tons: 11.02 needed";
  const auto rows = ui::working_rows(line, job);
  std::vector<std::string> told;
  for (const ui::WorkingRow& row : rows)
    told.push_back(std::string(static_cast<std::size_t>(row.depth), '.') +
                   (row.ring ? std::to_string(row.ring) + " " : "") +
                   (row.sign + " " + row.name).trimmed().toStdString() + " = " + row.value.toStdString());
  const std::vector<std::string> expected{"multiplied = 10,000 kg",   ".base = 10 m2",
                                          "..multiplied = 6 m2",      "...1 length = 2.000 m",
                                          "...2 × width = 3.000 m",   "..3 + past the edge = 4 m2",
                                          ".4 × depth = 500 mm",      ".5 × placed density = 2,000 kg/m3",
                                          "6 ÷ one ton = 907.185 kg", "ordered in whole tons = 11.02 tons"};
  EXPECT_EQ(told, expected);
  EXPECT_EQ(rows.back().ordered, "12 tons");
  EXPECT_EQ(rows[3].leads, ui::Leads::plan);
  EXPECT_EQ(rows[6].leads, ui::Leads::section);
  EXPECT_EQ(rows[7].leads, ui::Leads::catalogue);
  EXPECT_EQ(ui::leads("choices/attic_share", job), ui::Leads::choices);
  EXPECT_EQ(ui::leads("", job), ui::Leads::nowhere);
}

// Every figure that a line was measured from has a ring, none has two, and they are numbered without a gap.
TEST(WorkingRows, ringAllThatTheLinesOfTheDemoJobAreMeasuredFrom) {
  const results::Results& results = demo_results();
  for (const estimate::OrderLine& line : results.estimate.lines) {
    const auto rows = ui::working_rows(line, *results.job);
    std::set<std::string> ringed, measured;
    int ring = 0;
    for (const ui::WorkingRow& row : rows) {
      if (row.ring == 0) continue;
      EXPECT_EQ(row.ring, ++ring) << line.description;
      ringed.insert(row.of);
    }
    // The size of a pack is told where the order is rounded, not as a figure.
    for (const takeoff::Term& term : line.working.terms())
      if (!term.of.ends_with("/pieces_per_layer") && !term.of.ends_with("/pieces_per_pack") &&
          !term.of.ends_with("/order_step") && !(term.of == line.item + "/unit" && term.amount.value == 0.5))
        measured.insert(term.of);
    for (const std::string& of : measured) EXPECT_TRUE(ringed.contains(of)) << line.description << ": " << of;
    EXPECT_EQ(ui::rings_of(rows).size(), static_cast<std::size_t>(ring));
  }
}

TEST(InUnits, tellsLengthsAsPeopleDo) {
  EXPECT_EQ(ui::in_units({6 * 0.0254, units::metre}, units::System::us), "6\"");
  EXPECT_EQ(ui::in_units({12.5 * 0.3048, units::metre}, units::System::us), "12' 6\"");
  EXPECT_EQ(ui::in_units({0.2227, units::metre}, units::System::us), "8.7677 in");  // 0.2227 / 0.0254 = 8.76772
  EXPECT_EQ(ui::in_units({1.15, units::piece}, units::System::us), "1.15");
  EXPECT_EQ(ui::in_units({100 * 0.09290304, units::square_metre}, units::System::us), "100 sq ft");
}

// --- prices

TEST(Price, isSetInTheJobsOwnCatalogueAndNothingElseChanges) {
  const plan::Job job = without_price(demo(), "fabric-nw-12");
  const auto after = ui::with_price(job, "fabric-nw-12", " $312.50 ", "2026-05-14");
  ASSERT_TRUE(after);
  const catalogue::Item& item = *after->catalogue->item("fabric-nw-12");
  EXPECT_EQ(item.price->amount.coins(), 31250);
  EXPECT_EQ(item.price->unit, item.unit);
  EXPECT_EQ(item.price->date, "2026-05-14");
  EXPECT_FALSE(item.price->by_others);
  EXPECT_TRUE(catalogue::check(item));
  EXPECT_TRUE(plan::same(without_price(*after, "fabric-nw-12"), job));
}

TEST(Price, isRefusedWhereItIsNone) {
  const plan::Job job = demo();
  for (const char* text : {"", "abc", "0", "-5", "12,5", "12.505", "1e3"}) {
    const auto after = ui::with_price(job, "fabric-nw-12", text, "2026-05-14");
    ASSERT_FALSE(after) << text;
    EXPECT_EQ(after.error().code, "price-unread");
    EXPECT_FALSE(after.error().mend.empty());
  }
  EXPECT_EQ(ui::with_price(job, "no-such-item", "5", "").error().code, "item-unknown");
}

TEST(Price, byOthersIsNothingToPay) {
  const auto after = ui::with_supplied_by_others(demo(), "fabric-nw-12", "2026-05-14");
  ASSERT_TRUE(after);
  EXPECT_TRUE(after->catalogue->item("fabric-nw-12")->price->by_others);
  EXPECT_TRUE(catalogue::check(*after->catalogue->item("fabric-nw-12")));
}

TEST(Price, ofWorkIsThatOfTheCrew) {
  const plan::Job job = without_price(demo(), "lab-layer");
  const results::Results results = results::compute(std::make_shared<const plan::Job>(job));
  int waiting = 0;
  for (const estimate::OrderLine& line : results.estimate.lines) {
    const auto items = ui::items_without_price(line, job);
    EXPECT_EQ(items.empty(), line.amount.has_value()) << line.description;
    if (items.empty()) continue;
    ++waiting;
    EXPECT_EQ(items, std::vector<plan::Id>{"lab-layer"});
  }
  EXPECT_GT(waiting, 0);
}

// --- hold points

TEST(HoldPoints, areKeptWithWhoAndWhen) {
  const plan::Job job = demo();
  const auto before = ui::stage_said(demo_results(), job, Stage::base);
  ASSERT_FALSE(before.holds.empty());
  ASSERT_FALSE(before.holds[0].seen);
  const std::string key = before.holds[0].look_at;
  plan::Job seen = ui::with_look(job, Stage::base, key, "Ada", "2026-05-14");
  seen = ui::with_look(seen, Stage::base, key, "Ben", "2026-05-15");
  EXPECT_EQ(seen.looked_at.size(), job.looked_at.size() + 1) << "looked at again, the newer stands";
  const auto after = ui::stage_said(demo_results(), seen, Stage::base);
  EXPECT_TRUE(after.holds[0].seen);
  EXPECT_EQ(after.holds[0].seen_by, "Ben");
  EXPECT_TRUE(plan::same(ui::without_look(seen, Stage::base, key), job));
}

// --- the panels

bool wait_for(const ui::Desk& desk) {
  return QTest::qWaitFor([&desk] { return !desk.computing() && desk.results() != nullptr; }, 120000);
}

struct Panel {
  ui::Desk desk;
  ui::TakeoffPanel panel;
  explicit Panel(plan::Job job) : desk(std::make_shared<const plan::Job>(std::move(job))), panel(desk) {
    panel.resize(416, 640);
    panel.show();
    QApplication::setActiveWindow(&panel);
    ready = wait_for(desk);
  }
  const ui::TakeoffItems& items() const { return *static_cast<const ui::TakeoffItems*>(panel.list()->model()); }
  int row_without_price() const {
    const auto& lines = items().lines();
    const auto found = std::ranges::find(lines, true, &ui::TakeoffRow::no_price);
    return found == lines.end() ? -1 : static_cast<int>(found - lines.begin());
  }
  bool ready = false;
};

TEST(TakeoffPanel, aLineOpensByKeysAndLightsWhatItWasMeasuredFrom) {
  Panel on(demo());
  ASSERT_TRUE(on.ready);
  ui::TakeoffView& list = *on.panel.list();
  list.setFocus();
  const QModelIndex line = on.items().index(2, 0);
  list.setCurrentIndex(line);
  QTest::keyClick(&list, Qt::Key_Right);
  EXPECT_TRUE(list.isExpanded(line));
  EXPECT_EQ(on.desk.lit().line, on.items().lines()[2].line);
  EXPECT_EQ(on.desk.lit().term, -1);
  EXPECT_EQ(on.desk.lit().of, on.items().rings(2));
  ASSERT_FALSE(on.desk.lit().of.empty());
  // Down to the first figure: it is lit alone.
  for (int row = 0; row < on.items().rowCount(line); ++row) {
    QTest::keyClick(&list, Qt::Key_Down);
    const ui::UnderRow* under = on.items().under_at(list.currentIndex());
    if (under && under->row.ring == 1) break;
  }
  EXPECT_EQ(on.desk.lit().term, 0);
  EXPECT_EQ(on.desk.lit().of, std::vector<std::string>{on.items().rings(2)[0]});
  QTest::keyClick(&list, Qt::Key_Left);
  EXPECT_FALSE(list.isExpanded(line));
  EXPECT_EQ(on.desk.lit(), ui::Lit{});
  QTest::keyClick(&list, Qt::Key_Return);
  EXPECT_TRUE(list.isExpanded(line));
}

TEST(TakeoffPanel, scopesFollowTheSelectionAndTheStage) {
  Panel on(demo());
  ASSERT_TRUE(on.ready);
  EXPECT_EQ(on.panel.scope(), ui::Scope::job);
  on.desk.select({"A1"});
  EXPECT_EQ(on.panel.scope(), ui::Scope::element);
  on.desk.show_stage(Stage::base);
  EXPECT_EQ(on.panel.scope(), ui::Scope::stage);
  on.panel.findChild<QAbstractButton*>("scope_job")->click();
  on.desk.select({"A2"});
  EXPECT_EQ(on.panel.scope(), ui::Scope::job) << "what was asked for stays";
  on.desk.show_stage({});
  EXPECT_EQ(on.panel.scope(), ui::Scope::element);
}

TEST(TakeoffPanel, aPriceIsGivenWhereItIsMissing) {
  const plan::Job job = without_price(demo(), "fabric-nw-12");
  Panel on(job);
  ASSERT_TRUE(on.ready);
  const int row = on.row_without_price();
  ASSERT_GE(row, 0);
  EXPECT_EQ(on.items().lines()[static_cast<std::size_t>(row)].amount, "no price");
  on.panel.show_line(on.items().lines()[static_cast<std::size_t>(row)].line);
  auto* field = on.panel.findChild<ui::PriceField*>();
  ASSERT_NE(field, nullptr);
  QTest::keyClicks(field->field(), "a lot");
  QTest::keyClick(field->field(), Qt::Key_Return);
  EXPECT_TRUE(on.panel.findChild<QLabel*>("price_wrong")->text().contains("not a price"));
  EXPECT_TRUE(plan::same(on.desk.job(), job)) << "nothing is kept of what is no price";
  field->field()->clear();
  QTest::keyClicks(field->field(), "312");
  QTest::keyClick(field->field(), Qt::Key_Return);
  EXPECT_EQ(on.desk.history().undo_name().substr(0, 16), "Give a price for");
  ASSERT_TRUE(wait_for(on.desk));
  EXPECT_EQ(on.row_without_price(), -1);
  on.desk.undo();
  EXPECT_TRUE(plan::same(on.desk.job(), job));
}

TEST(TakeoffPanel, newResultsLeaveThePriceThatIsBeingTyped) {
  Panel on(without_price(demo(), "fabric-nw-12"));
  ASSERT_TRUE(on.ready);
  on.panel.show_line(on.items().lines()[static_cast<std::size_t>(on.row_without_price())].line);
  QTest::keyClicks(on.panel.findChild<ui::PriceField*>()->field(), "31");
  plan::Job renamed = on.desk.job();
  renamed.heading.notes = "another note";
  on.desk.edit(renamed, "Note");
  EXPECT_TRUE(on.panel.list()->old()) << "old numbers say that they are old";
  ASSERT_TRUE(wait_for(on.desk));
  QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  const auto fields = on.panel.findChildren<ui::PriceField*>();
  ASSERT_EQ(fields.size(), 1);
  EXPECT_EQ(fields[0]->field()->text(), "31");
  EXPECT_TRUE(fields[0]->field()->hasFocus());
  EXPECT_FALSE(on.panel.list()->old());
}

TEST(SolvePanel, listsWhatIsGraveFirstAndGoesRound) {
  Panel on(demo());
  ASSERT_TRUE(on.ready);
  const auto all = on.desk.results()->problems();
  const auto count = [&all](problem::Severity severity) {
    return static_cast<int>(std::ranges::count(all, severity, &problem::Problem::severity));
  };
  const int to_solve = count(problem::Severity::problem) + count(problem::Severity::flag);
  EXPECT_EQ(on.panel.solve()->to_solve(), to_solve);
  EXPECT_EQ(on.panel.solve()->list()->model()->rowCount(), to_solve) << "notices are off at first";
  on.panel.solve()->show_notices(true);
  EXPECT_EQ(on.panel.solve()->list()->model()->rowCount(), static_cast<int>(all.size()));
  std::vector<problem::Place> gone_to;
  QObject::connect(&on.desk, &ui::Desk::wanted_in_view,
                   [&gone_to](const problem::Place& place) { gone_to.push_back(place); });
  for (std::size_t i = 0; i <= all.size(); ++i) on.panel.next_problem();
  ASSERT_EQ(gone_to.size(), all.size() + 1);
  EXPECT_EQ(gone_to.front(), gone_to.back()) << "after the last comes the first";
}

TEST(TotalPanel, saysWhyItIsNotFinalAndLeadsThere) {
  Panel on(without_price(demo(), "fabric-nw-12"));
  ASSERT_TRUE(on.ready);
  ui::TotalPanel total(on.desk);
  total.resize(416, 124);
  total.show();
  EXPECT_EQ(total.findChild<QLabel*>("total_label")->text(), "Whole job so far");
  const ui::Open open = ui::open_of(*on.desk.results());
  EXPECT_EQ(open.without_price, 1);
  EXPECT_TRUE(total.findChild<QLabel*>("total_open")->text().startsWith("Not final: 1 line has no price"));
  int wanted = -1;
  QObject::connect(&total, &ui::TotalPanel::wanted_line, [&wanted](int line) { wanted = line; });
  total.findChild<QAbstractButton*>("total_go_to")->click();
  EXPECT_EQ(wanted, open.first_line);
}

TEST(StagePanel, aTickAsksWhoAndWhenBeforeItIsKept) {
  Panel on(demo());
  ASSERT_TRUE(on.ready);
  on.desk.show_stage(Stage::base);
  ui::StagePanel panel(on.desk);
  panel.resize(416, 600);
  panel.show();
  const plan::Job before = on.desk.job();
  auto* tick = panel.findChild<QAbstractButton*>("hold_tick");
  ASSERT_NE(tick, nullptr);
  tick->click();
  EXPECT_FALSE(tick->isChecked());
  auto* who = panel.findChild<QLineEdit*>("look_who");
  who->setText("Ada");
  panel.findChild<QAbstractButton*>("look_keep")->click();
  EXPECT_TRUE(plan::same(on.desk.job(), before)) << "a look without a day is none";
  EXPECT_FALSE(panel.findChild<QLabel*>("look_wrong")->text().isEmpty());
  panel.findChild<QLineEdit*>("look_when")->setText("14 May");
  panel.findChild<QAbstractButton*>("look_keep")->click();
  ASSERT_EQ(on.desk.job().looked_at.size(), before.looked_at.size() + 1);
  EXPECT_EQ(on.desk.job().looked_at.back().who, "Ada");
  EXPECT_EQ(on.desk.job().looked_at.back().when, "14 May");
  EXPECT_TRUE(panel.findChild<QAbstractButton*>("hold_tick")->isChecked());
  panel.findChild<QAbstractButton*>("hold_tick")->click();
  EXPECT_TRUE(plan::same(on.desk.job(), before));
}

}  // namespace
