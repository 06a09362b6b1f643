// Sheets on paper: laid on pages without loss, the same bytes on every run, readable by others' programs.
#include <gtest/gtest.h>

#include <QDir>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTranslator>
#include <set>

#include "estimate/money_words.h"
#include "files/files.h"
#include "sheets/all_sheets.h"
#include "ui/print/pdf.h"
#include "ui/print/plan_picture.h"
#include "ui/print/print_sheet.h"
#include "ui/print/scales.h"
#include "ui/words/words.h"

namespace {

using namespace ui;

std::shared_ptr<const results::Results> demo(const std::string& name) {
  static std::map<std::string, std::shared_ptr<const results::Results>> known;
  auto& made = known[name];
  if (!made) {
    const std::string file = std::string(HOUSE_ROOT) + "/demo-jobs/" + name + ".json";
    const auto job = files::read_job(files::read_file(file).value(), file);
    made = std::make_shared<const results::Results>(results::compute(std::make_shared<const plan::Job>(job.value())));
  }
  return made;
}

// What a program that is not ours says of the file.
QString asked(const QString& program, const QStringList& words, int* code = nullptr) {
  QProcess process;
  process.start(program, words);
  EXPECT_TRUE(process.waitForFinished(60000)) << program.toStdString();
  if (code) *code = process.exitCode();
  return QString::fromUtf8(process.readAllStandardOutput());
}

class Printing : public testing::TestWithParam<std::tuple<const char*, const char*>> {};

TEST_P(Printing, everySheetOfTheJobIsWhole) {
  const auto& [job, spoken] = GetParam();
  const InLanguage in_language(spoken);
  const sheets::Printed with = printed(demo(job));
  QTemporaryDir folder;
  for (const sheets::SheetKind& kind : sheets::sheet_kinds()) {
    SCOPED_TRACE(kind.word);
    const LaidSheet laid(kind.make(with), with, usual_paper(with.job()));
    const QByteArray bytes = pdf_of(laid, with);
    const QString file = folder.filePath(QString::fromLatin1(kind.word) + ".pdf");
    QFile out(file);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(bytes);
    out.close();

    int code = -1;
    asked("qpdf", {"--check", file}, &code);
    EXPECT_EQ(code, 0);
    const QString info = asked("pdfinfo", {file});
    EXPECT_TRUE(info.contains(QRegularExpression("Pages:\\s+" + QString::number(laid.count()) + "\\n")))
        << info.toStdString();
    // A row a font; its column `emb` says yes. None stands beside it as Type 3, which no printer's own font replaces.
    const QStringList fonts = asked("pdffonts", {file}).split('\n', Qt::SkipEmptyParts).mid(2);
    EXPECT_GE(fonts.size(), 1);
    for (const QString& font : fonts) {
      EXPECT_TRUE(font.contains(QRegularExpression("\\s(yes)\\s+(yes|no)\\s+(yes|no)\\s+\\d+"))) << font.toStdString();
      EXPECT_TRUE(font.contains("NotoSans")) << font.toStdString();
    }
    const QString text = asked("pdftotext", {"-layout", file, "-"});
    EXPECT_EQ(text.count('\f'), static_cast<qsizetype>(laid.count()));
    EXPECT_TRUE(text.contains(QString::fromStdString(with.job().heading.name)));
    EXPECT_TRUE(text.contains(spoken == std::string("es") ? "Página" : "Page"));
  }
}

TEST_P(Printing, theSameBytesTwice) {
  const auto& [job, spoken] = GetParam();
  const InLanguage in_language(spoken);
  const sheets::Printed with = printed(demo(job));
  for (const char* word : {"crew-list", "plan", "quote"}) {
    const auto once = print_sheet(word, with, Paper::a4);
    const auto again = print_sheet(word, printed(demo(job)), Paper::a4);
    ASSERT_TRUE(once.has_value());
    EXPECT_TRUE(*once == *again) << word;
  }
}

// What a page holds ends above its foot; a heading never stands last on it; every slice is printed once.
TEST_P(Printing, nothingIsCutOffOrLeftAlone) {
  const auto& [job, spoken] = GetParam();
  const InLanguage in_language(spoken);
  const sheets::Printed with = printed(demo(job));
  for (const sheets::SheetKind& kind : sheets::sheet_kinds()) {
    for (const Paper paper : {Paper::a4, Paper::letter}) {
      SCOPED_TRACE(std::string(kind.word) + (paper == Paper::a4 ? " on A4" : " on letter"));
      const sheets::Sheet sheet = kind.make(with);
      const LaidSheet laid(sheet, with, paper);
      ASSERT_GT(laid.count(), 0u);
      for (std::size_t i = 0; i < laid.count(); ++i) {
        const LaidPage& page = laid.at(i);
        double below = 0;
        for (const OnPage& placed : page.placed) {
          EXPECT_GE(placed.top, below - 1) << "page " << i + 1;
          below = placed.top + placed.height;
          EXPECT_LE(below, laid.page().inside().bottom() - mm(15)) << "page " << i + 1;
        }
        if (i + 1 < laid.count() && !page.placed.empty()) {
          EXPECT_FALSE(page.placed.back().slice->with_next && page.placed.size() > 1) << "page " << i + 1;
        }
      }
    }
  }
}

TEST_P(Printing, theTotalOnTheQuoteIsTheEstimates) {
  const auto& [job, spoken] = GetParam();
  const InLanguage in_language(spoken);
  const sheets::Printed with = printed(demo(job));
  QTemporaryDir folder;
  const QString file = folder.filePath("quote.pdf");
  QFile out(file);
  ASSERT_TRUE(out.open(QIODevice::WriteOnly));
  out.write(print_sheet("quote", with, Paper::letter).value());
  out.close();
  const QString total = QString::fromStdString(estimate::shown_money(with.results->priced.total, with.job().heading));
  EXPECT_TRUE(asked("pdftotext", {"-layout", file, "-"}).contains(total)) << total.toStdString();
  // The crew's never has a sum: no currency stands on it.
  for (const char* word : {"crew-list", "start-sheet", "staging", "inspection", "field"}) {
    QFile crew(folder.filePath("crew.pdf"));
    ASSERT_TRUE(crew.open(QIODevice::WriteOnly));
    crew.write(print_sheet(word, with, Paper::letter).value());
    crew.close();
    const QString text = asked("pdftotext", {crew.fileName(), "-"});
    EXPECT_FALSE(text.contains(QString::fromStdString(with.job().heading.currency))) << word;
    EXPECT_FALSE(text.contains('$')) << word;
  }
}

INSTANTIATE_TEST_SUITE_P(
    Demo, Printing,
    testing::Combine(testing::Values("pool-terrace-a", "pool-terrace-b", "bakery-court"), testing::Values("en", "es")),
    [](const auto& each) {
      return QString("%1_%2").arg(std::get<0>(each.param), std::get<1>(each.param)).replace('-', '_').toStdString();
    });

// All that stands in the sheets' sources as it is, adjacent literals joined.
QString literals() {
  QString all;
  const QDir folder(QStringLiteral(HOUSE_ROOT "/core/sheets"));
  for (const QString& name : folder.entryList({"*.cpp"})) {
    QFile file(folder.filePath(name));
    if (file.open(QIODevice::ReadOnly)) all += QString::fromUtf8(file.readAll());
  }
  return all.replace(QRegularExpression("\"\\s*\\n\\s*\""), "");
}

// Every word that a sheet asks for has its Spanish. What the takeoff and the catalogue tell in sentences of their own
// (a working, a problem, a limit) is asked for too and stays English: the sheets' own sources do not have it.
TEST(Print, wordsOfTheSheetsHaveTheirSpanish) {
  QTranslator spanish;
  ASSERT_TRUE(spanish.load(QStringLiteral(":/words/groundcourse_es.qm")));
  const QString known = literals();
  ASSERT_TRUE(known.contains("\"Crew list\""));
  std::set<std::string> missing;
  std::size_t asked_for = 0;
  for (const char* job : {"pool-terrace-a", "pool-terrace-b", "bakery-court"}) {
    sheets::Printed with = printed(demo(job));
    with.language = "es";
    with.say = [&](const std::string& english) {
      ++asked_for;
      const QString quoted = '"' + QString::fromStdString(english).replace('"', "\\\"") + '"';
      if (!english.empty() && spanish.translate("core", english.c_str()).isNull() && known.contains(quoted))
        missing.insert(english);
      return english;
    };
    for (const sheets::SheetKind& kind : sheets::sheet_kinds()) kind.make(with);
  }
  EXPECT_GT(asked_for, 500u);
  std::string told;
  for (const std::string& one : missing) told += one + "\n";
  EXPECT_TRUE(missing.empty()) << missing.size() << " words:\n" << told;
}

TEST(Print, aJobOfNothingAndAnUnknownWord) {
  plan::Job job;
  job.heading.name = "Nothing yet";
  job.catalogue = std::make_shared<const catalogue::Catalogue>();
  const auto results =
      std::make_shared<const results::Results>(results::compute(std::make_shared<const plan::Job>(job)));
  const sheets::Printed with = printed(results);
  for (const sheets::SheetKind& kind : sheets::sheet_kinds()) {
    const LaidSheet laid(kind.make(with), with, Paper::a4);
    EXPECT_GE(laid.count(), 1u) << kind.word;
    EXPECT_GT(pdf_of(laid, with).size(), 1000) << kind.word;
  }
  const auto refused = print_sheet("no-such-sheet", with, Paper::a4);
  ASSERT_FALSE(refused.has_value());
  EXPECT_EQ(refused.error().code, "sheet-unknown");
}

// A table of two hundred rows goes on over pages, each with the head again, and no row is lost.
TEST(Print, aLongTableGoesOn) {
  sheets::Sheet sheet;
  sheet.title = "Long";
  sheets::Table table{{{"Thing"}, {"Much", sheets::Align::right}}, {}};
  for (int i = 0; i < 200; ++i)
    table.rows.push_back({{sheets::Said("row " + std::to_string(i)), sheets::Said(std::to_string(i), "counted/rows")}});
  sheet.passages.push_back({{sheets::Heading{"All", {}}, table}});
  const sheets::Printed with = printed(demo("pool-terrace-a"));
  const LaidSheet laid(sheet, with, Paper::a4);
  QTemporaryDir folder;
  QFile out(folder.filePath("long.pdf"));
  ASSERT_TRUE(out.open(QIODevice::WriteOnly));
  out.write(pdf_of(laid, with));
  out.close();
  const QString text = asked("pdftotext", {"-layout", out.fileName(), "-"});
  EXPECT_GT(laid.count(), 3u);
  EXPECT_EQ(text.count("Thing"), static_cast<qsizetype>(laid.count()));
  for (int i = 0; i < 200; ++i) EXPECT_TRUE(text.contains(QString("row %1 ").arg(i))) << i;
}

// By hand: 60 ft in 10 in of paper is 72, so 1 : 96 (1/8″ = 1′); 18 m in 250 mm is 72, so 1 : 75.
TEST(Print, scalesAreTheUsualOnes) {
  EXPECT_EQ(fitting_scale(1.0 / 72, units::System::us), 96);
  EXPECT_EQ(fitting_scale(1.0 / 72, units::System::metric), 75);
  EXPECT_EQ(fitting_scale(1.0 / 48, units::System::us), 48);
  EXPECT_EQ(fitting_scale(1.0 / 50, units::System::metric), 50);
  EXPECT_EQ(scale_words(48, units::System::us).toStdString(), "1 : 48 (1/4″ = 1′)");
  for (const int scale : {10, 20, 50, 100, 500, 5000})
    for (const auto system : {units::System::us, units::System::metric}) {
      const double on_paper = scale_bar(scale, system).metres / scale * 1000;
      EXPECT_GT(on_paper, 20) << scale;
      EXPECT_LE(on_paper, 70.001) << scale;
    }
}

TEST(Print, thePlanAsAPicture) {
  const auto results = demo("pool-terrace-a");
  const QImage png = QImage::fromData(plan_png(*results, 800), "PNG");
  EXPECT_EQ(std::max(png.width(), png.height()), 800);
  EXPECT_EQ(png.pixelColor(2, 2), QColor(Qt::white));
  QSet<QRgb> colours;
  for (int y = 0; y < png.height(); y += 7)
    for (int x = 0; x < png.width(); x += 7) colours.insert(png.pixel(x, y));
  EXPECT_GT(colours.size(), 20);
  const QByteArray svg = plan_svg(*results, 800);
  EXPECT_TRUE(svg.startsWith("<?xml"));
  EXPECT_TRUE(svg.contains("A1"));  // tags stay text
  EXPECT_TRUE(svg == plan_svg(*results, 800));
}

}  // namespace
