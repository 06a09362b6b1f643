#include "ui/actual/offers_page.h"

#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "files/actual_text.h"
#include "store/catalogue_book.h"
#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"
#include "units/number.h"

namespace ui {

using estimate::CatalogueOffer;
using estimate::Offered;

namespace {

QLabel* plain_label(QWidget* parent, const char* name, Type type) {
  auto* label = new QLabel(parent);
  label->setObjectName(QString::fromLatin1(name));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setFont(font(type));
  return label;
}

QTableWidget* list(const char* name, const QString& spoken, const QStringList& heads, QWidget* parent) {
  auto* table = new QTableWidget(0, static_cast<int>(heads.size()), parent);
  table->setHorizontalHeaderLabels(heads);
  make_list(table, name, spoken);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  return table;
}

void put(QTableWidget* table, int row, const QStringList& cells, int first_number, int last_number) {
  for (int column = 0; column < cells.size(); ++column) {
    auto* cell = new QTableWidgetItem(cells[column]);
    cell->setToolTip(cells[column].toHtmlEscaped());
    const bool number = column >= first_number && column <= last_number;
    cell->setTextAlignment((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    table->setItem(row, column, cell);
  }
}

std::string trimmed(double value) {
  std::string digits = units::show_number(value, 4);
  while (digits.ends_with('0')) digits.pop_back();
  if (digits.ends_with('.')) digits.pop_back();
  return digits;
}

// "4 %", "0.44 h/m2".
QString value_of(const CatalogueOffer& offer, double value) {
  if (offer.what == Offered::breakage) return shown_number(value * 100) + QStringLiteral(" %");
  return OffersPage::tr("%1 h/%2").arg(QString::fromStdString(trimmed(value)), said(offer.unit));
}

// The figure alone, where the unit stands beside it already.
QString figure_of(const CatalogueOffer& offer, double value) {
  if (offer.what == Offered::breakage) return value_of(offer, value);
  return QString::fromStdString(trimmed(value));
}

QString name_of(const CatalogueOffer& offer) {
  return QString::fromStdString(offer.name.empty() ? offer.id : offer.name);
}

QString count_of(const CatalogueOffer& offer, std::size_t left_out) {
  const auto count = offer.jobs.size() - left_out;
  return offer.offered ? QString::number(count) : OffersPage::tr("%1, too few").arg(count);
}

QString conditions_of(const estimate::JobConditions& conditions, units::System units) {
  QStringList parts;
  for (const std::string& factor : conditions.factors) parts << QString::fromStdString(factor);
  if (conditions.narrowest)
    parts << OffersPage::tr("way in %1").arg(QString::fromStdString(units::show_length(*conditions.narrowest, units)));
  if (conditions.curved > 0.005) parts << OffersPage::tr("%1 % curved").arg(qRound(conditions.curved * 100));
  return parts.isEmpty() ? OffersPage::tr("none noted") : parts.join(QStringLiteral("; "));
}

std::vector<estimate::ClosedRecord> records_of(const store::ClosedLedgers& ledgers) {
  std::vector<estimate::ClosedRecord> records;
  for (const store::ClosedLedger& one : ledgers.jobs)
    records.push_back({one.job, one.number.empty() ? one.name : one.number + " " + one.name,
                       estimate::conditions(one.version.job), one.version.job.catalogue,
                       estimate::actual(one.version.job, one.version.kept, one.entries)});
  return records;
}

}  // namespace

problem::Result<catalogue::Change> change_for(const CatalogueOffer& offer, const catalogue::Stock& stock) {
  const auto none = [] {
    return problem::fault("offer-none", "there is nothing to take into the catalogue",
                          "choose an offer of 3 jobs or more");
  };
  if (!offer.offered) return none();
  catalogue::Kept before;
  if (offer.what == Offered::breakage) {
    const catalogue::Item* item = stock.all.item(offer.id);
    if (item == nullptr) return none();
    before.entry = *item;
  } else {
    const catalogue::Rate* rate = stock.all.rate(offer.id);
    if (rate == nullptr) return none();
    before.entry = *rate;
  }
  before.retired = stock.retired.contains(catalogue::key_of(before.entry));
  catalogue::Kept after = before;
  if (auto* item = std::get_if<catalogue::Item>(&after.entry)) item->breakage = *offer.offered;
  if (auto* rate = std::get_if<catalogue::Rate>(&after.entry)) {
    rate->hours_per_si_unit = *offer.offered;
    rate->source = "own jobs: median " + offer.note;
    rate->known = "measured";
  }
  return catalogue::Change{{{before, after}}, "own jobs, " + offer.note};
}

OffersPage::OffersPage(store::JobBook& book, std::string folder, units::System units, QWidget* parent)
    : QWidget(parent), book_(book), folder_(std::move(folder)), units_(units) {
  setObjectName(QStringLiteral("offers-page"));
  list_ = list("offers-list", tr("What closed jobs say"),
               {tr("What"), tr("Of"), tr("Catalogue"), tr("Offered"), tr("Least"), tr("Lower quarter"), tr("Middle"),
                tr("Upper quarter"), tr("Most"), tr("Jobs")},
               this);
  jobs_ =
      list("offers-jobs", tr("Jobs behind the offer"), {tr("Job"), tr("Came to"), tr("How"), tr("Conditions")}, this);
  spread_ = plain_label(this, "offers-spread", Type::note);
  said_ = plain_label(this, "offers-said", Type::note);
  said_->hide();
  take_ = new QPushButton(tr("Take into the catalogue ..."), this);
  take_->setObjectName(QStringLiteral("offers-take"));
  take_->setAutoDefault(false);
  auto* lead = plain_label(this, "offers-lead", Type::text);
  lead->setText(
      tr("Offered from the office's own closed jobs, never set by itself. Look at the jobs and their "
         "conditions first: an offer out of jobs unlike the next one misleads."));
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, px(10), 0, 0);
  rows->setSpacing(px(8));
  rows->addWidget(lead);
  rows->addWidget(list_, 3);
  rows->addWidget(spread_);
  rows->addWidget(jobs_, 2);
  rows->addWidget(said_);
  rows->addWidget(take_, 0, Qt::AlignLeft);
  connect(list_, &QTableWidget::itemSelectionChanged, this, &OffersPage::show_jobs);
  connect(jobs_, &QTableWidget::itemChanged, this, &OffersPage::job_ticked);
  connect(take_, &QPushButton::clicked, this, &OffersPage::take);
}

void OffersPage::say(const QString& words) {
  said_->setText(words);
  said_->setVisible(!words.isEmpty());
}

void OffersPage::refresh() {
  offers_.clear();
  const auto ledgers = book_.closed_ledgers();
  auto catalogue = store::CatalogueBook::open(folder_);
  if (!ledgers) {
    say(told(ledgers.error()));
  } else if (!catalogue) {
    say(told(catalogue.error()));
  } else if (const auto now = catalogue->read(); !now) {
    say(told(now.error()));
  } else {
    offers_ = estimate::offers(*now, records_of(*ledgers));
    QStringList left_out;
    for (const problem::Problem& one : ledgers->left_out) left_out << told(one);
    if (!left_out.isEmpty()) say(left_out.join(QLatin1Char('\n')));
  }
  left_out_.assign(offers_.size(), {});
  show_offers();
  if (!offers_.empty()) list_->selectRow(0);
  show_jobs();
}

void OffersPage::show_offers() {
  const QSignalBlocker quiet(list_);
  list_->setRowCount(static_cast<int>(offers_.size()));
  for (int row = 0; row < list_->rowCount(); ++row) {
    const CatalogueOffer& one = offers_[static_cast<std::size_t>(row)];
    const auto of_spread = [&](double estimate::Spread::* which) {
      return one.spread ? figure_of(one, (*one.spread).*which) : QStringLiteral("–");
    };
    using estimate::Spread;
    put(list_, row,
        {one.what == Offered::breakage ? tr("Broken or spoilt") : tr("Hours"), name_of(one), value_of(one, one.now),
         one.offered ? value_of(one, *one.offered) : QStringLiteral("–"), of_spread(&Spread::least),
         of_spread(&Spread::lower), of_spread(&Spread::median), of_spread(&Spread::upper), of_spread(&Spread::most),
         count_of(one, left_out_[static_cast<std::size_t>(row)].size())},
        2, 9);
  }
  for (int column = 2; column < 10; ++column)
    list_->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  set_widths(list_, 1);
}

// A job that is not like the next one is left out by a tick.
void OffersPage::job_ticked() {
  const CatalogueOffer* offer = chosen();
  if (offer == nullptr) return;
  const auto at = static_cast<std::size_t>(offer - offers_.data());
  left_out_[at].clear();
  for (int row = 0; row < jobs_->rowCount(); ++row)
    if (jobs_->item(row, 0)->checkState() != Qt::Checked)
      left_out_[at].insert(offer->jobs[static_cast<std::size_t>(row)].job);
  offers_[at] = estimate::from_like_jobs(*offer, left_out_[at]);
  const QSignalBlocker quiet(jobs_);
  for (int row = 0; row < jobs_->rowCount(); ++row) {
    const estimate::SeenInJob& job = offers_[at].jobs[static_cast<std::size_t>(row)];
    say_job(row, job, left_out_[at].contains(job.job));
  }
  show_offers();
  show_words();
}

const CatalogueOffer* OffersPage::chosen() const {
  const auto rows = list_->selectionModel()->selectedRows();
  return rows.isEmpty() ? nullptr : &offers_[static_cast<std::size_t>(rows.front().row())];
}

void OffersPage::show_jobs() {
  const CatalogueOffer* offer = chosen();
  const QSignalBlocker quiet(jobs_);
  jobs_->setRowCount(offer ? static_cast<int>(offer->jobs.size()) : 0);
  for (int row = 0; row < jobs_->rowCount(); ++row) {
    const estimate::SeenInJob& job = offer->jobs[static_cast<std::size_t>(row)];
    put(jobs_, row,
        {QString(), value_of(*offer, job.value), QString::fromStdString(job.working),
         conditions_of(job.conditions, units_)},
        1, 1);
    const auto& out = left_out_[static_cast<std::size_t>(offer - offers_.data())];
    say_job(row, job, out.contains(job.job));
  }
  set_widths(jobs_, 3);
  jobs_->horizontalHeader()->setSectionResizeMode(2, QHeaderView::ResizeToContents);
  show_words();
}

// A job that does not count says so in words too.
void OffersPage::say_job(int row, const estimate::SeenInJob& job, bool out) {
  QTableWidgetItem* cell = jobs_->item(row, 0);
  const QString name = QString::fromStdString(job.name).simplified();
  cell->setText(out ? tr("%1 (left out)").arg(name) : name);
  cell->setToolTip(cell->text().toHtmlEscaped());
  cell->setCheckState(out ? Qt::Unchecked : Qt::Checked);
}

void OffersPage::show_words() {
  const CatalogueOffer* offer = chosen();
  take_->setEnabled(offer && offer->offered && !book_.only_read());
  if (offers_.empty()) return spread_->setText(tr("No closed job has entries of use or hours yet."));
  if (!offer) return spread_->setText(tr("Choose a row to see its jobs."));
  const auto count = offer->jobs.size() - left_out_[static_cast<std::size_t>(offer - offers_.data())].size();
  if (!offer->offered)
    return spread_->setText(
        tr("%1: closed jobs that count: %2. Nothing is offered from fewer than 3.").arg(name_of(*offer)).arg(count));
  spread_->setText(
      tr("%1: the catalogue has %2, the middle of %3 closed jobs is %4. Untick what is unlike the next job.")
          .arg(name_of(*offer), value_of(*offer, offer->now))
          .arg(count)
          .arg(value_of(*offer, *offer->offered)));
}

void OffersPage::take() {
  const CatalogueOffer* offer = chosen();
  if (offer == nullptr || !offer->offered) return;
  QMessageBox ask(QMessageBox::Question, tr("Take into the catalogue"),
                  tr("%1: %2 instead of %3 for all new jobs? Jobs that have it already keep theirs; the change can be "
                     "undone in the catalogue.")
                      .arg(name_of(*offer), value_of(*offer, *offer->offered), value_of(*offer, offer->now)),
                  QMessageBox::NoButton, this);
  ask.setTextFormat(Qt::PlainText);
  ask.setObjectName(QStringLiteral("offers-ask"));
  ask.addButton(tr("Take it"), QMessageBox::AcceptRole)->setObjectName(QStringLiteral("offers-yes"));
  ask.setDefaultButton(ask.addButton(tr("Leave it"), QMessageBox::RejectRole));
  ask.exec();
  if (ask.buttonRole(ask.clickedButton()) != QMessageBox::AcceptRole) return;
  const QString name = name_of(*offer);
  auto catalogue = store::CatalogueBook::open(folder_);
  if (!catalogue) return say(told(catalogue.error()));
  const auto stock = catalogue->stock();
  if (!stock) return say(told(stock.error()));
  const auto change = change_for(*offer, *stock);
  if (!change) return say(told(change.error()));
  if (const auto done = catalogue->change(*change); !done) return say(told(done.error()));
  refresh();
  say(tr("%1 was changed in the catalogue").arg(name));
}

}  // namespace ui
