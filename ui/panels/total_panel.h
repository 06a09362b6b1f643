// The total: the last word of the strip.
#pragma once

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

#include "ui/desk/desk.h"
#include "ui/panels/total_model.h"

class QLabel;
class QProgressBar;

namespace ui {

class FlatButton;

// Final: a double rule under the amount. Not final: "so far", a single dashed rule in flag, and a sentence that leads
// to the first reason. While new numbers are computed the old ones stay, quiet; "computing" is said after 0.1 s, a bar
// runs after 1 s, Stop is offered after 5 s.
class TotalPanel : public QWidget {
  Q_OBJECT
 public:
  explicit TotalPanel(Desk& desk, QWidget* parent = nullptr);

 signals:
  void wanted_line(int number);  // a line of the estimate that waits for a price
  void wanted_problem();         // the list of what is to solve

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void show_total();
  void show_waiting();
  void go_to();
  void add_rows();
  Desk& desk_;
  Open open_;
  QElapsedTimer since_;
  QTimer tick_;
  QLabel* label_;
  QLabel* hours_;
  QLabel* amount_;
  QLabel* split_;
  QWidget* open_row_;
  QLabel* open_words_;
  FlatButton* go_to_;
  QProgressBar* bar_;
  FlatButton* stop_;
};

}  // namespace ui
