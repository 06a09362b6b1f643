// The form beside the tables: what is entered of one line or of the work of one stage, and what was entered of it so
// far.
#pragma once

#include <QWidget>
#include <functional>

#include "estimate/ledger.h"
#include "plan/job.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

namespace ui {

// What entries are made against.
struct EntryTarget {
  estimate::LineKey key;
  std::string unit;  // of a line; work is entered in hours
  QString name;
  bool work = false;
};

// Nothing is changed in place: "Correct it" takes an entry into the form, and entering it then makes a correction;
// "Take it back" makes one with the quantity 0. What can't be read is said under the form and stays typed.
class EntryForm : public QWidget {
  Q_OBJECT
 public:
  using Enter = std::function<problem::Result<void>(const estimate::Entry&)>;
  // `name` goes before the names of the fields: "line-quantity".
  EntryForm(const char* name, const std::vector<estimate::Act>& acts, const plan::Heading& heading, Enter enter,
            QWidget* parent = nullptr);

  // Nothing: no line is chosen. `entries`: all of the version, those of the target are shown.
  void show_target(const std::optional<EntryTarget>& target, const std::vector<estimate::Entry>& entries);
  void show_facts(const QString& facts);  // about the target, under its name
  void set_closed(const QString& why);    // nothing can be entered, and why

 private:
  void make_fields(const std::vector<estimate::Act>& acts);
  void make_buttons();
  void make_entries();
  void lay_out();
  QLineEdit* field(const char* name, const QString& label, const QString& hint);
  QString id(const char* name) const;
  void act_chosen();
  void show_last_measure();
  void enter();
  void send(const estimate::Entry& entry);
  void correct();
  void take_back();
  void refuse(const problem::Problem& fault, QLineEdit* at);
  const estimate::Entry* chosen() const;
  void show_entries(const std::vector<estimate::Entry>& entries);
  void stop_correcting();
  QString name_;
  plan::Heading heading_;
  Enter enter_;
  std::optional<EntryTarget> target_;
  std::vector<estimate::Entry> shown_;
  std::int64_t corrects_ = 0;
  bool closed_ = false;
  QFormLayout* form_;
  QLabel* title_;
  QLabel* facts_;
  QComboBox* act_;
  QLineEdit *date_, *quantity_, *whole_, *unit_, *price_, *who_, *ticket_, *note_;
  QLabel* said_;
  QPushButton *enter_button_, *correct_, *take_back_;
  QTableWidget* list_;
};

}  // namespace ui
