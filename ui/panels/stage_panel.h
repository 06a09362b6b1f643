// The stage that is shown: what it takes, what is looked at before it is covered up, and what to beware of.
#pragma once

#include <QWidget>

#include "ui/desk/desk.h"
#include "ui/panels/stage_model.h"

class QLabel;
class QVBoxLayout;

namespace ui {

class HoldList;

// Follows desk.stage(); empty while the finished job is shown.
class StagePanel : public QWidget {
  Q_OBJECT
 public:
  explicit StagePanel(Desk& desk, QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void add_head(QVBoxLayout* rows);
  void show_stage();
  void show_cautions();
  void looked(const std::string& look_at, const QString& who, const QString& when);
  Desk& desk_;
  StageSaid shown_;
  QWidget* badge_room_;
  QLabel* title_;
  QLabel* takes_;
  QLabel* covers_;
  QWidget* hold_head_;
  HoldList* holds_;
  QVBoxLayout* cautions_;
};

}  // namespace ui
