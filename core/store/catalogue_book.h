// The catalogue in the job book: what new jobs copy from. On the first start the book is made and filled from the
// starter catalogue that is compiled in.
#pragma once

#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "store/database.h"

namespace store {

class CatalogueBook {
 public:
  // The book in `folder`, made where there is none. While another program makes or changes it, opening waits up to ten
  // seconds and then refuses, naming who holds it. A QCoreApplication must live.
  static problem::Result<CatalogueBook> open(const std::string& folder = data_folder());

  // All of it, as it stood at one moment. Rows that can't be an item (someone changed the file by hand) are refused by
  // name.
  problem::Result<catalogue::Catalogue> read();

  // Takes items in: one whose id the book has takes its place, others are added, the rest stays. All or nothing: an
  // item that can't be, an id twice, a mixed pack of pieces that the book will not have: refused, and the book is as
  // before.
  problem::Result<void> replace_items(const std::vector<catalogue::Item>& items);

 private:
  CatalogueBook(Database database, std::string folder) : database_(std::move(database)), folder_(std::move(folder)) {}
  Database database_;
  std::string folder_;
};

}  // namespace store
