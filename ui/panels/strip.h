// The order of work: nine cells along one long section, each with what its stage costs and takes. A plumb line stands
// at the moment shown: right of the chosen stage, or at the end for the finished job.
#pragma once

#include <QWidget>
#include <array>

#include "ui/desk/desk.h"
#include "ui/look/theme.h"
#include "ui/panels/strip_model.h"

namespace ui {

class Strip : public QWidget {
  Q_OBJECT
 public:
  explicit Strip(Desk& desk, QWidget* parent = nullptr);

  const std::array<StripCell, stage_count>& cells() const { return cells_; }
  QRectF cell(int index) const;  // 0 to 8, in px of the widget
  double plumb_line() const;     // its x
  void choose(int index);        // 9: the finished job
  std::optional<takeoff::Stage> shown() const { return desk_.stage(); }

  // What a narrow strip gives up, in this order; the name never.
  enum class Keeps { all, two_rows, cost, name };
  Keeps keeps() const { return keeps_; }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool event(QEvent* event) override;

 private:
  void refresh();
  void measure();
  bool later(int index) const;
  int chosen() const;  // 9: none, the finished job
  QRectF section_room() const;
  void paint_name(QPainter& painter, int index) const;
  void paint_signs(QPainter& painter, int index) const;
  void measure_names(double room);
  void paint_figures(QPainter& painter, int index) const;
  void paint_plumb_line(QPainter& painter) const;

  Desk& desk_;
  std::array<StripCell, stage_count> cells_;
  StripKinds kinds_;
  Keeps keeps_ = Keeps::all;
  Type figures_ = Type::note;
  Type names_ = Type::text;
  bool signs_below_ = false;  // counts have no room beside the names
  double pressed_at_ = -1;
  bool dragged_ = false;
};

void install_strip_access();  // once: tells Qt how the strip is read out

}  // namespace ui
