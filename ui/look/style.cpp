#include "ui/look/style.h"

#include <QApplication>
#include <QMap>
#include <QToolTip>

namespace ui {

namespace {

// Rules with @names in place of colours and sizes. A ring of 2 px shows the keyboard; its widget gives up the same from
// its padding, so that nothing moves.
const char* const boxes = R"(
QWidget { outline: 0; }
QMainWindow, QDialog { background: @panel; }
QLineEdit, QTextEdit, QPlainTextEdit, QAbstractSpinBox, QComboBox {
  background: @raised; color: @ink; border: 1px solid @rule; border-radius: 2px; padding: @p3 @p6;
  selection-background-color: @chalk; selection-color: @onchalk; }
QLineEdit, QAbstractSpinBox, QComboBox { min-height: @h20; }
QLineEdit:focus, QTextEdit:focus, QPlainTextEdit:focus, QAbstractSpinBox:focus, QComboBox:focus {
  border: 2px solid @chalk; padding: @p2 @p5; }
QLineEdit:disabled, QAbstractSpinBox:disabled, QComboBox:disabled, QTextEdit:disabled {
  color: @ink3; background: @panel; border-color: @line; }
QAbstractSpinBox QLineEdit, QComboBox QLineEdit { border: 0; padding: 0; min-height: 0; background: transparent; }
QComboBox::drop-down { border: 0; width: @h20; }
QComboBox::down-arrow { image: url(:/icons/down-@shade.svg); width: @h12; height: @h12; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { border: 0; width: @h16; background: transparent; }
QAbstractSpinBox::up-arrow { image: url(:/icons/up-@shade.svg); width: @h10; height: @h10; }
QAbstractSpinBox::down-arrow { image: url(:/icons/down-@shade.svg); width: @h10; height: @h10; }
QComboBox QAbstractItemView { background: @raised; border: 1px solid @rule; padding: 2px; }
)";

const char* const buttons = R"(
QPushButton { background: @raised; color: @ink; border: 1px solid @rule; border-radius: 2px; padding: @p3 @p12;
  min-height: @h20; }
QPushButton:hover { border-color: @ink; }
QPushButton:pressed, QPushButton:checked { background: @chalkwash; border-color: @chalk; }
QPushButton:focus { border: 2px solid @chalk; padding: @p2 @p11; }
QPushButton:disabled { color: @ink3; border-color: @line; background: @panel; }
QPushButton:default, QPushButton[main="true"] { background: @ink; color: @panel; border-color: @ink; font-weight: bold; }
QPushButton:default:focus, QPushButton[main="true"]:focus { border: 2px solid @chalk; }
QPushButton:default:disabled, QPushButton[main="true"]:disabled { background: @rule; color: @panel; border-color: @rule; }
QToolButton { background: transparent; color: @ink; border: 1px solid transparent; border-radius: 2px; padding: 2px; }
QToolButton:hover { background: @raised; border-color: @rule; }
QToolButton:checked { background: @chalkwash; border-color: @chalk; }
QToolButton:focus { border: 2px solid @chalk; padding: 1px; }
QToolButton:disabled { color: @ink3; }
QCheckBox, QRadioButton { spacing: @p8; padding: 2px; border: 2px solid transparent; border-radius: 2px; min-height: @h20; }
QCheckBox:focus, QRadioButton:focus { border-color: @chalk; }
QCheckBox:disabled, QRadioButton:disabled { color: @ink3; }
)";

const char* const lists = R"(
QTabWidget::pane { border: 0; border-top: 1px solid @line; }
QTabBar { background: transparent; }
QTabBar::tab { background: transparent; color: @ink2; border: 2px solid transparent; border-bottom: 3px solid transparent;
  padding: @p4 @p8; margin-right: @p8; }
QTabBar::tab:hover { color: @ink; }
QTabBar::tab:selected { color: @ink; font-weight: bold; border-bottom-color: @ink; }
QTabBar:focus::tab:selected, QTabBar::tab:selected:focus { border: 2px solid @chalk; border-bottom: 3px solid @chalk; }
QAbstractItemView { background: @raised; alternate-background-color: @panel; color: @ink; border: 1px solid @rule;
  border-radius: 2px; gridline-color: @line; selection-background-color: @chalkwash; selection-color: @ink; }
QAbstractItemView:focus { border: 2px solid @chalk; }
QTableView::item, QTreeView::item, QListView::item { min-height: @h24; }
QHeaderView { background: @panel; border: 0; }
QHeaderView::section { background: @panel; color: @ink3; border: 0; border-bottom: 1px solid @rule;
  border-right: 1px solid @line; padding: @p4 @p8; }
QTableCornerButton::section { background: @panel; border: 0; border-bottom: 1px solid @rule; }
QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; }
QScrollBar { background: transparent; border: 0; margin: 0; }
QScrollBar:vertical { width: @h8; }
QScrollBar:horizontal { height: @h8; }
QScrollBar::handle { background: @rule; border-radius: 2px; margin: 2px; }
QScrollBar::handle:vertical { min-height: @h24; }
QScrollBar::handle:horizontal { min-width: @h24; }
QScrollBar::handle:hover { background: @ink3; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
)";

const char* const rest = R"(
QMenuBar { background: @panel; color: @ink; border: 0; }
QMenuBar::item { background: transparent; padding: @p6 @p10; border-radius: 2px; }
QMenuBar::item:selected, QMenuBar::item:pressed { background: @chalkwash; color: @ink; }
QMenu { background: @raised; color: @ink; border: 1px solid @rule; padding: @p4 0; }
QMenu::item { padding: @p5 @p24 @p5 @p10; border-left: 3px solid transparent; }
QMenu::item:selected { background: @chalkwash; color: @ink; border-left: 3px solid @chalk; }
QMenu::item:disabled { color: @ink3; }
QMenu::icon { padding-left: @p10; }
QMenu::separator { height: 1px; background: @line; margin: @p4 @p10; }
QToolTip { background: @raised; color: @ink; border: 1px solid @rule; padding: @p4; }
QSplitter::handle { background: @line; }
QSplitter::handle:hover { background: @chalk; }
QGroupBox { border: 1px solid @line; border-radius: 2px; margin-top: @h20; padding: @p8; }
QGroupBox::title { subcontrol-origin: margin; left: 0; color: @ink; font-weight: bold; }
QProgressBar { background: @raised; color: @ink; border: 1px solid @rule; border-radius: 2px; text-align: center; }
QProgressBar::chunk { background: @chalkwash; border-right: 2px solid @chalk; }
QStatusBar { background: @panel; color: @ink2; }
)";

QMap<QString, QString> colours(const Theme& t) {
  return {{"@panel", t.panel.name()},
          {"@raised", t.raised.name()},
          {"@ink", t.ink.name()},
          {"@ink2", t.ink2.name()},
          {"@ink3", t.ink3.name()},
          {"@rule", t.rule.name()},
          {"@line", t.line.name()},
          {"@chalk", t.chalk.name()},
          {"@chalkwash", t.chalk_wash.name()},
          {"@onchalk", t.on_chalk.name()},
          {"@shade", t.dark ? "dark" : "light"}};
}

// "@p6" and "@h20": px at 100 %, grown with the type.
QString size_of(const QString& word) { return QString::number(px(word.mid(2).toDouble())) + "px"; }

QString filled(const QString& text, const QMap<QString, QString>& by_name) {
  QString made;
  for (qsizetype at = 0; at < text.size();) {
    if (text[at] != '@') {
      made += text[at++];
      continue;
    }
    qsizetype end = at + 1;
    while (end < text.size() && text[end].isLetterOrNumber()) ++end;
    const QString word = text.mid(at, end - at);
    made += by_name.contains(word) ? by_name[word] : size_of(word);
    at = end;
  }
  return made;
}

}  // namespace

QPalette palette_of(const Theme& t) {
  QPalette p;
  const std::pair<QPalette::ColorRole, QColor> roles[] = {{QPalette::Window, t.panel},
                                                          {QPalette::WindowText, t.ink},
                                                          {QPalette::Base, t.raised},
                                                          {QPalette::AlternateBase, t.panel},
                                                          {QPalette::Text, t.ink},
                                                          {QPalette::Button, t.raised},
                                                          {QPalette::ButtonText, t.ink},
                                                          {QPalette::BrightText, t.on_chalk},
                                                          {QPalette::Highlight, t.chalk},
                                                          {QPalette::HighlightedText, t.on_chalk},
                                                          {QPalette::Link, t.chalk},
                                                          {QPalette::LinkVisited, t.chalk},
                                                          {QPalette::ToolTipBase, t.raised},
                                                          {QPalette::ToolTipText, t.ink},
                                                          {QPalette::PlaceholderText, t.ink3},
                                                          {QPalette::Light, t.raised},
                                                          {QPalette::Midlight, t.line},
                                                          {QPalette::Mid, t.rule},
                                                          {QPalette::Dark, t.rule},
                                                          {QPalette::Shadow, t.ink3}};
  for (const auto& [role, colour] : roles) p.setColor(role, colour);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    p.setColor(QPalette::Disabled, role, t.ink3);
  return p;
}

QString rules_of(const Theme& t) { return filled(QString::fromLatin1(boxes) + buttons + lists + rest, colours(t)); }

void dress(QApplication& application) {
  const QPalette palette = palette_of(theme());
  QApplication::setPalette(palette);
  QToolTip::setPalette(palette);
  QApplication::setFont(font(Type::text));
  QToolTip::setFont(font(Type::note));
  application.setStyleSheet(rules_of(theme()));
}

}  // namespace ui
