// How a number was made. The working is not a comment on the number: it computes it.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "units/amount.h"
#include "units/read_length.h"

namespace takeoff {

// One named quantity: "net area", 46.21 m2, of "A1"; "depth", 0.15 m, of "hybrid-foot/base". `of` leads back to an
// element id or to a field of the catalogue (item/field).
struct Term {
  std::string name;
  units::Amount amount;
  std::string of;
  bool operator==(const Term&) const = default;
};

// A value: a term, or a product, quotient, sum, difference, rounding up, least or greatest of workings. Units are
// multiplied and divided with the numbers; adding unlike units breaks a promise.
class Working {
 public:
  Working(Term term);  // NOLINT(google-explicit-constructor): a term is a working
  static Working product(std::vector<Working> factors);
  static Working quotient(Working dividend, Working divisor);
  static Working sum(std::vector<Working> parts);  // of none: 0 pieces
  static Working difference(Working whole, Working part);
  // Next whole number up; a value within 1e-9 above a whole number is that number (floating dust is no unit to buy).
  static Working up(Working inner);
  static Working greatest(std::vector<Working> parts);
  static Working least(std::vector<Working> parts);
  // The same working under a name of its own, so that a sum of many parts reads well: "net area of the field = ...".
  Working named(std::string name) const;

  units::Amount amount() const { return amount_; }

  // One row per term, outer operation first, in reading order: an operator ("", "x", "/", "+", "-", "up", "max", "min",
  // "="), depth in the tree.
  struct Row {
    std::string sign;
    Term term;
    int depth = 0;
  };
  std::vector<Row> rows() const;
  // One sentence: "net area 46.21 m2 x depth 0.15 m x placed density 2080 kg/m3 = 14417.5 kg". Numbers to 6 significant
  // figures, in the units that the job is read in (US: ft, sq ft, cu yd, lb, lb/cu ft). A named part that was explained
  // before is only named again.
  std::string sentence(units::System system = units::System::metric) const;
  std::vector<Term> terms() const;  // leaves only, in order
  bool operator==(const Working& other) const;

 private:
  enum class How { term, product, quotient, sum, difference, up, greatest, least };
  Working() = default;
  void rows_into(std::vector<Row>& rows, const std::string& sign, int depth) const;
  struct Telling;
  std::string words(Telling& telling, bool inside) const;
  How how_ = How::term;
  std::string name_;
  units::Amount amount_;
  std::string of_;
  std::shared_ptr<const std::vector<Working>> parts_;  // never changed once made, so copies share them
  const std::vector<Working>& parts() const;
};

Term term(std::string name, double value, units::Unit unit, std::string of = {});

}  // namespace takeoff
