// Lengths as people type them, and back.
//
// Grammar (all forms mix; a sum is + - * / and brackets over them):
//   12' 6 1/2"   12'-6"   6 1/2"   3/4   -10'5" = -(10'5")   12.5 ft   3.81 m   38 cm   12 mm   2 1/2 in
// Straight, curly and prime marks, with or without spaces; ft, feet, foot, in, inch, inches, m, cm, mm as words, in
// either case; 1/2 also as one letter. A bare number is in the unit that the field shows (Bare); multiplied or divided
// it is a plain number: 3 * 12' is 36'. "12 6.5" in a feet-and-inches field is 12 ft 6.5 in, and 12' 6 is 12 ft 6 in.
// Text is added up exactly and rounded once, to the nearest step, halves away from zero.
//
// Whatever is not understood to the last letter is refused with the place of the fault (Place::column, in letters from
// 1), never read as 0: empty text, "12,5", "1'2'", "6 1/0", "5 apples", a product of two lengths, nan, values past
// 1e9 m. So is what two people could read in two ways:
//   12' - 6"    feet and inches, or less 6 in      -> 12'-6" or (12') - 6"
//   6-1/2"      6 1/2, or 6 less 1/2               -> 6 1/2" or 6 - 1/2"
//   12'/3/4     12' over 3/4, or (12'/3) over 4    -> brackets
//   6 1/2, 3/4, 12-6 bare in a feet-and-inches field: parts of feet or of inches
// and inches of 12 or more after feet.
#pragma once

#include <string>
#include <string_view>

#include "problem/problem.h"
#include "units/length.h"

namespace units {

enum class Bare { metres, millimetres, feet, inches, feet_and_inches };
enum class System { us, metric };

problem::Result<Length> read_length(std::string_view text, Bare bare);

// In full: reading it gives the same Length, to the step, under every Bare. US: 12' 6 1/2" where the inches are whole
// 64ths, else the fewest decimals that read back (12' 6.0039"); metric: 3.81 m for whole millimetres from 1 m on, else
// 6.003125 mm. A negative length has one leading minus. Lengths past 1e9 m are written too, but read_length refuses
// them.
std::string write_length(Length length, System system);

// For people: US to the nearest 1/16 in (12' 6 1/2"; under a foot 6 1/2"), metric to the millimetre (3.810 m; under a
// metre 38 mm). Halves go away from zero.
std::string show_length(Length length, System system);

}  // namespace units
