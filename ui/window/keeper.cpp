#include "ui/window/keeper.h"

namespace ui {

Keeper::Keeper(Desk& desk, store::JobBook& book) : desk_(&desk), book_(&book) {
  // While another job is being opened the id is still the old one's: `adopt` and `add` say which row it is, before that
  // nothing is written.
  connect(&desk, &Desk::opened, this, [this] { id_ = 0; });
  connect(&desk, &Desk::job_changed, this, [this] {
    if (id_ != 0 && desk_->job_ptr() != written_) {
      written_ = desk_->job_ptr();
      book_->write(id_, written_);
    }
  });
  // A fault of the writer is told on its own thread.
  book.on_written([this](std::int64_t, std::optional<problem::Problem> fault) {
    if (!fault) return;
    QMetaObject::invokeMethod(
        this, [this, text = fault->text] { desk_->say(QString::fromStdString(text)); }, Qt::QueuedConnection);
  });
}

Keeper::~Keeper() { book_->on_written({}); }

void Keeper::adopt(std::int64_t id) {
  id_ = id;
  written_ = desk_->job_ptr();
}

problem::Result<void> Keeper::add() {
  auto made = book_->add(desk_->job());
  if (!made) return std::unexpected(made.error());
  adopt(*made);
  return {};
}

}  // namespace ui
