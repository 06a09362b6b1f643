// Survey points in, setting out out: through the program, as people do.
#include <gtest/gtest.h>

#include <algorithm>

#include "app/run_program.h"

using program::Folder;
using program::run;

namespace {

// A 40 ft base line (3,901,440 steps of 1/320 mm) south of a 16 x 12 ft patio.
std::string yard(const Folder& folder) {
  program::put_text(folder.file("yard.geojson"),
                    R"({"type":"FeatureCollection","units":"ft","features":[{"type":"Feature","id":"A","properties":)"
                    R"({"layer":"patio"},"geometry":{"type":"Polygon","coordinates":)"
                    R"([[[12,12],[28,12],[28,24],[12,24],[12,12]]]}}]})");
  const program::Said said =
      run({"import", folder.file("yard.geojson"), "--layer", "patio=paved-area", "--output", folder.file("yard.json")});
  EXPECT_EQ(said.code, 0) << said.err;
  std::string text = program::text_of(folder.file("yard.json"));
  const std::string list = "\"elements\": [";
  const std::size_t at = text.find(list);
  EXPECT_NE(at, std::string::npos) << text;
  text.insert(at + list.size(), R"({"id": "BL", "kind": "base-line", "from": [0, 0], "to": [3901440, 0]}, )");
  // Changed by hand: its check value no longer holds, and goes.
  const std::size_t check = text.rfind(",\n  \"check\"");
  EXPECT_NE(check, std::string::npos) << text;
  text.erase(check, text.rfind('}') - check);
  program::put_text(folder.file("yard.json"), text);
  return folder.file("yard.json");
}

}  // namespace

TEST(Survey, pointsBecomeAJobAndJoinOne) {
  const Folder folder;
  const program::Said once = run({"import", program::data("demo-levels.csv"), "--units", "m", "--layer",
                                  "EG edge of the drive, in its cut; not part of the surface=level:other", "--output",
                                  folder.file("levels.json")});
  ASSERT_EQ(once.code, 0) << once.err;
  EXPECT_EQ(program::take_job(folder.file("levels.json")).elements("level").size(), 45u);
  const program::Said both = run({"import", program::data("demo-levels.csv"), "--units", "m", "--into", yard(folder),
                                  "--output", folder.file("both.json")});
  ASSERT_EQ(both.code, 0) << both.err;
  EXPECT_EQ(program::take_job(folder.file("both.json")).elements("level").size(), 45u);
  EXPECT_EQ(program::take_job(folder.file("both.json")).elements("paved-area").size(), 1u);
  const program::Said twice = run({"import", program::data("demo-levels.csv"), "--units", "m", "--into",
                                   folder.file("both.json"), "--output", folder.file("twice.json")});
  EXPECT_EQ(twice.code, 1);
  EXPECT_NE(twice.err.find("demo-levels.csv:2:"), std::string::npos) << twice.err;
  EXPECT_FALSE(folder.holds("twice.json"));
}

TEST(Survey, badPointsWriteNothing) {
  const Folder folder;
  const std::vector<std::pair<std::string, std::string>> bad{
      {"empty", ""},
      {"a missing column", "point,northing,height,description\na,b,1,x\n"},
      {"not a number", "1,2,3,4\n2,x,3,4\n"},
      {"nan", "1,2,3,4\n2,nan,3,4\n"},
      {"a doubled point", "1,2,3,4\n1,3,3,4\n"},
      {"too far", "1,2,3,4\n2,99999,3,4\n"},
      {"too few cells", "1,2,3,4\n2,3\n"},
      {"an open quote", "1,2,3,4,\"x\n"},
  };
  for (const auto& [what, text] : bad) {
    program::put_text(folder.file("bad.csv"), text);
    const program::Said said =
        run({"import", folder.file("bad.csv"), "--units", "m", "--output", folder.file("out.json")});
    EXPECT_EQ(said.code, 1) << what;
    EXPECT_EQ(std::count(said.err.begin(), said.err.end(), '\n'), 1) << what << ": " << said.err;
    EXPECT_NE(said.err.find("bad.csv:"), std::string::npos) << what << ": " << said.err;
    EXPECT_FALSE(folder.holds("out.json")) << what;
  }
  program::put_text(folder.file("good.csv"), "1,2,3,4\n");
  EXPECT_EQ(run({"import", folder.file("good.csv"), "--output", folder.file("out.json")}).code, 1);  // no unit
  EXPECT_EQ(run({"import", folder.file("good.csv"), "--units", "rods", "--output", folder.file("out.json")}).code, 2);
  EXPECT_EQ(run({"import", folder.file("good.csv"), "--units", "m", "--into", folder.file("none.json"), "--output",
                 folder.file("out.json")})
                .code,
            1);
  EXPECT_EQ(run({"import", program::data("pools.geojson"), "--layer", "*=pool", "--into", yard(folder), "--output",
                 folder.file("out.json")})
                .code,
            2);
  EXPECT_FALSE(folder.holds("out.json"));
}

TEST(SettingOut, theCrewGetsItsTable) {
  const Folder folder;
  const std::string job = yard(folder);
  const program::Said said = run({"setting-out", job, "--output", folder.file("out.csv")});
  ASSERT_EQ(said.code, 0) << said.err;
  std::map<std::string, int> kinds;
  for (const auto& row : program::rows(folder.file("out.csv"))) {
    ++kinds[row.at("kind")];
    if (row.at("kind") == "diagonal") {
      EXPECT_EQ(row.at("value"), "20' 0\"");  // 12, 16, 20
    }
    if (row.at("what") == "corner 1") {
      EXPECT_EQ(row.at("tie_from_start_m"), "5.172628");  // sqrt(288) ft
    }
  }
  EXPECT_EQ(kinds, (std::map<std::string, int>{{"base-line", 2}, {"mark", 4}, {"diagonal", 2}}));
  EXPECT_EQ(run({"setting-out", job}).out, program::text_of(folder.file("out.csv")));
  EXPECT_EQ(run({"setting-out", folder.file("none.json")}).code, 1);
  EXPECT_EQ(run({"setting-out"}).code, 2);
}
