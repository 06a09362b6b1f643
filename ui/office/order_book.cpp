#include "ui/office/order_book.h"

#include <algorithm>

#include "files/change_order_json.h"

namespace ui {

namespace {

std::string key_of(std::int64_t job) { return "change-orders/" + std::to_string(job); }

}  // namespace

problem::Result<std::vector<estimate::KeptOrder>> read_orders(store::JobBook& book, std::int64_t job) {
  const auto text = book.setting(key_of(job));
  if (!text) return std::unexpected(text.error());
  if (!*text) return std::vector<estimate::KeptOrder>{};
  return files::read_change_orders(**text, "the change orders of this job");
}

problem::Result<void> keep_orders(store::JobBook& book, std::int64_t job,
                                  const std::vector<estimate::KeptOrder>& orders) {
  return book.set(key_of(job), files::write_change_orders(orders));
}

problem::Result<OrderSource> order_source(store::JobBook& book, std::int64_t before, std::int64_t after) {
  const auto first = book.version(before);
  if (!first) return std::unexpected(first.error());
  const auto second = book.version(after);
  if (!second) return std::unexpected(second.error());
  const std::int64_t job = first->row.job;
  if (job != second->row.job)
    return problem::fault("change-jobs", "the two versions are of two jobs", "choose two versions of one job", {});
  auto orders = read_orders(book, job);
  if (!orders) return std::unexpected(orders.error());
  const auto named = [](const store::VersionRow& row) {
    const QString name = QString::fromStdString(row.name);
    const QString numbered = ChangeOrderWindow::tr("version %1").arg(row.number);
    return name.isEmpty() ? numbered : ChangeOrderWindow::tr("%1, %2").arg(numbered, name);
  };
  OrderSource source{first->job,
                     estimate::compare(first->kept, second->kept),
                     static_cast<int>(first->row.number),
                     static_cast<int>(second->row.number),
                     named(first->row),
                     named(second->row),
                     first->row.total,
                     std::move(*orders)};
  if (source.orders.empty() || source.orders.front().before == source.before) return source;
  const auto rows = book.versions(job);
  if (!rows) return std::unexpected(rows.error());
  const auto agreed = std::ranges::find(*rows, source.orders.front().before, &store::VersionRow::number);
  if (agreed == rows->end()) return source;
  auto quote = book.version(agreed->id);
  if (!quote) return std::unexpected(quote.error());
  source.quote = std::move(quote->job);
  return source;
}

problem::Result<ChangeOrderWindow*> show_change_order(store::JobBook& book, std::int64_t before, std::int64_t after,
                                                      QWidget* parent) {
  if (auto* open = parent->findChild<ChangeOrderWindow*>()) {
    open->close();
    delete open;
  }
  auto source = order_source(book, before, after);
  if (!source) return std::unexpected(source.error());
  const auto job = book.version(before);
  if (!job) return std::unexpected(job.error());
  auto* window = new ChangeOrderWindow(
      std::move(*source), [&book, id = job->row.job](const auto& orders) { return keep_orders(book, id, orders); },
      parent);
  window->show();
  window->raise();
  window->activateWindow();
  return window;
}

}  // namespace ui
