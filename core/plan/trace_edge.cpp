#include <cmath>
#include <limits>

#include "geometry/index.h"
#include "plan/edits.h"

namespace plan {

namespace {

problem::Problem refused(const Element& element, std::string code, std::string text, std::string mend) {
  return {problem::Severity::problem, std::move(code), std::move(text), std::move(mend), {element.id, {}, 0, 0, {}}};
}

// A place on one of the edges.
struct Place {
  std::size_t edge = 0;
  double share = 0;
};

Place nearest_place(const std::vector<DrawnEdge>& edges, geometry::Point point) {
  Place best;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const geometry::Nearest near = geometry::nearest(edges[i].curve, point);
    if (near.distance < least) {
      least = near.distance;
      best = {i, near.share};
    }
  }
  return best;
}

// The edges of one ring or line, in order.
struct Chain {
  const std::vector<DrawnEdge>* edges = nullptr;
  std::size_t first = 0;
  std::size_t count = 0;

  bool closed() const { return (*edges)[first + count - 1].curve.end == (*edges)[first].curve.start; }
  std::optional<std::size_t> after(std::size_t i) const {
    if (i + 1 < first + count) return i + 1;
    return closed() ? std::optional(first) : std::nullopt;
  }
};

Chain chain_of(const std::vector<DrawnEdge>& edges, int ring) {
  Chain chain{&edges, 0, 0};
  while (edges[chain.first].start.ring != ring) ++chain.first;
  while (chain.first + chain.count < edges.size() && edges[chain.first + chain.count].start.ring == ring) ++chain.count;
  return chain;
}

void add_part(DrawnLine& line, const geometry::Curve& curve, double low, double high) {
  if (high - low < 1e-9) return;
  const double bulge = curve.straight() ? 0 : std::tan(curve.sweep() * (high - low) / 4);
  line.edges.push_back({geometry::moved(curve.start, curve.at(low)), bulge, {}});
  line.end = geometry::moved(curve.start, curve.at(high));
}

// Forwards from one place to the other; none where a line ends before.
std::optional<DrawnLine> walk(const Chain& chain, Place from, Place to) {
  const std::vector<DrawnEdge>& edges = *chain.edges;
  DrawnLine line;
  if (from.edge == to.edge && from.share <= to.share) {
    add_part(line, edges[from.edge].curve, from.share, to.share);
    return line;
  }
  add_part(line, edges[from.edge].curve, from.share, 1);
  auto i = chain.after(from.edge);
  for (; i && *i != to.edge; i = chain.after(*i)) add_part(line, edges[*i].curve, 0, 1);
  if (!i) return std::nullopt;
  add_part(line, edges[to.edge].curve, 0, to.share);
  return line;
}

DrawnLine turned_round(const DrawnLine& line) {
  DrawnLine back;
  geometry::Point at = line.end;
  for (std::size_t i = line.edges.size(); i > 0; --i) {
    const geometry::Edge& edge = line.edges[i - 1];
    back.edges.push_back({at, edge.bulge == 0 ? 0 : -edge.bulge, {}});
    at = edge.from;
  }
  back.end = at;
  return back;
}

double length(const DrawnLine& line) {
  double steps = 0;
  for (std::size_t i = 0; i < line.edges.size(); ++i) {
    const geometry::Point end = i + 1 < line.edges.size() ? line.edges[i + 1].from : line.end;
    steps += geometry::Curve{line.edges[i].from, end, line.edges[i].bulge}.length();
  }
  return steps;
}

}  // namespace

problem::Result<DrawnLine> traced(const Element& other, geometry::Point from, geometry::Point to, bool longer) {
  const std::vector<DrawnEdge> edges = drawn_edges(other);
  if (edges.empty())
    return std::unexpected(refused(other, "trace-none", "It has no edge to trace.", "Choose another."));
  const Place a = nearest_place(edges, from);
  const Place b = nearest_place(edges, to);
  if (edges[a.edge].start.ring != edges[b.edge].start.ring)
    return std::unexpected(
        refused(other, "trace-rings", "The two places lie on different outlines.", "Choose two on one."));
  const Chain chain = chain_of(edges, edges[a.edge].start.ring);
  const auto forwards = walk(chain, a, b);
  auto backwards = walk(chain, b, a);
  if (backwards) backwards = turned_round(*backwards);
  auto chosen = forwards ? forwards : backwards;
  if (forwards && backwards && (length(*forwards) <= length(*backwards)) == longer) chosen = backwards;
  if (!chosen || chosen->edges.empty())
    return std::unexpected(refused(other, "trace-none", "The two places are one.", "Set them apart."));
  return *chosen;
}

}  // namespace plan
