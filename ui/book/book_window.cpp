#include "ui/book/book_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/look/theme.h"
#include "ui/panels/flow_layout.h"

namespace ui {

namespace {

QLabel* plain_label(QWidget* parent, const char* name) {
  auto* label = new QLabel(parent);
  label->setObjectName(QString::fromLatin1(name));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

}  // namespace

BookWindow::BookWindow(store::JobBook& book, QWidget* parent)
    : QDialog(parent), book_(book), jobs_(new JobModel(this)), versions_(new VersionModel(this)) {
  setObjectName(QStringLiteral("book-window"));
  setWindowTitle(tr("Job book"));
  setAttribute(Qt::WA_DeleteOnClose);
  auto* halves = new QSplitter(Qt::Vertical, this);
  halves->setChildrenCollapsible(false);
  halves->addWidget(make_jobs());
  halves->addWidget(make_versions());
  halves->setStretchFactor(0, 3);
  halves->setStretchFactor(1, 2);
  said_ = plain_label(this, "book-said");
  said_->setAccessibleName(tr("What is said"));
  said_->hide();
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(12), px(16), px(12));
  rows->addWidget(halves, 1);
  rows->addWidget(said_);
  connect(job_table_->selectionModel(), &QItemSelectionModel::selectionChanged, this, &BookWindow::job_chosen);
  connect(version_table_->selectionModel(), &QItemSelectionModel::selectionChanged, this, &BookWindow::versions_chosen);
  resize(px(1060), px(720));
  refresh();
  words_->setFocus();
}

QPushButton* BookWindow::button(const char* name, const QString& words, std::function<void()> does) {
  auto* made = new QPushButton(words, this);
  made->setObjectName(QString::fromLatin1(name));
  made->setAutoDefault(false);  // Enter in the search field opens nothing
  connect(made, &QPushButton::clicked, this, std::move(does));
  return made;
}

QTableView* BookWindow::make_table(QAbstractItemModel* model, const char* name, const QString& spoken) {
  auto* table = new QTableView(this);
  table->setModel(model);
  make_list(table, name, spoken);
  return table;
}

QWidget* BookWindow::make_jobs() {
  auto* half = new QWidget(this);
  auto* rows = new QVBoxLayout(half);
  rows->setContentsMargins(0, 0, 0, px(6));
  words_ = new QLineEdit(half);
  words_->setObjectName(QStringLiteral("book-search"));
  words_->setAccessibleName(tr("Search the jobs"));
  words_->setPlaceholderText(tr("Number, job, customer or place"));
  words_->setClearButtonEnabled(true);
  sorted_ = new QComboBox(half);
  sorted_->setObjectName(QStringLiteral("book-sorted"));
  sorted_->setAccessibleName(tr("Sorted by"));
  sorted_->addItem(tr("Newest first"), -1);
  for (int column = 0; column < JobModel::columns; ++column)
    sorted_->addItem(tr("By %1").arg(jobs_->headerData(column, Qt::Horizontal).toString()), column);
  archived_ = new QCheckBox(tr("Archived ones too"), half);
  archived_->setObjectName(QStringLiteral("book-archived"));
  counted_ = plain_label(half, "book-counted");
  counted_->setWordWrap(false);
  auto* top = new QHBoxLayout;
  top->addWidget(words_, 1);
  top->addWidget(sorted_);
  top->addWidget(archived_);
  top->addWidget(counted_);
  rows->addLayout(top);
  job_table_ = make_table(jobs_, "book-jobs", tr("Jobs"));
  job_table_->setSelectionMode(QAbstractItemView::SingleSelection);
  job_table_->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
  job_table_->setSortingEnabled(true);
  rows->addWidget(job_table_, 1);
  auto* flow = new FlowLayout;
  flow->set_gaps(px(6), px(6));
  open_ = button("book-open", tr("Open"), [this] { emit open_job(chosen_job()); });
  make_main(open_);
  copy_ = button("book-copy", tr("Copy"), [this] { copy_job(); });
  archive_ = button("book-archive", tr("Archive"), [this] { archive_job(); });
  write_ = button("book-write", tr("Write a job file ..."), [this] { emit write_job(chosen_job()); });
  state_ = new QComboBox(half);
  state_->setObjectName(QStringLiteral("book-state"));
  state_->setAccessibleName(tr("State of the work"));
  state_->setIconSize({px(14), px(14)});
  for (const store::State state : store::all_states) state_->addItem(state_sign(state), state_name(state));
  connect(state_, &QComboBox::activated, this, &BookWindow::set_state);
  auto* made = button("book-new", tr("New job"), [this] { emit new_job(); });
  auto* bring_in = button("book-bring-in", tr("Bring in a job file ..."), [this] { emit bring_in_job(); });
  for (QWidget* one : std::initializer_list<QWidget*>{open_, made, copy_, state_, archive_, bring_in, write_})
    flow->addWidget(one);
  rows->addLayout(flow);
  connect(words_, &QLineEdit::textChanged, this, &BookWindow::search);
  connect(archived_, &QCheckBox::toggled, this, &BookWindow::search);
  connect(sorted_, &QComboBox::activated, this,
          [this] { job_table_->sortByColumn(sorted_->currentData().toInt(), Qt::AscendingOrder); });
  connect(job_table_->horizontalHeader(), &QHeaderView::sortIndicatorChanged, this, [this](int column) {
    sorted_->setCurrentIndex(sorted_->findData(column));
    choose(chosen_job());
  });
  connect(job_table_, &QTableView::activated, this, [this] { emit open_job(chosen_job()); });
  return half;
}

QWidget* BookWindow::make_versions() {
  auto* half = new QWidget(this);
  auto* rows = new QVBoxLayout(half);
  rows->setContentsMargins(0, px(6), 0, 0);
  of_job_ = plain_label(half, "book-of-job");
  of_job_->setFont(ui::font(Type::name, true));
  rows->addWidget(of_job_);
  version_table_ = make_table(versions_, "book-versions", tr("Versions of the job"));
  version_table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
  rows->addWidget(version_table_, 1);
  auto* flow = new FlowLayout;
  flow->set_gaps(px(6), px(6));
  save_ = button("book-save-version", tr("Save a version ..."), [this] { emit save_version(chosen_job()); });
  show_ = button("book-show-version", tr("Read the version"), [this] { open_version(); });
  work_on_ = button("book-work-on", tr("Work on from here"), [this] { emit work_on_from(chosen_versions().front()); });
  compare_ = button("book-compare", tr("Compare the two"), [this] {
    const auto two = chosen_versions();
    emit compare_versions(two.back(), two.front());
  });
  compare_->setToolTip(tr("Choose two versions with Ctrl"));
  today_ = button("book-today", tr("At today's prices"), [this] { emit at_todays_prices(chosen_versions().front()); });
  otherwise_ =
      button("book-otherwise", tr("Built otherwise ..."), [this] { emit built_otherwise(chosen_versions().front()); });
  for (QPushButton* one : {save_, show_, work_on_, compare_, today_, otherwise_}) flow->addWidget(one);
  rows->addLayout(flow);
  connect(version_table_, &QTableView::activated, this, &BookWindow::open_version);
  return half;
}

BookWindow* show_book_window(store::JobBook& book, QWidget* parent) {
  auto* window = parent->findChild<BookWindow*>();
  if (window == nullptr)
    window = new BookWindow(book, parent);
  else
    window->refresh();
  window->show();
  window->raise();
  window->activateWindow();
  return window;
}

void BookWindow::refresh() {
  const std::int64_t was = chosen_job();
  auto rows = book_.jobs();
  if (!rows) return tell(told(rows.error()));
  jobs_->take(std::move(*rows));
  set_widths(job_table_, static_cast<int>(store::Column::name));
  choose(was);
}

}  // namespace ui
