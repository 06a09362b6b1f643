#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <set>

#include "sheets/plan_parts.h"
#include "takeoff/edges/junction.h"
#include "takeoff/levels/levels.h"
#include "units/number.h"

namespace sheets {

namespace {

// ---- falls

double area_of(const std::vector<Vec>& ring) {
  double twice = 0;
  for (std::size_t i = 0; i < ring.size(); ++i)
    twice += geometry::cross(ring[i] - ring[0], ring[(i + 1) % ring.size()] - ring[0]);
  return std::abs(twice) / 2;
}

Vec centre_of(const std::vector<Vec>& ring) {
  Vec sum;
  for (const Vec& corner : ring) sum = sum + corner;
  return (1.0 / static_cast<double>(ring.size())) * sum;
}

std::vector<Vec> ring_of(const takeoff::levels::FallPatch& patch) {
  std::vector<Vec> ring;
  for (const geometry::Point& point : patch.ring) ring.push_back(metres(point));
  return ring;
}

void draw_patch(Plan& plan, const takeoff::levels::FallPatch& patch) {
  Area area;
  area.contours.push_back(polygon(ring_of(patch)));
  area.line = Line::light;
  area.word = patch.says;
  area.of = patch.area;
  plan.put(std::move(area));
}

void draw_arrow(Plan& plan, const takeoff::levels::FallPatch& patch) {
  plan.mark(Sign::fall, centre_of(ring_of(patch)), units::show_number(patch.fall * 100, 1) + " %", patch.area,
            patch.towards);
}

bool any_finish(const plan::Job& job) {
  return std::ranges::any_of(job.elements, [](const plan::ElementPtr& element) {
    const auto* area = std::get_if<plan::PavedArea>(&element->kind);
    return area && area->finish;
  });
}

// ---- junctions

// What the joint is for: see JunctionLetter in plan_figure.h.
char letter(const plan::Job& job, const plan::Ground& ground, const plan::Stretch& stretch) {
  using plan::Meets;
  if (stretch.meets == Meets::kerb) return 'K';
  if (stretch.meets == Meets::restraint) return 'R';
  const catalogue::Junction* row = takeoff::edges::junction_for(job, ground, stretch);
  if (!row) return 0;
  const catalogue::Item* edge = row->edge.empty() ? nullptr : job.catalogue->item(row->edge);
  if (edge) return edge->kind == "kerb" ? 'K' : 'R';
  switch (stretch.meets) {
    case Meets::building:
    case Meets::wall_face:
    case Meets::wall_back:
    case Meets::seat_wall:
    case Meets::pillar: return 'I';
    default: return row->sealant.empty() ? 'F' : 'E';
  }
}

// ---- faults

// Three or four words on a flag's chip, by the code of what is said; a code that is not here is its own words.
struct Short {
  std::string_view code;
  std::string_view words;
};
constexpr std::array short_words{Short{"areas-overlap", "areas overlap"},
                                 Short{"bonding", "bonding: electrician decides"},
                                 Short{"border-curve", "border turns too sharply"},
                                 Short{"build-up-unknown", "build-up not known"},
                                 Short{"channel-length", "channel length to check"},
                                 Short{"check-failed", "check fails: engineer decides"},
                                 Short{"coping-bearing", "coping bears too little"},
                                 Short{"coping-lip", "lip at the coping"},
                                 Short{"cut-too-narrow", "cut pieces too narrow"},
                                 Short{"dead-depth", "water stays in stone"},
                                 Short{"density-missing", "item without density"},
                                 Short{"dig-by-shell", "dig beside the shell"},
                                 Short{"dig-engineer", "deep dig: engineer decides"},
                                 Short{"dig-protection", "dig needs protection"},
                                 Short{"dig-way-out", "deep dig: way out"},
                                 Short{"edging-curve", "edging cannot follow curve"},
                                 Short{"fall-flat", "falls too little"},
                                 Short{"fall-house", "falls towards the house"},
                                 Short{"fall-steep", "falls too steeply"},
                                 Short{"footing-unknown", "footing depth not known"},
                                 Short{"heavy-unit", "heavy: lift by two"},
                                 Short{"herringbone-misfit", "herringbone does not fit"},
                                 Short{"item-missing", "item not in catalogue"},
                                 Short{"kerb-dams-the-surface", "kerb holds water back"},
                                 Short{"layer-length", "layer too short"},
                                 Short{"lip", "lip between areas"},
                                 Short{"low-point", "low point, no inlet"},
                                 Short{"no-outlet", "wall without a drain"},
                                 Short{"nothing-chosen", "nothing chosen yet"},
                                 Short{"outlet-above-pipe", "ground above the outlet"},
                                 Short{"outline-crosses-itself", "outline crosses itself"},
                                 Short{"outline-spike", "spike in the outline"},
                                 Short{"pattern-misfit", "units do not fit"},
                                 Short{"pipe-cover", "too little cover"},
                                 Short{"pipe-fall", "pipe falls too little"},
                                 Short{"pipe-in-the-air", "pipe above the ground"},
                                 Short{"pipe-small", "pipe too small"},
                                 Short{"pipe-uphill", "pipe runs uphill"},
                                 Short{"riser-limit", "riser outside the limits"},
                                 Short{"risers-differ", "risers differ"},
                                 Short{"run-not-joined", "run ends beside run"},
                                 Short{"site-foundation-water", "water by the foundation"},
                                 Short{"site-gate-machine", "gate too narrow"},
                                 Short{"site-roots", "roots: dig by hand"},
                                 Short{"site-service-by-hand", "service: dig by hand"},
                                 Short{"steps-handrail", "steps want a handrail"},
                                 Short{"steps-landing", "steps want a landing"},
                                 Short{"tread-limit", "tread too short"},
                                 Short{"wall-bury", "wall not buried enough"},
                                 Short{"wall-height-limit", "wall height: engineer decides"},
                                 Short{"wall-loaded", "bank loads the wall"},
                                 Short{"wall-pool-line", "pool near the wall"},
                                 Short{"wall-tiers", "second wall behind"},
                                 Short{"water-nowhere", "water has no way"},
                                 Short{"way-out-damp-only", "weeps pass damp only"},
                                 Short{"weep-buried", "ground buries the weeps"}};

std::string words_of(const std::string& code) {
  const auto known = std::ranges::find(short_words, std::string_view(code), &Short::code);
  if (known != short_words.end()) return std::string(known->words);
  std::string words = code;
  std::ranges::replace(words, '-', ' ');
  return words;
}

// Where the next fault at a place stands: in rows of three, half a metre apart, so that none hides another.
Vec fanned(Vec at, int number) {
  return {at.x + 0.75 * (number % 3), at.y - 0.5 * (number / 3)};  // NOLINT(bugprone-integer-division)
}

}  // namespace

namespace {

// One arrow for each area, on its largest plane.
void draw_main_falls(Plan& plan, const takeoff::levels::Terrain& terrain) {
  for (const auto& [id, surface] : terrain.finished) {
    const geometry::Facet* largest = nullptr;
    double most = 0;
    for (const geometry::Facet& facet : surface->facets()) {
      const double area = area_of(facet.ring);
      if (area <= most) continue;
      most = area;
      largest = &facet;
    }
    if (!largest) continue;
    const Vec at = metres(surface->origin()) + centre_of(largest->ring);
    plan.mark(Sign::fall, at, units::show_number(largest->plane.fall() * 100, 1) + " %", id,
              std::atan2(-largest->plane.gy, -largest->plane.gx));
  }
}

// The largest patches first, no arrow nearer to another than that: a curve is made of hundreds of planes.
void draw_arrows(Plan& plan, const std::vector<takeoff::levels::FallPatch>& patches) {
  constexpr double apart = 0.75;  // metres
  std::vector<std::pair<double, const takeoff::levels::FallPatch*>> by_area;
  for (const auto& patch : patches) by_area.emplace_back(area_of(ring_of(patch)), &patch);
  std::ranges::stable_sort(by_area, [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<Vec> taken;
  for (const auto& [area, patch] : by_area) {
    const Vec at = centre_of(ring_of(*patch));
    if (std::ranges::any_of(taken, [&](Vec other) { return geometry::length(other - at) < apart; })) continue;
    taken.push_back(at);
    draw_arrow(plan, *patch);
  }
}

}  // namespace

void draw_falls(Plan& plan) {
  const bool shown = plan.wants().falls || plan.built(takeoff::Stage::base);
  if (!shown || !any_finish(plan.job())) return;
  const takeoff::levels::Terrain terrain = takeoff::levels::terrain(plan.job(), plan.site());
  if (!plan.wants().falls) return draw_main_falls(plan, terrain);
  const std::vector<takeoff::levels::FallPatch> patches = takeoff::levels::fall_plan(plan.job(), plan.site(), terrain);
  for (const auto& patch : patches) draw_patch(plan, patch);
  draw_arrows(plan, patches);
}

void draw_junctions(Plan& plan) {
  if (!plan.wants().junctions) return;
  for (const auto& ground : plan.site().grounds) {
    if (!std::holds_alternative<plan::PavedArea>(ground->element->kind)) continue;
    const auto outlines = ground->net.outlines();
    for (const plan::Stretch& stretch : ground->stretches) {
      const char kind = letter(plan.job(), *ground, stretch);
      if (kind == 0) continue;
      const auto& ring = outlines[static_cast<std::size_t>(stretch.outline)]->edges();
      const geometry::Curve edge = geometry::curve(ring, static_cast<std::size_t>(stretch.edge));
      const double share =
          (stretch.from + stretch.to) / 2 * units::Length::steps_per_metre / std::max(edge.length(), 1.0);
      const Vec way = edge.direction(share);
      plan.mark(Sign::junction, metres(geometry::moved(edge.start, edge.at(share))), std::string(1, kind),
                ground->element->id, std::atan2(way.y, way.x));
    }
  }
}

void draw_faults(Plan& plan) {
  std::map<std::pair<double, double>, int> there;
  std::set<std::pair<plan::ElementId, std::string>> said;
  for (const problem::Problem& fault : plan.results().problems()) {
    if (fault.severity == problem::Severity::notice) continue;
    const plan::Ground* ground = plan.site().find(fault.place.element);
    std::optional<Vec> at = ground ? middle(*ground) : std::nullopt;
    if (fault.place.at) at = Vec{fault.place.at->x, fault.place.at->y};
    if (!at) continue;
    // One flag says it for all pieces of an element; what has a place of its own stands there.
    if (!fault.place.at && !said.emplace(fault.place.element, fault.code).second) continue;
    // The first place at an element's middle is its tag's.
    int& taken = there[{std::round(at->x * 10), std::round(at->y * 10)}];
    const int number = taken++ + (fault.place.at ? 0 : 1);
    const Sign sign = fault.severity == problem::Severity::problem ? Sign::problem : Sign::care;
    plan.mark(sign, fanned(*at, number), words_of(fault.code), fault.place.element);
  }
}

}  // namespace sheets
