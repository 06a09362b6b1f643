#include "takeoff/walls/caps.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "takeoff/edges/notes.h"
#include "takeoff/walls/glue.h"
#include "takeoff/walls/words.h"
#include "units/number.h"

namespace takeoff::walls {

namespace {

constexpr double inch = units::metres_per_inch;
constexpr double dust = 1e-6;

// A cap as the catalogue has it, metres.
struct Cap {
  const catalogue::Item* item = nullptr;
  double length = 0;  // at its longer edge
  double depth = 0;
  double height = 0;
  double narrow = 0;  // at the other edge; length where it is straight
  bool tapered() const { return narrow < length; }
};

std::optional<Cap> cap_of(const plan::Job& job, const plan::Id& id, const char* use, const plan::ElementId& of,
                          Share& share) {
  const catalogue::Item* item = edges::wanted(job, id, use, of, share);
  if (!item) return std::nullopt;
  if (!item->length || !item->width || !item->height || item->length->steps() <= 0 || item->width->steps() <= 0 ||
      item->height->steps() <= 0) {
    share.problems.push_back(edges::fault("cap-size", "the cap " + id + " has no length, depth or height",
                                          "give all three in the catalogue", of));
    return std::nullopt;
  }
  Cap cap{item, item->length->metres().si(), item->width->metres().si(), item->height->metres().si(), 0};
  const auto back = item->number("back_length_mm");
  cap.narrow = back && *back > 0 ? std::min(*back / 1000, cap.length) : cap.length;
  return cap;
}

// One wall's caps while they are laid.
class Capper {
 public:
  Capper(const plan::Job& job, const plan::Element& element, const Profile& profile, const Blocks& blocks,
         const Courses* courses, Share& share)
      : job_(job),
        id_(element.id),
        wall_(std::get<plan::Wall>(element.kind)),
        profile_(profile),
        blocks_(blocks),
        courses_(courses),
        share_(share) {}

  // What the wall's adhesive holds: caps, and course on course where the wall is glued.
  void glue() {
    double beds = 0;
    for (const Column& column : profile_.columns) beds += (column.courses() - 1) * column.length();
    if (wall_.glued && beds > 0)
      glued_.push_back(term("beds between courses, on the line as drawn", beds, units::metre, id_));
    if (wall_.glued && wall_.adhesive.empty())
      say("no-adhesive", "the wall is glued, and no adhesive is chosen for it", "choose one, or lay it dry");
    if (glued_.empty()) return;
    const char* text =
        wall_.glued ? "adhesive of the wall, with gaps for water" : "adhesive under the caps, with gaps for water";
    add_glue(job_, wall_.adhesive, Stage::wall, text, id_, Working::sum(glued_), share_);
  }

  void lay() {
    if (wall_.cap.empty())
      return say("no-cap", "no cap is chosen for the wall, so none is counted", "choose one, or leave it as it is");
    const auto cap = cap_of(job_, wall_.cap, "the caps of the wall", id_, share_);
    const auto on_curves =
        wall_.curve_cap.empty() ? cap : cap_of(job_, wall_.curve_cap, "the caps on curves", id_, share_);
    if (!cap || !on_curves) return;
    find_overhang(*cap);
    for (const CapRun& run : cap_runs(profile_, blocks_, overhang_, cap->depth)) {
      under_.push_back(term("top of " + course(run.course), run.under, units::metre, id_));
      count_ends(run);
      if (run.radius == 0)
        straight(run, *cap);
      else if (on_curves->depth == cap->depth)
        curved(run, *on_curves);
      else
        curved(with_depth(run, on_curves->depth), *on_curves);
    }
    tell(*cap, *on_curves);
  }

 private:
  void find_overhang(const Cap& cap) {
    const double spare = cap.depth - blocks_.block.depth;
    const double usual = job_.catalogue->length_limit("cap-overhang", units::Length::inches(1)).metres().si();
    overhang_ = wall_.cap_overhang ? wall_.cap_overhang->metres().si() : wall_.free_standing ? spare / 2 : usual;
    const double greatest = edges::limit_inches(job_, "cap-overhang", edges::Bound::greatest, 2);
    const double least = edges::limit_inches(job_, "cap-overhang", edges::Bound::least, 0);
    if (overhang_ < least - dust || overhang_ > greatest + dust)
      say("cap-overhang",
          "the caps stand " + shown(overhang_) + " over the face, outside " + shown(least) + " to " + shown(greatest),
          "choose another overhang or cap");
    if (wall_.free_standing && std::abs(spare - 2 * overhang_) > inch / 8)
      say("cap-back",
          "the caps stand " + shown(overhang_) + " over the front and " + shown(spare - overhang_) +
              " over the back of a wall with two faces",
          "choose a cap as deep as the wall and both overhangs");
  }

  static CapRun with_depth(CapRun run, double depth) {
    run.longer = run.turn * (run.radius >= 0 ? run.radius : depth - run.radius);
    return run;
  }

  std::string where(const CapRun& run) const { return between(job_, run.from, run.to); }
  std::string shown(double metres) const { return edges::shown(job_, metres); }
  void say(const char* code, const std::string& text, const std::string& mend) {
    share_.problems.push_back(edges::notice(code, text, mend, id_));
  }
  void cut(const Cap& cap, const CapRun& run, const char* what, int count, double kept, double angle,
           const char* keep) {
    share_.cuts.push_back({id_, cap.item->id, what, where(run), count, kept, angle, cap.depth / std::cos(angle),
                           cap.height, keep, false});
  }

  void count_ends(const CapRun& run) {
    using End = plan::Wall::End;
    const bool first = run.from <= dust && !profile_.closed;
    const bool last = run.to >= profile_.length - dust && !profile_.closed;
    if (run.shows_before && (!first || wall_.start_end == End::free)) ++ends_;
    if (run.shows_after && (!last || wall_.finish_end == End::free)) ++ends_;
  }

  int mitres(const CapRun& run, const Cap& cap) {
    int made = 0;
    for (const double turn : {run.mitre_before, run.mitre_after}) {
      if (turn != 0)
        cut(cap, run, "cap, mitre", 1, 0, std::abs(turn) / 2, made == 0 && turn == run.mitre_before ? "right" : "left");
      made += turn != 0 ? 1 : 0;
    }
    return made;
  }

  void straight(const CapRun& run, const Cap& cap) {
    const CapRow row = cap_row(run.longer, cap.length, joints_below(run), cap.length / 4);
    straight_.push_back(Working::up(Working::quotient(
        term("run on " + course(run.course), std::min(run.longer, row.caps * cap.length), units::metre, id_),
        term("length of a cap", cap.length, units::metre, cap.item->id + "/length"))));
    straight_count_ += row.caps;
    cut_ += std::min(row.caps, row.cut() + mitres(run, cap));
    near_ += row.near;
    if (row.first_closer > 0) {
      const bool alike = row.first_closer == row.second_closer;
      cut(cap, run, "cap, closer", alike ? 2 : 1, row.first_closer, 0, "left");
      if (!alike && row.second_closer > 0) cut(cap, run, "cap, closer", 1, row.second_closer, 0, "right");
      closer_metres_ += row.cut() * cap.depth;
    }
    closer_metres_ += (run.mitre_before != 0 ? cap.depth / std::cos(run.mitre_before / 2) : 0) +
                      (run.mitre_after != 0 ? cap.depth / std::cos(run.mitre_after / 2) : 0);
    const double stops = inch * ((run.joined_before ? 0 : 1) + (run.joined_after ? 0 : 1));
    groove_ += std::max(0.0, run.length - stops);
    if (!wall_.free_standing) return;
    const double back = run.length - cap.depth * (std::tan(run.mitre_before / 2) + std::tan(run.mitre_after / 2));
    groove_ += std::max(0.0, back - stops);
  }

  void curved(const CapRun& run, const Cap& cap) {
    const double outer = run.radius >= 0 ? run.radius : cap.depth - run.radius;
    const double joint = edges::limit_inches(job_, "cap-joint", edges::Bound::greatest, 0.125);
    const auto made = curve_caps(run.turn, outer, cap.length, cap.narrow, cap.depth, joint, cap.tapered());
    if (!made) {
      const double least = std::max(0.0, 2 * cap.depth - (run.radius >= 0 ? 0 : cap.depth));
      share_.problems.push_back(edges::fault(
          "cap-curve",
          "the cap " + cap.item->id + " can't be cut to a front edge of radius " + shown(std::abs(run.radius)) + " " +
              where(run),
          "take a cap that is less deep, or a radius of " + shown(least) + " or more at the front edge", id_));
      return;
    }
    const double most = most_turn(cap.length, outer);
    curved_.push_back(cap.tapered()
                          ? Working(term("tapered caps " + where(run), made->caps, units::piece, id_))
                          : Working::up(Working::quotient(
                                term("turn, radians", std::min(run.turn, made->caps * most), units::piece, id_),
                                term("turn of a cap at most", most, units::piece, cap.item->id))));
    curved_count_ += made->caps;
    cut_ += std::min(made->caps, made->cut + mitres(run, cap));
    if (made->cut > 0) cut(cap, run, "cap, taper", 2 * made->cut, 0, std::abs(made->angle), "middle");
    if (made->rest_turn != 0 || made->rest_caps != 0)
      say("cap-taper",
          "tapered caps " + where(run) + " lie " + std::to_string(made->wide_out) +
              " with the wide edge on the longer side and " + std::to_string(made->narrow_out) + " turned round, and " +
              units::show_number(made->rest_turn * 180 / std::numbers::pi, 1) + " degrees and " +
              units::show_number(made->rest_caps, 1) + " of a cap are taken up by cuts",
          "cut two closers in the middle of the curve, each half a cap or more");
  }

  // Joints of the top course in metres from the start of what the caps fill.
  std::vector<double> joints_below(const CapRun& cap) const {
    std::vector<double> joints;
    if (!courses_) return joints;
    const double back = cap.course * blocks_.block.setback;
    double reach = overhang_ * std::tan(cap.mitre_before / 2);
    if (cap.mitre_before < 0) reach += blocks_.block.depth * std::tan(-cap.mitre_before / 2);
    for (const auto& bay : courses_->bays) {
      for (const Run& run : bay->runs) {
        if (run.hidden > 0 || run.course != cap.course || run.from > cap.from + dust || run.to < cap.to - dust)
          continue;
        double before = 0;  // of the course's own line, from its run's start to the caps'
        for (std::size_t leg = 0; leg < profile_.legs.size(); ++leg) {
          const double from = std::max(run.from, profile_.legs[leg].from);
          const double to = std::min(cap.from, profile_.legs[leg].to);
          if (to - from > dust) before += own_length(profile_, leg, back, from, to);
        }
        for (const Laid& unit : run.units) joints.push_back(unit.from - before + reach);
      }
    }
    std::erase_if(joints, [&](double joint) { return joint < dust || joint > cap.longer - dust; });
    std::ranges::sort(joints);
    return joints;
  }

  void tell(const Cap& cap, const Cap& on_curves) {
    if (under_.empty()) return;
    const Working under = Working::sum(under_).named("top course covered by caps");
    share_.measures.put("cap_length_m", under.amount().value);
    share_.measures.put("caps", straight_count_ + curved_count_);
    share_.measures.put("caps_cut", cut_);
    share_.measures.put("straight_caps", straight_count_);
    share_.measures.put("curve_caps", curved_count_);
    share_.measures.put("cap_ends", ends_);
    const Working none = term("none", 0, units::piece);
    const Working straight = straight_.empty() ? none : Working::sum(straight_).named("caps on straights");
    const Working curved = curved_.empty() ? none : Working::sum(curved_).named("caps on curves");
    add_line(cap, straight, straight_count_, "caps on straights");
    add_line(on_curves, curved, curved_count_, "caps on curves");
    edges::add_task(job_, "cap-set", Stage::wall, "caps", id_, {straight, curved}, share_);
    if (closer_metres_ > 0)
      edges::add_task(job_, "cut-60", Stage::wall, "cut caps: mitres and closers", id_,
                      Working(term("saw cut", closer_metres_, units::metre, id_)), share_);
    glued_.push_back(under);
    tell_groove(cap);
    tell_height(cap);
    if (near_ > 0)
      say("cap-joints",
          std::to_string(near_) +
              (near_ == 1 ? " joint between caps lies nearer than " : " joints between caps lie nearer than ") +
              shown(cap.length / 4) + " to a joint of the course below",
          "start the top course with another piece, or cut the end caps");
  }

  void add_line(const Cap& cap, const Working& count, int pieces, const char* text) {
    if (pieces == 0) return;
    share_.lines.push_back({Stage::wall, cap.item->id, text, {id_}, count, {}, false});
    edges::add_weight(job_, *cap.item, pieces, id_, share_);
  }

  void tell_groove(const Cap& cap) {
    const double back = job_.catalogue->length_limit("drip-back", units::Length::inch_64ths(32)).metres().si();
    const double deep = job_.catalogue->length_limit("drip-deep", units::Length::inch_64ths(16)).metres().si();
    if (overhang_ < back + dust) {
      share_.measures.put("groove_m", 0);
      return say("drip-overhang",
                 "caps that stand " + shown(overhang_) + " over the face have no room for a drip groove " +
                     shown(back) + " back from the edge",
                 "let them stand out further, or count on water running down the face");
    }
    share_.measures.put("groove_m", groove_);
    if (deep > cap.height / 4 + 1e-9)
      share_.problems.push_back(edges::fault("drip-deep",
                                             "a drip groove " + shown(deep) +
                                                 " deep leaves less than three quarters "
                                                 "of a cap of " +
                                                 shown(cap.height),
                                             "make it shallower or take a thicker cap", id_));
    if (curved_count_ > 0)
      say("drip-curves",
          "the drip groove under " + std::to_string(curved_count_) + " caps on curves is hand work, not in its length",
          "cut it piece by piece with a hand grinder, or leave it out there");
  }

  void tell_height(const Cap& cap) {
    double least = 0, greatest = 0;
    bool any = false;
    for (const Column& column : profile_.columns) {
      const double top = profile_.top_level(column) + cap.height;
      const double low = top - profile_.ground.greatest(column.from, column.to);
      const double high = top - profile_.ground.least(column.from, column.to);
      least = any ? std::min(least, low) : low;
      greatest = any ? std::max(greatest, high) : high;
      any = true;
    }
    share_.measures.put("cap_top_above_ground_m", greatest);
    if (!wall_.free_standing) return;
    const double low = edges::limit_inches(job_, "seat-height", edges::Bound::least, 18);
    const double high = edges::limit_inches(job_, "seat-height", edges::Bound::greatest, 22);
    const double no_seat = edges::limit_inches(job_, "guard-drop", edges::Bound::greatest, 30);
    if (greatest > no_seat || (least >= low - dust && greatest <= high + dust)) return;
    say("seat-height",
        "the top of the caps stands " + shown(least) + (greatest - least > dust ? " to " + shown(greatest) : "") +
            " above the ground in front, outside " + shown(low) + " to " + shown(high) + " for a seat",
        "change the height, if it is to be sat on (common practice)");
  }

  const plan::Job& job_;
  const plan::ElementId& id_;
  const plan::Wall& wall_;
  const Profile& profile_;
  const Blocks& blocks_;
  const Courses* courses_;
  Share& share_;
  double overhang_ = 0;
  std::vector<Working> under_, straight_, curved_, glued_;
  int straight_count_ = 0, curved_count_ = 0, cut_ = 0, ends_ = 0, near_ = 0;
  double groove_ = 0, closer_metres_ = 0;
};

}  // namespace

Share caps(const plan::Job& job, const plan::Ground& ground, const Profile& profile, const Blocks& blocks,
           const Courses* courses) {
  Share share;
  const auto* wall = std::get_if<plan::Wall>(&ground.element->kind);
  if (!wall) return share;
  share.measures.element = ground.element->id;
  Capper capper(job, *ground.element, profile, blocks, courses, share);
  capper.lay();
  capper.glue();
  return share;
}

}  // namespace takeoff::walls
