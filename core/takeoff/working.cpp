#include "takeoff/working.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <utility>

#include "problem/ensure.h"
#include "units/quantity.h"

namespace takeoff {

using problem::ensure;
using units::Amount;

Term term(std::string name, double value, units::Unit unit, std::string of) {
  return {std::move(name), {value, unit}, std::move(of)};
}

Working::Working(Term term) : name_(std::move(term.name)), amount_(term.amount), of_(std::move(term.of)) {
  ensure(std::isfinite(amount_.value), "a term is a finite number");
}

static std::shared_ptr<const std::vector<Working>> kept(std::vector<Working> parts) {
  return std::make_shared<const std::vector<Working>>(std::move(parts));
}

const std::vector<Working>& Working::parts() const {
  static const std::vector<Working> none;
  return parts_ ? *parts_ : none;
}

bool Working::operator==(const Working& other) const {
  return how_ == other.how_ && name_ == other.name_ && amount_ == other.amount_ && of_ == other.of_ &&
         (parts_ == other.parts_ || parts() == other.parts());
}

Working Working::product(std::vector<Working> factors) {
  Working made;
  made.how_ = How::product;
  made.amount_ = {1, units::piece};
  for (const Working& factor : factors)
    made.amount_ = {made.amount_.value * factor.amount_.value, made.amount_.unit * factor.amount_.unit};
  made.parts_ = kept(std::move(factors));
  return made;
}

Working Working::quotient(Working dividend, Working divisor) {
  ensure(divisor.amount_.value != 0, "a working is not divided by 0");
  Working made;
  made.how_ = How::quotient;
  made.amount_ = {dividend.amount_.value / divisor.amount_.value, dividend.amount_.unit / divisor.amount_.unit};
  made.parts_ = kept({std::move(dividend), std::move(divisor)});
  return made;
}

static void ensure_alike(const std::vector<Working>& parts) {
  for (const Working& part : parts)
    ensure(part.amount().unit == parts.front().amount().unit, "only like units are added or compared");
}

Working Working::sum(std::vector<Working> parts) {
  ensure_alike(parts);
  Working made;
  made.how_ = How::sum;
  if (!parts.empty()) made.amount_.unit = parts.front().amount_.unit;
  for (const Working& part : parts) made.amount_.value += part.amount_.value;
  made.parts_ = kept(std::move(parts));
  return made;
}

Working Working::difference(Working whole, Working part) {
  std::vector<Working> parts{std::move(whole), std::move(part)};
  ensure_alike(parts);
  Working made;
  made.how_ = How::difference;
  made.amount_ = {parts[0].amount_.value - parts[1].amount_.value, parts[0].amount_.unit};
  made.parts_ = kept(std::move(parts));
  return made;
}

Working Working::up(Working inner) {
  Working made;
  made.how_ = How::up;
  made.amount_ = {std::ceil(inner.amount_.value - 1e-9), inner.amount_.unit};
  made.parts_ = kept({std::move(inner)});
  return made;
}

Working Working::greatest(std::vector<Working> parts) {
  ensure(!parts.empty(), "the greatest of something");
  ensure_alike(parts);
  Working made;
  made.how_ = How::greatest;
  made.amount_ = parts.front().amount_;
  for (const Working& part : parts) made.amount_.value = std::max(made.amount_.value, part.amount_.value);
  made.parts_ = kept(std::move(parts));
  return made;
}

Working Working::least(std::vector<Working> parts) {
  ensure(!parts.empty(), "the least of something");
  ensure_alike(parts);
  Working made;
  made.how_ = How::least;
  made.amount_ = parts.front().amount_;
  for (const Working& part : parts) made.amount_.value = std::min(made.amount_.value, part.amount_.value);
  made.parts_ = kept(std::move(parts));
  return made;
}

Working Working::named(std::string name) const {
  Working made = *this;
  made.name_ = std::move(name);
  return made;
}

std::vector<Working::Row> Working::rows() const {
  std::vector<Row> rows;
  rows_into(rows, "", 0);
  return rows;
}

void Working::rows_into(std::vector<Row>& rows, const std::string& sign, int depth) const {
  if (how_ == How::term) {
    rows.push_back({sign, {name_, amount_, of_}, depth});
    return;
  }
  const char* inner_sign = "";
  switch (how_) {
    case How::term: break;
    case How::product: inner_sign = "x"; break;
    case How::quotient: inner_sign = "/"; break;
    case How::sum: inner_sign = "+"; break;
    case How::difference: inner_sign = "-"; break;
    case How::up: inner_sign = "up"; break;
    case How::greatest: inner_sign = "max"; break;
    case How::least: inner_sign = "min"; break;
  }
  // A nested or named result stands on a row of its own, above what it was made from.
  const bool own_row = depth > 0 || !name_.empty();
  if (own_row) rows.push_back({sign, {name_, amount_, of_}, depth});
  bool first = how_ != How::up && how_ != How::greatest && how_ != How::least;
  for (const Working& part : parts()) {
    part.rows_into(rows, first ? "" : inner_sign, depth + (own_row ? 1 : 0));
    first = false;
  }
}

// How a sentence is told: in whose units, and which named parts were explained already.
struct Working::Telling {
  units::System system;
  std::vector<const Working*> explained;

  bool knows(const Working& part) {
    if (std::ranges::any_of(explained, [&part](const Working* known) { return *known == part; })) return true;
    explained.push_back(&part);
    return false;
  }
};

namespace {

struct InUs {
  units::Unit unit;
  double si;  // of one
  const char* name;
  double from = 0;  // of SI: less is told in the next row of the same unit
};
constexpr InUs in_us[] = {
    // Nobody thinks of the voids of a block, the bead of a tube or the joint of a cap in yards and square feet.
    {units::metre, units::metres_per_foot, "ft", units::metres_per_foot},
    {units::metre, units::metres_per_inch, "in"},
    {units::square_metre, units::square_metres_per_square_foot, "sq ft", units::square_metres_per_square_foot / 10},
    {units::square_metre, units::metres_per_inch* units::metres_per_inch, "sq in"},
    {units::cubic_metre, units::cubic_metres_per_cubic_yard, "cu yd", units::cubic_metres_per_cubic_yard / 20},
    {units::cubic_metre, units::cubic_metres_per_cubic_foot, "cu ft", units::cubic_metres_per_cubic_foot / 20},
    {units::cubic_metre, units::cubic_metres_per_fluid_ounce, "fl oz"},
    {units::kilogram, units::kilograms_per_pound, "lb"},
    {units::kilogram_per_cubic_metre, units::kilograms_per_pound / units::cubic_metres_per_cubic_foot, "lb/cu ft"},
    {units::kilogram / units::square_metre, units::kilograms_per_pound / units::square_metres_per_square_foot,
     "lb/sq ft"},
    {units::newton, units::newtons_per_pound, "lb"},
    {units::newton_per_metre, units::newtons_per_pound / units::metres_per_foot, "lb/ft"},
    {units::newton_per_square_metre, units::newtons_per_pound / units::square_metres_per_square_foot, "lb/sq ft"},
    {units::newton_per_cubic_metre, units::newtons_per_pound / units::cubic_metres_per_cubic_foot, "lb/cu ft"},
    {units::hour / units::metre, 1 / units::metres_per_foot, "h/ft"},
    {units::hour / units::square_metre, 1 / units::square_metres_per_square_foot, "h/sq ft"},
    {units::hour / units::cubic_metre, 1 / units::cubic_metres_per_cubic_yard, "h/cu yd"},
};

std::string number_in_words(Amount amount, units::System system) {
  std::string unit = amount.unit == units::piece ? "" : units::name(amount.unit);
  if (system == units::System::us) {
    const double size = std::abs(amount.value);
    for (const InUs& us : in_us) {
      if (!(us.unit == amount.unit) || (size > 0 && size < us.from - 1e-9)) continue;
      amount.value /= us.si;
      unit = us.name;
      break;
    }
  }
  char digits[40];
  // US figures come out of SI ones: a sixth digit would only show the conversion.
  const auto end = std::to_chars(digits, digits + sizeof digits, amount.value, std::chars_format::general,
                                 system == units::System::us ? 5 : 6);
  return std::string(digits, end.ptr) + (unit.empty() ? "" : " " + unit);
}

// A name that ends in a figure is kept from running into the number: "course 4: 1.5 m". A name that is the number is
// said once.
std::string with_name(const std::string& name, const std::string& number) {
  if (name.empty() || name == number) return number;
  const char end = name.back();
  const bool figure = (end >= '0' && end <= '9') || end == '"' || end == '\'';
  return name + (figure ? ": " : " ") + number;
}

}  // namespace

std::string Working::words(Telling& telling, bool inside) const {
  const auto number = [&] { return number_in_words(amount_, telling.system); };
  if (how_ == How::term) return with_name(name_, number());
  if (inside && !name_.empty() && telling.knows(*this)) return with_name(name_, number());
  const auto joined = [&](const char* between) {
    std::string text;
    for (std::size_t i = 0; i < parts().size(); ++i) text += (i ? between : "") + parts()[i].words(telling, true);
    return text;
  };
  std::string text;
  switch (how_) {
    case How::term: break;
    case How::product: text = joined(" x "); break;
    case How::quotient: text = joined(" / "); break;
    case How::sum: text = parts().empty() ? "0" : joined(" + "); break;
    case How::difference: text = joined(" - "); break;
    case How::up: return "up(" + parts()[0].words(telling, false) + ")";
    case How::greatest: return "greatest(" + joined(", ") + ")";
    case How::least: return "least(" + joined(", ") + ")";
  }
  if (!name_.empty()) text = name_ + ": " + text;
  const bool single = parts().size() == 1;
  return inside && !single ? "(" + text + ")" : text;
}

std::string Working::sentence(units::System system) const {
  Telling telling{system, {}};
  if (how_ == How::term) return words(telling, false);
  return words(telling, false) + " = " + number_in_words(amount_, system);
}

std::vector<Term> Working::terms() const {
  if (how_ == How::term) return {{name_, amount_, of_}};
  std::vector<Term> all;
  for (const Working& part : parts())
    for (Term& leaf : part.terms()) all.push_back(std::move(leaf));
  return all;
}

}  // namespace takeoff
