// Everything that can be done in the window, as one table: its name, where it stands, its keys, its icon. Menus, the
// finder and the list of keys are made from it.
#pragma once

#include <QAction>
#include <QString>
#include <functional>
#include <vector>

#include "sketch/tool.h"

class QMenuBar;
class QWidget;

namespace ui {

struct ActionRow {
  const char* id;    // stable, for tests and settings
  const char* menu;  // "job", "edit", "draw", "lay", "show", "sheets", "catalogue", "help"
  const char* text;  // English, translated when the action is made
  const char* keys;  // "Ctrl+Z", several parted by a bar; empty: none
  const char* icon;  // of resources/icons; empty: none
  bool rule_before = false;
  bool in_plan_menu = false;
  bool checkable = false;
};
const std::vector<ActionRow>& action_rows();

// The key of each tool and the menu it stands in; its name and drawing are the list of tools' (panels/tool_list.h).
struct HandRow {
  sketch::Hand hand;
  const char* id;
  const char* key;
  const char* menu = "draw";
};
const std::vector<HandRow>& hand_rows();

// Makes the actions on `window`, each with objectName = id, and hands them out by id.
class Actions {
 public:
  explicit Actions(QWidget& window);
  QAction& operator[](const char* id) const;
  QAction& hand(sketch::Hand hand) const;
  const std::vector<QAction*>& all() const { return all_; }
  void fill(QMenuBar& bar) const;

 private:
  std::vector<QAction*> all_;
  std::vector<QAction*> hands_;
};

}  // namespace ui
