// Plain text for people to read on paper: columns that line up, lines that end before the edge.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace files {

inline constexpr std::size_t sheet_width = 110;

// How many columns a text takes: one for each letter of its UTF-8, not for each byte.
std::size_t columns_of(std::string_view text);

// Filled up with spaces to so many columns, text at the left or at the right. A longer text stays as it is.
std::string at_left(std::string_view text, std::size_t columns);
std::string at_right(std::string_view text, std::size_t columns);

// Cut to so many columns, with "..." where something is left out.
std::string cut(std::string_view text, std::size_t columns);

// The text in lines of at most sheet_width columns, broken at spaces: the first after `first`, the others after so many
// spaces. A word longer than a line has a line of its own. Line ends inside the text count as spaces; control letters
// are left out. Each line ends with a line feed.
std::string wrapped(std::string_view text, std::string_view first, std::size_t others);

// The title of a part of the sheet, an empty line above it and a rule under it.
std::string section(std::string_view title);

}  // namespace files
