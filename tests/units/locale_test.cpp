// Numbers are the same whatever the machine's locale says: a program with a window takes over the person's locale, and
// under a decimal comma printf and strtod would change every file.
#include <gtest/gtest.h>

#include <unistd.h>
#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>

#include "problem/problem.h"
#include "units/money.h"
#include "units/number.h"
#include "units/read_length.h"

namespace {

std::string printed_by_c() {
  char text[16];
  std::snprintf(text, sizeof text, "%.1f", 1.5);
  return text;
}

// A locale with a decimal comma, one of the system's or one made for the test; back to "C" at the end.
class CommaLocale : public testing::Test {
 protected:
  void SetUp() override {
    for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "fr_FR.utf8"}) {
      if (std::setlocale(LC_ALL, name) && printed_by_c() == "1,5") return;
    }
    folder_ = std::filesystem::temp_directory_path() / ("comma-locale-" + std::to_string(getpid()));
    std::filesystem::create_directories(folder_);
    const std::string make = "localedef -i de_DE -f UTF-8 '" + (folder_ / "comma").string() + "' >/dev/null 2>&1";
    if (std::system(make.c_str()) == 0) {
      setenv("LOCPATH", folder_.c_str(), 1);
      if (std::setlocale(LC_ALL, "comma") && printed_by_c() == "1,5") return;
    }
    GTEST_SKIP() << "no locale with a decimal comma on this machine";
  }
  void TearDown() override {
    std::setlocale(LC_ALL, "C");
    unsetenv("LOCPATH");
    if (!folder_.empty()) std::filesystem::remove_all(folder_);
  }

 private:
  std::filesystem::path folder_;
};

TEST_F(CommaLocale, ChangesNothing) {
  ASSERT_EQ(printed_by_c(), "1,5");
  EXPECT_EQ(units::read_number("1.5"), 1.5);
  EXPECT_EQ(units::read_number("1,5"), std::nullopt);
  EXPECT_EQ(units::write_number(1.5), "1.5");
  EXPECT_EQ(units::show_number(1.5, 2), "1.50");
  EXPECT_EQ(units::show_grouped(1818.5, 2), "1,818.50");
  EXPECT_EQ(units::times(units::Money::of_coins(100), 0.145).coins(), 15);
  EXPECT_EQ(units::write_money(units::Money::of_coins(123450), 2), "1234.50");
  EXPECT_EQ(units::read_money("1234.50", 2).value().coins(), 123450);
  EXPECT_FALSE(units::read_money("1234,50", 2).has_value());
  using units::Length;
  EXPECT_EQ(units::read_length("12.5 ft", units::Bare::metres).value(), Length::inches(150));
  EXPECT_FALSE(units::read_length("12,5", units::Bare::metres).has_value());
  EXPECT_EQ(units::write_length(Length::of_steps(1921), units::System::metric), "6.003125 mm");
  EXPECT_EQ(units::write_length(Length::feet(12) + Length::of_steps(32), units::System::us), "12' 0.0039\"");
  EXPECT_EQ(units::show_length(Length::millimetres(3810), units::System::metric), "3.810 m");
  problem::Place place;
  place.at = problem::Xy{1.5, 2.5};
  EXPECT_EQ(problem::sentence({problem::Severity::flag, "c", "text", "", place}), "at (1.500, 2.500) m: text");
}

}  // namespace
