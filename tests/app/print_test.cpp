// Sheets and pictures without a display, through the program.
#include <gtest/gtest.h>

#include "app/run_program.h"

using program::Folder;
using program::run;

namespace {

std::string demo(const char* name) { return std::string(HOUSE_ROOT) + "/demo-jobs/" + name + ".json"; }

TEST(PrintCommand, theSameBytesFromTwoRuns) {
  const Folder folder;
  for (const char* sheet : {"crew-list", "plan", "quote"}) {
    for (const char* language : {"en", "es"}) {
      for (const char* file : {"once.pdf", "again.pdf"}) {
        const auto said =
            run({"print", sheet, demo("bakery-court"), "--output", folder.file(file), "--language", language});
        ASSERT_EQ(said.code, 0) << said.err;
      }
      const std::string once = program::text_of(folder.file("once.pdf"));
      EXPECT_EQ(once.substr(0, 5), "%PDF-") << sheet;
      EXPECT_TRUE(once == program::text_of(folder.file("again.pdf"))) << sheet << " in " << language;
    }
  }
}

TEST(PrintCommand, languageAndPaperMakeADifference) {
  const Folder folder;
  const auto made = [&](std::vector<std::string> more) {
    std::vector<std::string> words{"print", "inspection", demo("bakery-court"), "--output", folder.file("sheet.pdf")};
    words.insert(words.end(), more.begin(), more.end());
    EXPECT_EQ(run(words).code, 0);
    return program::text_of(folder.file("sheet.pdf"));
  };
  const std::string usual = made({});
  EXPECT_TRUE(usual == made({"--paper", "a4"})) << "a metric job is printed on A4";
  EXPECT_FALSE(usual == made({"--paper", "letter"}));
  EXPECT_FALSE(usual == made({"--language", "es"}));
}

TEST(PrintCommand, wrongWordsAndFilesLeaveNothing) {
  const Folder folder;
  EXPECT_EQ(run({"print", "no-such-sheet", demo("bakery-court"), "--output", folder.file("a.pdf")}).code, 2);
  EXPECT_EQ(run({"print", "quote", demo("bakery-court")}).code, 2);
  EXPECT_EQ(run({"print", "quote", folder.file("none.json"), "--output", folder.file("a.pdf")}).code, 1);
  EXPECT_EQ(run({"draw", demo("bakery-court"), "--as", "png"}).code, 2);
  EXPECT_FALSE(folder.holds("a.pdf"));
}

TEST(PrintCommand, thePlanAsPictures) {
  const Folder folder;
  for (const char* form : {"svg", "png"}) {
    const std::string file = folder.file(std::string("plan.") + form);
    ASSERT_EQ(run({"draw", demo("pool-terrace-a"), "--as", form, "--output", file}).code, 0) << form;
    const std::string bytes = program::text_of(file);
    EXPECT_GT(bytes.size(), 20000u) << form;
    EXPECT_EQ(bytes.substr(0, 4), form == std::string("svg") ? "<?xm" : "\x89PNG");
  }
}

}  // namespace
