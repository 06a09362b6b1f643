#include "takeoff/working.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <utility>

#include "problem/ensure.h"

namespace takeoff {

using problem::ensure;
using units::Amount;

Term term(std::string name, double value, units::Unit unit, std::string of) {
  return {std::move(name), {value, unit}, std::move(of)};
}

Working::Working(Term term) : name_(std::move(term.name)), amount_(term.amount), of_(std::move(term.of)) {
  ensure(std::isfinite(amount_.value), "a term is a finite number");
}

Working Working::product(std::vector<Working> factors) {
  Working made;
  made.how_ = How::product;
  made.amount_ = {1, units::piece};
  for (const Working& factor : factors)
    made.amount_ = {made.amount_.value * factor.amount_.value, made.amount_.unit * factor.amount_.unit};
  made.parts_ = std::move(factors);
  return made;
}

Working Working::quotient(Working dividend, Working divisor) {
  ensure(divisor.amount_.value != 0, "a working is not divided by 0");
  Working made;
  made.how_ = How::quotient;
  made.amount_ = {dividend.amount_.value / divisor.amount_.value, dividend.amount_.unit / divisor.amount_.unit};
  made.parts_ = {std::move(dividend), std::move(divisor)};
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
  made.parts_ = std::move(parts);
  return made;
}

Working Working::difference(Working whole, Working part) {
  std::vector<Working> parts{std::move(whole), std::move(part)};
  ensure_alike(parts);
  Working made;
  made.how_ = How::difference;
  made.amount_ = {parts[0].amount_.value - parts[1].amount_.value, parts[0].amount_.unit};
  made.parts_ = std::move(parts);
  return made;
}

Working Working::up(Working inner) {
  Working made;
  made.how_ = How::up;
  made.amount_ = {std::ceil(inner.amount_.value - 1e-9), inner.amount_.unit};
  made.parts_ = {std::move(inner)};
  return made;
}

Working Working::greatest(std::vector<Working> parts) {
  ensure(!parts.empty(), "the greatest of something");
  ensure_alike(parts);
  Working made;
  made.how_ = How::greatest;
  made.amount_ = parts.front().amount_;
  for (const Working& part : parts) made.amount_.value = std::max(made.amount_.value, part.amount_.value);
  made.parts_ = std::move(parts);
  return made;
}

Working Working::least(std::vector<Working> parts) {
  ensure(!parts.empty(), "the least of something");
  ensure_alike(parts);
  Working made;
  made.how_ = How::least;
  made.amount_ = parts.front().amount_;
  for (const Working& part : parts) made.amount_.value = std::min(made.amount_.value, part.amount_.value);
  made.parts_ = std::move(parts);
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
  for (const Working& part : parts_) {
    part.rows_into(rows, first ? "" : inner_sign, depth + (own_row ? 1 : 0));
    first = false;
  }
}

static std::string number_in_words(const Amount& amount) {
  char digits[40];
  std::snprintf(digits, sizeof digits, "%.6g", amount.value);
  const std::string unit = amount.unit == units::piece ? "" : " " + units::name(amount.unit);
  return digits + unit;
}

std::string Working::words(bool inside) const {
  if (how_ == How::term) return (name_.empty() ? "" : name_ + " ") + number_in_words(amount_);
  const auto joined = [this](const char* between) {
    std::string text;
    for (std::size_t i = 0; i < parts_.size(); ++i) text += (i ? between : "") + parts_[i].words(true);
    return text;
  };
  std::string text;
  switch (how_) {
    case How::term: break;
    case How::product: text = joined(" x "); break;
    case How::quotient: text = joined(" / "); break;
    case How::sum: text = parts_.empty() ? "0" : joined(" + "); break;
    case How::difference: text = joined(" - "); break;
    case How::up: return "up(" + parts_[0].words(false) + ")";
    case How::greatest: return "greatest(" + joined(", ") + ")";
    case How::least: return "least(" + joined(", ") + ")";
  }
  if (!name_.empty()) text = name_ + ": " + text;
  const bool single = parts_.size() == 1;
  return inside && !single ? "(" + text + ")" : text;
}

std::string Working::sentence() const {
  if (how_ == How::term) return words(false);
  return words(false) + " = " + number_in_words(amount_);
}

std::vector<Term> Working::terms() const {
  if (how_ == How::term) return {{name_, amount_, of_}};
  std::vector<Term> all;
  for (const Working& part : parts_)
    for (Term& leaf : part.terms()) all.push_back(std::move(leaf));
  return all;
}

}  // namespace takeoff
