// The same job gives the same bytes whatever language the machine speaks: decimal commas (de_DE), a dotless i that the
// letter I has as its small one (tr_TR), other digits (ar_EG), another order of words.
//
// The locales are made for the test by localedef (package locales) where the machine has no such.
#include <gtest/gtest.h>

#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <optional>

#include "app/run_program.h"
#include "estimate/compare.h"
#include "files/change_order_text.h"
#include "files/compare_text.h"
#include "files/kept_text.h"
#include "results/demo_jobs.h"
#include "results/kept_of.h"

namespace {

using program::demo;
using program::Folder;
using program::run;

std::string printed_by_c() {
  char text[16];
  std::snprintf(text, sizeof text, "%.1f", 1.5);
  return text;
}

// One locale for this program and those that it starts; back to C at the end.
class Spoken {
 public:
  explicit Spoken(const std::string& name) {
    made_ =
        std::system(
            ("localedef -i " + name + " -f UTF-8 '" + folder_.file(name + ".UTF-8") + "' >/dev/null 2>&1").c_str()) ==
        0;
    setenv("LOCPATH", folder_.file("").c_str(), 1);
    setenv("LC_ALL", (name + ".UTF-8").c_str(), 1);
    setenv("LANG", (name + ".UTF-8").c_str(), 1);
    there_ = made_ && std::setlocale(LC_ALL, "") != nullptr;
  }
  ~Spoken() {
    std::setlocale(LC_ALL, "C");
    setenv("LC_ALL", "C", 1);
    setenv("LANG", "C", 1);
    unsetenv("LOCPATH");
  }
  Spoken(const Spoken&) = delete;
  Spoken& operator=(const Spoken&) = delete;
  bool there() const { return there_; }

 private:
  Folder folder_;
  bool made_ = false, there_ = false;
};

// The cells of the takeoff as a spreadsheet: its file has the time in it too.
std::string spreadsheet(const std::string& path) {
  EXPECT_EQ(run({"takeoff", demo("pool-terrace-a.json"), "--as", "xlsx", "--output", path}).code, 0);
  const std::string cells =
      "python3 -c \"import sys, zipfile; z = zipfile.ZipFile(sys.argv[1]);"
      " open(sys.argv[1] + '.cells', 'wb').write(b''.join(z.read(n) for n in sorted(z.namelist())"
      " if n.startswith('xl/')))\" '" +
      path + "'";
  EXPECT_EQ(std::system(cells.c_str()), 0);
  return program::text_of(path + ".cells");
}

// All that the program writes of the demo jobs, one after another.
std::string by_the_program() {
  std::string all;
  const auto add = [&](const std::vector<std::string>& words) {
    const program::Said said = run(words);
    all += "== " + words.front() + " " + std::to_string(said.code) + "\n" + said.out + said.err;
  };
  for (const char* form : {"text", "csv", "json"}) add({"takeoff", demo("pool-terrace-a.json"), "--as", form});
  add({"check", demo("bakery-court.json")});
  add({"setting-out", demo("pool-terrace-a.json")});
  add({"start", demo("bakery-court.json"), "A1"});
  add({"takeoff", program::data("SOURCES.md")});  // a sentence with its place
  const Folder folder;
  all += spreadsheet(folder.file("list.xlsx"));
  EXPECT_EQ(run({"catalogue", "export", folder.file("items.csv")}).code, 0);
  all += program::text_of(folder.file("items.csv"));
  EXPECT_EQ(
      run({"import", program::data("pools.geojson"), "--layer", "*=pool", "--output", folder.file("pools.json")}).code,
      0);
  return all + program::text_of(folder.file("pools.json"));
}

// The same of what only the window writes.
std::string by_the_library() {
  const results::Results a = demo::compute(demo::job("pool-terrace-a")), b = demo::compute(demo::job("pool-terrace-b"));
  const estimate::Kept before = results::kept_of(a, "test"), after = results::kept_of(b, "test");
  std::string all = files::write_kept(before) + files::write_kept(after);
  const auto back = files::read_kept(files::write_kept(before), "kept");
  EXPECT_TRUE(back && *back == before);
  const files::Compared of{"İstanbul ırmak I i", "1", "2", "USD"};
  all += files::comparison_text(of, estimate::compare(before, after), {});
  all += files::comparison_csv(of, estimate::compare(before, after));
  return all + files::takeoff_text(a) + files::takeoff_json(b) + files::write_job(demo::job("bakery-court"));
}

class Locales : public testing::TestWithParam<const char*> {};

TEST_P(Locales, GiveTheSameBytesAsC) {
  static const std::string program_in_c = by_the_program(), library_in_c = by_the_library();
  ASSERT_GT(program_in_c.size(), 200'000U);
  const Spoken spoken(GetParam());
  if (!spoken.there()) GTEST_SKIP() << "no locale " << GetParam() << " on this machine: install the package locales";
  if (std::string(GetParam()) == "de_DE") {
    EXPECT_EQ(printed_by_c(), "1,5") << "the locale is the one that was asked for";
  }
  EXPECT_TRUE(by_the_program() == program_in_c);
  EXPECT_TRUE(by_the_library() == library_in_c);
}

INSTANTIATE_TEST_SUITE_P(Five, Locales, testing::Values("en_US", "de_DE", "tr_TR", "ar_EG"),
                         [](const auto& one) { return std::string(one.param); });

}  // namespace
