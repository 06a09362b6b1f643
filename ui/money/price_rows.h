// The steps of the price and where the money goes, as plain values for whoever shows them.
#pragma once

#include <QString>
#include <vector>

#include "results/results.h"

namespace ui {

struct PriceRow {
  enum class Kind { step, sum, note } kind = Kind::step;
  QString name;
  QString working;
  QString amount;
};

// Direct cost, each step with its working, the price, tax, the total; then markup and margin beside each other, and
// what falls due when.
std::vector<PriceRow> price_rows(const results::Results& results);

struct Bar {
  QString name;
  QString amount;
  double coins = 0;
};
std::vector<Bar> by_kind(const results::Results& results);   // of the direct cost, the largest first
std::vector<Bar> by_stage(const results::Results& results);  // in the order of building, those that have any

QString kind_in_words(plan::CostKind kind);
QString shown_share(double share);  // "12.5 %"

}  // namespace ui
