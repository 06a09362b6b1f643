// A tree of values as JSON text, always the same text for the same tree.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "files/json_read.h"

namespace files {

// Makers of values for writing. Texts must be UTF-8, numbers finite; doubles are written in the shortest form that
// reads back as the same number.
Value text_value(std::string_view text);
Value number_value(double number);
Value number_value(std::int64_t number);
Value truth_value(bool truth);
Value null_value();
Value list_value();
Value object_value();

// Adds a field at the end of an object; the name must be new there.
void add(Value& object, std::string_view name, Value value);
// Adds an item at the end of a list.
void add(Value& list, Value value);

// A value that fits into a line of 100 characters stands on one line; a longer list or object has a line for each of
// its children, two spaces further in. Ends with a line feed. Control characters are written as \u escapes, all else as
// it is.
std::string write_json(const Value& value);

// An object on one line, however long, less the field `without`; no line feed at its end.
std::string write_on_one_line(const Value& object, std::string_view without);

}  // namespace files
