// English words of core with numbers in them, in the language of the sheet: "corner 3" is looked up as "corner %1", and
// its 3 put back.
#pragma once

#include "sheets/printed.h"

namespace sheets {

// At most nine whole numbers; words with more of them, and words that no translation knows, stay English.
std::string numbered(const Printed& printed, const std::string& english);

// With its first letter large, where that is one of ASCII.
std::string capital(std::string words);

// The same with a capital at its start and a full stop at its end.
std::string as_sentence(const Printed& printed, const std::string& english);

}  // namespace sheets
