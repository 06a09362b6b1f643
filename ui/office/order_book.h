// Where the job book has the change orders of a job: beside its settings, as one text a job; and the window of one.
#pragma once

#include "estimate/kept_orders.h"
#include "store/job_book.h"
#include "ui/office/change_order_window.h"

namespace ui {

// None yet: an empty list. A text that is none is refused by name, and nothing is written over it.
problem::Result<std::vector<estimate::KeptOrder>> read_orders(store::JobBook& book, std::int64_t job);
problem::Result<void> keep_orders(store::JobBook& book, std::int64_t job,
                                  const std::vector<estimate::KeptOrder>& orders);

// What the order of two versions (their ids) is made of. The quote is that of the version that the job's first order
// began at: its prices were agreed. Refused: versions of two jobs.
problem::Result<OrderSource> order_source(store::JobBook& book, std::int64_t before, std::int64_t after);

// Opens the order of the two versions. One window at a time: another one is closed, all in it is kept.
problem::Result<ChangeOrderWindow*> show_change_order(store::JobBook& book, std::int64_t before, std::int64_t after,
                                                      QWidget* parent);

}  // namespace ui
