#include "files/takeoff_assumptions.h"

#include <cmath>

#include "estimate/statements.h"
#include "files/said_together.h"

namespace files {

namespace {

class Rows {
 public:
  explicit Rows(Sheet& sheet) : sheet_(sheet) {}

  void say(const std::string& what, const std::string& text, const std::string& why, const std::string& element = "") {
    add(what, text, {}, "", why, element);
  }
  void value(const std::string& what, const std::string& text, double number, const std::string& unit,
             const std::string& why = "") {
    add(what, text, number_cell(number), unit, why, "");
  }

 private:
  void add(const std::string& what, const std::string& text, Cell value, const std::string& unit,
           const std::string& why, const std::string& element) {
    sheet_.rows.push_back({text_cell(what), text_cell(text, Look::wrapped), std::move(value),
                           text_cell(unit, Look::unit), text_cell(why, Look::wrapped), text_cell(element)});
  }
  Sheet& sheet_;
};

void choices(const plan::Choices& choices, Rows& rows) {
  const plan::Soil& soil = choices.soil;
  rows.value("choice", "Earth: " + soil.name + ", swells when it is dug by this share", soil.swell, "share",
             soil.source);
  rows.value("choice", "Earth: density where it lies", soil.bank_density_kg_m3, "kg/m3", soil.source);
  rows.value("choice", "Earth: placed and compacted volume for its volume where it lies", soil.compacted, "share",
             soil.source);
  rows.value("choice", "Earth: share of what is dug that is used again as fill", soil.reusable, "share", soil.source);
  rows.value("choice", "Topsoil that is stripped first", soil.topsoil.metres().si(), "m");
  rows.value("choice", "Saw kerf", choices.kerf.metres().si(), "m");
  rows.value("choice", "A piece is a sliver under this share of its unit", choices.sliver_share, "share");
  rows.value("choice", "A piece is a sliver under this width", choices.sliver_width.metres().si(), "m");
  rows.value("choice", "People of the crew", choices.crew, "people");
  rows.value("choice", "Hours of a day", choices.day_hours, "h");
  rows.value("choice", "Spare units kept for repairs", choices.count_attic ? choices.attic_share : 0, "share");
  rows.say("choice", "Access to the site: " + choices.access, "it picks the rates of work");
  if (choices.infiltration_counts)
    rows.value("choice", "Water that goes into the ground", choices.infiltration_m_s, "m/s",
               choices.infiltration_source);
  if (choices.rain_mm_h > 0) rows.value("choice", "Rain", choices.rain_mm_h, "mm/h", choices.rain_source);
}

void offer(const results::Results& results, Rows& rows) {
  const plan::Job& job = *results.job;
  for (const plan::HoursFactor& factor : job.offer.factors)
    rows.value("hours factor", factor.name + (factor.stage.empty() ? "" : ", stage " + factor.stage), factor.factor,
               "times", factor.note);
  for (const estimate::Sentence& sentence : estimate::statements(job, results.takeoff)) {
    if (sentence.struck || sentence.state == estimate::Sentence::State::twice) continue;
    const std::string text = sentence.text + (sentence.caution.empty() ? "" : " " + sentence.caution);
    rows.say(sentence.what == plan::Statement::What::exclusion ? "exclusion" : "assumption", text, sentence.rule);
  }
  const double coins = std::pow(10.0, job.heading.decimals);
  for (const plan::UnitPrice& price : job.offer.unit_prices) {
    rows.value("unit price", price.text, static_cast<double>(price.price.coins()) / coins,
               job.heading.currency + "/" + price.unit);
    rows.value("unit price", price.text + ": so much is in the price", price.assumed, price.unit);
  }
}

}  // namespace

Sheet assumptions_sheet(const results::Results& results) {
  Sheet sheet{"Assumptions", {13, 80, 13, 12, 60, 16}, 1, false, 0, {}};
  sheet.rows.push_back({text_cell("What", Look::head), text_cell("Text", Look::head),
                        text_cell("Value", Look::number_head), text_cell("Unit", Look::unit_head),
                        text_cell("Why, or what to do", Look::head), text_cell("Element", Look::head)});
  Rows rows(sheet);
  if (!results.job->catalogue->note.empty()) rows.say("price", results.job->catalogue->note, "");
  choices(results.job->choices, rows);
  offer(results, rows);
  for (const problem::Problem& said : said_together(results.problems()))
    rows.say(problem::word(said.severity), said.text, said.mend, said.place.element);
  return sheet;
}

}  // namespace files
