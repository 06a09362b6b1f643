// The catalogue as a value: everything a job chooses from. A job owns the part that it uses; the book's is a source of
// copies.
#pragma once

#include <map>
#include <memory>
#include <string>

#include "catalogue/build_up.h"
#include "catalogue/item.h"
#include "catalogue/pattern.h"
#include "catalogue/rules.h"

namespace catalogue {

struct Catalogue {
  std::map<Id, std::shared_ptr<const Item>> items;
  std::map<Id, Pattern> patterns;
  std::map<Id, BuildUp> build_ups;
  std::map<Id, Limit> limits;
  std::map<Id, Rate> rates;
  std::map<Id, Supplier> suppliers;
  std::vector<Junction> junctions;  // in order: the first that fits holds
  std::vector<HoldPoint> hold_points;
  std::vector<Caution> cautions;
  std::vector<SiteRule> site_rules;
  std::string note;  // "starter catalogue: invented prices", shown wherever its prices are in use

  const Item* item(const Id& id) const;  // nullptr if not there
  const Pattern* pattern(const Id& id) const;
  const BuildUp* build_up(const Id& id) const;
  const Rate* rate(const Id& id) const;
  // A limit's usual value as a Length (unit in, ft or mm) or a number (share, ratio, %); `otherwise` where it is not
  // given.
  units::Length length_limit(const Id& id, units::Length otherwise) const;
  double number_limit(const Id& id, double otherwise) const;
};

bool same(const Catalogue& a, const Catalogue& b);  // by value, items too

// One sentence for an item that can't be: pack below 1, price below 0 that is no credit, both densities and a factor
// (loose_per_compacted beside loose_density and compacted_density that disagree), sizes of 0, breakage outside 0..1,
// unknown kind.
problem::Result<void> check(const Item& item);

}  // namespace catalogue
