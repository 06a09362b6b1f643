// What each action of the window does.
#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/look/theme.h"
#include "ui/panels/prompt.h"
#include "ui/panels/selected_panel.h"
#include "ui/panels/start_box.h"
#include "ui/panels/strip.h"
#include "ui/panels/takeoff_panel.h"
#include "ui/panels/tool_list.h"
#include "ui/panels/total_panel.h"
#include "ui/plan/plan_view.h"
#include "ui/window/main_window.h"
#include "ui/window/settings_dialog.h"
#include "ui/window/start_page.h"

namespace ui {

void MainWindow::connect_actions() {
  connect_files();
  connect_stages();
  connect_tools();
  on("undo", [this] { undo(); });
  on("redo", [this] { desk_->redo(); });
  on("select-all", [this] {
    std::vector<plan::ElementId> all;
    for (const auto& element : desk_->job().elements) all.push_back(element->id);
    desk_->select(std::move(all));
  });
  on("below", [this] { plan_->take(sketch::Key::next_below); });
  on("remove", [this] { plan_->take(sketch::Key::erase); });
  on("find", [this] { find(); });
  on("fewest-cuts", [this] { find_start(takeoff::paving::For::cuts); });
  on("no-slivers", [this] { find_start(takeoff::paving::For::slivers); });
  on("border", [this] { selected_->show_tab(SelectedPanel::pattern); });
  on("whole-job", [this] { plan_->whole_job(); });
  on("zoom-in", [this] { plan_->zoom_in(); });
  on("zoom-out", [this] { plan_->zoom_out(); });
  connect(&actions_["junctions"], &QAction::toggled, plan_, &PlanView::show_junctions);
  connect(&actions_["falls"], &QAction::toggled, plan_, &PlanView::show_falls);
  on("next-part", [this] { next_part(); });
  on("next-problem", [this] { takeoff_->next_problem(); });
  actions_["panels"].setChecked(true);
  connect(&actions_["panels"], &QAction::toggled, right_, [this](bool shown) {
    right_->setVisible(shown);
    place_drawer();
  });
  actions_["dark"].setChecked(theme().dark);
  connect(&actions_["dark"], &QAction::toggled, this, [](bool dark) {
    Settings settings = read_settings();
    settings.light = dark ? Settings::Light::dark : Settings::Light::light;
    write_settings(settings);
    set_dark(dark);
  });
  connect(&actions_["full-screen"], &QAction::toggled, this,
          [this](bool full) { full ? showFullScreen() : showNormal(); });
  on("settings", [this] {
    SettingsDialog dialog(this);
    if (dialog.exec() == QDialog::Accepted && shelf_.look_changed) shelf_.look_changed();
  });
  on("keys", [this] { show_keys(); });
  on("about", [this] {
    QMessageBox::about(this, tr("About Groundcourse"),
                       tr("Groundcourse: from the drawing of a paved outdoor space to a priced order list.\n"
                          "Free software under the GNU General Public License, version 3 or later."));
  });
  on("quit", [] { QApplication::closeAllWindows(); });
}

// The pattern page of the selected area looks for it and shows what came of it, before and after.
void MainWindow::find_start(takeoff::paving::For what) {
  selected_->show_tab(SelectedPanel::pattern);
  auto* box = selected_->findChild<StartBox*>(QStringLiteral("start-box"));
  if (box != nullptr && box->isVisible()) {
    box->find(what);
  } else {
    prompt_->say(tr("Select a paved area with a pattern first"));
  }
}

void MainWindow::connect_stages() {
  for (std::size_t i = 0; i < takeoff::all_stages.size(); ++i) {
    const std::string id = "stage-" + std::to_string(i + 1);
    on(id.c_str(), [this, i] {
      desk_->select({});
      desk_->show_stage(takeoff::all_stages[i]);
    });
  }
  on("finished", [this] { desk_->show_stage(std::nullopt); });
  const auto step = [this](int by) {
    const auto& all = takeoff::all_stages;
    const auto now = desk_->stage();
    const int at = now ? static_cast<int>(std::ranges::find(all, *now) - all.begin()) : static_cast<int>(all.size());
    const int to = at + by;
    if (to < 0) return;
    if (to >= static_cast<int>(all.size())) {
      desk_->show_stage(std::nullopt);
    } else {
      desk_->show_stage(all[static_cast<std::size_t>(to)]);
    }
  };
  on("stage-before", [step] { step(-1); });
  on("stage-after", [step] { step(1); });
}

void MainWindow::connect_tools() {
  for (const HandRow& row : hand_rows()) {
    connect(&actions_.hand(row.hand), &QAction::triggered, plan_, [this, hand = row.hand] {
      plan_->take_hand(hand);
      plan_->setFocus(Qt::OtherFocusReason);
    });
  }
  connect(start_, &StartPage::draw_area, this, [this] { actions_.hand(sketch::Hand::area).trigger(); });
  connect(start_, &StartPage::bring_in_site_plan, this, [this] { actions_["site-plan"].trigger(); });
  connect(start_, &StartPage::open_demo_job, this, [this] { actions_["demo-job"].trigger(); });
}

// While something is in hand undo takes back its last point; else the last edit.
void MainWindow::undo() {
  if (plan_->view().busy) {
    plan_->take(sketch::Key::undo);
  } else {
    desk_->undo();
  }
}

void MainWindow::next_part() {
  if (narrow_ && !right_->isVisible()) {
    actions_["panels"].setChecked(true);
    selected_->setFocus(Qt::TabFocusReason);
    return;
  }
  const std::vector<QWidget*> parts{plan_, prompt_, selected_, takeoff_, total_, strip_, tools_};
  QWidget* focus = QApplication::focusWidget();
  std::size_t at = 0;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (focus != nullptr && (parts[i] == focus || parts[i]->isAncestorOf(focus))) at = i;
  }
  for (std::size_t i = 1; i <= parts.size(); ++i) {
    QWidget* part = parts[(at + i) % parts.size()];
    if (!part->isVisible()) continue;
    part->setFocus(Qt::TabFocusReason);
    if (QWidget* now = QApplication::focusWidget(); now != nullptr && (now == part || part->isAncestorOf(now))) return;
  }
}

// One line that finds elements by id or name, and actions by name.
void MainWindow::find() {
  QDialog dialog(this);
  dialog.setObjectName("find");
  dialog.setWindowTitle(tr("Find an element or an action"));
  auto* rows = new QVBoxLayout(&dialog);
  auto* line = new QLineEdit(&dialog);
  line->setObjectName("find-words");
  line->setAccessibleName(tr("What to find"));
  auto* list = new QListWidget(&dialog);
  list->setObjectName("find-list");
  list->setAccessibleName(tr("What was found"));
  rows->addWidget(line);
  rows->addWidget(list);
  dialog.resize(px(440), px(420));
  for (const auto& element : desk_->job().elements) {
    auto* row = new QListWidgetItem(QString::fromStdString(element->id + "   " + element->name), list);
    row->setData(Qt::UserRole, QString::fromStdString(element->id));
  }
  for (QAction* action : actions_.all()) {
    if (!action->isEnabled()) continue;
    const QString keys = action->shortcut().toString(QKeySequence::NativeText);
    auto* row = new QListWidgetItem(action->text() + (keys.isEmpty() ? "" : "   " + keys), list);
    row->setData(Qt::UserRole + 1, action->objectName());
  }
  list->setCurrentRow(0);
  connect(line, &QLineEdit::textChanged, list, [list](const QString& words) {
    QListWidgetItem* first = nullptr;
    for (int i = 0; i < list->count(); ++i) {
      QListWidgetItem* row = list->item(i);
      row->setHidden(!row->text().contains(words, Qt::CaseInsensitive));
      if (first == nullptr && !row->isHidden()) first = row;
    }
    list->setCurrentItem(first);
  });
  connect(line, &QLineEdit::returnPressed, &dialog, &QDialog::accept);
  connect(list, &QListWidget::itemActivated, &dialog, &QDialog::accept);
  if (dialog.exec() != QDialog::Accepted || list->currentItem() == nullptr) return;
  const QString id = list->currentItem()->data(Qt::UserRole).toString();
  if (!id.isEmpty()) {
    problem::Place place;
    place.element = id.toStdString();
    desk_->go_to(place);
    return;
  }
  actions_[list->currentItem()->data(Qt::UserRole + 1).toString().toLatin1().constData()].trigger();
}

void MainWindow::show_keys() {
  QDialog dialog(this);
  dialog.setObjectName("keys-dialog");
  dialog.setWindowTitle(tr("Keys"));
  auto* rows = new QVBoxLayout(&dialog);
  auto* table = new QTableWidget(0, 2, &dialog);
  table->setAccessibleName(tr("Keys"));
  table->setHorizontalHeaderLabels({tr("Key"), tr("What it does")});
  table->verticalHeader()->hide();
  table->horizontalHeader()->setStretchLastSection(true);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  const auto row = [table](const QString& key, const QString& what) {
    const int at = table->rowCount();
    table->insertRow(at);
    table->setItem(at, 0, new QTableWidgetItem(key));
    table->setItem(at, 1, new QTableWidgetItem(what));
  };
  row(tr("Esc"), tr("One step back; twice to Pick"));
  row(tr("Enter"), tr("Finishes what is drawn"));
  row(tr("Backspace"), tr("Takes the last point back"));
  row(tr("Tab"), tr("Length, angle, next field"));
  row(tr("Digits"), tr("Type a length while drawing"));
  row(tr("A while drawing"), tr("Line or arc"));
  row(tr("Arrows, Shift and arrows"), tr("Move what is selected by a step, by ten"));
  row(tr("Shift, Alt while drawing"), tr("Angles in steps of 15 degrees; take hold of nothing"));
  row(tr("Space and drag, middle button"), tr("Move the paper"));
  for (QAction* action : actions_.all()) {
    QStringList keys;
    for (const QKeySequence& key : action->shortcuts()) keys << key.toString(QKeySequence::NativeText);
    if (!keys.isEmpty()) row(keys.join(tr(" or ")), action->text());
  }
  table->resizeColumnToContents(0);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
  connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  rows->addWidget(table);
  rows->addWidget(buttons);
  dialog.resize(px(560), px(560));
  dialog.exec();
}

}  // namespace ui
