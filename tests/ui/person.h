// A person at the window, for tests: clicks, types and presses keys as one would, and counts what was done.
#pragma once

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QElapsedTimer>
#include <QTest>
#include <limits>
#include <memory>

#include "files/files.h"
#include "ui/plan/plan_view.h"
#include "ui/window/main_window.h"

namespace person {

inline plan::Job job_of(const std::string& name) {
  const std::string path = std::string(HOUSE_ROOT) + "/demo-jobs/" + name + ".json";
  return files::read_job(files::read_file(path).value(), path).value();
}

// An empty job with the catalogue of the demo job.
inline plan::Job empty_job(units::System units = units::System::us) {
  plan::Job job = job_of("pool-terrace-a");
  job.elements.clear();
  job.looked_at.clear();
  job.heading.name = "empty";
  job.heading.units = units;
  return job;
}

// Waits until the results of the job on the desk are there; false after a minute.
inline bool wait_for_results(const ui::Desk& desk) {
  return QTest::qWaitFor([&desk] { return !desk.computing() && desk.results() != nullptr; }, 60000);
}

class Person {
 public:
  explicit Person(plan::Job job) : desk(std::make_shared<const plan::Job>(std::move(job))) {
    window = std::make_unique<ui::MainWindow>(desk, ui::Shelf{});
    window->resize(1440, 900);
    window->show();
    (void)QTest::qWaitForWindowExposed(window.get());
    QApplication::setActiveWindow(window.get());
    window->plan().setFocus();
  }

  // The pointer there. A person sees where things lie before pointing at them: what the window still has to lay out is
  // laid out first.
  QPoint point(double x_m, double y_m) {
    for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
    const QPoint at = window->plan().sight().to_px({x_m, y_m}).toPoint();
    QTest::mouseMove(&window->plan(), at);
    if (QGuiApplication::platformName() == QLatin1String("xcb")) QTest::qWait(30);  // the display tells it too
    return at;
  }

  // --- actions, each counted
  void key(Qt::Key key, Qt::KeyboardModifiers held = Qt::NoModifier) {
    ++actions;
    QTest::keyClick(focus(), key, held);
  }
  void type(const QString& text) {
    ++actions;
    for (const QChar letter : text) QTest::keyClick(focus(), letter.toLatin1());
  }
  void click(double x_m, double y_m, Qt::KeyboardModifiers held = Qt::NoModifier) {
    ++actions;
    const QPoint at = point(x_m, y_m);
    QTest::mouseClick(&window->plan(), Qt::LeftButton, held, at);
  }
  void drag(double x_m, double y_m, double to_x_m, double to_y_m) {
    ++actions;
    ui::PlanView& plan = window->plan();
    const QPoint from = point(x_m, y_m);
    const QPoint to = plan.sight().to_px({to_x_m, to_y_m}).toPoint();
    QTest::mousePress(&plan, Qt::LeftButton, {}, from);
    QTest::mouseMove(&plan, (from + to) / 2);
    QTest::mouseMove(&plan, to);
    QTest::mouseRelease(&plan, Qt::LeftButton, {}, to);
  }
  void press(const char* button_name) {
    ++actions;
    auto* button = window->findChild<QAbstractButton*>(QString::fromLatin1(button_name));
    ASSERT_NE(button, nullptr) << button_name;
    ASSERT_TRUE(button->isEnabled()) << button_name;
    QTest::mouseClick(button, Qt::LeftButton);
  }
  void choose(const char* action_id) {
    ++actions;
    window->actions_by_id()[action_id].trigger();
  }

  // --- what a person sees
  bool results() const { return wait_for_results(desk); }
  // Not a number where there is none, so that nothing equals it.
  double measure(const std::string& element, const char* name) const {
    for (const auto& measures : desk.results()->takeoff.measures) {
      if (measures.element == element) return measures.get(name).value_or(std::numeric_limits<double>::quiet_NaN());
    }
    return std::numeric_limits<double>::quiet_NaN();
  }

  ui::Desk desk;
  std::unique_ptr<ui::MainWindow> window;
  int actions = 0;

 private:
  QWidget* focus() const {
    QWidget* now = QApplication::focusWidget();
    return now != nullptr ? now : &window->plan();
  }
};

}  // namespace person
