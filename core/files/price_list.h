// A supplier's list of prices, held against the catalogue before anything is changed: what each row would do, by how
// much, and why some rows do nothing. Prices are exact; nothing is rounded but the per cent that is shown.
//
// A CSV with a head line. Columns go by name, in any order, whatever the case; underscores and spaces are the same:
//
//   which item   item, item id, id             the catalogue's id
//                supplier number, item number, part number, article, number, code
//                                              the supplier's own, as the item's detail supplier_number has it
//   price        price, unit price, net price, list price
//   per          price unit, per, uom, unit    as the catalogue writes it, or as the trade does: ea, sf, lf, cy
//   date         price date, date, valid from  2026-03-01
//   besides      name, name en, description; pack, pieces per pack, pack size; supplier
//
// One of the first two, a price and a unit must be there. What else the file has is left out and told. An exported
// catalogue is such a list.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalogue/change.h"

namespace files {

// `changes` and `confirmed` (the same price on a newer date) can be put into the catalogue, the others can't.
enum class PriceFate {
  changes,
  confirmed,
  same,
  unknown,     // no item has that number
  ambiguous,   // several items have it
  other_unit,  // the item's price is per something else: turning one into the other is not the file's to do
  doubled,     // another row has the item too, at another price; or the same again
  no_price,    // the cell is empty
  unreadable   // a cell can't be understood, or the item can't have such a price: `why`
};

struct PriceRow {
  int line = 0;
  std::string number;  // as the file names the item
  std::string name;    // as the file calls it
  catalogue::Id item;  // empty: none
  PriceFate fate = PriceFate::unknown;
  std::optional<catalogue::Price> before;  // the catalogue's
  catalogue::Price after;                  // the file's, its unit as the catalogue writes it
  std::optional<problem::Problem> why;     // of `unreadable` and `doubled`

  // What a person should look at before the row is taken; none of it keeps the row from being taken.
  bool large = false;      // more than half up or down
  bool older = false;      // the catalogue has a price of a later date
  bool by_others = false;  // so far the item is supplied by others, at no price
  bool retired = false;
  int other_pack = 0;  // pieces to a pack where the catalogue has others; the pack stays as it is

  bool can_be_taken() const { return fate == PriceFate::changes || fate == PriceFate::confirmed; }
  bool to_look_at() const { return large || older || by_others || retired || other_pack > 0; }
  std::optional<double> percent() const;  // by how much; nothing where the two can't be held together
};

struct PriceList {
  std::string file;
  std::vector<PriceRow> rows;         // all of them, in the file's order
  std::vector<std::string> left_out;  // columns that nothing is made of
};

// `today` is the date of prices where the file gives none (2026-03-01). Refused with line and reason: what is no CSV
// (csv.h), a needed column that is missing, a file without rows.
problem::Result<PriceList> read_price_list(std::string_view text, const std::string& file,
                                           const catalogue::Stock& stock, const std::string& today);

// The rows of these places, as one change whose source is the file's name. Rows that can't be taken are passed over.
// `stock` is the one that the list was held against: where the book has gone on since, it refuses the change.
catalogue::Change price_change(const catalogue::Stock& stock, const PriceList& list,
                               const std::vector<std::size_t>& chosen);

// Of the item's details; where it stands.
inline constexpr const char* supplier_number = "supplier_number";

}  // namespace files
