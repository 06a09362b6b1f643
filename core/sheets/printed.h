// What every sheet is made of: the results of a job, and how they are to be said.
#pragma once

#include <functional>
#include <initializer_list>
#include <memory>
#include <string>

#include "results/results.h"
#include "sheets/sheet.h"

namespace sheets {

// English words or sentence -> the same in the sheet's language; what has no translation stays English. Numbers are put
// into a sentence after it was translated: see `filled`.
using Tongue = std::function<std::string(const std::string&)>;

// How much of the price a customer is shown: the sum alone, what each stage comes to, or each line.
enum class Detail { total, stages, lines };

struct Printed {
  std::shared_ptr<const results::Results> results;  // never null
  std::string version;                              // "3"; empty: the working copy
  std::string date;                                 // 2026-11-28; empty: none
  std::string language = "en";                      // of the catalogue's names: en, es
  Tongue say = [](const std::string& english) { return english; };
  Detail detail = Detail::stages;  // of the quote

  const plan::Job& job() const { return *results->job; }
};

// The translated sentence with %1, %2 ... taken out for `values`. A value may have a % of its own.
std::string filled(const Printed& printed, const std::string& english, std::initializer_list<std::string> values);
std::string filled(std::string sentence, std::initializer_list<std::string> values);

// The name of an item, rate or build-up in the sheet's language, else in English, else its id.
std::string name_of(const Printed& printed, const catalogue::Id& id);
std::string name_in(const Printed& printed, const catalogue::Words& words);

// In the job's units, for people: 12' 6 1/2" or 3.810 m; 846 sq ft or 78.6 m²; 14.5 cu yd or 11.1 m³; 3,200 lb or
// 1.45 t.
std::string length_words(const Printed& printed, double metres);
std::string area_words(const Printed& printed, double square_metres);
std::string volume_words(const Printed& printed, double cubic_metres);
std::string weight_words(const Printed& printed, double kilograms);
// "24", "24.5", "0.62": at most two decimals and none that are 0, thousands parted by a comma (Spanish: by a space).
std::string number_words(const Printed& printed, double number);
// The word of a unit of order for so many: "pallets", "roll", "sq ft"; translated.
std::string unit_words(const Printed& printed, double number, const std::string& unit);
std::string money_words(const Printed& printed, units::Money money);      // "84,210.00 USD"
std::string date_words(const Printed& printed, const std::string& date);  // "28 Nov 2026" of 2026-11-28

// The tags of elements, in the order of the plan, each once.
std::vector<std::string> tags(const Printed& printed, const std::vector<plan::ElementId>& of);

}  // namespace sheets
