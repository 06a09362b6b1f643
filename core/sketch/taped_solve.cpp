// Least squares over tapes: Gauss-Newton steps, held back where a step would make it worse.
#include <algorithm>
#include <cmath>

#include "sketch/taped_net.h"

namespace sketch::net {

namespace {

// A symmetric matrix that Cholesky can take apart: lower triangle, row by row.
class Square {
 public:
  explicit Square(std::size_t size) : size_(size), cells_(size * size) {}
  double& at(std::size_t i, std::size_t j) { return cells_[i * size_ + j]; }
  double at(std::size_t i, std::size_t j) const { return cells_[i * size_ + j]; }
  std::size_t size() const { return size_; }

  bool take_apart() {  // false where it is not positive: some point is free to move
    for (std::size_t j = 0; j < size_; ++j) {
      const double whole = at(j, j);
      for (std::size_t i = j; i < size_; ++i) {
        double sum = at(i, j);
        for (std::size_t k = 0; k < j; ++k) sum -= at(i, k) * at(j, k);
        if (i == j && sum <= 1e-13 * whole) return false;
        at(i, j) = i == j ? std::sqrt(sum) : sum / at(j, j);
      }
    }
    return true;
  }
  std::vector<double> solved(std::vector<double> right) const {
    for (std::size_t i = 0; i < size_; ++i) {
      for (std::size_t k = 0; k < i; ++k) right[i] -= at(i, k) * right[k];
      right[i] /= at(i, i);
    }
    for (std::size_t i = size_; i-- > 0;) {
      for (std::size_t k = i + 1; k < size_; ++k) right[i] -= at(k, i) * right[k];
      right[i] /= at(i, i);
    }
    return right;
  }

 private:
  std::size_t size_;
  std::vector<double> cells_;
};

struct Places {
  std::vector<std::size_t> column;  // per spot, of its x; none for those that stay
  std::size_t size = 0;
};
Places places(const Net& net) {
  Places made;
  for (const Spot& spot : net.spots) {
    const bool moves = spot.placed && !spot.known;
    made.column.push_back(moves ? made.size : none);
    if (moves) made.size += 2;
  }
  return made;
}

// One reading's slopes as columns and values.
struct Slopes {
  int count = 0;
  std::array<std::size_t, 6> column{};
  std::array<double, 6> value{};
};
Slopes slopes(const Reading& reading, const Places& places) {
  Slopes made;
  for (int i = 0; i < reading.points; ++i) {
    const auto k = static_cast<std::size_t>(i);
    const std::size_t column = places.column[reading.spot[k]];
    if (column == none) continue;
    for (const std::size_t axis : {0U, 1U}) {
      const auto n = static_cast<std::size_t>(made.count++);
      made.column[n] = column + axis;
      made.value[n] = axis == 0 ? reading.slope[k].x : reading.slope[k].y;
    }
  }
  return made;
}

bool pulls(const Net& net, const Row& row, std::size_t without) {
  return row.counts && row.number != without && net.usable(row);
}

double sum_of_squares(const Net& net, std::size_t without) {
  double sum = 0;
  for (const Row& row : net.rows) {
    if (!pulls(net, row, without)) continue;
    const Readings all = readings(net, row);
    for (int i = 0; i < all.count; ++i) {
      const double misfit = all.each[static_cast<std::size_t>(i)].misfit;
      sum += misfit * misfit;
    }
  }
  return sum;
}

struct Normal {
  Square matrix;
  std::vector<double> right;
};
Normal normal(const Net& net, const Places& places, std::size_t without) {
  Normal made{Square(places.size), std::vector<double>(places.size)};
  for (const Row& row : net.rows) {
    if (!pulls(net, row, without)) continue;
    const Readings all = readings(net, row);
    for (int r = 0; r < all.count; ++r) {
      const Reading& reading = all.each[static_cast<std::size_t>(r)];
      const Slopes s = slopes(reading, places);
      for (std::size_t i = 0; i < static_cast<std::size_t>(s.count); ++i) {
        made.right[s.column[i]] += s.value[i] * reading.misfit;
        for (std::size_t j = 0; j < static_cast<std::size_t>(s.count); ++j)
          made.matrix.at(s.column[i], s.column[j]) += s.value[i] * s.value[j];
      }
    }
  }
  return made;
}

// The net a step further; the longest move of a point, m. `hold` keeps the step short.
std::optional<double> step(Net& net, const Places& places, Normal normal, double hold) {
  for (std::size_t i = 0; i < places.size; ++i) normal.matrix.at(i, i) += hold * (normal.matrix.at(i, i) + 1e-9);
  if (!normal.matrix.take_apart()) return {};
  const std::vector<double> by = normal.matrix.solved(std::move(normal.right));
  double longest = 0;
  for (std::size_t i = 0; i < net.spots.size(); ++i) {
    if (places.column[i] == none) continue;
    const Vec move{by[places.column[i]], by[places.column[i] + 1]};
    net.spots[i].at = net.spots[i].at + move;
    longest = std::max(longest, length(move));
  }
  return longest;
}

}  // namespace

Readings readings(const Net& net, const Row& row) {
  const Vec from = net.spots[row.from].at, v = net.spots[row.point].at - from;
  Readings made;
  if (row.tie) {
    const double d = length(v);
    const Vec unit = d > 0 ? (1 / d) * v : Vec{};
    made.count = 1;
    made.each[0] = {row.measure - d, 2, {row.point, row.from, 0}, {unit, -unit, {}}};
    return made;
  }
  const Vec line = net.spots[row.to].at - from;
  const double l = length(line);
  if (l == 0) return made;
  const Vec e = (1 / l) * line, n = left_of(e);
  const double along = dot(v, e), across = dot(v, n);
  // Moving the far end of the line by a turns the line by a / l, so that what lies along it swings out and back.
  const Vec along_to = (across / l) * n, across_to = (-along / l) * n;
  made.count = 2;
  made.each[0] = {row.measure - along, 3, {row.point, row.from, row.to}, {e, -(e + along_to), along_to}};
  made.each[1] = {row.offset - across, 3, {row.point, row.from, row.to}, {n, -(n + across_to), across_to}};
  return made;
}

double settle(Net& net, std::size_t without) {
  const Places columns = places(net);
  double sum = sum_of_squares(net, without), hold = 0;
  if (columns.size == 0) return sum;
  for (int turn = 0; turn < 200 && hold < 1e8; ++turn) {
    Net further = net;
    const auto longest = step(further, columns, normal(net, columns, without), hold);
    const double then = longest ? sum_of_squares(further, without) : sum;
    if (!longest || then > sum) {
      if (longest && *longest < 1e-9) break;
      hold = hold == 0 ? 1e-6 : hold * 10;
      continue;
    }
    net = std::move(further);
    sum = then;
    hold = hold < 1e-7 ? 0 : hold / 10;
    if (*longest < 1e-9) break;  // well under a step of the grid
  }
  return sum;
}

std::vector<Block> freedom(const Net& net) {
  const Places columns = places(net);
  std::vector<Block> made;
  Normal all = normal(net, columns, none);
  if (!all.matrix.take_apart()) return made;
  for (const Row& row : net.rows) {
    Block block{1, 0, 0, 1};
    if (pulls(net, row, none)) {
      const Readings two = readings(net, row);
      for (int r = 0; r < two.count; ++r) {
        const Slopes from = slopes(two.each[static_cast<std::size_t>(r)], columns);
        std::vector<double> right(columns.size);
        for (std::size_t i = 0; i < static_cast<std::size_t>(from.count); ++i) right[from.column[i]] += from.value[i];
        const std::vector<double> moved = all.matrix.solved(std::move(right));
        for (int q = 0; q < two.count; ++q) {
          const Slopes to = slopes(two.each[static_cast<std::size_t>(q)], columns);
          for (std::size_t i = 0; i < static_cast<std::size_t>(to.count); ++i)
            block[2 * static_cast<std::size_t>(q) + static_cast<std::size_t>(r)] -= to.value[i] * moved[to.column[i]];
        }
      }
    }
    made.push_back(block);
  }
  return made;
}

}  // namespace sketch::net
