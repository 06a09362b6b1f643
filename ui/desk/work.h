// Something that takes a while, off the window's thread, with its progress and a way to stop it.
#pragma once

#include <QObject>
#include <atomic>
#include <functional>
#include <memory>
#include <thread>

namespace ui {

class Work : public QObject {
  Q_OBJECT
 public:
  explicit Work(QObject* parent = nullptr) : QObject(parent) {}
  ~Work() override;  // stops it and waits

  // `task` runs on a thread of its own and asks `goes_on(share done)` as often as it can; `done` runs on the window's
  // thread when it has ended, stopped or not. One at a time: nothing happens while one runs.
  using GoesOn = std::function<bool(double share)>;
  void start(std::function<void(const GoesOn&)> task, std::function<void()> done);
  bool busy() const { return thread_.joinable(); }
  void stop() { stop_ = true; }

 signals:
  void progressed(int percent);
  void busy_changed(bool busy);

 private:
  void end();
  std::thread thread_;
  std::atomic<bool> stop_ = false;
  std::atomic<int> percent_ = 0;
  std::function<void()> done_;
};

}  // namespace ui
