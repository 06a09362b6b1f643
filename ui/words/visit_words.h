// The sentences of core's list of the site visit that are marked for translation.
#pragma once

#include <string>
#include <vector>

namespace ui {

std::vector<std::string> words_of_the_visit();  // for the test that holds them against core's

}  // namespace ui
