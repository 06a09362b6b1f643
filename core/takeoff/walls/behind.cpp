#include <algorithm>
#include <cmath>

#include "takeoff/edges/notes.h"
#include "takeoff/ground/fabric.h"
#include "takeoff/walls/words.h"
#include "takeoff/walls/zone.h"

namespace takeoff::walls {

namespace {

// Plan area of a zone between the depths `near` and `far` that belongs to the other leg of an outside corner, from the
// corner to `along` from it: the two meet on the line that halves the corner.
double others(double near, double far, double turn, double along) {
  const double slope = std::tan(std::min(turn, 3.0) / 2);
  const double first = near * slope, x = std::clamp(along, 0.0, far * slope);
  if (x <= first) return (far - near) * x;
  return (far - near) * first + far * (x - first) - (x * x - first * first) / (2 * slope);
}

// What of a stretch lies between two depths behind the face, and how high it is.
struct Band {
  double near = 0;
  double far = 0;
  double high = 0;
  bool any() const { return far > near && high > 0; }
};

// One job: all that stands behind the blocks of one wall.
struct Maker {
  const plan::Job& job;
  const plan::ElementId& id;
  const plan::Wall& wall;
  const Profile& profile;
  Behind sizes;
  std::vector<Stretch> all;
  Share share;

  Section of(const Stretch& stretch) const { return section(profile, sizes, stretch); }

  std::string lifts() const { return ", in lifts of one course (" + edges::shown(job, profile.course_height) + ")"; }

  Band zone(const Stretch& stretch) const {
    const Section cut = of(stretch);
    return {sizes.depth + cut.column, sizes.depth + cut.column + cut.fill, cut.height};
  }
  Band cap(const Stretch& stretch) const {
    const Section cut = of(stretch);
    return {sizes.depth, sizes.depth + cut.column + cut.fill, cut.cap};
  }

  Working height(double metres) const { return term("height to the soil cap", metres, units::metre, id); }

  void column() {
    std::vector<Working> parts;
    for (const Alike& group : alike(all, [this](const Stretch& s) {
           const Section cut = of(s);
           return std::vector{cut.column, cut.height};
         })) {
      if (group.by[0] <= 0 || group.by[1] <= 0) continue;
      parts.push_back(
          Working::product({length_of(job, group.stretches, id), depth_of_column(group.by[0]), height(group.by[1])}));
    }
    if (wall.stone->drain.empty()) return;
    const Working volume = sum(std::move(parts), "column of drainage stone");
    share.measures.put("drainage_stone_m3", volume.amount().value);
    add_stone(job, wall.stone->drain, "drainage stone behind the blocks" + lifts(), id, volume, "wall-stone", share);
  }

  Working depth_of_column(double metres) const {
    return term("front to back", metres, units::metre, wall.stone->drain_depth ? id : "wall-stone");
  }

  // Plan area by the middle line of the zone, less what is counted with the other leg at a corner.
  void fill() {
    std::vector<Working> parts;
    for (const Alike& group : alike(all, [this](const Stretch& s) {
           const Section cut = of(s);
           return std::vector{cut.fill, cut.height, cut.column, s.radius};
         })) {
      if (group.by[0] <= 0 || group.by[1] <= 0) continue;
      const double near = sizes.depth + group.by[2], far = near + group.by[0];
      std::vector<Working> factors{length_of(job, group.stretches, id), depth_of_fill(group.by[0])};
      if (group.by[3] != 0) factors.push_back(on_curve(group.by[3], near, far));
      factors.push_back(height(group.by[1]));
      parts.push_back(Working::product(std::move(factors)));
    }
    for (const Stretch& one : all) at_corners(one, &Maker::zone, "height to the soil cap", parts);
    if (parts.empty()) return;
    const Working volume = sum(std::move(parts), "reinforced fill");
    if (volume.amount().value < 1e-9) return;  // a corner so sharp that the legs leave no room for it
    share.measures.put("reinforced_fill_m3", volume.amount().value);
    placed(volume);
  }

  Working depth_of_fill(double metres) const {
    return term(
        sizes.clean_fill ? "from the blocks to the end of the layers" : "from the column to the end of the layers",
        metres, units::metre, id);
  }

  Working on_curve(double radius, double near, double far) const {
    const double middle = radius > 0 ? std::min((near + far) / 2, radius) : (near + far) / 2;
    return Working::quotient(term("radius of its middle", std::abs(radius - middle), units::metre, id),
                             term("radius of the face", std::abs(radius), units::metre, id));
  }

  using BandOf = Band (Maker::*)(const Stretch&) const;

  // Both legs of a corner have such a band there; of a closed wall the corner stands at its start and at its end.
  bool other_side(double here, double there, BandOf band) const {
    const auto has = [this, band](double corner, bool ends) {
      return std::ranges::any_of(all, [&](const Stretch& s) {
        return std::abs((ends ? s.to : s.from) - corner) < 1e-6 && (this->*band)(s).any();
      });
    };
    return here == there ? has(here, true) && has(here, false)
                         : has(std::max(here, there), true) && has(std::min(here, there), false);
  }

  // `left` is what of the stretch no corner has taken yet, m2.
  void at_corner(const Stretch& one, double turn, double corner, const Band& band, const std::string& height_name,
                 double& left, std::vector<Working>& parts) const {
    if (turn == 0 || !band.any()) return;
    const double near = band.near, far = band.far;
    const double first = std::min(std::abs(one.from - corner), std::abs(one.to - corner));
    double area = 0;
    if (turn > 0) {
      area = others(near, far, turn, first + one.length()) - others(near, far, turn, first);
    } else if (first < 1e-6) {
      area = -(far * far - near * near) / 2 * std::tan(std::min(-turn, 3.0) / 2);
    }
    area = std::min(area, left);
    if (std::abs(area) < 1e-9) return;
    left -= area;
    parts.push_back(Working::product(
        {term((turn > 0 ? "shared with the other leg at the corner, " : "more inside the corner, ") + at(job, corner),
              -area, units::square_metre, id),
         term(height_name, band.high, units::metre, id)}));
  }

  void at_corners(const Stretch& one, BandOf band_of, const std::string& height_name,
                  std::vector<Working>& parts) const {
    const Band band = (this->*band_of)(one);
    const double end = profile.length, after = one.leg_to, before = one.leg_from;
    const bool around = profile.closed;
    double left = one.length() * (band.far - band.near);
    if (one.corner_after != 0 && other_side(after, around && after > end - 1e-6 ? 0 : after, band_of))
      at_corner(one, one.corner_after, after, band, height_name, left, parts);
    if (one.corner_before != 0 && other_side(before, around && before < 1e-6 ? end : before, band_of))
      at_corner(one, one.corner_before, before, band, height_name, left, parts);
  }

  void placed(const Working& volume) {
    if (volume.amount().value <= 0) return;
    if (!wall.stone->fill.empty()) {
      add_stone(job, wall.stone->fill, "reinforced fill behind the wall" + lifts(), id, volume, {}, share);
    } else {
      share.problems.push_back(edges::notice(
          "fill-earth",
          volume_in_words(job, volume.amount().value) + " of earth, compacted, fills the reinforced zone from the site",
          "use what the engineer allows there, or choose a fill to buy", id));
    }
    edges::add_task(job, "wall-fill", Stage::wall, "reinforced fill" + lifts(), id, volume, share);
  }

  void soil_cap() {
    std::vector<Working> parts;
    for (const Alike& group : alike(all, [this](const Stretch& s) {
           const Section cut = of(s);
           return std::vector{cut.column + cut.fill, cut.cap};
         })) {
      if (group.by[0] <= 0 || group.by[1] <= 0) continue;
      parts.push_back(Working::product(
          {length_of(job, group.stretches, id), term("depth of what it covers", group.by[0], units::metre, id),
           term("soil cap", group.by[1], units::metre, wall.stone->soil_cap ? id : "wall-soil-cap")}));
    }
    for (const Stretch& one : all) at_corners(one, &Maker::cap, "soil cap", parts);
    if (parts.empty()) return;
    const Working volume = sum(std::move(parts), "soil cap");
    if (volume.amount().value < 1e-9) return;
    share.measures.put("soil_cap_m3", volume.amount().value);
    share.problems.push_back(
        edges::notice("soil-cap",
                      volume_in_words(job, volume.amount().value) +
                          " of earth from the site, compacted, goes over the stone behind the wall",
                      "keep that much aside when digging; the fabric lies between", id));
    edges::add_task(job, "wall-fill", Stage::wall, "cap of soil over the stone", id, volume, share);
  }

  void fabric();
  void hung(const catalogue::Item& item, units::Length lap, double back);

  static Working sum(std::vector<Working> parts, const std::string& name) {
    return parts.empty() ? Working(term(name, 0, units::cubic_metre)) : Working::sum(std::move(parts)).named(name);
  }
};

// Pieces hang side by side, each as long as the longest girth under it.
struct Hung {
  double girth = 0;
  int pieces = 0;
  int laps = 0;  // of these pieces over the one before
};

std::vector<Hung> pieces_along(const std::vector<Stretch>& all, const std::vector<double>& girths, double width,
                               double lap) {
  std::vector<Hung> found;
  std::size_t i = 0;
  while (i < all.size()) {
    if (girths[i] <= 0) {
      ++i;
      continue;
    }
    std::size_t last = i;
    while (last + 1 < all.size() && girths[last + 1] > 0) ++last;
    const double start = all[i].from, end = all[last].to;
    const int count =
        ground::strips(units::Length::nearest(units::Metres(end - start)), units::Length::nearest(units::Metres(width)),
                       units::Length::nearest(units::Metres(lap)));
    std::size_t first = i;
    for (int k = 0; k < count; ++k) {
      const double from = start + k * (width - lap), to = from + width;
      while (first < last && all[first].to <= from + 1e-9) ++first;
      double girth = 0;
      for (std::size_t j = first; j <= last && all[j].from < to - 1e-9; ++j) girth = std::max(girth, girths[j]);
      const auto known = std::ranges::find_if(found, [&](const Hung& h) { return std::abs(h.girth - girth) < 1e-6; });
      Hung& piece = known == found.end() ? found.emplace_back(Hung{girth, 0, 0}) : *known;
      piece.pieces += 1;
      piece.laps += k > 0 ? 1 : 0;
    }
    i = last + 1;
  }
  return found;
}

void Maker::fabric() {
  if (wall.stone->fabric.empty()) return;
  const catalogue::Item* item = edges::wanted(job, wall.stone->fabric, "the fabric behind the wall", id, share);
  if (!item) return;
  const units::Length lap = job.catalogue->length_limit("fabric-overlap-" + job.choices.cbr, units::Length::inches(12));
  if (!item->length || !item->width || *item->width <= lap) {
    share.problems.push_back(edges::fault("fabric-roll",
                                          "the fabric " + item->id + " has no roll size, or is no wider than its lap",
                                          "choose a roll that is", id));
    return;
  }
  hung(*item, lap, job.catalogue->length_limit("fabric-return", units::Length::inches(12)).metres().si());
}

void Maker::hung(const catalogue::Item& item, units::Length lap, double back) {
  const auto girth = [&](const Stretch& s) {
    const double around = of(s).girth;
    return around > 0 ? around + back : 0;
  };
  std::vector<double> girths;
  for (const Stretch& one : all) girths.push_back(girth(one));
  const double width = item.width->metres().si();
  const std::vector<Hung> pieces = pieces_along(all, girths, width, lap.metres().si());
  if (pieces.empty()) return;
  double area = 0;
  for (std::size_t i = 0; i < all.size(); ++i) area += all[i].length() * girths[i];
  std::vector<Working> parts;
  int count = 0;
  for (const Hung& one : pieces) {
    parts.push_back(Working::product({term("pieces", one.pieces, units::piece, id),
                                      term("girth: back, top and return", one.girth, units::metre, id)}));
    count += one.pieces;
    area += one.laps * lap.metres().si() * one.girth;
  }
  const Working off_the_roll = Working::sum(std::move(parts)).named("off the roll");
  share.measures.put("wall_fabric_m2", area);
  share.lines.push_back({Stage::wall,
                         item.id,
                         "fabric round the stone, " + std::to_string(count) + " pieces side by side, laps " +
                             edges::shown(job, lap.metres().si()),
                         {id},
                         off_the_roll,
                         {},
                         false});
  edges::add_task(job, "fabric-lay", Stage::wall, "fabric behind the wall", id,
                  Working::product({off_the_roll, term("roll width", width, units::metre, item.id + "/width")}), share);
}

}  // namespace

Share behind_the_blocks(const plan::Job& job, const plan::ElementId& id, const plan::Wall& wall, const Profile& profile,
                        const Blocks& blocks) {
  if (!wall.stone || wall.free_standing) return {};
  Maker maker{job, id, wall, profile, behind(job, wall, blocks), stretches(profile, wall), {}};
  maker.column();
  maker.fill();
  maker.soil_cap();
  maker.fabric();
  return std::move(maker.share);
}

}  // namespace takeoff::walls
