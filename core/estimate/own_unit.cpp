#include "estimate/own_unit.h"

#include <array>
#include <optional>

#include "units/quantity.h"

namespace estimate {

using catalogue::Item;
using takeoff::Term;
using takeoff::term;
using takeoff::Working;

namespace {

using Fixed = FixedUnit;
// Exact by definition: international foot and pound, the short ton of 2000 lb, the US gallon.
constexpr std::array fixed_units{
    Fixed{"ft", units::metres_per_foot, units::metre},
    Fixed{"m", 1, units::metre},
    Fixed{"sq ft", units::square_metres_per_square_foot, units::square_metre},
    Fixed{"sq yd", 9 * units::square_metres_per_square_foot, units::square_metre},
    Fixed{"m2", 1, units::square_metre},
    Fixed{"cu ft", units::cubic_metres_per_cubic_foot, units::cubic_metre},
    Fixed{"cu yd", units::cubic_metres_per_cubic_yard, units::cubic_metre},
    Fixed{"gal", units::cubic_metres_per_gallon, units::cubic_metre},
    Fixed{"l", 0.001, units::cubic_metre},
    Fixed{"m3", 1, units::cubic_metre},
    Fixed{"ton", units::kilograms_per_short_ton, units::kilogram},
    Fixed{"t", 1000, units::kilogram},
    Fixed{"lb", units::kilograms_per_pound, units::kilogram},
    Fixed{"kg", 1, units::kilogram},
    Fixed{"hour", 1, units::hour},
    Fixed{"h", 1, units::hour},
};

std::optional<Fixed> fixed(const std::string& word, double day_hours) {
  if (word == "day" && day_hours > 0) return Fixed{"day", day_hours, units::hour};
  return fixed_unit(word);
}

std::optional<Term> positive(std::string name, double value, units::Unit unit, std::string of) {
  if (!(value > 0)) return std::nullopt;
  return term(std::move(name), value, unit, std::move(of));
}

std::optional<Term> from_detail(const Item& item, const std::string& key, std::string name, double si,
                                units::Unit unit) {
  const auto value = item.number(key);
  return value ? positive(std::move(name), *value * si, unit, item.id + "/" + key) : std::nullopt;
}

// How much of `unit` one item.unit is.
std::optional<Term> one_of(const Item& item, units::Unit unit, double day_hours) {
  const auto known = fixed(item.unit, day_hours);
  if (known) {
    if (known->unit != unit) return std::nullopt;
    return term("one " + item.unit, known->si, unit, item.id + "/unit");
  }
  if (unit == units::metre && item.length) {
    const units::Length joint = item.joint.value_or(units::Length());
    return positive(joint > units::Length() ? "length of one with its joint" : "length of one",
                    (*item.length + joint).metres().si(), unit, item.id + "/length");
  }
  if (unit == units::square_metre && item.length && item.width)
    return positive("area of one", catalogue::module_area(item).si(), unit, item.id + "/length,width");
  if (unit == units::square_metre) {
    const auto covers = item.number("coverage_m2_per_l"), volume = item.number("volume_l");
    if (covers && volume)
      return positive("one covers", *covers * *volume, unit, item.id + "/coverage_m2_per_l,volume_l");
  }
  if (unit == units::cubic_metre) return from_detail(item, "volume_l", "volume of one", 0.001, unit);
  if (unit == units::kilogram && item.mass_kg)
    return positive("mass of one", *item.mass_kg, unit, item.id + "/mass_kg");
  return std::nullopt;
}

std::optional<Term> density(const Item& item, bool placed) {
  constexpr units::Unit unit = units::kilogram_per_cubic_metre;
  std::optional<Term> found;
  if (placed) found = from_detail(item, "compacted_density_kg_m3", "placed density", 1, unit);
  if (!found) found = from_detail(item, "loose_density_kg_m3", "loose density", 1, unit);
  if (!found) found = from_detail(item, "density_kg_m3", "density", 1, unit);
  if (!found && item.density_kg_m3) found = positive("density", *item.density_kg_m3, unit, item.id + "/density_kg_m3");
  return found;
}

std::optional<Working> divided(const Working& amount, const Item& item, double day_hours) {
  const auto one = one_of(item, amount.amount().unit, day_hours);
  return one ? std::optional(Working::quotient(amount, *one)) : std::nullopt;
}

// Through the other of volume and weight.
std::optional<Working> bridged(const Working& net, const Item& item, double day_hours) {
  const units::Unit unit = net.amount().unit;
  if (unit == units::cubic_metre) {
    const auto heavy = density(item, item.kind == "aggregate");
    return heavy ? divided(Working::product({net, *heavy}), item, day_hours) : std::nullopt;
  }
  if (unit != units::kilogram) return std::nullopt;
  const auto heavy = density(item, false);
  return heavy ? divided(Working::quotient(net, *heavy), item, day_hours) : std::nullopt;
}

}  // namespace

std::optional<FixedUnit> fixed_unit(std::string_view word) {
  for (const FixedUnit& known : fixed_units)
    if (known.word == word) return known;
  return std::nullopt;
}

problem::Result<Working> in_own_unit(const Working& net, const Item& item, double day_hours) {
  const units::Unit unit = net.amount().unit;
  std::optional<Working> own;
  if (unit == units::piece) {
    if (!fixed(item.unit, day_hours) || item.unit == "day") own = net;
  } else if (unit == units::cubic_metre && item.kind == "aggregate" && item.number("compacted_density_kg_m3") &&
             item.number("loose_density_kg_m3")) {
    const Working weight = Working::product({net, *density(item, true)});
    own = divided(weight, item, day_hours);
    if (!own) own = bridged(weight, item, day_hours);
  } else {
    own = divided(net, item, day_hours);
    if (!own) own = bridged(net, item, day_hours);
  }
  if (own) return *own;
  return problem::fault("unit-unknown",
                        "'" + item.id + "' is bought by the " + (item.unit.empty() ? "(no unit)" : item.unit) +
                            ", and its data do not say how much " + units::name(unit) + " that is",
                        "give its length, mass_kg, volume_l or density in the catalogue");
}

}  // namespace estimate
