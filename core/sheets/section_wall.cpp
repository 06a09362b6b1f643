#include <algorithm>
#include <cmath>

#include "sheets/section_parts.h"
#include "takeoff/walls/courses.h"
#include "takeoff/walls/zone.h"

namespace sheets {

using takeoff::Stage;

namespace {

namespace walls = takeoff::walls;
constexpr double inch = units::metres_per_inch;

// Through the tallest part of a wall. The face at its base is x = 0, the fill to the right; heights are measured from
// the ground in front.
class WallCut {
 public:
  WallCut(Cut& cut, const plan::Wall& wall, walls::Blocks blocks, walls::Profile profile)
      : cut_(cut), wall_(wall), blocks_(blocks), profile_(std::move(profile)) {
    column_ = *std::ranges::max_element(profile_.columns, {}, &walls::Column::courses);
    station_ = (column_.from + column_.to) / 2;
    zero_ = profile_.ground.empty() ? profile_.base_level(column_) : profile_.ground.after(station_);
    behind_ = walls::behind(cut.job(), wall, blocks_);
    pad_ = walls::pad(cut.job(), wall);
    for (const plan::Reinforcement& layer : wall.layers)
      if (lies_here(layer)) reach_ = std::max(reach_, layer.length.metres().si());
    if (wall.free_standing || !wall.stone || wall.stone->drain.empty()) behind_.stone_depth = 0;
  }

  void draw() {
    draw_ground();
    if (!wall_.free_standing) draw_behind();
    draw_pad();
    for (int i = 0; i < column_.courses(); ++i)
      cut_.box({setback(i), base() + i * high()}, {setback(i) + depth(), base() + (i + 1) * high()}, Material::block,
               Stage::wall);
    draw_cap();
    draw_layers_here();
    draw_pipe();
    say();
  }

 private:
  double high() const { return profile_.course_height; }
  double depth() const { return blocks_.block.depth; }
  double setback(int i) const { return i * blocks_.block.setback; }
  double base() const { return profile_.base_level(column_) - zero_; }
  double top() const { return profile_.top_level(column_) - zero_; }
  double back(double y) const {
    const int i = std::clamp(static_cast<int>(std::floor((y - base()) / high() + 1e-6)), 0, column_.courses() - 1);
    return setback(i) + depth();
  }
  bool lies_here(const plan::Reinforcement& layer) const {
    return layer.from.metres().si() <= station_ && (!layer.to || layer.to->metres().si() >= station_);
  }
  double right() const {
    const double stone = back(top() - 1e-3) + behind_.stone_depth;
    return wall_.free_standing ? depth() + 10 * inch : std::max(stone, reach_) + 10 * inch;
  }
  double bottom() const { return base() - (pad_ ? pad_->thickness : 0) - 5 * inch; }
  double stone_top() const { return top() - behind_.soil_cap; }

  void draw_ground() {
    const double pad_low = base() - (pad_ ? pad_->thickness : 0);
    cut_.ground_box({-12 * inch, bottom()}, {0, 0});
    cut_.ground_box({0, bottom()}, {right(), pad_low});
    cut_.ground_box({depth(), pad_low}, {right(), wall_.free_standing ? 0 : base()});
  }

  // Bottom of the backs of the courses up to `to`, as a line with steps.
  std::vector<Vec> backs(double out, double to) const {
    std::vector<Vec> line;
    for (int i = 0; i < column_.courses(); ++i) {
      const double low = base() + i * high(), up = std::min(low + high(), to);
      if (up <= low) break;
      line.push_back({setback(i) + depth() + out, low});
      line.push_back({setback(i) + depth() + out, up});
    }
    return line;
  }

  Contour between(double inner, double outer, double to, bool outer_straight) const {
    std::vector<Vec> ring = backs(inner, to);
    if (outer_straight) {
      ring.push_back({outer, to});
      ring.push_back({outer, base()});
    } else {
      const std::vector<Vec> far = backs(outer, to);
      ring.insert(ring.end(), far.rbegin(), far.rend());
    }
    return polygon(std::move(ring));
  }

  void draw_behind() {
    const double surface = profile_.behind.after(station_) - zero_;
    const double stone = behind_.stone_depth;
    cut_.ground_box({std::max(reach_, stone + depth()), base() - (pad_ ? pad_->thickness : 0)}, {right(), surface});
    const double fill_to = std::max(stone_top(), base() + high());
    if (reach_ > stone + depth())
      cut_.area(between(stone, reach_, fill_to, true),
                behind_.clean_fill ? Material::open_stone : Material::made_up_ground, Stage::wall, Line::none);
    if (stone > 0) cut_.area(between(0, stone, fill_to, false), Material::open_stone, Stage::wall);
    cut_.area(polygon({{back(fill_to), fill_to}, {right(), fill_to}, {right(), surface}, {back(surface), surface}}),
              Material::made_up_ground, Stage::wall, Line::none);
    if (!wall_.stone || wall_.stone->fabric.empty() || stone <= 0) return;
    std::vector<Vec> line = backs(stone, fill_to);
    line.push_back({back(fill_to - 1e-3), fill_to});
    Contour fabric = polygon(std::move(line));
    fabric.closed = false;
    cut_.stroke(std::move(fabric), Line::geotextile, Stage::wall);
  }

  void draw_pad() {
    if (!pad_ || pad_->thickness <= 0) return;
    cut_.box({-pad_->past, base() - pad_->thickness}, {depth() + pad_->past, base()},
             pad_->open ? Material::open_stone : Material::dense_base, Stage::wall);
  }

  const catalogue::Item* cap() const {
    const catalogue::Item* item = cut_.catalogue().item(wall_.cap);
    return item && item->width && profile_.cap_height > 0 ? item : nullptr;
  }
  double overhang() const {
    return wall_.cap_overhang.value_or(cut_.catalogue().length_limit("cap-overhang", units::Length::inches(1)))
        .metres()
        .si();
  }
  void draw_cap() {
    if (!cap()) return;
    const double front = setback(column_.courses() - 1) - overhang(), back = front + cap()->width->metres().si();
    const double high = top() + profile_.cap_height;
    std::vector<Vec> ring{{front, high}, {front, top()}};
    if (has_groove()) add_groove(front + groove_back(), ring);
    // Of a wall with two faces both edges drip.
    if (has_groove() && wall_.free_standing) add_groove(back - groove_back() - groove_wide, ring);
    ring.push_back({back, top()});
    ring.push_back({back, high});
    cut_.area(polygon(std::move(ring)), Material::cap, Stage::wall);
  }

  // As the takeoff has it: where the cap stands out so far that the groove hangs free of the face.
  static constexpr double groove_wide = inch / 4;
  double groove_back() const {
    return cut_.catalogue().length_limit("drip-back", units::Length::inch_64ths(32)).metres().si();
  }
  double groove_deep() const {
    return cut_.catalogue().length_limit("drip-deep", units::Length::inch_64ths(16)).metres().si();
  }
  bool has_groove() const { return overhang() > groove_back(); }
  void add_groove(double from, std::vector<Vec>& ring) const {
    for (const Vec corner : {Vec{from, top()}, Vec{from, top() + groove_deep()},
                             Vec{from + groove_wide, top() + groove_deep()}, Vec{from + groove_wide, top()}})
      ring.push_back(corner);
  }

  double level_of(const plan::Reinforcement& layer) const { return profile_.level(layer.on_course) - zero_; }

  void draw_layers_here() {
    for (const plan::Reinforcement& layer : wall_.layers)
      if (lies_here(layer))
        cut_.stroke(line({setback(layer.on_course - 1 - column_.base), level_of(layer)},
                         {layer.length.metres().si(), level_of(layer)}),
                    Line::geotextile, Stage::wall);
  }

  bool has_pipe() const { return !wall_.free_standing && (wall_.pipe || !wall_.drained_by.empty()); }
  Vec pipe_at() const { return {depth() + 4 * inch, base() + 2.5 * inch}; }
  void draw_pipe() {
    if (has_pipe()) cut_.ring(pipe_at(), 2 * inch, Material::pipe, Stage::wall);
  }

  void tell(Vec at, std::string label, std::string value, std::string field) {
    cut_.leader(at, std::move(label), std::move(value), std::move(field), Stage::wall);
  }

  void say() {
    const int last = column_.courses() - 1;
    if (cap())
      tell({setback(last) + depth() / 2, top() + profile_.cap_height / 2}, cut_.name(wall_.cap, "Cap"),
           cut_.shown(profile_.cap_height), {});
    if (cap())
      tell({setback(last) - overhang() / 2, top() + profile_.cap_height / 4}, "Overhang", cut_.shown(overhang()),
           "wall/cap_overhang");
    if (cap() && has_groove())
      tell({setback(last) - overhang() + groove_back() + groove_wide / 2, top() + groove_deep()}, "Drip groove, deep",
           cut_.shown(groove_deep()), {});
    // What stands above the ground can be typed only where no heights along the wall are given.
    tell({setback(last) + 0.3 * depth(), top() - 0.3 * high()}, "Height above ground",
         cut_.shown(top() + profile_.cap_height), wall_.top.empty() && wall_.height ? "wall/height" : "");
    if (!wall_.free_standing && behind_.soil_cap > 0 && wall_.stone)
      tell({back(top()) + 3 * inch, (top() + stone_top()) / 2}, "Earth over the stone", cut_.shown(behind_.soil_cap),
           "stone/soil_cap");
    if (behind_.stone_depth > 0)
      tell({back(stone_top()) + 0.6 * behind_.stone_depth, stone_top() - 0.4 * high()},
           cut_.name(wall_.stone->drain, "Stone"), cut_.shown(behind_.stone_depth), "stone/drain_depth");
    for (std::size_t i = 0; i < wall_.layers.size(); ++i)
      if (lies_here(wall_.layers[i]))
        tell({0.8 * wall_.layers[i].length.metres().si(), level_of(wall_.layers[i])},
             "Layer on course " + std::to_string(wall_.layers[i].on_course), cut_.shown(wall_.layers[i].length),
             "layer/" + std::to_string(i) + "/length");
    const int middle = last / 2;
    tell({setback(middle) + 0.6 * depth(), base() + (middle + 0.6) * high()}, cut_.name(wall_.block, "Block"),
         std::to_string(column_.courses()) + " courses", {});
    if (has_pipe())
      tell(pipe_at(), wall_.pipe ? cut_.name(wall_.pipe->item, "Pipe") : wall_.drained_by,
           wall_.pipe ? "" : "drains it", {});
    tell({0.5 * depth(), base() + 0.3 * high()}, "Courses buried", std::to_string(wall_.bury_courses),
         "wall/bury_courses");
    if (pad_ && pad_->thickness > 0) {
      tell({0.4 * depth(), base() - 0.4 * pad_->thickness}, "Leveling base", cut_.shown(pad_->thickness),
           "layer/0/thickness");
      tell({-pad_->past / 2, base() - 0.8 * pad_->thickness}, "Base past the blocks", cut_.shown(pad_->past),
           "past_edge");
    }
  }

  Cut& cut_;
  const plan::Wall& wall_;
  walls::Blocks blocks_;
  walls::Profile profile_;
  walls::Column column_;
  walls::Behind behind_;
  std::optional<walls::Pad> pad_;
  double station_ = 0, zero_ = 0, reach_ = 0;
};

}  // namespace

bool section_of_wall(Cut& cut, const plan::Wall& wall) {
  if (wall.existing || !cut.ground().path) return false;
  takeoff::Share said;
  const auto blocks = walls::chosen_blocks(cut.job(), wall, cut.id(), said);
  const auto profile = blocks ? walls::profile(cut.job(), cut.ground(), blocks->block, said) : std::nullopt;
  if (!profile) return false;
  WallCut(cut, wall, *blocks, *profile).draw();
  return true;
}

}  // namespace sheets
