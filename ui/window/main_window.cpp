#include "ui/window/main_window.h"

#include <QDragEnterEvent>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QMimeData>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/look/theme.h"
#include "ui/panels/header.h"
#include "ui/panels/prompt.h"
#include "ui/panels/selected_panel.h"
#include "ui/panels/stage_panel.h"
#include "ui/panels/strip.h"
#include "ui/panels/takeoff_panel.h"
#include "ui/panels/tool_list.h"
#include "ui/panels/total_panel.h"
#include "ui/plan/plan_view.h"
#include "ui/plan/site_plans.h"
#include "ui/print/sheets_window.h"
#include "ui/window/start_page.h"

namespace ui {

namespace {
constexpr int narrow_px = 1200;  // under it the right side folds to a drawer
constexpr int foot_px = 124;     // strip and total
}  // namespace

MainWindow::MainWindow(Desk& desk, Shelf shelf, QWidget* parent)
    : QMainWindow(parent), desk_(&desk), shelf_(std::move(shelf)), actions_(*this) {
  setObjectName("window");
  setWindowIcon(icon("mark"));
  setAcceptDrops(true);
  header_ = new Header(desk, this);
  auto* bar = new QMenuBar(header_);
  actions_.fill(*bar);
  header_->set_menu(bar);
  setMenuWidget(header_);
  sides_ = new QSplitter(Qt::Horizontal, this);
  sides_->setObjectName("sides");
  sides_->setChildrenCollapsible(false);
  sides_->setHandleWidth(1);
  sides_->addWidget(make_left());
  right_ = make_right();
  sides_->addWidget(right_);
  sides_->setStretchFactor(0, 1);
  sides_->setStretchFactor(1, 0);
  sides_->setSizes({1024, 416});
  setCentralWidget(sides_);
  connect_actions();
  follow_desk();
  plan_->setFocus();
}

MainWindow::~MainWindow() = default;

QWidget* MainWindow::make_left() {
  auto* left = new QWidget(this);
  auto* rows = new QVBoxLayout(left);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(0);
  auto* across = new QHBoxLayout;
  across->setSpacing(0);
  tools_ = new ToolList(left);
  across->addWidget(tools_);
  auto* column = new QVBoxLayout;
  column->setSpacing(0);
  prompt_ = new Prompt(left);
  plan_ = new PlanView(*desk_, left);
  column->addWidget(prompt_);
  column->addWidget(plan_, 1);
  across->addLayout(column, 1);
  rows->addLayout(across, 1);
  strip_ = new Strip(*desk_, left);
  strip_->setFixedHeight(px(foot_px));
  rows->addWidget(strip_);
  start_ = new StartPage(plan_);
  site_plans_ = std::make_unique<SitePlans>(*desk_, *plan_, shelf_.body);
  plan_->installEventFilter(this);
  return left;
}

QWidget* MainWindow::make_right() {
  auto* right = new QWidget(this);
  right->setObjectName("right-side");
  right->setMinimumWidth(px(360));
  right->setMaximumWidth(px(560));
  right->setAutoFillBackground(true);
  auto* rows = new QVBoxLayout(right);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(0);
  auto* halves = new QSplitter(Qt::Vertical, right);
  halves->setObjectName("halves");
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(1);
  upper_right_ = new QStackedWidget(halves);
  selected_ = new SelectedPanel(*desk_, upper_right_);
  stage_ = new StagePanel(*desk_);
  auto* stage_room = new QScrollArea(upper_right_);  // hold points and cautions may be many
  stage_room->setObjectName("stage-room");
  stage_room->setFrameShape(QFrame::NoFrame);
  stage_room->setFocusPolicy(Qt::NoFocus);
  stage_room->setWidgetResizable(true);
  stage_room->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  stage_room->setWidget(stage_);
  if (shelf_.catalogue) selected_->set_source(shelf_.catalogue);
  upper_right_->addWidget(selected_);
  upper_right_->addWidget(stage_room);
  takeoff_ = new TakeoffPanel(*desk_, halves);
  halves->addWidget(upper_right_);
  halves->addWidget(takeoff_);
  // Their own scroll bars show the rest: a low window stays low.
  upper_right_->setMinimumHeight(px(240));
  takeoff_->setMinimumHeight(px(160));
  halves->setSizes({400, 320});
  rows->addWidget(halves, 1);
  total_ = new TotalPanel(*desk_, right);
  total_->setFixedHeight(px(foot_px));
  rows->addWidget(total_);
  return right;
}

// What the panels say of each other: the plan's tool shows itself in the prompt and in the list of tools.
void MainWindow::follow_desk() {
  connect(plan_, &PlanView::view_changed, this, [this] {
    show_prompt();
    if (!desk_->job().elements.empty() || plan_->view().busy) start_->hide();
  });
  connect(plan_, &PlanView::hand_changed, this, [this](sketch::Hand hand) {
    tools_->show_hand(hand);
    for (const HandRow& row : hand_rows()) actions_.hand(row.hand).setChecked(row.hand == hand);
  });
  connect(plan_, &PlanView::refused, prompt_, &Prompt::say);
  connect(plan_, &PlanView::key_typed, prompt_, &Prompt::take_key);
  connect(prompt_, &Prompt::typed, plan_, [this](const QString& field, const QString& text, bool locked) {
    plan_->take(sketch::Typed{field.toStdString(), text.toStdString(), locked});
  });
  // The keyboard goes back to the plan: what is typed next is for the tool.
  connect(prompt_, &Prompt::chosen, plan_, [this](const QString& id) {
    plan_->setFocus(Qt::OtherFocusReason);
    plan_->take(sketch::Chosen{id.toStdString()});
  });
  connect(prompt_, &Prompt::entered, plan_, [this] { plan_->take(sketch::Key::enter); });
  connect(prompt_, &Prompt::keyed, plan_, [this](sketch::Key key) {
    plan_->take(key);
    plan_->setFocus(Qt::OtherFocusReason);
  });
  connect(prompt_, &Prompt::lost_field, plan_, [this] { plan_->setFocus(Qt::OtherFocusReason); });
  connect(prompt_, &Prompt::tried, this, [this](const QString& what) { try_first(what); });
  connect(tools_, &ToolList::picked, plan_, [this](sketch::Hand hand) {
    plan_->take_hand(hand);
    plan_->setFocus(Qt::OtherFocusReason);
  });
  connect(header_, &Header::wanted_undo, this, &MainWindow::undo);
  header_->allow_save(static_cast<bool>(shelf_.save_version));
  connect(header_, &Header::wanted_print, this, [this] { actions_["print-sheets"].trigger(); });
  connect(header_, &Header::wanted_save, this, [this] { actions_["save-version"].trigger(); });
  show_version_state();
  connect(desk_, &Desk::said, prompt_, &Prompt::say);
  connect(total_, &TotalPanel::wanted_line, takeoff_, &TakeoffPanel::show_line);
  connect(total_, &TotalPanel::wanted_problem, takeoff_, &TakeoffPanel::show_solve);
  connect(takeoff_, &TakeoffPanel::wanted_in_catalogue, this, [this](const QString&) {
    if (desk_->the_selected() != nullptr) selected_->show_tab(SelectedPanel::build_up);
  });
  const auto choose_page = [this] {
    const bool stage = desk_->stage().has_value() && desk_->selected().empty();
    upper_right_->setCurrentIndex(stage ? 1 : 0);
  };
  connect(desk_, &Desk::stage_changed, this, choose_page);
  connect(desk_, &Desk::selection_changed, this, choose_page);
  const auto job_changed = [this] {
    const QString name = QString::fromStdString(desk_->job().heading.name);
    setWindowTitle((name.isEmpty() ? tr("Job without a name") : name) + QStringLiteral(" - Groundcourse"));
    start_->setVisible(desk_->job().elements.empty() && !plan_->view().busy);
    const auto step = [](const QString& verb, const std::string& edit) {
      return edit.empty() ? verb : verb + QStringLiteral(" ") + QString::fromStdString(edit);
    };
    actions_["undo"].setText(step(tr("Undo"), desk_->history().undo_name()));
    actions_["redo"].setText(step(tr("Redo"), desk_->history().redo_name()));
    actions_["redo"].setEnabled(desk_->history().can_redo());
  };
  connect(desk_, &Desk::job_changed, this, job_changed);
  job_changed();
  show_prompt();
  tools_->show_hand(plan_->hand());
}

void MainWindow::show_prompt() { prompt_->show_view(plan_->view(), tool_icon(plan_->hand())); }

// The three things to try with the demo job, each done by its link.
void MainWindow::try_first(const QString& what) {
  if (what == QLatin1String("stage")) {
    actions_["stage-3"].trigger();
  } else if (what == QLatin1String("corner")) {
    desk_->show_stage(std::nullopt);
    for (const auto& element : desk_->job().elements) {
      if (!std::holds_alternative<plan::PavedArea>(element->kind)) continue;
      desk_->select({element->id});
      break;
    }
    plan_->setFocus(Qt::OtherFocusReason);
  } else {
    show_sheets_window(*desk_, shelf_.sheets, this)->show_sheet("crew-list");
  }
}

void MainWindow::show_version_state() {
  header_->set_version_state(shelf_.version_state ? shelf_.version_state() : QString());
}

void MainWindow::show_first_start() { prompt_->show_first_note(); }

// --- room

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  fold(width() < px(narrow_px));
  place_drawer();
}

void MainWindow::fold(bool narrow) {
  if (narrow == narrow_) return;
  narrow_ = narrow;
  if (narrow) {
    right_->setParent(centralWidget()->parentWidget());
    right_->hide();
  } else {
    sides_->addWidget(right_);
    sides_->setStretchFactor(1, 0);
    right_->show();
  }
  actions_["panels"].setChecked(!narrow);
}

void MainWindow::place_drawer() {
  if (!narrow_) return;
  const QRect room = centralWidget()->geometry();
  const int wide = std::min(px(416), room.width());
  right_->setGeometry(room.right() + 1 - wide, room.top(), wide, room.height());
  right_->raise();
}

bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
  if (watched == plan_ && event->type() == QEvent::Resize) {
    start_->adjustSize();
    start_->move((plan_->width() - start_->width()) / 2, (plan_->height() - start_->height()) / 2);
  }
  return QMainWindow::eventFilter(watched, event);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  for (const QUrl& url : event->mimeData()->urls()) {
    const QString file = url.toLocalFile();
    if (file.endsWith(QStringLiteral(".json"), Qt::CaseInsensitive)) {
      read_job_file(file);
    } else {
      bring_in_site_plan(file);
    }
  }
}

}  // namespace ui
