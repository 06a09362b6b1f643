// The plan with what changed marked: + added, - gone, ≠ changed, each with its own hatch, so that it reads without
// colour too. Told to screen readers as a list.
#pragma once

#include <QWidget>

#include "sheets/changed_plan.h"

namespace ui {

class ChangedView : public QWidget {
  Q_OBJECT
 public:
  explicit ChangedView(sheets::ChangedPlan plan, QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paint_shape(QPainter& painter, const sheets::ChangedShape& shape, const QTransform& to_px) const;
  void paint_legend(QPainter& painter) const;
  sheets::ChangedPlan plan_;
};

QString sign_of(plan::Differs how);  // "+", "−", "≠"

}  // namespace ui
