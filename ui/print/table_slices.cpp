// Tables: a slice a row; the head goes along to the next page.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "ui/print/paper.h"
#include "ui/print/slices.h"

namespace ui {

namespace {

using sheets::Align;
using sheets::Row;

constexpr double between = mm(3);
constexpr double written_row = mm(8);

struct Plan {
  std::vector<sheets::Column> columns;
  std::vector<double> left, width;
  double points = 10.5;
  bool written = false;
  QFont font(bool bold) const { return print_font(points, bold); }
};

double widest(const QString& text, const QFont& font) { return QFontMetricsF(font).horizontalAdvance(text); }

// The widest word that can't be broken: narrower a column is not made while another can give.
double least(const QString& text, const QFont& font) {
  double wide = 0;
  for (const QString& word : text.split(' ')) wide = std::max(wide, widest(word, font));
  return wide;
}

bool heavy(const Row& row) { return row.kind != Row::Kind::plain && row.kind != Row::Kind::note; }
// One cell across all columns.
bool across(const Row& row) { return row.kind == Row::Kind::group || row.kind == Row::Kind::note; }

struct Wants {
  std::vector<double> whole, least;
};

Wants wants(const sheets::Table& table, const Plan& plan) {
  Wants made{std::vector<double>(plan.columns.size(), mm(6)), std::vector<double>(plan.columns.size(), mm(6))};
  const auto take = [&](std::size_t i, const QString& text, const QFont& font) {
    made.whole[i] = std::max(made.whole[i], widest(text, font));
    made.least[i] = std::max(made.least[i], least(text, font));
  };
  for (std::size_t i = 0; i < plan.columns.size(); ++i) take(i, words(plan.columns[i].title), plan.font(true));
  for (const Row& row : table.rows) {
    if (across(row)) continue;
    for (std::size_t i = 0; i < std::min(row.cells.size(), plan.columns.size()); ++i)
      take(i, words(row.cells[i].words), plan.font(heavy(row)));
  }
  for (std::size_t i = 0; i < plan.columns.size(); ++i)
    if (plan.columns[i].align == Align::right) made.least[i] = made.whole[i];
  return made;
}

// Every column gets what it must have; what is left goes to those that want more, alike in share of what they lack.
std::vector<double> widths(const Wants& want, const Plan& plan, double room) {
  std::vector<double> made = want.whole;
  for (std::size_t i = 0; i < made.size(); ++i)
    if (plan.columns[i].share > 0) made[i] = std::max(want.least[i], plan.columns[i].share * room);
  const double gaps = between * static_cast<double>(made.size() - 1);
  const double sum = std::accumulate(made.begin(), made.end(), gaps);
  if (sum <= room) {
    // A table fills its line: the left columns share what is over.
    double texts = 0;
    for (std::size_t i = 0; i < made.size(); ++i) texts += plan.columns[i].align == Align::left ? made[i] : 0;
    for (std::size_t i = 0; i < made.size() && texts > 0; ++i)
      if (plan.columns[i].align == Align::left) made[i] += (room - sum) * made[i] / texts;
    return made;
  }
  double must = gaps, lacks = 0;
  for (std::size_t i = 0; i < made.size(); ++i) {
    must += std::min(want.least[i], made[i]);
    lacks += made[i] - std::min(want.least[i], made[i]);
  }
  if (must >= room || lacks <= 0) {
    for (double& width : made) width = (room - gaps) * width / (sum - gaps);
    return made;
  }
  for (std::size_t i = 0; i < made.size(); ++i) {
    const double floor = std::min(want.least[i], made[i]);
    made[i] = floor + (made[i] - floor) * (room - must) / lacks;
  }
  return made;
}

Plan planned(const sheets::Table& table, double room) {
  Plan plan{table.columns, {}, {}, table.small ? 9.0 : 10.5, table.written};
  if (plan.columns.empty()) return plan;
  plan.width = widths(wants(table, plan), plan, room);
  double x = 0;
  for (const double width : plan.width) {
    plan.left.push_back(x);
    x += width + between;
  }
  return plan;
}

struct Cell {
  QStringList lines;
  QRectF room;  // within the row, but for its top and height
  Qt::Alignment align;
  bool tick = false;
};

Qt::Alignment alignment(Align align) {
  return align == Align::right ? Qt::AlignRight : align == Align::centre ? Qt::AlignHCenter : Qt::AlignLeft;
}

std::vector<Cell> cells_of(const Plan& plan, const Row& row, double room) {
  const QFont font = plan.font(heavy(row));
  std::vector<Cell> made;
  if (across(row)) {
    const QString text = row.cells.empty() ? QString() : words(row.cells.front().words);
    const double in = row.kind == Row::Kind::note ? mm(5) : 0;
    made.push_back({broken(text, font, room - in), {in, 0, room - in, 0}, Qt::AlignLeft});
    return made;
  }
  for (std::size_t i = 0; i < plan.columns.size(); ++i) {
    const QString text = i < row.cells.size() ? words(row.cells[i].words) : QString();
    const bool tick = plan.columns[i].tick && text.isEmpty() && row.kind == Row::Kind::plain;
    made.push_back({broken(text, font, plan.width[i]),
                    {plan.left[i], 0, plan.width[i], 0},
                    alignment(plan.columns[i].align),
                    tick});
  }
  return made;
}

double high(const std::vector<Cell>& cells, double line) {
  double made = line;
  for (const Cell& cell : cells)
    made = std::max({made, static_cast<double>(cell.lines.size()) * line, cell.tick ? tick_side() : 0});
  return made;
}

void paint_cells(QPainter& painter, const std::vector<Cell>& cells, const QFont& font, const QRectF& room) {
  for (const Cell& cell : cells) {
    const QRectF at = cell.room.translated(room.left(), room.top());
    if (cell.tick)
      paint_tick_box(painter, at.topLeft());
    else
      paint_lines(painter, cell.lines, font, at, cell.align);
  }
}

// Lines between the columns of a row that a hand fills in.
void paint_partings(QPainter& painter, const std::vector<double>& left, const QRectF& where) {
  painter.setPen(ink_pen(0.12));
  for (std::size_t i = 1; i < left.size(); ++i) {
    const double x = where.left() + left[i] - between / 2;
    painter.drawLine(QPointF(x, where.top()), QPointF(x, where.bottom()));
  }
}

// `noted`: notes about it follow, so that no line parts it from them.
Slice row_slice(const Plan& plan, const Row& row, double room, bool last, bool noted) {
  const QFont font = plan.font(heavy(row));
  const auto cells = cells_of(plan, row, room);
  const double above = row.kind == Row::Kind::group ? mm(2.5) : row.kind == Row::Kind::note ? 0 : mm(0.9);
  const double below = noted ? mm(0.3) : mm(0.9);
  Slice made;
  made.height = above + high(cells, line_height(font)) + below;
  const bool written = plan.written && row.kind == Row::Kind::plain;
  if (written) made.height = std::max(made.height, written_row);
  made.with_next = row.kind == Row::Kind::group || (noted && row.kind != Row::Kind::note);
  made.paint = [cells, font, above, kind = row.kind, last, noted, written, left = plan.left](QPainter& painter,
                                                                                             const QRectF& where) {
    if (written) paint_partings(painter, left, where);
    const bool sum = kind == Row::Kind::sum || kind == Row::Kind::total;
    if (sum) {
      painter.setPen(ink_pen(kind == Row::Kind::total ? 0.6 : 0.3));
      painter.drawLine(where.topLeft(), where.topRight());
    }
    paint_cells(painter, cells, font, where.adjusted(0, above, 0, 0));
    if (kind == Row::Kind::total && last) {
      painter.setPen(ink_pen(0.3));
      for (const double up : {mm(0.1), mm(0.8)})
        painter.drawLine(where.bottomLeft() - QPointF(0, up), where.bottomRight() - QPointF(0, up));
    } else if (kind != Row::Kind::group && !sum && !noted) {
      painter.setPen(ink_pen(0.12));
      painter.drawLine(where.bottomLeft(), where.bottomRight());
    }
  };
  return made;
}

Slice head_slice(const Plan& plan) {
  const QFont bold = plan.font(true);
  std::vector<Cell> cells;
  for (std::size_t i = 0; i < plan.columns.size(); ++i)
    cells.push_back({broken(words(plan.columns[i].title), bold, plan.width[i]),
                     {plan.left[i], 0, plan.width[i], 0},
                     alignment(plan.columns[i].align)});
  Slice made;
  made.with_next = true;
  const double tall = high(cells, line_height(bold));
  made.height = tall + mm(2.4);
  made.paint = [cells, bold, tall](QPainter& painter, const QRectF& room) {
    for (const Cell& cell : cells) {
      const double down = tall - static_cast<double>(cell.lines.size()) * line_height(bold);
      paint_lines(painter, cell.lines, bold, cell.room.translated(room.left(), room.top() + mm(0.8) + down),
                  cell.align);
    }
    painter.setPen(ink_pen(0.5));
    painter.drawLine(room.bottomLeft() - QPointF(0, mm(0.6)), room.bottomRight() - QPointF(0, mm(0.6)));
  };
  return made;
}

}  // namespace

std::vector<Slice> table_slices(const sheets::Table& table, const Setting& setting) {
  const Plan plan = planned(table, setting.width);
  if (plan.columns.empty()) return {};
  std::vector<Slice> made;
  const bool titled =
      std::ranges::any_of(plan.columns, [](const sheets::Column& column) { return !column.title.empty(); });
  std::shared_ptr<const Slice> head;
  if (titled) {
    head = std::make_shared<const Slice>(head_slice(plan));
    made.push_back(*head);
  }
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    const bool last = i + 1 == table.rows.size();
    const bool noted = !last && table.rows[i + 1].kind == Row::Kind::note;
    Slice row = row_slice(plan, table.rows[i], setting.width, last, noted);
    if (i > 0) row.head = head;
    made.push_back(std::move(row));
  }
  // A sum is not alone on its page.
  for (std::size_t i = 1; i < table.rows.size(); ++i)
    if (table.rows[i].kind == Row::Kind::sum || table.rows[i].kind == Row::Kind::total)
      made[made.size() - table.rows.size() + i - 1].with_next = true;
  return made;
}

}  // namespace ui
