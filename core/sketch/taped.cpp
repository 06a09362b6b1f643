#include "sketch/taped.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "sketch/taped_net.h"

namespace sketch {

using units::Length;

namespace net {

bool Net::usable(const Row& row) const {
  return spots[row.point].placed && spots[row.from].placed && (row.tie || spots[row.to].placed);
}

double Net::off(const Row& tie) const { return tie.measure - length(spots[tie.point].at - spots[tie.from].at); }

Crossing crossing(Vec a, double radius_a, Vec b, double radius_b, double slack) {
  const Vec line = b - a;
  const double d = length(line);
  Crossing made;
  if (d == 0) return made;
  const double outside = d - radius_a - radius_b, inside = std::abs(radius_a - radius_b) - d;
  if (std::max(outside, inside) > slack) {
    made.gap = outside > 0 ? outside : -inside;
    return made;
  }
  // From the foot on the line out to either side; where the arcs only just miss each other the foot itself, halfway.
  const double foot = (d * d + radius_a * radius_a - radius_b * radius_b) / (2 * d);
  const double out = std::sqrt(std::max(0.0, radius_a * radius_a - foot * foot));
  const Vec along = (1 / d) * line;
  const Vec middle = a + foot * along;
  made.at = {middle + out * left_of(along), middle + (-out) * left_of(along)};
  return made;
}

std::vector<Tied> ties_of(const Net& net, std::size_t spot) {
  std::vector<Tied> ties;
  for (const Row& row : net.rows) {
    if (!row.tie) continue;
    if (row.point == spot) ties.push_back({&row, row.from});
    if (row.from == spot) ties.push_back({&row, row.point});
  }
  return ties;
}

namespace {

double squares(const Net& net, const std::vector<Tied>& ties, Vec at, bool struck = false) {
  double sum = 0;
  for (const Tied& tie : ties) {
    if (tie.row->counts == struck || !net.spots[tie.from].placed) continue;
    const double misfit = tie.row->measure - length(at - net.spots[tie.from].at);
    sum += misfit * misfit;
  }
  return sum;
}

// The side that the person named: of the line between the first two points that it was tied from, struck out or not.
struct Named {
  Vec from;
  Vec to;
  double sign = 1;
};
std::optional<Named> named_side(const Net& net, const std::vector<Tied>& ties) {
  if (ties.empty()) return {};
  const auto second = std::ranges::find_if(ties, [&](const Tied& tie) { return tie.from != ties.front().from; });
  if (second == ties.end()) return {};
  const Spot &a = net.spots[ties.front().from], &b = net.spots[second->from];
  if (!a.placed || !b.placed) return {};
  return Named{a.at, b.at, ties.front().row->side == geometry::Side::left ? 1.0 : -1.0};
}

bool by_offset(Net& net, std::size_t spot) {
  for (const Row& row : net.rows) {
    if (row.tie || !row.counts || row.point != spot) continue;
    const Spot &from = net.spots[row.from], &to = net.spots[row.to];
    if (!from.placed || !to.placed || length(to.at - from.at) == 0) continue;
    const Vec along = (1 / length(to.at - from.at)) * (to.at - from.at);
    net.spots[spot].at = from.at + row.measure * along + row.offset * left_of(along);
    return net.spots[spot].placed = true;
  }
  return false;
}

// Where two arcs cross, the wanted place first. Without a named side that parts them the further ties say which, and
// last those that are struck out: off by inches they still know left from right. Even then it may stay open.
struct Choice {
  Vec at;
  Vec other;
  bool open = false;
};
Choice choice(const Net& net, const std::vector<Tied>& ties, const std::array<Vec, 2>& both) {
  const auto [left, right] = both;
  if (const auto named = named_side(net, ties)) {
    const auto on_side = [&](Vec at) { return cross(named->to - named->from, at - named->from) * named->sign > 0; };
    if (on_side(left) != on_side(right)) return on_side(left) ? Choice{left, right} : Choice{right, left};
  }
  for (const bool struck : {false, true}) {
    const double a = squares(net, ties, left, struck), b = squares(net, ties, right, struck);
    if (std::abs(a - b) > 1e-9) return a < b ? Choice{left, right} : Choice{right, left};
  }
  return {left, right, left != right};
}

bool by_ties(Net& net, std::size_t spot, double slack, bool open_too) {
  const std::vector<Tied> ties = ties_of(net, spot);
  std::vector<Tied> ready;
  for (const Tied& tie : ties)
    if (tie.row->counts && net.spots[tie.from].placed) ready.push_back(tie);
  for (std::size_t i = 0; i < ready.size(); ++i) {
    for (std::size_t j = i + 1; j < ready.size(); ++j) {
      const Crossing found = crossing(net.spots[ready[i].from].at, ready[i].row->measure, net.spots[ready[j].from].at,
                                      ready[j].row->measure, slack);
      if (!found.at) continue;
      const Choice chosen = choice(net, ties, *found.at);
      if (chosen.open && !open_too) return false;
      net.spots[spot].at = chosen.at;
      net.spots[spot].other = chosen.other;
      return net.spots[spot].placed = true;
    }
  }
  return false;
}

bool place_one(Net& net, double slack, bool open_too) {
  bool placed = false;
  for (std::size_t i = 0; i < net.spots.size(); ++i) {
    if (net.spots[i].placed) continue;
    placed |= by_offset(net, i) || by_ties(net, i, slack, open_too);
    if (placed && open_too) return true;  // what was open may settle what follows
  }
  return placed;
}

}  // namespace

void place_all(Net& net, double slack) {
  while (place_one(net, slack, false) || place_one(net, slack, true)) {
  }
  for (std::size_t i = 0; i < net.spots.size(); ++i) {
    Spot& spot = net.spots[i];
    if (!spot.other) continue;
    const std::vector<Tied> ties = ties_of(net, i);
    const double here = squares(net, ties, spot.at), there = squares(net, ties, *spot.other);
    spot.wrong_side = here > slack * slack && there < here / 4;
  }
}

namespace {

problem::Problem row_fault(std::size_t number, const std::string& text, const std::string& mend) {
  return {problem::Severity::problem, "tape-row", "tape " + std::to_string(number + 1) + " " + text, mend, {}};
}

std::optional<problem::Problem> fault_of(const plan::Taped& row, std::size_t number) {
  const bool tie = row.way == plan::Taped::Way::tie;
  if (row.point.empty()) return row_fault(number, "names no point", "name the point that was measured");
  if (row.from.empty()) return row_fault(number, "does not say where it was measured from", "name that point");
  if (!tie && row.to.empty())
    return row_fault(number, "has a line with one end", "name the point that the line runs to");
  if (tie && row.point == row.from) return row_fault(number, "ties " + row.point + " to itself", "name another point");
  if (!tie && (row.from == row.to || row.point == row.from || row.point == row.to))
    return row_fault(number, "names one point twice",
                     "an offset takes three points: itself and the two ends of the line");
  if (tie && row.measure <= Length()) return row_fault(number, "has no length", "type what the tape read");
  if (row.offset < Length())
    return row_fault(number, "has an offset below 0", "type how far away it lies, and name the other side");
  const Length reach = geometry::reach_of_plan;
  if (row.measure > reach || row.measure < -reach || row.offset > reach)
    return row_fault(number, "is longer than a plan can be", "look at the unit that was typed");
  return {};
}

class Maker {
 public:
  Maker(Net& net, std::vector<problem::Problem>& problems) : net_(net), problems_(problems) {}

  void known(const plan::KnownPoint& point) {
    if (point.name.empty()) return;
    if (net_.spots.empty()) net_.origin = point.at;
    const auto [spot, fresh] = numbers_.emplace(point.name, net_.spots.size());
    if (fresh) {
      const Vec steps = point.at - net_.origin;
      net_.spots.push_back({point.name, true, true, (1 / Length::steps_per_metre) * steps, {}, false});
    } else {
      problems_.push_back({problem::Severity::problem,
                           "tape-known-twice",
                           "two known points are named " + point.name,
                           "rename one of them; the first one holds",
                           {"", "", 0, 0, geometry::xy(point.at)}});
    }
  }
  void row(const plan::Taped& taped, std::size_t number) {
    if (auto fault = fault_of(taped, number)) return problems_.push_back(std::move(*fault));
    Row row{number,
            taped.way == plan::Taped::Way::tie,
            spot(taped.point),
            spot(taped.from),
            0,
            taped.measure.metres().si(),
            taped.offset.metres().si(),
            taped.side,
            taped.struck.empty()};
    if (!row.tie) row.to = spot(taped.to);
    if (!row.tie && row.side == geometry::Side::right) row.offset = -row.offset;
    net_.rows.push_back(row);
  }

 private:
  std::size_t spot(const std::string& name) {
    const auto [at, fresh] = numbers_.emplace(name, net_.spots.size());
    if (fresh) net_.spots.push_back({name, false, false, {}, {}, false});
    return at->second;
  }
  Net& net_;
  std::vector<problem::Problem>& problems_;
  std::map<std::string, std::size_t> numbers_;
};

}  // namespace

Net made(const plan::TapeBook& book, std::vector<problem::Problem>& problems) {
  Net net;
  Maker maker(net, problems);
  for (const plan::KnownPoint& point : book.known) maker.known(point);
  for (std::size_t i = 0; i < book.rows.size(); ++i) maker.row(book.rows[i], i);
  return net;
}

}  // namespace net

Allowed allowed(const catalogue::Catalogue& catalogue) {
  const Allowed usual;
  return {catalogue.length_limit("tape-residual", usual.least),
          catalogue.number_limit("tape-residual-share", usual.share)};
}

Length RowFit::size() const {
  const Length along = residual.value_or(Length());
  return std::max({along, -along, across, -across});
}

const geometry::Point* Measured::find(const std::string& name) const {
  const auto found = std::ranges::find(points, name, &FoundPoint::name);
  return found == points.end() ? nullptr : &found->at;
}

Measured measured(const plan::TapeBook& book, units::System system, Allowed allowed) {
  Measured out;
  net::Net net = net::made(book, out.problems);
  net::place_all(net, allowed.least.metres().si());
  out.sum_of_squares = net::settle(net);
  for (const net::Spot& spot : net.spots) {
    if (spot.placed)
      out.points.push_back({spot.name, geometry::moved(net.origin, Length::steps_per_metre * spot.at)});
    else
      out.missing.push_back(spot.name);
  }
  net::check(net, book, system, allowed, out);
  return out;
}

}  // namespace sketch
