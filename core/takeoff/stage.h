// The order of building. Stages are data with a fixed order; hold points and cautions come from the catalogue and apply
// by rule.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.h"
#include "plan/site.h"

namespace takeoff {

enum class Stage { protect, dig, under_ground, wall, base, coping, paving, joints, finish };
inline constexpr std::array all_stages{Stage::protect, Stage::dig,    Stage::under_ground, Stage::wall,  Stage::base,
                                       Stage::coping,  Stage::paving, Stage::joints,       Stage::finish};

std::string word(
    Stage stage);  // "protect", "dig", "under-ground", "wall", "base", "coping", "paving", "joints", "finish"
std::string title(
    Stage stage);  // "Protect and remove", "Dig", "Under the ground", "Wall base and wall", "Base layers",
                   // "Kerbs, coping and steps", "Bedding and paving", "Joints and edges", "Finish and hand over"
std::optional<Stage> stage_of(std::string_view word);
// The stages that this one covers: what must have been looked at before it starts.
std::vector<Stage> covers(Stage stage);

// What is true of this plan, for the rules "applies" of hold points and cautions. Each is one word.
struct Facts {
  std::vector<std::string> words;  // always, pool, coping, building, dig, base, open-base, dense-base, fabric, slab,
                                   // wall, pipe, sleeve, laid-units, sealed-joint, polymer, cuts, heavy-unit, bonding,
                                   // removal, tree, buried-service, kerb, steps, acid, overlay ...
  bool holds(std::string_view rule) const;  // "pool", or several joined by " and " / " or "
};

struct StageNotes {
  Stage stage = Stage::protect;
  std::vector<catalogue::HoldPoint> hold_points;
  std::vector<catalogue::Caution> cautions;
};
// Every stage in order, with what of the catalogue's hold points and cautions applies.
std::vector<StageNotes> stage_notes(const catalogue::Catalogue& catalogue, const Facts& facts);

}  // namespace takeoff
