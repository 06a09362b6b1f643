// A catalogue into the tables and out of them. None of these begins or ends a transaction.
#pragma once

#include "catalogue/catalogue.h"
#include "store/database.h"

namespace store {

problem::Result<void> put_item(Database& database, const catalogue::Item& item);  // in place of the one with its id
problem::Result<void> put_catalogue(Database& database, const catalogue::Catalogue& catalogue);  // into empty tables
// All entries of one kind (the index in catalogue::Entry) in place of those that the tables have.
problem::Result<void> replace_kind(Database& database, const catalogue::Catalogue& catalogue, std::size_t kind);
problem::Result<catalogue::Catalogue> take_catalogue(Database& database);

}  // namespace store
