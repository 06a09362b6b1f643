#include "ui/panels/taped_models.h"

#include <QFont>
#include <algorithm>

#include "ui/look/theme.h"
#include "ui/panels/length_field.h"

namespace ui {

using plan::Taped;

namespace {

QString text_of(const std::string& text) { return QString::fromStdString(text); }

// A word by its beginning, in either language.
bool begins(const QString& word, const QString& typed) {
  return !typed.isEmpty() && word.startsWith(typed, Qt::CaseInsensitive);
}

}  // namespace

TapesModel::TapesModel(TapeDesk& tapes, QObject* parent) : SheetModel(parent), tapes_(tapes) {
  rows_ = static_cast<int>(tapes.book().rows.size());
  connect(&tapes, &TapeDesk::changed, this, &TapesModel::follow);
}

void TapesModel::follow() {
  const int now = static_cast<int>(tapes_.book().rows.size());
  if (now != rows_ && now != static_cast<int>(order_.size())) {
    if (now > rows_ && !order_.empty())
      for (int row = rows_; row < now; ++row) order_.push_back(static_cast<std::size_t>(row));
    else
      order_.clear();
  }
  if (now > rows_) {
    beginInsertRows({}, rows_ + 1, now);
    rows_ = now;
    endInsertRows();
  } else if (now < rows_) {
    beginRemoveRows({}, now + 1, rows_);
    rows_ = now;
    endRemoveRows();
  }
  emit dataChanged(index(0, 0), index(rows_, columns - 1));
}

void TapesModel::sort_worst_first(bool on) {
  order_ = on ? tapes_.measured().worst_first : std::vector<std::size_t>{};
  emit dataChanged(index(0, 0), index(rows_, columns - 1));
}

std::optional<std::size_t> TapesModel::tape_at(int row) const {
  if (row < 0 || row >= rows_) return {};
  const auto at = static_cast<std::size_t>(row);
  return at < order_.size() ? order_[at] : at;
}

QVariant TapesModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case number: return tr("Tape");
    case point: return tr("Point");
    case way: return tr("Way");
    case from: return tr("From");
    case to: return tr("To");
    case measure: return tr("Reads");
    case offset: return tr("Offset");
    case side: return tr("Side");
    case residual: return tr("Off");
    default: return tr("State");
  }
}

Qt::ItemFlags TapesModel::flags(const QModelIndex& index) const {
  const Qt::ItemFlags seen = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  return wanted(index) ? seen | Qt::ItemIsEditable : seen;
}

bool TapesModel::wanted(const QModelIndex& index) const {
  const int column = index.column();
  if (column == number || column >= residual) return false;
  if (column != to && column != offset) return true;
  const auto tape = tape_at(index.row());
  return tape && tapes_.book().rows[*tape].way == Taped::Way::offset;
}

QString TapesModel::state_of(std::size_t tape) const {
  const Taped& row = tapes_.book().rows[tape];
  const sketch::RowFit& fit = tapes_.measured().rows[tape];
  const auto& suspect = tapes_.measured().suspect;
  if (!row.struck.empty()) return tr("struck out: %1").arg(text_of(row.struck));
  if (!fit.residual) {
    const bool full = !row.point.empty() && !row.from.empty() && (row.way == Taped::Way::tie || !row.to.empty());
    return full && row.measure > units::Length() ? tr("point not found") : tr("to fill in");
  }
  if (suspect && suspect->rows.front() == tape && suspect->rows.size() == 1)
    return tr("off by %1").arg(shown_length(std::max(suspect->off, -suspect->off), tapes_.system()));
  if (fit.over) return tr("disagrees");
  return fit.checked ? tr("agrees") : tr("no check");
}

QString TapesModel::typed(std::size_t tape, int column) const {
  const Taped& row = tapes_.book().rows[tape];
  const auto full = [&](units::Length length) {
    return QString::fromStdString(units::write_length(length, tapes_.system()));
  };
  switch (column) {
    case point: return text_of(row.point);
    case way: return row.way == Taped::Way::tie ? tr("tie") : tr("offset");
    case from: return text_of(row.from);
    case to: return text_of(row.to);
    case measure: return row.measure == units::Length() && row.way == Taped::Way::tie ? QString() : full(row.measure);
    case offset: return full(row.offset);
    case side: return row.side == geometry::Side::left ? tr("left") : tr("right");
    default: return {};
  }
}

QString TapesModel::shown(std::size_t tape, int column) const {
  const Taped& row = tapes_.book().rows[tape];
  const sketch::RowFit& fit = tapes_.measured().rows[tape];
  const auto length = [&](units::Length value) { return shown_length(value, tapes_.system(), Measure::distance); };
  switch (column) {
    case number: return QString::number(tape + 1);
    case to: return row.way == Taped::Way::tie ? QString() : text_of(row.to);
    case measure: return typed(tape, column).isEmpty() ? QString() : length(row.measure);
    case offset: return row.way == Taped::Way::tie ? QString() : length(row.offset);
    case residual: {
      if (!fit.residual) return {};
      const units::Length most = fit.size();
      const bool less = *fit.residual == -most || fit.across == -most;
      const QString size = shown_length(most, tapes_.system());
      return most == units::Length() ? size : (less ? QStringLiteral("−") : QStringLiteral("+")) + size;
    }
    case state: return state_of(tape);
    default: return typed(tape, column);
  }
}

QVariant TapesModel::data(const QModelIndex& index, int role) const {
  const auto tape = tape_at(index.row());
  if (!tape) return role == Qt::DisplayRole && index.column() == number ? QVariant(QStringLiteral("+")) : QVariant();
  const bool struck = !tapes_.book().rows[*tape].struck.empty();
  const bool over = tapes_.measured().rows[*tape].over;
  switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole: return shown(*tape, index.column());
    case Qt::EditRole: return typed(*tape, index.column());
    case Qt::TextAlignmentRole: {
      const bool figure = index.column() == measure || index.column() == offset || index.column() == residual;
      return int((figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    case Qt::ForegroundRole: return over ? theme().flag : struck ? theme().ink3 : theme().ink;
    case Qt::FontRole: {
      QFont own = ui::font(Type::text, over && index.column() >= residual);
      own.setStrikeOut(struck && index.column() < residual);
      return own;
    }
    default: return {};
  }
}

SheetModel::Echo TapesModel::echo(const QModelIndex& index, const QString& text) const {
  const QString word = text.trimmed();
  switch (index.column()) {
    case measure:
    case offset: return typed_length_echo(text, tapes_.system());
    case way:
      if (word.isEmpty() || begins(tr("tie"), word) || begins(tr("offset"), word)) return {};
      return {tr("the way is a tie or an offset: type t or o"), true};
    case side:
      if (word.isEmpty() || begins(tr("left"), word) || begins(tr("right"), word)) return {};
      return {tr("the side is left or right: type l or r"), true};
    default: return {};
  }
}

bool TapesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const QString text = value.toString().trimmed();
  const auto tape = tape_at(index.row());
  if (role != Qt::EditRole || (!tape && text.isEmpty()) || echo(index, text).wrong) return false;
  plan::TapeBook book = tapes_.book();
  if (!tape) {
    // Goes on as the row before it.
    Taped row;
    if (!book.rows.empty()) {
      row.way = book.rows.back().way;
      row.side = book.rows.back().side;
      if (row.way == Taped::Way::offset)
        std::tie(row.from, row.to) = std::pair(book.rows.back().from, book.rows.back().to);
    }
    book.rows.push_back(row);
  }
  const std::size_t at = tape.value_or(book.rows.size() - 1);
  Taped& row = book.rows[at];
  const auto length = typed_length(text, tapes_.system());
  switch (index.column()) {
    case point: row.point = text.toStdString(); break;
    case from: row.from = text.toStdString(); break;
    case to: row.to = text.toStdString(); break;
    case way:
      if (!text.isEmpty()) row.way = begins(tr("tie"), text) ? Taped::Way::tie : Taped::Way::offset;
      break;
    case side:
      if (!text.isEmpty()) row.side = begins(tr("left"), text) ? geometry::Side::left : geometry::Side::right;
      break;
    case measure:
      if (length) row.measure = *length;
      break;
    case offset:
      if (length) row.offset = *length;
      break;
    default: return false;
  }
  tapes_.edit(std::move(book), tr("Type tape %1").arg(at + 1));
  return true;
}

void TapesModel::strike(int row, const QString& why) {
  const auto tape = tape_at(row);
  if (!tape) return;
  plan::TapeBook book = tapes_.book();
  book.rows[*tape].struck = why.trimmed().toStdString();
  tapes_.edit(std::move(book), (why.isEmpty() ? tr("Count tape %1 again") : tr("Strike out tape %1")).arg(*tape + 1));
}

void TapesModel::take_out(int row) {
  const auto tape = tape_at(row);
  if (!tape) return;
  plan::TapeBook book = tapes_.book();
  book.rows.erase(book.rows.begin() + static_cast<std::ptrdiff_t>(*tape));
  tapes_.edit(std::move(book), tr("Take out tape %1").arg(*tape + 1));
}

}  // namespace ui
