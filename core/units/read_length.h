// Lengths as people type them, and back.
//
// Grammar (all forms mix; a sum is + - * / and brackets over them):
//   12' 6 1/2"   12'-6"   6 1/2"   3/4   -10'5" = -(10'5")   12.5 ft   3.81 m   38 cm   12 mm   2 1/2 in
// Straight, curly and prime marks, with or without spaces; ft, feet, foot, in, inch, inches, m, cm, mm as words. A bare
// number is in the unit that the field shows (Bare). "12 6.5" in a feet-and-inches field is 12 ft 6.5 in.
// Whatever is not understood to the last letter is refused with the place of the fault, never read as 0: empty text,
// "12,5", "1'2'", "6 1/0", "5 apples", a product of two lengths, nan, values past 1e9 m.
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
// 64ths, else decimals (12' 6.00390625"); metric: 3.81 m or 6.003125 mm. A negative length has one leading minus.
std::string write_length(Length length, System system);

// For people: US to the nearest 1/16 in (12' 6 1/2"; under a foot 6 1/2"), metric to the millimetre (3.810 m).
std::string show_length(Length length, System system);

}  // namespace units
