#include "ui/actual/actual_window.h"

#include <QFileDialog>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTabWidget>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "files/actual_text.h"
#include "files/files.h"
#include "sheets/actual_sheet.h"
#include "ui/actual/actual_tables.h"
#include "ui/actual/entry_words.h"
#include "ui/actual/offers_page.h"
#include "ui/book/book_words.h"
#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"
#include "ui/print/print_sheet.h"

namespace ui {

using estimate::Act;
using estimate::Entry;

namespace {

QLabel* plain_label(QWidget* parent, const char* name, Type type, bool bold = false) {
  auto* label = new QLabel(parent);
  label->setObjectName(QString::fromLatin1(name));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setFont(font(type, bold));
  return label;
}

QPushButton* button(const char* name, const QString& words, QWidget* parent) {
  auto* made = new QPushButton(words, parent);
  made->setObjectName(QString::fromLatin1(name));
  made->setAutoDefault(false);
  return made;
}

QString named(const store::Version& version) {
  const QString job = QString::fromStdString(version.job.heading.name.substr(0, 200)).simplified();
  const QString name = QString::fromStdString(version.row.name.substr(0, 200)).simplified();
  const QString numbered = ActualWindow::tr("%1, version %2").arg(job).arg(version.row.number);
  return name.isEmpty() ? numbered : ActualWindow::tr("%1: %2").arg(numbered, name);
}

}  // namespace

ActualWindow::ActualWindow(store::JobBook& book, store::Version version, std::string folder, QWidget* parent)
    : QDialog(parent), book_(book), version_(std::move(version)) {
  setObjectName(QStringLiteral("actual-window"));
  setWindowTitle(tr("What was really used"));
  auto* title = plain_label(this, "actual-title", Type::name, true);
  title->setText(named(version_));
  total_ = plain_label(this, "actual-total", Type::text);
  total_->setAccessibleName(tr("Estimate, spent and cost to finish"));
  problems_ = plain_label(this, "actual-problems", Type::note);
  problems_->setAccessibleName(tr("To be mended"));
  QPalette care = problems_->palette();
  care.setColor(QPalette::WindowText, theme().care);
  problems_->setPalette(care);
  auto* pages = new QTabWidget(this);
  pages->setObjectName(QStringLiteral("actual-pages"));
  pages->addTab(make_lines(), tr("Deliveries and use"));
  pages->addTab(make_work(), tr("Hours"));
  pages->addTab(make_cost(), tr("Cost to finish"));
  offers_ = new OffersPage(book_, std::move(folder), version_.job.heading.units, pages);
  pages->addTab(offers_, tr("What closed jobs say"));
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(12), px(16), px(12));
  rows->setSpacing(px(8));
  rows->addWidget(title);
  rows->addWidget(total_);
  rows->addWidget(pages, 1);
  rows->addWidget(problems_);
  rows->addWidget(make_foot());
  if (const auto& why = book_.only_read())
    for (EntryForm* form : {line_form_, work_form_}) form->set_closed(told(*why));
  connect(pages, &QTabWidget::currentChanged, this, [this, pages](int) {
    if (pages->currentWidget() == offers_) offers_->refresh();
  });
  reload();
  resize(px(1240), px(720));
}

QWidget* ActualWindow::make_lines() {
  auto* page = new QWidget(this);
  auto* sides = new QHBoxLayout(page);
  sides->setContentsMargins(0, px(10), 0, 0);
  auto* left = new QVBoxLayout;
  lines_ = make_line_table(page);
  left->addWidget(lines_, 1);
  edit_said_ = plain_label(page, "actual-edit", Type::note);
  edit_enter_ = button("actual-edit-enter", tr("Add and return ..."), page);
  auto* under = new QHBoxLayout;
  under->addWidget(edit_said_, 1);
  under->addWidget(edit_enter_);
  left->addLayout(under);
  sides->addLayout(left, 1);
  line_form_ = new EntryForm(
      "line", {Act::delivered, Act::used, Act::returned, Act::planned, Act::asked, Act::ordered, Act::confirmed},
      version_.job.heading, [this](const Entry& entry) { return enter(entry); }, page);
  sides->addWidget(line_form_);
  connect(lines_, &QTreeWidget::currentItemChanged, this, &ActualWindow::show_line);
  connect(edit_enter_, &QPushButton::clicked, this, &ActualWindow::enter_edit);
  return page;
}

QWidget* ActualWindow::make_work() {
  auto* page = new QWidget(this);
  auto* sides = new QHBoxLayout(page);
  sides->setContentsMargins(0, px(10), 0, 0);
  work_ = make_work_table(page);
  sides->addWidget(work_, 1);
  work_form_ = new EntryForm(
      "work", {Act::hours, Act::measured}, version_.job.heading, [this](const Entry& entry) { return enter(entry); },
      page);
  sides->addWidget(work_form_);
  connect(work_, &QTreeWidget::currentItemChanged, this, &ActualWindow::show_work);
  return page;
}

QWidget* ActualWindow::make_cost() {
  auto* page = new QWidget(this);
  auto* rows = new QVBoxLayout(page);
  rows->setContentsMargins(0, px(10), 0, 0);
  rows->setSpacing(px(8));
  auto* lead = plain_label(page, "actual-cost-lead", Type::note);
  lead->setText(
      tr("Cost to finish is what is not done by measure, at the estimate's rate and at the own rate so far. What "
         "lies on the site is paid and taken off."));
  rows->addWidget(lead);
  cost_ = make_cost_table(page);
  rows->addWidget(cost_, 1);
  return page;
}

QWidget* ActualWindow::make_foot() {
  auto* made = new QWidget(this);
  auto* row = new QHBoxLayout(made);
  row->setContentsMargins(0, 0, 0, 0);
  auto* text = button("actual-text", tr("Save as text"), made);
  auto* csv = button("actual-csv", tr("Save as CSV"), made);
  auto* paper = button("actual-pdf", tr("Save as PDF"), made);
  auto* entries = button("actual-ledger", tr("Save all entries as CSV"), made);
  auto* close = button("actual-close", tr("Close"), made);
  for (QPushButton* one : {text, csv, paper, entries}) row->addWidget(one);
  row->addStretch(1);
  row->addWidget(close);
  connect(text, &QPushButton::clicked, this, [this] { save(tr("Save as text"), ".txt", this->text()); });
  connect(csv, &QPushButton::clicked, this, [this] { save(tr("Save as CSV"), ".csv", this->csv()); });
  connect(paper, &QPushButton::clicked, this, [this] { save(tr("Save as PDF"), ".pdf", pdf().toStdString()); });
  connect(entries, &QPushButton::clicked, this, [this] {
    save(tr("Save all entries as CSV"), "-entries.csv", files::ledger_csv(entries_, version_.kept.decimals));
  });
  connect(close, &QPushButton::clicked, this, &QDialog::close);
  return made;
}

problem::Result<void> ActualWindow::enter(const Entry& entry) {
  const auto entered = book_.enter(version_.row.id, entry);
  if (!entered) return std::unexpected(entered.error());
  reload();
  return {};
}

void ActualWindow::reload() {
  if (auto entries = book_.entries(version_.row.id)) {
    entries_ = std::move(*entries);
    actual_ = estimate::actual(version_.job, version_.kept, entries_);
  } else {
    problems_->setText(told(entries.error()));
    problems_->show();
    return;
  }
  const plan::Heading& heading = version_.job.heading;
  show_lines(lines_, actual_, heading);
  ui::show_work(work_, actual_, heading);
  show_cost(cost_, actual_, heading);
  show_totals();
  find_edit();
  show_line();
  show_work();
}

void ActualWindow::show_totals() {
  const plan::Heading& heading = version_.job.heading;
  const estimate::StageActual& all = actual_.total;
  QString words = tr("Estimate %1, spent %2 (%3). To finish %4 at the estimate's rate, %5 at the own rate.")
                      .arg(shown_money(all.estimate(), heading), shown_money(all.spent(), heading),
                           signed_sum(all.difference(), heading), sum_or(all.finish_at_estimate, heading, {}),
                           sum_or(all.finish_at_own, heading, {}));
  QStringList without;
  for (const std::string& stage : actual_.unmeasured) without << stage_name(stage);
  if (!without.isEmpty())
    words += QLatin1Char(' ') + tr("Without %1: not measured.").arg(without.join(QStringLiteral(", ")));
  total_->setText(words);
  constexpr std::size_t most = 4;
  QStringList said;
  for (const problem::Problem& one : actual_.problems)
    if (one.code != "actual-not-measured") said << told(one);
  const auto more = said.size() - static_cast<qsizetype>(most);
  if (more > 0) said = said.mid(0, most) << tr("and %1 more").arg(more);
  problems_->setText(said.join(QLatin1Char('\n')));
  problems_->setVisible(!said.isEmpty());
}

void ActualWindow::show_line() {
  const auto target = chosen_target(lines_);
  line_form_->show_target(target, entries_);
  if (!target) return;
  for (const estimate::LineActual& line : actual_.lines)
    if (line.key == target->key && line.unit == target->unit)
      line_form_->show_facts(facts_of(line, version_.job.heading));
}

void ActualWindow::show_work() { work_form_->show_target(chosen_target(work_), entries_); }

std::string ActualWindow::text() const {
  const plan::Heading& heading = version_.job.heading;
  return files::actual_text({heading.name, named(version_).toStdString(), heading.invented}, actual_) + "\n" +
         files::offers_text(offers_->offers(), heading.units);
}

std::string ActualWindow::csv() const { return files::actual_csv(actual_); }

QByteArray ActualWindow::pdf() const {
  const sheets::Printed with =
      printed_of(version_.job, std::to_string(version_.row.number), version_.row.made.substr(0, 10));
  return print_made(sheets::actual_sheet(actual_, with), with);
}

void ActualWindow::save(const QString& title, const char* ending, const std::string& text) {
  const QString path = QFileDialog::getSaveFileName(this, title, tr("really-used") + QString::fromLatin1(ending));
  if (path.isEmpty()) return;
  if (const auto saved = files::write_file(path.toStdString(), text); !saved)
    QMessageBox::warning(this, title, told(saved.error()));
}

ActualWindow* show_actual_window(store::JobBook& book, std::int64_t version, QWidget* parent,
                                 const std::string& folder) {
  auto read = book.version(version);
  if (!read) {
    QMessageBox::warning(parent, ActualWindow::tr("What was really used"), told(read.error()));
    return nullptr;
  }
  auto* window = new ActualWindow(book, std::move(*read), folder, parent);
  window->setAttribute(Qt::WA_DeleteOnClose);
  window->show();
  return window;
}

}  // namespace ui
