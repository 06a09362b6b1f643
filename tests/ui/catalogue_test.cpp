// The catalogue's window used as a person does: entries are added, changed, copied and retired, taken back and done
// again; a supplier's list is looked at before it is taken; what can't be is refused in words and nothing is lost.
#include "ui/catalogue/catalogue_window.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "ui/catalogue/entry_making.h"
#include "ui/catalogue/entry_picture.h"
#include "ui/catalogue/new_entry.h"
#include "ui/catalogue/price_history.h"
#include "ui/catalogue/price_list_dialog.h"
#include "ui/look/style.h"
#include "ui/look/theme.h"
#include "ui/words/words.h"

namespace {

using catalogue::Item;
using catalogue::Key;

struct Window {
  Window() {
    if (qEnvironmentVariableIsSet("GROUNDCOURSE_PICTURES")) ui::dress(*qApp);
    open();
  }
  void open() {
    window = std::make_unique<ui::CatalogueWindow>(store::CatalogueBook::open(path()).value());
    window->setAttribute(Qt::WA_DeleteOnClose, false);
    window->show();
    QApplication::setActiveWindow(window.get());
  }
  std::string path() const { return folder.path().toStdString() + "/book"; }

  template <class T>
  T* child(const char* name) {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);  // fields that were made anew are gone
    T* found = window->findChild<T*>(QString::fromLatin1(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  void press(const char* name) {
    auto* button = child<QAbstractButton>(name);
    ASSERT_TRUE(button->isEnabled()) << name;
    QTest::mouseClick(button, Qt::LeftButton);
  }
  QTableView* table() { return child<QTableView>("catalogue-entries"); }
  QStringList names() {
    QStringList list;
    for (int row = 0; row < table()->model()->rowCount(); ++row)
      list << table()->model()->index(row, 0).data().toString();
    return list;
  }
  QString cell(int column) {
    const auto rows = table()->selectionModel()->selectedRows();
    return rows.isEmpty() ? QString() : table()->model()->index(rows.front().row(), column).data().toString();
  }
  void click_on(const QString& name) {
    const auto row = static_cast<int>(names().indexOf(name));
    ASSERT_GE(row, 0) << name.toStdString();
    const QModelIndex index = table()->model()->index(row, 0);
    table()->scrollTo(index);
    QTest::mouseClick(table()->viewport(), Qt::LeftButton, {}, table()->visualRect(index).center());
  }
  void click_group(const QString& name) {
    auto* groups = child<QListWidget>("catalogue-groups");
    const auto found = groups->findItems(name, Qt::MatchExactly);
    ASSERT_EQ(found.size(), 1) << name.toStdString();
    groups->scrollToItem(found[0]);
    QTest::mouseClick(groups->viewport(), Qt::LeftButton, {}, groups->visualItemRect(found[0]).center());
  }
  // Typed into a field and left with Tab.
  void type(const char* field, const QString& text) {
    auto* line = child<QLineEdit>(field);
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, text);
    QTest::keyClick(line, Qt::Key_Tab);
  }
  QString fault(const char* field) {
    auto* label = child<QLabel>(field);
    return label->isVisibleTo(window.get()) ? label->text() : QString();
  }
  QString said() { return child<QLabel>("catalogue-said")->text(); }
  catalogue::Stock stock() { return store::CatalogueBook::open(path()).value().stock().value(); }
  Item item(const char* id) { return *stock().all.items.at(id); }

  // Fills in the dialog for a new entry as soon as it is there, and presses its button.
  void in_new_entry(const QString& name, std::function<void(ui::NewEntryDialog&)> besides = {}) {
    QTimer::singleShot(0, window.get(), [=, this] {
      auto* dialog = window->findChild<ui::NewEntryDialog*>();
      ASSERT_NE(dialog, nullptr);
      auto* line = dialog->findChild<QLineEdit*>("new-entry-name");
      line->setText(name);
      if (besides) besides(*dialog);
      QTest::mouseClick(dialog->findChild<QAbstractButton*>("new-entry-add"), Qt::LeftButton);
      if (dialog->isVisible()) dialog->QDialog::reject();
    });
  }
  QString price_file(const char* name, const QByteArray& text) {
    QFile file(folder.filePath(QString::fromLatin1(name)));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
    return file.fileName();
  }

  QTemporaryDir folder;
  std::unique_ptr<ui::CatalogueWindow> window;
};

TEST(CatalogueWindow, EveryEntryStandsInOneGroup) {
  const auto& groups = ui::catalogue_groups();
  for (const std::string& kind : catalogue::known_kinds()) {
    Item item;
    item.kind = kind;
    EXPECT_EQ(std::ranges::count_if(groups, [&](const auto& group) { return ui::belongs(group, item); }), 1) << kind;
  }
  Window here;
  const catalogue::Stock stock = here.stock();
  for (std::size_t kind = 0; kind < catalogue::kind_words().size(); ++kind)
    for (const catalogue::Kept& kept : catalogue::entries(stock, kind)) {
      EXPECT_TRUE(ui::belongs(groups[ui::group_of(kept.entry)], kept.entry));
      EXPECT_FALSE(ui::name_of(kept.entry).isEmpty());
    }
}

// Each field shows what it would write: writing back what was read changes nothing.
TEST(CatalogueWindow, FieldsReadAndWriteTheSame) {
  Window here;
  const catalogue::Stock stock = here.stock();
  const ui::Around around{stock, units::System::us, "2026-11-28"};
  int fields = 0;
  for (std::size_t kind = 0; kind < catalogue::kind_words().size(); ++kind)
    for (const catalogue::Kept& kept : catalogue::entries(stock, kind))
      for (const ui::EntryField& field : ui::fields_of(kept.entry, around)) {
        const bool dated = field.look.id == "price/amount" || field.look.id == "price/by_others";
        if (field.look.editor == ui::Editor::action || field.look.editor == ui::Editor::told || dated) continue;
        const auto after = field.set(kept.entry, field.get(kept.entry));
        ASSERT_TRUE(after) << field.look.id << ": " << after.error().toStdString();
        EXPECT_EQ(*after, kept.entry) << catalogue::key_of(kept.entry).id << " " << field.look.id;
        ++fields;
      }
  EXPECT_GT(fields, 5000);
}

TEST(CatalogueWindow, APriceIsChangedAndTakenBack) {
  Window here;
  QSignalSpy changed(here.window.get(), &ui::CatalogueWindow::changed);
  here.click_group("Stone, sand and soil");
  here.click_on("Dense-graded base stone");
  const Item before = here.item("agg-dense");
  here.type("entry/price/amount", "39.75");
  EXPECT_EQ(changed.size(), 1);
  const Item after = here.item("agg-dense");
  EXPECT_EQ(after.price->amount.coins(), 3975);
  EXPECT_EQ(after.price->date, QDate::currentDate().toString(Qt::ISODate).toStdString());
  EXPECT_EQ(after.price->unit, before.price->unit);
  EXPECT_EQ(here.cell(2), "$39.75 a ton");
  // The list of prices: the new one on top of the one that it came with.
  auto* prices = here.child<QTableWidget>("catalogue-prices");
  ASSERT_EQ(prices->rowCount(), 2);
  EXPECT_EQ(prices->item(0, 1)->text(), "$39.75 a ton");
  EXPECT_EQ(prices->item(0, 2)->text(), "typed");
  EXPECT_TRUE(prices->item(1, 1)->text().contains("a ton"));
  EXPECT_EQ(here.child<ui::PricePlot>("catalogue-plot")->places().size(), 2U);
  here.press("catalogue-undo");
  EXPECT_EQ(here.item("agg-dense"), before);
  EXPECT_TRUE(here.said().startsWith("Taken back: Dense-graded base stone")) << here.said().toStdString();
  here.press("catalogue-redo");
  EXPECT_EQ(here.item("agg-dense").price->amount.coins(), 3975);
  EXPECT_EQ(changed.size(), 3);
}

TEST(CatalogueWindow, AddsAndCopiesUnderANewId) {
  Window here;
  here.click_group("Stone, sand and soil");
  here.in_new_entry("Río stone, round");
  here.press("catalogue-add");
  EXPECT_EQ(here.window->chosen(), (Key{0, "rio-stone-round"}));
  EXPECT_EQ(here.item("rio-stone-round").kind, "aggregate");
  EXPECT_EQ(here.cell(4), "offered");
  here.click_on("Dense-graded base stone");
  here.in_new_entry("Base stone of the other yard");
  here.press("catalogue-copy");
  EXPECT_EQ(here.window->chosen(), (Key{0, "base-stone-of-the-other-yard"}));
  Item copy = here.item("base-stone-of-the-other-yard");
  const Item original = here.item("agg-dense");
  EXPECT_EQ(copy.details, original.details);
  EXPECT_EQ(copy.price, original.price);
  // An id that is there, and one that can't be: refused in the dialog.
  here.in_new_entry("Again", [](ui::NewEntryDialog& dialog) {
    auto* id = dialog.findChild<QLineEdit*>("new-entry-id");
    for (const auto& [text, why] : {std::pair("agg-dense", "has one of this id"), {"No Good", "can't be an id"}}) {
      id->selectAll();
      QTest::keyClicks(id, text);
      QTest::mouseClick(dialog.findChild<QAbstractButton*>("new-entry-add"), Qt::LeftButton);
      EXPECT_TRUE(dialog.isVisible());
      EXPECT_TRUE(dialog.findChild<QLabel*>("new-entry-wrong")->text().contains(why))
          << dialog.findChild<QLabel*>("new-entry-wrong")->text().toStdString();
    }
  });
  here.press("catalogue-add");
  EXPECT_EQ(here.window->chosen(), (Key{0, "base-stone-of-the-other-yard"})) << "nothing was added";
}

TEST(CatalogueWindow, EveryGroupTakesANewEntry) {
  Window here;
  for (const ui::CatalogueGroup& group : ui::catalogue_groups()) {
    here.click_group(ui::group_name(group));
    const QString name = QStringLiteral("Own %1").arg(ui::group_name(group));
    here.in_new_entry(name);
    here.press("catalogue-add");
    EXPECT_TRUE(here.names().contains(name)) << group.id << ": " << here.said().toStdString();
    EXPECT_EQ(here.child<QLabel>("catalogue-title")->text(), name);
  }
}

TEST(CatalogueWindow, RetiredOnesAreShownOnDemandAndOfferedAgain) {
  Window here;
  here.click_group("Coping");
  const QString name = here.names().front();
  here.click_on(name);
  here.press("catalogue-retire");
  EXPECT_FALSE(here.names().contains(name));
  EXPECT_TRUE(here.said().contains("is retired"));
  here.child<QCheckBox>("catalogue-retired")->click();
  ASSERT_TRUE(here.names().contains(name));
  here.click_on(name);
  EXPECT_EQ(here.cell(4), "retired");
  const auto index = here.table()->selectionModel()->selectedRows().front();
  EXPECT_TRUE(index.data(Qt::FontRole).value<QFont>().strikeOut());
  EXPECT_EQ(here.child<QPushButton>("catalogue-retire")->text(), "Offer again");
  here.press("catalogue-retire");
  EXPECT_EQ(here.cell(4), "offered");
  EXPECT_TRUE(here.stock().retired.empty());
}

TEST(CatalogueWindow, WhoIsInACrewIsNotRetired) {
  Window here;
  here.click_group("Crew");
  here.click_on("Labourer");
  here.press("catalogue-retire");
  EXPECT_TRUE(here.stock().retired.empty());
  EXPECT_TRUE(here.said().contains("lab-labourer is retired, but")) << here.said().toStdString();
}

TEST(CatalogueWindow, WhatCannotBeReadIsRefusedAndSaid) {
  Window here;
  here.window->choose({0, "agg-dense"});
  const Item before = here.item("agg-dense");
  here.type("entry/price/amount", "12,50");
  EXPECT_EQ(here.item("agg-dense"), before);
  const QString why = here.fault("fault/price/amount");
  EXPECT_TRUE(why.contains("12,50")) << why.toStdString();
  EXPECT_TRUE(why.contains("amount of money")) << why.toStdString();
  here.type("entry/price/amount", "41.00");
  EXPECT_EQ(here.fault("fault/price/amount"), "");
  EXPECT_EQ(here.item("agg-dense").price->amount.coins(), 4100);
}

// 45 pieces to a layer and 10 layers are 450; 50 to a layer are not, until the pack says 500. What is typed waits.
TEST(CatalogueWindow, WhatTheBookRefusesWaitsInItsFields) {
  Window here;
  here.window->choose({0, "unit-4x8-60"});
  const Item before = here.item("unit-4x8-60");
  here.type("entry/pack/per_layer", "50");
  EXPECT_EQ(here.item("unit-4x8-60"), before);
  EXPECT_EQ(here.child<QLineEdit>("entry/pack/per_layer")->text(), "50");
  EXPECT_EQ(here.cell(4), "not kept yet");
  EXPECT_TRUE(here.fault("fault/pack/per_layer").contains("50 pieces a layer and 10 layers do not make a pack of 450"))
      << here.fault("fault/pack/per_layer").toStdString();
  // It waits while another entry is looked at, and when the window is asked to close.
  here.window->choose({0, "agg-dense"});
  here.window->choose({0, "unit-4x8-60"});
  EXPECT_EQ(here.child<QLineEdit>("entry/pack/per_layer")->text(), "50");
  EXPECT_FALSE(here.fault("fault/pack/per_layer").isEmpty());
  here.window->reject();
  EXPECT_TRUE(here.window->isVisible());
  EXPECT_TRUE(here.said().contains("not kept yet")) << here.said().toStdString();
  here.type("entry/pack/pieces", "500");
  EXPECT_EQ(here.item("unit-4x8-60").pack.pieces, 500);
  EXPECT_EQ(here.item("unit-4x8-60").pack.pieces_per_layer, 50);
  EXPECT_EQ(here.cell(4), "offered");
  EXPECT_EQ(here.fault("fault/pack/per_layer"), "");
  // Both went in as one change.
  here.press("catalogue-undo");
  EXPECT_EQ(here.item("unit-4x8-60"), before);
  here.type("entry/pack/layers", "9");
  EXPECT_EQ(here.cell(4), "not kept yet");
  here.press("catalogue-put-back");
  EXPECT_EQ(here.child<QLineEdit>("entry/pack/layers")->text(), "10");
  EXPECT_EQ(here.cell(4), "offered");
  here.window->reject();
  EXPECT_FALSE(here.window->isVisible());
}

// Another program changes the notes while the price is being typed here: neither is lost.
TEST(CatalogueWindow, WhatSomeoneElseChangedMeanwhileStays) {
  Window here;
  here.window->choose({0, "agg-dense"});
  auto other = store::CatalogueBook::open(here.path()).value();
  const auto before = catalogue::find(other.stock().value(), {0, "agg-dense"}).value();
  auto after = before;
  std::get<Item>(after.entry).notes = "asked for by telephone";
  ASSERT_TRUE(other.change({{{before, after}}, "typed"}));
  here.type("entry/price/amount", "44.00");
  EXPECT_EQ(here.item("agg-dense").price->amount.coins(), 4400);
  EXPECT_EQ(here.item("agg-dense").notes, "asked for by telephone");
  EXPECT_EQ(here.child<QPlainTextEdit>("entry/notes")->toPlainText(), "asked for by telephone");
}

TEST(CatalogueWindow, LimitsShowTheirSource) {
  Window here;
  here.click_group("Limits and factors");
  here.window->choose({3, "joint-interlocking"});
  EXPECT_EQ(here.cell(1), "0.0625 to 0.1875, usual 0.125 in");
  EXPECT_TRUE(here.cell(3).startsWith("Construction Tolerances")) << here.cell(3).toStdString();
  EXPECT_TRUE(here.child<QPlainTextEdit>("entry/source")->toPlainText().startsWith("Construction Tolerances"));
  here.type("entry/usual", "0.5");  // over the greatest
  EXPECT_TRUE(here.fault("fault/usual").contains("not between least and greatest"));
  EXPECT_EQ(here.stock().all.limits.at("joint-interlocking").usual, 0.125);
  here.press("catalogue-put-back");
}

TEST(CatalogueWindow, PatternsAndBuildUpsAreDrawnAndChanged) {
  Window here;
  here.window->choose({1, "basket-2"});
  auto* picture = here.child<ui::EntryPicture>("catalogue-picture");
  EXPECT_TRUE(picture->drawn());
  auto* pieces = here.child<QPlainTextEdit>("entry/pieces");
  pieces->setFocus();
  pieces->selectAll();
  QTest::keyClicks(pieces, "unit 0 0 4");
  QTest::keyClick(pieces, Qt::Key_Tab);
  EXPECT_TRUE(here.fault("fault/pieces").contains("Line 1")) << here.fault("fault/pieces").toStdString();
  EXPECT_EQ(pieces->toPlainText(), "unit 0 0 4") << "what was typed stays to be mended";
  here.window->choose({2, "dense-foot"});
  EXPECT_TRUE(picture->drawn());
  const auto layers = here.stock().all.build_ups.at("dense-foot").layers;
  here.type("entry/layer/2/thickness", "5 1/2");
  EXPECT_EQ(here.stock().all.build_ups.at("dense-foot").layers[2].thickness,
            units::Length::inch_64ths(352));  // 5.5 x 64
  here.press("entry/layer/add");
  EXPECT_EQ(here.stock().all.build_ups.at("dense-foot").layers.size(), layers.size() + 1);
  here.press(("entry/layer/" + std::to_string(layers.size()) + "/out").c_str());
  here.press("catalogue-undo");
  here.press("catalogue-undo");
  here.press("catalogue-undo");
  EXPECT_EQ(here.stock().all.build_ups.at("dense-foot").layers, layers);
  here.window->choose({0, "agg-dense"});
  EXPECT_FALSE(picture->isVisibleTo(here.window.get()));
}

TEST(CatalogueWindow, SearchLooksThroughAllGroups) {
  Window here;
  auto* search = here.child<QLineEdit>("catalogue-search");
  search->setFocus();
  QTest::keyClicks(search, "sand");
  EXPECT_TRUE(here.names().contains("Bedding sand, C33"));
  EXPECT_TRUE(here.names().contains("Jointing sand, dry, 50 lb"));
  QTest::keyClicks(search, " c33");
  EXPECT_EQ(here.names().count("Bedding sand, C33"), 1);
  EXPECT_FALSE(here.names().contains("Jointing sand, dry, 50 lb"));
  search->clear();
  QTest::keyClicks(search, "nothing zzz");
  EXPECT_TRUE(here.names().isEmpty());
  EXPECT_FALSE(here.child<QPushButton>("catalogue-copy")->isEnabled());
  EXPECT_EQ(here.child<QLabel>("catalogue-title")->text(), "Nothing is chosen");
}

constexpr const char* spring =
    "item,price,per,date,name\n"
    "agg-dense,41.00,ton,2026-04-01,Base stone\n"
    "agg-no57,400.00,ton,2026-04-01,Stone No. 57\n"
    "agg-no8,52.00,cu yd,2026-04-01,Chips\n"
    "agg-nowhere,12.00,ton,2026-04-01,An unknown stone\n"
    "agg-no9,twelve,ton,2026-04-01,Fines\n";

TEST(CatalogueWindow, APriceListIsLookedAtBeforeItIsTaken) {
  Window here;
  QSignalSpy changed(here.window.get(), &ui::CatalogueWindow::changed);
  const catalogue::Stock before = here.stock();
  here.window->preview_prices(here.price_file("spring.csv", spring));
  auto* dialog = here.child<ui::PriceListDialog>("price-list");
  auto* rows = dialog->findChild<QTableWidget*>("price-list-rows");
  ASSERT_EQ(rows->rowCount(), 5) << "every row of the file";
  QStringList whats;
  for (int row = 0; row < 5; ++row) whats << rows->item(row, 1)->text() + ": " + rows->item(row, 5)->text();
  // The one to look at first; then what goes without saying; then what can't be taken, in the file's order.
  EXPECT_TRUE(whats[0].contains("more than half")) << whats[0].toStdString();
  EXPECT_TRUE(whats[1].startsWith("Dense-graded base stone: goes")) << whats[1].toStdString();
  EXPECT_TRUE(whats[2].contains("for a cu yd in the file, for a ton in the catalogue")) << whats[2].toStdString();
  EXPECT_EQ(whats[3], "agg-nowhere, An unknown stone: no item has this number");
  EXPECT_TRUE(whats[4].contains("'twelve' is not an amount of money")) << whats[4].toStdString();
  EXPECT_EQ(rows->item(0, 0)->checkState(), Qt::Unchecked) << "only a person takes that";
  EXPECT_EQ(rows->item(1, 0)->checkState(), Qt::Checked);
  EXPECT_EQ(dialog->findChild<QLabel*>("price-list-counted")->text(), "1 of 2 that can be taken are ticked");
  EXPECT_EQ(here.item("agg-dense"), *before.all.item("agg-dense")) << "nothing is done yet";
  // The plausible one off, the other on, by the keyboard.
  rows->setFocus();
  rows->setCurrentCell(0, 0);
  QTest::keyClick(rows, Qt::Key_Space);
  QTest::keyClick(rows, Qt::Key_Down);
  QTest::keyClick(rows, Qt::Key_Space);
  EXPECT_EQ(dialog->chosen(), std::vector<std::size_t>{1});
  QTest::mouseClick(dialog->findChild<QAbstractButton*>("price-list-all"), Qt::LeftButton);
  EXPECT_EQ(dialog->chosen(), (std::vector<std::size_t>{0, 1}));
  QTest::mouseClick(dialog->findChild<QAbstractButton*>("price-list-apply"), Qt::LeftButton);
  EXPECT_EQ(here.said(), "2 prices were taken from spring.csv.");
  EXPECT_EQ(changed.size(), 1);
  EXPECT_EQ(here.item("agg-dense").price->amount.coins(), 4100);
  EXPECT_EQ(here.item("agg-no57").price->amount.coins(), 40000);
  EXPECT_EQ(here.item("agg-no8"), *before.all.item("agg-no8"));
  // The history tells the file, and one step takes all of it back.
  here.window->choose({0, "agg-dense"});
  auto* prices = here.child<QTableWidget>("catalogue-prices");
  ASSERT_EQ(prices->rowCount(), 2);
  EXPECT_EQ(prices->item(0, 2)->text(), "spring.csv");
  here.press("catalogue-undo");
  EXPECT_TRUE(catalogue::same(here.stock().all, before.all));
}

TEST(CatalogueWindow, APriceListThatIsNoneIsRefusedInWords) {
  Window here;
  here.window->preview_prices(here.price_file("bad.csv", "item,per\nagg-dense,ton\n"));
  EXPECT_EQ(here.window->findChild<ui::PriceListDialog*>(), nullptr);
  EXPECT_EQ(here.said(), "bad.csv:1: the column 'price' is missing; add it to the head line");
  here.window->preview_prices("no-such-file.csv");
  EXPECT_TRUE(here.said().startsWith("no-such-file.csv: the file can't be read")) << here.said().toStdString();
}

TEST(CatalogueWindow, ThePlotGoesByTheDays) {
  ui::PricePlot plot;
  plot.resize(400, 120);
  // A year of 365 days: half a year of 182 days on the axis lies at 182 / 365; 30.00 is half as high as 60.00.
  plot.show_points({{QDate(2025, 1, 1), 3000}, {QDate(2025, 7, 2), 4500}, {QDate(2026, 1, 1), 6000}});
  const auto at = plot.places();
  ASSERT_EQ(at.size(), 3U);
  EXPECT_NEAR((at[1].x() - at[0].x()) / (at[2].x() - at[0].x()), 182.0 / 365, 1e-9);
  EXPECT_NEAR((at[0].y() - at[2].y()) / (at[0].y() - at[1].y()), 2, 1e-9);
  EXPECT_TRUE(plot.accessibleDescription().contains("$45.00"));
  plot.show_points({{QDate(2025, 1, 1), 3000}});
  EXPECT_EQ(plot.places().size(), 1U);
}

// From the search field to a new price and back, without the pointer.
TEST(CatalogueWindow, TheKeyboardAloneWillDo) {
  Window here;
  const auto press = [](Qt::Key key, Qt::KeyboardModifiers held = {}) {
    QTest::keyClick(QApplication::focusWidget(), key, held);
  };
  const auto tab_to = [&](const char* name) {
    for (int i = 0; i < 80 && QApplication::focusWidget()->objectName() != QLatin1String(name); ++i) press(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget()->objectName().toStdString(), name);
  };
  here.child<QLineEdit>("catalogue-search")->setFocus();
  QTest::keyClicks(QApplication::focusWidget(), "dense-graded");
  tab_to("catalogue-entries");
  press(Qt::Key_Home);
  EXPECT_EQ(here.window->chosen(), (Key{0, "agg-dense"}));
  tab_to("entry/price/amount");
  QTest::keyClicks(QApplication::focusWidget(), "40.25");
  press(Qt::Key_Return);
  EXPECT_EQ(here.item("agg-dense").price->amount.coins(), 4025);
  EXPECT_EQ(QApplication::focusWidget()->objectName(), "entry/price/amount") << "the keyboard stays where it was";
  for (int i = 0; i < 80 && QApplication::focusWidget()->objectName() != QLatin1String("catalogue-undo"); ++i)
    press(Qt::Key_Backtab, Qt::ShiftModifier);
  press(Qt::Key_Space);
  EXPECT_NE(here.item("agg-dense").price->amount.coins(), 4025);
}

TEST(CatalogueWindow, WhatIsReachedHasAName) {
  Window here;
  for (const Key& key : {Key{0, "pack-three-60"}, Key{1, "basket-2"}, Key{2, "dense-foot"}, Key{3, "joint-clay"}}) {
    here.window->choose(key);
    ASSERT_EQ(here.window->chosen(), key);
    for (QWidget* widget : here.window->findChildren<QWidget*>()) {
      if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || widget->objectName().startsWith("qt_"))
        continue;
      auto* button = qobject_cast<QAbstractButton*>(widget);
      EXPECT_TRUE(!widget->accessibleName().isEmpty() || (button && !button->text().isEmpty()))
          << widget->metaObject()->className() << " " << widget->objectName().toStdString();
    }
  }
}

// Names of any kind stand in the list as they are, and nothing in them is taken for a command.
TEST(CatalogueWindow, ShowsNamesOfAnyKind) {
  Window here;
  here.click_group("Adhesive");
  const QString names[] = {"'; DROP TABLE items", "%s %1 %2", "<b>bold</b>", QString(3000, QLatin1Char('x')),
                           QStringLiteral("\u202E right to left")};
  for (const QString& name : names) {
    here.in_new_entry("One more");
    here.press("catalogue-add");
    auto* line = here.child<QLineEdit>("entry/name/en");
    line->setFocus();
    line->setText(name);
    line->setModified(true);
    QTest::keyClick(line, Qt::Key_Return);
    ASSERT_TRUE(here.window->chosen());
    EXPECT_EQ(here.item(here.window->chosen()->id.c_str()).name.en, name.trimmed().toStdString());
    EXPECT_TRUE(here.names().contains(name.left(400).simplified()));
  }
  for (const char* label : {"catalogue-title", "catalogue-state", "catalogue-said"})
    EXPECT_EQ(here.child<QLabel>(label)->textFormat(), Qt::PlainText) << label;
}

TEST(CatalogueWindow, OpensOnceOverItsParent) {
  QTemporaryDir folder;
  QWidget parent;
  const std::string path = folder.path().toStdString() + "/book";
  auto* first = ui::show_catalogue_window(path, &parent);
  ASSERT_NE(first, nullptr);
  EXPECT_FALSE(first->isModal());
  EXPECT_EQ(ui::show_catalogue_window(path, &parent), first);
}

// Only for looking: GROUNDCOURSE_PICTURES names a folder.
TEST(CatalogueWindow, Pictures) {
  const QString into = qEnvironmentVariable("GROUNDCOURSE_PICTURES");
  if (into.isEmpty()) GTEST_SKIP() << "no folder for pictures";
  for (const char* look : {"light", "dark", "large", "spanish"}) {
    ui::set_dark(QLatin1String(look) == QLatin1String("dark"));
    ui::set_type_factor(QLatin1String(look) == QLatin1String("large") ? 1.44 : 1);
    ui::speak(QLatin1String(look) == QLatin1String("spanish") ? "es" : "en");
    Window here;
    const auto grab = [&](const char* what) {
      QTest::qWait(50);
      EXPECT_TRUE(here.window->grab().save(into + "/catalogue-" + what + "-" + look + ".png"));
    };
    here.window->choose({0, "cop-drop-24"});
    here.press("catalogue-retire");
    here.window->choose({0, "unit-4x8-60"});
    here.type("entry/price/amount", "5.35");
    grab("item");
    here.type("entry/pack/per_layer", "50");
    grab("fault");
    here.press("catalogue-put-back");
    here.window->choose({1, "herringbone-45"});
    grab("pattern");
    here.window->choose({2, "hybrid-foot"});
    grab("build-up");
    here.window->choose({3, "joint-interlocking"});
    grab("limit");
    here.window->choose({7, catalogue::key_of(catalogue::entries(here.stock(), 7).front().entry).id});
    grab("hold");
    here.window->preview_prices(here.price_file("spring.csv", spring));
    auto* dialog = here.child<ui::PriceListDialog>("price-list");
    QTest::qWait(50);
    dialog->grab().save(into + "/price-list-" + look + ".png");
    QTest::mouseClick(dialog->findChild<QAbstractButton*>("price-list-all"), Qt::LeftButton);
    QTest::mouseClick(dialog->findChild<QAbstractButton*>("price-list-apply"), Qt::LeftButton);
    here.window->choose({0, "agg-dense"});
    here.child<QWidget>("catalogue-plot")->parentWidget()->grab().save(into + "/prices-" + look + ".png");
    here.child<QCheckBox>("catalogue-retired")->click();
    here.window->choose({0, "cop-drop-24"});
    grab("retired");
    const auto stock = here.stock();
    ui::NewEntryDialog added(stock, ui::catalogue_groups().front(), nullptr);
    added.show();
    QTest::mouseClick(added.findChild<QAbstractButton*>("new-entry-add"), Qt::LeftButton);
    QTest::qWait(50);
    added.grab().save(into + "/new-entry-" + look + ".png");
  }
  ui::set_dark(false);
  ui::set_type_factor(1);
  ui::speak("en");
}

}  // namespace
