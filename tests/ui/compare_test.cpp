// Two versions side by side, as a person sees them.
#include "ui/compare/compare_window.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTest>
#include <QTreeWidget>

#include "person.h"
#include "plan/instead.h"
#include "ui/look/style.h"

namespace {

ui::Version version_of(plan::Job job, const QString& name) {
  const auto made = results::compute(std::make_shared<const plan::Job>(std::move(job)));
  return {made.job, estimate::kept(*made.job, made.estimate, made.priced, "test"), name};
}

// The demo job with every price a tenth up (to the coin), and without its first paved area.
const std::pair<ui::Version, ui::Version>& versions() {
  static const auto made = [] {
    const plan::Job before = person::job_of("bakery-court");
    catalogue::Catalogue list = *before.catalogue;
    for (auto& [id, item] : list.items) {
      if (!item->price) continue;
      catalogue::Item dearer = *item;
      dearer.price->amount = units::times(dearer.price->amount, 1.1);
      item = std::make_shared<const catalogue::Item>(dearer);
    }
    plan::Job after = plan::at_prices_of(before, list);
    after = plan::without(after, after.elements.back()->id);
    return std::pair{version_of(before, "first"), version_of(after, "third")};
  }();
  return made;
}

TEST(CompareWindow, showsEveryChangeAndTheTotalOfBoth) {
  const auto& [before, after] = versions();
  ui::CompareWindow window(before, after);
  window.show();
  ASSERT_FALSE(window.comparison().changes.empty());
  auto* lines = window.findChild<QTreeWidget*>("compare-lines");
  int rows = 0;
  for (int stage = 0; stage < lines->topLevelItemCount(); ++stage) rows += lines->topLevelItem(stage)->childCount();
  EXPECT_EQ(rows, static_cast<int>(window.comparison().changes.size()));
  EXPECT_EQ(window.comparison().total_by, after.kept.total - before.kept.total);
  EXPECT_EQ(window.findChild<QLabel*>("compare-total")->text(), window.total_words());
  auto* pages = window.findChild<QTabWidget*>("compare-pages");
  pages->setFocus();
  QTest::keyClick(pages->focusProxy() ? pages->focusProxy() : pages, Qt::Key_Right);
  EXPECT_EQ(pages->currentIndex(), 1) << "reached with the keyboard";
  auto* drawing = window.findChild<QTreeWidget*>("compare-drawing");
  EXPECT_FALSE(drawing->findItems("gone", Qt::MatchExactly, 1).isEmpty());
  EXPECT_NE(window.text().find("The price"), std::string::npos);
  QTest::mouseClick(window.findChild<QPushButton*>("compare-close"), Qt::LeftButton);
  EXPECT_FALSE(window.isVisible());
}

TEST(CompareWindow, looksRight) {
  const QByteArray folder = qgetenv("HOUSE_PICTURES");
  if (folder.isEmpty()) GTEST_SKIP() << "pictures are made where HOUSE_PICTURES names a folder";
  const auto& [before, after] = versions();
  for (const bool dark : {false, true})
    for (const double factor : {1.0, 1.44}) {
      ui::set_dark(dark);
      ui::set_type_factor(factor);
      ui::CompareWindow window(before, after);
      window.show();
      const QString name = QString("/compare-%1-%2.png").arg(dark ? "dark" : "light").arg(factor);
      EXPECT_TRUE(window.grab().save(QString::fromLocal8Bit(folder) + name));
    }
  ui::set_dark(false);
  ui::set_type_factor(1);
}

}  // namespace
