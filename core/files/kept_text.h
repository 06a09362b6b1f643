// What is kept of an estimate as a text, and back: JSON with its fields always in the same order, money in whole coins,
// other numbers in the shortest form that reads back as the same number.
#pragma once

#include <string>
#include <string_view>

#include "estimate/kept.h"
#include "problem/problem.h"

namespace files {

// Texts must be UTF-8 and numbers finite; then write and read is the identity.
std::string write_kept(const estimate::Kept& kept);

// Refused with line and column: what is no such text, an unknown field, a format newer than this program's, a sum past
// 1e15 coins. `file` is what the sentence calls it.
problem::Result<estimate::Kept> read_kept(std::string_view text, const std::string& file);

}  // namespace files
