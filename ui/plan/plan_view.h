// The plan: the job drawn to scale, and the tool in hand at work on it. It turns pointer and keys into sketch events,
// shows what the tool shows, and hands each finished edit to the desk. Panning and zooming are its own.
#pragma once

#include <QPixmap>
#include <QTimer>
#include <QWidget>
#include <memory>
#include <optional>

#include "sheets/plan_figure.h"
#include "sketch/tool.h"
#include "ui/desk/desk.h"
#include "ui/paint/figure_painter.h"

class QMenu;

namespace ui {

class PlanView : public QWidget {
  Q_OBJECT
 public:
  explicit PlanView(Desk& desk, QWidget* parent = nullptr);
  ~PlanView() override;

  sketch::Hand hand() const { return hand_; }
  const sketch::View& view() const { return view_; }
  const Sight& sight() const { return sight_; }
  const Desk& desk() const { return *desk_; }
  bool junctions_shown() const { return wants_.junctions; }

  QSize minimumSizeHint() const override { return {320, 240}; }
  QSize sizeHint() const override { return {952, 688}; }

  // Where an element lies in the widget, for those who can't see it.
  QRect rect_of(const plan::ElementId& id) const;

  // Draws what lies under everything else (a site plan), after the paper.
  using Under = std::function<void(QPainter&, const Sight&, const QRectF&)>;
  // Where it lies, metres, y up: for the whole job in view. Null where there is none.
  using UnderRoom = std::function<QRectF()>;
  void set_under(Under under, UnderRoom room);

 public slots:
  void take_hand(sketch::Hand hand);
  void take(const sketch::Event& event);  // from the prompt, or a test: to the tool in hand
  void whole_job();
  void show_place(const problem::Place& place);
  void zoom(double factor, QPointF about);
  void zoom_in() { zoom(1.25, rect().center()); }
  void zoom_out() { zoom(0.8, rect().center()); }
  void show_junctions(bool on);
  void show_falls(bool on);
  void refresh_under();
  void select_element(const plan::ElementId& id) { desk_->select({id}); }

 signals:
  void view_changed();
  void hand_changed(sketch::Hand hand);
  void refused(QString sentence);
  void key_typed(QKeyEvent* event);  // a key that means something to the prompt: digits, Tab
  void pointer_at(geometry::Point point);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void moveEvent(QMoveEvent* event) override;
  void changeEvent(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  struct Pan {
    QPointF from;
    QPointF origin;
  };
  void job_changed();
  void make_figure();
  void show_figure();
  void answer(const sketch::Answer& answer);
  void refresh_view();
  bool send_key(const QKeyEvent& event);
  bool wants_keys() const;  // a tool is at work: what is typed is for it
  void fill_menu(QMenu& menu, QPointF at);
  sketch::Scene scene() const;
  geometry::Point plan_point(QPointF px) const;
  void set_sight(const Sight& sight);
  void render_base();
  void paint_lit(QPainter& painter) const;

  Desk* desk_;
  sketch::Hand hand_ = sketch::Hand::pick;
  std::unique_ptr<sketch::Tool> tool_;
  sketch::View view_;
  JobPtr snaps_of_;  // the job value that the snaps were built over
  mutable std::unique_ptr<sketch::Snaps> snaps_;
  sheets::PlanWants wants_;
  std::shared_ptr<const sheets::Figure> figure_;
  std::unique_ptr<FigurePainter> painter_;
  Under under_;
  UnderRoom under_room_;
  Sight sight_;
  bool sight_chosen_ = false;  // by the person: no longer fitted by itself
  QPixmap base_;               // everything that does not follow the pointer, at `base_sight_`
  Sight base_sight_;
  bool base_stale_ = true;
  QTimer settle_;  // renders the base afresh when panning rests
  std::optional<Pan> pan_;
  bool space_ = false;
  bool pressed_ = false;
};

// The pieces that it paints over the figure, each in its own source.
struct Overlay {
  const plan::Job& job;
  ResultsPtr results;  // may be null
  const std::vector<plan::ElementId>& selected;
  const sketch::View& view;
  Sight sight;
  QRectF clip;
};
void paint_pending(QPainter& painter, const Overlay& overlay);    // drawn already, not computed yet
void paint_selection(QPainter& painter, const Overlay& overlay);  // outlines, handles, lengths of edges
void paint_tool(QPainter& painter, const Overlay& overlay);
void paint_scale_and_north(QPainter& painter, const Sight& sight, QRectF room, units::System units);
void paint_legend(QPainter& painter, QRectF room, bool junctions, bool stage);

QPainterPath path_of(const plan::DrawnLine& line, bool closed, const Sight& sight);
QPainterPath path_of(std::span<const plan::DrawnEdge> edges, const Sight& sight);

void install_plan_access();  // once: tells Qt how the plan is read out

}  // namespace ui
