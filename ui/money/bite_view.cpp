#include "ui/money/bite_view.h"

#include <QGridLayout>
#include <QLabel>
#include <QProgressBar>
#include <QVBoxLayout>
#include <array>

#include "ui/look/theme.h"
#include "ui/money/money_bars.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

QString more_or_less(units::Money money, const plan::Heading& heading) {
  QString shown = shown_money(money, heading);
  if (money > units::Money()) shown.prepend(QLatin1Char('+'));
  // A line never ends between the sign and its number.
  if (money != units::Money()) shown.insert(1, QChar(0x2060));
  return shown;
}

QString way_in_words(const std::string& access) {
  if (access == "machine") return BiteView::tr("Machines get in");
  if (access == "tight") return BiteView::tr("Small machines only");
  return BiteView::tr("By hand");
}

QLabel* label(const QString& text, Type type, bool bold, QWidget* parent) {
  auto* made = new QLabel(text, parent);
  made->setFont(font(type, bold));
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  return made;
}

}  // namespace

std::vector<BiteRow> bite_rows(const results::CouldBite& bites, const plan::Heading& heading) {
  std::vector<BiteRow> rows;
  for (const results::Bite& bite : bites.bars)
    rows.push_back({said(bite.name), said(bite.at_low) + QStringLiteral(": ") + more_or_less(bite.low, heading),
                    said(bite.at_high) + QStringLiteral(": ") + more_or_less(bite.high, heading),
                    static_cast<double>(bite.low.coins()), static_cast<double>(bite.high.coins())});
  return rows;
}

BiteView::BiteView(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      go_(new FlatButton(FlatButton::Form::action, tr("Work it out"), this)),
      bar_(new QProgressBar(this)),
      told_(label({}, Type::note, false, this)) {
  setObjectName(QStringLiteral("bite_view"));
  setAccessibleName(tr("What could bite"));
  go_->setObjectName(QStringLiteral("bite_go"));
  told_->setObjectName(QStringLiteral("bite_told"));
  bar_->setRange(0, 0);
  bar_->setTextVisible(false);
  bar_->setFixedHeight(px(6));
  bar_->setAccessibleName(tr("Being worked out"));
  bar_->hide();
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(16), px(12), px(16), px(12));
  rows->setSpacing(px(10));
  rows->addWidget(label(tr("What the price hangs on before the ground is open: each assumption at its low and at its "
                           "high, the rest as it is."),
                        Type::text, false, this));
  auto* line = new QHBoxLayout;
  line->addWidget(go_);
  line->addWidget(bar_, 1);
  line->addStretch(1);
  rows->addLayout(line);
  rows->addWidget(told_);
  rows->addStretch(1);
  connect(go_, &QAbstractButton::clicked, this, &BiteView::work_out);
  connect(&desk_, &Desk::job_changed, this, [this] {
    if (of_ && of_ != desk_.job_ptr()) told_->setText(tr("The job has changed since: work it out again"));
  });
}

void BiteView::work_out() {
  const ResultsPtr base = desk_.results();
  if (!base || work_.busy()) return;
  of_ = base->job;
  found_ = std::make_shared<std::optional<results::CouldBite>>();
  ways_ = std::make_shared<std::vector<results::Access>>();
  go_->setEnabled(false);
  bar_->show();
  told_->setText(tr("Being worked out"));
  work_.start(
      [base, found = found_, ways = ways_](const Work::GoesOn&) {
        *found = results::could_bite(*base);
        *ways = results::by_access(*base);
      },
      [this] { show_found(); });
}

void BiteView::show_found() {
  go_->setEnabled(true);
  bar_->hide();
  delete table_;
  table_ = nullptr;
  if (!found_ || !*found_) return;
  const results::CouldBite& bites = **found_;
  const plan::Heading& heading = of_->heading;
  told_->setText(
      tr("Between %1 and %2, if each turned out for the best or for the worst; as it is, %3")
          .arg(shown_money(bites.least, heading), shown_money(bites.most, heading), shown_money(bites.total, heading)));
  table_ = new QWidget(this);
  auto* column = new QVBoxLayout(table_);
  column->setContentsMargins(0, 0, 0, 0);
  auto* widths = new MoneyBars(tr("How much each could change the total"), table_);
  widths->setObjectName(QStringLiteral("bite_bars"));
  std::vector<Bar> bars;
  for (const results::Bite& bite : bites.bars)
    bars.push_back({said(bite.name), shown_money(bite.width(), heading), static_cast<double>(bite.width().coins())});
  widths->show_bars(std::move(bars));
  column->addWidget(widths);
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(px(16));
  int at = 0;
  for (const BiteRow& row : bite_rows(bites, heading)) {
    grid->addWidget(label(row.name, Type::text, false, table_), at, 0);
    grid->addWidget(label(row.low, Type::note, false, table_), at, 1);
    grid->addWidget(label(row.high, Type::note, false, table_), at++, 2);
  }
  column->addLayout(grid);
  column->addWidget(label(tr("Ways onto the site"), Type::note, true, table_));
  auto* ways = new QGridLayout;
  ways->setHorizontalSpacing(px(16));
  at = 0;
  for (const results::Access& way : *ways_) {
    const QString name = way_in_words(way.access) + (way.chosen ? tr(" (chosen)") : QString());
    ways->addWidget(label(name, Type::text, way.chosen, table_), at, 0);
    ways->addWidget(label(shown_hours(way.hours), Type::text, false, table_), at, 1);
    ways->addWidget(label(shown_money(way.total, heading), Type::text, false, table_), at++, 2);
  }
  column->addLayout(ways);
  auto* rows = qobject_cast<QVBoxLayout*>(layout());
  rows->insertWidget(rows->count() - 1, table_);
}

}  // namespace ui
