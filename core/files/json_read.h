// JSON text as a tree of values that know where they stand in the text, so that every later fault can name its place.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "problem/problem.h"

namespace files {

inline constexpr int most_levels = 64;         // lists and objects inside each other
inline constexpr int most_values = 1'000'000;  // lists and objects count too

// Where something stands in a text: both count from 1, columns in characters (code points).
struct Spot {
  int line = 0;
  int column = 0;
};

enum class Sort { null, boolean, number, string, list, object };

struct Key {
  std::string name;
  Spot spot;
};

// One value. A number keeps its text as written ("1.50"), because whoever reads it decides what it has to be.
struct Value {
  Sort sort = Sort::null;
  bool truth = false;             // of a boolean
  std::string text{};             // of a string (decoded) or a number (as written)
  std::vector<Key> keys{};        // of an object; each once
  std::vector<Value> children{};  // of a list or an object, there one for each key
  Spot spot{};                    // its first character

  const Value* find(std::string_view name) const;  // of an object; nullptr if not there
};

// The whole text must be one JSON value (RFC 8259, UTF-8; a byte order mark before it is passed over). Refused, each
// with line and column: anything else, a doubled key in one object, more than most_levels, most_values or most_bytes
// (files.h). Codes: json-syntax, json-ends-early, json-deep, json-many, json-large, json-doubled-key.
problem::Result<Value> parse_json(std::string_view text, const std::string& file);

// The place of a spot in a file, and of the file as a whole.
problem::Place place_in(const std::string& file, Spot spot = {});

// "a number", "a list" ...: for sentences about what was found.
std::string sort_name(Sort sort);

// Text of a file inside a sentence: in quotes, control characters replaced, cut after 60 characters.
std::string in_quotes(std::string_view text);

}  // namespace files
