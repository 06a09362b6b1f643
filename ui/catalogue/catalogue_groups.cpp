#include "ui/catalogue/catalogue_groups.h"

#include <QCoreApplication>
#include <algorithm>

#include "takeoff/stage.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

enum Kind : std::size_t { item, pattern, build_up, limit, rate, supplier, junction, hold_point, caution, site_rule };

constexpr const char* bought = QT_TRANSLATE_NOOP("Catalogue", "What is bought");
constexpr const char* work = QT_TRANSLATE_NOOP("Catalogue", "Work and hauling");
constexpr const char* built = QT_TRANSLATE_NOOP("Catalogue", "How it is built");
constexpr const char* rules = QT_TRANSLATE_NOOP("Catalogue", "Rules");

struct Start {
  const CatalogueGroup& group;
  const catalogue::Id& id;
  const std::string& name;

  catalogue::Entry of_item() const {
    catalogue::Item made;
    made.id = id;
    made.name.en = name;
    made.kind = group.item_kinds.front();
    made.unit = made.kind == "labour"      ? "hour"
                : made.kind == "machine"   ? "day"
                : made.kind == "aggregate" ? "ton"
                                           : "piece";
    // A mixed pack is nothing before it says what it holds; the kind is chosen with the first size.
    if (made.kind == "mixed-pack") made.kind = "paving-unit";
    return made;
  }
  catalogue::Entry of_pattern() const {
    catalogue::Pattern made;
    made.id = id;
    made.name.en = name;
    made.cell_y.of = catalogue::CellSide::Of::module_width;
    made.pieces = {{"unit", 0, 0, 1, 1}};
    return made;
  }
  catalogue::Entry of_rate() const {
    catalogue::Rate made;
    made.id = id;
    made.name.en = name;
    made.stage = takeoff::word(takeoff::Stage::paving);
    made.si_unit = "m2";
    return made;
  }
  template <class T>
  catalogue::Entry named() const {
    T made;
    made.id = id;
    made.name.en = name;
    return made;
  }
  catalogue::Entry of_site_rule() const {
    catalogue::SiteRule made;
    made.id = id;
    made.text = name;
    made.mark = "tree";
    made.against = "dig";
    made.severity = "flag";
    return made;
  }
};

template <class T>
QString own(const T& entry) {
  return own_name(entry.name, entry.id);
}
QString own(const catalogue::HoldPoint& point) { return QString::fromStdString(point.look_at); }
QString own(const catalogue::Caution& caution) { return QString::fromStdString(caution.text); }
QString own(const catalogue::SiteRule& rule) { return QString::fromStdString(rule.text); }

}  // namespace

const std::vector<CatalogueGroup>& catalogue_groups() {
  static const std::vector<CatalogueGroup> groups{
      {"units",
       bought,
       QT_TRANSLATE_NOOP("Catalogue", "Units and slabs"),
       item,
       {"paving-unit", "slab", "permeable-unit", "clay-unit", "mixed-pack"}},
      {"steps", bought, QT_TRANSLATE_NOOP("Catalogue", "Steps and treads"), item, {"step-unit", "tread"}},
      {"coping", bought, QT_TRANSLATE_NOOP("Catalogue", "Coping"), item, {"coping"}},
      {"edging",
       bought,
       QT_TRANSLATE_NOOP("Catalogue", "Kerbs and edging"),
       item,
       {"kerb-unit", "edging-unit", "restraint", "spike"}},
      {"blocks",
       bought,
       QT_TRANSLATE_NOOP("Catalogue", "Wall blocks"),
       item,
       {"wall-block", "seat-block", "pillar-block"}},
      {"caps", bought, QT_TRANSLATE_NOOP("Catalogue", "Caps"), item, {"cap", "pillar-cap"}},
      {"adhesive", bought, QT_TRANSLATE_NOOP("Catalogue", "Adhesive"), item, {"adhesive"}},
      {"reinforcement", bought, QT_TRANSLATE_NOOP("Catalogue", "Reinforcement"), item, {"reinforcement", "bar"}},
      {"stone", bought, QT_TRANSLATE_NOOP("Catalogue", "Stone, sand and soil"), item, {"aggregate"}},
      {"joints", bought, QT_TRANSLATE_NOOP("Catalogue", "Joint sand and chips"), item, {"joint-sand", "joint-chips"}},
      {"sealant",
       bought,
       QT_TRANSLATE_NOOP("Catalogue", "Sealant and rod"),
       item,
       {"sealant", "primer", "rod", "filler-strip"}},
      {"fabric", bought, QT_TRANSLATE_NOOP("Catalogue", "Fabric"), item, {"fabric"}},
      {"pipe",
       bought,
       QT_TRANSLATE_NOOP("Catalogue", "Pipe and drainage"),
       item,
       {"pipe", "fitting", "outlet", "inlet", "channel", "channel-part", "weep", "spout", "basin"}},
      {"light", bought, QT_TRANSLATE_NOOP("Catalogue", "Light and conduit"), item, {"light", "conduit"}},
      {"concrete", bought, QT_TRANSLATE_NOOP("Catalogue", "Concrete and mortar"), item, {"concrete", "bonding"}},
      {"finish", bought, QT_TRANSLATE_NOOP("Catalogue", "Protection and finish"), item, {"protection", "finish"}},
      {"saws", bought, QT_TRANSLATE_NOOP("Catalogue", "Saws and blades"), item, {"saw", "blade"}},
      {"rates", work, QT_TRANSLATE_NOOP("Catalogue", "Labour rates"), rate, {}},
      {"crew", work, QT_TRANSLATE_NOOP("Catalogue", "Crew"), item, {"labour"}},
      {"machines", work, QT_TRANSLATE_NOOP("Catalogue", "Machines"), item, {"machine"}},
      {"trucks", work, QT_TRANSLATE_NOOP("Catalogue", "Trucks and tipping"), item, {"truck", "disposal"}},
      {"suppliers", work, QT_TRANSLATE_NOOP("Catalogue", "Suppliers"), supplier, {}},
      {"allowances",
       work,
       QT_TRANSLATE_NOOP("Catalogue", "Deposits and allowances"),
       item,
       {"allowance", "deposit", "credit"}},
      {"build-ups", built, QT_TRANSLATE_NOOP("Catalogue", "Build-ups"), build_up, {}},
      {"junctions", built, QT_TRANSLATE_NOOP("Catalogue", "Junctions"), junction, {}},
      {"patterns", built, QT_TRANSLATE_NOOP("Catalogue", "Patterns"), pattern, {}},
      {"limits", rules, QT_TRANSLATE_NOOP("Catalogue", "Limits and factors"), limit, {}},
      {"hold-points", rules, QT_TRANSLATE_NOOP("Catalogue", "Hold points"), hold_point, {}},
      {"cautions", rules, QT_TRANSLATE_NOOP("Catalogue", "Cautions"), caution, {}},
      {"site-rules", rules, QT_TRANSLATE_NOOP("Catalogue", "Site rules"), site_rule, {}},
  };
  return groups;
}

QString group_name(const CatalogueGroup& group) { return QCoreApplication::translate("Catalogue", group.name); }
QString group_heading(const CatalogueGroup& group) { return QCoreApplication::translate("Catalogue", group.heading); }

bool belongs(const CatalogueGroup& group, const catalogue::Entry& entry) {
  if (entry.index() != group.kind) return false;
  const auto* of_item = std::get_if<catalogue::Item>(&entry);
  return !of_item || std::ranges::find(group.item_kinds, of_item->kind) != group.item_kinds.end();
}

std::size_t group_of(const catalogue::Entry& entry) {
  const auto& all = catalogue_groups();
  const auto found = std::ranges::find_if(all, [&](const CatalogueGroup& group) { return belongs(group, entry); });
  return found == all.end() ? 0 : static_cast<std::size_t>(found - all.begin());
}

catalogue::Entry fresh_entry(const CatalogueGroup& group, const catalogue::Id& id, const std::string& name) {
  const Start start{group, id, name};
  const std::string first = takeoff::word(takeoff::all_stages.front());
  switch (static_cast<Kind>(group.kind)) {
    case item: return start.of_item();
    case pattern: return start.of_pattern();
    case build_up: {
      auto made = std::get<catalogue::BuildUp>(start.named<catalogue::BuildUp>());
      made.use = "paving";
      return made;
    }
    case limit: return start.named<catalogue::Limit>();
    case rate: return start.of_rate();
    case supplier: return start.named<catalogue::Supplier>();
    case junction: return start.named<catalogue::Junction>();
    case hold_point: return catalogue::HoldPoint{first, name, {}, {}, {}, {}, "always"};
    case caution: return catalogue::Caution{first, name, {}, {}, "always"};
    case site_rule: return start.of_site_rule();
  }
  return start.of_item();
}

QString name_of(const catalogue::Entry& entry) {
  return std::visit([](const auto& value) { return own(value); }, entry);
}

catalogue::Id free_id(const catalogue::Stock& stock, std::size_t kind, const QString& name) {
  std::string id;
  for (const QChar letter : name.normalized(QString::NormalizationForm_KD).toLower()) {
    const char c = letter.toLatin1();
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
      id += c;
    else if (letter.category() != QChar::Mark_NonSpacing && !id.empty() && id.back() != '-')
      id += '-';
  }
  id = id.substr(0, 60);
  while (id.ends_with('-')) id.pop_back();
  if (id.empty()) id = "new";
  catalogue::Id free = id;
  for (int number = 2; catalogue::find(stock, {kind, free}); ++number) free = id + "-" + std::to_string(number);
  return free;
}

}  // namespace ui
