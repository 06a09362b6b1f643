#include "takeoff/stage.h"

#include <algorithm>
#include <array>

namespace takeoff {

namespace {
struct Names {
  Stage stage;
  std::string_view word;
  std::string_view title;
};
constexpr std::array names{
    Names{Stage::protect, "protect", "Protect and remove"},
    Names{Stage::dig, "dig", "Dig"},
    Names{Stage::under_ground, "under-ground", "Under the ground"},
    Names{Stage::wall, "wall", "Wall base and wall"},
    Names{Stage::base, "base", "Base layers"},
    Names{Stage::coping, "coping", "Kerbs, coping and steps"},
    Names{Stage::paving, "paving", "Bedding and paving"},
    Names{Stage::joints, "joints", "Joints and edges"},
    Names{Stage::finish, "finish", "Finish and hand over"},
};

const Names& names_of(Stage stage) { return names[static_cast<std::size_t>(stage)]; }

// The rule's parts between a separator word, for instance " and ".
std::vector<std::string_view> parts(std::string_view rule, std::string_view separator) {
  std::vector<std::string_view> found;
  while (true) {
    const std::size_t at = rule.find(separator);
    found.push_back(rule.substr(0, at));
    if (at == std::string_view::npos) return found;
    rule.remove_prefix(at + separator.size());
  }
}
}  // namespace

std::string word(Stage stage) { return std::string(names_of(stage).word); }

std::string title(Stage stage) { return std::string(names_of(stage).title); }

std::optional<Stage> stage_of(std::string_view word) {
  for (const Names& name : names)
    if (name.word == word) return name.stage;
  return {};
}

std::vector<Stage> covers(Stage stage) {
  switch (stage) {
    case Stage::protect: return {};
    case Stage::dig: return {Stage::protect};
    case Stage::under_ground: return {Stage::dig};
    case Stage::wall: return {Stage::dig, Stage::under_ground};
    case Stage::base: return {Stage::dig, Stage::under_ground};
    case Stage::coping: return {Stage::base};
    case Stage::paving: return {Stage::base};
    case Stage::joints: return {Stage::paving, Stage::coping};
    case Stage::finish: return {Stage::wall, Stage::joints};
  }
  return {};
}

bool Facts::holds(std::string_view rule) const {
  if (rule.empty() || rule == "always") return true;
  return std::ranges::any_of(parts(rule, " or "), [this](std::string_view all_of) {
    return std::ranges::all_of(parts(all_of, " and "), [this](std::string_view word) {
      return word == "always" || std::ranges::find(words, word) != words.end();
    });
  });
}

std::vector<StageNotes> stage_notes(const catalogue::Catalogue& catalogue, const Facts& facts) {
  std::vector<StageNotes> all;
  for (const Stage stage : all_stages) {
    StageNotes notes{stage, {}, {}};
    for (const catalogue::HoldPoint& point : catalogue.hold_points)
      if (point.stage == word(stage) && facts.holds(point.applies)) notes.hold_points.push_back(point);
    for (const catalogue::Caution& caution : catalogue.cautions)
      if (caution.stage == word(stage) && facts.holds(caution.applies)) notes.cautions.push_back(caution);
    all.push_back(std::move(notes));
  }
  return all;
}

}  // namespace takeoff
