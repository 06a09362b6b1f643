#include "takeoff/edges/weeps.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "takeoff/edges/notes.h"

namespace takeoff::edges {

namespace {

constexpr double most_weeps = 100'000;  // of one kerb: 25 miles of them at 16 in

constexpr std::array kinds{
    WeepKind{"open-joint", "weep-spacing-open-joint", 24, true, true, false},
    WeepKind{"tube", "weep-spacing-cord", 16, true, true, false},
    WeepKind{"hole", "weep-spacing-hole", 120, true, false, false},
    WeepKind{"cord-left", "weep-spacing-cord", 16, false, true, true},
    WeepKind{"cord-pulled", "weep-spacing-cord", 16, false, true, true},
    WeepKind{"strip", "weep-spacing", 48, true, true, false},
};

std::string kind_word(const plan::Weeps& weeps, const catalogue::Item* item) {
  if (!weeps.kind.empty() || !item) return weeps.kind;
  const auto found = item->details.find("kind");
  return found == item->details.end() ? std::string() : found->second;
}

double spacing_of(const plan::Job& job, const plan::Weeps& weeps, const WeepKind& kind, const catalogue::Item* item) {
  if (weeps.spacing) return weeps.spacing->metres().si();
  if (const auto own = item ? item->length_of("spacing_mm") : std::nullopt) return own->metres().si();
  const units::Length usual = units::Length::inches(static_cast<std::int64_t>(kind.spacing_inches));
  return job.catalogue->length_limit(std::string(kind.limit), usual).metres().si();
}

bool passes_rain(const WeepKind& kind, const catalogue::Item* item) {
  if (kind.word == "cord-left" || !item) return kind.passes_rain;
  const auto said = item->details.find("passes_rain");
  return said == item->details.end() ? kind.passes_rain : said->second == "yes";
}

// What one weep leaves open for rain, m2; 0 where nothing says how wide it is.
double opening(const WeepKind& kind, const catalogue::Item* item, const catalogue::Item& unit) {
  if (!passes_rain(kind, item)) return 0;
  if (item) {
    if (const auto area = item->number("opening_mm2")) return *area * 1e-6;
  }
  return kind.word == "open-joint" && unit.joint && unit.height ? (*unit.joint * *unit.height).si() : 0;
}

Working cord_line(const plan::Job& job, const Working& count, const catalogue::Item& unit) {
  const units::Length past = job.catalogue->length_limit("weep-cord-past", units::Length::inches(7));
  const double width = unit.width ? unit.width->metres().si() : 0;
  return Working::product(
      {count, Working::sum({term("width of the kerb", width, units::metre, unit.id + "/width"),
                            term("tail and spare", past.metres().si(), units::metre, "weep-cord-past")})
                  .named("cord of one weep")});
}

// One sentence a kerb, whatever there is to say of where its weeps sit and what they pass.
void remarks(const plan::EdgeRun& run, bool rain, int shared, const plan::ElementId& of, Share& share) {
  const bool on_footing = run.footing && run.footing->thickness > units::Length();
  if (!rain) {
    share.problems.push_back(
        notice("weep-damp-only",
               std::string("these weeps pass damp and no rain") +
                   (on_footing ? ", and nothing from below the kerb's footing that they sit on" : ""),
               "take open joints, tubes, holes or strips where rain must get out", of));
  } else if (on_footing) {
    share.problems.push_back(notice("weep-on-footing",
                                    "the weeps sit on the kerb's footing and drain only what is above it",
                                    "carry the footing on the stone, or put a pipe below it", of));
  }
  if (shared > 0) {
    share.problems.push_back(notice("weep-joints-short",
                                    std::to_string(shared) + " weeps have no head joint of their own",
                                    "bore them through the units, or space the weeps no closer than the units", of));
  }
}

}  // namespace

const WeepKind* weep_kind(std::string_view word) {
  const auto found = std::ranges::find(kinds, word, &WeepKind::word);
  return found == kinds.end() ? nullptr : &*found;
}

bool rain_passes(const plan::Job& job, const plan::Weeps& weeps) {
  const catalogue::Item* item = weeps.item.empty() ? nullptr : job.catalogue->item(weeps.item);
  const WeepKind* kind = weep_kind(kind_word(weeps, item));
  return kind && passes_rain(*kind, item);
}

// Of the joints, which stand in order; of two equally near the first.
static double nearest(const std::vector<double>& joints, double at) {
  const auto after = std::ranges::lower_bound(joints, at);
  if (after == joints.begin()) return *after;
  const double before = *std::prev(after);
  return after == joints.end() || at - before <= *after - at ? before : *after;
}

WeepPlaces weep_places(double length, double spacing, const std::vector<double>& joints) {
  WeepPlaces places;
  const int count = std::max(1, static_cast<int>(std::ceil(length / spacing - 1e-9)));
  std::set<double> taken;
  for (int i = 0; i < count; ++i) {
    double at = (i + 0.5) * length / count;
    if (!joints.empty()) {
      at = nearest(joints, at);
      if (!taken.insert(at).second) ++places.shared;
    }
    places.at.push_back(at);
  }
  return places;
}

Share weeps(const plan::Job& job, const plan::EdgeRun& run, const catalogue::Item& unit,
            const std::vector<KerbStretch>& stretches, const plan::ElementId& of) {
  Share share;
  const catalogue::Item* item =
      run.weeps->item.empty() ? nullptr : wanted(job, run.weeps->item, "the weeps", of, share);
  const std::string word = kind_word(*run.weeps, item);
  const WeepKind* kind = weep_kind(word);
  if (!kind) {
    share.problems.push_back(fault("weep-kind", "the weeps have no kind that is known: \"" + word + "\"",
                                   "choose open-joint, tube, hole, cord-left, cord-pulled or strip", of));
    return share;
  }
  const double spacing = spacing_of(job, *run.weeps, *kind, item);
  if (spacing <= 0) {
    share.problems.push_back(fault("weep-spacing", "the spacing of the weeps is not above 0", "enter a spacing", of));
    return share;
  }
  double about = 0;
  for (const KerbStretch& stretch : stretches) about += stretch.length / spacing;
  if (about > most_weeps) {
    share.problems.push_back(fault("weep-spacing",
                                   "weeps every " + shown(job, spacing) + " would be more than a hundred thousand",
                                   "space them wider, or look at the scale of the drawing", of));
    return share;
  }
  std::vector<Working> parts;
  int shared = 0;
  for (const KerbStretch& stretch : stretches) {
    const WeepPlaces places =
        weep_places(stretch.length, spacing, kind->in_joint ? stretch.joints : std::vector<double>{});
    shared += places.shared;
    parts.push_back(
        Working::greatest({term("one at least", 1, units::piece),
                           Working::up(Working::quotient(term("between corners", stretch.length, units::metre, of),
                                                         term("spacing", spacing, units::metre, of)))}));
  }
  const Working count = Working::sum(std::move(parts)).named("weeps");
  const double number = count.amount().value;
  if (item) {
    share.lines.push_back({Stage::coping,
                           item->id,
                           "weeps through the kerb",
                           {of},
                           kind->of_cord ? cord_line(job, count, unit) : count,
                           {},
                           false});
  }
  add_task(job, "weep-set", Stage::coping, "weeps through the kerb", of, count, share);
  share.measures.put("weeps", number);
  share.measures.put("weep_spacing_m", spacing);
  share.measures.put("weep_opening_m2", number * opening(*kind, item, unit));
  remarks(run, passes_rain(*kind, item), shared, of, share);
  return share;
}

}  // namespace takeoff::edges
