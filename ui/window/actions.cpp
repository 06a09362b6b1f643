#include "ui/window/actions.h"

#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>
#include <cstring>

#include "problem/ensure.h"
#include "ui/look/theme.h"

namespace ui {

using sketch::Hand;

const std::vector<ActionRow>& action_rows() {
  static const std::vector<ActionRow> rows{
      {"new-job", "job", QT_TRANSLATE_NOOP("actions", "New job"), "Ctrl+N", "job-book"},
      {"open-job", "job", QT_TRANSLATE_NOOP("actions", "Open a job…"), "Ctrl+O", "open"},
      {"demo-job", "job", QT_TRANSLATE_NOOP("actions", "Open the demo job"), "", ""},
      {"read-file", "job", QT_TRANSLATE_NOOP("actions", "Bring in a job file…"), "Ctrl+Shift+O", "", true},
      {"write-file", "job", QT_TRANSLATE_NOOP("actions", "Write a job file…"), "Ctrl+Shift+S", ""},
      {"site-plan", "job", QT_TRANSLATE_NOOP("actions", "Bring in a site plan…"), "Ctrl+G", "site-plan", true},
      {"outlines", "job", QT_TRANSLATE_NOOP("actions", "Bring in outlines as elements…"), "", ""},
      {"taped", "job", QT_TRANSLATE_NOOP("actions", "Measuring in…"), "Ctrl+M", "measure"},
      {"settings", "job", QT_TRANSLATE_NOOP("actions", "Settings…"), "Ctrl+,", "settings", true},
      {"quit", "job", QT_TRANSLATE_NOOP("actions", "Quit"), "Ctrl+Q", "", true},
      {"undo", "edit", QT_TRANSLATE_NOOP("actions", "Undo"), "Ctrl+Z", "undo"},
      {"redo", "edit", QT_TRANSLATE_NOOP("actions", "Redo"), "Ctrl+Shift+Z|Ctrl+Y", "redo"},
      {"select-all", "edit", QT_TRANSLATE_NOOP("actions", "Select all"), "Ctrl+A", "", true},
      {"below", "edit", QT_TRANSLATE_NOOP("actions", "Select what lies below"), "Ctrl+B", "", false, true},
      {"remove", "edit", QT_TRANSLATE_NOOP("actions", "Remove"), "", "", false, true},
      {"find", "edit", QT_TRANSLATE_NOOP("actions", "Find an element or an action…"), "Ctrl+F", "find", true},
      {"fewest-cuts", "lay", QT_TRANSLATE_NOOP("actions", "Fewest cuts"), "Ctrl+1", "fewest-cuts", false, true},
      {"no-slivers", "lay", QT_TRANSLATE_NOOP("actions", "No slivers"), "Ctrl+2", "no-slivers", false, true},
      {"border", "lay", QT_TRANSLATE_NOOP("actions", "Border course"), "Ctrl+3", "", false, true},
      {"finished", "show", QT_TRANSLATE_NOOP("actions", "Show the finished job"), "0", ""},
      {"stage-before", "show", QT_TRANSLATE_NOOP("actions", "Stage before"), "PgUp", ""},
      {"stage-after", "show", QT_TRANSLATE_NOOP("actions", "Stage after"), "PgDown", ""},
      {"stage-1", "show", QT_TRANSLATE_NOOP("actions", "Stage: protect and remove"), "1", "", true},
      {"stage-2", "show", QT_TRANSLATE_NOOP("actions", "Stage: dig"), "2", ""},
      {"stage-3", "show", QT_TRANSLATE_NOOP("actions", "Stage: under the ground"), "3", ""},
      {"stage-4", "show", QT_TRANSLATE_NOOP("actions", "Stage: wall base and wall"), "4", ""},
      {"stage-5", "show", QT_TRANSLATE_NOOP("actions", "Stage: base layers"), "5", ""},
      {"stage-6", "show", QT_TRANSLATE_NOOP("actions", "Stage: kerbs, coping and steps"), "6", ""},
      {"stage-7", "show", QT_TRANSLATE_NOOP("actions", "Stage: bedding and paving"), "7", ""},
      {"stage-8", "show", QT_TRANSLATE_NOOP("actions", "Stage: joints and edges"), "8", ""},
      {"stage-9", "show", QT_TRANSLATE_NOOP("actions", "Stage: finish and hand over"), "9", ""},
      {"whole-job", "show", QT_TRANSLATE_NOOP("actions", "Whole job in view"), "Ctrl+0", "whole-job", true, true},
      {"zoom-in", "show", QT_TRANSLATE_NOOP("actions", "Nearer"), "Ctrl++|Ctrl+=", ""},
      {"zoom-out", "show", QT_TRANSLATE_NOOP("actions", "Further"), "Ctrl+-", ""},
      {"junctions", "show", QT_TRANSLATE_NOOP("actions", "Junctions"), "Ctrl+J", "", true, false, true},
      {"falls", "show", QT_TRANSLATE_NOOP("actions", "Falls"), "Ctrl+L", "", false, false, true},
      {"next-part", "show", QT_TRANSLATE_NOOP("actions", "Next part of the window"), "F6", "", true},
      {"next-problem", "show", QT_TRANSLATE_NOOP("actions", "Next problem"), "F7", "solve"},
      {"panels", "show", QT_TRANSLATE_NOOP("actions", "Panels at the right"), "F8", "", false, false, true},
      {"dark", "show", QT_TRANSLATE_NOOP("actions", "Dark"), "Ctrl+D", "", true, false, true},
      {"full-screen", "show", QT_TRANSLATE_NOOP("actions", "Full screen"), "F11", "", false, false, true},
      {"material-list", "sheets", QT_TRANSLATE_NOOP("actions", "Material list…"), "Ctrl+P", "sheets"},
      {"setting-out", "sheets", QT_TRANSLATE_NOOP("actions", "Setting-out table…"), "", ""},
      {"items-out", "catalogue", QT_TRANSLATE_NOOP("actions", "Write the items of this job…"), "", "catalogue"},
      {"keys", "help", QT_TRANSLATE_NOOP("actions", "Keys"), "F1", ""},
      {"about", "help", QT_TRANSLATE_NOOP("actions", "About Groundcourse"), "", ""},
  };
  return rows;
}

const std::vector<HandRow>& hand_rows() {
  static const std::vector<HandRow> rows{
      {Hand::pick, "pick", QT_TRANSLATE_NOOP("hands", "Pick"), "", "pick", 0},
      {Hand::site_plan, "hand-site-plan", QT_TRANSLATE_NOOP("hands", "Site plan"), "G", "site-plan", 1},
      {Hand::site_mark, "site-mark", QT_TRANSLATE_NOOP("hands", "Site mark"), "", "site-mark", 1},
      {Hand::building, "building", QT_TRANSLATE_NOOP("hands", "Building"), "B", "building", 1},
      {Hand::keep_out, "keep-out", QT_TRANSLATE_NOOP("hands", "Keep-out"), "K", "keep-out", 1},
      {Hand::removal, "removal", QT_TRANSLATE_NOOP("hands", "Removal"), "", "removal", 1},
      {Hand::protection, "protection", QT_TRANSLATE_NOOP("hands", "Protection"), "", "protection", 1},
      {Hand::level, "level", QT_TRANSLATE_NOOP("hands", "Level"), "L", "level", 1},
      {Hand::wall, "wall", QT_TRANSLATE_NOOP("hands", "Wall"), "W", "wall", 2},
      {Hand::drain, "drain", QT_TRANSLATE_NOOP("hands", "Drain"), "D", "drain", 2},
      {Hand::pool, "pool", QT_TRANSLATE_NOOP("hands", "Pool"), "P", "pool", 2},
      {Hand::steps, "steps", QT_TRANSLATE_NOOP("hands", "Steps"), "S", "steps", 2},
      {Hand::area, "area", QT_TRANSLATE_NOOP("hands", "Area"), "A", "area", 2},
      {Hand::edge, "edge", QT_TRANSLATE_NOOP("hands", "Edge"), "E", "edge", 2},
      {Hand::feature, "feature", QT_TRANSLATE_NOOP("hands", "Feature"), "F", "feature", 2},
      {Hand::measure, "measure", QT_TRANSLATE_NOOP("hands", "Measure"), "M", "measure", 3},
      {Hand::dimension, "dimension", QT_TRANSLATE_NOOP("hands", "Dimension"), "I", "dimension", 3},
      {Hand::note, "note", QT_TRANSLATE_NOOP("hands", "Note"), "N", "note", 3},
      {Hand::move, "move", QT_TRANSLATE_NOOP("hands", "Move"), "V", "move", -1},
      {Hand::turn, "turn", QT_TRANSLATE_NOOP("hands", "Turn"), "T", "turn", -1},
      {Hand::copy, "copy", QT_TRANSLATE_NOOP("hands", "Copy"), "C", "copy", -1},
      {Hand::mirror, "mirror", QT_TRANSLATE_NOOP("hands", "Mirror"), "R", "mirror", -1},
      {Hand::offset, "offset", QT_TRANSLATE_NOOP("hands", "Offset"), "Y", "offset", -1},
      {Hand::split, "split", QT_TRANSLATE_NOOP("hands", "Split"), "X", "split", -1},
      {Hand::join, "join", QT_TRANSLATE_NOOP("hands", "Join"), "J", "join", -1},
      {Hand::hole, "hole", QT_TRANSLATE_NOOP("hands", "Cut a hole"), "H", "hole", -1},
      {Hand::edge_to_arc, "edge-to-arc", QT_TRANSLATE_NOOP("hands", "Edge to arc"), "U", "edge-to-arc", -1},
      {Hand::trace, "trace", QT_TRANSLATE_NOOP("hands", "Trace an edge"), "Q", "trace", -1},
      {Hand::start_point, "start-point", QT_TRANSLATE_NOOP("hands", "Start point"), "O", "start-point", -1},
  };
  return rows;
}

namespace {

struct MenuRow {
  const char* id;
  const char* text;
};
constexpr MenuRow menus[] = {
    {"job", QT_TRANSLATE_NOOP("menus", "Job")},
    {"edit", QT_TRANSLATE_NOOP("menus", "Edit")},
    {"draw", QT_TRANSLATE_NOOP("menus", "Draw")},
    {"lay", QT_TRANSLATE_NOOP("menus", "Lay")},
    {"show", QT_TRANSLATE_NOOP("menus", "Show")},
    {"sheets", QT_TRANSLATE_NOOP("menus", "Sheets")},
    {"catalogue", QT_TRANSLATE_NOOP("menus", "Catalogue")},
    {"help", QT_TRANSLATE_NOOP("menus", "Help")},
};

QAction* make(QWidget& window, const char* context, const char* id, const char* text, const char* keys,
              const char* drawing) {
  auto* action = new QAction(QCoreApplication::translate(context, text), &window);
  action->setObjectName(QString::fromLatin1(id));
  QList<QKeySequence> sequences;
  for (const QString& key : QString::fromLatin1(keys).split(QLatin1Char('|'), Qt::SkipEmptyParts))
    sequences << QKeySequence(key);
  action->setShortcuts(sequences);
  if (*drawing != 0) action->setIcon(icon(QString::fromLatin1(drawing)));
  window.addAction(action);
  return action;
}

}  // namespace

Actions::Actions(QWidget& window) {
  for (const ActionRow& row : action_rows()) {
    QAction* action = make(window, "actions", row.id, row.text, row.keys, row.icon);
    action->setCheckable(row.checkable);
    action->setProperty("in_plan_menu", row.in_plan_menu);
    all_.push_back(action);
  }
  for (const HandRow& row : hand_rows()) {
    QAction* action = make(window, "hands", row.id, row.text, row.key, row.icon);
    action->setCheckable(true);
    hands_.push_back(action);
    all_.push_back(action);
  }
}

QAction& Actions::operator[](const char* id) const {
  for (QAction* action : all_) {
    if (action->objectName() == QLatin1String(id)) return *action;
  }
  problem::ensure(false, "an action is in the table");
  return *all_.front();
}

QAction& Actions::hand(sketch::Hand hand) const {
  for (std::size_t i = 0; i < hand_rows().size(); ++i) {
    if (hand_rows()[i].hand == hand) return *hands_[i];
  }
  problem::ensure(false, "a tool is in the table");
  return *hands_.front();
}

void Actions::fill(QMenuBar& bar) const {
  for (const MenuRow& row : menus) {
    QMenu* menu = bar.addMenu(QCoreApplication::translate("menus", row.text));
    menu->setObjectName(QStringLiteral("menu-") + QLatin1String(row.id));
    int group = 0;
    for (std::size_t i = 0; i < hand_rows().size(); ++i) {
      const HandRow& hand = hand_rows()[i];
      const char* in = hand.hand == Hand::start_point ? "lay" : hand.group < 0 ? "edit" : "draw";
      if (std::strcmp(in, row.id) != 0) continue;
      if (hand.group > group) menu->addSeparator();
      group = std::max(group, hand.group);
      menu->addAction(hands_[i]);
    }
    if (std::strcmp(row.id, "edit") == 0) menu->addSeparator();
    for (std::size_t i = 0; i < action_rows().size(); ++i) {
      if (std::strcmp(action_rows()[i].menu, row.id) != 0) continue;
      if (action_rows()[i].rule_before) menu->addSeparator();
      menu->addAction(all_[i]);
    }
  }
}

}  // namespace ui
