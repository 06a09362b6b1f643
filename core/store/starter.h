// The starter catalogue that is compiled into the program: invented, brandless, and said to be so.
#pragma once

#include <map>
#include <string>

namespace store {

// Path under resources/ -> text, as files::read_starter takes them.
std::map<std::string, std::string> starter_texts();

}  // namespace store
