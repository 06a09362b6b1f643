// "Before it is covered up": the hold points of a stage to tick, and the small form that asks who looked and when.
#pragma once

#include <QWidget>
#include <vector>

#include "ui/panels/stage_model.h"

class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace ui {

class TickBox;

// Who and when of one hold point.
class LookForm : public QWidget {
  Q_OBJECT
 public:
  explicit LookForm(QWidget* parent = nullptr);
  void ask(const HoldRow& row);
  const std::string& look_at() const { return look_at_; }

 signals:
  void answered(QString who, QString when);
  void left();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void answer();
  std::string look_at_;
  QLineEdit* who_;
  QLineEdit* when_;
  QLabel* wrong_;
};

// Ticking asks before anything is kept; a tick taken away is one step of history, as a tick is.
class HoldList : public QWidget {
  Q_OBJECT
 public:
  explicit HoldList(QWidget* parent = nullptr);
  void show(const std::vector<HoldRow>& rows);  // the form that is open stays, with what is typed in it

 signals:
  void looked(std::string look_at, QString who, QString when);
  void taken_back(std::string look_at);

 private:
  QWidget* made_row(const HoldRow& row);
  void ticked(const HoldRow& row, TickBox* box);
  QVBoxLayout* rows_;
  LookForm* form_;
  std::vector<HoldRow> shown_;
};

}  // namespace ui
