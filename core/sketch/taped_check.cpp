// How well the tapes agree, which one does not, and what a point still wants.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "sketch/taped_net.h"

namespace sketch::net {

using problem::Problem;
using problem::Severity;
using units::Length;

namespace {

constexpr double least_crossing = 30 * std::numbers::pi / 180;
constexpr double nearly_all = 0.95;  // rows that bring this share of the best one's gain can't be told apart from it
constexpr double held = 1e-6;        // a misfit that shows less than this share of a misreading is no check

Length of_metres(double metres) { return Length::nearest(units::Metres(metres)); }
std::string shown(double metres, units::System system) { return show_length(of_metres(std::abs(metres)), system); }
std::string tape(std::size_t number) { return "tape " + std::to_string(number + 1); }

std::string listed(const std::vector<std::string>& names) {
  std::string all;
  for (std::size_t i = 0; i < names.size(); ++i)
    all += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return all;
}

struct Checking {
  const Net& net;
  const plan::TapeBook& book;
  units::System system;
  Allowed allowed;
  Measured& out;
  std::vector<Block> free;
  const std::string& name(std::size_t spot) const { return net.spots[spot].name; }
  void say(Severity severity, std::string code, std::string text, std::string mend, const Spot* at = nullptr) const {
    Problem said{severity, std::move(code), std::move(text), std::move(mend), {}};
    if (at != nullptr && at->placed)
      said.place.at = geometry::xy(geometry::moved(net.origin, Length::steps_per_metre * at->at));
    out.problems.push_back(std::move(said));
  }
};

// --- residuals

void fit_rows(Checking& c) {
  c.out.rows.assign(c.book.rows.size(), {});
  for (std::size_t i = 0; i < c.net.rows.size(); ++i) {
    const Row& row = c.net.rows[i];
    if (!c.net.usable(row)) continue;
    const Readings all = readings(c.net, row);
    if (all.count == 0) continue;
    RowFit& fit = c.out.rows[row.number];
    fit.residual = of_metres(all.each[0].misfit);
    // Away from the line is positive, whichever side it lies on.
    const bool right = row.side == geometry::Side::right;
    if (all.count == 2) fit.across = of_metres(right ? -all.each[1].misfit : all.each[1].misfit);
    if (!row.counts) continue;
    c.out.spare += all.count;
    const double longest = std::max(std::abs(row.measure), std::abs(row.offset));
    fit.over = fit.size().metres().si() > std::max(c.allowed.least.metres().si(), c.allowed.share * longest);
    fit.checked = !c.free.empty() && (c.free[i][0] > held || (all.count == 2 && c.free[i][3] > held));
  }
  for (const Spot& spot : c.net.spots)
    if (spot.placed && !spot.known) c.out.spare -= 2;
}

void sort_rows(const plan::TapeBook& book, Measured& out) {
  const auto rank = [&](std::size_t i) { return !out.rows[i].residual ? 2 : book.rows[i].struck.empty() ? 0 : 1; };
  for (std::size_t i = 0; i < book.rows.size(); ++i) out.worst_first.push_back(i);
  std::ranges::stable_sort(out.worst_first, [&](std::size_t a, std::size_t b) {
    return rank(a) != rank(b) ? rank(a) < rank(b) : out.rows[a].size() > out.rows[b].size();
  });
}

// --- which tape is off

// By how much the sum of squares goes down without this row: e (1 - leverage)^-1 e.
double gain(const Checking& c, std::size_t i) {
  const Row& row = c.net.rows[i];
  if (!row.counts || !c.net.usable(row)) return 0;
  const Readings all = readings(c.net, row);
  const Block& free = c.free[i];
  const double e0 = all.each[0].misfit, e1 = all.each[1].misfit;
  if (all.count == 0) return 0;
  if (all.count == 1) return free[0] > held ? e0 * e0 / free[0] : 0;
  const double trace = free[0] + free[3], determinant = free[0] * free[3] - free[1] * free[2];
  if (trace < held) return 0;
  if (determinant < held * trace * trace) return (e0 * e0 + e1 * e1) / trace;  // only one direction is checked
  return (free[3] * e0 * e0 - (free[1] + free[2]) * e0 * e1 + free[0] * e1 * e1) / determinant;
}

Length off_without(const Net& net, const Row& row) {
  Net rest = net;
  settle(rest, row.number);
  const Readings all = readings(rest, row);
  const double across = all.count == 2 ? all.each[1].misfit : 0;
  return of_metres(std::abs(across) > std::abs(all.each[0].misfit) ? across : all.each[0].misfit);
}

void suspect(Checking& c) {
  const bool over = std::ranges::any_of(c.out.rows, &RowFit::over);
  if (!over || c.free.empty()) return;
  std::vector<double> gains;
  for (std::size_t i = 0; i < c.net.rows.size(); ++i) gains.push_back(gain(c, i));
  const auto best = std::ranges::max_element(gains);
  if (best == gains.end() || *best <= 0) return;
  Suspect found;
  found.rows.push_back(c.net.rows[static_cast<std::size_t>(best - gains.begin())].number);
  found.off = off_without(c.net, c.net.rows[static_cast<std::size_t>(best - gains.begin())]);
  for (std::size_t i = 0; i < gains.size(); ++i)
    if (gains[i] >= nearly_all * *best && c.net.rows[i].number != found.rows.front())
      found.rows.push_back(c.net.rows[i].number);
  c.out.suspect = std::move(found);
}

void say_suspect(const Checking& c) {
  if (!c.out.suspect) return;
  const Suspect& found = *c.out.suspect;
  const std::string by = shown(found.off.metres().si(), c.system);
  if (found.rows.size() == 1) {
    const plan::Taped& row = c.book.rows[found.rows.front()];
    return c.say(Severity::flag, "tape-off",
                 tape(found.rows.front()) + " (" + row.point + " from " + row.from + ") is off by " + by,
                 "read it again, or strike it out and say why");
  }
  std::vector<std::string> numbers;
  std::vector<std::size_t> sorted = found.rows;
  std::ranges::sort(sorted);
  for (const std::size_t row : sorted) numbers.push_back(std::to_string(row + 1));
  c.say(Severity::flag, "tape-off",
        "tapes " + listed(numbers) + " do not agree by up to " + by + "; which one is off does not show",
        "read them again, or tape one more diagonal");
}

// --- points that are not found, or not well

std::string arcs_in_words(const Checking& c, const Tied& a, const Tied& b, double gap) {
  const Tied &small = a.row->measure < b.row->measure ? a : b, &large = &small == &a ? b : a;
  const auto arc = [&](const Tied& tied) { return tape(tied.row->number) + " from " + c.name(tied.from); };
  if (gap > 0) return arc(a) + " and " + arc(b) + " end " + shown(gap, c.system) + " short of each other";
  return "the arc of " + arc(small) + " lies inside that of " + arc(large) + ", " + shown(gap, c.system) +
         " away from it";
}

void say_missing(const Checking& c, std::size_t spot) {
  std::vector<Tied> ready;
  std::vector<std::string> waits;
  const auto wait_for = [&](std::size_t other) {
    if (!c.net.spots[other].placed && std::ranges::find(waits, c.name(other)) == waits.end())
      waits.push_back(c.name(other));
  };
  for (const Tied& tied : ties_of(c.net, spot)) {
    if (!tied.row->counts) continue;
    wait_for(tied.from);
    const auto same = [&](const Tied& other) { return c.net.spots[other.from].at == c.net.spots[tied.from].at; };
    if (c.net.spots[tied.from].placed && std::ranges::none_of(ready, same)) ready.push_back(tied);
  }
  for (const Row& row : c.net.rows) {
    if (row.tie || !row.counts || row.point != spot) continue;
    wait_for(row.from);
    wait_for(row.to);
  }
  const std::string& name = c.name(spot);
  if (ready.size() >= 2) {
    const auto at = [&](std::size_t i) { return c.net.spots[ready[i].from].at; };
    const double gap = crossing(at(0), ready[0].row->measure, at(1), ready[1].row->measure).gap;
    return c.say(Severity::problem, "tape-arcs-apart",
                 "two arcs for " + name + " do not meet: " + arcs_in_words(c, ready[0], ready[1], gap),
                 "read both tapes again, or strike one out and tie it from another point");
  }
  const std::string first = ready.empty() ? std::string() : " has one tie, from " + c.name(ready[0].from);
  if (!waits.empty())
    return c.say(
        Severity::problem, "tape-point-wanting",
        name + (first.empty() ? std::string() : first + ", and") + " waits for " + listed(waits) + ", not found yet",
        "find " + listed(waits) + " first, or measure " + name + " from points that are known");
  if (!first.empty())
    return c.say(Severity::problem, "tape-point-wanting", name + first,
                 "tie it from a second point, or give its offset from a line");
  c.say(Severity::problem, "tape-point-wanting", "no tape that counts reaches " + name,
        "tie it from two points, give its offset from a line, or type where it lies");
}

// The best angle at which two tapes cross at the point; none where it lies at an offset too or has one tie.
std::optional<double> best_crossing(const Net& net, std::size_t spot) {
  for (const Row& row : net.rows)
    if (!row.tie && row.counts && row.point == spot) return {};
  std::optional<double> best;
  const std::vector<Tied> ties = ties_of(net, spot);
  for (std::size_t i = 0; i < ties.size(); ++i)
    for (std::size_t j = i + 1; j < ties.size(); ++j) {
      if (!ties[i].row->counts || !ties[j].row->counts) continue;
      if (!net.spots[ties[i].from].placed || !net.spots[ties[j].from].placed) continue;
      const Vec a = net.spots[ties[i].from].at - net.spots[spot].at,
                b = net.spots[ties[j].from].at - net.spots[spot].at;
      const double angle = std::atan2(std::abs(cross(a, b)), std::abs(dot(a, b)));
      best = std::max(best.value_or(0), angle);
    }
  return best;
}

void say_crossing(const Checking& c, std::size_t spot) {
  const Spot& at = c.net.spots[spot];
  if (const auto angle = best_crossing(c.net, spot); angle && *angle < least_crossing - 1e-9)
    c.say(Severity::notice, "tape-poor-crossing",
          "the tapes cross at " + at.name + " at " + std::to_string(std::lround(*angle * 180 / std::numbers::pi)) +
              "°, under 30°: a small misreading moves it far",
          "tie it from a point further round as well", &at);
  if (at.wrong_side)
    c.say(Severity::notice, "tape-other-side",
          "the further ties of " + at.name + " fit better on the other side of the line",
          "look at the side of its first tie", &at);
  std::vector<Tied> own = ties_of(c.net, spot);
  std::erase_if(own, [&](const Tied& tied) { return tied.row->point != spot; });
  if (own.size() >= 2 && own[0].row->side != own[1].row->side)
    c.say(Severity::notice, "tape-two-sides",
          "the first two ties of " + at.name + " name two sides; that of " + tape(own[0].row->number) + " is used",
          "name the same side in both", &at);
}

// Points that only hang on rows that nothing checks.
void say_unchecked(const Checking& c) {
  if (c.free.empty()) return;
  std::vector<std::string> names;
  for (std::size_t spot = 0; spot < c.net.spots.size(); ++spot) {
    if (c.net.spots[spot].known || !c.net.spots[spot].placed) continue;
    const bool checked = std::ranges::any_of(c.net.rows, [&](const Row& row) {
      return c.out.rows[row.number].checked && (row.point == spot || (row.tie && row.from == spot));
    });
    if (!checked) names.push_back(c.name(spot));
  }
  if (names.empty()) return;
  c.say(Severity::notice, "tape-unchecked", "nothing checks " + listed(names) + ": a misread tape would not show",
        "tie each of them once more");
}

}  // namespace

void check(const Net& net, const plan::TapeBook& book, units::System system, Allowed allowed, Measured& out) {
  Checking c{net, book, system, allowed, out, freedom(net)};
  fit_rows(c);
  sort_rows(book, out);
  suspect(c);
  say_suspect(c);
  if (book.known.empty() && !book.rows.empty())
    return c.say(Severity::problem, "tape-no-known", "nothing says where the taped points lie on the plan",
                 "type where two of them lie, such as two stakes or two corners of the house");
  for (std::size_t spot = 0; spot < net.spots.size(); ++spot) {
    if (!net.spots[spot].placed) say_missing(c, spot);
    if (net.spots[spot].placed && !net.spots[spot].known) say_crossing(c, spot);
  }
  say_unchecked(c);
}

}  // namespace sketch::net
