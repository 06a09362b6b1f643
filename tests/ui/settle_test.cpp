// A job from elsewhere, and the open one, against the catalogue of the book: asked about part by part, nothing changed
// before the person says so.
#include <gtest/gtest.h>

#include <QPushButton>
#include <QTableWidget>

#include "seat.h"
#include "ui/book/differences_dialog.h"

namespace {

using catalogue::Catalogue;

plan::Job with_item(plan::Job job, const catalogue::Id& id, std::int64_t coins, const catalogue::Id& as) {
  Catalogue own = *job.catalogue;
  catalogue::Item item = *own.items.at(id);
  item.id = as;
  item.price = catalogue::Price{units::Money::of_coins(coins), item.price ? item.price->unit : "piece", "2026-01-01"};
  own.items[as] = std::make_shared<const catalogue::Item>(item);
  job.catalogue = std::make_shared<const Catalogue>(std::move(own));
  return job;
}

void choose(QWidget& dialog, int row, catalogue::Choice choice) {
  auto* box = dialog.findChild<QComboBox*>(QStringLiteral("differences-choice-%1").arg(row));
  ASSERT_NE(box, nullptr);
  box->setCurrentIndex(box->findData(static_cast<int>(choice)));
}

int row_of(QWidget& dialog, const QString& what) {
  auto* list = dialog.findChild<QTableWidget*>("differences-list");
  for (int row = 0; row < list->rowCount(); ++row)
    if (list->item(row, 2)->text() == what) return row;
  return -1;
}

void press(QWidget& dialog, const char* name) {
  QTest::mouseClick(dialog.findChild<QAbstractButton*>(QString::fromLatin1(name)), Qt::LeftButton);
}

// A file of the job with a dearer item and one that the book has not, and the item's id.
struct FromElsewhere {
  explicit FromElsewhere(seat::Seat& at) {
    EXPECT_TRUE(person::wait_for_results(at.desk));
    const auto book = at.catalogue()();
    for (const auto& line : at.desk.results()->estimate.lines)
      if (item.empty() && line.amount && line.amount->coins() > 0 && book->item(line.item)) item = line.item;
    job = with_item(with_item(at.desk.job(), item, 123456, item), item, 777, "of-elsewhere");
    job.heading.name = "From elsewhere";
    file = QString::fromStdString(at.path() + "/elsewhere.json");
    EXPECT_TRUE(files::write_file(file.toStdString(), files::write_job(job)).has_value());
  }
  catalogue::Id item;
  plan::Job job;
  QString file;
};

TEST(Settle, aJobFromElsewhereAsksAndDoesWhatIsChosen) {
  seat::Seat at;
  const FromElsewhere brought(at);
  ASSERT_FALSE(brought.item.empty());
  const auto before = at.catalogue()();
  seat::in_dialog([](QWidget& dialog) {
    const int price = row_of(dialog, "another price"), lacks = row_of(dialog, "not in the catalogue");
    ASSERT_GE(price, 0);
    ASSERT_GE(lacks, 0);
    auto* cell = dialog.findChild<QTableWidget*>("differences-list")->item(price, 3);
    EXPECT_TRUE(cell->text().contains("1,234.56")) << cell->text().toStdString();
    choose(dialog, price, catalogue::Choice::take_books);
    press(dialog, "differences-done");
  });
  ASSERT_TRUE(at.window->read_job_file(brought.file));
  EXPECT_EQ(at.desk.job().heading.name, "From elsewhere");
  EXPECT_EQ(at.desk.job().catalogue->item(brought.item)->price, before->item(brought.item)->price);
  EXPECT_EQ(at.desk.job().catalogue->item("of-elsewhere")->price->amount.coins(), 777);
  const auto after = at.catalogue()();
  EXPECT_EQ(after->item(brought.item)->price, before->item(brought.item)->price);
  ASSERT_NE(after->item("of-elsewhere"), nullptr) << "what the book lacks goes into it unless it is said otherwise";
  EXPECT_EQ(after->item("of-elsewhere")->price->amount.coins(), 777);
}

TEST(Settle, leftAloneNothingIsBroughtInAndNothingChanged) {
  seat::Seat at;
  const FromElsewhere brought(at);
  const ui::JobPtr job = at.desk.job_ptr();
  const auto before = at.catalogue()();
  const auto jobs = at.book.jobs()->size();
  seat::in_dialog([](QWidget& dialog) {
    press(dialog, "differences-put");
    press(dialog, "differences-leave");
  });
  EXPECT_FALSE(at.window->read_job_file(brought.file));
  EXPECT_EQ(at.desk.job_ptr(), job);
  EXPECT_TRUE(catalogue::same(*at.catalogue()(), *before));
  EXPECT_EQ(at.book.jobs()->size(), jobs);
}

TEST(Settle, pricesOfTheBookAreOneStepThatIsTakenBack) {
  seat::Seat at;
  const FromElsewhere brought(at);
  at.desk.edit(brought.job, "From elsewhere");
  ASSERT_TRUE(person::wait_for_results(at.desk));
  const QString dear = at.total();
  at.price_in_book(brought.item, 1);
  seat::in_dialog([](QWidget& dialog) { press(dialog, "differences-done"); });  // prices are taken at first
  at.window->actions_by_id()["book-prices"].trigger();
  ASSERT_TRUE(person::wait_for_results(at.desk));
  EXPECT_EQ(at.desk.job().catalogue->item(brought.item)->price->amount.coins(), 1);
  EXPECT_EQ(at.desk.job().catalogue->item("of-elsewhere")->price->amount.coins(), 777) << "the job's own stays";
  EXPECT_EQ(at.catalogue()()->item("of-elsewhere"), nullptr);
  EXPECT_NE(at.total(), dear);
  EXPECT_EQ(at.desk.history().undo_name(), "Prices of the book");
  at.desk.undo();
  ASSERT_TRUE(person::wait_for_results(at.desk));
  EXPECT_EQ(at.total(), dear);
}

}  // namespace
