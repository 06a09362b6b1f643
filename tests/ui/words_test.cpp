// Everything that is said on the screen is said in Spanish too.
#include "ui/words/words.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>

#include "sketch/change_words.h"
#include "sketch/words.h"
#include "takeoff/stage.h"

namespace {

struct Spoken {
  QString context;
  QString english;
  QString spanish;
};

std::vector<Spoken> translations() {
  QFile file(QStringLiteral(HOUSE_ROOT) + "/ui/words/groundcourse_es.ts");
  EXPECT_TRUE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  std::vector<Spoken> all;
  QString context;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("name")) context = xml.readElementText();
    if (xml.name() == QLatin1String("source")) all.push_back({context, xml.readElementText(), {}});
    if (xml.name() == QLatin1String("translation"))
      all.back().spanish = xml.readElementText(QXmlStreamReader::IncludeChildElements);
  }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  return all;
}

// The places where numbers and names go in are the same in both.
TEST(Words, everyWordHasItsSpanishWithTheSamePlaces) {
  const auto all = translations();
  EXPECT_GT(all.size(), 700U);
  const QRegularExpression place(QStringLiteral("%[0-9n]"));
  for (const Spoken& spoken : all) {
    EXPECT_FALSE(spoken.spanish.trimmed().isEmpty())
        << spoken.context.toStdString() << ": " << spoken.english.toStdString();
    QSet<QString> english;
    QSet<QString> spanish;
    for (auto it = place.globalMatch(spoken.english); it.hasNext();) english.insert(it.next().captured());
    for (auto it = place.globalMatch(spoken.spanish); it.hasNext();) spanish.insert(it.next().captured());
    EXPECT_EQ(english, spanish) << spoken.english.toStdString();
  }
}

TEST(Words, whatTheToolsSayIsInTheTable) {
  std::vector<std::string> words = sketch::all_words();
  for (const std::string& word : sketch::change_words()) words.push_back(word);
  for (const takeoff::Stage stage : takeoff::all_stages) words.push_back(takeoff::title(stage));
  QSet<QString> core;
  for (const Spoken& spoken : translations()) {
    if (spoken.context == QLatin1String("core")) core.insert(spoken.english);
  }
  for (const std::string& word : words) EXPECT_TRUE(core.contains(QString::fromStdString(word))) << word;
}

TEST(Words, theLanguageIsChangedAndChangedBack) {
  ui::speak("es");
  EXPECT_EQ(ui::language(), "es");
  EXPECT_EQ(ui::said("Base layers"), QString::fromUtf8("Capas de base"));
  ui::speak("en");
  EXPECT_EQ(ui::said("Base layers"), "Base layers");
}

}  // namespace
