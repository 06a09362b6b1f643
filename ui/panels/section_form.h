// The section of what is selected, to scale, with leaders to rows of words and fields: the section is the form.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>
#include <set>

#include "sheets/section_figure.h"
#include "ui/paint/figure_painter.h"
#include "ui/panels/field_editor.h"

class QLabel;

namespace ui {

class SectionForm : public QWidget {
  Q_OBJECT
 public:
  SectionForm(Desk& desk, const Source& book, QWidget* parent = nullptr);
  ~SectionForm() override;

  // A leader whose `field` is the id of one of `fields` gets that field; others show their value. Nothing to show:
  // hidden.
  void show_section(std::optional<sheets::Section> section, const std::vector<Field>& fields);
  const std::set<std::string>& taken() const { return taken_; }  // ids of the fields that hang on leaders
  FieldEditor* editor(const std::string& id) const;

  QSize sizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Row {
    sheets::Leader leader;
    QLabel* words = nullptr;
    QWidget* value = nullptr;       // an editor or a label
    FieldEditor* editor = nullptr;  // where it can be typed
    QRect room;
  };
  bool same_rows(const sheets::Section& section, const std::vector<Field>& fields) const;
  void make_rows(const std::vector<Field>& fields);
  QRect picture(int width) const;
  std::vector<QRect> rows(int width) const;
  void place();
  void paint_leaders(QPainter& painter, const std::vector<QPointF>& points) const;
  Desk& desk_;
  const Source& book_;
  std::optional<sheets::Section> section_;
  std::unique_ptr<FigurePainter> figure_;
  std::vector<Row> rows_;
  std::set<std::string> taken_;
};

}  // namespace ui
