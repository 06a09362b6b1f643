#include "takeoff/walls/glue.h"

#include <numbers>

#include "takeoff/edges/notes.h"

namespace takeoff::walls {

double bead_length(double volume_m3, double diameter) {
  return volume_m3 / (std::numbers::pi * diameter * diameter / 4);
}

void add_glue(const plan::Job& job, const plan::Id& adhesive, Stage stage, const std::string& text,
              const plan::ElementId& of, const Working& glued, Share& share) {
  if (adhesive.empty() || glued.amount().value <= 0) return;
  const catalogue::Item* item = edges::wanted(job, adhesive, text, of, share);
  if (!item) return;
  const double diameter = job.catalogue->length_limit("adhesive-bead", units::Length::inch_64ths(16)).metres().si();
  const double beads = job.catalogue->number_limit("adhesive-beads", 2);
  const double section = std::numbers::pi * diameter * diameter / 4;
  const Working volume = Working::product({glued, term("beads", beads, units::piece, "adhesive-beads"),
                                           term("section of a bead", section, units::square_metre, "adhesive-bead")});
  share.lines.push_back({stage, adhesive, text, {of}, volume, {}, false});
  const std::optional<double> litres = item->number("volume_l");
  if (!litres || *litres <= 0) return;
  const Working tubes = Working::up(
      Working::quotient(volume, term("volume of one", *litres / 1000, units::cubic_metre, adhesive + "/volume_l")));
  share.measures.put("adhesive_tubes", tubes.amount().value);
}

}  // namespace takeoff::walls
