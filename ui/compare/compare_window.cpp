#include "ui/compare/compare_window.h"

#include <QFileDialog>
#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTabWidget>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "estimate/money_words.h"
#include "files/compare_text.h"
#include "files/files.h"
#include "ui/book/book_table.h"
#include "ui/compare/changed_view.h"
#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"
#include "ui/words/words.h"

namespace ui {

namespace {

QTreeWidget* list(const char* name, const QString& accessible, const QStringList& columns) {
  auto* made = new QTreeWidget;
  made->setObjectName(QString::fromLatin1(name));
  made->setAccessibleName(accessible);
  made->setHeaderLabels(columns);
  made->setItemDelegate(new WholeRows(made));
  made->setUniformRowHeights(true);
  made->setAllColumnsShowFocus(true);
  for (int column = 1; column < columns.size(); ++column)
    made->headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
  return made;
}

QTreeWidgetItem* row(const QStringList& cells) {
  auto* made = new QTreeWidgetItem(cells);
  for (int column = 1; column < cells.size(); ++column)
    made->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
  return made;
}

// Figures are as wide as they are; `wide` gets the rest.
void fit(QTreeWidget* list, int wide = 0) {
  list->expandAll();
  list->header()->setStretchLastSection(false);
  for (int column = 0; column < list->columnCount(); ++column)
    list->header()->setSectionResizeMode(column, column == wide ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
}

QString quantity(const std::optional<estimate::KeptLine>& line) {
  if (!line) return QStringLiteral("-");
  return shown_count(line->order_quantity, line->order_unit);
}

QString sign_of(estimate::Difference what) {
  switch (what) {
    case estimate::Difference::added: return QStringLiteral("+ ");
    case estimate::Difference::gone: return QStringLiteral("− ");
    default: return QStringLiteral("≠ ");
  }
}

QString joined(const std::vector<std::string>& words) {
  QStringList all;
  for (const std::string& word : words) all << said(word);
  return all.join(QStringLiteral(", "));
}

}  // namespace

CompareWindow::CompareWindow(const Version& before, const Version& after, QWidget* parent)
    : QDialog(parent),
      before_(before),
      after_(after),
      comparison_(estimate::compare(before.kept, after.kept)),
      differences_(plan::differences(*before.job, *after.job)) {
  setObjectName(QStringLiteral("compare-window"));
  setWindowTitle(tr("Two versions side by side"));
  auto* rows = new QVBoxLayout(this);
  rows->addWidget(head());
  auto* pages = new QTabWidget;
  pages->setObjectName(QStringLiteral("compare-pages"));
  pages->addTab(lines(), tr("Lines"));
  pages->addTab(price(), tr("Price"));
  pages->addTab(drawing(), tr("Drawing and choices"));
  pages->addTab(new ChangedView(sheets::changed_plan(*before_.job, *after_.job), pages), tr("Plan"));
  rows->addWidget(pages, 1);
  rows->addWidget(foot());
  resize(px(1040), px(620));
}

QString CompareWindow::money(units::Money money) const {
  return QString::fromStdString(estimate::shown_money(money, after_.job->heading));
}
QString CompareWindow::by(units::Money money) const {
  return (money > units::Money() ? QStringLiteral("+") : QString()) + this->money(money);
}

QString CompareWindow::total_words() const {
  if (!comparison_.comparable) return tr("The two are in different currencies, so their money is not compared.");
  return tr("Difference in all: %1").arg(by(comparison_.total_by));
}

QWidget* CompareWindow::head() {
  auto* made = new QWidget;
  auto* rows = new QVBoxLayout(made);
  rows->setContentsMargins(0, 0, 0, 0);
  auto* names = new QLabel(tr("Before: %1    After: %2").arg(before_.name, after_.name));
  names->setObjectName(QStringLiteral("compare-names"));
  names->setTextFormat(Qt::PlainText);
  names->setWordWrap(true);
  auto* total = new QLabel(total_words());
  total->setObjectName(QStringLiteral("compare-total"));
  total->setTextFormat(Qt::PlainText);
  total->setFont(ui::font(Type::name, true));
  total->setWordWrap(true);
  rows->addWidget(names);
  rows->addWidget(total);
  return made;
}

QTreeWidget* CompareWindow::lines() {
  QTreeWidget* made = list(
      "compare-lines", tr("Lines that differ"),
      {tr("Line"), tr("Quantity before"), tr("Quantity after"), tr("Amount before"), tr("Amount after"), tr("By")});
  const auto amount = [this](const std::optional<estimate::KeptLine>& line) {
    if (!line) return QStringLiteral("-");
    return line->amount ? money(*line->amount) : tr("no price");
  };
  QTreeWidgetItem* stage = nullptr;
  std::string stage_word;
  for (const estimate::Change& change : comparison_.changes) {
    const estimate::KeptLine& line = estimate::line_of(change);
    if (!stage || line.stage != stage_word) {
      stage_word = line.stage;
      const auto known = takeoff::stage_of(stage_word);
      stage = row({known ? said(takeoff::title(*known)) : QString::fromStdString(stage_word)});
      stage->setFirstColumnSpanned(true);
      made->addTopLevelItem(stage);
    }
    auto* item = row({sign_of(change.what) + QString::fromStdString(line.description), quantity(change.before),
                      quantity(change.after), amount(change.before), amount(change.after), by(change.by)});
    item->setToolTip(0, QString::fromStdString(line.working).toHtmlEscaped());
    stage->addChild(item);
  }
  fit(made);
  return made;
}

QTreeWidget* CompareWindow::price() {
  QTreeWidget* made =
      list("compare-price", tr("Steps of the price"), {tr("Step"), tr("Before"), tr("After"), tr("By")});
  for (const estimate::StepChange& step : comparison_.steps)
    made->addTopLevelItem(
        row({QString::fromStdString(step.name), money(step.before), money(step.after), by(step.after - step.before)}));
  made->addTopLevelItem(
      row({tr("In all"), money(before_.kept.total), money(after_.kept.total), by(comparison_.total_by)}));
  made->setRootIsDecorated(false);
  fit(made);
  return made;
}

QTreeWidget* CompareWindow::drawing() {
  QTreeWidget* made =
      list("compare-drawing", tr("What differs in the drawing and the choices"), {tr("What"), tr("How")});
  made->headerItem()->setTextAlignment(1, Qt::AlignLeft | Qt::AlignVCenter);
  const auto add = [made](const QString& what, const QString& how) {
    auto* item = new QTreeWidgetItem({what, how});
    item->setToolTip(1, how.toHtmlEscaped());
    made->addTopLevelItem(item);
  };
  for (const plan::ElementDifference& one : differences_.elements) {
    const QString name = QString::fromStdString(one.name.empty() ? one.id : one.id + " " + one.name);
    if (one.how == plan::Differs::added) add(QStringLiteral("+ ") + name, tr("added"));
    if (one.how == plan::Differs::gone) add(QStringLiteral("− ") + name, tr("gone"));
    if (one.how == plan::Differs::changed) add(QStringLiteral("≠ ") + name, joined(one.what));
  }
  if (!differences_.job.empty()) add(tr("The whole job"), joined(differences_.job));
  if (!differences_.prices.empty()) add(tr("Prices"), joined(differences_.prices));
  if (!differences_.catalogue.empty()) add(tr("The job's catalogue"), joined(differences_.catalogue));
  made->setRootIsDecorated(false);
  fit(made, 1);
  return made;
}

QWidget* CompareWindow::foot() {
  auto* made = new QWidget;
  auto* row = new QHBoxLayout(made);
  row->setContentsMargins(0, 0, 0, 0);
  auto* text = new QPushButton(tr("Save as text"));
  text->setObjectName(QStringLiteral("compare-text"));
  auto* csv = new QPushButton(tr("Save as CSV"));
  csv->setObjectName(QStringLiteral("compare-csv"));
  auto* order = new QPushButton(tr("Change order ..."));
  order->setObjectName(QStringLiteral("compare-order"));
  order->setEnabled(before_.id != 0 && after_.id != 0 && comparison_.comparable);
  order->setToolTip(order->isEnabled() ? QString() : tr("A change order is made of two saved versions"));
  auto* close = new QPushButton(tr("Close"));
  close->setObjectName(QStringLiteral("compare-close"));
  for (QPushButton* other : {text, csv, order}) other->setAutoDefault(false);
  close->setDefault(true);
  row->addWidget(text);
  row->addWidget(csv);
  row->addWidget(order);
  row->addStretch(1);
  row->addWidget(close);
  connect(text, &QPushButton::clicked, this,
          [this] { save(tr("Save as text"), QStringLiteral(".txt"), this->text()); });
  connect(csv, &QPushButton::clicked, this, [this] { save(tr("Save as CSV"), QStringLiteral(".csv"), this->csv()); });
  connect(order, &QPushButton::clicked, this, [this] { emit change_order(before_.id, after_.id); });
  connect(close, &QPushButton::clicked, this, &QDialog::close);
  return made;
}

std::string CompareWindow::text() const {
  const plan::Heading& heading = after_.job->heading;
  return files::comparison_text(
      {heading.name, before_.name.toStdString(), after_.name.toStdString(), heading.currency, heading.decimals},
      comparison_, differences_);
}
std::string CompareWindow::csv() const {
  const plan::Heading& heading = after_.job->heading;
  return files::comparison_csv(
      {heading.name, before_.name.toStdString(), after_.name.toStdString(), heading.currency, heading.decimals},
      comparison_);
}

void CompareWindow::save(const QString& title, const QString& ending, const std::string& text) {
  const QString path = QFileDialog::getSaveFileName(this, title, QStringLiteral("comparison") + ending);
  if (path.isEmpty()) return;
  if (const auto saved = files::write_file(path.toStdString(), text); !saved)
    QMessageBox::warning(this, title, QString::fromStdString(problem::sentence(saved.error())));
}

CompareWindow* show_comparison(const Version& before, const Version& after, QWidget* parent) {
  auto* window = new CompareWindow(before, after, parent);
  window->setAttribute(Qt::WA_DeleteOnClose);
  window->show();
  return window;
}

}  // namespace ui
