// Draws elements that are outlines, lines or points: area, pool, wall, building, keep-out, edge, drain, removal,
// protection, site mark. One table says what each hand draws; the shape itself is the shaper's.
#pragma once

#include <memory>

#include "sketch/tool.h"

namespace sketch {

// Null for a hand that is not in the table.
std::unique_ptr<Tool> draw_tool(Hand hand);

// The names people know, by hand: "Area" for the prompt, "area" inside the name of an edit. Empty where a hand draws
// nothing.
std::string drawn_noun(Hand hand);

// The new element with an id of its own, put into the job and selected; the edit is named "Draw area A1".
Edit drawn(Hand hand, const plan::Job& job, plan::Kind kind);

}  // namespace sketch
