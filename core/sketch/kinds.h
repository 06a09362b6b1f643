// What each hand draws: one table.
#pragma once

#include <span>

#include "sketch/tool.h"

namespace sketch {

enum class Form { outline, line, point };

// A word of the element (Level::what, EdgeRun::what ...) and its label.
struct What {
  const char* word;
  const char* label;
};

struct Drawing {
  Hand hand;
  const char* label;            // "Area", for the prompt
  const char* noun;             // "area", for the name of the edit
  std::span<const Form> forms;  // the first is taken unless another is chosen
  std::span<const What> whats;  // empty: the kind has no word
  const char* begin;            // the first sentence
};

std::span<const Drawing> drawings();
const Drawing* drawing(Hand hand);  // null for hands that draw nothing

}  // namespace sketch
