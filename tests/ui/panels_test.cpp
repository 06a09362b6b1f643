// The panel of what is selected, used as a person would: typed into, chosen from, with the keyboard.
#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>
#include <QWheelEvent>

#include "files/starter.h"
#include "results/demo_jobs.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/item_choice.h"
#include "ui/panels/length_field.h"
#include "ui/panels/measure_grid.h"
#include "ui/panels/pattern_page.h"
#include "ui/panels/selected_panel.h"
#include "ui/panels/start_box.h"

using ui::Measure;
using ui::Value;
using units::Length;
using units::System;

namespace {

class Panel : public testing::Test {
 protected:
  Panel() : desk(std::make_shared<const plan::Job>(demo::job("pool-terrace-a"))), panel(desk) {
    panel.set_source([] { return std::make_shared<const catalogue::Catalogue>(starter()); });
    panel.resize(416, 900);
    panel.show();
    desk.select({"A1"});
  }
  bool computed() {
    return QTest::qWaitFor([this] { return !desk.computing() && desk.results(); }, 60000);
  }
  const plan::PavedArea& area(const plan::ElementId& id) const {
    return std::get<plan::PavedArea>(desk.job().find(id)->kind);
  }
  template <class Input>
  Input* input(const std::string& id) const {
    ui::FieldEditor* editor = panel.editor(id);
    EXPECT_NE(editor, nullptr) << id;
    return editor ? qobject_cast<Input*>(editor->input()) : nullptr;
  }
  ui::Desk desk;
  ui::SelectedPanel panel;
};

void type(QLineEdit* line, const QString& text) {
  line->setFocus();
  line->selectAll();
  QTest::keyClicks(line, text);
}

}  // namespace

// --- lengths

TEST(LengthField, ReadsWhatTheTradeWritesAndEchoesIt) {
  ui::LengthField field(System::us, Measure::part);
  field.set_value(Value(Length::inches(6)));
  EXPECT_EQ(field.text(), "6″");
  field.show();
  type(&field, "1' 2 1/2");
  EXPECT_EQ(field.echo(), "1′ 2 1/2″");
  QTest::keyClick(&field, Qt::Key_Return);
  EXPECT_EQ(field.value(), Value(Length::inch_64ths(64 * 14 + 32)));
  EXPECT_TRUE(field.echo().isEmpty());
}

TEST(LengthField, ABareNumberIsInchesOfAPartAndFeetOfADistance) {
  EXPECT_EQ(ui::length_typing(System::us, Measure::part, false, false).read("4"), Value(Length::inches(4)));
  EXPECT_EQ(ui::length_typing(System::us, Measure::distance, false, false).read("4"), Value(Length::feet(4)));
  EXPECT_EQ(ui::length_typing(System::metric, Measure::part, false, false).read("4"), Value(Length::millimetres(4)));
  EXPECT_EQ(ui::length_typing(System::metric, Measure::height, false, false).read("4"),
            Value(Length::millimetres(4000)));
}

TEST(LengthField, RefusesWithASentenceAndKeepsTheOldValue) {
  ui::LengthField field(System::us, Measure::part);
  field.set_value(Value(Length::inches(6)));
  field.show();
  QApplication::setActiveWindow(&field);
  QString refused;
  QObject::connect(&field, &ui::TypedField::refused, [&refused](const QString& sentence) { refused = sentence; });
  type(&field, "six");
  EXPECT_FALSE(field.echo().isEmpty());
  QTest::keyClick(&field, Qt::Key_Return);
  EXPECT_EQ(field.value(), Value(Length::inches(6)));
  EXPECT_EQ(field.text(), "six");  // still there to be mended
  QTest::keyClick(&field, Qt::Key_Escape);
  EXPECT_EQ(ui::length_typing(System::us, Measure::part, false, false).read(field.text()), Value(Length::inches(6)));
  type(&field, "six");
  field.clearFocus();
  EXPECT_FALSE(refused.isEmpty());
  EXPECT_EQ(field.text(), "6″");
}

TEST(LengthField, NotBelowZeroWhereThatCantBe) {
  const ui::Typing typing = ui::length_typing(System::us, Measure::part, false, true);
  EXPECT_FALSE(typing.read("-1"));
  EXPECT_EQ(typing.step(Value(Length()), -1), Value(Length()));
}

TEST(LengthField, ArrowsStepASixteenthAndTenWithShift) {
  ui::LengthField field(System::us, Measure::part);
  field.set_value(Value(Length::inches(6)));
  field.show();
  field.setFocus();
  int given = 0;
  QObject::connect(&field, &ui::TypedField::given, [&given] { ++given; });
  QTest::keyClick(&field, Qt::Key_Up);
  QTest::keyClick(&field, Qt::Key_Up, Qt::ShiftModifier);
  QTest::keyClick(&field, Qt::Key_Down);
  EXPECT_TRUE(QTest::qWaitFor([&given] { return given > 0; }, 5000));
  EXPECT_EQ(field.value(), Value(Length::inch_64ths(6 * 64 + 40)));  // + 1 + 10 - 1 sixteenths
  EXPECT_EQ(given, 1);                                               // a run of steps is one
}

TEST(LengthField, TheWheelChangesNothing) {
  ui::LengthField field(System::us, Measure::part);
  field.set_value(Value(Length::inches(6)));
  field.show();
  QWheelEvent wheel({5, 5}, {5, 5}, {}, {0, 120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  QApplication::sendEvent(&field, &wheel);
  EXPECT_EQ(field.value(), Value(Length::inches(6)));
}

TEST(LengthField, WhatIsShownRoundedIsNotLostByLookingAtIt) {
  ui::LengthField field(System::us, Measure::part);
  const Length odd = Length::of_steps(8128 * 6 + 77);
  field.set_value(Value(odd));
  field.show();
  int given = 0;
  QObject::connect(&field, &ui::TypedField::given, [&given] { ++given; });
  field.setFocus();
  QTest::keyClick(&field, Qt::Key_Return);
  field.clearFocus();
  EXPECT_EQ(field.value(), Value(odd));
  EXPECT_EQ(given, 0);
}

TEST(NumberField, PercentDegreesAndAreasInTheJobsUnits) {
  ui::Field fall;
  fall.editor = ui::Editor::percent;
  fall.least = 0;
  fall.greatest = 1;
  const ui::Typing percent = ui::number_typing(fall, System::us);
  EXPECT_EQ(percent.read("2.1 %"), Value(0.021));
  EXPECT_EQ(percent.show(Value(0.021)), "2.1 %");
  EXPECT_FALSE(percent.read("101"));
  EXPECT_FALSE(percent.read("2,1"));
  ui::Field taped;
  taped.editor = ui::Editor::area;
  taped.least = 0;
  const auto read = ui::number_typing(taped, System::us).read("100 ft²");
  ASSERT_TRUE(read);
  EXPECT_NEAR(std::get<double>(*read), 9.290304, 1e-12);  // 100 x 0.3048 x 0.3048
}

// --- the panel

TEST_F(Panel, ShowsTheSixMeasuresOfTheDeck) {
  ASSERT_TRUE(computed());
  const auto* grid = panel.findChild<ui::MeasureGrid*>("measures");
  EXPECT_EQ(grid->value("Net area"), "696.0 ft²");  // demo-answers.csv: 696.0037 sq ft
  EXPECT_FALSE(grid->old());
}

TEST_F(Panel, OldNumbersStayWhileNewOnesAreComputed) {
  ASSERT_TRUE(computed());
  const auto* grid = panel.findChild<ui::MeasureGrid*>("measures");
  desk.edit(plan::without(desk.job(), "P1"), "take P1 out");
  EXPECT_TRUE(grid->old());
  EXPECT_EQ(grid->value("Net area"), "696.0 ft²");
  ASSERT_TRUE(computed());
  EXPECT_FALSE(grid->old());
  EXPECT_EQ(grid->value("Net area"), "700.0 ft²");  // the pillar was 24 x 24 in: 4 sq ft
}

TEST_F(Panel, AThicknessIsTypedAndTakenBackByItsName) {
  ASSERT_TRUE(computed());
  auto* field = input<QLineEdit>("layer/2/thickness");
  ASSERT_NE(field, nullptr);
  type(field, "8");
  QTest::keyClick(field, Qt::Key_Return);
  EXPECT_EQ(desk.job().catalogue->build_up(area("A1").build_up)->layers[2].thickness, Length::inches(8));
  EXPECT_NE(desk.history().undo_name().find("A1"), std::string::npos);
  desk.undo();
  EXPECT_EQ(area("A1").build_up, "hybrid-foot");
}

TEST_F(Panel, APatternIsChosenFromTheBookWithTheKeyboard) {
  desk.select({"W"});
  panel.show_tab(ui::SelectedPanel::pattern);
  auto* choice = input<ui::ItemChoice>("pattern");
  ASSERT_NE(choice, nullptr);
  ui::OfferList* list = choice->open();
  QTest::keyClicks(list->search(), "herring 90");
  QTest::keyClick(list->search(), Qt::Key_Return);
  EXPECT_EQ(area("W").laying->pattern, "herringbone-90");
  EXPECT_NE(desk.job().catalogue->pattern("herringbone-90"), nullptr);
}

TEST_F(Panel, EscLeavesTheChoiceAsItWas) {
  panel.show_tab(ui::SelectedPanel::pattern);
  ui::OfferList* list = input<ui::ItemChoice>("pattern")->open();
  QTest::keyClick(list->search(), Qt::Key_Down);
  QTest::keyClick(list->search(), Qt::Key_Escape);
  EXPECT_FALSE(desk.history().can_undo());
}

TEST_F(Panel, TheListIsNotTurnedByTheWheelInPassing) {
  panel.show_tab(ui::SelectedPanel::levels);
  auto* way = input<QComboBox>("finish/way");
  ASSERT_NE(way, nullptr);
  way->clearFocus();
  QWheelEvent wheel({5, 5}, {5, 5}, {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  QApplication::sendEvent(way, &wheel);
  EXPECT_FALSE(desk.history().can_undo());
}

TEST_F(Panel, ANameIsTyped) {
  auto* name = panel.findChild<QLineEdit*>("selected/name");
  type(name, "Upper deck");
  QTest::keyClick(name, Qt::Key_Return);
  EXPECT_EQ(desk.job().find("A1")->name, "Upper deck");
  EXPECT_EQ(desk.history().undo_name(), "Rename A1");
}

TEST_F(Panel, NothingSelectedItShowsTheJob) {
  desk.select({});
  auto* customer = input<QLineEdit>("job/customer");
  ASSERT_NE(customer, nullptr);
  type(customer, "Nobody");
  QTest::keyClick(customer, Qt::Key_Return);
  EXPECT_EQ(desk.job().heading.customer, "Nobody");
  auto* units = input<QComboBox>("job/units");
  QTest::keyClick(units, Qt::Key_Down);
  EXPECT_EQ(desk.job().heading.units, System::metric);
  desk.select({"P"});
  EXPECT_TRUE(input<QLineEdit>("shell")->text().endsWith("mm"));
}

TEST_F(Panel, EveryElementOfTheDemoJobsCanBeSelectedAndEveryTabShown) {
  ASSERT_TRUE(computed());
  for (const plan::ElementPtr& element : desk.job().elements) {
    desk.select({element->id});
    for (const auto tab :
         {ui::SelectedPanel::build_up, ui::SelectedPanel::pattern, ui::SelectedPanel::edges, ui::SelectedPanel::levels})
      panel.show_tab(tab);
    panel.show_tab(ui::SelectedPanel::build_up);
  }
  EXPECT_FALSE(desk.history().can_undo());  // looking changes nothing
}

TEST_F(Panel, EveryFieldHasANameAndIsReachedByTab) {
  ASSERT_TRUE(computed());
  for (const char* id : {"A1", "P", "RW", "S", "K1", "D1", "H", "M1"}) {
    desk.select({id});
    for (const ui::FieldEditor* editor : panel.findChildren<ui::FieldEditor*>()) {
      if (!editor->isVisible() || editor->field().editor == ui::Editor::told) continue;
      EXPECT_FALSE(editor->input()->accessibleName().isEmpty()) << id << " " << editor->field().id;
      EXPECT_TRUE(editor->input()->focusPolicy() & Qt::TabFocus) << id << " " << editor->field().id;
    }
  }
}

TEST_F(Panel, NoFieldIsCutOffInANarrowPanel) {
  ASSERT_TRUE(computed());
  panel.resize(360, 700);
  for (const char* id : {"A1", "P", "RW", "S", "K1", "D1"}) {
    desk.select({id});
    QApplication::processEvents();
    for (const ui::FieldEditor* editor : panel.findChildren<ui::FieldEditor*>()) {
      if (!editor->isVisible()) continue;
      const int right = editor->mapTo(&panel, QPoint(editor->width(), 0)).x();
      EXPECT_LE(right, panel.width()) << id << " " << editor->field().id;
    }
  }
}

TEST_F(Panel, FewestCutsIsOneActionThatShowsBeforeAndAfter) {
  desk.select({"W"});
  ASSERT_TRUE(computed());
  panel.show_tab(ui::SelectedPanel::pattern);
  auto* box = panel.findChild<ui::StartBox*>("start-box");
  box->find(takeoff::paving::For::cuts);
  ASSERT_TRUE(QTest::qWaitFor([box] { return !box->busy(); }, 120000));
  EXPECT_TRUE(box->told().contains("Cut units"));
  EXPECT_TRUE(box->told().contains("→"));
}
