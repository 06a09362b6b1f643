// The catalogue in the job book: what new jobs copy from. On the first start the book is made and filled from the
// starter catalogue that is compiled in.
#pragma once

#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "store/catalogue_changes.h"
#include "store/database.h"

namespace store {

class CatalogueBook {
 public:
  // The book in `folder`, made where there is none. While another program makes or changes it, opening waits up to ten
  // seconds and then refuses, naming who holds it. A QCoreApplication must live.
  static problem::Result<CatalogueBook> open(const std::string& folder = data_folder());

  // All that is offered for new work, as it stood at one moment; what is retired is left out. Rows that can't be an
  // item (someone changed the file by hand) are refused by name.
  problem::Result<catalogue::Catalogue> read();

  problem::Result<catalogue::Stock> stock();  // what is retired too

  // One change, all of its steps or none (catalogue::changed says what is refused), kept in the history.
  problem::Result<void> change(const catalogue::Change& change);
  // Takes back the last change that still stands, or does the last one taken back again, as a change of its own. False:
  // there is none. Refused where an entry is no longer as the change left it.
  problem::Result<bool> undo();
  problem::Result<bool> redo();
  // What `wanted` has and the book lacks or has otherwise is added or changed, as one change.
  problem::Result<void> put(const catalogue::Catalogue& wanted, const std::string& source);

  problem::Result<std::vector<ChangeRow>> history(const catalogue::Key& key);  // the oldest first
  // Every price that the item had, the oldest first; the one it has now is the last.
  problem::Result<std::vector<PricePoint>> price_history(const catalogue::Id& item);

  // Takes items in: one whose id the book has takes its place, others are added, the rest stays. All or nothing: an
  // item that can't be, an id twice, a mixed pack of pieces that the book will not have: refused, and the book is as
  // before.
  problem::Result<void> replace_items(const std::vector<catalogue::Item>& items);

 private:
  CatalogueBook(Database database, std::string folder) : database_(std::move(database)), folder_(std::move(folder)) {}
  problem::Result<void> write(const catalogue::Change& change, Act act, std::int64_t of);
  problem::Result<bool> step_back(Act act);
  Database database_;
  std::string folder_;
};

}  // namespace store
