// The fields of one entry, one under the other, with what is wrong under the field that it is wrong in.
#pragma once

#include <QWidget>

#include "ui/catalogue/entry_fields.h"
#include "ui/panels/offers.h"

class QLabel;
class QVBoxLayout;

namespace ui {

// A field with its input. What can't be understood is put back, and what was typed is said with the sentence.
class EntryEditor : public QWidget {
  Q_OBJECT
 public:
  EntryEditor(EntryField field, const catalogue::Stock& stock, units::System system, QWidget* parent);
  const EntryField& field() const { return field_; }
  QWidget* input() const { return input_; }
  void show_value(EntryField field, const Entry& entry);
  static bool is_wide(const Field& look);  // wants a line of its own under its label

 signals:
  void given(ui::Value value);
  void refused(QString sentence);

 private:
  QWidget* make();
  QWidget* make_typed();
  QWidget* make_words();
  QWidget* make_choice();
  std::vector<Offer> offered() const;
  EntryField field_;
  const catalogue::Stock& stock_;
  units::System system_;
  QWidget* input_ = nullptr;
  QString typed_;
};

class CatalogueForm : public QWidget {
  Q_OBJECT
 public:
  // `stock` is the window's; it outlives the form.
  explicit CatalogueForm(const catalogue::Stock& stock, QWidget* parent = nullptr);

  // The same fields again only show their values; others make the form anew, and the keyboard stays in the field of the
  // same id.
  void show_entry(const Entry& entry, const Around& around);
  void show_nothing();
  void settle();                                                       // what is being typed is taken now
  void show_fault(const std::string& field, const QString& sentence);  // under that field; an empty one takes it away
  void clear_faults();
  EntryEditor* editor(const std::string& id) const;  // null where there is none
  // The field that a fault of this code speaks of; empty: none does.
  std::string blamed_for(const std::string& code) const;

 signals:
  void given(QString field, ui::Value value);

 private:
  void make(std::vector<EntryField> fields);
  void add_heading(const QString& words);
  QWidget* make_row(EntryEditor* editor);
  const catalogue::Stock& stock_;
  units::System system_ = units::System::us;
  QVBoxLayout* rows_;
  QWidget* body_ = nullptr;
  struct Row {
    EntryEditor* editor;
    QLabel* fault;
  };
  std::vector<Row> editors_;
};

}  // namespace ui
