#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/bay.h"
#include "takeoff/walls/words.h"

namespace takeoff::walls {

namespace {

struct Work {
  const plan::Job& job;
  const plan::Wall& wall;
  const plan::ElementId& of;
  const Profile& profile;
  const Blocks& blocks;
  const Courses& courses;
  Share& share;
};

const Unit& unit_for(const Work& w, const Laid& one) {
  return one.curved && w.blocks.curve ? *w.blocks.curve : w.blocks.block;
}

// One piece that is sawn, and what of a unit it takes.
struct Sawn {
  const Run* run = nullptr;
  const Laid* laid = nullptr;
  const Unit* unit = nullptr;
  double takes = 0;  // metres of a unit's length
  bool at_start = false;
  bool from_offcut = false;
};

// At an inside corner the piece is longer at its back than at its face.
double takes(const Work& w, const Laid& one, double corner) {
  const double behind = one.angle > 0 && corner < 0 ? w.blocks.block.depth * std::tan(one.angle) : 0;
  return one.length + behind;
}

std::vector<Sawn> sawn_pieces(const Work& w) {
  std::vector<Sawn> all;
  for (const auto& bay : w.courses.bays) {
    for (const Run& run : bay->runs) {
      for (std::size_t i = 0; i < run.units.size(); ++i) {
        const Laid& one = run.units[i];
        if (one.make != Make::cut) continue;
        const bool at_start = i < run.units.size() / 2;
        const double corner = at_start ? bay->before : bay->legs.back().corner;
        all.push_back({&run, &one, &unit_for(w, one), takes(w, one, corner), at_start, false});
      }
    }
  }
  return all;
}

// The rest of a unit serves one more piece, never two: a chamfered or split block has two ends. The longest pieces take
// the shortest that still fit, which is the least number of units. Gives the units bought.
int pair_up(std::vector<Sawn*> pieces, double kerf, plan::Reuse reuse) {
  if (reuse == plan::Reuse::none) return static_cast<int>(pieces.size());
  std::ranges::stable_sort(pieces, [](const Sawn* a, const Sawn* b) { return a->takes > b->takes; });
  int bought = 0;
  for (std::size_t big = 0, end = pieces.size(); big < end; ++big) {
    ++bought;
    if (big + 1 >= end) break;
    Sawn& small = *pieces[end - 1];
    if (pieces[big]->takes + kerf + small.takes > pieces[big]->unit->length + thin) continue;
    small.from_offcut = true;
    --end;
  }
  return bought;
}

struct ForCuts {
  int straight = 0;
  int curved = 0;
};

ForCuts units_for_cuts(const Work& w, std::vector<Sawn>& sawn) {
  std::vector<Sawn*> straight, curved;
  for (Sawn& one : sawn) (one.unit == &w.blocks.block ? straight : curved).push_back(&one);
  const double kerf = w.courses.rules.kerf;
  return {pair_up(straight, kerf, w.job.choices.reuse), pair_up(curved, kerf, w.job.choices.reuse)};
}

void add_line(const Work& w, const Unit& unit, const std::string& text, std::int64_t whole, int for_cuts, int pieces) {
  if (whole + for_cuts <= 0) return;
  std::vector<Working> parts;
  if (whole > 0) parts.push_back(term("laid whole", static_cast<double>(whole), units::piece, w.of));
  if (for_cuts > 0) {
    const std::string name = "for " + std::to_string(pieces) + (pieces == 1 ? " cut piece" : " cut pieces");
    parts.push_back(term(name, for_cuts, units::piece, w.of));
  }
  const Working count = parts.size() == 1 ? parts.front() : Working::sum(std::move(parts)).named(text);
  w.share.lines.push_back({Stage::wall, unit.item->id, text, {w.of}, count, {}, false});
  edges::add_weight(w.job, *unit.item, whole + for_cuts, w.of, w.share);
}

void add_lines(const Work& w, const ForCuts& bought, const std::vector<Sawn>& sawn) {
  const auto straight_cuts = std::ranges::count_if(sawn, [&](const Sawn& one) { return one.unit == &w.blocks.block; });
  const auto curved_cuts = std::ssize(sawn) - straight_cuts;
  const Courses& c = w.courses;
  const std::int64_t curved = c.count(Make::whole, true);
  add_line(w, w.blocks.block, "blocks of the wall", c.count(Make::whole, false), bought.straight,
           static_cast<int>(straight_cuts));
  if (w.blocks.curve) {
    add_line(w, *w.blocks.curve, "blocks on curves", curved, bought.curved, static_cast<int>(curved_cuts));
  }
  if (w.blocks.half) add_line(w, *w.blocks.half, "half units", c.count(Make::half, false), 0, 0);
  if (w.blocks.corner) add_line(w, *w.blocks.corner, "corner units", c.count(Make::corner, false), 0, 0);
  if (w.blocks.end) add_line(w, *w.blocks.end, "end units", c.count(Make::end, false), 0, 0);
}

// Units that lie on the base, and the others; corner units are work of their own.
struct ByWork {
  int first = 0;
  int others = 0;
  int corners = 0;
};

void sort_out(const Bay& bay, const Run& run, const Slot& slot, const CourseLine& line, ByWork& sum) {
  for (const Laid& one : run.units) {
    if (one.make == Make::corner) {
      sum.corners += one.again ? 0 : 1;
      continue;
    }
    const double middle = line.station(slot.own_from + one.from + one.length / 2);
    const auto over = std::ranges::find_if(bay.columns, [&](const Column& c) { return middle < c.to; });
    const Column& column = over == bay.columns.end() ? bay.columns.back() : *over;
    ++(column.base == run.course ? sum.first : sum.others);
  }
}

ByWork by_work(const Work& w) {
  ByWork sum;
  const LayRules& rules = w.courses.rules;
  for (const auto& bay : w.courses.bays) {
    const std::vector<CourseLine> lines = counted_lines(*bay, w.blocks, rules);
    const std::vector<Slot> all = slots(*bay, w.blocks, rules, lines);
    for (std::size_t i = 0; i < all.size(); ++i) {
      sort_out(*bay, bay->runs[i], all[i], lines[static_cast<std::size_t>(all[i].course)], sum);
    }
  }
  return sum;
}

void add_tasks(const Work& w, std::size_t cuts) {
  const ByWork sum = by_work(w);
  const auto task = [&](const char* rate, const char* text, double count) {
    edges::add_task(w.job, rate, Stage::wall, text, w.of, Working(term(text, count, units::piece, w.of)), w.share);
  };
  if (w.blocks.block.item->kind == "seat-block") {
    task("seat-block", "blocks of the seat wall", sum.first + sum.others + sum.corners);
  } else {
    task("wall-first", "blocks of the lowest course", sum.first);
    task("wall-block", "blocks of the other courses", sum.others);
    task("wall-corner", "corner units", sum.corners);
  }
  task("wall-cut", "cuts of blocks", static_cast<double>(cuts));
}

// Equal pieces of one stretch stand in the list once, with their courses.
class CutList {
 public:
  void add(Cut cut, int course) {
    const Key key{cut.where,
                  cut.item,
                  cut.keep,
                  cut.from_offcut,
                  std::llround(cut.kept / (thin / 2)),
                  std::llround(cut.angle * 1000)};
    const auto [at, fresh] = known_.try_emplace(key, cuts_.size());
    if (fresh) {
      cuts_.push_back(std::move(cut));
      courses_.emplace_back();
    } else {
      ++cuts_[at->second].count;
    }
    if (courses_[at->second].empty() || courses_[at->second].back() != course) courses_[at->second].push_back(course);
  }
  void give(std::vector<Cut>& to) {
    for (std::size_t i = 0; i < cuts_.size(); ++i) {
      cuts_[i].what = named(courses_[i]) + (cuts_[i].angle > 0 ? ", corner piece" : ", end piece");
      to.push_back(std::move(cuts_[i]));
    }
  }

 private:
  using Key = std::tuple<std::string, plan::Id, std::string, bool, long long, long long>;

  static std::string named(const std::vector<int>& courses) {
    if (courses.size() == 1) return course(courses.front());
    std::string text = "courses ";
    for (std::size_t i = 0; i < courses.size(); ++i) {
      text += std::to_string(courses[i] + 1);
      if (i + 1 < courses.size()) text += i + 2 == courses.size() ? " and " : ", ";
    }
    return text;
  }

  std::map<Key, std::size_t> known_;
  std::vector<Cut> cuts_;
  std::vector<std::vector<int>> courses_;
};

void add_cuts(const Work& w, const std::vector<Sawn>& sawn) {
  CutList list;
  for (const Sawn& one : sawn) {
    Cut cut;
    cut.of = w.of;
    cut.item = one.unit->item->id;
    cut.where = at(w.job, one.at_start ? one.run->from : one.run->to);
    cut.kept = one.laid->length;
    cut.angle = one.laid->angle;
    cut.length = one.unit->depth / std::cos(one.laid->angle);
    cut.thickness = one.unit->height;
    // Seen from the front a wall with its fill on the left runs from left to right. A mitred side goes to the corner,
    // a square one to its neighbour.
    const bool runs_right = w.wall.behind == geometry::Side::left;
    cut.keep = (one.at_start == runs_right) == (one.laid->angle == 0) ? "left" : "right";
    cut.from_offcut = one.from_offcut;
    list.add(std::move(cut), one.run->course);
  }
  list.give(w.share.cuts);
}

void told_slivers(const Work& w, const std::vector<Sawn>& sawn) {
  const Sawn* worst = nullptr;
  int count = 0;
  for (const Sawn& one : sawn) {
    if (one.laid->length > w.courses.rules.sliver - thin) continue;
    ++count;
    if (!worst || one.laid->length < worst->laid->length) worst = &one;
  }
  if (!worst) return;
  w.share.problems.push_back(edges::notice(
      "wall-sliver",
      std::to_string(count) + (count == 1 ? " piece is" : " pieces are") + " under " +
          edges::shown(w.job, w.courses.rules.sliver) + ", the least " + edges::shown(w.job, worst->laid->length) +
          " in " + course(worst->run->course) + " from " + between(w.job, worst->run->from, worst->run->to),
      "move a step or an end by part of a unit", w.of));
}

void add_measures(const Work& w, const ForCuts& bought, std::size_t cuts) {
  Measures& m = w.share.measures;
  const Courses& c = w.courses;
  m.put("courses", w.profile.courses);
  double face = 0;
  for (int i = 0; i < w.profile.courses; ++i) {
    const double length = c.length(i);
    m.put("course_length_m:" + std::to_string(i + 1), length);
    face += length * w.profile.course_height;
  }
  const auto count = [&](Make make) { return static_cast<double>(c.count(make, false) + c.count(make, true)); };
  const double for_cuts = bought.straight + bought.curved;
  m.put("face_area_m2", face);
  m.put("units_whole", count(Make::whole));
  m.put("units_half", count(Make::half));
  m.put("corner_units", count(Make::corner));
  m.put("end_units", count(Make::end));
  m.put("units_cut", static_cast<double>(cuts));
  m.put("units_for_cut_pieces", for_cuts);
  m.put("units", count(Make::whole) + count(Make::half) + count(Make::corner) + count(Make::end) + for_cuts);
  m.put("units_by_area", face / (w.blocks.block.length * w.blocks.block.height));
}

}  // namespace

Share counted(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks,
              const Courses& courses) {
  Share share;
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall) return share;
  const plan::ElementId& of = ground.element->id;
  share.measures.element = of;
  const Work work{job, *wall, of, profile, blocks, courses, share};
  std::vector<Sawn> sawn = sawn_pieces(work);
  const ForCuts bought = units_for_cuts(work, sawn);
  add_lines(work, bought, sawn);
  add_tasks(work, sawn.size());
  add_cuts(work, sawn);
  told_slivers(work, sawn);
  add_measures(work, bought, sawn.size());
  share.facts.push_back("wall");
  if (!sawn.empty()) share.facts.push_back("cuts");
  return share;
}

}  // namespace takeoff::walls
