#include "ui/desk/work.h"

#include <QMetaObject>

namespace ui {

Work::~Work() {
  stop_ = true;
  if (thread_.joinable()) thread_.join();
}

void Work::start(std::function<void(const GoesOn&)> task, std::function<void()> done) {
  if (busy()) return;
  stop_ = false;
  percent_ = 0;
  done_ = std::move(done);
  thread_ = std::thread([this, task = std::move(task)] {
    task([this](double share) {
      const int percent = static_cast<int>(share * 100);
      if (percent_.exchange(percent) != percent)
        QMetaObject::invokeMethod(this, [this, percent] { emit progressed(percent); }, Qt::QueuedConnection);
      return !stop_;
    });
    QMetaObject::invokeMethod(this, &Work::end, Qt::QueuedConnection);
  });
  emit busy_changed(true);
}

void Work::end() {
  if (!thread_.joinable()) return;
  thread_.join();
  emit busy_changed(false);
  if (const auto done = std::exchange(done_, {})) done();
}

}  // namespace ui
