// Changes of the book's catalogue as values: an entry before and after. What is retired stays in the book, with all
// that names it in old jobs, and is not offered for new work.
#pragma once

#include <compare>
#include <set>
#include <string_view>
#include <variant>

#include "catalogue/catalogue.h"

namespace catalogue {

// One row of any kind. Their order is the order of `kind_words`.
using Entry = std::variant<Item, Pattern, BuildUp, Limit, Rate, Supplier, Junction, HoldPoint, Caution, SiteRule>;
const std::vector<std::string>& kind_words();  // "item", "pattern", "build-up" ...

// Hold points and cautions have no id of their own: theirs is the stage and what is said.
struct Key {
  std::size_t kind = 0;  // index of `Entry`
  Id id;
  auto operator<=>(const Key&) const = default;
};
Key key_of(const Entry& entry);

struct Stock {
  Catalogue all;
  std::set<Key> retired;
};
Catalogue offered(const Stock& stock);  // without what is retired

struct Kept {
  Entry entry;
  bool retired = false;
  bool operator==(const Kept&) const = default;
};
std::optional<Kept> find(const Stock& stock, const Key& key);
std::vector<Kept> entries(const Stock& stock, std::size_t kind);  // by id, lists in their order

// No `before`: it is new. No `after`: it goes (only by taking back that it came). `source` says where it comes from:
// "typed", or the name of a file.
struct Step {
  std::optional<Kept> before;
  std::optional<Kept> after;
  bool operator==(const Step&) const = default;
};
struct Change {
  std::vector<Step> steps;
  std::string source = "typed";
};
Change reversed(const Change& change);

// The stock after all steps, or the first fault and nothing done. Refused: an entry that is not as `before` says
// (someone else changed it meanwhile), an id that is taken or would change, an entry that can't be, a pack or build-up
// of items that are not there, and something offered that names what is retired.
problem::Result<Stock> changed(const Stock& stock, const Change& change);

// One sentence for an entry that can't be, whatever its kind.
problem::Result<void> check(const Entry& entry);

// The same under another id, to be given to a Step without `before`. Of a hold point or caution: with the id behind
// what it says.
Entry copied(const Entry& entry, const Id& id);

// The steps that bring the stock to have everything that `wanted` has; what the stock has besides stays, and what was
// retired stays so.
Change change_to(const Stock& stock, const Catalogue& wanted, const std::string& source);

}  // namespace catalogue
