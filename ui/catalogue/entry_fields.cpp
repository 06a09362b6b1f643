#include "ui/catalogue/entry_fields.h"

#include "takeoff/stage.h"
#include "ui/catalogue/entry_making.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"

namespace ui {

using catalogue::Caution;
using catalogue::HoldPoint;
using catalogue::Junction;
using catalogue::Limit;
using catalogue::Rate;
using catalogue::SiteRule;
using catalogue::Supplier;

std::vector<Choice> same_words(std::initializer_list<const char*> words) {
  std::vector<Choice> choices;
  for (const char* word : words) choices.push_back({word, said(word)});
  return choices;
}

std::vector<Choice> stage_words() {
  std::vector<Choice> choices;
  for (const takeoff::Stage stage : takeoff::all_stages)
    choices.push_back({takeoff::word(stage), said(takeoff::title(stage))});
  return choices;
}

QString item_name(const catalogue::Catalogue& catalogue, const catalogue::Id& id) {
  const catalogue::Item* item = catalogue.item(id);
  return item ? own_name(item->name, id) : QString::fromStdString(id);
}

QString shown_price(const std::optional<catalogue::Price>& price) {
  if (!price) return {};
  if (price->by_others) return Entries::tr("by others");
  return Entries::tr("%1 a %2").arg(shown_money(price->amount, plan::Heading()), said(price->unit));
}

std::vector<EntryField> limit_fields() {
  std::vector<EntryField> all = named_fields<Limit>();
  all.push_back(made_of("group", Entries::tr("Group"), &Limit::group));
  add(all,
      {made_of("least", Entries::tr("Least"), &Limit::least), made_of("usual", Entries::tr("Usual"), &Limit::usual),
       made_of("greatest", Entries::tr("Greatest"), &Limit::greatest),
       made_of("unit", Entries::tr("Unit"), &Limit::unit)},
      Entries::tr("What it allows"));
  add(all, source_fields<Limit>(), Entries::tr("Where it comes from"));
  return all;
}

std::vector<EntryField> rate_fields(const Around&) {
  std::vector<EntryField> all = named_fields<Rate>();
  add(all,
      {words(made_of("stage", Entries::tr("Stage"), &Rate::stage), stage_words()),
       made_of("line_kind", Entries::tr("Kind of line"), &Rate::line_kind),
       between(made_of("hours", Entries::tr("Hours for one"), &Rate::hours_per_si_unit), 0, 1e5),
       words(
           made_of("si_unit", Entries::tr("One is a"), &Rate::si_unit),
           same_words({QT_TRANSLATE_NOOP("core", "m"), QT_TRANSLATE_NOOP("core", "m2"), QT_TRANSLATE_NOOP("core", "m3"),
                       QT_TRANSLATE_NOOP("core", "t"), QT_TRANSLATE_NOOP("core", "piece"),
                       QT_TRANSLATE_NOOP("core", "h"), QT_TRANSLATE_NOOP("core", "job"),
                       QT_TRANSLATE_NOOP("core", "load"), QT_TRANSLATE_NOOP("core", "pallet")})),
       made_of("crew", Entries::tr("Crew"), &Rate::crew),
       of_items(made_of("machine", Entries::tr("Machine"), &Rate::machine), {"machine", "saw", "truck"}),
       long_text(made_of("condition", Entries::tr("Holds where"), &Rate::condition))},
      Entries::tr("The work"));
  add(all, source_fields<Rate>(), Entries::tr("Where it comes from"));
  return all;
}

std::vector<EntryField> supplier_fields() {
  std::vector<EntryField> all = named_fields<Supplier>();
  EntryField delivery = entry_field<Supplier>(
      "delivery", Entries::tr("A delivery"), Editor::money,
      [](const Supplier& supplier) -> Value { return supplier.delivery.coins(); },
      [](Supplier& supplier, const Value& value) {
        if (const auto* coins = std::get_if<std::int64_t>(&value)) supplier.delivery = units::Money::of_coins(*coins);
        return QString();
      });
  add(all, {long_text(made_of("sells", Entries::tr("Sells"), &Supplier::sells)), std::move(delivery),
            between(made_of("lead_days", Entries::tr("Days before"), &Supplier::lead_days), 0, 1000),
            made_of("least_order", Entries::tr("Least order"), &Supplier::least_order),
            long_text(made_of("notes", Entries::tr("Notes"), &Supplier::notes))});
  return all;
}

std::vector<EntryField> junction_fields(const Around&) {
  std::vector<EntryField> all = named_fields<Junction>();
  EntryField joint = made_of("joint", Entries::tr("Joint"), &Junction::joint);
  joint.look.never_below_0 = true;
  add(all,
      {made_of("side_a", Entries::tr("On one side"), &Junction::side_a),
       made_of("side_b", Entries::tr("On the other"), &Junction::side_b),
       made_of("condition", Entries::tr("Where"), &Junction::condition)},
      Entries::tr("What meets"));
  add(all,
      {long_text(made_of("built", Entries::tr("How"), &Junction::built)), std::move(joint),
       of_items(made_of("rod", Entries::tr("Rod"), &Junction::rod), {"rod"}),
       of_items(made_of("sealant", Entries::tr("Sealant"), &Junction::sealant), {"sealant"}),
       of_items(made_of("filler", Entries::tr("Filler"), &Junction::filler),
                {"joint-sand", "joint-chips", "filler-strip"}),
       of_items(made_of("edge", Entries::tr("Edge"), &Junction::edge),
                {"restraint", "kerb-unit", "edging-unit", "coping"}),
       long_text(made_of("other", Entries::tr("Besides"), &Junction::other))},
      Entries::tr("What is built"));
  add(all, source_fields<Junction>(), Entries::tr("Where it comes from"));
  return all;
}

std::vector<EntryField> hold_point_fields() {
  return {words(made_of("stage", Entries::tr("Stage"), &HoldPoint::stage), stage_words()),
          long_text(made_of("look_at", Entries::tr("What must be seen"), &HoldPoint::look_at)),
          long_text(made_of("limit", Entries::tr("What must hold"), &HoldPoint::limit)),
          long_text(made_of("before", Entries::tr("Before"), &HoldPoint::before)),
          made_of("who", Entries::tr("Who looks"), &HoldPoint::who),
          long_text(made_of("source", Entries::tr("Source"), &HoldPoint::source)),
          made_of("applies", Entries::tr("Applies where the job has"), &HoldPoint::applies)};
}

std::vector<EntryField> caution_fields() {
  return {words(made_of("stage", Entries::tr("Stage"), &Caution::stage), stage_words()),
          long_text(made_of("text", Entries::tr("What to take care of"), &Caution::text)),
          made_of("who", Entries::tr("Who decides"), &Caution::who),
          long_text(made_of("source", Entries::tr("Source"), &Caution::source)),
          made_of("applies", Entries::tr("Applies where the job has"), &Caution::applies)};
}

std::vector<EntryField> site_rule_fields() {
  EntryField id = made_of("id", Entries::tr("Id"), &SiteRule::id);
  id.look.editor = Editor::told;
  EntryField distance = made_of("distance", Entries::tr("Within"), &SiteRule::distance);
  distance.look.never_below_0 = true;
  return {std::move(id),
          made_of("mark", Entries::tr("Beside a"), &SiteRule::mark),
          made_of("against", Entries::tr("It looks at"), &SiteRule::against),
          std::move(distance),
          between(made_of("per_size", Entries::tr("Times its own size"), &SiteRule::per_size), 0, 1000),
          words(made_of("severity", Entries::tr("It is a"), &SiteRule::severity),
                same_words({QT_TRANSLATE_NOOP("core", "problem"), QT_TRANSLATE_NOOP("core", "flag"),
                            QT_TRANSLATE_NOOP("core", "notice")})),
          long_text(made_of("text", Entries::tr("What it asks"), &SiteRule::text)),
          made_of("who", Entries::tr("Who decides"), &SiteRule::who),
          long_text(made_of("source", Entries::tr("Source"), &SiteRule::source))};
}

std::vector<EntryField> fields_of(const Entry& entry, const Around& around) {
  struct Of {
    const Around& around;
    std::vector<EntryField> operator()(const catalogue::Item& item) const { return item_fields(item, around); }
    std::vector<EntryField> operator()(const catalogue::Pattern& one) const { return pattern_fields(one, around); }
    std::vector<EntryField> operator()(const catalogue::BuildUp& one) const { return build_up_fields(one, around); }
    std::vector<EntryField> operator()(const Limit&) const { return limit_fields(); }
    std::vector<EntryField> operator()(const Rate&) const { return rate_fields(around); }
    std::vector<EntryField> operator()(const Supplier&) const { return supplier_fields(); }
    std::vector<EntryField> operator()(const Junction&) const { return junction_fields(around); }
    std::vector<EntryField> operator()(const HoldPoint&) const { return hold_point_fields(); }
    std::vector<EntryField> operator()(const Caution&) const { return caution_fields(); }
    std::vector<EntryField> operator()(const SiteRule&) const { return site_rule_fields(); }
  };
  return std::visit(Of{around}, entry);
}

}  // namespace ui
