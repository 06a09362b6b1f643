#include "ui/panels/selected_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/look/plain_tip.h"
#include "ui/look/theme.h"
#include "ui/panels/build_up_page.h"
#include "ui/panels/edges_page.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/length_field.h"
#include "ui/panels/levels_page.h"
#include "ui/panels/measure_grid.h"
#include "ui/panels/pattern_page.h"

namespace ui {

SelectedPanel::SelectedPanel(Desk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName("selected");
  setAccessibleName(tr("Selected"));
  setMinimumWidth(px(200));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(px(16), px(12), px(16), 0);
  column->setSpacing(px(8));
  column->addWidget(make_head());
  measures_ = new MeasureGrid(this);
  column->addWidget(measures_);
  column->addWidget(make_tabs());
  build_up_ = new BuildUpPage(desk, book_);
  pattern_ = new PatternPage(desk, book_);
  edges_ = new EdgesPage(desk, book_);
  levels_ = new LevelsPage(desk, book_);
  form_ = new FieldForm(desk, book_);
  pages_ = new QStackedWidget;
  for (QWidget* page : std::initializer_list<QWidget*>{build_up_, pattern_, edges_, levels_, form_})
    pages_->addWidget(page);
  pages_->setMinimumWidth(1);  // as wide as the panel, whatever a hidden page would like
  scroll_ = new QScrollArea(this);
  scroll_->setObjectName("selected/scroll");
  scroll_->setWidget(pages_);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setFocusPolicy(Qt::NoFocus);
  column->addWidget(scroll_, 1);
  connect(&desk_, &Desk::job_changed, this, &SelectedPanel::follow);
  connect(&desk_, &Desk::selection_changed, this, &SelectedPanel::follow);
  connect(&desk_, &Desk::stage_changed, this, &SelectedPanel::follow);
  connect(&desk_, &Desk::results_changed, this, &SelectedPanel::follow);
  connect(&desk_, &Desk::computing_changed, this, &SelectedPanel::show_numbers);
  follow();
}

SelectedPanel::~SelectedPanel() = default;

void SelectedPanel::set_source(Source source) { book_ = std::move(source); }

QWidget* SelectedPanel::make_head() {
  auto* head = new QWidget(this);
  auto* row = new QHBoxLayout(head);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(px(8));
  tag_ = new TagLabel(head);
  name_ = new TypedField(text_typing(), head);
  name_->setObjectName("selected/name");
  name_->setAccessibleName(tr("Name"));
  name_->setFont(ui::font(Type::name, true));
  name_->setPlaceholderText(tr("No name"));
  name_->setStyleSheet(QString("QLineEdit { border: 1px solid transparent; background: transparent; padding: 0; }"
                               "QLineEdit:focus { border: 1px solid %1; background: %2; }")
                           .arg(theme().chalk.name(), theme().raised.name()));
  connect(name_, &TypedField::given, this, &SelectedPanel::rename);
  kind_ = new QLabel(head);
  kind_->setObjectName("selected/kind");
  kind_->setFont(ui::font(Type::note));
  QPalette quiet = kind_->palette();
  quiet.setColor(QPalette::WindowText, theme().ink2);
  kind_->setPalette(quiet);
  row->addWidget(tag_);
  row->addWidget(name_, 1);
  row->addWidget(kind_);
  return head;
}

QWidget* SelectedPanel::make_tabs() {
  tabs_ = new QWidget(this);
  auto* row = new QHBoxLayout(tabs_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(px(4));
  const std::pair<const char*, QString> words[] = {
      {"build-up", tr("Build-up")}, {"pattern", tr("Pattern")}, {"edges", tr("Edges")}, {"levels", tr("Levels")}};
  for (const auto& [name, word] : words) {
    auto* tab = new FlatButton(FlatButton::Form::tab, word, tabs_);
    tab->setObjectName("tab/" + QString::fromLatin1(name));
    tab->setCheckable(true);
    tab->setAutoExclusive(true);
    const auto number = static_cast<Tab>(tab_.size());
    connect(tab, &QAbstractButton::clicked, this, [this, number] { show_tab(number); });
    row->addWidget(tab);
    tab_.push_back(tab);
  }
  row->addStretch(1);
  return tabs_;
}

void SelectedPanel::show_tab(Tab tab) {
  if (tabs_->isHidden()) return;
  chosen_ = tab;
  tab_[tab]->setChecked(true);
  pages_->setCurrentIndex(tab);
  scroll_->verticalScrollBar()->setValue(0);
  fill_page();
}

FieldEditor* SelectedPanel::editor(const std::string& id) const {
  const QWidget* page = pages_->currentWidget();
  if (page == build_up_) return build_up_->editor(id);
  if (page == pattern_) return pattern_->editor(id);
  if (page == edges_) return edges_->editor(id);
  return page == levels_ ? levels_->editor(id) : form_->editor(id);
}

void SelectedPanel::follow() {
  if (const plan::Element* element = desk_.the_selected())
    show_one(*element);
  else if (desk_.selected().empty())
    show_job();
  else
    show_several();
  show_numbers();
}

void SelectedPanel::show_job() {
  tag_->show_tag({});
  name_->setReadOnly(true);
  name_->setFocusPolicy(Qt::NoFocus);
  name_->set_value(tr("The job").toStdString());
  kind_->setText(tr("Nothing is selected"));
  tabs_->hide();
  pages_->setCurrentWidget(form_);
  form_->show_fields(fields_of_job());
}

void SelectedPanel::show_one(const plan::Element& element) {
  tag_->show_tag(QString::fromStdString(element.id));
  name_->setReadOnly(false);
  name_->setFocusPolicy(Qt::StrongFocus);
  name_->setToolTip(plain_tip(QString::fromStdString(element.name)));
  name_->set_value(element.name);
  kind_->setText(kind_words(element.kind));
  const bool area = std::holds_alternative<plan::PavedArea>(element.kind);
  tabs_->setVisible(area);
  pages_->setCurrentIndex(area ? chosen_ : build_up);
  tab_[chosen_]->setChecked(true);
  fill_page();
}

void SelectedPanel::show_several() {
  tag_->show_tag({});
  name_->setReadOnly(true);
  name_->setFocusPolicy(Qt::NoFocus);
  name_->set_value(tr("%1 selected").arg(desk_.selected().size()).toStdString());
  kind_->setText({});
  tabs_->hide();
  pages_->setCurrentWidget(form_);
  form_->show_fields(common_fields(desk_.job(), desk_.selected()));
}

void SelectedPanel::fill_page() {
  const plan::Element* element = desk_.the_selected();
  if (!element) return;
  const QWidget* page = pages_->currentWidget();
  if (page == build_up_) build_up_->show_element(element->id);
  if (page == pattern_) pattern_->show_element(element->id);
  if (page == edges_) edges_->show_element(element->id);
  if (page == levels_) levels_->show_element(element->id);
}

void SelectedPanel::show_numbers() {
  const plan::Element* element = desk_.the_selected();
  const ResultsPtr results = desk_.results();
  if (element)
    measures_->show_measures(results ? six_measures(*results, *element) : std::vector<Told>{}, desk_.computing());
  else if (desk_.selected().empty())
    measures_->show_measures(counts_of(desk_.job()), false);
  else
    measures_->show_measures({}, false);
}

void SelectedPanel::rename() {
  const plan::Element* element = desk_.the_selected();
  if (!element) return;
  const Field field = name_of(element->id);
  desk_.edit(field.set(desk_.job(), name_->value()), field.step);
}

}  // namespace ui
