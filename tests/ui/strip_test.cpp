// The order of work: nine cells, what they say, and the plumb line that people drag.
#include <gtest/gtest.h>

#include <QAccessible>
#include <QPainter>
#include <QSignalSpy>
#include <QTest>

#include "files/files.h"
#include "ui/look/theme.h"
#include "ui/panels/strip.h"
#include "ui/panels/strip_section.h"

namespace {

using takeoff::Stage;

plan::Job demo() {
  const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/pool-terrace-a.json";
  return files::read_job(files::read_file(path).value(), path).value();
}

plan::Job without_elements() {
  plan::Job job = demo();
  job.elements.clear();
  job.looked_at.clear();
  return job;
}

class AtTheStrip {
 public:
  explicit AtTheStrip(plan::Job job, int width = 1024)
      : desk(std::make_shared<const plan::Job>(std::move(job))), strip(desk) {
    strip.resize(width, ui::px(124));
    strip.show();
    (void)QTest::qWaitFor([this] { return !desk.computing() && desk.results() != nullptr; }, 60000);
  }
  QPoint middle(int cell) const { return strip.cell(cell).center().toPoint(); }
  ui::Desk desk;
  ui::Strip strip;
};

TEST(Strip, cellsAddUpToTheTotal) {
  const AtTheStrip at(demo());
  ASSERT_NE(at.desk.results(), nullptr);
  const estimate::Estimate& estimate = at.desk.results()->estimate;
  units::Money sum;
  for (const auto& [stage, total] : estimate.stages) sum += total.amount();
  EXPECT_EQ(sum, estimate.total.amount());
  for (std::size_t i = 0; i < ui::stage_count; ++i) {
    const auto found = estimate.stages.find(takeoff::all_stages[i]);
    const bool costs = found != estimate.stages.end() && found->second.amount() != units::Money();
    EXPECT_EQ(at.strip.cells()[i].cost.isEmpty(), !costs) << i;
  }
}

// Every flag and problem of the job is counted in one cell, and in one only.
TEST(Strip, cellsCountEveryProblemOnce) {
  const AtTheStrip at(demo());
  ASSERT_NE(at.desk.results(), nullptr);
  int problems = 0, flags = 0, counted_problems = 0, counted_flags = 0;
  for (const problem::Problem& said : at.desk.results()->problems()) {
    flags += said.severity == problem::Severity::flag && said.code != "no-price";
    problems += said.severity == problem::Severity::problem && said.code != "no-price";
  }
  for (const estimate::OrderLine& line : at.desk.results()->estimate.lines) problems += !line.amount;
  for (const ui::StripCell& cell : at.strip.cells()) {
    counted_problems += cell.problems;
    counted_flags += cell.flags;
    EXPECT_EQ(cell.open, cell.problems > 0);
  }
  EXPECT_EQ(counted_problems, problems);
  EXPECT_EQ(counted_flags, flags);
  EXPECT_GT(flags, 0);
}

TEST(Strip, aClickChoosesAStageAndThePlumbLineStandsRightOfIt) {
  AtTheStrip at(demo());
  EXPECT_EQ(at.strip.shown(), std::nullopt);
  EXPECT_GT(at.strip.plumb_line(), at.strip.cell(8).left() + at.strip.cell(8).width() / 2);
  QTest::mouseClick(&at.strip, Qt::LeftButton, {}, at.middle(4));
  EXPECT_EQ(at.strip.shown(), Stage::base);
  EXPECT_EQ(at.strip.plumb_line(), at.strip.cell(4).right());
}

TEST(Strip, thePlumbLineIsDraggedToAnotherStageAndToTheEnd) {
  AtTheStrip at(demo());
  at.strip.choose(1);
  const QPoint line(static_cast<int>(at.strip.plumb_line()), at.strip.height() - 8);
  QTest::mousePress(&at.strip, Qt::LeftButton, {}, line);
  QTest::mouseMove(&at.strip, {static_cast<int>(at.strip.cell(5).right()) + 4, line.y()});
  EXPECT_EQ(at.strip.shown(), Stage::coping);
  QTest::mouseMove(&at.strip, {at.strip.width() - 1, line.y()});
  EXPECT_EQ(at.strip.shown(), std::nullopt);
  QTest::mouseMove(&at.strip, {2, line.y()});
  QTest::mouseRelease(&at.strip, Qt::LeftButton, {}, {2, line.y()});
  EXPECT_EQ(at.strip.shown(), Stage::protect);
}

TEST(Strip, keysGoFromStageToStage) {
  AtTheStrip at(demo());
  QTest::keyClick(&at.strip, Qt::Key_Left);
  EXPECT_EQ(at.strip.shown(), Stage::finish);
  QTest::keyClick(&at.strip, Qt::Key_Left);
  EXPECT_EQ(at.strip.shown(), Stage::joints);
  QTest::keyClick(&at.strip, Qt::Key_Home);
  EXPECT_EQ(at.strip.shown(), Stage::protect);
  QTest::keyClick(&at.strip, Qt::Key_Left);
  EXPECT_EQ(at.strip.shown(), Stage::protect);
  QTest::keyClick(&at.strip, Qt::Key_Right);
  EXPECT_EQ(at.strip.shown(), Stage::dig);
  QTest::keyClick(&at.strip, Qt::Key_End);
  EXPECT_EQ(at.strip.shown(), std::nullopt);
}

TEST(Strip, aNarrowStripGivesUpFiguresButNoName) {
  AtTheStrip at(demo(), 1400);
  using Keeps = ui::Strip::Keeps;
  EXPECT_EQ(at.strip.keeps(), Keeps::all);
  Keeps before = Keeps::all;
  for (int width = 1400; width >= 400; width -= 25) {
    at.strip.resize(width, at.strip.height());
    EXPECT_GE(at.strip.keeps(), before) << width;  // what was given up does not come back
    before = at.strip.keeps();
  }
  EXPECT_EQ(before, Keeps::name);
}

TEST(Strip, isReadOutAsAListOfNine) {
  AtTheStrip at(demo());
  QAccessibleInterface* list = QAccessible::queryAccessibleInterface(&at.strip);
  ASSERT_NE(list, nullptr);
  EXPECT_EQ(list->role(), QAccessible::List);
  ASSERT_EQ(list->childCount(), 9);
  for (int i = 0; i < 9; ++i) {
    EXPECT_EQ(list->child(i)->role(), QAccessible::ListItem);
    EXPECT_EQ(list->indexOfChild(list->child(i)), i);
  }
  EXPECT_EQ(list->child(2)->text(QAccessible::Name), "3, Under ground");
  EXPECT_TRUE(list->child(2)->text(QAccessible::Value).startsWith(at.strip.cells()[2].cost));
  list->child(2)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_EQ(at.strip.shown(), Stage::under_ground);
  EXPECT_TRUE(list->child(2)->state().selected);
  EXPECT_FALSE(list->child(3)->state().selected);
}

QImage section(const ui::StripKinds& kinds, std::optional<Stage> upto = std::nullopt) {
  QImage image(1024, 70, QImage::Format_ARGB32_Premultiplied);
  image.fill(ui::theme().panel);
  QPainter painter(&image);
  ui::paint_strip_section(painter, QRectF(0, 0, 1024, 70), kinds, upto);
  return image;
}
// Cell i of nine, without the px next to its ends.
QImage cell_of(const QImage& image, int i) { return image.copy(i * 1024 / 9 + 2, 0, 1024 / 9 - 4, image.height()); }

TEST(Strip, whatAJobHasNotIsNotDrawn) {
  const ui::StripKinds all{true, true, true, true, true, true};
  ui::StripKinds other = all;
  other.wall = false;
  EXPECT_NE(cell_of(section(all), 3), cell_of(section(other), 3));
  EXPECT_EQ(cell_of(section(all), 6), cell_of(section(other), 6));
  other = all;
  other.pool = false;
  EXPECT_NE(cell_of(section(all), 5), cell_of(section(other), 5));
  EXPECT_EQ(cell_of(section(all), 3), cell_of(section(other), 3));

  const ui::StripKinds of_demo = ui::strip_kinds(demo());
  EXPECT_TRUE(of_demo.any && of_demo.pool && of_demo.wall && of_demo.pipe && of_demo.kerb && of_demo.paving);
  EXPECT_EQ(ui::strip_kinds(without_elements()), ui::StripKinds{});
}

TEST(Strip, whatComesLaterIsDrawnOtherwise) {
  const ui::StripKinds all{true, true, true, true, true, true};
  EXPECT_NE(cell_of(section(all, Stage::base), 6), cell_of(section(all), 6));                 // paving is later
  EXPECT_EQ(cell_of(section(all, Stage::paving), 3), cell_of(section(all), 3));               // the wall is built
  EXPECT_NE(cell_of(section(all, Stage::dig), 3), cell_of(section(all, Stage::wall), 3));     // and was not then
  EXPECT_NE(cell_of(section(all, Stage::protect), 1), cell_of(section(all, Stage::dig), 1));  // the hole
}

TEST(Strip, namesShowWholeAtLargeType) {
  ui::set_type_factor(1.44);
  AtTheStrip at(demo(), 1024);
  const QRectF cell = at.strip.cell(2);
  const QFontMetricsF small(ui::font(ui::Type::small, true));
  // At worst a name goes on in a second row; its longest word must have room in the cell.
  for (const ui::StripCell& told : at.strip.cells()) {
    for (const QString& word : told.name.split(' '))
      EXPECT_LE(small.horizontalAdvance(word), cell.width() - ui::px(12)) << word.toStdString();
  }
  ui::set_type_factor(1);
}

}  // namespace
