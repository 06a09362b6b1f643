#include "ui/office/visit_window.h"

#include <QBoxLayout>
#include <QDate>
#include <QScrollArea>
#include <QStackedWidget>

#include "ui/look/theme.h"
#include "ui/panels/field_form.h"
#include "ui/panels/fields_making.h"
#include "ui/panels/flat_button.h"

namespace ui {

namespace {

const Source no_book;  // nothing here is chosen out of a catalogue

// A word of the enquiry or the heading; `way` gives a pointer to it.
template <class Way>
Field words(std::string id, const QString& label, Way way) {
  Field field;
  field.id = "enquiry/" + id;
  field.label = label;
  field.step = Fields::tr("Change %1 of the job").arg(label.toLower());
  field.get = [way](const plan::Job& job) -> Value { return *way(job); };
  field.set = [way](const plan::Job& job, const Value& value) {
    plan::Job after = job;
    take(*way(after), value);
    return after;
  };
  return field;
}

}  // namespace

std::vector<Field> enquiry_fields() {
  Field wants = words("wants", VisitWindow::tr("What is wanted"), [](auto& job) { return &job.enquiry.wants; });
  wants.editor = Editor::long_text;
  std::vector<Field> all = headed(
      VisitWindow::tr("The enquiry"),
      {words("number", VisitWindow::tr("Number of the job"), [](auto& job) { return &job.heading.number; }),
       words("customer", VisitWindow::tr("Customer"), [](auto& job) { return &job.heading.customer; }),
       words("place", VisitWindow::tr("Place"), [](auto& job) { return &job.heading.place; }),
       words("when", VisitWindow::tr("Asked on, as 2026-11-28"), [](auto& job) { return &job.enquiry.when; }),
       std::move(wants),
       words("heard", VisitWindow::tr("Heard of us by"), [](auto& job) { return &job.enquiry.heard; }),
       words("budget", VisitWindow::tr("Budget, as it was said"), [](auto& job) { return &job.enquiry.budget; })});
  add(all, headed(VisitWindow::tr("The next step"),
                  {words("next_step", VisitWindow::tr("What"), [](auto& job) { return &job.enquiry.next_step; }),
                   words("next_when", VisitWindow::tr("When, as 2026-11-28"),
                         [](auto& job) { return &job.enquiry.next_when; })}));
  return all;
}

VisitWindow::VisitWindow(Desk& desk, VisitPage::KeepBytes keep, const QString& today, QWidget* parent)
    : QDialog(parent), stack_(new QStackedWidget(this)) {
  setObjectName(QStringLiteral("visit-window"));
  setWindowTitle(tr("Enquiry and site visit"));
  setAttribute(Qt::WA_DeleteOnClose);
  auto* room = new QWidget(this);
  auto* column = new QVBoxLayout(room);
  column->setContentsMargins(px(16), px(12), px(16), px(12));
  form_ = new FieldForm(desk, no_book, room);
  form_->setMaximumWidth(px(560));
  form_->show_fields(enquiry_fields());
  column->addWidget(form_);
  column->addStretch(1);
  auto* area = new QScrollArea(this);
  area->setWidget(room);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setAccessibleName(tr("The enquiry"));
  visit_ = new VisitPage(desk, std::move(keep), today, this);
  stack_->addWidget(area);
  stack_->addWidget(visit_);
  auto* tabs = new QHBoxLayout;
  tabs->setContentsMargins(px(16), px(10), px(16), 0);
  const struct {
    const char* name;
    QString words;
  } pages[] = {{"visit-tab-enquiry", tr("Enquiry")}, {"visit-tab-visit", tr("Site visit")}};
  for (int page = 0; page < 2; ++page) {
    auto* tab = new FlatButton(FlatButton::Form::tab, pages[page].words, this);
    tab->setObjectName(QString::fromLatin1(pages[page].name));
    tab->setCheckable(true);
    tab->setAutoExclusive(true);
    connect(tab, &QAbstractButton::clicked, this, [this, page] { show_page(page); });
    tabs->addWidget(tab);
    tabs_.push_back(tab);
  }
  tabs->addStretch(1);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->addLayout(tabs);
  rows->addWidget(stack_, 1);
  connect(&desk, &Desk::job_changed, this, [this] { form_->show_fields(enquiry_fields()); });
  show_page(0);
  resize(px(960), px(640));
}

void VisitWindow::show_page(int page) {
  stack_->setCurrentIndex(page);
  tabs_[static_cast<std::size_t>(page)]->setChecked(true);
}

VisitWindow* show_visit_window(Desk& desk, VisitPage::KeepBytes keep, QWidget* parent) {
  auto* window = parent->findChild<VisitWindow*>();
  if (window == nullptr)
    window = new VisitWindow(desk, std::move(keep), QDate::currentDate().toString(Qt::ISODate), parent);
  window->show();
  window->raise();
  window->activateWindow();
  return window;
}

}  // namespace ui
