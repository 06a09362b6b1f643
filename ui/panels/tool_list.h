// The tools, in the order of building: ground first, paving last; then those that change what is drawn.
#pragma once

#include <QWidget>
#include <vector>

#include "sketch/tool.h"

class QScrollArea;

namespace ui {

class ToolButton;

// How a tool is called and drawn in the window.
QString tool_name(sketch::Hand hand);
QString tool_icon(sketch::Hand hand);
bool begins_group(sketch::Hand hand);  // a rule stands before it, in lists and menus

// Arrow keys move along the tools, Enter or Space takes one in hand; Tab comes in at the one that is in hand and
// leaves.
class ToolList : public QWidget {
  Q_OBJECT
 public:
  explicit ToolList(QWidget* parent = nullptr);
  sketch::Hand hand() const { return hand_; }

 public slots:
  void show_hand(sketch::Hand hand);  // without a signal

 signals:
  void picked(sketch::Hand hand);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  sketch::Hand hand_ = sketch::Hand::pick;
  QScrollArea* area_;
  std::vector<ToolButton*> tools_;
};

}  // namespace ui
