// Whatever comes in, out comes a job or one sentence with its place: never a crash, never half a job.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <random>

#include "files/files.h"
#include "files/json_read.h"

namespace {

const std::filesystem::path seeds = std::filesystem::path(HOUSE_ROOT) / "tests/fuzz/seeds";

std::vector<std::filesystem::path> seed_files(const std::string& folder) {
  std::vector<std::filesystem::path> all;
  for (const auto& file : std::filesystem::directory_iterator(seeds / folder)) all.push_back(file.path());
  std::ranges::sort(all);
  return all;
}

std::string text_of(const std::filesystem::path& path) { return files::read_file(path.string()).value(); }

void one_sentence(const problem::Problem& found) {
  EXPECT_EQ(found.place.file, "file.json");
  EXPECT_GE(found.place.line, 1);
  EXPECT_GE(found.place.column, 1);
  EXPECT_FALSE(found.code.empty());
  EXPECT_FALSE(found.text.empty());
  EXPECT_FALSE(found.mend.empty());
  for (const char letter : problem::sentence(found)) EXPECT_GE(static_cast<unsigned char>(letter), 0x20);
}

// Reads as a job; what is read must be written and read again. True if it was a job.
bool read_as_job(const std::string& text) {
  const auto job = files::read_job(text, "file.json");
  if (!job) {
    one_sentence(job.error());
    return false;
  }
  const std::string canonical = files::write_job(*job);
  const auto back = files::read_job(canonical, "file.json");
  EXPECT_TRUE(back && plan::same(*job, *back));
  EXPECT_TRUE(back && files::write_job(*back) == canonical);
  return true;
}

// Reads as GeoJSON, all of it as one kind.
bool read_as_geojson(const std::string& text, const std::string& kind) {
  const auto made = files::import_geojson(text, "file.json", "", {{"*", kind}});
  if (made) return read_as_job(files::write_job(made->job));
  one_sentence(made.error());
  return false;
}

const std::vector<std::string> kinds{"paved-area", "wall", "removal", "site-mark:gate", "level"};

bool read_as(const std::string& folder, const std::string& text, std::size_t number) {
  return folder == "job" ? read_as_job(text) : read_as_geojson(text, kinds[number % kinds.size()]);
}

std::string without_end(std::string text) {
  while (!text.empty() && (text.back() == '\n' || text.back() == ' ')) text.pop_back();
  return text;
}

TEST(BadInput, SeedsRun) {
  int jobs = 0;
  for (const auto& file : seed_files("job")) jobs += read_as_job(text_of(file)) ? 1 : 0;
  EXPECT_GE(jobs, 4);
  int imports = 0;
  for (const auto& file : seed_files("geojson")) {
    for (const std::string& kind : kinds) imports += read_as_geojson(text_of(file), kind) ? 1 : 0;
  }
  EXPECT_GE(imports, 4);
}

TEST(BadInput, EveryPrefixIsRefused) {
  for (const std::string folder : {"job", "geojson"}) {
    for (const auto& file : seed_files(folder)) {
      const std::string text = without_end(text_of(file));
      for (std::size_t length = 0; length < text.size(); ++length) {
        ASSERT_FALSE(read_as(folder, text.substr(0, length), 0)) << file << " cut at " << length;
      }
    }
  }
}

TEST(BadInput, TwoThousandFlippedBits) {
  std::mt19937 random(20250301);
  for (const std::string folder : {"job", "geojson"}) {
    for (const auto& file : seed_files(folder)) {
      const std::string text = text_of(file);
      for (std::size_t i = 0; i < 2000; ++i) {
        std::string flipped = text;
        const std::size_t bit = random() % (8 * text.size());
        flipped[bit / 8] = static_cast<char>(flipped[bit / 8] ^ (1 << (bit % 8)));
        read_as(folder, flipped, i);
      }
    }
  }
}

TEST(BadInput, BytesTakenOutAndDoubled) {
  std::mt19937 random(4);
  for (const std::string folder : {"job", "geojson"}) {
    for (const auto& file : seed_files(folder)) {
      const std::string text = text_of(file);
      for (std::size_t i = 0; i < 500; ++i) {
        std::string changed = text;
        const std::size_t at = random() % text.size();
        const std::size_t length = 1 + random() % 40;
        if (i % 2 == 0) changed.erase(at, length);
        if (i % 2 == 1) changed.insert(random() % text.size(), text.substr(at, length));
        read_as(folder, changed, i);
      }
    }
  }
}

std::string fault_of(const std::string& text) {
  const auto tree = files::parse_json(text, "file.json");
  if (tree) return "";
  one_sentence(tree.error());
  return tree.error().code;
}

TEST(BadInput, DeepNesting) {
  EXPECT_EQ(fault_of(std::string(64, '[') + std::string(64, ']')), "");
  EXPECT_EQ(fault_of(std::string(65, '[') + std::string(65, ']')), "json-deep");
  EXPECT_EQ(fault_of(std::string(1'000'000, '[')), "json-deep");
  std::string objects;
  for (int i = 0; i < 65; ++i) objects += "{\"a\":";
  EXPECT_EQ(fault_of(objects), "json-deep");
}

TEST(BadInput, HugeFiles) {
  std::string many = "[1";
  for (int i = 0; i < 999'998; ++i) many += ",1";
  EXPECT_EQ(fault_of(many + "]"), "") << "1,000,000 values: 999,999 and the list";
  EXPECT_EQ(fault_of(many + ",1]"), "json-many");
  const auto large = files::parse_json(std::string(files::most_bytes + 1, ' '), "file.json");
  ASSERT_FALSE(large);
  EXPECT_EQ(large.error().code, "json-large");
  EXPECT_EQ(fault_of("\"" + std::string(10'000'000, 'x') + "\""), "");
  EXPECT_EQ(fault_of(std::string(1'000'000, '7')), "");
  EXPECT_FALSE(read_as_job("{\"groundcourse\": " + std::string(1'000'000, '7') + "}"));
  EXPECT_FALSE(read_as_job("{\"" + std::string(1'000'000, 'k') + "\": 1, \"groundcourse\": 1}"));
}

TEST(BadInput, TextThatIsNoJson) {
  for (const char* text : {"\xff\xfe{\0}", "{\"a\": \"\xc3\x28\"}", "{'a': 1}", "{\"a\": 1,}", "[1 2]", "{\"a\" 1}",
                           "// note\n{}", "nul", "tru", "+1", "01", "1.", "-", "\"\x01\"", "\"\\ud800\"", "\"\\x\"",
                           "[}", "{\"a\": Infinity}", "\xef\xbb\xbf"}) {
    EXPECT_NE(fault_of(text), "") << text;
  }
  EXPECT_EQ(fault_of("\xef\xbb\xbf{\"a\": 1}"), "") << "a byte order mark is passed over";
}

TEST(BadInput, FilesThatCannotBeReadOrWritten) {
  EXPECT_EQ(files::read_file("/nowhere/at/all.json").error().code, "file-read");
  EXPECT_EQ(files::read_file("/").error().code, "file-read");
  EXPECT_EQ(files::write_file("/nowhere/at/all.json", "x").error().code, "file-written");
  EXPECT_EQ(files::write_file("/", "x").error().code, "file-written");
}

TEST(BadInput, WritingReplacesTheWholeFileOrNothing) {
  std::string name = (std::filesystem::temp_directory_path() / "files-XXXXXX").string();
  const std::filesystem::path folder = ::mkdtemp(name.data());
  const std::string path = (folder / "a.json").string();
  ASSERT_TRUE(files::write_file(path, "first"));
  ASSERT_TRUE(files::write_file(path, "second"));
  EXPECT_EQ(files::read_file(path).value(), "second");
  std::filesystem::create_symlink("a.json", folder / "link.json");
  ASSERT_TRUE(files::write_file((folder / "link.json").string(), "third"));
  EXPECT_TRUE(std::filesystem::is_symlink(folder / "link.json"));
  EXPECT_EQ(files::read_file(path).value(), "third");
  std::filesystem::permissions(path, std::filesystem::perms(0640));
  ASSERT_TRUE(files::write_file(path, ""));
  EXPECT_EQ(std::filesystem::status(path).permissions(), std::filesystem::perms(0640));
  EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder), {}), 2) << "no temporary file stays behind";
  ASSERT_TRUE(files::write_file("/dev/null", "x"));
  EXPECT_TRUE(std::filesystem::is_character_file("/dev/null"));
  std::filesystem::remove_all(folder);
}

}  // namespace
