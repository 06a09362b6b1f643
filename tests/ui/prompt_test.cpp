// The prompt: what is typed reaches the tool, and what the tool shows never takes the field from the person.
#include "ui/panels/prompt.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include "ui/panels/prompt_field.h"
#include "ui/panels/tool_list.h"

namespace {

using ui::Prompt;

sketch::View area_view(const std::string& length = "4' 0\"") {
  sketch::View view;
  view.hand = "Area";
  view.wants = "Click the next corner, or type a length.";
  view.fields = {{"length", "Length", length, "", false, false}, {"angle", "Angle", "90", "", false, false}};
  view.choices = {{"line", "Line", true, false}, {"arc", "Arc", false, false}, {"close", "Close it", false, true}};
  return view;
}

struct Shown {
  Prompt prompt;
  Shown() {
    prompt.resize(952, 60);
    prompt.show();
    QApplication::setActiveWindow(&prompt);
    prompt.show_view(area_view(), "area");
  }
  QLineEdit* field(std::size_t number) { return prompt.fields()[number]->edit(); }
  template <class T>
  T* find(const char* name) {
    return prompt.findChild<T*>(QLatin1String(name));
  }
};

TEST(Prompt, saysWhatIsInHandAndWhatItWants) {
  Shown on;
  EXPECT_EQ(on.find<QLabel>("hand")->text(), "Area");
  EXPECT_EQ(on.find<QLabel>("wants")->text(), "Click the next corner, or type a length.");
  ASSERT_EQ(on.prompt.fields().size(), 2U);
  EXPECT_EQ(on.field(0)->text(), "4' 0\"");
  EXPECT_EQ(on.field(0)->accessibleName(), "Length");
}

TEST(Prompt, aDigitFromThePlanBeginsTheFirstField) {
  Shown on;
  QSignalSpy typed(&on.prompt, &Prompt::typed);
  QKeyEvent digit(QEvent::KeyPress, Qt::Key_1, Qt::NoModifier, "1");
  EXPECT_TRUE(on.prompt.take_key(&digit));
  EXPECT_EQ(on.field(0)->text(), "1");
  EXPECT_TRUE(on.field(0)->hasFocus());
  ASSERT_EQ(typed.count(), 1);
  EXPECT_EQ(typed[0][0].toString(), "length");
  EXPECT_EQ(typed[0][1].toString(), "1");
  EXPECT_FALSE(typed[0][2].toBool());
}

TEST(Prompt, lettersAndShortcutsStayWithThePlan) {
  Shown on;
  QKeyEvent letter(QEvent::KeyPress, Qt::Key_P, Qt::NoModifier, "p");
  EXPECT_FALSE(on.prompt.take_key(&letter));
  QKeyEvent held(QEvent::KeyPress, Qt::Key_1, Qt::ControlModifier, "1");
  EXPECT_FALSE(on.prompt.take_key(&held));
  on.prompt.show_view({"Pick", "Click what you want.", {}, {}, {}, {}, {}, false}, "pick");
  QKeyEvent digit(QEvent::KeyPress, Qt::Key_3, Qt::NoModifier, "3");
  EXPECT_FALSE(on.prompt.take_key(&digit)) << "a digit is a stage where nothing can be typed";
}

TEST(Prompt, aViewThatComesWhileTypingLeavesFocusCursorAndSelection) {
  Shown on;
  on.field(0)->setFocus();
  on.field(0)->selectAll();
  QTest::keyClicks(on.field(0), "12' 6");
  on.field(0)->setCursorPosition(2);
  sketch::View again = area_view("12' 6");
  again.fields[0].understood = "12' 6\"";
  again.fields[1].text = "45";
  again.wants = "Another sentence, much longer than the one before it was.";
  for (int i = 0; i < 3; ++i) on.prompt.show_view(again, "area");
  EXPECT_TRUE(on.field(0)->hasFocus());
  EXPECT_EQ(on.field(0)->text(), "12' 6");
  EXPECT_EQ(on.field(0)->cursorPosition(), 2);
  EXPECT_EQ(on.field(1)->text(), "45") << "the field that nobody types in follows the pointer";
  EXPECT_EQ(on.find<QLabel>("echo_length")->text(), "12' 6\"");
}

TEST(Prompt, tabLocksAndEnterLocksAndIsTheTools) {
  Shown on;
  QSignalSpy typed(&on.prompt, &Prompt::typed);
  QSignalSpy entered(&on.prompt, &Prompt::entered);
  on.field(0)->setFocus();
  on.field(0)->selectAll();
  QTest::keyClicks(on.field(0), "8");
  QTest::keyClick(on.field(0), Qt::Key_Tab);
  ASSERT_EQ(typed.count(), 2);
  EXPECT_TRUE(typed[1][2].toBool());
  EXPECT_EQ(typed[1][1].toString(), "8");
  EXPECT_TRUE(on.field(1)->hasFocus()) << "Tab goes on to the angle";
  QTest::keyClicks(on.field(1), "45");
  QTest::keyClick(on.field(1), Qt::Key_Return);
  EXPECT_TRUE(typed.last()[2].toBool());
  EXPECT_EQ(entered.count(), 1);
  QTest::keyClick(on.field(1), Qt::Key_Return);
  EXPECT_EQ(entered.count(), 2);
}

TEST(Prompt, escapeAndBackspaceInAFieldNobodyTypedInAreTheTools) {
  Shown on;
  QSignalSpy keyed(&on.prompt, &Prompt::keyed);
  on.field(0)->setFocus();
  QTest::keyClick(on.field(0), Qt::Key_Backspace);
  ASSERT_EQ(keyed.count(), 1);
  EXPECT_EQ(keyed[0][0].value<sketch::Key>(), sketch::Key::back);
  QTest::keyClicks(on.field(0), "12");
  QTest::keyClick(on.field(0), Qt::Key_Backspace);
  EXPECT_EQ(keyed.count(), 1);
  EXPECT_EQ(on.field(0)->text(), "1") << "what was typed is mended as in any field";
  QTest::keyClick(on.field(0), Qt::Key_Escape);
  ASSERT_EQ(keyed.count(), 2);
  EXPECT_EQ(keyed[1][0].value<sketch::Key>(), sketch::Key::escape);
}

TEST(Prompt, whatIsNotReadSaysSoInWordsToo) {
  Shown on;
  sketch::View wrong = area_view("45x");
  wrong.fields[0].wrong = true;
  wrong.fields[0].understood = "45x is no length";
  on.prompt.show_view(wrong, "area");
  EXPECT_EQ(on.find<QLabel>("echo_length")->text(), "not read");
  auto* note = on.find<QWidget>("prompt_wrong");
  EXPECT_TRUE(note->isVisible());
  EXPECT_EQ(note->accessibleName(), "Length: 45x is no length");
  on.prompt.show_view(area_view(), "area");
  EXPECT_FALSE(note->isVisible());
}

TEST(Prompt, choicesArePressedAndFieldsThatGoGiveTheKeyboardBack) {
  Shown on;
  QSignalSpy chosen(&on.prompt, &Prompt::chosen);
  QSignalSpy lost(&on.prompt, &Prompt::lost_field);
  EXPECT_TRUE(on.find<QAbstractButton>("choice_line")->isChecked());
  on.find<QAbstractButton>("choice_arc")->click();
  on.find<QAbstractButton>("choice_close")->click();
  ASSERT_EQ(chosen.count(), 2);
  EXPECT_EQ(chosen[0][0].toString(), "arc");
  EXPECT_EQ(chosen[1][0].toString(), "close");
  on.field(0)->setFocus();
  on.prompt.show_view({"Pick", "Click what you want.", {}, {}, {}, {}, {}, false}, "pick");
  EXPECT_GE(lost.count(), 1);  // of the field, and of the choice that has the keyboard where nobody takes it
  EXPECT_TRUE(on.prompt.fields().empty());
}

TEST(Prompt, sentencesAreClosedByTheirCross) {
  Shown on;
  on.prompt.say("The area closed: A3.");
  auto* note = on.find<QWidget>("prompt_said");
  EXPECT_TRUE(note->isVisible());
  on.find<QAbstractButton>("prompt_said_close")->click();
  EXPECT_FALSE(note->isVisible());
}

TEST(Prompt, theFirstNoteHasThreeLinks) {
  Shown on;
  QSignalSpy tried(&on.prompt, &Prompt::tried);
  on.prompt.show_first_note();
  for (const char* link : {"try_stage", "try_corner", "try_crew_list"}) on.find<QAbstractButton>(link)->click();
  ASSERT_EQ(tried.count(), 3);
  EXPECT_EQ(tried[0][0].toString(), "stage");
  EXPECT_EQ(tried[2][0].toString(), "crew_list");
}

// What stands in the row at 952 px goes on in a second one where it is narrower, and nothing reaches past the edge.
TEST(Prompt, wrapsWhereItIsNarrow) {
  Shown on;
  const int wide = on.prompt.heightForWidth(1400);
  const int narrow = on.prompt.heightForWidth(420);
  EXPECT_GT(narrow, wide);
  on.prompt.resize(420, narrow);
  QApplication::processEvents();
  for (const char* name : {"wants", "prompt_length", "prompt_angle", "choice_arc", "choice_close"}) {
    const QWidget* part = on.find<QWidget>(name);
    EXPECT_LE(part->mapTo(&on.prompt, QPoint(part->width(), 0)).x(), 420) << name;
  }
}

TEST(ToolList, picksByMouseAndKeysAndShowsWhatIsInHand) {
  ui::ToolList tools;
  tools.resize(72, 400);
  tools.show();
  QApplication::setActiveWindow(&tools);
  QSignalSpy picked(&tools, &ui::ToolList::picked);
  auto* area = tools.findChild<QAbstractButton*>("tool_area");
  QTest::mouseClick(area, Qt::LeftButton);
  ASSERT_EQ(picked.count(), 1);
  EXPECT_EQ(tools.hand(), sketch::Hand::area);
  EXPECT_TRUE(area->isChecked());
  area->setFocus();
  QTest::keyClick(area, Qt::Key_Down);
  EXPECT_EQ(picked.count(), 1) << "arrow keys only move";
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  ASSERT_EQ(picked.count(), 2);
  EXPECT_EQ(tools.hand(), sketch::Hand::edge) << "the edge stands under the area";
  tools.show_hand(sketch::Hand::pick);
  EXPECT_EQ(picked.count(), 2) << "what is shown was not picked";
  EXPECT_FALSE(area->isChecked());
}

}  // namespace
