// A label that wants to stand in one line, and wraps where it can't.
#pragma once

#include <QLabel>

namespace ui {

class OneLine : public QLabel {
 public:
  explicit OneLine(QWidget* parent = nullptr) : QLabel(parent) {
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
  }
  QSize sizeHint() const override {
    const QFontMetrics metrics(font());
    return {metrics.horizontalAdvance(text()) + 2, metrics.height()};
  }
  QSize minimumSizeHint() const override { return {QFontMetrics(font()).averageCharWidth() * 8, 1}; }
};

}  // namespace ui
