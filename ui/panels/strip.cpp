#include "ui/panels/strip.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "ui/panels/strip_section.h"
#include "ui/words/words.h"

namespace ui {

namespace {

constexpr int finished = static_cast<int>(stage_count);
constexpr double pad = 6;
constexpr int at_left = Qt::AlignVCenter | Qt::AlignLeft, at_right = Qt::AlignVCenter | Qt::AlignRight;

std::optional<takeoff::Stage> stage_at(int index) {
  if (index >= finished) return std::nullopt;
  return takeoff::all_stages[static_cast<std::size_t>(std::max(index, 0))];
}

QString name_of(int index, const StripCell& cell) { return QStringLiteral("%1 %2").arg(index + 1).arg(cell.name); }

double width_of(const QFont& font, const QString& text) { return QFontMetricsF(font).horizontalAdvance(text); }

}  // namespace

Strip::Strip(Desk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName("strip");
  setAccessibleName(tr("Order of work"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(false);
  install_strip_access();
  connect(&desk_, &Desk::job_changed, this, &Strip::refresh);
  connect(&desk_, &Desk::results_changed, this, &Strip::refresh);
  connect(&desk_, &Desk::computing_changed, this, qOverload<>(&QWidget::update));
  connect(&desk_, &Desk::stage_changed, this, qOverload<>(&QWidget::update));
  refresh();
}

void Strip::refresh() {
  cells_ = strip_cells(desk_.results().get(), desk_.job());
  kinds_ = strip_kinds(desk_.job());
  measure();
  update();
}

// The figures keep one way in all cells, so that they stand in rows.
void Strip::measure() {
  const double room = width() / static_cast<double>(stage_count) - px(2 * pad);
  measure_names(room + px(pad) - 2);
  const auto widest = [&](Type type, auto&& text) {
    double wide = 0;
    for (const StripCell& cell : cells_) wide = std::max(wide, width_of(ui::font(type), text(cell)));
    return wide;
  };
  const auto cost = [](const StripCell& cell) { return cell.cost; };
  const auto both = [](const StripCell& cell) { return cell.cost + QStringLiteral("  ") + cell.hours; };
  figures_ = widest(Type::note, both) <= room ? Type::note : Type::small;
  if (widest(figures_, both) <= room) {
    keeps_ = Keeps::all;
  } else if (widest(Type::small, cost) > room) {
    keeps_ = Keeps::name;
  } else {
    keeps_ = room >= px(80) ? Keeps::two_rows : Keeps::cost;
  }
}

// One size for all names: the largest at which each has one row, beside its counts if it can be.
void Strip::measure_names(double room) {
  for (const bool below : {false, true}) {
    for (const Type type : {Type::text, Type::note, Type::small}) {
      bool fits = true;
      for (int i = 0; i < finished; ++i) {
        const StripCell& cell = cells_[static_cast<std::size_t>(i)];
        const int signs = (cell.flags > 0) + (cell.problems > 0);
        const double counts = below ? 0 : signs * px(32);
        fits = fits && width_of(ui::font(type, true), name_of(i, cell)) + counts <= room;
      }
      names_ = type;
      signs_below_ = below;
      if (fits) return;
    }
  }
}

int Strip::chosen() const { return desk_.stage() ? static_cast<int>(*desk_.stage()) : finished; }

bool Strip::later(int index) const { return index > chosen(); }

QRectF Strip::cell(int index) const {
  const auto edge = [&](int i) { return std::round(width() * i / static_cast<double>(finished)); };
  return {edge(index), 0, edge(index + 1) - edge(index), height() * 1.0};
}

double Strip::plumb_line() const { return chosen() == finished ? width() - px(8) : cell(chosen()).right(); }

void Strip::choose(int index) { desk_.show_stage(stage_at(std::clamp(index, 0, finished))); }

QRectF Strip::section_room() const {
  const double rows = keeps_ == Keeps::name ? px(4) : keeps_ == Keeps::two_rows ? px(36) : px(24);
  const double head = px(30);
  return {0, head, width() * 1.0, height() - head - rows};
}

QSize Strip::sizeHint() const { return {px(1024), px(124)}; }
QSize Strip::minimumSizeHint() const { return {px(9 * 44), px(100)}; }

void Strip::paintEvent(QPaintEvent*) {
  const Theme& t = theme();
  QPainter painter(this);
  painter.fillRect(rect(), t.panel);
  if (chosen() < finished) painter.fillRect(cell(chosen()), t.chalk_wash);
  paint_strip_section(painter, section_room(), kinds_, desk_.stage());
  for (int i = 1; i < finished; ++i) painter.fillRect(QRectF(cell(i).left(), 0, 1, height()), t.line);
  painter.fillRect(QRect(0, 0, width(), 1), t.rule);
  if (chosen() < finished) painter.fillRect(QRectF(cell(chosen()).left(), 0, cell(chosen()).width(), 3), t.chalk);
  for (int i = 0; i < finished; ++i) {
    paint_name(painter, i);
    paint_figures(painter, i);
  }
  paint_plumb_line(painter);
  if (!hasFocus()) return;
  painter.setPen(QPen(t.chalk, 2));
  painter.setBrush(Qt::NoBrush);
  const QRectF ring = chosen() < finished ? cell(chosen()) : QRectF(rect());
  painter.drawRect(ring.adjusted(1, 1, -1, -1));
}

// Counts at the right end of the name's row, or under it: a flag for what stops the total, a triangle for what somebody
// decides.
void Strip::paint_signs(QPainter& painter, int index) const {
  const StripCell& cell = cells_[static_cast<std::size_t>(index)];
  double right = this->cell(index).right() - px(pad);
  const double top = signs_below_ ? px(26) : px(8);
  const auto sign = [&](int count, const QString& picture, const QColor& colour) {
    if (count == 0) return;
    const QFont letters = ui::font(Type::small, true);
    const QString text = QString::number(count);
    const double wide = width_of(letters, text), side = px(13);
    right -= wide;
    painter.setFont(letters);
    painter.setPen(colour);
    painter.drawText(QRectF(right, top, wide, px(16)), at_left, text);
    right -= side + 1;
    paint_icon(painter, picture, QRectF(right, top + px(1.5), side, side), colour);
    right -= px(3);
  };
  sign(cell.flags, "caution", theme().care);
  sign(cell.problems, "solve", theme().flag);
}

void Strip::paint_name(QPainter& painter, int index) const {
  paint_signs(painter, index);
  const bool bold = !later(index);
  const QRectF box = cell(index).adjusted(px(pad), px(6), -2, 0);
  const QString text = name_of(index, cells_[static_cast<std::size_t>(index)]);
  painter.setPen(index == chosen() ? theme().chalk : later(index) ? theme().ink3 : theme().ink);
  painter.setFont(ui::font(names_, bold));
  // Very narrow: in two rows, over the sky of the section.
  painter.drawText(QRectF(box.left(), box.top(), box.width(), px(40)), Qt::AlignTop | Qt::TextWordWrap, text);
}

void Strip::paint_figures(QPainter& painter, int index) const {
  if (keeps_ == Keeps::name) return;
  const StripCell& cell = cells_[static_cast<std::size_t>(index)];
  const bool old = desk_.computing();
  QFont letters = ui::font(figures_, index == chosen());
  letters.setItalic(old);
  if (index == chosen() && width_of(letters, cell.cost + "  " + cell.hours) > this->cell(index).width() - px(2 * pad))
    letters.setBold(false);
  painter.setFont(letters);
  painter.setPen(old || later(index) ? theme().ink3 : theme().ink2);
  const double bob = index + 1 == finished && chosen() == finished ? px(10) : 0;  // the plumb bob stands there
  const QRectF box = this->cell(index).adjusted(px(pad), 0, -px(pad) - bob, -px(4));
  const bool two = keeps_ == Keeps::two_rows;
  const QRectF low(box.left(), box.bottom() - px(16), box.width(), px(16));
  const QRectF costs = two ? low.translated(0, -px(15)) : low;
  painter.drawText(costs, Qt::AlignVCenter | Qt::AlignLeft, cell.cost);
  if (keeps_ != Keeps::cost) painter.drawText(low, two ? at_left : at_right, cell.hours);
  if (!cell.open || cell.cost.isEmpty()) return;
  const double wide = width_of(letters, cell.cost);
  painter.setPen(QPen(theme().flag, 1.2, Qt::CustomDashLine));
  QPen dashes(theme().flag, 1.2);
  dashes.setDashPattern({3, 2});
  painter.setPen(dashes);
  painter.drawLine(QPointF(costs.left(), costs.bottom()), QPointF(costs.left() + wide, costs.bottom()));
}

void Strip::paint_plumb_line(QPainter& painter) const {
  const QColor chalk = theme().chalk;
  const double x = std::round(plumb_line()) + 0.5, foot = height() - px(22);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme().paper, 3.5, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(QPointF(x, 0), QPointF(x, foot));
  painter.setPen(QPen(chalk, 1.5, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(QPointF(x, 0), QPointF(x, foot));
  painter.fillRect(QRectF(x - px(6), 0, px(12), px(4)), chalk);
  QPainterPath bob(QPointF(x - px(5), foot));
  for (const QPointF& by : {QPointF(5, 0), QPointF(6.5, 6), QPointF(0, 20), QPointF(-6.5, 6)})
    bob.lineTo(QPointF(x + px(by.x()), foot + px(by.y())));
  bob.closeSubpath();
  painter.strokePath(bob, QPen(theme().paper, 2));
  painter.fillPath(bob, chalk);
  painter.setRenderHint(QPainter::Antialiasing, false);
}

void Strip::resizeEvent(QResizeEvent*) { measure(); }

void Strip::changeEvent(QEvent* event) {
  if (event->type() == QEvent::LanguageChange) refresh();
  if (event->type() == QEvent::FontChange) measure();
  QWidget::changeEvent(event);
}

void Strip::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  pressed_at_ = event->position().x();
  dragged_ = std::abs(pressed_at_ - plumb_line()) <= px(8);
}

// The line follows to the nearest end of a stage; the strip's own end is the finished job.
void Strip::mouseMoveEvent(QMouseEvent* event) {
  if (pressed_at_ < 0) return;
  const double x = event->position().x();
  dragged_ |= std::abs(x - pressed_at_) > px(6);
  if (!dragged_) return;
  if (x >= width() - px(4)) return choose(finished);
  choose(std::clamp(static_cast<int>(std::lround(x / width() * finished)) - 1, 0, finished - 1));
}

void Strip::mouseReleaseEvent(QMouseEvent* event) {
  if (pressed_at_ >= 0 && !dragged_)
    choose(std::clamp(static_cast<int>(event->position().x() / width() * finished), 0, finished - 1));
  pressed_at_ = -1;
  dragged_ = false;
}

void Strip::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left: return choose(chosen() - 1);
    case Qt::Key_Right: return choose(chosen() + 1);
    case Qt::Key_Home: return choose(0);
    case Qt::Key_End: return choose(finished);
    default: QWidget::keyPressEvent(event);
  }
}

bool Strip::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const int index = std::clamp(help->x() * finished / std::max(width(), 1), 0, finished - 1);
  const takeoff::Stage stage = takeoff::all_stages[static_cast<std::size_t>(index)];
  QToolTip::showText(
      help->globalPos(),
      said(takeoff::title(stage)) + "\n" + strip_cell_told(index + 1, cells_[static_cast<std::size_t>(index)]), this);
  return true;
}

}  // namespace ui
