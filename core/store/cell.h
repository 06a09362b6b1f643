// One cell of a row as what it is meant to be; another sort, or none, counts as empty or 0. STRICT tables don't let
// that happen but for NULL.
#pragma once

#include <string>

#include "store/database.h"

namespace store {

inline const std::string& text_of(const Bound& cell) {
  static const std::string none;
  const auto* text = std::get_if<std::string>(&cell);
  return text == nullptr ? none : *text;
}

inline std::int64_t whole_of(const Bound& cell) {
  const auto* whole = std::get_if<std::int64_t>(&cell);
  return whole == nullptr ? 0 : *whole;
}

}  // namespace store
