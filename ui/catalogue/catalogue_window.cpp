#include "ui/catalogue/catalogue_window.h"

#include <QCheckBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/catalogue/entry_picture.h"
#include "ui/catalogue/price_history.h"
#include "ui/look/theme.h"
#include "ui/panels/flow_layout.h"

namespace ui {

namespace {

constexpr int group_role = Qt::UserRole;

QLabel* plain_label(QWidget* parent, const char* name) {
  auto* label = new QLabel(parent);
  label->setObjectName(QString::fromLatin1(name));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

}  // namespace

CatalogueWindow::CatalogueWindow(store::CatalogueBook book, QWidget* parent)
    : QDialog(parent), book_(std::move(book)), rows_(new EntryModel(this)) {
  setObjectName(QStringLiteral("catalogue-window"));
  setWindowTitle(tr("Catalogue"));
  setAttribute(Qt::WA_DeleteOnClose);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(12), px(16), px(12));
  rows->addWidget(make_top());
  auto* parts = new QSplitter(Qt::Horizontal, this);
  parts->setChildrenCollapsible(false);
  make_groups();
  parts->addWidget(groups_);
  parts->addWidget(make_list());
  parts->addWidget(make_side());
  parts->setStretchFactor(1, 1);
  parts->setSizes({px(190), px(690), px(390)});
  rows->addWidget(parts, 1);
  said_ = plain_label(this, "catalogue-said");
  said_->setAccessibleName(tr("What was done, or went wrong"));
  said_->hide();
  rows->addWidget(said_);
  for (const bool back : {true, false}) {
    auto* shortcut = new QShortcut(back ? QKeySequence::Undo : QKeySequence::Redo, this);
    connect(shortcut, &QShortcut::activated, this, [this, back] { step(back); });
  }
  resize(px(1300), px(780));
  refresh();
  groups_->setCurrentRow(1);  // the first below its heading
  groups_->scrollToTop();
  words_->setFocus();
}

QPushButton* CatalogueWindow::button(const char* name, const QString& words, std::function<void()> does) {
  auto* made = new QPushButton(words, this);
  made->setObjectName(QString::fromLatin1(name));
  made->setAutoDefault(false);  // Enter in a field presses nothing
  connect(made, &QPushButton::clicked, this, std::move(does));
  return made;
}

QWidget* CatalogueWindow::make_top() {
  auto* top = new QWidget(this);
  auto* flow = new QHBoxLayout(top);
  flow->setContentsMargins(0, 0, 0, px(6));
  words_ = new QLineEdit(top);
  words_->setObjectName(QStringLiteral("catalogue-search"));
  words_->setAccessibleName(tr("Search the catalogue"));
  words_->setPlaceholderText(tr("Name, size, number or supplier, in all groups"));
  words_->setClearButtonEnabled(true);
  retired_ = new QCheckBox(tr("Retired ones too"), top);
  retired_->setObjectName(QStringLiteral("catalogue-retired"));
  counted_ = plain_label(top, "catalogue-counted");
  counted_->setWordWrap(false);
  flow->addWidget(words_, 1);
  flow->addWidget(retired_);
  flow->addWidget(counted_);
  connect(words_, &QLineEdit::textChanged, this, [this] { show_rows(); });
  connect(retired_, &QCheckBox::toggled, this, [this] { show_rows(); });
  return top;
}

void CatalogueWindow::make_groups() {
  groups_ = new QListWidget(this);
  groups_->setObjectName(QStringLiteral("catalogue-groups"));
  groups_->setAccessibleName(tr("Groups"));
  groups_->setMinimumWidth(px(150));
  groups_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  groups_->setTextElideMode(Qt::ElideRight);
  groups_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  groups_->setItemDelegate(new WholeRows(groups_));
  QString heading;
  const auto& all = catalogue_groups();
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (const QString own = group_heading(all[i]); own != heading) {
      heading = own;
      auto* head = new QListWidgetItem(heading, groups_);
      head->setFlags(Qt::NoItemFlags);
      head->setFont(ui::font(Type::small, true));
      head->setForeground(theme().ink3);
      head->setTextAlignment(Qt::AlignLeft | Qt::AlignBottom);
      head->setSizeHint({0, px(groups_->count() == 1 ? 24 : 32)});
    }
    auto* row = new QListWidgetItem(group_name(all[i]), groups_);
    row->setData(group_role, static_cast<int>(i));
    row->setToolTip(row->text());
    row->setSizeHint({0, px(24)});
  }
  connect(groups_, &QListWidget::currentRowChanged, this, &CatalogueWindow::group_chosen);
}

QWidget* CatalogueWindow::make_list() {
  auto* middle = new QWidget(this);
  auto* rows = new QVBoxLayout(middle);
  rows->setContentsMargins(px(8), 0, px(8), 0);
  table_ = new QTableView(middle);
  table_->setModel(rows_);
  ui::make_list(table_, "catalogue-entries", tr("Entries"));
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->horizontalHeader()->setSortIndicator(0, Qt::AscendingOrder);
  table_->setSortingEnabled(true);
  rows->addWidget(table_, 1);
  auto* flow = new FlowLayout;
  flow->set_gaps(px(6), px(6));
  add_ = button("catalogue-add", tr("Add ..."), [this] { add(false); });
  copy_ = button("catalogue-copy", tr("Copy ..."), [this] { add(true); });
  retire_ = button("catalogue-retire", tr("Retire"), [this] { retire(); });
  auto* undo = button("catalogue-undo", tr("Undo"), [this] { step(true); });
  auto* redo = button("catalogue-redo", tr("Redo"), [this] { step(false); });
  auto* prices = button("catalogue-price-list", tr("Price list from a file ..."), [this] { ask_price_file(); });
  for (QPushButton* one : {add_, copy_, retire_, undo, redo, prices}) flow->addWidget(one);
  rows->addLayout(flow);
  connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this, &CatalogueWindow::row_chosen);
  connect(table_->horizontalHeader(), &QHeaderView::sortIndicatorChanged, this, [this] {
    if (chosen_) choose(catalogue::Key(*chosen_));
  });
  return middle;
}

QWidget* CatalogueWindow::make_side() {
  auto* inside = new QWidget(this);
  auto* rows = new QVBoxLayout(inside);
  rows->setContentsMargins(px(8), 0, px(12), 0);
  title_ = plain_label(inside, "catalogue-title");
  title_->setFont(ui::font(Type::name, true));
  state_ = plain_label(inside, "catalogue-state");
  state_->setFont(ui::font(Type::text, true));
  put_back_ = button("catalogue-put-back", tr("Put back"), [this] { put_back(); });
  picture_ = new EntryPicture(inside);
  form_ = new CatalogueForm(stock_, inside);
  prices_ = new PriceHistory(inside);
  rows->addWidget(title_);
  rows->addWidget(state_);
  rows->addWidget(put_back_, 0, Qt::AlignLeft);
  rows->addWidget(picture_);
  rows->addWidget(form_);
  rows->addWidget(prices_);
  rows->addStretch(1);
  connect(form_, &CatalogueForm::given, this, &CatalogueWindow::give);
  auto* area = side_ = new QScrollArea(this);
  area->setObjectName(QStringLiteral("catalogue-side"));
  area->setAccessibleName(tr("The entry"));
  area->setWidget(inside);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setMinimumWidth(px(340));
  return area;
}

CatalogueWindow* show_catalogue_window(const std::string& folder, QWidget* parent) {
  auto* window = parent != nullptr ? parent->findChild<CatalogueWindow*>() : nullptr;
  if (window == nullptr) {
    auto book = store::CatalogueBook::open(folder);
    if (!book) {
      auto* box = new QMessageBox(QMessageBox::Warning, CatalogueWindow::tr("Catalogue"), told(book.error()),
                                  QMessageBox::Close, parent);
      box->setAttribute(Qt::WA_DeleteOnClose);
      box->open();
      return nullptr;
    }
    window = new CatalogueWindow(std::move(*book), parent);
  } else {
    window->refresh();
  }
  window->show();
  window->raise();
  window->activateWindow();
  return window;
}

}  // namespace ui
