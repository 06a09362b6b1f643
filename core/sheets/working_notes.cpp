#include "estimate/statements.h"
#include "sheets/source.h"
#include "sheets/working_parts.h"
#include "units/quantity.h"

namespace sheets {

namespace {

// What was chosen for the whole job, with where it came from.
class Choices {
 public:
  explicit Choices(const Printed& printed) : printed_(printed) {
    table_.columns = {{printed.say("Chosen for the whole job"), Align::left, 0.5},
                      {printed.say("Value"), Align::right, 0.2},
                      {printed.say("Source"), Align::left, 0.3}};
    table_.small = true;
  }
  void put(const char* what, std::string value, const char* field, const std::string& source = {}) {
    table_.rows.push_back(
        {{Said(printed_.say(what)), Said(std::move(value), of_job(field)), Said(printed_.say(source))}});
  }
  void share(const char* what, double value, const char* field, const std::string& source = {}) {
    put(what, number_words(printed_, value * 100) + " %", field, source);
  }
  Table table() && { return std::move(table_); }

 private:
  const Printed& printed_;
  Table table_;
};

std::string density_words(const Printed& printed, double kilograms) {
  if (printed.job().heading.units == units::System::metric) return number_words(printed, kilograms) + " kg/m³";
  const double cubic_foot = units::cubic_metres_per_cubic_foot;
  return number_words(printed, kilograms * cubic_foot / units::kilograms_per_pound) + " lb/cu ft";
}

Table choices(const Printed& printed) {
  const plan::Choices& chosen = printed.job().choices;
  Choices rows(printed);
  rows.share("Swell of the soil when it is dug", chosen.soil.swell, "soil", chosen.soil.source);
  rows.put("Density of the soil where it lies", density_words(printed, chosen.soil.bank_density_kg_m3), "soil",
           chosen.soil.source);
  rows.share("Placed and compacted volume of the soil, of its volume where it lies", chosen.soil.compacted, "soil",
             chosen.soil.source);
  rows.share("Share of what is dug that is placed again", chosen.soil.reusable, "soil", chosen.soil.source);
  rows.put("Topsoil stripped first", length_words(printed, chosen.soil.topsoil.metres().si()), "soil",
           chosen.soil.source);
  rows.put("Saw kerf", length_words(printed, chosen.kerf.metres().si()), "kerf");
  rows.share("A piece is a sliver under this share of its unit", chosen.sliver_share, "sliver_share");
  rows.put("A piece is a sliver under this width", length_words(printed, chosen.sliver_width.metres().si()),
           "sliver_width");
  rows.put("People of the crew", number_words(printed, chosen.crew), "crew");
  rows.put("Hours of a day", number_words(printed, chosen.day_hours), "day_hours");
  if (chosen.count_attic) rows.share("Spare units kept for repairs", chosen.attic_share, "attic_share");
  rows.put("Access to the site", printed.say(chosen.access), "access");
  if (!chosen.truck.empty()) rows.put("Truck for haul", name_of(printed, chosen.truck), "truck");
  if (chosen.infiltration_counts)
    rows.put("Water that goes into the ground", number_words(printed, chosen.infiltration_m_s * 3.6e6) + " mm/h",
             "infiltration", chosen.infiltration_source);
  if (chosen.rain_mm_h > 0)
    rows.put("Rain", number_words(printed, chosen.rain_mm_h) + " mm/h", "rain", chosen.rain_source);
  return std::move(rows).table();
}

Table factors(const Printed& printed) {
  Table table{{{printed.say("Hours are multiplied for"), Align::left, 0.4},
               {printed.say("Stage"), Align::left, 0.2},
               {printed.say("Times"), Align::right, 0.1},
               {printed.say("Why"), Align::left, 0.3}},
              {},
              true};
  for (const plan::HoursFactor& factor : printed.job().offer.factors) {
    const auto stage = takeoff::stage_of(factor.stage);
    table.rows.push_back(
        {{Said(printed.say(factor.name)), Said(printed.say(stage ? takeoff::title(*stage) : "all stages")),
          Said(number_words(printed, factor.factor), of_job("factors")), Said(factor.note)}});
  }
  return table;
}

std::string sentence_words(const Printed& printed, const estimate::Sentence& sentence) {
  const bool own = sentence.state != estimate::Sentence::State::as_written;
  std::string text = own ? sentence.text : filled(printed, sentence.pattern, {sentence.value});
  if (!sentence.caution.empty()) text += " " + printed.say(sentence.caution);
  return text;
}

Table sentences(const Printed& printed) {
  Table table{
      {{printed.say("Assumed, or not in the price"), Align::left, 0.62}, {printed.say("Because"), Align::left, 0.38}},
      {},
      true};
  for (const auto& sentence : estimate::statements(printed.job(), printed.results->takeoff)) {
    if (sentence.state == estimate::Sentence::State::twice) continue;
    std::string text = sentence_words(printed, sentence);
    if (sentence.struck) text = filled(printed, "Struck out (%1): %2", {sentence.why, text});
    table.rows.push_back({{Said(text), Said(printed.say(sentence.rule))}});
  }
  return table;
}

}  // namespace

void add_assumptions(const Printed& printed, Sheet& sheet) {
  Passage passage;
  passage.blocks.emplace_back(Heading{printed.say("Assumptions"), {}});
  if (!printed.job().catalogue->note.empty())
    passage.blocks.emplace_back(Paragraph{Said(printed.say(printed.job().catalogue->note)), Paragraph::Kind::strong});
  if (!printed.job().offer.basis.empty())
    passage.blocks.emplace_back(Paragraph{Said(printed.job().offer.basis), Paragraph::Kind::body});
  passage.blocks.emplace_back(choices(printed));
  sheet.passages.push_back(std::move(passage));
  for (Table table : {factors(printed), sentences(printed)})
    if (!table.rows.empty()) sheet.passages.push_back({{Gap{}, std::move(table)}});
}

void add_site_plans(const Printed& printed, Sheet& sheet) {
  Table table{{{printed.say("Site plan"), Align::left, 0.4},
               {printed.say("Scale from"), Align::right, 0.2},
               {printed.say("Checked against"), Align::right, 0.2},
               {printed.say("Drawn there"), Align::right, 0.2}},
              {},
              true};
  const auto apart = [](const plan::KnownLength& known) {
    return geometry::length(
        geometry::Vec{(known.to.x - known.from.x).metres().si(), (known.to.y - known.from.y).metres().si()});
  };
  for (const plan::ElementPtr& element : printed.job().elements) {
    const auto* under = std::get_if<plan::SitePlan>(&element->kind);
    if (!under) continue;
    const auto typed = [&](const std::optional<plan::KnownLength>& known, const char* field) {
      if (!known) return Said(printed.say("none"));
      return Said(length_words(printed, known->length.metres().si()), of_element(element->id, field));
    };
    std::string name = element->name.empty() ? under->file : element->name + " (" + under->file + ")";
    if (under->metres_per_pixel <= 0) name += ", " + printed.say("not scaled yet");
    table.rows.push_back(
        {{Said(std::move(name)), typed(under->scale, "scale"), typed(under->check, "check"),
          under->check ? Said(length_words(printed, apart(*under->check)), of_element(element->id, "check"))
                       : Said()}});
  }
  if (!table.rows.empty()) sheet.passages.push_back({{Gap{}, std::move(table)}});
}

}  // namespace sheets
