#include <array>
#include <chrono>
#include <sstream>

#include "estimate/statements.h"
#include "sheets/quote_parts.h"
#include "sheets/source.h"
#include "units/number.h"

namespace sheets {

namespace {

using What = plan::Statement::What;

std::string sentence_words(const Printed& printed, const estimate::Sentence& sentence) {
  std::string text = sentence.state == estimate::Sentence::State::as_written
                         ? filled(printed, sentence.pattern, {sentence.value})
                         : sentence.text;
  if (!sentence.caution.empty()) text += " " + printed.say(sentence.caution);
  return text;
}

void add_list(const Printed& printed, const char* title, What what, Sheet& sheet) {
  Passage passage;
  passage.blocks.emplace_back(Heading{printed.say(title), {}});
  for (const auto& sentence : estimate::statements(printed.job(), printed.results->takeoff)) {
    if (sentence.what != what || sentence.struck || sentence.state == estimate::Sentence::State::twice) continue;
    passage.blocks.emplace_back(Paragraph{Said("–  " + sentence_words(printed, sentence)), Paragraph::Kind::body});
  }
  if (passage.blocks.size() > 1) sheet.passages.push_back(std::move(passage));
}

// A paragraph for each line of a text that the office wrote.
void add_text(const std::string& text, Passage& passage) {
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);)
    if (!line.empty()) passage.blocks.emplace_back(Paragraph{Said(line), Paragraph::Kind::body});
}

std::string validity(const Printed& printed) {
  const plan::Offer& offer = printed.job().offer;
  const std::string days = std::to_string(offer.valid_days);
  const auto until = days_after(offer.date, offer.valid_days);
  if (!until) return filled(printed, "Valid for %1 days from the day on which it is dated and signed.", {days});
  return filled(printed, "Quoted on %1. Valid until %2.",
                {date_words(printed, offer.date), date_words(printed, *until)});
}

}  // namespace

std::optional<std::string> days_after(const std::string& date, int days) {
  if (date.size() != 10 || date[4] != '-' || date[7] != '-') return std::nullopt;
  std::array<double, 3> parts{};
  for (std::size_t i = 0; i < 3; ++i) {
    const auto number = units::read_number(date.substr(i == 0 ? 0 : i * 3 + 2, i == 0 ? 4 : 2));
    if (!number) return std::nullopt;
    parts[i] = *number;
  }
  using namespace std::chrono;
  const year_month_day day{year{static_cast<int>(parts[0])}, month{static_cast<unsigned>(parts[1])},
                           std::chrono::day{static_cast<unsigned>(parts[2])}};
  if (!day.ok()) return std::nullopt;
  const year_month_day then{sys_days{day} + std::chrono::days{days}};
  const auto two = [](unsigned number) { return (number < 10 ? "0" : "") + std::to_string(number); };
  return std::to_string(static_cast<int>(then.year())) + "-" + two(static_cast<unsigned>(then.month())) + "-" +
         two(static_cast<unsigned>(then.day()));
}

void add_not_included(const Printed& printed, Sheet& sheet) {
  add_list(printed, "Not included", What::exclusion, sheet);
}

void add_assumed(const Printed& printed, Sheet& sheet) {
  add_list(printed, "Taken for granted", What::assumption, sheet);
}

void add_terms(const Printed& printed, Sheet& sheet) {
  const plan::Offer& offer = printed.job().offer;
  Passage passage;
  passage.blocks.emplace_back(Heading{printed.say("Terms"), {}});
  passage.blocks.emplace_back(Paragraph{Said(validity(printed), of_job("offer")), Paragraph::Kind::strong});
  add_text(offer.terms, passage);
  passage.blocks.emplace_back(Paragraph{
      Said(printed.say("Permits, setbacks, barriers and electrical work go by the local code and by those licensed for "
                       "them; nothing here takes the place of their decision.")),
      Paragraph::Kind::body});
  sheet.passages.push_back(std::move(passage));
  if (offer.cancellation.empty()) return;
  Framed framed{printed.say("Cancellation"), {}, false};
  std::istringstream lines(offer.cancellation);
  for (std::string line; std::getline(lines, line);) framed.lines.emplace_back(line);
  sheet.passages.push_back({{std::move(framed)}, std::nullopt, true});
}

void add_signatures(const Printed& printed, Sheet& sheet) {
  Passage passage;
  passage.whole = true;
  passage.blocks.emplace_back(Heading{printed.say("Accepted"), {}});
  if (printed.job().heading.invented)
    passage.blocks.emplace_back(
        Framed{printed.say("An invented job"),
               {Said(printed.say("This job, its place, its people and its prices are made up. This is not an offer."))},
               false});
  if (!printed.results->final())
    passage.blocks.emplace_back(
        Framed{printed.say("Not final"),
               {Said(printed.say("The price is not final: do not sign this quote yet. What is missing stands in the "
                                 "working."))},
               false});
  passage.blocks.emplace_back(Blanks{{printed.say("Customer"), printed.say("Name"), printed.say("Date")}, 1});
  passage.blocks.emplace_back(Blanks{{printed.say("Contractor"), printed.say("Name"), printed.say("Date")}, 1});
  sheet.passages.push_back(std::move(passage));
}

}  // namespace sheets
