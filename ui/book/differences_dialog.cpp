#include "ui/book/differences_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/book/book_table.h"
#include "ui/look/theme.h"
#include "ui/panels/flow_layout.h"
#include "ui/panels/panel_words.h"

namespace ui {

using catalogue::Choice;
using catalogue::PartDifference;

namespace {

QString part_word(catalogue::Part part) {
  switch (part) {
    case catalogue::Part::item: return DifferencesDialog::tr("Item");
    case catalogue::Part::pattern: return DifferencesDialog::tr("Pattern");
    case catalogue::Part::build_up: return DifferencesDialog::tr("Build-up");
    case catalogue::Part::limit: return DifferencesDialog::tr("Limit");
    case catalogue::Part::rate: return DifferencesDialog::tr("Labour rate");
    case catalogue::Part::supplier: return DifferencesDialog::tr("Supplier");
    case catalogue::Part::junction: return DifferencesDialog::tr("Junction");
  }
  return {};
}

QString what_word(const PartDifference& one) {
  switch (one.what) {
    case PartDifference::What::missing: return DifferencesDialog::tr("not in the catalogue");
    case PartDifference::What::price: return DifferencesDialog::tr("another price");
    case PartDifference::What::other:
      return one.in_job == one.in_book ? DifferencesDialog::tr("other details")
                                       : DifferencesDialog::tr("price and other details");
  }
  return {};
}

QString price_word(const std::optional<catalogue::Price>& price, const plan::Heading& heading) {
  if (!price) return {};
  if (price->by_others) return DifferencesDialog::tr("by others");
  return DifferencesDialog::tr("%1 per %2")
      .arg(shown_money(price->amount, heading), QString::fromStdString(price->unit));
}

constexpr Choice all_choices[] = {Choice::keep_jobs, Choice::take_books, Choice::put_into_book};

QString choice_word(Choice choice) {
  switch (choice) {
    case Choice::keep_jobs: return DifferencesDialog::tr("Keep the job's");
    case Choice::take_books: return DifferencesDialog::tr("Take the catalogue's");
    case Choice::put_into_book: return DifferencesDialog::tr("Put the job's into the catalogue");
  }
  return {};
}

Choice first_choice(const PartDifference& one, Settling settling) {
  if (settling == Settling::open_job)
    return one.what == PartDifference::What::price ? Choice::take_books : Choice::keep_jobs;
  return one.what == PartDifference::What::missing ? Choice::put_into_book : Choice::keep_jobs;
}

}  // namespace

DifferencesDialog::DifferencesDialog(const std::vector<PartDifference>& found, const plan::Heading& heading,
                                     Settling settling, QWidget* parent)
    : QDialog(parent), found_(found), table_(new QTableWidget(static_cast<int>(found.size()), 6, this)) {
  const bool comes_in = settling == Settling::bring_in;
  setObjectName(QStringLiteral("differences"));
  setWindowTitle(comes_in ? tr("What the job brings") : tr("Prices of the book"));
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(14), px(16), px(14));
  auto* words =
      new QLabel(comes_in ? tr("The job comes with its own prices and parts. These are not as your catalogue "
                               "has them. The job stays as it was priced unless you take the catalogue's.")
                          : tr("These parts of the open job are not as your catalogue has them. What you take "
                               "from it is one step, which Undo takes back."),
                 this);
  words->setWordWrap(true);
  rows->addWidget(words);
  fill(heading, settling);
  rows->addWidget(table_, 1);
  rows->addWidget(make_for_all());
  rows->addWidget(make_buttons(settling));
  resize(px(1040), px(520));
}

void DifferencesDialog::fill(const plan::Heading& heading, Settling settling) {
  table_->setHorizontalHeaderLabels(
      {tr("Part"), tr("Name"), tr("What differs"), tr("In the job"), tr("In the catalogue"), tr("What to do")});
  make_list(table_, "differences-list", tr("What differs"));
  table_->verticalHeader()->setDefaultSectionSize(px(34));
  for (int row = 0; row < table_->rowCount(); ++row) {
    const PartDifference& one = found_[static_cast<std::size_t>(row)];
    const QString cells[] = {part_word(one.part), own_name(one.name, one.id), what_word(one),
                             price_word(one.in_job, heading), price_word(one.in_book, heading)};
    for (int column = 0; column < 5; ++column) {
      auto* cell = new QTableWidgetItem(cells[column]);
      cell->setToolTip(cells[column]);
      table_->setItem(row, column, cell);
    }
    table_->setCellWidget(row, 5, choice_of(one, settling));
  }
  set_widths(table_, 1);
  table_->horizontalHeader()->resizeSection(5, boxes_.empty() ? px(200) : boxes_.front()->sizeHint().width() + px(8));
}

QWidget* DifferencesDialog::make_for_all() {
  auto* room = new QWidget(this);
  auto* flow = new FlowLayout(room);
  flow->setContentsMargins(0, 0, 0, 0);
  flow->set_gaps(px(6), px(6));
  const struct {
    const char* name;
    QString words;
    Choice choice;
  } for_all[] = {{"differences-keep", tr("Keep all of the job's"), Choice::keep_jobs},
                 {"differences-take", tr("Take all of the catalogue's"), Choice::take_books},
                 {"differences-put", tr("Put all into the catalogue"), Choice::put_into_book}};
  for (const auto& one : for_all) {
    auto* button = new QPushButton(one.words, room);
    button->setObjectName(QString::fromLatin1(one.name));
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, [this, choice = one.choice] { choose_for_all(choice); });
    flow->addWidget(button);
  }
  return room;
}

QWidget* DifferencesDialog::make_buttons(Settling settling) {
  auto* buttons = new QDialogButtonBox(this);
  auto* in = buttons->addButton(settling == Settling::bring_in ? tr("Bring the job in") : tr("Change the job"),
                                QDialogButtonBox::AcceptRole);
  in->setObjectName(QStringLiteral("differences-done"));
  in->setDefault(true);
  make_main(in);
  auto* leave = buttons->addButton(tr("Leave it"), QDialogButtonBox::RejectRole);
  leave->setObjectName(QStringLiteral("differences-leave"));
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  return buttons;
}

QComboBox* DifferencesDialog::choice_of(const PartDifference& one, Settling settling) {
  auto* box = new QComboBox(table_);
  box->setObjectName(QStringLiteral("differences-choice-%1").arg(boxes_.size()));
  box->setAccessibleName(tr("What to do with %1").arg(own_name(one.name, one.id)));
  for (const Choice choice : all_choices)
    if (choice != Choice::take_books || one.what != PartDifference::What::missing)
      box->addItem(choice_word(choice), static_cast<int>(choice));
  box->setCurrentIndex(box->findData(static_cast<int>(first_choice(one, settling))));
  boxes_.push_back(box);
  return box;
}

// Where a row has no such choice (the catalogue has none to take) it stays.
void DifferencesDialog::choose_for_all(Choice choice) {
  for (QComboBox* box : boxes_)
    if (const int at = box->findData(static_cast<int>(choice)); at >= 0) box->setCurrentIndex(at);
}

std::vector<catalogue::Chosen> DifferencesDialog::choices() const {
  std::vector<catalogue::Chosen> chosen;
  for (std::size_t row = 0; row < found_.size(); ++row)
    chosen.push_back({found_[row].part, found_[row].id, static_cast<Choice>(boxes_[row]->currentData().toInt())});
  return chosen;
}

std::optional<std::vector<catalogue::Chosen>> ask_differences(const std::vector<PartDifference>& found,
                                                              const plan::Heading& heading, Settling settling,
                                                              QWidget* parent) {
  if (found.empty()) return std::vector<catalogue::Chosen>{};
  DifferencesDialog dialog(found, heading, settling, parent);
  if (dialog.exec() != QDialog::Accepted) return std::nullopt;
  return dialog.choices();
}

}  // namespace ui
