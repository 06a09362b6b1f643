// The columns of each table, named once for both ways: `columns(row, part)` either puts the part's members into a row
// of bound values (Out) or takes them out of one (In), in the order of the tables in migrations.cpp.
#pragma once

#include <optional>
#include <string>

#include "catalogue/catalogue.h"
#include "store/database.h"

namespace store {

class Out {
 public:
  Row values;

  void operator()(const std::string& text) { values.emplace_back(text); }
  void operator()(int number) { values.emplace_back(std::int64_t{number}); }
  void operator()(bool yes) { values.emplace_back(std::int64_t{yes ? 1 : 0}); }
  void operator()(double number) { values.emplace_back(number); }
  void operator()(units::Length length) { values.emplace_back(length.steps()); }
  void operator()(units::Money money) { values.emplace_back(money.coins()); }
  template <class T>
  void operator()(const std::optional<T>& value) {
    if (value)
      (*this)(*value);
    else
      values.emplace_back();
  }
};

// A column of another sort than the member's leaves the member as it was: STRICT tables don't let that happen.
class In {
 public:
  explicit In(const Row& row, std::size_t from = 0) : row_(row), at_(from) {}

  void operator()(std::string& text) { take(text); }
  void operator()(double& number) { take(number); }
  void operator()(int& number) { number = static_cast<int>(whole()); }
  void operator()(bool& yes) { yes = whole() != 0; }
  void operator()(units::Length& length) { length = units::Length::of_steps(whole()); }
  void operator()(units::Money& money) { money = units::Money::of_coins(whole()); }
  template <class T>
  void operator()(std::optional<T>& value) {
    value.reset();
    if (empty())
      pass(1);
    else
      (*this)(value.emplace());
  }

  bool empty() const { return at_ < row_.size() && std::holds_alternative<std::monostate>(row_[at_]); }
  void pass(std::size_t columns) { at_ += columns; }

 private:
  template <class T>
  void take(T& into) {
    if (at_ >= row_.size()) return;
    if (const T* value = std::get_if<T>(&row_[at_])) into = *value;
    ++at_;
  }
  std::int64_t whole() {
    std::int64_t value = 0;
    take(value);
    return value;
  }

  const Row& row_;
  std::size_t at_;
};

template <class Row, class Name>
void name_columns(Row& row, Name& name) {
  row(name.en);
  row(name.es);
}

void price_columns(Out& row, const std::optional<catalogue::Price>& price);
void price_columns(In& row, std::optional<catalogue::Price>& price);
void cell_columns(Out& row, const catalogue::CellSide& cell);
void cell_columns(In& row, catalogue::CellSide& cell);
void angle_column(Out& row, const units::Angle& angle);
void angle_column(In& row, units::Angle& angle);

template <class Row, class Item>
void item_columns(Row& row, Item& item) {
  row(item.id);
  row(item.kind);
  name_columns(row, item.name);
  row(item.supplier);
  row(item.unit);
  row(item.length);
  row(item.width);
  row(item.height);
  row(item.joint);
  row(item.mass_kg);
  row(item.density_kg_m3);
  row(item.void_share);
  row(item.sold_by);
  row(item.pack.kind);
  row(item.pack.pieces_per_layer);
  row(item.pack.layers);
  row(item.pack.pieces);
  price_columns(row, item.price);
  row(item.breakage);
  row(item.rule);
  row(item.rule_source);
  row(item.notes);
}

template <class Row, class Supplier>
void supplier_columns(Row& row, Supplier& supplier) {
  row(supplier.id);
  name_columns(row, supplier.name);
  row(supplier.sells);
  row(supplier.delivery);
  row(supplier.lead_days);
  row(supplier.least_order);
  row(supplier.notes);
}

template <class Row, class Pattern>
void pattern_columns(Row& row, Pattern& pattern) {
  row(pattern.id);
  name_columns(row, pattern.name);
  cell_columns(row, pattern.cell_x);
  cell_columns(row, pattern.cell_y);
  angle_column(row, pattern.direction);
  row(pattern.along);
  row(pattern.across_x);
  row(pattern.across_y);
  row(pattern.herringbone);
  row(pattern.fits);
  row(pattern.advice);
}

template <class Row, class Piece>
void piece_columns(Row& row, Piece& piece) {
  row(piece.size);
  row(piece.x);
  row(piece.y);
  row(piece.w);
  row(piece.h);
}

template <class Row, class BuildUp>
void build_up_columns(Row& row, BuildUp& build_up) {
  row(build_up.id);
  row(build_up.use);
  name_columns(row, build_up.name);
  row(build_up.surface);
  row(build_up.water);
  row(build_up.notes);
}

template <class Row, class Layer>
void layer_columns(Row& row, Layer& layer) {
  row(layer.role);
  row(layer.item);
  row(layer.thickness);
  row(layer.past_edge);
  row(layer.lift);
  row(layer.source);
  row(layer.notes);
}

template <class Row, class Limit>
void limit_columns(Row& row, Limit& limit) {
  row(limit.id);
  row(limit.group);
  name_columns(row, limit.name);
  row(limit.least);
  row(limit.greatest);
  row(limit.usual);
  row(limit.unit);
  row(limit.source);
  row(limit.known);
  row(limit.notes);
}

template <class Row, class Rate>
void rate_columns(Row& row, Rate& rate) {
  row(rate.id);
  row(rate.stage);
  row(rate.line_kind);
  name_columns(row, rate.name);
  row(rate.si_unit);
  row(rate.hours_per_si_unit);
  row(rate.crew);
  row(rate.machine);
  row(rate.condition);
  row(rate.source);
  row(rate.known);
  row(rate.notes);
}

template <class Row, class Junction>
void junction_columns(Row& row, Junction& junction) {
  row(junction.id);
  row(junction.side_a);
  row(junction.side_b);
  row(junction.condition);
  name_columns(row, junction.name);
  row(junction.built);
  row(junction.joint);
  row(junction.rod);
  row(junction.sealant);
  row(junction.filler);
  row(junction.edge);
  row(junction.other);
  row(junction.source);
  row(junction.known);
  row(junction.notes);
}

template <class Row, class HoldPoint>
void hold_point_columns(Row& row, HoldPoint& point) {
  row(point.stage);
  row(point.look_at);
  row(point.limit);
  row(point.before);
  row(point.who);
  row(point.source);
  row(point.applies);
}

template <class Row, class Caution>
void caution_columns(Row& row, Caution& caution) {
  row(caution.stage);
  row(caution.text);
  row(caution.who);
  row(caution.source);
  row(caution.applies);
}

template <class Row, class SiteRule>
void site_rule_columns(Row& row, SiteRule& rule) {
  row(rule.id);
  row(rule.mark);
  row(rule.against);
  row(rule.distance);
  row(rule.per_size);
  row(rule.severity);
  row(rule.text);
  row(rule.who);
  row(rule.source);
}

}  // namespace store
