#include "ui/panels/offers.h"

#include <algorithm>

#include "ui/desk/lay_pattern.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"

namespace ui {

namespace {

bool fits(const Field& field, const std::string& kind) {
  return std::ranges::find(field.fits, kind) != field.fits.end();
}

QString price_of(const catalogue::Item& item, const plan::Heading& heading) {
  if (!item.price) return Fields::tr("no price");
  if (item.price->by_others) return Fields::tr("by others");
  return Fields::tr("%1 a %2").arg(shown_money(item.price->amount, heading), said(item.price->unit));
}

struct Gathering {
  const plan::Heading& heading;
  const Field& field;
  std::vector<Offer> found;

  // What `has` has already is left out.
  void add(const catalogue::Catalogue& of, const catalogue::Catalogue* has) {
    const std::size_t first = found.size();
    const bool book = has != nullptr;
    if (field.editor == Editor::item)
      for (const auto& [id, item] : of.items)
        if (fits(field, item->kind) && !(has && has->items.contains(id)))
          found.push_back({id, own_name(item->name, id), price_of(*item, heading), book});
    if (field.editor == Editor::build_up)
      for (const auto& [id, build_up] : of.build_ups)
        if (fits(field, build_up.use) && !(has && has->build_ups.contains(id)))
          found.push_back({id, own_name(build_up.name, id), {}, book});
    if (field.editor == Editor::pattern)
      for (const auto& [id, pattern] : of.patterns)
        if (!(has && has->patterns.contains(id))) found.push_back({id, own_name(pattern.name, id), {}, book});
    const auto begin = found.begin() + static_cast<std::ptrdiff_t>(first);
    std::stable_sort(begin, found.end(),
                     [](const Offer& a, const Offer& b) { return QString::localeAwareCompare(a.name, b.name) < 0; });
  }
};

}  // namespace

std::vector<Offer> offers(const plan::Job& job, const catalogue::Catalogue* book, const Field& field) {
  Gathering all{job.heading, field, {}};
  all.add(*job.catalogue, nullptr);
  if (book) all.add(*book, job.catalogue.get());
  return std::move(all.found);
}

Offer offer_of(const plan::Job& job, const Field& field, const catalogue::Id& id) {
  const catalogue::Catalogue& has = *job.catalogue;
  const QString unknown = QString::fromStdString(id);
  if (field.editor == Editor::pattern) {
    const catalogue::Pattern* pattern = has.pattern(id);
    return {id, pattern ? own_name(pattern->name, id) : unknown, {}, false};
  }
  if (field.editor == Editor::build_up) {
    const catalogue::BuildUp* build_up = has.build_up(id);
    return {id, build_up ? own_name(build_up->name, id) : unknown, {}, false};
  }
  const catalogue::Item* item = has.item(id);
  return {id, item ? own_name(item->name, id) : unknown, item ? price_of(*item, job.heading) : QString(), false};
}

plan::Job chosen(const plan::Job& job, const catalogue::Catalogue* book, const Field& field, const catalogue::Id& id) {
  plan::Job with = job;
  if (book && !id.empty()) {
    Wanted wanted;
    if (field.editor == Editor::item) wanted.items = {id};
    if (field.editor == Editor::build_up) wanted.build_ups = {id};
    if (field.editor == Editor::pattern) {
      wanted.patterns = {id};
      const catalogue::Pattern* pattern = job.catalogue->pattern(id);
      if (!pattern) pattern = book->pattern(id);
      if (pattern && !units_for(*job.catalogue, *pattern, {}))
        if (const auto units = units_for(*book, *pattern, {}))
          for (const auto& [size, item] : *units) wanted.items.push_back(item);
    }
    auto taken = std::make_shared<catalogue::Catalogue>(with_needs(*job.catalogue, *book, wanted));
    if (!catalogue::same(*taken, *job.catalogue)) with.catalogue = std::move(taken);
  }
  return field.set(with, id.empty() ? Value{} : Value(id));
}

}  // namespace ui
