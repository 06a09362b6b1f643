#include <gtest/gtest.h>

#include "app/run_program.h"

using program::demo;
using program::Folder;
using program::run;

TEST(Commands, wrongWordsAreExitTwo) {
  EXPECT_EQ(run({"kitchen.txt"}).code, 2) << "neither a command nor a job file";
  EXPECT_EQ(run({"bake", "a cake"}).code, 2);
  EXPECT_EQ(run({"takeoff"}).code, 2);
  EXPECT_EQ(run({"takeoff", demo("pool-terrace-a.json"), "--as", "song"}).code, 2);
  EXPECT_EQ(run({"import", "x.geojson", "--layer", "patio", "--output", "y.json"}).code, 2);
  EXPECT_EQ(run({"--help"}).code, 0);
}

class Demos : public testing::TestWithParam<const char*> {};

TEST_P(Demos, areTakenOffInThreeFormsAndTwiceAlike) {
  for (const char* form : {"text", "csv", "json"}) {
    const program::Said once = run({"takeoff", demo(GetParam()), "--as", form});
    EXPECT_EQ(once.code, 0) << once.err;
    EXPECT_GT(once.out.size(), 1000u);
    EXPECT_EQ(once.out, run({"takeoff", demo(GetParam()), "--as", form}).out);
  }
}

TEST_P(Demos, outputGoesToTheFileNamed) {
  const Folder folder;
  const program::Said said = run({"takeoff", demo(GetParam()), "--as", "csv", "--output", folder.file("list.csv")});
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_TRUE(said.out.empty());
  EXPECT_EQ(program::text_of(folder.file("list.csv")), run({"takeoff", demo(GetParam()), "--as", "csv"}).out);
}

TEST_P(Demos, aSpreadsheetIsTheSameBytesTwice) {
  const Folder folder;
  for (const char* name : {"one.xlsx", "two.xlsx"}) {
    const program::Said said = run({"takeoff", demo(GetParam()), "--as", "xlsx", "--output", folder.file(name)});
    EXPECT_EQ(said.code, 0) << said.err;
  }
  const std::string one = program::text_of(folder.file("one.xlsx"));
  EXPECT_TRUE(one.starts_with("PK")) << "a zip";
  EXPECT_GT(one.size(), 10'000u);
  EXPECT_EQ(one, program::text_of(folder.file("two.xlsx")));
}

TEST_P(Demos, theDrawingGoesOutAndComesBackInBothForms) {
  const Folder folder;
  for (const char* form : {"dxf", "geojson"}) {
    const std::string file = folder.file(std::string("drawn.") + form);
    const program::Said out = run({"draw", demo(GetParam()), "--as", form, "--output", file});
    ASSERT_EQ(out.code, 0) << out.err;
    const program::Said in =
        run({"import", file, "--layer", "paved-area=paved-area", "--output", folder.file("back.json")});
    ASSERT_EQ(in.code, 0) << in.err;
    EXPECT_NE(in.err.find("left out"), std::string::npos) << "pools and walls are named: " << in.err;
    const program::Taken before = program::take_job(demo(GetParam())),
                         after = program::take_job(folder.file("back.json"));
    for (const std::string& id : before.elements("paved-area"))
      EXPECT_NEAR(after.measures(id).at("outline_area_m2"), before.measures(id).at("outline_area_m2"), 0.05) << id;
  }
}

TEST(Commands, csvTakesASeparatorAndAMark) {
  const std::vector<std::string> words{"takeoff", demo("bakery-court.json"), "--as", "csv"};
  const auto with = [&words](const std::vector<std::string>& more) {
    std::vector<std::string> all = words;
    all.insert(all.end(), more.begin(), more.end());
    return run(all);
  };
  EXPECT_TRUE(with({}).out.starts_with("stage,item,"));
  EXPECT_TRUE(with({"--separator", ";"}).out.starts_with("stage;item;"));
  EXPECT_TRUE(with({"--separator", "tab"}).out.starts_with("stage\titem\t"));
  EXPECT_TRUE(with({"--bom"}).out.starts_with("\xEF\xBB\xBFstage,item,"));
  EXPECT_EQ(with({"--separator", "|"}).code, 2);
  EXPECT_EQ(run({"takeoff", demo("bakery-court.json"), "--separator", ";"}).code, 2) << "text has no separator";
  const program::Said said = run({"takeoff", demo("bakery-court.json"), "--as", "xlsx"});
  EXPECT_EQ(said.code, 2);
  EXPECT_NE(said.err.find("--output"), std::string::npos) << said.err;
}

INSTANTIATE_TEST_SUITE_P(Jobs, Demos,
                         testing::Values("pool-terrace-a.json", "pool-terrace-b.json", "bakery-court.json"));

TEST(Commands, checkIsOneWhereThereIsAProblem) {
  const program::Said said = run({"check", demo("pool-terrace-a.json")});
  EXPECT_EQ(said.code, 1);  // stone lies below the weeps of its kerbs
  EXPECT_NE(said.out.find("problem: A1: "), std::string::npos) << said.out;
}

TEST(Commands, startFindsNoMoreCutsThanTheDrawingHasAndWritesTheJob) {
  const Folder folder;
  const program::Said said =
      run({"start", demo("pool-terrace-b.json"), "W", "--for", "cuts", "--output", folder.file("moved.json")});
  ASSERT_EQ(said.code, 0) << said.err;
  const auto before = program::take_job(demo("pool-terrace-b.json")).measures("W");
  const auto after = program::take_job(folder.file("moved.json")).measures("W");
  EXPECT_LE(after.at("units_cut"), before.at("units_cut"));
}

TEST(Commands, theCatalogueGoesOutAndComesBack) {
  const Folder folder;
  const program::Said out = run({"catalogue", "export", folder.file("items.csv")});
  ASSERT_EQ(out.code, 0) << out.err;
  const program::Said in = run({"catalogue", "import", folder.file("items.csv")});
  EXPECT_EQ(in.code, 0) << in.err;
  EXPECT_EQ(run({"catalogue", "export", folder.file("again.csv")}).code, 0);
  EXPECT_EQ(program::text_of(folder.file("items.csv")), program::text_of(folder.file("again.csv")));
  EXPECT_NE(run({"catalogue", "list"}).out.find("unit-4x8-60"), std::string::npos);
}
