// Asks what becomes of the parts of a job that the catalogue of the book lacks or has otherwise: of a job from
// elsewhere, and of the open one, at any time.
#pragma once

#include <QDialog>
#include <optional>
#include <vector>

#include "catalogue/differences.h"
#include "plan/job.h"

class QComboBox;
class QTableWidget;

namespace ui {

// `bring_in`: at first the job keeps what it brought, and what the catalogue lacks is put into it. `open_job`: at first
// the job takes the catalogue's prices and keeps all else. Nothing is changed before the person says so.
enum class Settling { bring_in, open_job };

class DifferencesDialog : public QDialog {
  Q_OBJECT
 public:
  // `heading` is the job's: its prices are in that currency.
  DifferencesDialog(const std::vector<catalogue::PartDifference>& found, const plan::Heading& heading,
                    Settling settling, QWidget* parent = nullptr);
  std::vector<catalogue::Chosen> choices() const;

 private:
  void choose_for_all(catalogue::Choice choice);
  QComboBox* choice_of(const catalogue::PartDifference& one, Settling settling);
  void fill(const plan::Heading& heading, Settling settling);
  QWidget* make_for_all();
  QWidget* make_buttons(Settling settling);
  std::vector<catalogue::PartDifference> found_;
  std::vector<QComboBox*> boxes_;
  QTableWidget* table_;
};

// Nothing where the person left it: all stays as it is then. Asks nothing where nothing differs.
std::optional<std::vector<catalogue::Chosen>> ask_differences(const std::vector<catalogue::PartDifference>& found,
                                                              const plan::Heading& heading, Settling settling,
                                                              QWidget* parent);

}  // namespace ui
