#include "ui/plan/plan_view.h"

#include <QEvent>
#include <QMoveEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "geometry/index.h"
#include "ui/look/theme.h"
#include "ui/words/words.h"

namespace ui {

namespace {

constexpr double least_scale = 0.02;  // px a metre: the plan's 10 km in 200 px
constexpr double greatest_scale = 20000;
constexpr int rest_ms = 40;  // panning rests

constexpr double margin_px = 40;

QRectF bounds_of(const plan::Job& job) {
  QRectF all;
  for (const auto& element : job.elements) {
    for (const plan::Grip& grip : plan::corners(*element)) {
      const problem::Xy at = geometry::xy(grip.at);
      const QRectF point(at.x, at.y, 1e-6, 1e-6);
      all = all.isNull() ? point : all.united(point);
    }
    for (const plan::DrawnEdge& edge : plan::drawn_edges(*element)) {
      const geometry::Box box = geometry::bounds(edge.curve);
      const problem::Xy low = geometry::xy(box.low);
      const problem::Xy high = geometry::xy(box.high);
      all = all.united(QRectF(QPointF(low.x, low.y), QPointF(high.x + 1e-6, high.y + 1e-6)));
    }
  }
  return all;
}

}  // namespace

PlanView::PlanView(Desk& desk, QWidget* parent) : QWidget(parent), desk_(&desk), tool_(make_tool(hand_)) {
  setObjectName("plan");
  setAccessibleName(tr("Plan"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAttribute(Qt::WA_AcceptTouchEvents);
  grabGesture(Qt::PinchGesture);
  install_plan_access();
  settle_.setSingleShot(true);
  settle_.setInterval(rest_ms);
  connect(&settle_, &QTimer::timeout, this, [this] {
    base_stale_ = true;
    update();
  });
  connect(desk_, &Desk::job_changed, this, &PlanView::job_changed);
  connect(desk_, &Desk::results_changed, this, &PlanView::make_figure);
  connect(desk_, &Desk::stage_changed, this, &PlanView::make_figure);
  connect(desk_, &Desk::selection_changed, this, [this] {
    show_figure();
    refresh_view();
  });
  connect(desk_, &Desk::lit_changed, this, qOverload<>(&QWidget::update));
  connect(desk_, &Desk::wanted_in_view, this, &PlanView::show_place);
  refresh_view();
}

PlanView::~PlanView() = default;

void PlanView::set_under(Under under, UnderRoom room) {
  under_ = std::move(under);
  under_room_ = std::move(room);
  refresh_under();
}

void PlanView::refresh_under() {
  base_stale_ = true;
  update();
}

void PlanView::job_changed() {
  // Another job is open when it shares nothing with the one before: it is shown whole.
  const bool another = desk_->results() == nullptr;
  if (another) sight_chosen_ = false;
  if (!sight_chosen_) whole_job();
  refresh_view();
}

void PlanView::make_figure() {
  wants_.stage = desk_->stage();
  const ResultsPtr results = desk_->results();
  figure_ = results ? std::make_shared<const sheets::Figure>(sheets::plan_figure(*results, wants_)) : nullptr;
  show_figure();
}

// What a person has to decide stands as a flag on the plan and speaks only where its element is selected, else words
// would cover the drawing; what stops the total always speaks. The list to solve has all of them.
void PlanView::show_figure() {
  painter_.reset();
  if (figure_) {
    auto shown = std::make_shared<sheets::Figure>(*figure_);
    for (sheets::Part& part : shown->parts) {
      auto* mark = std::get_if<sheets::Mark>(&part);
      if (mark == nullptr || mark->sign != sheets::Sign::care) continue;
      if (std::ranges::count(desk_->selected(), mark->of) == 0) mark->text.clear();
    }
    painter_ = std::make_unique<FigurePainter>(std::move(shown));
  }
  base_stale_ = true;
  update();
}

void PlanView::show_junctions(bool on) {
  wants_.junctions = on;
  make_figure();
}

void PlanView::show_falls(bool on) {
  wants_.falls = on;
  make_figure();
}

void PlanView::whole_job() {
  QRectF all = bounds_of(desk_->job());
  if (under_room_) all = all.united(under_room_());
  const double across = std::max(1.0, all.width());
  const double up = std::max(1.0, all.height());
  Sight sight;
  sight.scale = std::clamp(std::min((width() - 2 * margin_px) / across, (height() - 2 * margin_px) / up), least_scale,
                           all.isNull() ? 60.0 : greatest_scale);
  const QPointF middle = all.isNull() ? QPointF(0, 0) : all.center();
  sight.origin = QPointF(width() / 2.0 - middle.x() * sight.scale, height() / 2.0 + middle.y() * sight.scale);
  set_sight(sight);
  sight_chosen_ = false;
}

void PlanView::show_place(const problem::Place& place) {
  QPointF at;
  if (place.at) {
    at = sight_.to_px({place.at->x, place.at->y});
  } else if (desk_->job().find(place.element) != nullptr) {
    at = rect_of(place.element).center();
  } else {
    return;
  }
  const QRectF inner = QRectF(rect()).adjusted(margin_px, margin_px, -margin_px, -margin_px);
  if (!inner.contains(at)) {
    Sight sight = sight_;
    sight.origin += QPointF(rect().center()) - at;
    set_sight(sight);
    sight_chosen_ = true;
  }
  setFocus(Qt::OtherFocusReason);
}

void PlanView::zoom(double factor, QPointF about) {
  Sight sight = sight_;
  sight.scale = std::clamp(sight_.scale * factor, least_scale, greatest_scale);
  const double done = sight.scale / sight_.scale;
  sight.origin = about + done * (sight_.origin - about);
  set_sight(sight);
  sight_chosen_ = true;
}

void PlanView::set_sight(const Sight& sight) {
  if (sight == sight_) return;
  if (sight.scale != sight_.scale) base_stale_ = true;
  sight_ = sight;
  refresh_view();
}

QRect PlanView::rect_of(const plan::ElementId& id) const {
  const plan::Element* element = desk_->job().find(id);
  if (element == nullptr) return {};
  QRectF all = path_of(plan::drawn_edges(*element), sight_).boundingRect();
  for (const plan::Grip& grip : plan::corners(*element)) {
    const problem::Xy at = geometry::xy(grip.at);
    const QPointF px = sight_.to_px({at.x, at.y});
    all = all.united(QRectF(px.x() - 4, px.y() - 4, 8, 8));
  }
  return all.toAlignedRect();
}

void PlanView::resizeEvent(QResizeEvent*) {
  if (!sight_chosen_) whole_job();
  base_stale_ = true;
}

// Where the prompt takes more room or less the paper stays where it is on the screen.
void PlanView::moveEvent(QMoveEvent* event) {
  if (!sight_chosen_) return;
  Sight sight = sight_;
  sight.origin -= event->pos() - event->oldPos();
  set_sight(sight);
}

void PlanView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) base_stale_ = true;
  QWidget::changeEvent(event);
}

// --- painting

void PlanView::render_base() {
  const double ratio = devicePixelRatioF();
  const QSize size = (QSizeF(this->size()) * ratio).toSize();
  if (base_.size() != size) base_ = QPixmap(size);
  base_.setDevicePixelRatio(ratio);
  base_.fill(theme().paper);
  QPainter painter(&base_);
  painter.setRenderHint(QPainter::Antialiasing);
  if (under_) under_(painter, sight_, rect());
  if (painter_) painter_->paint(painter, sight_, rect());
  base_sight_ = sight_;
  base_stale_ = false;
}

void PlanView::paintEvent(QPaintEvent*) {
  // While the plan is dragged the picture is moved, not drawn; it is drawn afresh when the hand rests.
  if (base_stale_ || base_sight_.scale != sight_.scale || (base_sight_ != sight_ && !pan_)) render_base();
  QPainter painter(this);
  const QPointF shift = sight_.origin - base_sight_.origin;
  if (!shift.isNull()) {
    painter.fillRect(rect(), theme().paper);
    settle_.start();
  }
  painter.drawPixmap(shift, base_);
  painter.setRenderHint(QPainter::Antialiasing);
  const Overlay overlay{desk_->job(), desk_->results(), desk_->selected(), view_, sight_, rect()};
  paint_pending(painter, overlay);
  if (painter_) painter_->paint_marks(painter, sight_, rect());
  paint_lit(painter);
  paint_selection(painter, overlay);
  paint_tool(painter, overlay);
  paint_scale_and_north(painter, sight_, QRectF(rect()).adjusted(16, 16, -16, -16), desk_->units());
  paint_legend(painter, QRectF(rect()).adjusted(12, 12, -12, -12), wants_.junctions, wants_.stage.has_value());
  if (hasFocus()) {
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(theme().chalk, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
  }
}

void PlanView::paint_lit(QPainter& painter) const {
  QPen pen(theme().chalk, 1.4);
  pen.setDashPattern({5 / 1.4, 3 / 1.4});
  for (const std::string& of : desk_->lit().of) {
    const plan::Element* element = desk_->job().find(of);
    if (element == nullptr) continue;
    const QPainterPath path = path_of(plan::drawn_edges(*element), sight_);
    painter.strokePath(path, QPen(theme().paper, 3.4));
    painter.strokePath(path, pen);
  }
}

// --- the tool in hand

sketch::Scene PlanView::scene() const {
  constexpr double reach_px = 12;
  const double steps_a_px = units::Length::steps_per_metre / sight_.scale;
  return {desk_->job(), *snaps_, reach_px * steps_a_px, 0, desk_->selected()};
}

void PlanView::refresh_view() {
  if (snaps_ == nullptr || snaps_of_ != desk_->job_ptr()) {
    snaps_of_ = desk_->job_ptr();
    snaps_ = std::make_unique<sketch::Snaps>(desk_->job());
  }
  view_ = tool_->view(scene());
  emit view_changed();
  update();
}

void PlanView::take_hand(sketch::Hand hand) {
  hand_ = hand;
  tool_ = sketch::make_tool(hand);
  refresh_view();
  emit hand_changed(hand);
}

void PlanView::take(const sketch::Event& event) {
  if (snaps_of_ != desk_->job_ptr()) refresh_view();
  answer(tool_->take(event, scene()));
}

void PlanView::answer(const sketch::Answer& answer) {
  if (answer.refused) {
    const problem::Problem& why = *answer.refused;
    emit refused(said(why.text) + (why.mend.empty() ? QString() : QStringLiteral(": ") + said(why.mend)));
  }
  if (answer.edit) {
    desk_->edit(answer.edit->after, QString::fromStdString(answer.edit->name));
    desk_->select(answer.edit->selected);
  }
  if (answer.select) desk_->select(*answer.select);
  if (answer.leave && hand_ != sketch::Hand::pick) {
    take_hand(sketch::Hand::pick);
  } else {
    refresh_view();
  }
}

}  // namespace ui
