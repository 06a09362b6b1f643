// The tables of the window of what was really used: lines by stage, work by stage, cost to finish.
#pragma once

#include <QString>

#include "estimate/actual.h"
#include "ui/actual/entry_form.h"

class QTreeWidget;
class QTreeWidgetItem;

namespace ui {

QTreeWidget* make_line_table(QWidget* parent);
QTreeWidget* make_work_table(QWidget* parent);
QTreeWidget* make_cost_table(QWidget* parent);

// Filled anew; the row of the same target stays chosen.
void show_lines(QTreeWidget* table, const estimate::Actual& actual, const plan::Heading& heading);
void show_work(QTreeWidget* table, const estimate::Actual& actual, const plan::Heading& heading);
void show_cost(QTreeWidget* table, const estimate::Actual& actual, const plan::Heading& heading);

// What the chosen row is entered against; nothing on rows that are none.
std::optional<EntryTarget> chosen_target(const QTreeWidget* table);

// "Ordered 12 tons, confirmed 12 tons, on its way 1 ton. Estimate $300.00, spent $338.50."
QString facts_of(const estimate::LineActual& line, const plan::Heading& heading);

}  // namespace ui
