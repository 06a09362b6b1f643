#include "ui/actual/actual_tables.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QTreeWidget>

#include "ui/actual/entry_words.h"
#include "ui/book/book_table.h"
#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"
#include "units/number.h"

namespace ui {

using estimate::Actual;
using estimate::LineActual;
using estimate::StageActual;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ui::ActualTables)
};

constexpr int state_column = 1;         // of the lines: a word among figures
constexpr int key_role = Qt::UserRole;  // stage, item, kind, unit, name, work

QTreeWidget* made(const char* name, const QString& spoken, const QStringList& columns, QWidget* parent) {
  auto* table = new QTreeWidget(parent);
  table->setObjectName(QString::fromLatin1(name));
  table->setAccessibleName(spoken);
  table->setHeaderLabels(columns);
  table->setUniformRowHeights(true);
  table->setAllColumnsShowFocus(true);
  table->setItemDelegate(new WholeRows(table));
  table->setExpandsOnDoubleClick(false);
  table->setTabKeyNavigation(false);
  table->header()->setStretchLastSection(false);
  for (int column = 1; column < columns.size(); ++column)
    table->headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
  return table;
}

QTreeWidgetItem* row(const QStringList& cells) {
  auto* item = new QTreeWidgetItem(cells);
  for (int column = 1; column < cells.size(); ++column)
    item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
  item->setToolTip(0, cells.front().toHtmlEscaped());
  return item;
}

void make_bold(QTreeWidgetItem* item) {
  for (int column = 0; column < item->columnCount(); ++column) item->setFont(column, font(Type::text, true));
}

void set_target(QTreeWidgetItem* item, const EntryTarget& target) {
  item->setData(0, key_role,
                QStringList{QString::fromStdString(target.key.stage), QString::fromStdString(target.key.item),
                            QString::number(static_cast<int>(target.key.kind)), QString::fromStdString(target.unit),
                            target.name, target.work ? QStringLiteral("work") : QString()});
}

// Figures are as wide as they are; the first column gets the rest.
void fit(QTreeWidget* table) {
  table->expandAll();
  for (int column = 0; column < table->columnCount(); ++column)
    table->header()->setSectionResizeMode(column, column == 0 ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
}

// Fills by `fill` and chooses the row again that was chosen.
template <class Fill>
void anew(QTreeWidget* table, const Fill& fill) {
  const QVariant before = table->currentItem() ? table->currentItem()->data(0, key_role) : QVariant();
  const QSignalBlocker quiet(table);
  table->clear();
  fill();
  fit(table);
  if (!before.isValid()) return;
  for (QTreeWidgetItemIterator at(table); *at; ++at)
    if ((*at)->data(0, key_role) == before) return table->setCurrentItem(*at);
}

QTreeWidgetItem* stage_row(const StageActual& stage, const QStringList& cells) {
  QTreeWidgetItem* item = row(QStringList{stage_name(stage.stage)} + cells);
  make_bold(item);
  return item;
}

QString hours(double value) { return value > 0 ? shown_hours(value) : QStringLiteral("–"); }

QString rate(const std::optional<double>& value, const std::string& unit) {
  if (!value) return QStringLiteral("–");
  return Words::tr("%1 h/%2").arg(QString::fromStdString(units::show_number(*value, 3)), said(unit));
}

struct Rates {
  QString estimate = QStringLiteral("–");
  QString own = QStringLiteral("–");
  QString done;
};

Rates rates_of(const StageActual& stage, const plan::Id& item) {
  for (const estimate::MeasureActual& measure : stage.measures) {
    if (measure.item != item) continue;
    Rates made{QStringLiteral("–"), rate(measure.own_rate(), measure.unit),
               Words::tr("%1 of %2").arg(shown_number(measure.done), shown_count(measure.whole, measure.unit))};
    if (measure.estimate_hours > 0) made.estimate = rate(measure.estimate_rate(), measure.unit);
    return made;
  }
  return {};
}

}  // namespace

QTreeWidget* make_line_table(QWidget* parent) {
  QTreeWidget* table = made("actual-lines", Words::tr("Lines by stage"),
                            {Words::tr("Line"), Words::tr("State"), Words::tr("Estimate"), Words::tr("Delivered"),
                             Words::tr("Used"), Words::tr("Left"), Words::tr("Difference")},
                            parent);
  table->headerItem()->setTextAlignment(state_column, Qt::AlignLeft | Qt::AlignVCenter);
  return table;
}

QTreeWidget* make_work_table(QWidget* parent) {
  return made("actual-work", Words::tr("Hours by stage"),
              {Words::tr("Stage and work"), Words::tr("Estimate"), Words::tr("Worked"), Words::tr("Done"),
               Words::tr("Estimate's rate"), Words::tr("Own rate"), Words::tr("Difference")},
              parent);
}

QTreeWidget* make_cost_table(QWidget* parent) {
  QTreeWidget* table =
      made("actual-cost", Words::tr("Cost to finish by stage"),
           {Words::tr("Stage"), Words::tr("Done"), Words::tr("Estimate"), Words::tr("Spent"), Words::tr("Difference"),
            Words::tr("To finish, estimate's rate"), Words::tr("To finish, own rate")},
           parent);
  table->setRootIsDecorated(false);
  return table;
}

void show_lines(QTreeWidget* table, const Actual& actual, const plan::Heading& heading) {
  anew(table, [&] {
    for (const StageActual& stage : actual.stages) {
      QTreeWidgetItem* top = nullptr;
      for (const LineActual& line : actual.lines) {
        if (line.key.stage != stage.stage) continue;
        if (top == nullptr) {
          top = stage_row(stage, {{}, {}, {}, {}, {}, signed_sum(stage.spent_stuff - stage.estimate_stuff, heading)});
          top->setFlags(Qt::ItemIsEnabled);
          table->addTopLevelItem(top);
        }
        const QString name = QString::fromStdString(line.description);
        QTreeWidgetItem* item = row({name, act_name(line.state), quantity_of(line.estimated, line.unit),
                                     quantity_of(line.delivered, line.unit), quantity_of(line.used, line.unit),
                                     quantity_of(line.left(), line.unit), signed_sum(line.difference(), heading)});
        item->setTextAlignment(state_column, Qt::AlignLeft | Qt::AlignVCenter);
        set_target(item, {line.key, line.unit, name, false});
        top->addChild(item);
      }
    }
  });
}

void show_work(QTreeWidget* table, const Actual& actual, const plan::Heading& heading) {
  anew(table, [&] {
    for (const StageActual& stage : actual.stages) {
      const Rates rates = rates_of(stage, {});
      QTreeWidgetItem* top = stage_row(stage, {hours(stage.estimate_hours), hours(stage.hours),
                                               rates.done.isEmpty() ? share_of(stage.done) : rates.done, rates.estimate,
                                               rates.own, signed_sum(stage.spent_work - stage.estimate_work, heading)});
      set_target(top, {{stage.stage, {}, plan::CostKind::labour}, "h", stage_name(stage.stage), true});
      table->addTopLevelItem(top);
      for (const estimate::WorkActual& work : stage.work) {
        const Rates own = rates_of(stage, work.item);
        const QString name = QString::fromStdString(work.description);
        QTreeWidgetItem* item = row({name,
                                     hours(work.estimate_hours),
                                     hours(work.hours.value_or(0)),
                                     own.done.isEmpty() ? share_of(work.done) : own.done,
                                     own.estimate,
                                     own.own,
                                     {}});
        set_target(item, {{stage.stage, work.item, plan::CostKind::labour}, "h", name, true});
        top->addChild(item);
      }
    }
  });
}

void show_cost(QTreeWidget* table, const Actual& actual, const plan::Heading& heading) {
  const auto line = [&](const QString& name, const StageActual& stage, const QString& done) {
    const QString unknown = Words::tr("not measured");
    return row({name, done, shown_money(stage.estimate(), heading), shown_money(stage.spent(), heading),
                signed_sum(stage.difference(), heading), sum_or(stage.finish_at_estimate, heading, unknown),
                sum_or(stage.finish_at_own, heading, unknown)});
  };
  anew(table, [&] {
    for (const StageActual& stage : actual.stages)
      table->addTopLevelItem(line(stage_name(stage.stage), stage, share_of(stage.done)));
    QTreeWidgetItem* all = line(Words::tr("In all"), actual.total, {});
    make_bold(all);
    table->addTopLevelItem(all);
  });
}

std::optional<EntryTarget> chosen_target(const QTreeWidget* table) {
  const QTreeWidgetItem* item = table->currentItem();
  const QStringList parts = item ? item->data(0, key_role).toStringList() : QStringList();
  if (parts.size() != 6) return std::nullopt;
  return EntryTarget{{parts[0].toStdString(), parts[1].toStdString(), static_cast<plan::CostKind>(parts[2].toInt())},
                     parts[3].toStdString(),
                     parts[4],
                     !parts[5].isEmpty()};
}

QString facts_of(const LineActual& line, const plan::Heading& heading) {
  QStringList parts;
  const auto say = [&](double quantity, const QString& words) {
    if (quantity > 0) parts << words.arg(shown_count(quantity, line.unit));
  };
  if (line.needed) say(*line.needed, Words::tr("needed %1"));
  say(line.estimated, Words::tr("to order %1"));
  say(line.ordered, Words::tr("ordered %1"));
  say(line.confirmed, Words::tr("confirmed %1"));
  say(line.coming(), Words::tr("on its way %1"));
  say(line.returned, Words::tr("returned %1"));
  parts << Words::tr("estimate %1").arg(line.priced ? shown_money(line.estimate, heading) : Words::tr("no price"));
  parts << Words::tr("spent %1").arg(shown_money(line.spent, heading));
  if (line.left_money() != units::Money()) parts << Words::tr("left %1").arg(shown_money(line.left_money(), heading));
  return parts.join(QStringLiteral(", "));
}

}  // namespace ui
