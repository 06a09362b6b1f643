// A section as a drawing to print: its leaders as notes in the sheet's language, the dimensions that are read off it.
#pragma once

#include "sheets/printed.h"
#include "sheets/section_figure.h"

namespace sheets {

// A leader's words: "Overhang: 1 1/2″". Names of items in the sheet's language, in short.
std::string leader_words(const Printed& printed, const Leader& leader);

// Drawn at the largest usual scale at which it fits into so many mm with its notes and a title; its title says at
// which, and a scale bar stands under it.
Drawing section_drawing(const Printed& printed, const plan::ElementId& of, const Section& section, double wide_mm,
                        double high_mm);

// "paved area", "kerb", "pipe" ...: what an element is, in the sheet's language.
std::string kind_words(const Printed& printed, const plan::Kind& kind);

}  // namespace sheets
