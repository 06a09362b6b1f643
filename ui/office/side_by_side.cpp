#include "ui/office/side_by_side.h"

#include "plan/instead.h"
#include "results/kept_of.h"
#include "ui/book/book_words.h"

namespace ui {

SideBySide::SideBySide(Desk& desk, store::JobBook& book, std::function<QWidget*()> window, Source catalogue)
    : desk_(desk), book_(book), window_(std::move(window)), catalogue_(std::move(catalogue)) {}

std::optional<SideBySide::Side> SideBySide::version(std::int64_t id) {
  auto kept = book_.version(id);
  if (!kept) {
    emit said(told(kept.error()));
    return std::nullopt;
  }
  const QString name = QString::fromStdString(kept->row.name);
  const QString numbered = tr("Version %1").arg(kept->row.number);
  return Side{std::make_shared<const plan::Job>(std::move(kept->job)), std::move(kept->kept),
              name.isEmpty() ? numbered : tr("%1, %2").arg(numbered, name), id};
}

SideBySide::Side SideBySide::now() const {
  Side side{desk_.job_ptr(), std::nullopt, tr("Now")};
  if (const ResultsPtr results = desk_.results(); results && results->job == desk_.job_ptr())
    side.kept = results::kept_of(*results, GROUNDCOURSE_VERSION);
  return side;
}

void SideBySide::versions(std::int64_t before, std::int64_t after) {
  auto first = version(before);
  if (!first) return;
  if (auto second = version(after)) show(std::move(*first), std::move(*second));
}

void SideBySide::with_now(std::int64_t job) {
  const auto rows = book_.versions(job);
  if (!rows) return emit said(told(rows.error()));
  if (rows->empty())
    return emit said(tr("No version of this job is saved yet: save one, and later changes show against it"));
  if (auto newest = version(rows->front().id)) show(std::move(*newest), now());
}

void SideBySide::today(std::int64_t id) {
  const auto list = catalogue_ ? catalogue_() : nullptr;
  if (!list) return emit said(tr("The catalogue of the book can't be read, so there are no prices of today"));
  auto kept = version(id);
  if (!kept) return;
  Side then{std::make_shared<const plan::Job>(plan::at_prices_of(*kept->job, *list)), std::nullopt,
            tr("%1, at today's prices").arg(kept->name)};
  show(std::move(*kept), std::move(then));
}

void SideBySide::otherwise(std::int64_t id) {
  auto base = id == 0 ? std::optional(now()) : version(id);
  if (!base) return;
  const auto list = catalogue_ ? catalogue_() : nullptr;
  if (elements_of(*base->job, {"paved-area"}).empty())
    return emit said(tr("The job has no paved area that could be built otherwise: draw one first"));
  const auto wanted = ask_otherwise(*base->job, list.get(), desk_.selected(), window_());
  if (!wanted) return;
  Side built{std::make_shared<const plan::Job>(built_otherwise(*base->job, list.get(), *wanted)), std::nullopt,
             in_words(*base->job, list.get(), *wanted)};
  show(std::move(*base), std::move(built));
}

void SideBySide::show(Side before, Side after) {
  if (before.kept && after.kept) return open(before, after);
  if (work_.busy()) return emit said(tr("A comparison is still being worked out: ask again in a moment"));
  emit said(tr("Being worked out: %1").arg(after.name));
  const auto both = std::make_shared<std::pair<Side, Side>>(std::move(before), std::move(after));
  work_.start(
      [both](const Work::GoesOn&) {
        for (Side* side : {&both->first, &both->second})
          if (!side->kept) side->kept = results::kept_of(results::compute(side->job), GROUNDCOURSE_VERSION);
      },
      [this, both] {
        emit said({});
        open(both->first, both->second);
      });
}

void SideBySide::open(const Side& before, const Side& after) {
  const auto shown = [](const Side& side) { return Version{side.job, *side.kept, side.name, side.id}; };
  CompareWindow* window = show_comparison(shown(before), shown(after), window_());
  connect(window, &CompareWindow::change_order, this, &SideBySide::change_order);
}

}  // namespace ui
