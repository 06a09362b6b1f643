// The backups of the job book: when each was made and why, how many jobs it has. One of them can be put in the book's
// place, after being asked; whoever opens the window does it.
#pragma once

#include <QDialog>
#include <string>

#include "store/backup.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace ui {

class BackupsWindow : public QDialog {
  Q_OBJECT
 public:
  // `may_restore`: not where the book is only read.
  BackupsWindow(const std::string& folder, bool may_restore, QWidget* parent = nullptr);
  const store::Backup* chosen() const;  // null: none
  void tell(const QString& sentence);

 signals:
  void restore(QString backup);  // its path; the person was asked and said yes

 private:
  void fill();
  void chosen_changed();
  void ask();
  std::vector<store::BackupRow> rows_;
  bool may_restore_;
  QTableWidget* table_;
  QPushButton* restore_ = nullptr;
  QLabel* said_ = nullptr;
};

}  // namespace ui
