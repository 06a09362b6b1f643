#include "ui/print/heads.h"

#include <QCoreApplication>
#include <algorithm>

#include "sheets/plan_figure.h"
#include "ui/look/theme.h"
#include "ui/paint/marks.h"
#include "ui/panels/strip_model.h"
#include "ui/panels/strip_section.h"
#include "ui/print/pages.h"
#include "ui/print/scales.h"
#include "ui/words/words.h"

namespace ui {

namespace {

constexpr double foot_high = mm(15);
constexpr double strip_high = mm(19);

QString tr_print(const char* english) { return QCoreApplication::translate("print", english); }

// Three steps: what the house signs with.
void paint_mark(QPainter& painter, QRectF square) {
  const double bar = square.height() / 4;
  for (int i = 0; i < 3; ++i) {
    const double from = square.left() + square.width() * (i == 0 ? 0.42 : i == 1 ? 0.22 : 0);
    const double to = square.left() + square.width() * (i == 2 ? 0.8 : 1.0);
    painter.fillRect(QRectF(from, square.top() + i * bar * 1.4, to - from, bar), Qt::black);
  }
}

bool outline_only(sheets::Material material) {
  return material != sheets::Material::building && material != sheets::Material::water;
}

}  // namespace

std::shared_ptr<const FigurePainter> key_plan(const results::Results& results) {
  sheets::Figure whole = sheets::plan_figure(results, {.levels = false});
  auto key = std::make_shared<sheets::Figure>();
  key->low = whole.low, key->high = whole.high;
  for (sheets::Part& part : whole.parts) {
    if (auto* area = std::get_if<sheets::Area>(&part)) {
      if (area->line == sheets::Line::unit || !area->word.empty()) continue;
      if (outline_only(area->material)) area->material = sheets::Material::none;
      if (area->line == sheets::Line::none) area->line = sheets::Line::element;
      key->parts.push_back(std::move(*area));
    } else if (auto* units = std::get_if<sheets::Units>(&part)) {
      sheets::Area outline;
      outline.contours = std::move(units->field);
      outline.line = sheets::Line::element;
      key->parts.push_back(std::move(outline));
    } else if (auto* mark = std::get_if<sheets::Mark>(&part)) {
      if (mark->sign == sheets::Sign::tag) key->parts.push_back(std::move(*mark));
    } else {
      key->parts.push_back(std::move(part));
    }
  }
  return std::make_shared<const FigurePainter>(std::move(key));
}

QRectF LaidSheet::body(bool first) const {
  qsizetype about = 0;  // lines, where long ones are broken
  for (const std::string& line : sheet_.about)
    about += broken(words(line), print_font(12), page_.inside().width()).size();
  const double head =
      sheet_.key_plan ? (first ? mm(50) : mm(34)) + strip_high + mm(2)
      : first ? mm(16) + static_cast<double>(about) * line_height(print_font(12)) + line_height(print_font(17, true))
              : mm(11);
  return page_.inside().adjusted(0, head, 0, -foot_high - mm(1.5));
}

void LaidSheet::paint_head(QPainter& painter, std::size_t number) const {
  const bool first = number == 0;
  const QRectF inside = page_.inside();
  if (!sheet_.key_plan) return paint_title(painter, inside, first);
  const double high = first ? mm(48) : mm(32);
  const double key_wide = first ? mm(72) : mm(48);
  paint_title(painter, inside.adjusted(0, 0, -key_wide - mm(4), 0), first);
  paint_key_plan(painter, {inside.right() - key_wide, inside.top(), key_wide, high}, pages_.at(number).tags);
  paint_strip(painter, {inside.left(), inside.top() + high + mm(1.5), inside.width(), strip_high},
              pages_.at(number).stages);
}

void LaidSheet::paint_title(QPainter& painter, const QRectF& room, bool first) const {
  const QString job = words(printed_.job().heading.name);
  if (!first && !sheet_.key_plan) {
    paint_lines(painter, {words(sheet_.title) + QStringLiteral(" · ") + job}, print_font(12, true), room);
    painter.setPen(ink_pen(0.5));
    const double y = room.top() + mm(7.5);
    painter.drawLine(QPointF(room.left(), y), QPointF(room.right(), y));
    return;
  }
  QRectF left = room;
  const QFont title = print_font(first ? 27 : 17, true), name = print_font(first ? 17 : 13, true);
  const auto put = [&](const QStringList& lines, const QFont& font) {
    left.setTop(left.top() + paint_lines(painter, lines, font, left));
  };
  put({words(sheet_.title)}, title);
  put({QFontMetricsF(name).elidedText(job, Qt::ElideRight, left.width())}, name);
  if (!first) return;
  for (const std::string& line : sheet_.about) put(broken(words(line), print_font(12), left.width()), print_font(12));
  if (sheet_.key_plan) return;
  painter.setPen(ink_pen(0.9));
  const double y = body(true).top() - mm(2.5);
  painter.drawLine(QPointF(room.left(), y), QPointF(room.right(), y));
}

// Only the tags that the page names: all of them would cover the plan.
void LaidSheet::paint_key_plan(QPainter& painter, const QRectF& room, const std::set<std::string>& tags) const {
  painter.save();
  painter.setBrush(Qt::NoBrush);
  painter.setPen(ink_pen(0.25));
  painter.drawRect(room);
  const OnPaper paper(false);
  painter.scale(u_per_px, u_per_px);
  const QRectF box = QRectF(room.topLeft() / u_per_px, room.size() / u_per_px).adjusted(8, 8, -8, -8);
  const sheets::Figure& figure = key_plan_->figure();
  const double wide = std::max(figure.high.x - figure.low.x, 1e-3), high = std::max(figure.high.y - figure.low.y, 1e-3);
  Sight sight;
  sight.scale = std::min(box.width() / wide, box.height() / high);
  sight.origin = box.center() - QPointF((figure.low.x + figure.high.x) / 2 * sight.scale,
                                        -(figure.low.y + figure.high.y) / 2 * sight.scale);
  key_plan_->paint(painter, sight, box.adjusted(-6, -6, 6, 6));
  std::vector<const sheets::Mark*> marks;
  for (const sheets::Part& part : figure.parts)
    if (const auto* mark = std::get_if<sheets::Mark>(&part); mark && tags.contains(mark->of)) marks.push_back(mark);
  ui::paint_marks(painter, marks, sight, box.adjusted(-6, -6, 6, 6));
  painter.restore();
}

void LaidSheet::paint_strip(QPainter& painter, const QRectF& room, const std::set<takeoff::Stage>& stages) const {
  const double cells_high = mm(6.4);
  painter.save();
  {
    const OnPaper paper(false);
    painter.scale(u_per_px, u_per_px);
    const QRectF picture(room.topLeft() / u_per_px, QSizeF(room.width(), room.height() - cells_high) / u_per_px);
    paint_strip_section(painter, picture, strip_kinds(printed_.job()), std::nullopt);
  }
  painter.restore();
  const QRectF row(room.left(), room.bottom() - cells_high, room.width(), cells_high);
  const auto cells = strip_cells(nullptr, printed_.job());
  const double wide = row.width() / static_cast<double>(cells.size());
  const auto text_of = [&](std::size_t i) { return QStringLiteral("%1 %2").arg(i + 1).arg(cells[i].name); };
  double points = 10.5;  // one size for all, the bold ones too
  for (std::size_t i = 0; i < cells.size(); ++i)
    while (points > 6 && QFontMetricsF(print_font(points, true)).horizontalAdvance(text_of(i)) > wide - mm(1.6))
      points -= 0.25;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const QRectF cell(row.left() + static_cast<double>(i) * wide, row.top(), wide, row.height());
    const bool here = stages.contains(takeoff::all_stages.at(i));
    painter.fillRect(cell, here ? Qt::black : Qt::white);
    painter.setPen(here ? Qt::white : Qt::black);
    painter.setFont(print_font(points, here));
    painter.drawText(cell.adjusted(mm(0.8), 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, text_of(i));
  }
  painter.setBrush(Qt::NoBrush);
  painter.setPen(ink_pen(0.35));
  painter.drawRect(row);
}

void LaidSheet::paint_foot(QPainter& painter, std::size_t number) const {
  const QRectF inside = page_.inside();
  const QRectF foot(inside.left(), inside.bottom() - foot_high + mm(2.5), inside.width(), foot_high - mm(2.5));
  painter.setPen(ink_pen(0.6));
  painter.drawLine(foot.topLeft(), foot.topRight());
  paint_mark(painter, {foot.left(), foot.top() + mm(3), mm(8.5), mm(8)});
  const plan::Heading& heading = printed_.job().heading;
  QStringList scales;
  for (const int scale : pages_.at(number).scales) scales << QStringLiteral("1 : %1").arg(scale);
  const std::array<std::pair<QString, QString>, 5> cells{{
      {tr_print(QT_TRANSLATE_NOOP("print", "Version")),
       printed_.version.empty() ? tr_print(QT_TRANSLATE_NOOP("print", "working copy")) : words(printed_.version)},
      {tr_print(QT_TRANSLATE_NOOP("print", "Date")),
       printed_.date.empty() ? QStringLiteral("–") : words(date_words(printed_, printed_.date))},
      {tr_print(QT_TRANSLATE_NOOP("print", "Scale")),
       scales.isEmpty() ? tr_print(QT_TRANSLATE_NOOP("print", "none")) : scales.join(QStringLiteral(", "))},
      {tr_print(QT_TRANSLATE_NOOP("print", "Units")), heading.units == units::System::us
                                                          ? tr_print(QT_TRANSLATE_NOOP("print", "ft and in"))
                                                          : tr_print(QT_TRANSLATE_NOOP("print", "m and mm"))},
      {tr_print(QT_TRANSLATE_NOOP("print", "Page")),
       tr_print(QT_TRANSLATE_NOOP("print", "%1 of %2")).arg(number + 1).arg(pages_.size())},
  }};
  const QFont small = print_font(9), bold = print_font(11, true);
  double right = foot.right();
  for (auto cell = cells.rbegin(); cell != cells.rend(); ++cell) {
    const double wide = std::max(QFontMetricsF(small).horizontalAdvance(cell->first),
                                 QFontMetricsF(bold).horizontalAdvance(cell->second)) +
                        mm(5);
    right -= wide;
    painter.setPen(ink_pen(0.18));
    painter.drawLine(QPointF(right, foot.top() + mm(2.5)), QPointF(right, foot.bottom() - mm(1)));
    paint_lines(painter, {cell->first}, small, {right + mm(2), foot.top() + mm(2), wide, 0});
    paint_lines(painter, {cell->second}, bold, {right + mm(2), foot.top() + mm(5.8), wide, 0});
  }
  const double left = foot.left() + mm(11.5), room = right - left - mm(3);
  QString under = words(sheet_.title);
  if (heading.invented) under += QStringLiteral(" · ") + tr_print(QT_TRANSLATE_NOOP("print", "invented demo job"));
  const auto fit = [&](const QString& text, const QFont& font) {
    return QStringList{QFontMetricsF(font).elidedText(text, Qt::ElideRight, room)};
  };
  paint_lines(painter, fit(words(heading.name), bold), bold, {left, foot.top() + mm(2), room, 0});
  paint_lines(painter, fit(under, small), small, {left, foot.top() + mm(6.8), room, 0});
}

}  // namespace ui
