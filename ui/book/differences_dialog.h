// Asks what becomes of the parts of a job from elsewhere that the catalogue of the book lacks or has otherwise.
#pragma once

#include <QDialog>
#include <optional>
#include <vector>

#include "catalogue/differences.h"
#include "plan/job.h"

class QComboBox;
class QTableWidget;

namespace ui {

class DifferencesDialog : public QDialog {
  Q_OBJECT
 public:
  // `heading` is the job's: its prices are in that currency. At first the job keeps all that it brought.
  DifferencesDialog(const std::vector<catalogue::PartDifference>& found, const plan::Heading& heading,
                    QWidget* parent = nullptr);
  std::vector<catalogue::Chosen> choices() const;

 private:
  void choose_for_all(catalogue::Choice choice);
  QComboBox* choice_of(const catalogue::PartDifference& one);
  std::vector<catalogue::PartDifference> found_;
  std::vector<QComboBox*> boxes_;
  QTableWidget* table_;
};

// Nothing where the person left it: the job is not brought in then. Asks nothing where nothing differs.
std::optional<std::vector<catalogue::Chosen>> ask_differences(const std::vector<catalogue::PartDifference>& found,
                                                              const plan::Heading& heading, QWidget* parent);

}  // namespace ui
