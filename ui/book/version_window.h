// One version as it was saved, to be read: its totals, the steps of its price, its lines, and what was printed of it.
// Nothing is computed and nothing can be changed here.
#pragma once

#include <QDialog>

#include "store/documents.h"
#include "store/version_tables.h"

namespace ui {

class VersionWindow : public QDialog {
  Q_OBJECT
 public:
  VersionWindow(const store::Version& version, const std::vector<store::DocumentRow>& documents,
                QWidget* parent = nullptr);

 signals:
  void work_on_from(qint64 version);
  void show_document(qint64 document);
};

}  // namespace ui
