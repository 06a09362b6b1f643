// The open job, or a version of it, with some of its paved areas built otherwise: another pattern, another build-up. A
// value of its own, to be priced and compared; nothing is changed by it.
#pragma once

#include <QDialog>
#include <optional>

#include "ui/panels/offers.h"

class QComboBox;
class QListWidget;
class QPushButton;

namespace ui {

// Empty: that stays as it is.
struct Otherwise {
  std::vector<plan::ElementId> areas;
  plan::Id pattern;
  plan::Id build_up;
  bool operator==(const Otherwise&) const = default;
};

// What the job's catalogue lacks for it comes from `book` (may be null), as when a person chooses it in the panel.
plan::Job built_otherwise(const plan::Job& job, const catalogue::Catalogue* book, const Otherwise& wanted);
// "Herringbone 45°, Hybrid, foot": what is otherwise, in words.
QString in_words(const plan::Job& job, const catalogue::Catalogue* book, const Otherwise& wanted);

// Asks for it. Without an area, or with nothing that is otherwise, it can't be sent off.
class OtherwiseDialog : public QDialog {
  Q_OBJECT
 public:
  // At first the paved areas among `selected` are ticked; all of them where none is.
  OtherwiseDialog(const plan::Job& job, const catalogue::Catalogue* book, const std::vector<plan::ElementId>& selected,
                  QWidget* parent = nullptr);
  Otherwise wanted() const;

 private:
  QComboBox* choice(const char* name, const QString& spoken, const std::vector<Offer>& offers);
  void changed();
  QListWidget* areas_;
  QComboBox* patterns_ = nullptr;
  QComboBox* build_ups_ = nullptr;
  QPushButton* done_ = nullptr;
};

// Nothing where the person left it; where the job has no paved area there is nothing to ask.
std::optional<Otherwise> ask_otherwise(const plan::Job& job, const catalogue::Catalogue* book,
                                       const std::vector<plan::ElementId>& selected, QWidget* parent);

}  // namespace ui
