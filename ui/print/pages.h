// A sheet laid on pages, and painted: the same for the printer, the PDF, the preview and a picture.
#pragma once

#include <set>
#include <vector>

#include "sheets/printed.h"
#include "ui/paint/figure_painter.h"
#include "ui/print/paper.h"
#include "ui/print/slices.h"

namespace ui {

struct OnPage {
  std::shared_ptr<const Slice> slice;
  double top = 0;  // u, within the page
  double height = 0;
};
struct LaidPage {
  std::vector<OnPage> placed;
  std::set<takeoff::Stage> stages;
  std::set<int> scales;
  std::set<std::string> tags;
};

class LaidSheet {
 public:
  // Words of head and foot are said in the language in use (ui/words).
  LaidSheet(sheets::Sheet sheet, const sheets::Printed& printed, Paper paper);

  const PageSize& page() const { return page_; }
  std::size_t count() const { return pages_.size(); }
  const LaidPage& at(std::size_t number) const { return pages_.at(number); }
  const sheets::Sheet& sheet() const { return sheet_; }
  // Into a painter whose unit is u and whose origin is the corner of the paper.
  void paint(QPainter& painter, std::size_t number) const;

 private:
  QRectF body(bool first) const;
  void fill();
  void paint_head(QPainter& painter, std::size_t number) const;
  void paint_title(QPainter& painter, const QRectF& room, bool first) const;
  void paint_key_plan(QPainter& painter, const QRectF& room, const std::set<std::string>& tags) const;
  void paint_strip(QPainter& painter, const QRectF& room, const std::set<takeoff::Stage>& stages) const;
  void paint_foot(QPainter& painter, std::size_t number) const;

  sheets::Sheet sheet_;
  sheets::Printed printed_;
  PageSize page_;
  std::vector<LaidPage> pages_;
  std::shared_ptr<const FigurePainter> key_plan_;
};

}  // namespace ui
