#include "takeoff/walls/pipe_line.h"

#include <algorithm>

namespace takeoff::walls {

double PipeLine::reached(const Outlet& outlet, double station) const {
  double level = outlet.invert, at = outlet.at;
  if (station >= at) {
    for (const Piece& piece : pieces) {
      if (piece.to <= at || piece.from >= station) continue;
      const double end = std::min(piece.to, station);
      level = std::max(level, piece.bottom) + fall * (end - at);
      at = end;
    }
    return level;
  }
  for (auto piece = pieces.rbegin(); piece != pieces.rend(); ++piece) {
    if (piece->from >= at || piece->to <= station) continue;
    const double end = std::max(piece->from, station);
    level = std::max(level, piece->bottom) + fall * (at - end);
    at = end;
  }
  return level;
}

double PipeLine::reached_either_way(const Outlet& outlet, double station) const {
  double level = reached(outlet, station);
  if (around > 0)
    for (const double turn : {-around, around})
      level = std::min(level, reached({outlet.at + turn, outlet.invert}, station));
  return level;
}

double PipeLine::invert(const std::vector<Outlet>& outlets, double station) const {
  double level = reached_either_way(outlets.front(), station);
  for (const Outlet& outlet : outlets) level = std::min(level, reached_either_way(outlet, station));
  return level;
}

PipeLine pipe_line(const Profile& profile, double pad_thickness, double fall) {
  PipeLine made{{}, fall, profile.closed ? profile.length : 0};
  const int copies = profile.closed ? 1 : 0;
  for (int copy = -copies; copy <= copies; ++copy)
    for (const Column& column : profile.columns) {
      const double top = profile.base_level(column);
      made.pieces.push_back(
          {column.from + copy * profile.length, column.to + copy * profile.length, top - pad_thickness, top});
    }
  return made;
}

std::vector<Plateau> plateaus(const Profile& profile) {
  std::vector<Plateau> all;
  for (const Column& column : profile.columns) {
    if (!all.empty() && all.back().base == column.base) {
      all.back().to = column.to;
    } else {
      all.push_back({column.from, column.to, column.base, false});
    }
  }
  for (std::size_t i = 0; i < all.size(); ++i) {
    const bool wrap = profile.closed && all.size() > 1;
    const Plateau* before = i > 0 ? &all[i - 1] : wrap ? &all.back() : nullptr;
    const Plateau* after = i + 1 < all.size() ? &all[i + 1] : wrap ? &all.front() : nullptr;
    all[i].low = (!before || before->base > all[i].base || (i == 0 && before->base == all[i].base)) &&
                 (!after || after->base > all[i].base || (i + 1 == all.size() && after->base == all[i].base));
  }
  return all;
}

}  // namespace takeoff::walls
