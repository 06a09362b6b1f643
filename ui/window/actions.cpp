#include "ui/window/actions.h"

#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>
#include <cstring>

#include "problem/ensure.h"
#include "ui/look/theme.h"
#include "ui/panels/tool_list.h"

namespace ui {

using sketch::Hand;

const std::vector<ActionRow>& action_rows() {
  static const std::vector<ActionRow> rows{
      {"new-job", "job", QT_TRANSLATE_NOOP("actions", "New job"), "Ctrl+N", "job-book"},
      {"open-job", "job", QT_TRANSLATE_NOOP("actions", "Job book…"), "Ctrl+O", "open"},
      {"save-version", "job", QT_TRANSLATE_NOOP("actions", "Save a version…"), "Ctrl+S", ""},
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
      {"estimate", "office", QT_TRANSLATE_NOOP("actions", "Estimate…"), "Ctrl+E", ""},
      {"visit", "office", QT_TRANSLATE_NOOP("actions", "Enquiry and site visit…"), "", ""},
      {"book-prices", "office", QT_TRANSLATE_NOOP("actions", "Prices of the book…"), "", ""},
      {"compare", "office", QT_TRANSLATE_NOOP("actions", "What has changed since the last version…"), "Ctrl+Shift+E",
       "compare", true},
      {"today", "office", QT_TRANSLATE_NOOP("actions", "The last version at today's prices…"), "", ""},
      {"otherwise", "office", QT_TRANSLATE_NOOP("actions", "The same job built otherwise…"), "", ""},
      {"change-order", "office", QT_TRANSLATE_NOOP("actions", "Change order…"), "", ""},
      {"actual", "office", QT_TRANSLATE_NOOP("actions", "What was really used…"), "", ""},
      {"backups", "office", QT_TRANSLATE_NOOP("actions", "Backups of the book…"), "", "", true},
      {"print-sheets", "sheets", QT_TRANSLATE_NOOP("actions", "Print sheets…"), "Ctrl+P", "sheets"},
      {"plan-picture", "sheets", QT_TRANSLATE_NOOP("actions", "The plan as a picture…"), "", ""},
      {"material-list", "sheets", QT_TRANSLATE_NOOP("actions", "Material list…"), "Ctrl+Shift+P", "", true},
      {"setting-out", "sheets", QT_TRANSLATE_NOOP("actions", "Setting-out table…"), "", ""},
      {"catalogue-window", "catalogue", QT_TRANSLATE_NOOP("actions", "Catalogue…"), "Ctrl+K", "catalogue"},
      {"items-out", "catalogue", QT_TRANSLATE_NOOP("actions", "Write the items of this job…"), "", ""},
      {"keys", "help", QT_TRANSLATE_NOOP("actions", "Keys"), "F1", ""},
      {"about", "help", QT_TRANSLATE_NOOP("actions", "About Groundcourse"), "", ""},
  };
  return rows;
}

const std::vector<HandRow>& hand_rows() {
  static const std::vector<HandRow> rows{
      {Hand::pick, "hand-pick", ""},
      {Hand::site_plan, "hand-site-plan", "G"},
      {Hand::site_mark, "hand-site-mark", ""},
      {Hand::building, "hand-building", "B"},
      {Hand::keep_out, "hand-keep-out", "K"},
      {Hand::removal, "hand-removal", ""},
      {Hand::protection, "hand-protection", ""},
      {Hand::level, "hand-level", "L"},
      {Hand::wall, "hand-wall", "W"},
      {Hand::drain, "hand-drain", "D"},
      {Hand::pool, "hand-pool", "P"},
      {Hand::steps, "hand-steps", "S"},
      {Hand::area, "hand-area", "A"},
      {Hand::edge, "hand-edge", "E"},
      {Hand::feature, "hand-feature", "F"},
      {Hand::measure, "hand-measure", "M"},
      {Hand::dimension, "hand-dimension", "I"},
      {Hand::note, "hand-note", "N"},
      {Hand::move, "hand-move", "V", "edit"},
      {Hand::turn, "hand-turn", "T", "edit"},
      {Hand::copy, "hand-copy", "C", "edit"},
      {Hand::mirror, "hand-mirror", "R", "edit"},
      {Hand::offset, "hand-offset", "Y", "edit"},
      {Hand::split, "hand-split", "X", "edit"},
      {Hand::join, "hand-join", "J", "edit"},
      {Hand::hole, "hand-hole", "H", "edit"},
      {Hand::edge_to_arc, "hand-edge-to-arc", "U", "edit"},
      {Hand::trace, "hand-trace", "Q", "edit"},
      {Hand::start_point, "hand-start-point", "O", "lay"},
  };
  return rows;
}

namespace {

struct MenuRow {
  const char* id;
  const char* text;
};
constexpr MenuRow menus[] = {
    {"job", QT_TRANSLATE_NOOP("menus", "Job")},       {"edit", QT_TRANSLATE_NOOP("menus", "Edit")},
    {"draw", QT_TRANSLATE_NOOP("menus", "Draw")},     {"lay", QT_TRANSLATE_NOOP("menus", "Lay")},
    {"show", QT_TRANSLATE_NOOP("menus", "Show")},     {"office", QT_TRANSLATE_NOOP("menus", "Office")},
    {"sheets", QT_TRANSLATE_NOOP("menus", "Sheets")}, {"catalogue", QT_TRANSLATE_NOOP("menus", "Catalogue")},
    {"help", QT_TRANSLATE_NOOP("menus", "Help")},
};

QAction* make(QWidget& window, const char* id, const QString& text, const char* keys, const QString& drawing) {
  auto* action = new QAction(text, &window);
  action->setObjectName(QString::fromLatin1(id));
  QList<QKeySequence> sequences;
  for (const QString& key : QString::fromLatin1(keys).split(QLatin1Char('|'), Qt::SkipEmptyParts))
    sequences << QKeySequence(key);
  action->setShortcuts(sequences);
  if (!drawing.isEmpty()) action->setIcon(icon(drawing));
  window.addAction(action);
  return action;
}

}  // namespace

Actions::Actions(QWidget& window) {
  for (const ActionRow& row : action_rows()) {
    QAction* action =
        make(window, row.id, QCoreApplication::translate("actions", row.text), row.keys, QString::fromLatin1(row.icon));
    action->setCheckable(row.checkable);
    action->setProperty("in_plan_menu", row.in_plan_menu);
    all_.push_back(action);
  }
  for (const HandRow& row : hand_rows()) {
    QAction* action = make(window, row.id, tool_name(row.hand), row.key, tool_icon(row.hand));
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
    for (std::size_t i = 0; i < hand_rows().size(); ++i) {
      if (std::strcmp(hand_rows()[i].menu, row.id) != 0) continue;
      if (begins_group(hand_rows()[i].hand)) menu->addSeparator();
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
