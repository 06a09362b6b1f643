#include <algorithm>
#include <cmath>

#include "sheets/plan_parts.h"
#include "takeoff/levels/book.h"
#include "takeoff/water/network.h"

namespace sheets {

using takeoff::Stage;

namespace {

std::string spaced(std::string word) {
  std::ranges::replace(word, '-', ' ');
  return word;
}

Vec on(const geometry::Path& path, double share) {
  return metres(takeoff::water::place_at(path, share * path.length().si()));
}

// Heights of the points that a level book has, by the names that it calls them.
std::map<std::string, double> read_on_site(const plan::Job& job) {
  std::map<std::string, double> found;
  for (const auto& element : job.elements) {
    const auto* book = std::get_if<plan::LevelBook>(&element->kind);
    const auto reduced = book ? takeoff::levels::reduce(*book, element->id) : problem::fault("no-book", "", "");
    if (!book || !reduced) continue;
    for (const takeoff::levels::BookRow& row : reduced->rows) found.emplace(row.point, row.height);
  }
  return found;
}

class Marker {
 public:
  explicit Marker(Plan& plan) : plan_(plan), read_(read_on_site(plan.job())) {}

  void draw(const plan::Ground& ground) {
    ground_ = &ground;
    std::visit(*this, ground.element->kind);
  }

  void operator()(const plan::Level& level) {
    if (!plan_.wants().levels) return;
    const auto known = read_.find(id());
    if (!level.height && known == read_.end()) return;
    const double height = level.height ? level.height->metres().si() : known->second;
    plan_.mark(Sign::level, metres(level.at), show_height(height, plan_.system()), id());
  }
  void operator()(const plan::Feature& feature) {
    const catalogue::Item* item = plan_.catalogue().item(feature.item);
    if (!plan_.built(Stage::finish)) return;
    const bool light = item && item->kind.find("light") != std::string::npos;
    plan_.mark(light ? Sign::light_point : Sign::plain_point, metres(feature.at), id(), id());
  }
  void operator()(const plan::SiteMark& mark) {
    const std::string word = spaced(mark.what);
    for (const geometry::Point& point : mark.points) plan_.mark(Sign::plain_point, metres(point), word, id());
    if (ground_->path) {
      plan_.stroke(contour(*ground_->path), Line::light, id());
      const Vec a = on(*ground_->path, 0.48), b = on(*ground_->path, 0.52);
      plan_.mark(Sign::name, on(*ground_->path, 0.5), word, id(), std::atan2(b.y - a.y, b.x - a.x));
    }
    outlined(word);
  }
  void operator()(const plan::Removal& gone) {
    // What goes is gone at the end of the first stage; what stays is built over.
    if (plan_.wants().stage && gone.fate != "leave") return;
    if (ground_->path) plan_.stroke(contour(*ground_->path), Line::light, id());
    outlined({});
    tag();
  }
  void operator()(const plan::Protection&) {
    if (plan_.at(Stage::finish)) return;
    if (ground_->path) plan_.stroke(contour(*ground_->path), Line::element, id());
    outlined({});
    tag();
  }
  void operator()(const plan::Note& note) { plan_.mark(Sign::name, metres(note.at), note.text, id()); }
  void operator()(const plan::Dimension& dimension) {
    const Vec from = metres(dimension.from), to = metres(dimension.to);
    plan_.stroke(line(from, to), Line::light, id());
    const units::Length length = units::Length::nearest(units::Metres(geometry::length(to - from)));
    plan_.mark(Sign::name, 0.5 * (from + to), units::show_length(length, plan_.system()), id(),
               std::atan2(to.y - from.y, to.x - from.x));
  }
  void operator()(const plan::BaseLine& base) {
    plan_.stroke(line(metres(base.from), metres(base.to)), Line::light, id());
  }
  void operator()(const plan::KeepOut& out) {
    tag();
    if (out.what == "tree")
      if (const auto at = inside(ground_->drawn)) plan_.mark(Sign::tree, *at, {}, id());
    if (out.what == "inlet")
      if (const auto at = inside(ground_->drawn)) plan_.mark(Sign::inlet, *at, {}, id());
  }
  void operator()(const plan::SitePlan&) {}
  void operator()(const plan::LevelBook&) {}
  void operator()(const plan::TapeBook&) {}
  template <class Other>
  void operator()(const Other&) {
    tag();
  }

 private:
  const plan::ElementId& id() const { return ground_->element->id; }
  void tag() {
    if (const auto at = middle(*ground_)) plan_.mark(Sign::tag, *at, id(), id());
  }
  void outlined(const std::string& word) {
    for (Contour& contour : contours(ground_->drawn)) plan_.stroke(std::move(contour), Line::light, id());
    const auto at = word.empty() ? std::nullopt : inside(ground_->drawn);
    if (at) plan_.mark(Sign::name, *at, word, id());
  }

  Plan& plan_;
  std::map<std::string, double> read_;
  const plan::Ground* ground_ = nullptr;
};

}  // namespace

std::optional<Vec> middle(const plan::Ground& ground) {
  if (ground.path) return on(*ground.path, 0.5);
  if (const auto at = inside(ground.net.empty() ? ground.drawn : ground.net)) return at;
  if (const auto* feature = std::get_if<plan::Feature>(&ground.element->kind)) return metres(feature->at);
  if (const auto* level = std::get_if<plan::Level>(&ground.element->kind)) return metres(level->at);
  const auto* mark = std::get_if<plan::SiteMark>(&ground.element->kind);
  if (mark && !mark->points.empty()) return metres(mark->points.front());
  return std::nullopt;
}

void draw_marks(Plan& plan) {
  draw_falls(plan);
  draw_junctions(plan);
  Marker marker(plan);
  for (const auto& ground : plan.site().grounds) marker.draw(*ground);
  draw_faults(plan);
}

}  // namespace sheets
