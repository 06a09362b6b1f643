// The window as a whole: how it folds, what an empty job says, and a picture of every screen. HOUSE_PICTURES names the
// folder for the pictures; without it they are made and not kept.
#include <gtest/gtest.h>

#include <QDir>
#include <QSet>

#include "person.h"
#include "ui/look/theme.h"
#include "ui/panels/selected_panel.h"
#include "ui/panels/strip.h"
#include "ui/window/start_page.h"
#include "ui/words/words.h"

namespace {

using person::Person;

TEST(Window, anEmptyJobSaysHowToBegin) {
  Person who(person::empty_job());
  auto* start = who.window->findChild<ui::StartPage*>("start-page");
  ASSERT_NE(start, nullptr);
  EXPECT_TRUE(start->isVisible());
  who.press("start-area");
  EXPECT_EQ(who.window->plan().hand(), sketch::Hand::area);
  who.click(0, 0);
  EXPECT_FALSE(start->isVisible()) << "out of the way while something is drawn";
}

TEST(Window, aNarrowWindowFoldsItsRightSide) {
  Person who(person::job_of("bakery-court"));
  EXPECT_TRUE(who.window->right_side().isVisible());
  who.window->resize(1000, 700);
  QCoreApplication::processEvents();
  EXPECT_FALSE(who.window->right_side().isVisible());
  EXPECT_GE(who.window->plan().width(), 640);
  EXPECT_GE(who.window->plan().height(), 420);
  who.choose("next-part");
  EXPECT_TRUE(who.window->right_side().isVisible());
  who.window->resize(1440, 900);
  QCoreApplication::processEvents();
  EXPECT_TRUE(who.window->right_side().isVisible());
}

TEST(Window, theTitleAndUndoNameWhatTheyAre) {
  Person who(person::empty_job());
  plan::Job job = who.desk.job();
  job.heading.name = "Alder Court";
  who.desk.edit(job, "Name the job");
  EXPECT_TRUE(who.window->windowTitle().startsWith("Alder Court"));
  EXPECT_EQ(who.window->actions_by_id()["undo"].text(), "Undo Name the job");
  who.choose("undo");
  EXPECT_EQ(who.window->actions_by_id()["redo"].text(), "Redo Name the job");
}

// --- pictures

struct Look {
  const char* name;
  bool dark;
  double type;
  const char* language;
};

void keep(const QPixmap& picture, const QString& name) {
  ASSERT_FALSE(picture.isNull());
  // A picture of one colour shows nothing.
  const QImage image = picture.toImage().scaled(64, 64);
  QSet<QRgb> colours;
  for (int y = 0; y < 64; ++y) {
    for (int x = 0; x < 64; ++x) colours.insert(image.pixel(x, y));
  }
  EXPECT_GT(colours.size(), 20) << name.toStdString();
  const QString folder = qEnvironmentVariable("HOUSE_PICTURES");
  if (folder.isEmpty()) return;
  QDir().mkpath(folder);
  EXPECT_TRUE(picture.save(folder + "/" + name + ".png"));
}

class Pictures : public testing::TestWithParam<Look> {};

TEST_P(Pictures, ofEveryScreen) {
  const Look look = GetParam();
  ui::speak(look.language);
  ui::set_dark(look.dark);
  ui::set_type_factor(look.type);
  {
    Person who(person::job_of("pool-terrace-a"));
    ASSERT_TRUE(who.results());
    const QString name = QString::fromLatin1(look.name);
    const auto picture = [&](const char* what) {
      QCoreApplication::processEvents();
      QTest::qWait(60);
      keep(who.window->grab(), name + "-" + what);
    };
    who.window->show_first_start();
    picture("first-start");
    for (const char* id : {"A1", "P", "RW", "S", "K1", "D1", "H", "M1"}) {
      who.desk.select({id});
      picture(id);
    }
    who.desk.select({"A1"});
    auto* selected = who.window->findChild<ui::SelectedPanel*>();
    for (const auto tab : {ui::SelectedPanel::pattern, ui::SelectedPanel::edges, ui::SelectedPanel::levels}) {
      selected->show_tab(tab);
      picture(tab == ui::SelectedPanel::pattern ? "pattern" : tab == ui::SelectedPanel::edges ? "edges" : "levels");
    }
    who.desk.select({});
    for (std::size_t i = 0; i < takeoff::all_stages.size(); ++i) {
      who.desk.show_stage(takeoff::all_stages[i]);
      picture(("stage-" + std::to_string(i + 1)).c_str());
    }
    who.desk.show_stage(std::nullopt);
    who.choose("junctions");
    picture("junctions");
    who.window->plan().take_hand(sketch::Hand::area);
    who.click(-6, -6);
    QTest::mouseMove(&who.window->plan(), who.window->plan().sight().to_px({-2, -4}).toPoint());
    picture("drawing");
  }
  {
    Person who(person::empty_job());
    ASSERT_TRUE(who.results());
    QTest::qWait(60);
    keep(who.window->grab(), QString::fromLatin1(look.name) + "-empty");
  }
  ui::speak("en");
  ui::set_dark(false);
  ui::set_type_factor(1);
}

INSTANTIATE_TEST_SUITE_P(Looks, Pictures,
                         testing::Values(Look{"light", false, 1, "en"}, Look{"dark", true, 1, "en"},
                                         Look{"large", false, 1.44, "en"}, Look{"spanish", false, 1, "es"}),
                         [](const auto& look) { return std::string(look.param.name); });

}  // namespace
