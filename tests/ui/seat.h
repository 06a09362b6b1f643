// The window with a job book behind it, as the program joins them, for tests of the office's work.
#pragma once

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTemporaryDir>
#include <QTimer>

#include "person.h"
#include "store/catalogue_book.h"
#include "ui/panels/panel_words.h"
#include "ui/panels/takeoff_model.h"
#include "ui/window/office.h"

namespace seat {

// The window with a book behind it, as run_window joins them.
class Seat {
 public:
  explicit Seat(plan::Job first = person::job_of("bakery-court"))
      : book(store::JobBook::open(folder.path().toStdString()).value()),
        desk(std::make_shared<const plan::Job>(std::move(first))),
        keeper(desk, book),
        office(desk, book, keeper, [this] { return window.get(); }, shelf_of(), path()) {
    EXPECT_TRUE(keeper.add().has_value());
    ui::Shelf shelf = shelf_of();
    shelf.show_book = [this] { office.show_book(); };
    shelf.save_version = [this] { office.save_version(); };
    shelf.version_state = [this] { return office.version_state(); };
    shelf.compare = [this] { office.compare_with_now(); };
    shelf.take_job = [this](plan::Job job) {
      desk.open(std::make_shared<const plan::Job>(std::move(job)));
      EXPECT_TRUE(keeper.add().has_value());
    };
    shelf.office = office.actions();
    shelf.sheets = office.sheets();
    window = std::make_unique<ui::MainWindow>(desk, shelf);
    window->resize(1440, 900);
    window->show();
    (void)QTest::qWaitForWindowExposed(window.get());
  }

  ui::Shelf shelf_of() {
    ui::Shelf shelf;
    shelf.catalogue = catalogue();
    shelf.put_items = [this](const catalogue::Catalogue& settled) -> problem::Result<void> {
      return store::CatalogueBook::open(path()).value().put(settled, "job file");
    };
    shelf.keep = [this](const QByteArray& bytes) { return book.keep(bytes.toStdString()).value(); };
    return shelf;
  }
  std::string path() const { return folder.path().toStdString(); }
  ui::Source catalogue() {
    return [this]() -> std::shared_ptr<const catalogue::Catalogue> {
      return std::make_shared<const catalogue::Catalogue>(store::CatalogueBook::open(path()).value().read().value());
    };
  }
  // The catalogue of the book gets another price for an item.
  void price_in_book(const std::string& item, std::int64_t coins) {
    auto book_of_items = store::CatalogueBook::open(path()).value();
    catalogue::Item priced = *book_of_items.read().value().items.at(item);
    if (!priced.price) priced.price = catalogue::Price{{}, "piece", "2026-11-28", false};
    priced.price->amount = units::Money::of_coins(coins);
    ASSERT_TRUE(book_of_items.replace_items({priced}).has_value());
  }
  // The dialog that the next action opens is filled in and sent off.
  void save_version(const char* name) {
    ASSERT_TRUE(person::wait_for_results(desk));
    QTimer::singleShot(0, [name] {
      QWidget* dialog = QApplication::activeModalWidget();
      ASSERT_NE(dialog, nullptr);
      auto* line = dialog->findChild<QLineEdit*>("version-name");
      QTest::keyClicks(line, QString::fromLatin1(name));
      QTest::keyClick(line, Qt::Key_Return);
    });
    window->actions_by_id()["save-version"].trigger();
  }
  void give_price(const char* item, const char* price) {
    const auto after = ui::with_price(desk.job(), item, price, "2026-11-28");
    ASSERT_TRUE(after.has_value());
    desk.edit(*after, "Change a price");
    ASSERT_TRUE(person::wait_for_results(desk));
  }
  QString total() const { return ui::shown_money(desk.results()->priced.total, desk.job().heading); }

  QTemporaryDir folder;
  store::JobBook book;
  ui::Desk desk;
  ui::Keeper keeper;
  std::unique_ptr<ui::MainWindow> window;
  ui::Office office;
};

// An item that the job buys for money.
inline std::string bought_item(const results::Results& results) {
  for (const auto& line : results.estimate.lines) {
    const bool bought = line.kind == plan::CostKind::material && line.amount && line.amount->coins() > 0;
    if (bought && results.job->catalogue->item(line.item)) return line.item;
  }
  return {};
}

inline void choose_rows(QTableView* table, std::vector<int> rows) {
  table->clearSelection();
  for (const int row : rows)
    table->selectionModel()->select(table->model()->index(row, 0),
                                    QItemSelectionModel::Select | QItemSelectionModel::Rows);
}

// Does `act` with the dialog that the next action opens, once it is there.
template <class Act>
void in_dialog(Act act) {
  QTimer::singleShot(0, [act] {
    QWidget* dialog = QApplication::activeModalWidget();
    ASSERT_NE(dialog, nullptr);
    act(*dialog);
  });
}

}  // namespace seat
