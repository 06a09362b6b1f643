#include "ui/book/version_window.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"

namespace ui {

namespace {

QLabel* plain_label(const QString& text, QWidget* parent, Type type = Type::text, bool bold = false) {
  auto* label = new QLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setFont(font(type, bold));
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QTableWidget* read_only(int rows, const QStringList& heads, const char* name, const QString& spoken, QWidget* parent) {
  auto* table = new QTableWidget(rows, static_cast<int>(heads.size()), parent);
  table->setHorizontalHeaderLabels(heads);
  make_list(table, name, spoken);
  return table;
}

void put(QTableWidget* table, int row, int column, const QString& text, bool number = false) {
  auto* cell = new QTableWidgetItem(text);
  cell->setToolTip(text);
  cell->setTextAlignment((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  table->setItem(row, column, cell);
}

QString sum_of(const std::optional<units::Money>& sum, const estimate::Kept& kept, const QString& otherwise) {
  return sum ? shown_sum(*sum, kept.currency, kept.decimals) : otherwise;
}

QTableWidget* lines_of(const estimate::Kept& kept, QWidget* parent) {
  auto* table = read_only(static_cast<int>(kept.lines.size()),
                          {VersionWindow::tr("Stage"), VersionWindow::tr("Line"), VersionWindow::tr("Quantity"),
                           VersionWindow::tr("Price"), VersionWindow::tr("Amount")},
                          "version-lines", VersionWindow::tr("Lines of this version"), parent);
  for (int row = 0; row < table->rowCount(); ++row) {
    const estimate::KeptLine& line = kept.lines[static_cast<std::size_t>(row)];
    put(table, row, 0, said(line.stage));
    put(table, row, 1, QString::fromStdString(line.description));
    put(table, row, 2, shown_count(line.order_quantity, line.order_unit), true);
    put(table, row, 3, line.by_others ? VersionWindow::tr("by others") : sum_of(line.unit_price, kept, {}), true);
    put(table, row, 4, sum_of(line.amount, kept, VersionWindow::tr("no price")), true);
    table->item(row, 1)->setToolTip(QString::fromStdString(line.sentence.empty() ? line.working : line.sentence));
  }
  for (const int column : {2, 3, 4})
    table->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  set_widths(table, 1);
  return table;
}

QTableWidget* steps_of(const estimate::Kept& kept, QWidget* parent) {
  auto* table =
      read_only(static_cast<int>(kept.steps.size()) + 2,
                {VersionWindow::tr("Step of the price"), VersionWindow::tr("Working"), VersionWindow::tr("Amount")},
                "version-steps", VersionWindow::tr("Steps of the price"), parent);
  const auto row_of = [&](int row, const QString& name, const QString& working, units::Money amount) {
    put(table, row, 0, name);
    put(table, row, 1, working);
    put(table, row, 2, shown_sum(amount, kept.currency, kept.decimals), true);
  };
  int row = 0;
  for (const estimate::KeptStep& step : kept.steps)
    row_of(row++, QString::fromStdString(step.name), QString::fromStdString(step.working), step.amount);
  row_of(row++, VersionWindow::tr("Price before tax"), {}, kept.price);
  row_of(row, VersionWindow::tr("Total with tax"), {}, kept.total);
  table->horizontalHeaderItem(2)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  QFont bold = table->font();
  bold.setBold(true);
  for (int column = 0; column < 3; ++column) table->item(row, column)->setFont(bold);
  set_widths(table, 1);
  return table;
}

}  // namespace

VersionWindow::VersionWindow(const store::Version& version, const std::vector<store::DocumentRow>& documents,
                             QWidget* parent)
    : QDialog(parent) {
  const store::VersionRow& row = version.row;
  setObjectName(QStringLiteral("version-window"));
  setWindowTitle(tr("Version %1").arg(row.number));
  setAttribute(Qt::WA_DeleteOnClose);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(14), px(16), px(14));
  rows->setSpacing(px(8));
  const QString job = QString::fromStdString(version.job.heading.name.substr(0, 200)).simplified();
  const QString name = QString::fromStdString(row.name.substr(0, 200)).simplified();
  const QString numbered = tr("%1, version %2").arg(job).arg(row.number);
  rows->addWidget(plain_label(name.isEmpty() ? numbered : tr("%1: %2").arg(numbered, name), this, Type::name, true));
  const QString sum = shown_sum(row.total, row.currency, row.decimals);
  auto* total = plain_label(row.final ? sum : tr("%1, not complete").arg(sum), this, Type::title, true);
  total->setObjectName(QStringLiteral("version-total"));
  total->setAccessibleName(tr("Total of this version"));
  rows->addWidget(total);
  rows->addWidget(plain_label(tr("Saved %1 with Groundcourse %2. It is shown as it was saved; today's prices and "
                                 "today's program change nothing here.")
                                  .arg(shown_when(row.made), QString::fromStdString(row.program)),
                              this, Type::note));
  if (!row.note.empty()) rows->addWidget(plain_label(QString::fromStdString(row.note.substr(0, 2000)), this));
  rows->addWidget(lines_of(version.kept, this), 3);
  rows->addWidget(steps_of(version.kept, this), 2);
  for (const store::DocumentRow& sheet : documents) {
    const QString words = tr("%1 (%2), printed %3")
                              .arg(QString::fromStdString(sheet.name.substr(0, 80)).simplified(),
                                   QString::fromStdString(sheet.language.substr(0, 10)), shown_when(sheet.made));
    auto* link = new FlatButton(FlatButton::Form::link, words, this);
    link->setObjectName(QStringLiteral("version-sheet-%1").arg(sheet.id));
    link->setAccessibleName(tr("Show %1").arg(words));
    connect(link, &QAbstractButton::clicked, this, [this, id = sheet.id] { emit show_document(id); });
    rows->addWidget(link, 0, Qt::AlignLeft);
  }
  auto* buttons = new QDialogButtonBox(this);
  auto* on = buttons->addButton(tr("Work on from here"), QDialogButtonBox::ActionRole);
  on->setObjectName(QStringLiteral("version-work-on"));
  on->setToolTip(tr("The job becomes what it was in this version; Undo brings back what it is now"));
  connect(on, &QPushButton::clicked, this, [this, id = row.id] {
    emit work_on_from(id);
    accept();
  });
  auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
  close->setDefault(true);
  make_main(close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  rows->addWidget(buttons);
  resize(px(860), px(640));
}

}  // namespace ui
