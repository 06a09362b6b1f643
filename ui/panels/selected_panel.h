// The right side's upper part: what is selected, its measures and everything that can be said of it. Nothing selected:
// the job itself. Several: what they have in common.
#pragma once

#include <QWidget>

#include "ui/panels/field_form.h"

class QGridLayout;
class QLabel;
class QScrollArea;
class QStackedWidget;

namespace ui {

class BuildUpPage;
class EdgesPage;
class FlatButton;
class LevelsPage;
class MeasureGrid;
class PatternPage;
class TagLabel;
class TypedField;

class SelectedPanel : public QWidget {
  Q_OBJECT
 public:
  explicit SelectedPanel(Desk& desk, QWidget* parent = nullptr);
  ~SelectedPanel() override;
  void set_source(Source source);  // the book's catalogue, asked each time a list opens

  enum Tab { build_up, pattern, edges, levels };
  void show_tab(Tab tab);  // for actions elsewhere ("Border course"); nothing happens where it has no tabs
  FieldEditor* editor(const std::string& id) const;  // of what is shown now; null where there is none

 private:
  QWidget* make_head();
  QWidget* make_tabs();
  void follow();        // another selection, job or stage
  void show_numbers();  // newer results, or they are on their way
  void show_job();
  void show_one(const plan::Element& element);
  void show_several();
  void fill_page();
  void rename();
  Desk& desk_;
  Source book_;
  TagLabel* tag_ = nullptr;
  TypedField* name_ = nullptr;
  QLabel* kind_ = nullptr;
  MeasureGrid* measures_ = nullptr;
  QWidget* tabs_ = nullptr;
  std::vector<FlatButton*> tab_;
  QScrollArea* scroll_ = nullptr;
  QStackedWidget* pages_ = nullptr;
  BuildUpPage* build_up_ = nullptr;
  PatternPage* pattern_ = nullptr;
  EdgesPage* edges_ = nullptr;
  LevelsPage* levels_ = nullptr;
  FieldForm* form_ = nullptr;  // the job's, or what several have in common
  Tab chosen_ = build_up;
};

}  // namespace ui
