#include "ui/money/options_view.h"

#include <QGridLayout>
#include <QLabel>
#include <QProgressBar>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/look/theme.h"
#include "ui/money/money_fields.h"
#include "ui/panels/field_form.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/flow_layout.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

const Source no_book;  // nothing here is chosen out of a catalogue

QLabel* label(const QString& text, Type type, bool bold, QWidget* parent) {
  auto* made = new QLabel(text, parent);
  made->setFont(font(type, bold));
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  return made;
}

QString by(units::Money money, const plan::Heading& heading) {
  return (money > units::Money() ? QStringLiteral("+") : QString()) + shown_money(money, heading);
}

}  // namespace

OptionsView::OptionsView(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      go_(new FlatButton(FlatButton::Form::action, tr("Price the options"), this)),
      bring_(new FlatButton(FlatButton::Form::action, tr("Make what is selected an option"), this)),
      leave_out_(new FlatButton(FlatButton::Form::action, tr("Option to leave it out"), this)),
      bar_(new QProgressBar(this)),
      told_(label({}, Type::note, false, this)),
      form_(new FieldForm(desk, no_book, this)) {
  setObjectName(QStringLiteral("options-view"));
  setAccessibleName(tr("Options"));
  go_->setObjectName(QStringLiteral("options-go"));
  bring_->setObjectName(QStringLiteral("options-bring"));
  leave_out_->setObjectName(QStringLiteral("options-leave-out"));
  told_->setObjectName(QStringLiteral("options-told"));
  bar_->setRange(0, 0);
  bar_->setTextVisible(false);
  bar_->setFixedHeight(px(6));
  bar_->setAccessibleName(tr("Being worked out"));
  bar_->hide();
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(12), px(16), px(12));
  rows->setSpacing(px(10));
  rows->addWidget(label(tr("What the customer may take beside the base, or in place of a part of it. Each is priced as "
                           "the difference that it makes, by itself."),
                        Type::text, false, this));
  auto* flow = new FlowLayout;
  flow->set_gaps(px(6), px(6));
  for (FlatButton* one : {bring_, leave_out_, go_}) flow->addWidget(one);
  rows->addLayout(flow);
  rows->addWidget(bar_);
  rows->addWidget(told_);
  told_->hide();
  rows->addWidget(form_);
  rows->addStretch(1);
  connect(go_, &QAbstractButton::clicked, this, &OptionsView::work_out);
  connect(bring_, &QAbstractButton::clicked, this, [this] { make_option(false); });
  connect(leave_out_, &QAbstractButton::clicked, this, [this] { make_option(true); });
  connect(&desk_, &Desk::job_changed, this, &OptionsView::follow);
  connect(&desk_, &Desk::results_changed, this, &OptionsView::follow);
  connect(&desk_, &Desk::selection_changed, this, &OptionsView::follow);
  follow();
}

void OptionsView::tell(const QString& sentence) {
  told_->setText(sentence);
  told_->setVisible(!sentence.isEmpty());
}

void OptionsView::follow() {
  form_->show_fields(option_fields(desk_.job()));
  const bool selected = !desk_.selected().empty();
  for (FlatButton* one : {bring_, leave_out_}) {
    one->setEnabled(selected);
    one->setToolTip(selected ? QString() : tr("Select elements on the plan first"));
  }
  go_->setEnabled(!work_.busy() && !desk_.job().offer.options.empty() && desk_.results() != nullptr);
  if (of_ && of_ != desk_.job_ptr()) tell(tr("The job has changed since: price them again"));
}

void OptionsView::make_option(bool leaves_out) {
  desk_.edit(with_option_of(desk_.job(), desk_.selected(), leaves_out), tr("Make an option"));
}

void OptionsView::work_out() {
  const ResultsPtr base = desk_.results();
  if (!base || work_.busy()) return;
  of_ = base->job;
  found_ = std::make_shared<std::vector<results::OptionPrice>>();
  bar_->show();
  tell(tr("Being worked out"));
  work_.start([base, found = found_](const Work::GoesOn&) { *found = results::option_prices(*base); },
              [this] { show_prices(); });
  go_->setEnabled(false);
}

void OptionsView::show_prices() {
  bar_->hide();
  delete table_;
  table_ = new QWidget(this);
  table_->setObjectName(QStringLiteral("options-prices"));
  shown_ = *found_;
  tell(tr("Before tax, with tax, and hours: beside the base"));
  auto* grid = new QGridLayout(table_);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(px(12));
  grid->setColumnStretch(0, 1);
  QStringList spoken;
  int at = 0;
  for (const results::OptionPrice& price : shown_) {
    const auto option = std::ranges::find(of_->offer.options, price.id, &plan::Option::id);
    const QString name = option == of_->offer.options.end() ? QString() : QString::fromStdString(option->name);
    const QString cells[] = {by(price.price, of_->heading), by(price.total, of_->heading),
                             (price.hours > 0 ? QStringLiteral("+") : QString()) + shown_hours(price.hours)};
    grid->addWidget(label(price.final ? name : tr("%1, not final").arg(name), Type::text, false, table_), at, 0);
    for (int column = 0; column < 3; ++column) {
      auto* cell = label(cells[column], Type::text, column == 1, table_);
      cell->setWordWrap(false);
      grid->addWidget(cell, at, column + 1, Qt::AlignRight | Qt::AlignTop);
    }
    spoken << name + QStringLiteral(" ") + cells[1];
    ++at;
    for (const problem::Problem& problem : price.problems)
      grid->addWidget(label(QString::fromStdString(problem::sentence(problem)), Type::note, false, table_), at++, 0, 1,
                      4);
  }
  table_->setAccessibleName(tr("Prices of the options"));
  table_->setAccessibleDescription(spoken.join(QStringLiteral("; ")));
  auto* rows = qobject_cast<QVBoxLayout*>(layout());
  rows->insertWidget(rows->indexOf(told_) + 1, table_);
  follow();
}

}  // namespace ui
