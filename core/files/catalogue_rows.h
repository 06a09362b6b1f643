// The items of a catalogue file before they are judged: the starter's items get their details and sizes from other
// files first.
#pragma once

#include <vector>

#include "catalogue/catalogue.h"
#include "files/csv.h"

namespace files {

struct ItemRow {
  catalogue::Item item;
  int line = 0;
};

// The cells of each row understood, ids differ; whether the item can be is `check_item_row`'s to say.
problem::Result<std::vector<ItemRow>> read_item_rows(std::string_view text, const std::string& file);

// catalogue::check with the line and the column that its fault belongs to.
problem::Result<void> check_item_row(const ItemRow& row, const std::string& file);

}  // namespace files
