#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "files/csv.h"
#include "files/files.h"
#include "results/demo_jobs.h"

namespace {

using Layers = std::map<std::string, std::string>;
constexpr double survey_foot = 1200.0 / 3937;

files::SurveyImport import(const std::string& text, std::string_view units = "m", const Layers& layers = {},
                           const plan::Job* into = nullptr) {
  auto made = files::import_survey(text, "points.csv", units, layers, into);
  if (made) return std::move(*made);
  ADD_FAILURE() << problem::sentence(made.error()) << "\n" << text;
  return {};
}

problem::Problem fault(const std::string& text, std::string_view units = "m", const Layers& layers = {},
                       const plan::Job* into = nullptr) {
  const auto made = files::import_survey(text, "points.csv", units, layers, into);
  return made ? problem::Problem{} : made.error();
}

const plan::Level& level(const plan::Job& job, const std::string& id) {
  static const plan::Level none;
  const plan::Element* element = job.find(id);
  if (element == nullptr || !std::holds_alternative<plan::Level>(element->kind)) {
    ADD_FAILURE() << "no level " << id;
    return none;
  }
  return std::get<plan::Level>(element->kind);
}

double x(const plan::Level& of) { return of.at.x.metres().si(); }
double y(const plan::Level& of) { return of.at.y.metres().si(); }
double z(const plan::Level& of) { return of.height->metres().si(); }

}  // namespace

TEST(SurveyPoints, readWithoutAHeadLineInTheUsualOrder) {
  const plan::Job job =
      import("1,10.5,20.25,100.125,EG lawn\r\n2, 11 , 21 ,100,\"FG deck, area A1\"\r\n3,12,22,99\r\n").job;
  ASSERT_EQ(job.elements.size(), 3u);
  EXPECT_EQ(y(level(job, "1")), 10.5);
  EXPECT_EQ(x(level(job, "1")), 20.25);
  EXPECT_EQ(z(level(job, "1")), 100.125);
  EXPECT_EQ(level(job, "1").what, "existing");
  EXPECT_EQ(job.find("1")->name, "EG lawn");
  EXPECT_EQ(level(job, "2").what, "finished");
  EXPECT_EQ(level(job, "2").of, "A1");
  EXPECT_EQ(level(job, "3").what, "existing");
  EXPECT_EQ(job.datum.what, "local");
  EXPECT_EQ(job.heading.units, units::System::metric);
}

TEST(SurveyPoints, readByTheNamesOfAHeadLineInAnyOrder) {
  const auto made = import(
      "\xEF\xBB\xBF"
      "Elevation,Desc,E,Date,N,Pt\n30,BM nail,2,today,1,7\n,INV outlet,4,today,3,8\n");
  EXPECT_EQ(made.points, 2u);
  EXPECT_EQ(made.left_out, std::vector<std::string>{"Date"});
  EXPECT_EQ(x(level(made.job, "7")), 2);
  EXPECT_EQ(y(level(made.job, "7")), 1);
  EXPECT_EQ(z(level(made.job, "7")), 30);
  EXPECT_EQ(level(made.job, "7").what, "bench-mark");
  EXPECT_EQ(level(made.job, "8").what, "invert");
  EXPECT_FALSE(level(made.job, "8").height.has_value());  // the level book may have it
}

TEST(SurveyPoints, theAreaOfAFinishedLevelIsTheLastWordOfItsDescription) {
  const plan::Job job = import(
                            "1,1,1,1,\"FG edge, area A1\"\n2,1,2,1,fg AREA A2\n3,1,3,1,FG in the area of the shed\n"
                            "4,1,4,1,\"EG beside area A1\"\n5,1,5,1,FG subarea A1\n6,1,6,1,FG area\n")
                            .job;
  EXPECT_EQ(level(job, "1").of, "A1");
  EXPECT_EQ(level(job, "2").of, "A2");
  for (const char* id : {"3", "4", "5", "6"}) EXPECT_EQ(level(job, id).of, "") << id;
}

TEST(SurveyPoints, whatAPointIsCanBeTold) {
  const Layers layers{
      {"top", "level:finished"}, {"EG", "level:other"}, {"EG at the gate", "level"}, {"*", "level:other"}};
  const plan::Job job =
      import("1,1,1,1,TOP of slab\n2,1,2,1,EG lawn\n3,1,3,1,EG at the gate\n4,1,4,1,oak\n5,1,5,1,FG\n", "m", layers)
          .job;
  EXPECT_EQ(level(job, "1").what, "finished");
  EXPECT_EQ(level(job, "2").what, "other");
  EXPECT_EQ(level(job, "3").what, "existing");
  EXPECT_EQ(level(job, "4").what, "other");
  EXPECT_EQ(level(job, "5").what, "finished");
}

// By definition: 1 ft = 0.3048 m, 1 US survey foot = 1200/3937 m, 1 in = 0.0254 m. One step is 3.125 um.
TEST(SurveyPoints, eachUnitIsExactToTheGrid) {
  const std::vector<std::pair<std::string, double>> units{
      {"m", 1}, {"mm", 0.001}, {"ft", 0.3048}, {"us-ft", survey_foot}, {"in", 0.0254}};
  for (const auto& [unit, metres] : units) {
    const plan::Job job = import("a,0,0,0\nb,1234.567,2345.678,98.76\n", unit).job;
    EXPECT_NEAR(y(level(job, "b")), 1234.567 * metres, 1.5626e-6) << unit;
    EXPECT_NEAR(x(level(job, "b")), 2345.678 * metres, 1.5626e-6) << unit;
    EXPECT_NEAR(z(level(job, "b")), 98.76 * metres, 1.5626e-6) << unit;
  }
  // 15,000 survey feet are 30 mm longer than 15,000 international ones: 15,000 x 2e-6 ft = 0.03 ft = 9.144 mm.
  const double longer = x(level(import("a,0,0,0\nb,0,15000,0\n", "us-ft").job, "b")) -
                        x(level(import("a,0,0,0\nb,0,15000,0\n", "ft").job, "b"));
  EXPECT_NEAR(longer, 15000 * (survey_foot - 0.3048), 3.2e-6);
  EXPECT_NEAR(longer, 0.009144, 4e-6);
}

TEST(SurveyPoints, farCoordinatesTakeTheFirstPointAsTheJobsOrigin) {
  const plan::Job job = import("a,2000000.25,600000.5,10\nb,2000010.25,600020.5,11\n", "us-ft").job;
  EXPECT_EQ(job.datum.what, "plane");
  EXPECT_NEAR(job.datum.northing_m, 2000000.25 * survey_foot, 1e-6);
  EXPECT_NEAR(job.datum.easting_m, 600000.5 * survey_foot, 1e-6);
  EXPECT_EQ(level(job, "a").at, geometry::Point{});
  EXPECT_NEAR(y(level(job, "b")), 10 * survey_foot, 1.5626e-6);
  EXPECT_NEAR(x(level(job, "b")), 20 * survey_foot, 1.5626e-6);
  EXPECT_NEAR(z(level(job, "b")), 11 * survey_foot, 1.5626e-6);  // heights stay as they are
}

TEST(SurveyPoints, areAddedToAJobAtItsDatum) {
  const plan::Job first = import("a,2000000,600000,10\n", "m").job;
  const plan::Job both = import("b,2000003,600004,12\n", "m", {}, &first).job;
  ASSERT_EQ(both.elements.size(), 2u);
  EXPECT_EQ(both.datum, first.datum);
  EXPECT_EQ(x(level(both, "b")), 4);
  EXPECT_EQ(y(level(both, "b")), 3);
  EXPECT_EQ(fault("a,2000003,600004,12\n", "m", {}, &first).code, "survey-doubled");
  EXPECT_EQ(fault("b,2000003,700004,12\n", "m", {}, &first).code, "survey-far");
  plan::Job on_globe = first;
  on_globe.datum = {.what = "wgs84", .longitude = 1, .latitude = 2, .easting_m = 0, .northing_m = 0};
  EXPECT_EQ(fault("b,3,4,12\n", "m", {}, &on_globe).code, "survey-datum");
}

// The points of the pool terrace: 46 lines, of which 45 are points.
TEST(SurveyPoints, theTerracesLevelsComeIn) {
  const plan::Job job = import(demo::text_of(std::string(HOUSE_ROOT) + "/tests/data/demo-levels.csv")).job;
  std::map<std::string, int> counts;
  for (const auto& element : job.elements) {
    const plan::Level& one = level(job, element->id);
    ++counts[one.of.empty() ? one.what : one.what + " " + one.of];
  }
  const std::map<std::string, int> expected{{"bench-mark", 1},   {"existing", 10},   {"finished", 2},
                                            {"finished A1", 25}, {"finished A2", 4}, {"invert", 3}};
  EXPECT_EQ(counts, expected);
  EXPECT_EQ(level(job, "BM").height, units::Length::inches(1206));  // 100.50 ft
  EXPECT_EQ(level(job, "e4").at.x, units::Length::inches(480));
}

TEST(SurveyPoints, badFilesAreRefusedWithLineAndReason) {
  struct Bad {
    std::string text;
    std::string code;
    int line;
  };
  const std::vector<Bad> bad{
      {"", "survey-empty", 1},
      {"\n\n", "survey-empty", 1},
      {"point,northing,easting,height\n", "survey-empty", 1},
      {"point,easting,height,desc\n1,2,3,x\n", "survey-columns", 1},
      {"point,northing,n,easting,height\n1,2,2,3,4\n", "survey-columns", 1},
      {"rod,chain,link\n1,2,3\n", "survey-columns", 1},
      {"1,2,3,4\n2,2,3\n", "survey-row", 2},
      {"1,2,3,4\n2,2,3,4,a,b\n", "survey-row", 2},
      {"p,n,e,z\n1,2,3,4\n2,2,3,4,5\n", "survey-row", 3},
      {"1,2,3,4\n2,two,3,4\n", "survey-number", 2},
      {"1,2,3,4\n2,2,nan,4\n", "survey-number", 2},
      {"1,2,3,4\n2,2,inf,4\n", "survey-number", 2},
      {"1,2,3,4\n2,2,3,0x10\n", "survey-number", 2},
      {"1,2,3,4\n2,\"2,5\",3,4\n", "survey-number", 2},
      {"1,2,3,4\n2,2 m,3,4\n", "survey-number", 2},
      {"1,2,3,4\n2,1e300,3,4\n", "survey-number", 2},
      {"1,2,3,4\n2,,3,4\n", "survey-number", 2},
      {"1,2,3,4\n\n,2,3,4\n", "survey-point", 3},
      {"1,2,3,4\n2\x01,2,3,4\n", "survey-point", 2},
      {"1,2,3,4\n2,3,3,4\n1,5,3,4\n", "survey-doubled", 3},
      {"1,2,3,4\n2,6000,3,4\n", "survey-far", 2},
      {"1,7000000,500000,4\n2,7000000,506000,4\n", "survey-far", 2},
      {"1,2,3,4\n2,2,3,10001\n", "survey-height", 2},
      {"1,2,3,4\n2,2,3,4,\"open\n", "csv-syntax", 2},
      {"1,2,3,4\n2,2,3,4,a\"b\n", "csv-syntax", 2},
      {"1,2,3,4\n2,2,3,4,\xFF\n", "csv-syntax", 2},
      {std::string("1,2,3,4\n2,2,3,4,\0\n", 17), "csv-syntax", 2},
  };
  for (const Bad& one : bad) {
    const problem::Problem said = fault(one.text);
    EXPECT_EQ(said.code, one.code) << one.text << "\n" << problem::sentence(said);
    EXPECT_EQ(said.place.line, one.line) << one.text << "\n" << problem::sentence(said);
    EXPECT_EQ(said.place.file, "points.csv") << one.text;
    EXPECT_FALSE(said.mend.empty()) << one.text;
  }
}

TEST(SurveyPoints, theUnitMustBeNamedAndKnown) {
  EXPECT_EQ(fault("1,2,3,4\n", "").code, "survey-units");
  EXPECT_EQ(fault("1,2,3,4\n", "rods").code, "survey-units");
  EXPECT_EQ(fault("1,2,3,4\n", "m", {{"FG", "paved-area"}}).code, "layer-kind");
  EXPECT_EQ(fault("1,2,3,4\n", "m", {{"FG", "level:"}}).code, "layer-kind");
}

// Points on the grid, written in millimetres (1/320 mm has at most 7 decimals) and read back to the step.
RC_GTEST_PROP(SurveyPointsProperties, pointsGoOutAndComeBack, ()) {
  const auto steps = *rc::gen::nonEmpty(rc::gen::container<std::vector<std::tuple<int, int, int>>>(
      rc::gen::tuple(rc::gen::inRange(-1600000000, 1600000001), rc::gen::inRange(-1600000000, 1600000001),
                     rc::gen::inRange(-100000000, 100000001))));
  const bool head = *rc::gen::arbitrary<bool>();
  std::string text = head ? "easting,description,northing,point,height\n" : "";
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const auto& [east, north, up] = steps[i];
    const auto mm = [](int count) { return units::write_number(count / 320.0); };
    const std::string id = "p" + std::to_string(i);
    const std::string name = files::csv_text("=1+1, \"" + id + "\"");
    text += head ? files::csv_row({mm(east), name, mm(north), id, mm(up)})
                 : files::csv_row({id, mm(north), mm(east), mm(up), name});
  }
  const auto made = files::import_survey(text, "points.csv", "mm", {});
  if (!made) RC_FAIL(problem::sentence(made.error()));
  RC_ASSERT(made->job.elements.size() == steps.size());
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const auto& [east, north, up] = steps[i];
    const plan::Element& element = *made->job.elements[i];
    const auto& one = std::get<plan::Level>(element.kind);
    RC_ASSERT(one.at.x.steps() == east);
    RC_ASSERT(one.at.y.steps() == north);
    RC_ASSERT(one.height->steps() == up);
    RC_ASSERT(element.name == "=1+1, \"p" + std::to_string(i) + "\"");
  }
  const auto again = files::read_job(files::write_job(made->job), "job.json");
  RC_ASSERT(again.has_value());
  RC_ASSERT(plan::same(*again, made->job));
}

// Random damage to a good file: read or refused with a sentence, never anything else.
RC_GTEST_PROP(SurveyPointsProperties, damagedFilesAreReadOrRefused, ()) {
  std::string text = "point,northing,easting,height,description\r\n1,2.5,3,4,\"FG deck, area A1\"\r\n2,3,4,5,BM\r\n";
  for (int i = *rc::gen::inRange(1, 5); i > 0; --i) {
    const auto at = static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(text.size())));
    if (*rc::gen::arbitrary<bool>())
      text[at] = *rc::gen::arbitrary<char>();
    else
      text.erase(at, 1);
  }
  const auto made = files::import_survey(text, "points.csv", "ft", {});
  if (!made) RC_ASSERT(!made.error().text.empty() && made.error().place.line > 0);
  if (made) RC_ASSERT(files::read_job(files::write_job(made->job), "job.json").has_value());
}
