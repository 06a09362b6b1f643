// From pointer, wheel and keys to what they mean on the plan.
#include <QAction>
#include <QContextMenuEvent>
#include <QGestureEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QPinchGesture>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/plan/plan_view.h"

namespace ui {

namespace {

sketch::Hold hold_of(Qt::KeyboardModifiers held) {
  const bool shift = held.testFlag(Qt::ShiftModifier);
  return {.steps = shift, .free = held.testFlag(Qt::AltModifier), .more = shift || held.testFlag(Qt::ControlModifier)};
}

// The step of an arrow key: what a person of the job's units would move by.
double nudge_steps(units::System system) {
  const units::Length step = system == units::System::us ? units::Length::inches(1) : units::Length::millimetres(10);
  return static_cast<double>(step.steps());
}

}  // namespace

geometry::Point PlanView::plan_point(QPointF px) const {
  const geometry::Vec metres = sight_.to_metres(px);
  const double reach = geometry::reach_of_plan.metres().si();
  const auto on_grid = [reach](double value) {
    const double steps = std::clamp(value, -reach, reach) * units::Length::steps_per_metre;
    return units::Length::of_steps(std::llround(steps));
  };
  return {on_grid(metres.x), on_grid(metres.y)};
}

void PlanView::mousePressEvent(QMouseEvent* event) {
  sight_chosen_ = true;  // what a hand works on does not move under it
  const bool pans = event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && space_);
  if (pans) {
    pan_ = Pan{event->position(), sight_.origin};
    setCursor(Qt::ClosedHandCursor);
    return;
  }
  if (event->button() != Qt::LeftButton) return;
  pressed_ = true;
  take(sketch::Pressed{plan_point(event->position()), hold_of(event->modifiers()), false});
}

void PlanView::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || space_) return;
  pressed_ = true;
  take(sketch::Pressed{plan_point(event->position()), hold_of(event->modifiers()), true});
}

void PlanView::mouseMoveEvent(QMouseEvent* event) {
  if (pan_) {
    Sight sight = sight_;
    sight.origin = pan_->origin + event->position() - pan_->from;
    sight_chosen_ = true;
    set_sight(sight);
    return;
  }
  const geometry::Point at = plan_point(event->position());
  emit pointer_at(at);
  take(sketch::Moved{at, hold_of(event->modifiers())});
}

void PlanView::mouseReleaseEvent(QMouseEvent* event) {
  if (pan_) {
    pan_.reset();
    unsetCursor();
    base_stale_ = true;
    update();
    return;
  }
  if (event->button() != Qt::LeftButton || !pressed_) return;
  pressed_ = false;
  take(sketch::Released{plan_point(event->position()), hold_of(event->modifiers())});
}

void PlanView::wheelEvent(QWheelEvent* event) {
  // A touchpad that gives pixels pans with two fingers; a wheel, and a touchpad with Ctrl held, zooms at the pointer.
  const bool zooms = event->pixelDelta().isNull() || event->modifiers().testFlag(Qt::ControlModifier);
  if (zooms) {
    zoom(std::pow(1.0015, event->angleDelta().y()), event->position());
  } else {
    Sight sight = sight_;
    sight.origin += event->pixelDelta();
    sight_chosen_ = true;
    set_sight(sight);
  }
  event->accept();
}

bool PlanView::event(QEvent* event) {
  if (event->type() == QEvent::Gesture) {
    auto* pinch = static_cast<QPinchGesture*>(static_cast<QGestureEvent*>(event)->gesture(Qt::PinchGesture));
    if (pinch != nullptr) {
      zoom(pinch->scaleFactor(), mapFromGlobal(pinch->hotSpot()));
      return true;
    }
  }
  // Keys that mean something to the tool in hand are not taken for shortcuts of the window: digits type a length, A
  // turns line to arc. With Pick at rest they are the window's.
  if (event->type() == QEvent::ShortcutOverride && wants_keys()) {
    const auto& key = *static_cast<QKeyEvent*>(event);
    const QString text = key.text();
    const bool types = !view_.fields.empty() && !text.isEmpty() && (text.at(0).isDigit() || text == "." || text == "-");
    const bool held = (key.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) != Qt::NoModifier;
    if (!held && (types || (view_.busy && key.key() == Qt::Key_A))) {
      event->accept();
      return true;
    }
  }
  // Tab goes to the prompt's fields while something is in hand, as the prompt promises.
  if (event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Tab && wants_keys() && !view_.fields.empty()) {
      emit key_typed(key);
      return true;
    }
  }
  return QWidget::event(event);
}

bool PlanView::wants_keys() const { return view_.busy || hand_ != sketch::Hand::pick; }

bool PlanView::send_key(const QKeyEvent& event) {
  const bool plain = event.modifiers() == Qt::NoModifier || event.modifiers() == Qt::KeypadModifier;
  const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
  const double step = nudge_steps(desk_->units()) * (shift ? 10 : 1);
  switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: take(sketch::Key::enter); return true;
    case Qt::Key_Escape: take(sketch::Key::escape); return true;
    case Qt::Key_Backspace: take(view_.busy ? sketch::Key::back : sketch::Key::erase); return true;
    case Qt::Key_Delete: take(sketch::Key::erase); return true;
    case Qt::Key_Left: take(sketch::Nudged{{-step, 0}}); return true;
    case Qt::Key_Right: take(sketch::Nudged{{step, 0}}); return true;
    case Qt::Key_Up: take(sketch::Nudged{{0, step}}); return true;
    case Qt::Key_Down: take(sketch::Nudged{{0, -step}}); return true;
    case Qt::Key_A:
      if (plain && view_.busy) {
        take(sketch::Key::line_or_arc);
        return true;
      }
      return false;
    default: return false;
  }
}

void PlanView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    space_ = true;
    setCursor(Qt::OpenHandCursor);
    return;
  }
  if (send_key(*event)) return;
  const QString text = event->text();
  const bool typed = !text.isEmpty() && text.at(0).isPrint() && !(event->modifiers() & Qt::ControlModifier);
  if (typed && wants_keys() && !view_.fields.empty()) {
    emit key_typed(event);
    return;
  }
  QWidget::keyPressEvent(event);
}

void PlanView::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    space_ = false;
    if (!pan_) unsetCursor();
    return;
  }
  QWidget::keyReleaseEvent(event);
}

void PlanView::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void PlanView::focusOutEvent(QFocusEvent* event) {
  space_ = false;
  QWidget::focusOutEvent(event);
  update();
}

// What lies under the pointer, topmost first, and what can be done with it.
void PlanView::fill_menu(QMenu& menu, QPointF at) {
  const auto ids = sketch::under(desk_->job(), plan_point(at), scene().reach);
  menu.addSection(tr("What lies here"));
  for (const plan::ElementId& id : ids) {
    const plan::Element* element = desk_->job().find(id);
    if (element == nullptr) continue;
    const QString name = QString::fromStdString(element->name);
    QAction* action = menu.addAction(QString::fromStdString(id) + (name.isEmpty() ? "" : "   " + name));
    action->setCheckable(true);
    action->setChecked(std::ranges::count(desk_->selected(), id) > 0);
    connect(action, &QAction::triggered, this, [this, id] { desk_->select({id}); });
  }
  if (ids.empty()) menu.addAction(tr("Nothing is drawn here"))->setEnabled(false);
}

void PlanView::contextMenuEvent(QContextMenuEvent* event) {
  const bool by_key = event->reason() == QContextMenuEvent::Keyboard;
  const auto& selected = desk_->selected();
  const QPoint at = by_key && !selected.empty() ? rect_of(selected.front()).center() : event->pos();
  QMenu menu(this);
  fill_menu(menu, at);
  const auto actions = parentWidget() != nullptr ? window()->actions() : QList<QAction*>();
  menu.addSeparator();
  for (QAction* action : actions) {
    if (action->property("in_plan_menu").toBool()) menu.addAction(action);
  }
  menu.exec(by_key ? mapToGlobal(at) : event->globalPos());
}

}  // namespace ui
