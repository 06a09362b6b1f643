#include "ui/panels/measure_grid.h"

#include <QLabel>
#include <QPainter>

#include "ui/look/theme.h"
#include "ui/paint/figure_painter.h"

namespace ui {

namespace {

void dress(QLabel& label, Type type, QColor colour, bool italic) {
  QFont font = ui::font(type);
  font.setItalic(italic);
  label.setFont(font);
  QPalette palette = label.palette();
  palette.setColor(QPalette::WindowText, colour);
  label.setPalette(palette);
}

}  // namespace

MeasureGrid::MeasureGrid(QWidget* parent) : QWidget(parent) {
  setObjectName("measures");
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void MeasureGrid::show_measures(const std::vector<Told>& measures, bool old) {
  old_ = old;
  used_ = measures.size();
  while (cells_.size() < used_) cells_.push_back({new QLabel(this), new QLabel(this)});
  for (std::size_t i = 0; i < cells_.size(); ++i) {
    const Cell& cell = cells_[i];
    cell.label->setVisible(i < used_);
    cell.value->setVisible(i < used_);
    if (i >= used_) continue;
    cell.label->setText(measures[i].label);
    cell.value->setText(measures[i].value);
    cell.value->setObjectName("measure/" + measures[i].label);
    cell.value->setAccessibleName(measures[i].label + " " + measures[i].value);
    dress(*cell.label, Type::small, theme().ink3, false);
    dress(*cell.value, Type::text, old ? theme().ink3 : theme().ink, old);
  }
  setFixedHeight(place(width(), true));
  updateGeometry();
}

QString MeasureGrid::value(const QString& label) const {
  for (std::size_t i = 0; i < used_; ++i)
    if (cells_[i].label->text() == label) return cells_[i].value->text();
  return {};
}

// Three beside each other where the widest label and number fit a third.
int MeasureGrid::columns(int width) const {
  int widest = 1;
  for (std::size_t i = 0; i < used_; ++i)
    widest = std::max({widest, cells_[i].label->sizeHint().width(), cells_[i].value->sizeHint().width()});
  return std::clamp(width / (widest + px(8)), 1, 3);
}

int MeasureGrid::place(int width, bool really) const {
  if (used_ == 0) return 0;
  const int across = columns(width);
  const int cell = width / across;
  const int label = cells_.front().label->sizeHint().height();
  const int row = label + cells_.front().value->sizeHint().height() + px(6);
  for (int i = 0; really && i < static_cast<int>(used_); ++i) {
    const QPoint at(i % across * cell, i / across * row);
    cells_[static_cast<std::size_t>(i)].label->setGeometry(at.x(), at.y(), cell, label);
    cells_[static_cast<std::size_t>(i)].value->setGeometry(at.x(), at.y() + label, cell, row - label - px(6));
  }
  return (static_cast<int>(used_) + across - 1) / across * row;
}

int MeasureGrid::heightForWidth(int width) const { return place(width, false); }
QSize MeasureGrid::sizeHint() const { return {px(328), place(std::max(width(), px(200)), false)}; }
void MeasureGrid::resizeEvent(QResizeEvent*) { setFixedHeight(place(width(), true)); }

TagLabel::TagLabel(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed); }

void TagLabel::show_tag(const QString& text) {
  text_ = text;
  setVisible(!text.isEmpty());
  setAccessibleName(text);
  updateGeometry();
  update();
}

QSize TagLabel::sizeHint() const {
  return {QFontMetrics(ui::font(Type::small, true)).horizontalAdvance(text_) + px(18), px(24)};
}

void TagLabel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paint_tag(painter, QRectF(rect()).center(), text_, true);
}

}  // namespace ui
