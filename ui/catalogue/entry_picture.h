// A pattern drawn small, or a build-up as a section with its layers named; nothing of other kinds.
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "catalogue/change.h"
#include "ui/paint/figure_painter.h"
#include "units/read_length.h"

namespace ui {

class EntryPicture : public QWidget {
  Q_OBJECT
 public:
  explicit EntryPicture(QWidget* parent = nullptr);
  void show_entry(const catalogue::Entry& entry, const catalogue::Catalogue& catalogue, units::System system);
  void show_nothing();
  bool drawn() const { return figure_ != nullptr; }
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Label {
    geometry::Vec at;  // of the figure, metres
    QString words;
  };
  void paint_labels(QPainter& painter, const Sight& sight, const QRect& room) const;
  int label_height() const;
  std::unique_ptr<FigurePainter> figure_;
  std::vector<Label> labels_;
};

}  // namespace ui
