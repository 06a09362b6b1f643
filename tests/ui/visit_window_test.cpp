// The enquiry and the site visit through their window: what is answered is one edit of the job, dated, with its photo.
#include "ui/office/visit_window.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTreeWidget>

#include "seat.h"
#include "ui/look/theme.h"
#include "ui/panels/field_form.h"
#include "ui/words/visit_words.h"
#include "ui/words/words.h"

namespace {

class Visiting {
 public:
  Visiting() {
    plan::Job job = at.desk.job();
    job.visit.clear();
    job.enquiry = {};
    at.desk.edit(job, "Nothing asked yet");
    at.window->actions_by_id()["visit"].trigger();
    window = at.window->findChild<ui::VisitWindow*>();
    if (window != nullptr) window->show_page(1);
    for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
  }
  template <class T>
  T* part(const char* name) const {
    return window->findChild<T*>(QString::fromLatin1(name));
  }
  void answer(const char* words) const {
    auto* text = part<QPlainTextEdit>("visit-answer");
    text->setFocus();
    text->selectAll();
    QTest::keyClicks(text, QString::fromUtf8(words));
    QTest::keyClick(text, Qt::Key_Tab);
  }
  const plan::VisitAnswer* entry(const char* point) const { return estimate::entry_of(at.desk.job(), point); }

  seat::Seat at;
  ui::VisitWindow* window = nullptr;
};

TEST(VisitWindow, anAnswerIsOneEditOfToday) {
  Visiting on;
  ASSERT_NE(on.window, nullptr);
  on.window->visit().choose("soil");
  EXPECT_TRUE(on.part<QLabel>("visit-assumption")->text().contains("common earth"));
  EXPECT_TRUE(on.part<QLabel>("visit-caution")->text().contains("competent person"));
  on.answer("clay over rock");
  ASSERT_NE(on.entry("soil"), nullptr);
  EXPECT_EQ(on.entry("soil")->answer, "clay over rock");
  EXPECT_EQ(on.entry("soil")->when, QDate::currentDate().toString(Qt::ISODate).toStdString());
  EXPECT_TRUE(on.part<QLabel>("visit-assumption")->isHidden()) << "answered, it is no assumption";
  EXPECT_EQ(on.window->visit().chosen(), "soil");
  on.at.desk.undo();
  EXPECT_EQ(on.entry("soil"), nullptr);
  EXPECT_TRUE(on.part<QPlainTextEdit>("visit-answer")->toPlainText().isEmpty());
}

TEST(VisitWindow, aDateIsADate) {
  Visiting on;
  on.window->visit().choose("gate");
  on.answer("1.1 m");
  auto* when = on.part<QLineEdit>("visit-when");
  for (const char* text : {"2026-02-30", "yesterday"}) {
    when->setFocus();
    when->selectAll();
    QTest::keyClicks(when, QString::fromLatin1(text));
    QTest::keyClick(when, Qt::Key_Return);
    EXPECT_FALSE(on.part<QLabel>("visit-wrong")->isHidden()) << text;
    EXPECT_NE(on.entry("gate")->when, text);
  }
  when->selectAll();
  QTest::keyClicks(when, "2026-11-20");
  QTest::keyClick(when, Qt::Key_Return);
  EXPECT_EQ(on.entry("gate")->when, "2026-11-20");
  EXPECT_TRUE(on.part<QLabel>("visit-wrong")->isHidden());
}

TEST(VisitWindow, aPhotoIsKeptInTheBook) {
  Visiting on;
  on.window->visit().choose("trees");
  const QString file = QString::fromStdString(on.at.path()) + "/oak.jpg";
  QFile photo(file);
  ASSERT_TRUE(photo.open(QIODevice::WriteOnly));
  photo.write("not really a photo");
  photo.close();
  on.window->visit().take_photo(file);
  ASSERT_NE(on.entry("trees"), nullptr);
  const std::string kept = on.entry("trees")->photo;
  ASSERT_TRUE(kept.ends_with("/oak.jpg")) << kept;
  EXPECT_EQ(on.at.book.body(kept.substr(0, kept.find('/'))).value(), "not really a photo");
  EXPECT_TRUE(on.part<QLabel>("visit-photo")->text().contains("oak.jpg"));
  QTest::mouseClick(on.part<QPushButton>("visit-drop-photo"), Qt::LeftButton);
  EXPECT_EQ(on.entry("trees"), nullptr) << "neither answer nor photo";
  on.window->visit().take_photo(file + ".none");
  EXPECT_FALSE(on.part<QLabel>("visit-wrong")->isHidden());
}

TEST(VisitWindow, theListIsWalkedWithTheKeyboard) {
  Visiting on;
  auto* list = on.part<QTreeWidget>("visit-list");
  on.window->visit().choose("gate");
  list->setFocus();
  QTest::keyClick(list, Qt::Key_Down);
  EXPECT_EQ(on.window->visit().chosen(), "path");
  EXPECT_TRUE(on.part<QLabel>("visit-question")->text().contains("steep"));
}

TEST(VisitWindow, theEnquiryIsTypedAndUndone) {
  Visiting on;
  on.window->show_page(0);
  auto* line = qobject_cast<QLineEdit*>(on.window->enquiry().editor("enquiry/budget")->input());
  line->setFocus();
  QTest::keyClicks(line, "about 20,000");
  QTest::keyClick(line, Qt::Key_Return);
  EXPECT_EQ(on.at.desk.job().enquiry.budget, "about 20,000");
  on.at.desk.undo();
  EXPECT_EQ(on.at.desk.job().enquiry.budget, "");
}

// Every sentence of the list is marked for translation.
TEST(VisitWindow, everySentenceIsMarked) {
  const std::vector<std::string> marked = ui::words_of_the_visit();
  const auto is_marked = [&marked](const std::string& words) {
    return words.empty() || std::ranges::find(marked, words) != marked.end();
  };
  plan::Job job;  // empty: the whole list
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  const auto all = estimate::visit_list(job);
  ASSERT_EQ(all.size(), estimate::visit_codes().size());
  for (const estimate::VisitPoint& point : all)
    for (const std::string& words : {point.question, point.assumption, point.caution})
      EXPECT_TRUE(is_marked(words)) << words;
}

// Pictures (HOUSE_PICTURES keeps them).
TEST(VisitWindow, isDrawnInEveryLook) {
  const QString folder = qEnvironmentVariable("HOUSE_PICTURES");
  if (folder.isEmpty()) GTEST_SKIP() << "pictures are made where HOUSE_PICTURES names a folder";
  QDir().mkpath(folder);
  struct Look {
    const char* name;
    bool dark;
    double type;
    const char* language;
  };
  for (const Look& look : {Look{"light", false, 1, "en"}, Look{"dark", true, 1, "en"}, Look{"large", false, 1.44, "en"},
                           Look{"spanish", false, 1, "es"}}) {
    ui::speak(look.language);
    ui::set_dark(look.dark);
    ui::set_type_factor(look.type);
    Visiting on;
    on.window->visit().choose("gate");
    on.answer("1.1 m");
    on.window->visit().choose("services");
    QTest::qWait(30);
    EXPECT_TRUE(on.window->grab().save(folder + "/visit-" + look.name + ".png"));
    on.window->show_page(0);
    QTest::qWait(30);
    EXPECT_TRUE(on.window->grab().save(folder + "/enquiry-" + look.name + ".png"));
  }
  ui::speak("en");
  ui::set_dark(false);
  ui::set_type_factor(1);
}

}  // namespace
