// The program that the test of a full disk starts: it has a disk of its own, a small one in memory, on which a book
// lies.
#pragma once

#include <string>

namespace store {

inline constexpr const char* small_disk_word = "small-disk";  // small-disk FOLDER
inline constexpr int no_disk = 4;                             // ends with this where no disk can be had

// Fills the disk, edits and saves, makes room again. Prints a line for each step that went as it must, and ends with 0
// where all did.
int on_a_small_disk(const std::string& folder);

}  // namespace store
