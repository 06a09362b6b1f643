#include "ui/panels/takeoff_panel.h"

#include <QButtonGroup>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QScrollBar>
#include <QStackedLayout>
#include <QVBoxLayout>

#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/panel_words.h"
#include "ui/panels/price_field.h"
#include "ui/panels/solve_panel.h"
#include "ui/panels/takeoff_items.h"
#include "ui/panels/takeoff_view.h"

namespace ui {

using Form = FlatButton::Form;

TakeoffPanel::TakeoffPanel(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      items_(new TakeoffItems(this)),
      view_(new TakeoffView(*items_, this)),
      solve_(new SolvePanel(desk, this)) {
  setObjectName(QStringLiteral("takeoff_panel"));
  setAccessibleName(tr("Takeoff"));
  view_->setAccessibleName(tr("Takeoff lines"));
  make_head();
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(px(4));
  rows->addWidget(head_);
  pages_ = new QStackedLayout;
  pages_->addWidget(view_);
  pages_->addWidget(solve_);
  rows->addLayout(pages_, 1);
  connect(&desk_, &Desk::results_changed, this, &TakeoffPanel::show_rows);
  connect(&desk_, &Desk::computing_changed, this, [this](bool computing) { view_->set_old(computing); });
  connect(&desk_, &Desk::selection_changed, this, &TakeoffPanel::choose_scope);
  connect(&desk_, &Desk::stage_changed, this, [this] {
    stays_ = false;
    choose_scope();
  });
  connect(view_, &QTreeView::expanded, this, &TakeoffPanel::opened);
  connect(view_, &QTreeView::collapsed, this, &TakeoffPanel::closed);
  connect(view_, &TakeoffView::pointed, this, &TakeoffPanel::pointed);
  connect(view_, &TakeoffView::followed, this, &TakeoffPanel::follow);
  connect(solve_, &SolvePanel::counted, this, [this](int to_solve, bool grave) {
    solve_tab_->set_count(to_solve > 0 ? QString::number(to_solve) : QString());
    solve_tab_->set_count_grave(grave);
    solve_tab_->setAccessibleName(tr("To solve, %n", nullptr, to_solve));
    place_scopes();
  });
  solve_->show_problems();
  view_->set_old(desk_.computing());
  choose_scope();
}

void TakeoffPanel::make_head() {
  head_ = new QWidget(this);
  auto* grid = new QGridLayout(head_);
  grid->setContentsMargins(px(16), px(6), px(16), 0);
  grid->setHorizontalSpacing(px(16));
  grid->setVerticalSpacing(px(4));
  const auto button = [this](Form form, const QString& text, const char* name, QButtonGroup* group) {
    auto* made = new FlatButton(form, text, head_);
    made->setObjectName(QLatin1String(name));
    group->addButton(made);
    return made;
  };
  auto* tabs = new QButtonGroup(this);
  takeoff_tab_ = button(Form::tab, tr("Takeoff"), "takeoff_tab", tabs);
  solve_tab_ = button(Form::tab, tr("To solve"), "solve_tab", tabs);
  takeoff_tab_->setChecked(true);
  grid->addWidget(takeoff_tab_, 0, 0);
  grid->addWidget(solve_tab_, 0, 1);
  grid->setColumnStretch(2, 1);
  auto* switches = new QButtonGroup(this);
  of_element_ = button(Form::segment, tr("This element"), "scope_element", switches);
  of_stage_ = button(Form::segment, tr("This stage"), "scope_stage", switches);
  of_job_ = button(Form::segment, tr("Whole job"), "scope_job", switches);
  scopes_ = new QWidget(head_);
  auto* row = new QHBoxLayout(scopes_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  for (FlatButton* each : {of_element_, of_stage_, of_job_}) row->addWidget(each);
  connect(takeoff_tab_, &QAbstractButton::clicked, this, &TakeoffPanel::show_takeoff);
  connect(solve_tab_, &QAbstractButton::clicked, this, &TakeoffPanel::show_solve);
  const auto scope = [this](FlatButton* pressed, Scope asked) {
    connect(pressed, &QAbstractButton::clicked, this, [this, asked] {
      stays_ = asked == Scope::job;
      set_scope(asked);
    });
  };
  scope(of_element_, Scope::element);
  scope(of_stage_, Scope::stage);
  scope(of_job_, Scope::job);
}

// Beside the tabs where there is room, else under them.
void TakeoffPanel::place_scopes() {
  auto* grid = static_cast<QGridLayout*>(head_->layout());
  const int tabs = takeoff_tab_->sizeHint().width() + solve_tab_->sizeHint().width() + 3 * px(16);
  int scopes = 0;
  for (const FlatButton* each : {of_element_, of_stage_, of_job_})
    if (!each->isHidden()) scopes += each->sizeHint().width();
  const bool beside = tabs + scopes + 2 * px(16) <= width();
  grid->removeWidget(scopes_);
  if (beside)
    grid->addWidget(scopes_, 0, 3, Qt::AlignRight | Qt::AlignVCenter);
  else
    grid->addWidget(scopes_, 1, 0, 1, 4, Qt::AlignLeft);
}

void TakeoffPanel::choose_scope() {
  of_element_->setVisible(desk_.the_selected() != nullptr);
  of_stage_->setVisible(desk_.stage().has_value());
  Scope wanted = Scope::job;
  if (!stays_ && desk_.the_selected()) wanted = Scope::element;
  if (!stays_ && desk_.stage()) wanted = Scope::stage;
  place_scopes();
  set_scope(wanted);
}

void TakeoffPanel::set_scope(Scope scope) {
  if (scope == Scope::element && !desk_.the_selected()) scope = Scope::job;
  if (scope == Scope::stage && !desk_.stage()) scope = Scope::job;
  scope_ = scope;
  (scope == Scope::element ? of_element_ : scope == Scope::stage ? of_stage_ : of_job_)->setChecked(true);
  show_rows();
}

Asked TakeoffPanel::asked() const {
  Asked made;
  made.scope = scope_;
  if (scope_ == Scope::element && desk_.the_selected()) made.element = desk_.the_selected()->id;
  if (scope_ == Scope::stage && desk_.stage()) made.stage = *desk_.stage();
  return made;
}

// Lines that were open are open again, and what had the keyboard has it still.
void TakeoffPanel::show_rows() {
  const auto key = [this](const QModelIndex& at) {
    const estimate::OrderLine* line = items_->order_line(at);
    return line ? QString::fromStdString(key_of(*line)) : QString();
  };
  const QString current = key(view_->currentIndex());
  const auto* typing = focusWidget() ? qobject_cast<PriceField*>(focusWidget()->parentWidget()) : nullptr;
  typing_ = typing ? typing->item() : plan::Id();
  const int scrolled = view_->verticalScrollBar()->value();
  filling_ = true;
  items_->show(desk_.results(), asked());
  view_->set_empty_words(scope_ == Scope::job ? tr("Nothing is ordered yet. Draw an area, and give it a build-up.")
                         : scope_ == Scope::element ? tr("Nothing is ordered for this element.")
                                                    : tr("Nothing is ordered for this stage."));
  for (int row = 0; row < items_->rowCount(); ++row) {
    const QModelIndex line = items_->index(row, 0);
    if (key(line).isEmpty()) continue;
    if (open_.contains(key(line))) view_->expand(line);
    if (key(line) == current) view_->setCurrentIndex(line);
  }
  filling_ = false;
  for (int row = 0; row < items_->rowCount(); ++row)
    if (view_->isExpanded(items_->index(row, 0))) opened(items_->index(row, 0));
  typing_.clear();
  view_->fit_columns();
  view_->verticalScrollBar()->setValue(scrolled);
}

void TakeoffPanel::opened(const QModelIndex& line) {
  if (filling_) return;
  open_.insert(QString::fromStdString(key_of(*items_->order_line(line))));
  const auto& under = items_->under(line.row());
  for (int row = 0; row < static_cast<int>(under.size()); ++row) {
    const UnderRow& each = under[static_cast<std::size_t>(row)];
    const bool wide = !each.price.empty() || each.row.kind == WorkingRow::Kind::told;
    view_->setFirstColumnSpanned(row, line, wide);
    if (!each.price.empty()) add_price_field(items_->index(row, 0, line), each.price);
  }
  view_->fit_columns();
  light_line(line);
}

void TakeoffPanel::add_price_field(const QModelIndex& row, const plan::Id& item) {
  auto* field = new PriceField(desk_, item, view_->viewport());
  field->field()->setText(typed_[item]);
  connect(field->field(), &QLineEdit::textEdited, this, [this, item](const QString& text) { typed_[item] = text; });
  view_->setIndexWidget(row, field);
  if (item == typing_) field->field()->setFocus();
}

void TakeoffPanel::closed(const QModelIndex& line) {
  if (filling_) return;
  open_.remove(QString::fromStdString(key_of(*items_->order_line(line))));
  view_->fit_columns();
  desk_.light({});
}

void TakeoffPanel::light_line(const QModelIndex& line) {
  desk_.light({items_->lines()[static_cast<std::size_t>(line.row())].line, -1, items_->rings(line.row())});
}

// A term that is pointed at is lit alone; its line again when it is left.
void TakeoffPanel::pointed(const QModelIndex& index) {
  const UnderRow* under = items_->under_at(index);
  if (under && under->row.ring > 0) {
    const int line = items_->lines()[static_cast<std::size_t>(index.parent().row())].line;
    return desk_.light({line, under->row.ring - 1, {under->row.of}});
  }
  if (desk_.lit().line < 0) return;
  const QModelIndex line = items_->index_of_line(desk_.lit().line);
  if (line.isValid() && view_->isExpanded(line)) light_line(line);
}

void TakeoffPanel::follow(const QModelIndex& index) {
  const UnderRow* under = items_->under_at(index);
  if (!under) return;
  const std::string head = under->row.of.substr(0, under->row.of.find('/'));
  problem::Place place;
  switch (under->row.leads) {
    case Leads::nowhere: return;
    case Leads::plan: place.element = head; return desk_.go_to(place);
    case Leads::section: {
      const estimate::OrderLine* line = items_->order_line(index);
      for (const plan::ElementId& id : line->of) {
        const plan::Element* element = desk_.job().find(id);
        const auto* area = element ? std::get_if<plan::PavedArea>(&element->kind) : nullptr;
        if (!area || area->build_up != head) continue;
        place.element = id;
        return desk_.go_to(place);
      }
      say_where(index);
      return;
    }
    case Leads::catalogue: emit wanted_in_catalogue(QString::fromStdString(under->row.of)); break;
    case Leads::choices: emit wanted_choices(QString::fromStdString(under->row.of)); break;
  }
  say_where(index);
}

void TakeoffPanel::say_where(const QModelIndex& index) {
  const WorkingRow& row = items_->under_at(index)->row;
  const std::string head = row.of.substr(0, row.of.find('/'));
  const catalogue::Item* item = desk_.job().catalogue->item(head);
  const QString owner = item ? own_name(item->name, head) : QString::fromStdString(head);
  desk_.say(row.leads == Leads::choices
                ? tr("%1, %2, is one of the choices for the whole job.").arg(row.name, row.value)
                : tr("%1, %2, stands in the job's catalogue under %3.").arg(row.name, row.value, owner));
}

void TakeoffPanel::show_line(int number) {
  show_takeoff();
  if (!items_->index_of_line(number).isValid()) {
    stays_ = true;
    set_scope(Scope::job);
  }
  const QModelIndex line = items_->index_of_line(number);
  if (!line.isValid()) return;
  view_->expand(line);
  view_->setCurrentIndex(line);
  view_->scrollTo(line, QAbstractItemView::PositionAtTop);
  view_->setFocus();
  if (auto* field = qobject_cast<PriceField*>(view_->indexWidget(items_->index(0, 0, line))))
    field->field()->setFocus();
}

void TakeoffPanel::show_takeoff() {
  takeoff_tab_->setChecked(true);
  scopes_->setVisible(true);
  pages_->setCurrentWidget(view_);
}

void TakeoffPanel::show_solve() {
  solve_tab_->setChecked(true);
  scopes_->setVisible(false);
  pages_->setCurrentWidget(solve_);
}

void TakeoffPanel::next_problem() {
  show_solve();
  solve_->next();
}

void TakeoffPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  place_scopes();
}

void TakeoffPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) place_scopes();
}

}  // namespace ui
