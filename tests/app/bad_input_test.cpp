// Bad files: exit 1, one sentence on standard error with file and place, nothing written.
#include <gtest/gtest.h>

#include <algorithm>

#include "app/run_program.h"

using program::Folder;
using program::run;

namespace {

void expect_refused(const program::Said& said, const std::string& file, const std::string& what) {
  EXPECT_EQ(said.code, 1) << what;
  EXPECT_TRUE(said.out.empty()) << what;
  EXPECT_EQ(std::count(said.err.begin(), said.err.end(), '\n'), 1) << what << ": " << said.err;
  EXPECT_NE(said.err.find(file), std::string::npos) << what << ": " << said.err;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return at == std::string::npos ? text : text.replace(at, from.size(), to);
}

}  // namespace

TEST(BadInput, jobFilesAreRefusedWithTheirPlace) {
  const Folder folder;
  const std::string good = program::text_of(program::demo("bakery-court.json"));
  const std::vector<std::pair<std::string, std::string>> bad{
      {"empty", ""},
      {"truncated", good.substr(0, good.size() / 2)},
      {"not a number", replaced(good, "\"groundcourse\": 1", "\"groundcourse\": NaN")},
      {"from a newer program", replaced(good, "\"groundcourse\": 1", "\"groundcourse\": 99")},
      {"a doubled id", replaced(good, "\"id\": \"N2\"", "\"id\": \"N1\"")},
      {"an unknown field", replaced(good, "\"heading\": {", "\"heading\": {\"colour\": \"red\",")},
      {"an unknown kind", replaced(good, "\"kind\": \"building\"", "\"kind\": \"castle\"")},
      {"deep", std::string(100000, '[')},
  };
  for (const auto& [what, text] : bad) {
    program::put_text(folder.file("bad.json"), text);
    expect_refused(run({"takeoff", folder.file("bad.json"), "--output", folder.file("out.txt")}), "bad.json", what);
    EXPECT_FALSE(folder.holds("out.txt")) << what;
  }
  expect_refused(run({"takeoff", folder.file("none.json")}), "none.json", "a file that is not there");
}

TEST(BadInput, geojsonIsRefusedWithItsPlace) {
  const Folder folder;
  const std::vector<std::pair<std::string, std::string>> bad{
      {"not GeoJSON", "{\"type\": \"Poem\"}"},
      {"a coordinate too far",
       R"({"type":"FeatureCollection","units":"m","features":[)"
       R"({"type":"Feature","id":"a","properties":{},"geometry":{"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1],[0,0]]]}},)"
       R"({"type":"Feature","id":"b","properties":{},"geometry":{"type":"Polygon","coordinates":[[[1e9,0],[1e9,1],[1,1],[1e9,0]]]}}]})"},
      {"a wrong unit", R"({"type":"FeatureCollection","units":"rods","features":[]})"},
      {"truncated", R"({"type":"FeatureCollection","features":[{"type":"Feature")"},
  };
  for (const auto& [what, text] : bad) {
    program::put_text(folder.file("bad.geojson"), text);
    expect_refused(
        run({"import", folder.file("bad.geojson"), "--layer", "*=paved-area", "--output", folder.file("job.json")}),
        "bad.geojson", what);
    EXPECT_FALSE(folder.holds("job.json")) << what;
  }
}

TEST(BadInput, aBadRowOfTheCatalogueLeavesAllAsItWas) {
  const Folder folder;
  ASSERT_EQ(run({"catalogue", "export", folder.file("before.csv")}).code, 0);
  const std::string good = program::text_of(folder.file("before.csv"));
  const std::size_t price = good.find(",4.95,");
  ASSERT_NE(price, std::string::npos);
  std::string negative = good;
  negative.replace(price, 6, ",-4.95,");
  program::put_text(folder.file("bad.csv"), negative);
  const program::Said said = run({"catalogue", "import", folder.file("bad.csv")});
  expect_refused(said, "bad.csv", "a price below 0 that is no credit");
  ASSERT_EQ(run({"catalogue", "export", folder.file("after.csv")}).code, 0);
  EXPECT_EQ(program::text_of(folder.file("after.csv")), good);
}
