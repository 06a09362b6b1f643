#include <algorithm>
#include <cmath>

#include "problem/ensure.h"
#include "takeoff/cutting_stock.h"
#include "takeoff/walls/reinforcement.h"

namespace takeoff::walls {

namespace {

constexpr double hair = 1e-6;  // metres: less is no stretch, and floating dust is no strip

bool holds(const Column& column, int on_course) { return on_course > column.base && on_course <= column.top; }

// Parts that run into each other without a corner.
using Group = std::vector<LayerPart>;

std::vector<Group> groups_of(const Profile& profile, const Extent& extent, std::size_t layer) {
  std::vector<Group> groups;
  bool corner = true;
  for (const Leg& leg : profile.legs) {
    const double from = std::max(extent.from, leg.from), to = std::min(extent.to, leg.to);
    if (to - from < hair) continue;
    if (corner) groups.emplace_back();
    groups.back().push_back({static_cast<int>(layer), from, to, to - from, 0, leg.radius, 0, 0, 0});
    corner = leg.corner != 0;
  }
  return groups;
}

double corner_at(const Profile& profile, double station) {
  for (const Leg& leg : profile.legs)
    if (std::abs(leg.to - station) < hair) return leg.corner;
  return 0;
}

double height_at(const Profile& profile, double station) {
  double height = 0;
  for (const Column& column : profile.columns)
    if (column.from <= station + hair && column.to >= station - hair)
      height = std::max(height, column.courses() * profile.course_height);
  return height;
}

// At an inside corner one of the two legs runs on behind the other.
void run_past_inside_corners(const Profile& profile, std::vector<Group>& groups, std::size_t layer) {
  for (std::size_t i = 0; i + 1 < groups.size(); ++i) {
    const double station = groups[i].back().to;
    if (corner_at(profile, station) >= 0) continue;
    LayerPart& runs_on = layer % 2 == 0 ? groups[i].back() : groups[i + 1].front();
    runs_on.past += height_at(profile, station) / 4;
  }
}

int strips_for(double length, double roll) { return static_cast<int>(std::ceil(length / roll - hair)); }

// A joint between strips that lies on an inside curve gapes.
void add_gaps(Group& group, int strips, double roll, double length) {
  for (int joint = 1; joint < strips; ++joint) {
    double at = 0;
    for (LayerPart& part : group) {
      const double start = at;
      at += part.face + part.past;
      if (part.radius >= 0 || joint * roll < start - hair || joint * roll > at + hair) continue;
      part.gaps += std::max(1, strips_for(tail(roll, length, part.radius), roll));
      break;
    }
  }
}

// Strips lie side by side from the start of the group; each part has those that begin on it.
void share_strips(Group& group, double coverage, double roll, double length) {
  double at = 0;
  int laid = 0;
  LayerPart* last = nullptr;
  for (LayerPart& part : group) {
    at += (part.face + part.past) * coverage;
    const int till_here = strips_for(at, roll);
    part.strips = till_here - laid;
    laid = till_here;
    if (part.strips == 0) continue;
    part.last = roll;
    last = &part;
  }
  if (last) last->last = at - (laid - 1) * roll;
  if (coverage >= 1) add_gaps(group, laid, roll, length);
}

}  // namespace

bool held_down(const Column& column, const plan::Reinforcement& layer) {
  return holds(column, layer.on_course) && layer.on_course < column.top;
}

Strong strong(const catalogue::Item& item) {
  const auto found = item.details.find("strong_direction");
  if (found == item.details.end()) return {};
  const auto has = [&](const char* word) { return found->second.find(word) != std::string::npos; };
  const bool both = has("both");
  return {both || has("along"), both || has("across")};
}

bool holds_at_all(const plan::Job& job, const plan::Reinforcement& layer, const Unit& block) {
  const catalogue::Item* item = job.catalogue->item(layer.item);
  if (!item || !item->length || !item->width || item->length->steps() <= 0 || item->width->steps() <= 0) return false;
  if (layer.length.metres().si() <= block.depth + hair || !(layer.coverage > 0 && layer.coverage <= 1)) return false;
  const Strong way = strong(*item);
  if (layer.along) return way.across && *item->width >= layer.length;
  return (way.along || !way.across) && layer.length <= *item->length;
}

std::vector<Extent> extents(const Profile& profile, const plan::Reinforcement& layer) {
  const double from = layer.from.metres().si();
  const double to = layer.to ? std::min(layer.to->metres().si(), profile.length) : profile.length;
  std::vector<Extent> found;
  for (const Column& column : profile.columns) {
    const Extent one{std::max(from, column.from), std::min(to, column.to)};
    if (one.to - one.from < hair || !holds(column, layer.on_course)) continue;
    if (!found.empty() && one.from - found.back().to < hair) {
      found.back().to = one.to;
    } else {
      found.push_back(one);
    }
  }
  return found;
}

std::vector<LayerPart> layer_parts(const Profile& profile, const plan::Wall& wall, std::size_t layer, double roll) {
  problem::ensure(layer < wall.layers.size() && roll > 0, "a layer of the wall and a roll with a width");
  const plan::Reinforcement& given = wall.layers[layer];
  std::vector<LayerPart> parts;
  if (given.along || given.coverage <= 0) return parts;
  for (const Extent& extent : extents(profile, given)) {
    std::vector<Group> groups = groups_of(profile, extent, layer);
    run_past_inside_corners(profile, groups, layer);
    for (Group& group : groups) {
      share_strips(group, std::min(given.coverage, 1.0), roll, given.length.metres().si());
      parts.insert(parts.end(), group.begin(), group.end());
    }
  }
  return parts;
}

double tail(double strip, double length, double radius) { return radius == 0 ? 0 : strip * length / std::abs(radius); }

void plan_rolls(RollCuts& cuts, units::System system) {
  problem::ensure(cuts.item && cuts.item->length, "the roll of a cut plan has a length");
  std::ranges::stable_sort(cuts.pieces, [](const auto& a, const auto& b) { return a.length > b.length; });
  std::vector<units::Length> demands;
  for (const RollCuts::Pieces& one : cuts.pieces)
    demands.insert(demands.end(), static_cast<std::size_t>(one.bought()), one.length);
  const StockPlan plan = cutting_stock(demands, *cuts.item->length, units::Length());
  cuts.rolls = plan.bought;
  cuts.bound = plan.bound;
  std::vector<std::pair<std::string, int>> alike;  // rolls that are cut the same way
  for (const auto& roll : plan.cuts) {
    std::string text;
    for (std::size_t i = 0; i < roll.size();) {
      std::size_t same = i;
      while (same < roll.size() && demands[roll[same]] == demands[roll[i]]) ++same;
      text +=
          (text.empty() ? "" : " + ") + std::to_string(same - i) + " x " + units::show_length(demands[roll[i]], system);
      i = same;
    }
    const auto known = std::ranges::find(alike, text, &std::pair<std::string, int>::first);
    if (known == alike.end()) {
      alike.emplace_back(std::move(text), 1);
    } else {
      known->second += 1;
    }
  }
  cuts.in_words.clear();
  for (const auto& [text, count] : alike)
    cuts.in_words +=
        (cuts.in_words.empty() ? "" : "; ") + std::to_string(count) + (count == 1 ? " roll: " : " rolls: ") + text;
}

}  // namespace takeoff::walls
