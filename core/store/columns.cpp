#include "store/columns.h"

namespace store {

void price_columns(Out& row, const std::optional<catalogue::Price>& price) {
  if (!price) {
    row.values.insert(row.values.end(), 4, Bound());
    return;
  }
  row(price->amount);
  row(price->unit);
  row(price->date);
  row(price->by_others);
}

void price_columns(In& row, std::optional<catalogue::Price>& price) {
  price.reset();
  if (row.empty()) return row.pass(4);
  row(price.emplace().amount);
  row(price->unit);
  row(price->date);
  row(price->by_others);
}

void cell_columns(Out& row, const catalogue::CellSide& cell) {
  row(static_cast<int>(cell.of));
  row(cell.parts);
  row(cell.fixed);
}

void cell_columns(In& row, catalogue::CellSide& cell) {
  int of = 0;
  row(of);
  cell.of = static_cast<catalogue::CellSide::Of>(of);
  row(cell.parts);
  row(cell.fixed);
}

void angle_column(Out& row, const units::Angle& angle) { row(angle.degrees()); }

void angle_column(In& row, units::Angle& angle) {
  double degrees = 0;
  row(degrees);
  angle = units::Angle::degrees(degrees);
}

}  // namespace store
