// The catalogue of the book in a window of its own: its groups, the entries of one, and the fields of the entry that is
// chosen. Each edit is one change of the book, and can be taken back. What the book refuses stays in the fields,
// marked, until it is mended or put back.
#pragma once

#include <QDialog>
#include <functional>

#include "store/catalogue_book.h"
#include "ui/catalogue/entry_form.h"
#include "ui/catalogue/entry_model.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QScrollArea;
class QTableView;

namespace ui {

class EntryPicture;
class PriceHistory;

class CatalogueWindow : public QDialog {
  Q_OBJECT
 public:
  explicit CatalogueWindow(store::CatalogueBook book, QWidget* parent = nullptr);

  void set_units(units::System system);
  void choose(const catalogue::Key& key);  // its group and its row; nothing where there is none
  std::optional<catalogue::Key> chosen() const { return chosen_; }
  // Shows what a supplier's list would change; `Apply` of the preview takes what is ticked.
  void preview_prices(const QString& path);
  void reject() override;  // says first what is not kept

 public slots:
  void refresh();  // reads the book anew

 signals:
  void changed();  // something was written into the book

 private:
  QWidget* make_top();
  QWidget* make_list();
  QWidget* make_side();
  void make_groups();
  QPushButton* button(const char* name, const QString& words, std::function<void()> does);
  void show_rows();
  void set_list_widths();
  void go_to(const catalogue::Key& key);
  void group_chosen(int row);
  void row_chosen();
  void show_entry();
  void show_prices();
  void show_what_is_wrong(const catalogue::Entry& draft);
  const catalogue::Entry* shown() const;  // as it is in the fields; null: none is chosen
  void give(const QString& field, const Value& value);
  bool write(const catalogue::Change& change);
  void put_back();
  void add(bool copy);
  void retire();
  void step(bool back);
  void ask_price_file();
  void tell(const QString& words, bool wrong);

  store::CatalogueBook book_;
  catalogue::Stock stock_;
  Drafts drafts_;
  std::optional<catalogue::Key> chosen_;
  std::optional<catalogue::Kept> kept_;  // of what is chosen
  std::optional<catalogue::Key> seen_;   // whose fields stand at the right
  std::size_t group_ = 0;
  units::System system_ = units::System::us;
  bool warned_ = false;

  EntryModel* rows_;
  QListWidget* groups_ = nullptr;
  QLineEdit* words_ = nullptr;
  QCheckBox* retired_ = nullptr;
  QLabel* counted_ = nullptr;
  QTableView* table_ = nullptr;
  QPushButton *add_ = nullptr, *copy_ = nullptr, *retire_ = nullptr, *put_back_ = nullptr;
  QLabel *title_ = nullptr, *state_ = nullptr, *said_ = nullptr;
  QScrollArea* side_ = nullptr;
  EntryPicture* picture_ = nullptr;
  CatalogueForm* form_ = nullptr;
  PriceHistory* prices_ = nullptr;
};

// The window over `parent`, made where there is none yet; null, and a sentence said, where the book can't be opened.
CatalogueWindow* show_catalogue_window(const std::string& folder = store::data_folder(), QWidget* parent = nullptr);

}  // namespace ui
