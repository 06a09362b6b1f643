// The schema says what the reader takes: field by field against the tables, and by a validator of JSON Schema 2020-12.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cstdlib>
#include <filesystem>

#include "files/files.h"
#include "files/json_read.h"
#include "files/random_job.h"
#include "files/to_json.h"
#include "takeoff/stage.h"

namespace {

const std::string root = HOUSE_ROOT;
const std::string schema_path = root + "/resources/job.schema.json";

const files::Value& schema() {
  static const files::Value tree = files::parse_json(files::read_file(schema_path).value(), schema_path).value();
  return tree;
}

std::vector<std::string> names(const files::Value& object) {
  std::vector<std::string> all;
  for (const auto& key : object.keys) all.push_back(key.name);
  return all;
}

// The definition of T has the fields of its table in their order (after `first`), marks the same ones as required, and
// gives the defaults of the struct.
template <class T>
void same_fields(const std::string& definition, const std::vector<std::string>& first = {}) {
  SCOPED_TRACE(definition);
  const files::Value* part = schema().find("$defs")->find(definition);
  ASSERT_NE(part, nullptr);
  const files::Value& properties = *part->find("properties");
  std::vector<std::string> expected = first;
  std::vector<std::string> required;
  for (const auto& name : first) {
    if (name != "name") required.push_back(name);
  }
  const T otherwise{};
  const auto one = [&](const auto& field) {
    expected.emplace_back(field.name);
    if (field.need == files::Need::required) required.emplace_back(field.name);
    const files::Value* property = properties.find(field.name);
    const files::Value* given = property == nullptr ? nullptr : property->find("default");
    if (given != nullptr) {
      EXPECT_EQ(files::write_json(*given), files::write_json(files::to_json(otherwise.*field.member))) << field.name;
    }
  };
  std::apply([&](const auto&... field) { (one(field), ...); }, fields(files::Type<T>{}));
  EXPECT_EQ(names(properties), expected);
  std::vector<std::string> listed;
  if (const files::Value* list = part->find("required")) {
    for (const files::Value& child : list->children) listed.push_back(child.text);
  }
  EXPECT_EQ(listed, required);
  EXPECT_FALSE(part->find("additionalProperties")->truth);
}

template <std::size_t... I>
void same_kinds(std::index_sequence<I...>) {
  (same_fields<std::variant_alternative_t<I, plan::Kind>>(plan::kind_name(plan::Kind(std::in_place_index<I>)),
                                                          {"id", "kind", "name"}),
   ...);
}

TEST(Schema, NamesEveryFieldOfEveryKind) { same_kinds(std::make_index_sequence<std::variant_size_v<plan::Kind>>()); }

TEST(Schema, NamesEveryFieldOfTheParts) {
  same_fields<plan::Laying>("laying");
  same_fields<plan::BorderCourse>("border-course");
  same_fields<plan::JointFill>("joint-fill");
  same_fields<plan::EdgeChoice>("edge-choice");
  same_fields<plan::Coping>("coping");
  same_fields<plan::Surround>("surround");
  same_fields<plan::Collar>("collar");
  same_fields<plan::Bonding>("bonding");
  same_fields<plan::Footing>("footing");
  same_fields<plan::Weeps>("weeps");
  same_fields<plan::Spikes>("spikes");
  same_fields<plan::AtRun>("at-run");
  same_fields<plan::Spout>("spout");
  same_fields<plan::RodReading>("reading");
  same_fields<plan::FallFrom>("fall-from");
  same_fields<plan::Finish>("finish");
  same_fields<plan::Heading>("heading");
  same_fields<plan::Datum>("datum");
  same_fields<plan::Soil>("soil");
  same_fields<plan::Choices>("choices");
  same_fields<plan::StageMove>("stage-move");
  same_fields<plan::LookedAt>("looked-at");
  same_fields<plan::HoursFactor>("hours-factor");
  same_fields<plan::AddedLine>("added-line");
  same_fields<plan::Statement>("statement");
  same_fields<plan::UnitPrice>("unit-price");
  same_fields<plan::PaymentStep>("payment-step");
  same_fields<plan::Option>("option");
  same_fields<plan::Offer>("offer");
  same_fields<plan::Enquiry>("enquiry");
  same_fields<plan::VisitAnswer>("visit-answer");
}

TEST(Schema, NamesEveryFieldOfTheCatalogue) {
  same_fields<catalogue::Words>("words");
  same_fields<catalogue::Pack>("pack");
  same_fields<catalogue::Price>("price");
  same_fields<catalogue::PackContent>("pack-content");
  same_fields<catalogue::Item>("item");
  same_fields<catalogue::PatternPiece>("pattern-piece");
  same_fields<catalogue::Pattern>("pattern");
  same_fields<catalogue::Layer>("layer");
  same_fields<catalogue::BuildUp>("build-up");
  same_fields<catalogue::Limit>("limit");
  same_fields<catalogue::Junction>("junction");
  same_fields<catalogue::Rate>("rate");
  same_fields<catalogue::Supplier>("supplier");
  same_fields<catalogue::HoldPoint>("hold-point");
  same_fields<catalogue::Caution>("caution");
  same_fields<catalogue::SiteRule>("site-rule");
  same_fields<catalogue::Catalogue>("catalogue");
}

template <class Enum>
void same_words(const std::string& definition, const std::string& property) {
  const files::Value& list =
      *schema().find("$defs")->find(definition)->find("properties")->find(property)->find("enum");
  std::vector<std::string> listed, expected;
  for (const files::Value& word : list.children) listed.push_back(word.text);
  for (const auto& word : words(files::Type<Enum>{})) expected.emplace_back(word.word);
  EXPECT_EQ(listed, expected) << definition << "." << property;
}

TEST(Schema, NamesEveryWord) {
  same_words<geometry::Side>("wall", "behind");
  same_words<geometry::Side>("edge-run", "paving");
  same_words<plan::BorderCourse::Way>("border-course", "way");
  same_words<plan::BorderCourse::Corner>("border-course", "corner");
  same_words<plan::BorderCourse::Where>("border-course", "where");
  same_words<plan::Coping::Make>("coping", "make");
  same_words<units::System>("heading", "units");
  same_words<plan::Reuse>("choices", "reuse");
}

TEST(Schema, NamesEveryStage) {
  for (const char* definition : {"stage-move", "looked-at"}) {
    const files::Value& list =
        *schema().find("$defs")->find(definition)->find("properties")->find("stage")->find("enum");
    std::vector<std::string> listed, expected;
    for (const files::Value& word : list.children) listed.push_back(word.text);
    for (const takeoff::Stage stage : takeoff::all_stages) expected.push_back(takeoff::word(stage));
    EXPECT_EQ(listed, expected) << definition;
  }
}

// A fresh folder that goes with the test.
struct Folder {
  std::filesystem::path path;
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "schema-XXXXXX").string();
    path = ::mkdtemp(name.data());
  }
  ~Folder() { std::filesystem::remove_all(path); }
};

void put(const std::filesystem::path& folder, const std::string& name, const std::string& text) {
  const auto written = files::write_file((folder / (name + ".json")).string(), text);
  if (!written) ADD_FAILURE() << problem::sentence(written.error());
}

TEST(Schema, AValidatorAgrees) {
  const Folder good, bad;
  int number = 0;
  EXPECT_TRUE(rc::check("jobs to validate", [&] {
    if (number < 40) put(good.path, "random-" + std::to_string(number++), files::write_job(random_job::job()));
  }));
  EXPECT_EQ(number, 40);
  for (const char* folder : {"/demo-jobs", "/tests/fuzz/seeds/job"}) {
    for (const auto& file : std::filesystem::directory_iterator(root + folder)) {
      if (file.path().extension() == ".json")
        std::filesystem::copy_file(file.path(), good.path / file.path().filename());
    }
  }
  const auto one = [](const std::string& fields) { return R"({"groundcourse": 1, "elements": [{)" + fields + "}]}"; };
  put(bad.path, "no-format", "{}");
  put(bad.path, "newer", R"({"groundcourse": 2})");
  put(bad.path, "field", R"({"groundcourse": 1, "colour": 1})");
  put(bad.path, "field-of-kind", one(R"("id": "a", "kind": "pool", "depth": 1)"));
  put(bad.path, "field-of-other-kind", one(R"("id": "a", "kind": "pool", "behind": "left")"));
  put(bad.path, "kind", one(R"("id": "a", "kind": "lawn")"));
  put(bad.path, "no-id", one(R"("kind": "pool")"));
  put(bad.path, "empty-id", one(R"("id": "", "kind": "pool")"));
  put(bad.path, "null", one(R"("id": "a", "kind": "pool", "outline": null)"));
  put(bad.path, "half-step", one(R"("id": "a", "kind": "pool", "shell": 1.5)"));
  put(bad.path, "half-count", one(R"("id": "a", "kind": "feature", "count": 1.5)"));
  put(bad.path, "point", one(R"("id": "a", "kind": "level", "at": [1])"));
  put(bad.path, "both", one(R"("id": "a", "kind": "wall", "line": {"points": [], "through": []})"));
  put(bad.path, "word", one(R"("id": "a", "kind": "wall", "behind": "above")"));
  put(bad.path, "pack",
      R"({"groundcourse": 1, "catalogue": {"items": [{"id": "x", "kind": "rod", "pack": {"pieces": 0}}]}})");
  for (const auto& file : std::filesystem::directory_iterator(bad.path)) {
    EXPECT_FALSE(files::read_job(files::read_file(file.path().string()).value(), "x"))
        << file.path() << ": the reader agrees";
  }
  const std::string command = "python3 '" + root + "/tests/files/schema_test.py' '" + schema_path + "' '" +
                              good.path.string() + "' '" + bad.path.string() + "'";
  EXPECT_EQ(std::system(command.c_str()), 0);
}

}  // namespace
