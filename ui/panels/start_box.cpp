#include "ui/panels/start_box.h"

#include <QGridLayout>
#include <QLabel>
#include <QProgressBar>
#include <QVBoxLayout>

#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/length_field.h"
#include "ui/panels/panel_words.h"
#include "ui/panels/six_measures.h"
#include "ui/words/words.h"
#include "units/number.h"

namespace ui {

using takeoff::paving::For;

namespace {

QString number(std::int64_t value) {
  return QString::fromStdString(units::show_grouped(static_cast<double>(value), 0));
}

QLabel* words(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setFont(ui::font(Type::text));
  label->setWordWrap(true);
  return label;
}

QString in_a_sentence(const problem::Problem& problem) {
  return said(problem.text) + QStringLiteral(": ") + said(problem.mend);
}

QString name_of(For what) {
  if (what == For::cuts) return Fields::tr("Fewest cuts");
  return what == For::slivers ? Fields::tr("No slivers") : Fields::tr("Survives the site");
}

QString signed_area(double square_metres, units::System system) {
  return (square_metres < 0 ? QStringLiteral("−") : QStringLiteral("+")) + shown_area(std::abs(square_metres), system);
}

}  // namespace

std::vector<Change> changes(const LaidNumbers& was, const LaidNumbers& is) {
  std::vector<Change> rows{{Fields::tr("Cut units"), number(was.cut), number(is.cut)},
                           {Fields::tr("Slivers"), number(was.slivers), number(is.slivers)},
                           {Fields::tr("Bought for cuts"), number(was.bought), number(is.bought)}};
  return rows;
}

StartBox::StartBox(Desk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName("start-box");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(px(6));
  QLabel* heading = words(tr("Where to start laying"), this);
  heading->setFont(ui::font(Type::text, true));
  column->addWidget(heading);
  for (const auto& [name, what] :
       {std::pair{"fewest-cuts", For::cuts}, {"no-slivers", For::slivers}, {"survives", For::site}}) {
    FlatButton* made = button(name, name_of(what));
    connect(made, &QAbstractButton::clicked, this, [this, what = what] { find(what); });
    column->addWidget(made, 0, Qt::AlignLeft);
  }
  QLabel* edges = words(tr("Move this edge, free edges only"), this);
  edges->setFont(ui::font(Type::text, true));
  column->addWidget(edges);
  rows_ = new QWidget(this);
  table_ = new QGridLayout(rows_);
  table_->setContentsMargins(0, 0, 0, 0);
  table_->setColumnStretch(0, 1);
  column->addWidget(rows_);
  column->addWidget(make_progress());
  told_ = words({}, this);
  told_->setObjectName("start-box/told");
  told_->setTextFormat(Qt::RichText);
  column->addWidget(told_);
  do_it_ = button("move-edge", tr("Move it there"));
  do_it_->hide();
  connect(do_it_, &QAbstractButton::clicked, this, &StartBox::take_edge);
  column->addWidget(do_it_, 0, Qt::AlignLeft);
  connect(&desk_, &Desk::results_changed, this, [this] { show_edges(); });
}

FlatButton* StartBox::button(const char* name, const QString& text) {
  auto* made = new FlatButton(FlatButton::Form::action, text, this);
  made->setObjectName(QString("start-box/") + name);
  made->setAccessibleName(text);
  buttons_.push_back(made);
  return made;
}

QWidget* StartBox::make_progress() {
  progress_ = new QWidget(this);
  auto* row = new QHBoxLayout(progress_);
  row->setContentsMargins(0, 0, 0, 0);
  bar_ = new QProgressBar(progress_);
  bar_->setObjectName("start-box/progress");
  bar_->setRange(0, 100);
  bar_->setTextVisible(true);
  auto* stop = new FlatButton(FlatButton::Form::action, tr("Stop"), progress_);
  stop->setObjectName("start-box/stop");
  connect(stop, &QAbstractButton::clicked, this, [this] { work_.stop(); });
  row->addWidget(bar_, 1);
  row->addWidget(stop);
  progress_->hide();
  connect(&work_, &Work::progressed, bar_, &QProgressBar::setValue);
  connect(&work_, &Work::busy_changed, this, [this](bool busy) {
    bar_->setValue(0);
    progress_->setVisible(busy);
    for (FlatButton* one : buttons_) one->setEnabled(!busy);
  });
  return progress_;
}

QString StartBox::told() const { return told_->text(); }

void StartBox::show_element(const plan::ElementId& id) {
  if (id != id_) {
    work_.stop();
    tell({}, {});
  }
  id_ = id;
  show_edges();
}

void StartBox::show_edges() {
  const ResultsPtr results = desk_.results();
  if (!isVisibleTo(window()) || !results || results->job != desk_.job_ptr()) return;
  edges_ = free_edges(results->site, desk_.job(), id_);
  while (QLayoutItem* item = table_->takeAt(0)) {
    if (QWidget* widget = item->widget()) {
      std::erase(buttons_, widget);
      widget->hide();
      widget->deleteLater();
    }
    delete item;
  }
  if (edges_.empty()) table_->addWidget(words(tr("All its edges meet something, or are curved."), rows_), 0, 0);
  for (std::size_t i = 0; i < edges_.size(); ++i) {
    const int row = static_cast<int>(i);
    const QString edge = tr("Edge %1, %2").arg(edges_[i].number + 1).arg(shown_length(edges_[i].length, desk_.units()));
    table_->addWidget(words(edge, rows_), row, 0);
    FlatButton* made = button("try-edge", tr("Where it costs least"));
    made->setAccessibleName(edge + ", " + made->text());
    made->setEnabled(!busy());
    connect(made, &QAbstractButton::clicked, this, [this, i] { try_edge(i); });
    table_->addWidget(made, row, 1);
  }
}

void StartBox::find(For what) {
  if (work_.busy()) return;
  tell(tr("Trying starts …"), {});
  const auto made = std::make_shared<std::optional<problem::Result<FoundStart>>>();
  const JobPtr job = desk_.job_ptr();
  work_.start([made, job, id = id_, what](const GoesOn& goes_on) { *made = find_start(*job, id, what, 2000, goes_on); },
              [this, made, job, what] { found_start(what, *job, **made); });
}

void StartBox::found_start(For what, const plan::Job& of, const problem::Result<FoundStart>& found) {
  if (!found) return tell(in_a_sentence(found.error()), {});
  if (&of != desk_.job_ptr().get()) return tell(tr("The job was changed meanwhile. Ask again."), {});
  std::vector<Change> rows = changes(found->was, found->is);
  if (what == For::site) {
    const auto shown = [this](double metres) {
      return shown_length(units::Length::nearest(units::Metres(metres)), desk_.units());
    };
    rows.push_back({tr("Least cut if edges are off"), shown(found->worst_was), shown(found->worst_is)});
  }
  if (!found->better) return tell(tr("%1: it starts in the best place found already.").arg(name_of(what)), rows);
  desk_.edit(found->after, tr("%1 in %2").arg(name_of(what), QString::fromStdString(id_)));
  tell(tr("%1: the start point was moved.").arg(name_of(what)), rows);
}

void StartBox::try_edge(std::size_t row) {
  if (work_.busy() || row >= edges_.size()) return;
  tell(tr("Trying places for edge %1 …").arg(edges_[row].number + 1), {});
  const auto made = std::make_shared<std::optional<problem::Result<EdgeCost>>>();
  const JobPtr job = desk_.job_ptr();
  const units::Length step =
      desk_.units() == units::System::us ? units::Length::inch_64ths(16) : units::Length::millimetres(5);
  work_.start([made, job, id = id_, edge = edges_[row],
               step](const GoesOn& goes_on) { *made = edge_cost(*job, id, edge, {}, step, goes_on); },
              [this, made, job, row] { found_edge(*job, row, **made); });
}

void StartBox::found_edge(const plan::Job& of, std::size_t row, const problem::Result<EdgeCost>& found) {
  if (!found) return tell(in_a_sentence(found.error()), {});
  if (&of != desk_.job_ptr().get() || row >= edges_.size())
    return tell(tr("The job was changed meanwhile. Ask again."), {});
  std::vector<Change> rows = changes(found->was.laid, found->best.laid);
  const int edge = edges_[row].number + 1;
  if (found->best.out == units::Length()) return tell(tr("Edge %1 lies best where it is.").arg(edge), rows);
  const units::Length out = found->best.out;
  const bool outwards = out > units::Length();
  const QString way = shown_length(outwards ? out : -out, desk_.units());
  QString sentence = (outwards ? tr("Edge %1 out by %2") : tr("Edge %1 in by %2")).arg(edge).arg(way);
  sentence += ": " + signed_area(found->best.laid.net_area_m2 - found->was.laid.net_area_m2, desk_.units());
  if (found->money)
    sentence += ", " + (*found->money > units::Money() ? QStringLiteral("+") : QString()) +
                shown_money(*found->money, desk_.job().heading);
  tell(sentence, rows);
  best_ = *found;
  best_of_ = desk_.job_ptr();
  best_step_ = tr("Move edge %1 of %2").arg(edge).arg(QString::fromStdString(id_));
  do_it_->show();
}

void StartBox::take_edge() {
  if (!best_ || best_of_ != desk_.job_ptr()) return tell(tr("The job was changed meanwhile. Ask again."), {});
  const plan::Job after = best_->after;
  const QString step = best_step_;
  do_it_->hide();
  best_.reset();
  desk_.edit(after, step);
}

void StartBox::tell(const QString& sentence, const std::vector<Change>& rows) {
  do_it_->hide();
  best_.reset();
  QString text = sentence.toHtmlEscaped();
  for (const Change& row : rows)
    text += QString("<br>%1 <s>%2</s> → <b>%3</b>")
                .arg(row.what.toHtmlEscaped(), row.was.toHtmlEscaped(), row.is.toHtmlEscaped());
  told_->setText(text);
  told_->setVisible(!text.isEmpty());
}

}  // namespace ui
