// Every word that the drawing tools say, in one place, so that a table can put them into another language. None is put
// together from parts but the names of edits (a verb, the kind, the id).
#pragma once

#include <string>
#include <vector>

namespace sketch {

// All labels and sentences of the tools, for the table of a language.
std::vector<std::string> all_words();

namespace words {
// Fields.
inline constexpr const char* angle_refused = "An angle is a number of degrees between -360 and 360, such as 45 or 22.5";
inline constexpr const char* number_refused = "This takes a plain number, such as 3 or 0.6";
}  // namespace words

}  // namespace sketch
