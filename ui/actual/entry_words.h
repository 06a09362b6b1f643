// How the window of what was really used says things: sorts of entries, quantities, shares, money with its sign.
#pragma once

#include <QString>
#include <vector>

#include "estimate/actual.h"

namespace ui {

QString act_name(estimate::Act act);  // "Delivered", in the language in use
QString stage_name(const std::string& stage);
QString quantity_of(double quantity, const std::string& unit);  // "-" where it is 0
QString share_of(const std::optional<double>& share);           // "42 %", "-"
// What is more has its sign too, so that a difference is never taken for a sum.
QString signed_sum(units::Money money, const plan::Heading& heading);
QString sum_or(const std::optional<units::Money>& money, const plan::Heading& heading, const QString& otherwise);

}  // namespace ui
