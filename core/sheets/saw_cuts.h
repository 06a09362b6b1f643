// All cuts of a job as whoever stands at the saw wants them: equal settings together, wherever the pieces go.
#pragma once

#include <string>
#include <vector>

#include "sheets/printed.h"

namespace sheets {

// One setting of the saw, and how many pieces are cut at it. Lengths in metres.
struct SawCut {
  catalogue::Id item;
  std::string what;     // English, one of a few: "across", "lengthwise", "taper", "mitre" ...
  std::string keep;     // which part is kept, where it matters: left, right, middle
  bool marked = false;  // each is marked in its place: curves, notches, oblique ends
  bool from_offcut = false;
  double least = 0;  // of the piece that is kept: the fence; 0: nothing to set it by
  double most = 0;   // the longest of those at one angle; of a taper the wide end
  double angle = 0;  // radians off square
  int pieces = 0;
  double metres = 0;     // of saw cut, all together
  double thickness = 0;  // through which the saw goes
  struct Where {
    plan::ElementId of;
    std::string place;  // in the language of the sheet, empty where the tag says enough
    int pieces = 0;
  };
  std::vector<Where> where;
};

// By item and thickness; of each the square cuts first, longest piece first, then by angle, then what is marked in its
// place. Square cuts are told apart by the fence to 1/16 in (1 mm in metric jobs), oblique ones by the degree.
// Fields and borders of areas, coping, kerbs, and what the takeoff lists of blocks, caps and steps.
std::vector<SawCut> saw_cuts(const Printed& printed);

// How deep a cut the saw of the job needs: passes of the blade, 0 where it does not get through or none is chosen.
int passes_through(const Printed& printed, double thickness);

// Of "saw/N": row N of saw_cuts; nothing of any other list.
std::optional<std::string> working_of_saw(const Printed& printed, const std::string& list, const std::string& number);

}  // namespace sheets
