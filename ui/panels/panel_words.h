// Numbers and words of the core as the panels show them.
#pragma once

#include <QString>
#include <string>

#include "catalogue/item.h"
#include "plan/job.h"
#include "ui/words/words.h"
#include "units/money.h"

namespace ui {

// The item's own name in that language.
QString own_name(const catalogue::Words& name, const catalogue::Id& otherwise);

// "$1,234.50" of dollars, "1,234.50 EUR" of others; a minus stands before all.
QString shown_money(units::Money amount, const plan::Heading& heading);

// "25.29", "1,018": at most two decimals and no zeros behind. What is not 0 is never shown as 0.
QString shown_number(double number);
// "25 tons", "1 roll", "0.43 rolls", "4 cu yd", "1,018 pieces".
QString shown_count(double number, const std::string& unit);
// Hours with one decimal at most: "46.5 h".
QString shown_hours(double hours);

}  // namespace ui
