// What is to solve: problems, what a named person decides, and what is to know, each leading to its place.
#pragma once

#include <QCheckBox>
#include <QListView>
#include <QWidget>

#include "ui/desk/desk.h"

namespace ui {

class SolveItems;
class SolveView;

class SolvePanel : public QWidget {
  Q_OBJECT
 public:
  explicit SolvePanel(Desk& desk, QWidget* parent = nullptr);
  int to_solve() const;  // problems and flags; notices are not counted
  QListView* list() const;
  void show_notices(bool shown);

 public slots:
  void show_problems();  // reads the desk's results again
  void next();           // goes to the one after the last that was gone to, and round again

 signals:
  void counted(int to_solve, bool grave);  // grave: some stop the total

 private:
  void go_to(int row);
  void show_counts();
  Desk& desk_;
  SolveItems* items_;
  SolveView* view_;
  QCheckBox* notices_;
};

}  // namespace ui
