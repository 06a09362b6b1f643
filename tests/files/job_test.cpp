#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "files/files.h"
#include "files/job_fields.h"
#include "files/random_job.h"

namespace {

using units::Length;

plan::Job read(const std::string& text) {
  const auto job = files::read_job(text, "job.json");
  if (!job) ADD_FAILURE() << problem::sentence(job.error());
  if (job) return *job;
  plan::Job none;
  none.catalogue = std::make_shared<const catalogue::Catalogue>();
  return none;
}

problem::Problem fault(const std::string& text) {
  const auto job = files::read_job(text, "job.json");
  return job ? problem::Problem{} : job.error();
}

// A job of one element with these fields after id and kind.
std::string one(const std::string& fields) {
  return R"({"groundcourse": 1, "elements": [{"id": "a", )" + fields + "}]}";
}

const plan::PavedArea& paved(const plan::Job& job) { return std::get<plan::PavedArea>(job.elements.at(0)->kind); }

TEST(Job, WriteThenReadIsTheIdentity) {
  EXPECT_TRUE(rc::check("random jobs of every kind", [] {
    const plan::Job job = random_job::job();
    const std::string text = files::write_job(job);
    const auto back = files::read_job(text, "job.json");
    if (!back) RC_FAIL(problem::sentence(back.error()) + "\n" + text);
    RC_ASSERT(plan::same(job, *back));
    RC_ASSERT(files::write_job(*back) == text);
  }));
}

TEST(Job, EveryRandomPartIsPossible) {
  EXPECT_TRUE(rc::check("the generator makes what the reader takes", [] {
    catalogue::Item item;
    random_job::fill_item(item, 1);
    RC_ASSERT(bool(catalogue::check(item)));
  }));
}

TEST(Job, SmallestFile) {
  const plan::Job job = read(R"({"groundcourse": 1})");
  EXPECT_TRUE(job.elements.empty());
  EXPECT_TRUE(job.heading == plan::Heading{});
  EXPECT_TRUE(job.choices == plan::Choices{});
  EXPECT_EQ(files::write_job(job), "{\"groundcourse\": 1, \"elements\": [], \"check\": \"d45665ab\"}\n");
}

TEST(Job, MissingFieldsKeepTheDefaultOfTheStruct) {
  const plan::Job job = read(R"({"groundcourse": 1, "choices": {"kerf": 1000}})");
  plan::Choices expected;
  expected.kerf = Length::of_steps(1000);
  EXPECT_TRUE(job.choices == expected);
}

TEST(Job, LengthsAsPeopleTypeThem) {
  const plan::Job job = read(
      one(R"("kind": "paved-area", "outline": [{"points": [["26' 6\"", "6'"], ["3.81 m", "0 m"], [320, -1, 0.5]]}])"));
  const geometry::Ring& edges = paved(job).outline.at(0).edges;
  ASSERT_EQ(edges.size(), 3u);
  EXPECT_EQ(edges[0].from.x.steps(), 318 * 8128);  // 26 ft 6 in = 318 in of 8128 steps
  EXPECT_EQ(edges[0].from.y.steps(), 72 * 8128);
  EXPECT_EQ(edges[1].from.x.steps(), 3810 * 320);
  EXPECT_EQ(edges[1].from.y.steps(), 0);
  EXPECT_EQ(edges[2].bulge, 0.5);
  EXPECT_TRUE(files::write_job(job).contains("[[2584704, 585216], [1219200, 0], [320, -1, 0.5]]"));
}

TEST(Job, ATypedLengthNamesItsUnit) {
  const auto found = fault(one(R"("kind": "pool", "shell": "12")"));
  EXPECT_EQ(found.code, "length-unit");
  EXPECT_EQ(found.place.line, 1);
  EXPECT_EQ(fault(one(R"("kind": "pool", "shell": "12 apples")")).code, "length-typed");
  EXPECT_EQ(fault(one(R"("kind": "pool", "shell": "")")).code, "length-typed");
  EXPECT_EQ(fault(one(R"("kind": "pool", "shell": 12.5)")).code, "length-steps");
  EXPECT_EQ(fault(one(R"("kind": "pool", "shell": 1e3)")).code, "length-steps");
  EXPECT_EQ(fault(one(R"("kind": "pool", "shell": 99999999999999999999)")).code, "length-steps");
}

TEST(Job, LinesHaveAnEnd) {
  const plan::Job job = read(one(R"("kind": "wall", "line": {"points": [[0, 0, 1], [3200, 0]]}, "behind": "right")"));
  const auto& wall = std::get<plan::Wall>(job.elements.at(0)->kind);
  ASSERT_EQ(wall.line.edges.size(), 1u);
  EXPECT_EQ(wall.line.edges[0].bulge, 1);
  EXPECT_EQ(wall.line.end.x.steps(), 3200);
  EXPECT_EQ(wall.behind, geometry::Side::right);
  EXPECT_EQ(fault(one(R"("kind": "wall", "line": {"points": [[0, 0], [1, 1, 1]]})")).code, "point-parts");
  EXPECT_EQ(fault(one(R"("kind": "wall", "line": {"points": [], "through": []})")).code, "drawn-twice");
}

TEST(Job, AShapeThatIsNotValidIsKeptAsDrawn) {
  const plan::Job job =
      read(one(R"("kind": "paved-area", "outline": [{"points": [[0, 0], [0, 0], [9, 9]]}, {"points": []}])"));
  EXPECT_EQ(paved(job).outline.at(0).edges.size(), 3u);
  EXPECT_EQ(paved(job).outline.size(), 2u);
}

TEST(Job, NewerFormatsAreRefusedByNumber) {
  const auto found = fault("{\"groundcourse\": 7}");
  EXPECT_EQ(found.code, "format-newer");
  EXPECT_TRUE(found.text.contains("7"));
  EXPECT_EQ(fault("{\"groundcourse\": 0}").code, "format-unknown");
  EXPECT_EQ(fault("{}").code, "format-missing");
  EXPECT_EQ(fault("[]").code, "json-type");
}

// What the reader refuses, and under which code: every one with file, line and column.
struct Refused {
  const char* code;
  std::string text;
};

std::vector<Refused> refused() {
  const std::string item = R"({"groundcourse": 1, "catalogue": {"items": [)";
  return {
      {"field-unknown", R"({"groundcourse": 1, "colour": 1})"},
      {"field-unknown", one(R"("kind": "pool", "depth": 1)")},
      {"field-missing", R"({"groundcourse": 1, "elements": [{"kind": "pool"}]})"},
      {"field-missing", R"({"groundcourse": 1, "elements": [{"id": "a"}]})"},
      {"kind-unknown", one(R"("kind": "lawn")")},
      {"word-unknown", one(R"("kind": "wall", "behind": "above")")},
      {"id-empty", R"({"groundcourse": 1, "elements": [{"id": "", "kind": "pool"}]})"},
      {"id-doubled", R"({"groundcourse": 1, "elements": [{"id": "a", "kind": "pool"}, {"id": "a", "kind": "wall"}]})"},
      {"id-doubled", item + R"({"id": "x", "kind": "rod"}, {"id": "x", "kind": "rod"}]}})"},
      {"json-doubled-key", one(R"("kind": "pool", "shell": 1, "shell": 2)")},
      {"json-type", one(R"("kind": "pool", "outline": null)")},
      {"json-type", one(R"("kind": "pool", "as_built": 1)")},
      {"json-type", one(R"("kind": null)")},
      {"json-type", one(R"("kind": "note", "text": 5)")},
      {"json-type", R"({"groundcourse": 1, "elements": {}})"},
      {"number-whole", one(R"("kind": "feature", "count": 1.5)")},
      {"number-whole", one(R"("kind": "feature", "count": 3000000000)")},
      {"number-range", one(R"("kind": "site-plan", "metres_per_pixel": 1e999)")},
      {"json-syntax", one(R"("kind": "site-plan", "metres_per_pixel": NaN)")},
      {"json-syntax", one(R"("kind": "site-plan", "metres_per_pixel": 1e99999999999)")},
      {"json-syntax", one(R"("kind": "site-plan", "metres_per_pixel": .5)")},
      {"json-syntax", "{\"groundcourse\": 1} x"},
      {"json-ends-early", "{\"groundcourse\": 1"},
      {"json-ends-early", ""},
      {"point-parts", one(R"("kind": "level", "at": [1])")},
      {"point-parts", one(R"("kind": "level", "at": [1, 2, 3])")},
      {"money-coins", item + R"({"id": "x", "kind": "rod", "price": {"amount": 12.5, "unit": "piece"}}]}})"},
      {"word-unknown", R"({"groundcourse": 1, "stage_moves": [{"item": "x", "stage": "later"}]})"},
      {"word-unknown", R"({"groundcourse": 1, "looked_at": [{"stage": "", "look_at": "depth"}]})"},
      {"pack-empty", item + R"({"id": "x", "kind": "rod", "pack": {"kind": "box", "pieces": 0}}]}})"},
      {"pack-empty", item + R"({"id": "x", "kind": "rod", "pack": {"layers": -1}}]}})"},
      {"item-price", item + R"({"id": "x", "kind": "rod", "price": {"amount": -1, "unit": "piece"}}]}})"},
      {"item-price", item + R"({"id": "x", "kind": "rod", "price": {"amount": 0, "unit": "piece"}}]}})"},
      {"cell-side",
       R"({"groundcourse": 1, "catalogue": {"patterns": [{"id": "p", "cell_x": "L/0", "cell_y": "W", "along": 1,
        "across_x": 0, "across_y": 1, "pieces": []}]}})"},
      {"pattern-gap",
       R"({"groundcourse": 1, "catalogue": {"patterns": [{"id": "p", "cell_x": "L", "cell_y": "W", "along": 1,
        "across_x": 0, "across_y": 1, "pieces": []}]}})"},
  };
}

TEST(Job, RefusesBySentence) {
  for (const auto& [code, text] : refused()) {
    const auto found = fault(text);
    EXPECT_EQ(found.code, code) << text;
    EXPECT_EQ(found.place.file, "job.json") << text;
    EXPECT_GE(found.place.line, 1) << text;
    EXPECT_GE(found.place.column, 1) << text;
    EXPECT_FALSE(found.text.empty()) << text;
    EXPECT_FALSE(found.mend.empty()) << text;
    EXPECT_FALSE(problem::sentence(found).contains('\n')) << text;
  }
}

TEST(Job, ImpossibleItemsAreRefusedAtTheirPlace) {
  const std::string head = "{\"groundcourse\": 1, \"catalogue\": {\"items\": [\n  ";
  for (const std::string item : {R"({"id": "x", "kind": "rod", "mass_kg": -1})",
                                 R"({"id": "x", "kind": "rod", "price": {"amount": -5, "unit": "piece"}})",
                                 R"({"id": "x", "kind": "rod", "breakage": 1.5})", R"({"id": "x", "kind": "moon"})",
                                 R"({"id": "x", "kind": "rod", "length": 0})"}) {
    const auto found = fault(head + item + "]}}");
    EXPECT_FALSE(found.text.empty()) << item;
    EXPECT_EQ(found.place.line, 2) << item;
    EXPECT_EQ(found.place.column, 3) << item;
  }
}

TEST(Job, PlacesAreThoseOfAnEditor) {
  const auto found = fault("{\n  \"groundcourse\": 1,\n  \"heading\": {\"name\": \"Té🙂\", \"colour\": 1}\n}");
  EXPECT_EQ(found.place.line, 3);
  EXPECT_EQ(found.place.column, 30);  // characters, not bytes: 2 + 11 + 1 + 8 + 5 + 2 = 29 stand before the key
  EXPECT_EQ(problem::sentence(found).substr(0, 14), "job.json:3:30:");
}

}  // namespace
