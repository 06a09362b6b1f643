#include "takeoff/paving/advice.h"

#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "units/number.h"

namespace takeoff::paving {

namespace {

constexpr double per_metre = units::Length::steps_per_metre;

const plan::PavedArea& paved(const LaidArea& area) { return std::get<plan::PavedArea>(area.ground->element->kind); }

const Kind& kind_of(const Layout& layout, const Piece& piece) {
  return layout.lattice.kinds[static_cast<std::size_t>(piece.kind)];
}

std::string many(std::int64_t count, const std::string& one, const std::string& more) {
  return std::to_string(count) + " " + (count == 1 ? one : more);
}

Slivers limits(const plan::Job& job) {
  return {job.choices.sliver_share, static_cast<double>(job.choices.sliver_width.steps())};
}

// A sliver at the end of a row and the whole unit beside it, cut to one size: (L + c) / 2 each.
std::optional<double> shared_last_two(const Layout& layout) {
  std::optional<double> least;
  for (const Piece& piece : layout.pieces) {
    if (!piece.sliver) continue;
    Piece plain = piece;
    plain.sliver = false;
    const Need own = need(layout, plain);
    if (!own.straight || own.lengthwise || own.slope != 0) continue;
    const double shared = (own.whole + own.along) / 2;
    least = std::min(least.value_or(shared), shared);
  }
  return least;
}

bool free_edge(const LaidArea& area) {
  return std::ranges::any_of(area.ground->stretches,
                             [](const plan::Stretch& s) { return s.meets == plan::Meets::planting; });
}

void slivers(const plan::Job& job, const LaidArea& area, Share& share) {
  const auto count = std::ranges::count_if(area.layout->pieces, &Piece::sliver);
  if (count == 0) return;
  std::string mend;
  for (const Mend& way : mends(job, area)) {
    if (way.counts.slivers >= count) continue;
    mend +=
        way.what + " (" + std::to_string(way.counts.slivers) + " left, " + many(way.counts.cut, "cut", "cuts") + "); ";
  }
  if (const auto shared = shared_last_two(*area.layout))
    mend += "share the last two of a row (" + edges::shown(job, *shared / per_metre) + " or more each); ";
  if (free_edge(area)) mend += "move a free edge; ";
  mend += "search for a better start";
  share.problems.push_back(edges::notice("slivers",
                                         many(count, "cut piece is a sliver", "cut pieces are slivers") + ": under " +
                                             units::show_number(100 * job.choices.sliver_share, 0) +
                                             " % of its unit or narrower than " +
                                             edges::shown(job, job.choices.sliver_width.metres().si()),
                                         mend, area.ground->element->id));
}

void notches(const plan::Job& job, const LaidArea& area, Share& share) {
  const Layout& layout = *area.layout;
  const auto count = std::ranges::count_if(layout.pieces, [](const Piece& piece) { return !piece.convex; });
  share.measures.put("notched_pieces", static_cast<double>(count));
  if (count == 0) return;
  double thickest = 0;
  for (const Piece& piece : layout.pieces) {
    const catalogue::Item* item = job.catalogue->item(kind_of(layout, piece).item);
    if (!piece.convex && item && item->height) thickest = std::max(thickest, item->height->metres().si());
  }
  const double overrun = saw_overrun(7 * units::metres_per_inch, thickest);  // the 14 in blade of a table saw
  share.problems.push_back(
      edges::notice("notches",
                    many(count, "piece has", "pieces have") + " an inner corner: a 14 in blade runs " +
                        edges::shown(job, overrun) + " past it before it is through",
                    "cut back from below, finish with a grinder, or split the piece at the corner (slabs: split)",
                    area.ground->element->id));
}

void narrow_cuts(const plan::Job& job, const LaidArea& area, Share& share) {
  const Layout& layout = *area.layout;
  const double least_share = job.catalogue->number_limit("cut-least-vehicle", 1.0 / 3);
  const double least_width =
      static_cast<double>(job.catalogue->length_limit("cut-least-foot", units::Length::inch_64ths(24)).steps());
  const bool vehicles = paved(area).vehicles;
  const auto count = std::ranges::count_if(layout.pieces, [&](const Piece& piece) {
    const Kind& kind = kind_of(layout, piece);
    return vehicles ? piece.area < least_share * kind.width * kind.height : piece.least_width < least_width;
  });
  if (count == 0) return;
  if (vehicles) {
    share.problems.push_back(edges::flag(
        "cut-under-vehicles",
        many(count, "cut piece is", "cut pieces are") + " under a third of the unit, under vehicles",
        "shift the start, turn the pattern, or lay a border course against the edge", area.ground->element->id));
  } else {
    share.problems.push_back(edges::flag("cut-too-narrow",
                                         many(count, "cut piece is", "cut pieces are") + " narrower than " +
                                             edges::shown(job, least_width / per_metre) + ", the least that is laid",
                                         "shift the start or share the last two units", area.ground->element->id));
  }
}

// Proportions as the trade's tolerance guide has them: length over thickness at most 4 (3 for permeable units under
// vehicles), 60 mm thick at least.
void proportions(const plan::Job& job, const LaidArea& area, const catalogue::Item& item, Share& share) {
  if (!item.length || !item.height || item.kind == "slab") return;
  const bool permeable = item.kind == "permeable-unit" && paved(area).vehicles;
  const auto found = job.catalogue->limits.find(permeable ? "aspect-permeable-vehicle" : "aspect-foot");
  const double greatest = found != job.catalogue->limits.end() ? found->second.greatest.value_or(permeable ? 3 : 4)
                          : permeable                          ? 3
                                                               : 4;
  const double aspect = *item.length / *item.height;
  if (aspect > greatest + 1e-9)
    share.problems.push_back(edges::notice("unit-aspect",
                                           "unit " + item.id + " is " + units::show_number(aspect, 2) +
                                               " times as long as it is thick; the limit is " +
                                               units::show_number(greatest, 0),
                                           "choose a thicker or shorter unit", area.ground->element->id));
  const units::Length thin = job.catalogue->length_limit("thickness-foot", units::Length::inch_64ths(152));
  if (paved(area).vehicles && *item.height < thin)
    share.problems.push_back(edges::notice(
        "unit-thin",
        "unit " + item.id + " is thinner than " + edges::shown(job, thin.metres().si()) + ", under vehicles",
        "choose a thicker unit", area.ground->element->id));
}

void per_item(const plan::Job& job, const LaidArea& area, Share& share) {
  std::map<Id, std::int64_t> counts;
  if (area.layout) {
    const auto& kinds = area.layout->lattice.kinds;
    for (std::size_t k = 0; k < kinds.size(); ++k)
      counts[kinds[k].item] += area.layout->whole(static_cast<int>(k)) + area.layout->cut(static_cast<int>(k));
  }
  for (const LaidBorder& border : area.borders) counts[border.course.item] += border.units;
  for (const auto& [id, count] : counts) {
    const catalogue::Item* item = job.catalogue->item(id);
    if (!item || count == 0) continue;
    proportions(job, area, *item, share);
    edges::add_weight(job, *item, count, area.ground->element->id, share);
  }
}

void try_start(const LaidArea& area, const Slivers& limit, geometry::Vec share, const std::string& what,
               std::vector<Mend>& found) {
  Lattice shifted = area.layout->lattice;
  const geometry::Vec by{share.x * shifted.along + share.y * shifted.across.x, share.y * shifted.across.y};
  shifted.start = geometry::moved(shifted.start, shifted.from_frame(by));
  found.push_back({what, count(area.field, shifted, limit)});
}

void try_joint(const plan::Job& job, const LaidArea& area, units::Length joint, std::vector<Mend>& found) {
  plan::Laying laying = *paved(area).laying;
  laying.joint = joint;
  if (const auto other = lattice(*job.catalogue, laying))
    found.push_back({"joints of " + edges::shown(job, joint.metres().si()), count(area.field, *other, limits(job))});
}

}  // namespace

double saw_overrun(double blade_radius, double thickness) {
  const double square = 2 * blade_radius * thickness - thickness * thickness;
  return square > 0 ? std::sqrt(square) : 0;
}

std::vector<Mend> mends(const plan::Job& job, const LaidArea& area) {
  std::vector<Mend> found;
  if (!area.layout) return found;
  const Slivers limit = limits(job);
  try_start(area, limit, {0.5, 0}, "start half a repeat along the rows", found);
  try_start(area, limit, {0, 0.5}, "start half a repeat across the rows", found);
  try_start(area, limit, {0.5, 0.5}, "start half a repeat both ways", found);
  Lattice turned = area.layout->lattice;
  std::swap(turned.cosine, turned.sine);
  turned.cosine = -turned.cosine;
  found.push_back({"turn the pattern by 90 degrees", count(area.field, turned, limit)});
  const catalogue::Item* item = job.catalogue->item(area.layout->lattice.kinds.front().item);
  const std::string id = !item                            ? ""
                         : item->kind == "clay-unit"      ? "joint-clay"
                         : item->kind == "permeable-unit" ? "joint-permeable"
                                                          : "joint-interlocking";
  for (const edges::Bound bound : {edges::Bound::least, edges::Bound::greatest}) {
    const double metres = edges::limit_inches(job, id, bound, 0);
    if (metres > 0) try_joint(job, area, units::Length::nearest(units::Metres(metres)), found);
  }
  std::ranges::stable_sort(found, [](const Mend& a, const Mend& b) {
    return std::pair(a.counts.slivers, a.counts.cut) < std::pair(b.counts.slivers, b.counts.cut);
  });
  return found;
}

void add_advice(const plan::Job& job, const LaidArea& area, Share& share) {
  per_item(job, area, share);
  if (!area.layout) return;
  slivers(job, area, share);
  notches(job, area, share);
  narrow_cuts(job, area, share);
  const catalogue::Pattern* pattern = job.catalogue->pattern(paved(area).laying->pattern);
  if (paved(area).vehicles && pattern && !pattern->herringbone)
    share.problems.push_back(edges::notice(
        "pattern-under-vehicles", "pattern " + pattern->id + " lies under vehicles; herringbone holds them best",
        "choose a herringbone pattern, or lay running bond across the traffic", area.ground->element->id));
}

}  // namespace takeoff::paving
