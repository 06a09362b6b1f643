#include <gtest/gtest.h>

#include <algorithm>

#include "crew_kit.h"
#include "sheets/section_drawing.h"
#include "sheets/wall_elevation.h"

namespace {

constexpr const char* demo_jobs[] = {"pool-terrace-a", "pool-terrace-b", "bakery-court"};

const sheets::Table* courses_of(const sheets::Sheet& sheet, const std::string& wall) {
  static std::vector<sheets::Table> kept;
  for (const sheets::Passage& passage : sheet.passages) {
    std::vector<sheets::Block> all;
    crew_kit::flatten(passage.blocks, all);
    const bool its = std::ranges::any_of(all, [&](const sheets::Block& block) {
      const auto* heading = std::get_if<sheets::Heading>(&block);
      return heading && heading->words.starts_with("Wall " + wall);
    });
    for (const sheets::Block& block : all)
      if (const auto* table = std::get_if<sheets::Table>(&block); its && table) return &kept.emplace_back(*table);
  }
  return nullptr;
}

TEST(SectionsSheet, EveryNumberLeadsToItsWorkingAndNonePrices) {
  for (const char* job : demo_jobs) {
    const sheets::Printed printed = crew_kit::of_demo(job);
    const sheets::Sheet sheet = sheets::sections(printed);
    crew_kit::expect_sources(printed, sheet);
    crew_kit::expect_no_price(printed, sheet);
  }
}

TEST(SectionsSheet, EverySectionIsDrawnOnceAndNamedForAllThatHaveIt) {
  for (const char* job : demo_jobs) {
    const sheets::Printed printed = crew_kit::of_demo(job);
    const auto drawings = crew_kit::all<sheets::Drawing>(sheets::sections(printed));
    for (const plan::ElementPtr& element : printed.job().elements) {
      if (std::holds_alternative<plan::Wall>(element->kind)) continue;
      const auto named = std::ranges::count_if(drawings, [&](const sheets::Drawing& drawing) {
        const std::string title = ", " + drawing.title.substr(0, drawing.title.find("  ")) + ",";
        return title.find(", " + element->id + ",") != std::string::npos;
      });
      const bool has = sheets::section_figure(*printed.results, element->id, {}).has_value();
      EXPECT_EQ(named, has ? 1 : 0) << job << " " << element->id;
    }
  }
}

TEST(SectionsSheet, LeadersBecomeNotes) {
  const sheets::Printed printed = crew_kit::of_demo();
  const sheets::Section section = sheets::section_figure(*printed.results, "RW", {}).value();
  const sheets::Drawing drawing = sheets::section_drawing(printed, "RW", section, 145, 100);
  ASSERT_EQ(drawing.notes.size(), section.leaders.size());
  const auto says = [&](const std::string& words) {
    return std::ranges::any_of(drawing.notes, [&](const sheets::Note& note) { return note.said.words == words; });
  };
  EXPECT_TRUE(says("Layer on course 3: 5′ 0″"));
  EXPECT_TRUE(says("Overhang: 1″"));
  EXPECT_TRUE(says("Drip groove, deep: 1/4″"));
}

TEST(SectionsSheet, TheTableOfCoursesAddsUpToTheTakeoff) {
  const sheets::Printed printed = crew_kit::of_demo();
  const sheets::Sheet sheet = sheets::sections(printed);
  const sheets::WallElevation face = sheets::wall_elevation(*printed.results, "RW").value();
  const sheets::Table* table = courses_of(sheet, "RW");
  ASSERT_TRUE(table);
  // A row for each course and each layer, and the sum.
  EXPECT_EQ(table->rows.size(), face.courses.size() + face.layers.size() + 1);
  for (std::size_t column = 2; column < table->columns.size(); ++column) {
    int sum = 0;
    for (const sheets::Row& row : table->rows)
      if (row.kind == sheets::Row::Kind::plain && row.cells[column].words != "–")
        sum += std::stoi(row.cells[column].words);
    const std::string& total = table->rows.back().cells[column].words;
    EXPECT_EQ(total == "–" ? 0 : std::stoi(total), sum) << table->columns[column].title;
  }
}

TEST(SectionsSheet, ALayerStandsBetweenTheCoursesThatItLiesBetween) {
  const sheets::Table* table = courses_of(sheets::sections(crew_kit::of_demo()), "RW");
  ASSERT_TRUE(table);
  std::size_t seen = 0;
  for (std::size_t i = 1; i + 1 < table->rows.size(); ++i) {
    if (table->rows[i].kind != sheets::Row::Kind::group) continue;
    ++seen;
    const int above = std::stoi(table->rows[i - 1].cells[0].words),
              under = std::stoi(table->rows[i + 1].cells[0].words);
    EXPECT_EQ(above, under + 1);
    EXPECT_TRUE(under == 3 || under == 5);
  }
  EXPECT_EQ(seen, 2U);
}

TEST(SectionsSheet, AWallIsPreliminaryAndDefersToWhoDecides) {
  const auto boxes = crew_kit::all<sheets::Framed>(sheets::sections(crew_kit::of_demo()));
  ASSERT_EQ(boxes.size(), 2U);  // RW and SW
  for (const sheets::Framed& box : boxes) {
    EXPECT_EQ(box.title, "Preliminary");
    EXPECT_TRUE(box.caution);
    EXPECT_NE(box.lines.back().words.find("local code and a licensed engineer decide"), std::string::npos);
  }
}

TEST(SectionsSheet, AMetricJobSaysMillimetresAndSpanishNames) {
  sheets::Printed printed = crew_kit::of_demo("bakery-court");
  printed.language = "es";
  printed.say = [](const std::string& english) {
    return english == "Ground" ? "Terreno" : english == "firm, level" ? "firme, nivelado" : english;
  };
  const sheets::Section section = sheets::section_figure(*printed.results, "A1", {}).value();
  const sheets::Drawing drawing = sheets::section_drawing(printed, "A1", section, 123, 66);
  bool ground = false;
  for (std::size_t i = 0; i < drawing.notes.size(); ++i) {
    const std::string& words = drawing.notes[i].said.words;
    ground = ground || words == "Terreno: firme, nivelado";
    EXPECT_EQ(words.find("″"), std::string::npos) << words;
    // What the catalogue names in English stands there in Spanish.
    for (const auto& [id, item] : printed.job().catalogue->items) {
      const std::string shortened = item->name.en.substr(0, item->name.en.find(','));
      const bool its = section.leaders[i].label == shortened && item->name.es != item->name.en;
      EXPECT_FALSE(its && words.find(shortened) != std::string::npos) << words;
    }
  }
  EXPECT_TRUE(ground);
}

TEST(SectionsSheet, AnEmptyJobSaysSo) {
  const sheets::Sheet sheet = sheets::sections(crew_kit::of_job(crew_kit::empty_job()));
  ASSERT_EQ(sheet.passages.size(), 1U);
  EXPECT_EQ(crew_kit::all<sheets::Paragraph>(sheet).size(), 1U);
}

}  // namespace
