// What an empty job shows over its paper: how to begin.
#pragma once

#include <QWidget>

namespace ui {

class StartPage : public QWidget {
  Q_OBJECT
 public:
  explicit StartPage(QWidget* parent = nullptr);

 signals:
  void draw_area();
  void bring_in_site_plan();
  void open_demo_job();
};

}  // namespace ui
