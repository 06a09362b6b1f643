// Asks what a new entry is called, and under which id it is kept for ever.
#pragma once

#include <QDialog>

#include "ui/catalogue/catalogue_groups.h"

class QLabel;
class QLineEdit;

namespace ui {

class NewEntryDialog : public QDialog {
  Q_OBJECT
 public:
  // `copied`: the entry that it is a copy of; null: a new one of the group.
  NewEntryDialog(const catalogue::Stock& stock, const CatalogueGroup& group, const catalogue::Entry* copied,
                 QWidget* parent = nullptr);
  catalogue::Entry entry() const;  // as it is after `accept`
  void accept() override;          // stays, with a sentence, where the entry can't be

 private:
  void named();
  bool has_id() const;  // hold points and cautions are told by what they say
  const catalogue::Stock& stock_;
  const CatalogueGroup& group_;
  const catalogue::Entry* copied_;
  QLineEdit* name_;
  QLineEdit* id_;
  QLabel* wrong_;
  bool own_id_ = false;
};

}  // namespace ui
