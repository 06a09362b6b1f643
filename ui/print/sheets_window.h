// The sheets of the open job in a window: which one, in which language, on which paper; the pages as they will be
// printed. To the printer, into a PDF file, or kept with the newest version as what was given out.
#pragma once

#include <QDialog>
#include <functional>
#include <memory>

#include "ui/desk/desk.h"
#include "ui/print/pages.h"
#include "ui/print/sheets_shelf.h"

class QComboBox;
class QLabel;
class QListWidget;
class QVBoxLayout;

namespace ui {

class FlatButton;

class SheetsWindow : public QDialog {
  Q_OBJECT
 public:
  SheetsWindow(Desk& desk, SheetsShelf shelf, QWidget* parent = nullptr);
  ~SheetsWindow() override;

  void show_sheet(const std::string& word);
  std::string sheet() const;
  std::size_t pages() const;
  // Of what is shown, made once: what is saved and what is kept are the same bytes. Empty before there are results.
  QByteArray pdf() const;

 private:
  QWidget* make_choices();
  QWidget* make_pages();
  void refresh();
  void show_pages();
  void save_pdf();
  void print_out();
  void keep();
  void tell(const QString& sentence);
  std::string language_chosen() const;

  Desk& desk_;
  SheetsShelf shelf_;
  ResultsPtr shown_;  // what the pages were made from
  std::unique_ptr<LaidSheet> laid_;
  mutable QByteArray pdf_;
  std::unique_ptr<sheets::Printed> printed_;
  QListWidget* kinds_ = nullptr;
  QComboBox* language_ = nullptr;
  QComboBox* paper_ = nullptr;
  QComboBox* size_ = nullptr;
  QComboBox* detail_ = nullptr;  // of the quote's price
  QLabel* about_ = nullptr;
  QLabel* told_ = nullptr;
  QVBoxLayout* pages_ = nullptr;
  FlatButton *save_ = nullptr, *print_ = nullptr, *keep_ = nullptr;
};

// Opens it, or brings it to the front.
SheetsWindow* show_sheets_window(Desk& desk, const SheetsShelf& shelf, QWidget* parent);

}  // namespace ui
