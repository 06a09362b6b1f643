// A whole field sheet typed with the keys of a keyboard, and its residuals read off the table.
#include "ui/panels/taped_panel.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <cmath>

#include "catalogue/catalogue.h"

namespace {

using Column = ui::TapesModel::Column;

plan::Job empty_job(units::System system = units::System::us) {
  plan::Job job;
  job.heading.units = system;
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  return job;
}

geometry::Point feet(double x, double y) {
  return {units::Length::of_steps(std::llround(x * 12 * 8128)), units::Length::of_steps(std::llround(y * 12 * 8128))};
}

struct Sheet {
  explicit Sheet(plan::Job job = empty_job()) : desk(std::make_shared<const plan::Job>(std::move(job))), panel(desk) {
    panel.resize(1000, 620);
    panel.show();
    QApplication::setActiveWindow(&panel);
  }
  template <class T>
  T* child(const char* name) {
    T* found = panel.findChild<T*>(QString::fromLatin1(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  void focus(const char* name) { child<QWidget>(name)->setFocus(); }
  // Into whatever has the keyboard; `|` is Tab, `~` is Enter.
  void keys(const QString& text) {
    for (const QChar letter : text) {
      QWidget* at = QApplication::focusWidget();
      ASSERT_NE(at, nullptr);
      if (letter == '|')
        QTest::keyClick(at, Qt::Key_Tab);
      else if (letter == '~')
        QTest::keyClick(at, Qt::Key_Return);
      else
        QTest::keyClick(at, letter.toLatin1());
    }
  }
  QString cell(int row, int column) {
    const QAbstractItemModel* model = child<ui::FieldSheet>("tapes")->model();
    return model->index(row, column).data().toString();
  }
  void stand_at(int row, int column) {
    auto* sheet = child<ui::FieldSheet>("tapes");
    sheet->setFocus();
    sheet->setCurrentIndex(sheet->model()->index(row, column));
  }
  const plan::TapeBook& book() const {
    for (const auto& element : desk.job().elements)
      if (const auto* found = std::get_if<plan::TapeBook>(&element->kind)) return *found;
    static const plan::TapeBook none;
    return none;
  }
  void stakes() {
    focus("known-points");
    keys("A|0|0|B|30|0|");
  }

  ui::Desk desk;
  ui::TapedPanel panel;
};

}  // namespace

// A (0, 0), B (30, 0). C is tied 25 ft from both: (15, 20). By Tab from cell to cell: point, way (stays), from, reads,
// side (stays); the row after it is there by itself.
TEST(TapedPanel, WholeSheetByTab) {
  Sheet sheet;
  sheet.stakes();
  ASSERT_EQ(sheet.book().known.size(), 2U);
  EXPECT_EQ(sheet.book().known[1].name, "B");
  EXPECT_EQ(sheet.book().known[1].at, feet(30, 0));
  sheet.focus("tapes");
  sheet.keys("C||A|25'||C||B|25|");
  ASSERT_EQ(sheet.book().rows.size(), 2U);
  EXPECT_EQ(sheet.book().rows[1].from, "B");
  EXPECT_EQ(sheet.book().rows[1].measure, units::Length::feet(25));  // a bare number is in feet
  EXPECT_EQ(sheet.cell(0, Column::state), "no check");
  EXPECT_EQ(sheet.cell(0, Column::residual), sheet.cell(1, Column::residual));
  const auto* sum = sheet.child<QLabel>("tape-sum");
  EXPECT_TRUE(sum->text().contains("Points found: 1")) << sum->text().toStdString();
  // Each cell was an edit with its name.
  EXPECT_EQ(sheet.desk.history().undo_name(), "Type tape 2");
}

// By Enter alone: it goes to the row's next empty cell, then to the next row. A third tie from E (15, 0) reads 1 in too
// much; struck out, its residual is the whole inch.
TEST(TapedPanel, EnterGoesOnAndResidualsShow) {
  Sheet sheet;
  plan::TapeBook book{{{"A", feet(0, 0)}, {"B", feet(30, 0)}, {"E", feet(15, 0)}}, {}};
  sheet.desk.edit(plan::with(empty_job(), {"X", {}, book}), "stakes");
  sheet.focus("tapes");
  sheet.keys("C~A~25~C~B~25~C~E~20'1\"~");
  ASSERT_EQ(sheet.book().rows.size(), 3U);
  EXPECT_EQ(sheet.book().rows[2].measure, units::Length::inches(241));
  // Three readings for two unknowns, see the arithmetic of the same sheet in core: +0.5614 in is 9/16 to a sixteenth,
  // -0.3509 in is 3/8 (0.351 x 16 = 5.6, so 6/16).
  EXPECT_EQ(sheet.cell(2, Column::residual), QString::fromUtf8("+9/16″"));
  EXPECT_EQ(sheet.cell(0, Column::residual), QString::fromUtf8("−3/8″"));
  EXPECT_EQ(sheet.cell(2, Column::state), "disagrees");  // which of the three does not show

  sheet.stand_at(2, Column::measure);
  sheet.child<QPushButton>("strike-out")->click();
  EXPECT_EQ(QApplication::focusWidget(), sheet.child<QLineEdit>("strike-reason"));
  sheet.keys("~");  // no reason: it asks on
  EXPECT_TRUE(sheet.book().rows[2].struck.empty());
  sheet.keys("hook slipped~");
  EXPECT_EQ(sheet.book().rows[2].struck, "hook slipped");
  EXPECT_EQ(sheet.cell(2, Column::residual), QString::fromUtf8("+1″"));
  EXPECT_EQ(sheet.cell(2, Column::state), "struck out: hook slipped");
  sheet.stand_at(2, Column::measure);
  EXPECT_EQ(sheet.child<QPushButton>("strike-out")->text(), "Count it again");
  sheet.child<QPushButton>("strike-out")->click();
  EXPECT_TRUE(sheet.book().rows[2].struck.empty());
}

// Offsets take `to` and `offset` too, and the row after goes on along the same line.
TEST(TapedPanel, OffsetsAskForTheirLine) {
  Sheet sheet;
  sheet.stakes();
  sheet.focus("tapes");
  sheet.keys("P|o|A|B|12|5|r|");
  ASSERT_EQ(sheet.book().rows.size(), 1U);
  EXPECT_EQ(sheet.book().rows[0].way, plan::Taped::Way::offset);
  EXPECT_EQ(sheet.book().rows[0].offset, units::Length::feet(5));
  EXPECT_EQ(sheet.book().rows[0].side, geometry::Side::right);
  sheet.keys("Q||||20|");
  ASSERT_EQ(sheet.book().rows.size(), 2U);
  EXPECT_EQ(sheet.book().rows[1].to, "B");
  EXPECT_EQ(sheet.book().rows[1].measure, units::Length::feet(20));
}

// What can't be read stays in the cell with its sentence; what can is echoed.
TEST(TapedPanel, UnreadableTextStays) {
  Sheet sheet;
  sheet.stakes();
  sheet.focus("tapes");
  sheet.keys("C||A|");
  sheet.keys("12' 6 1/2\"");
  EXPECT_EQ(sheet.child<QLabel>("tape-echo")->text(), QString::fromUtf8("12′ 6 1/2″"));
  sheet.keys("x|");
  EXPECT_FALSE(sheet.child<QLabel>("tape-echo")->text().isEmpty());
  auto* editor = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  ASSERT_NE(editor, nullptr);
  EXPECT_EQ(editor->text(), "12' 6 1/2\"x");
  EXPECT_EQ(sheet.book().rows[0].measure, units::Length());
  QTest::keyClick(editor, Qt::Key_Backspace);
  sheet.keys("|");
  EXPECT_EQ(sheet.book().rows[0].measure, units::Length::inch_64ths(150 * 64 + 32));  // 150 1/2 in
}

TEST(TapedPanel, MetricJobsReadMetres) {
  Sheet sheet(empty_job(units::System::metric));
  sheet.focus("known-points");
  sheet.keys("A|0|0|B|12|0|");
  EXPECT_EQ(sheet.book().known[1].at.x, units::Length::millimetres(12000));
  sheet.focus("tapes");
  sheet.keys("C||A|7.25|");
  EXPECT_EQ(sheet.cell(0, Column::measure), "7.250 m");
}

// Worst first: the rows of the sheet in core where tape 3 is 9/16 in off and the others 3/8 in.
TEST(TapedPanel, WorstFirst) {
  plan::TapeBook book{{{"A", feet(0, 0)}, {"B", feet(30, 0)}, {"E", feet(15, 0)}}, {}};
  for (const auto& [from, inches] : {std::pair("A", 300), std::pair("B", 300), std::pair("E", 241)})
    book.rows.push_back({"C", plan::Taped::Way::tie, from, {}, units::Length::inches(inches), {}, {}, {}});
  Sheet sheet(plan::with(empty_job(), {"X", {}, book}));
  EXPECT_EQ(sheet.cell(0, Column::number), "1");
  sheet.child<QPushButton>("worst-first")->click();
  EXPECT_EQ(sheet.cell(0, Column::number), "3");
  EXPECT_EQ(sheet.cell(0, Column::from), "E");
  sheet.child<QPushButton>("worst-first")->click();
  EXPECT_EQ(sheet.cell(2, Column::number), "3");
}

// Drawn through the points: an area of 30 x 20 ft with its corners at the stakes and the tied points.
TEST(TapedPanel, DrawsThroughThePoints) {
  plan::TapeBook book{{{"A", feet(0, 0)}, {"B", feet(30, 0)}, {"C", feet(30, 20)}, {"D", feet(0, 20)}}, {}};
  Sheet sheet(plan::with(empty_job(), {"X", {}, book}));
  sheet.focus("through");
  sheet.keys("A B C D~");
  const plan::Element* area = sheet.desk.the_selected();
  ASSERT_NE(area, nullptr);
  const auto* paved = std::get_if<plan::PavedArea>(&area->kind);
  ASSERT_NE(paved, nullptr);
  ASSERT_EQ(paved->outline.size(), 1U);
  EXPECT_EQ(paved->outline[0].edges.size(), 4U);
  EXPECT_EQ(paved->outline[0].edges[2].from, feet(30, 20));
  EXPECT_EQ(sheet.desk.history().undo_name(), "Draw A1 through taped points");

  auto* as = sheet.child<QComboBox>("draw-as");
  as->setCurrentIndex(as->findText("Levels"));
  sheet.child<QPushButton>("draw-through")->click();
  EXPECT_EQ(sheet.desk.selected().size(), 4U);
  as->setCurrentIndex(as->findText("Wall"));
  sheet.child<QLineEdit>("through")->setText("A, (B), C, Z");
  const auto before = sheet.desk.job_ptr();
  sheet.child<QPushButton>("draw-through")->click();
  EXPECT_EQ(sheet.desk.job_ptr(), before);
  EXPECT_TRUE(sheet.child<QLabel>("tape-echo")->text().contains("\"Z\""));

  // Corners of what is drawn are known points by name.
  auto* corner = sheet.child<QComboBox>("corner");
  corner->setCurrentIndex(corner->findText("A1, corner 3"));
  sheet.child<QPushButton>("add-corner")->click();
  EXPECT_EQ(sheet.book().known.back().name, "A1-3");
  EXPECT_EQ(sheet.book().known.back().at, feet(30, 20));
}

TEST(TapedPanel, UndoTakesBackACell) {
  Sheet sheet;
  sheet.stakes();
  sheet.focus("tapes");
  sheet.keys("C||A|25|");
  while (sheet.desk.history().can_undo()) sheet.desk.undo();
  EXPECT_EQ(sheet.book(), plan::TapeBook{});
  EXPECT_EQ(sheet.child<ui::FieldSheet>("tapes")->model()->rowCount(), 1);
  while (sheet.desk.history().can_redo()) sheet.desk.redo();
  EXPECT_EQ(sheet.book().rows.at(0).measure, units::Length::feet(25));
  EXPECT_EQ(sheet.cell(0, Column::point), "C");
}
