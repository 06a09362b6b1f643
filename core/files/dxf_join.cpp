#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <tuple>
#include <unordered_map>

#include "files/dxf_read.h"
#include "units/length.h"

namespace files {
namespace {

using Node = std::size_t;
struct End {
  std::size_t shape = 0;
  bool last = false;  // the last point of the line, else its first
};

// Ends within one step of each other are one node. Counted from the first point of all, so that whole steps stay small.
class Nodes {
 public:
  Nodes(Position first, double unit) : first_(first), unit_(unit) {}
  Node of(const Position& at) {
    const long long x = steps(at.x - first_.x), y = steps(at.y - first_.y);
    for (const long long dx : {0, -1, 1})
      for (const long long dy : {0, -1, 1})
        if (const auto found = known_.find(Cell{x + dx, y + dy}); found != known_.end()) return found->second;
    const Node made = known_.size();
    known_.emplace(Cell{x, y}, made);
    return made;
  }

 private:
  using Cell = std::pair<long long, long long>;
  struct Hash {
    std::size_t operator()(const Cell& cell) const {
      return static_cast<std::size_t>(cell.first) * 0x9E3779B97F4A7C15u ^ static_cast<std::size_t>(cell.second);
    }
  };
  long long steps(double difference) const { return std::llround(difference * unit_ * units::Length::steps_per_metre); }
  Position first_;
  double unit_;
  std::unordered_map<Cell, Node, Hash> known_;
};

using Positions = std::vector<Position>;

Positions reversed(const Positions& line) {
  Positions back(line.rbegin(), line.rend());
  for (std::size_t i = 0; i + 1 < back.size(); ++i) back[i].bulge = -line[line.size() - 2 - i].bulge;
  back.back().bulge = 0;
  return back;
}

// The lines of one layer as a net of nodes.
struct Net {
  std::vector<DxfShape>& shapes;
  std::vector<std::size_t> lines;                     // their places in `shapes`
  std::map<std::size_t, std::pair<Node, Node>> ends;  // of each line: first, last
  std::map<Node, std::vector<End>> meets;
  std::set<std::size_t> used{};

  Node node(const End& end) const { return end.last ? ends.at(end.shape).second : ends.at(end.shape).first; }

  // The end that goes on from this one; none where the line stops there or more than two meet.
  std::optional<End> next(const End& end) const {
    const auto& here = meets.at(node(end));
    if (here.size() != 2) return std::nullopt;
    return here[0].shape == end.shape && here[0].last == end.last ? here[1] : here[0];
  }

  // The chain through a line, each by the end at which it is entered.
  std::vector<End> chain(std::size_t shape, bool& closed) {
    std::vector<End> walked{{shape, false}};
    used.insert(shape);
    closed = false;
    while (const auto on = next({walked.back().shape, !walked.back().last})) {
      if (on->shape == shape) {
        closed = !on->last;  // back at its start; else it ran into its own end, which one line alone can do
        break;
      }
      used.insert(on->shape);
      walked.push_back(*on);
    }
    std::vector<End> before;
    for (auto back = next({shape, false}); !closed && back && !used.contains(back->shape); back = next(before.back())) {
      used.insert(back->shape);
      before.push_back({back->shape, !back->last});
    }
    std::ranges::reverse(before);
    before.insert(before.end(), walked.begin(), walked.end());
    return before;
  }

  DxfShape joined(const std::vector<End>& chain, bool closed) const {
    DxfShape made = shapes[chain.front().shape];
    Positions line;
    for (const End& end : chain) {
      const Positions& own = shapes[end.shape].part.rings.front();
      Positions way = end.last ? reversed(own) : own;
      if (!line.empty()) line.pop_back();
      line.insert(line.end(), way.begin(), way.end());
      if (std::pair(shapes[end.shape].number, shapes[end.shape].within) < std::pair(made.number, made.within)) {
        made.number = shapes[end.shape].number;
        made.within = shapes[end.shape].within;
      }
    }
    if (closed) {
      line.back() = line.front();
      line.back().bulge = 0;
    }
    made.part = {closed ? DrawnAs::polygon : DrawnAs::line, {std::move(line)}};
    return made;
  }
};

Net net_of(std::vector<DxfShape>& shapes, const std::vector<std::size_t>& lines, double unit, int& doubled) {
  Net net{shapes, {}, {}, {}};
  Nodes nodes(shapes[lines.front()].part.rings.front().front(), unit);
  std::set<std::tuple<Node, Node, double>> single;  // lines of one edge, walked from the lesser node
  for (const std::size_t line : lines) {
    const Positions& own = shapes[line].part.rings.front();
    const Node first = nodes.of(own.front()), last = nodes.of(own.back());
    const double bulge = own.front().bulge == 0 ? 0 : first < last ? own.front().bulge : -own.front().bulge;
    if (own.size() == 2 && !single.emplace(std::min(first, last), std::max(first, last), bulge).second) {
      ++doubled;
      continue;
    }
    net.lines.push_back(line);
    net.ends[line] = {first, last};
    net.meets[net.ends[line].first].push_back({line, false});
    net.meets[net.ends[line].second].push_back({line, true});
  }
  return net;
}

// A line's end that no other meets.
struct Loose {
  Node node;
  Position at;
  std::size_t partners = 0;  // other loose ends within the tolerance
  std::size_t partner = 0;
};

std::vector<Loose> loose_ends(const Net& net) {
  std::vector<Loose> loose;
  for (const auto& [node, ends] : net.meets) {
    if (ends.size() != 1) continue;
    const Positions& line = net.shapes[ends[0].shape].part.rings.front();
    loose.push_back({node, ends[0].last ? line.back() : line.front()});
  }
  return loose;
}

// Whether a line that is shorter than the tolerance runs between the two: it is no gap.
bool one_short_line(const Net& net, const Loose& a, const Loose& b) {
  const std::size_t shape = net.meets.at(a.node)[0].shape;
  return shape == net.meets.at(b.node)[0].shape && net.shapes[shape].part.rings.front().size() == 2;
}

// Finds for each loose end the others within the tolerance, by squares of that size.
void find_partners(const Net& net, std::vector<Loose>& loose, double tolerance) {
  constexpr std::size_t crowd = 8;  // so many in one square were not drawn to meet in pairs
  std::map<std::pair<double, double>, std::vector<std::size_t>> squares;
  const auto square = [&](const Position& at) {
    return std::pair(std::floor((at.x - loose.front().at.x) / tolerance),
                     std::floor((at.y - loose.front().at.y) / tolerance));
  };
  for (std::size_t i = 0; i < loose.size(); ++i) squares[square(loose[i].at)].push_back(i);
  for (std::size_t i = 0; i < loose.size(); ++i) {
    const auto [x, y] = square(loose[i].at);
    for (const double dx : {-1, 0, 1})
      for (const double dy : {-1, 0, 1}) {
        const auto found = squares.find({x + dx, y + dy});
        if (found == squares.end()) continue;
        if (found->second.size() > crowd) loose[i].partners += crowd;
        for (std::size_t n = 0; n < std::min(found->second.size(), crowd); ++n) {
          const std::size_t k = found->second[n];
          if (k == i || std::hypot(loose[k].at.x - loose[i].at.x, loose[k].at.y - loose[i].at.y) > tolerance) continue;
          if (one_short_line(net, loose[i], loose[k])) continue;
          ++loose[i].partners;
          loose[i].partner = k;
        }
      }
  }
}

// Ends that were meant to meet: two loose ones within the tolerance become one node where neither has another choice.
void bridge(Net& net, double tolerance) {
  std::vector<Loose> loose = loose_ends(net);
  if (loose.empty()) return;
  find_partners(net, loose, tolerance);
  for (std::size_t i = 0; i < loose.size(); ++i) {
    const std::size_t k = loose[i].partner;
    if (loose[i].partners != 1 || loose[k].partners != 1 || k < i) continue;
    const End moved = net.meets.at(loose[k].node)[0];
    (moved.last ? net.ends[moved.shape].second : net.ends[moved.shape].first) = loose[i].node;
    net.meets[loose[i].node].push_back(moved);
    net.meets.erase(loose[k].node);
  }
}

}  // namespace

std::vector<DxfShape> joined_chains(std::vector<DxfShape> shapes, double unit, std::map<std::string, int>& left_out) {
  std::map<std::string, std::vector<std::size_t>> layers;
  std::vector<DxfShape> made;
  for (std::size_t i = 0; i < shapes.size(); ++i) {
    if (shapes[i].part.drawn == DrawnAs::line && shapes[i].id.empty())
      layers[shapes[i].layer].push_back(i);
    else
      made.push_back(shapes[i]);
  }
  for (const auto& [layer, lines] : layers) {
    int doubled = 0;
    Net net = net_of(shapes, lines, unit, doubled);
    bridge(net, join_tolerance_m / unit);
    if (doubled > 0) left_out[layer + " (drawn twice)"] += doubled;
    for (const std::size_t line : net.lines) {
      if (net.used.contains(line)) continue;
      bool closed = false;
      const auto chain = net.chain(line, closed);
      made.push_back(net.joined(chain, closed));
    }
  }
  std::ranges::sort(made, {}, [](const DxfShape& shape) { return std::pair(shape.number, shape.within); });
  return made;
}

}  // namespace files
