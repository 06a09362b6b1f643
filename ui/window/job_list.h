// The jobs of the book as a list to choose from.
#pragma once

#include <cstdint>
#include <optional>

#include "store/job_book.h"

class QWidget;

namespace ui {

// None where the person left it, or the book has no jobs.
std::optional<std::int64_t> choose_job(store::JobBook& book, QWidget* parent);

}  // namespace ui
