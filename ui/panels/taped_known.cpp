// The tape book as the desk has it, and the table of known points.
#include "plan/edits.h"
#include "sketch/fields.h"
#include "ui/panels/length_field.h"
#include "ui/panels/taped_models.h"

namespace ui {

SheetModel::Echo typed_length_echo(const QString& text, units::System system) {
  if (text.trimmed().isEmpty()) return {};
  const auto read = units::read_length(text.toStdString(), sketch::bare(system));
  if (read) return {shown_length(*read, system, Measure::distance), false};
  return {QString::fromStdString(read.error().text + "; " + read.error().mend), true};
}

std::optional<units::Length> typed_length(const QString& text, units::System system) {
  const auto read = units::read_length(text.toStdString(), sketch::bare(system));
  return read ? std::optional(*read) : std::nullopt;
}

TapeDesk::TapeDesk(Desk& desk, QObject* parent) : QObject(parent), desk_(&desk) {
  connect(&desk, &Desk::job_changed, this, &TapeDesk::follow);
  follow();
}

void TapeDesk::follow() {
  id_.clear();
  book_ = {};
  for (const plan::ElementPtr& element : desk_->job().elements)
    if (const auto* book = std::get_if<plan::TapeBook>(&element->kind); book != nullptr && id_.empty()) {
      id_ = element->id;
      book_ = *book;
    }
  allowed_ = sketch::allowed(*desk_->job().catalogue);
  measured_ = sketch::measured(book_, system(), allowed_);
  emit changed();
}

void TapeDesk::edit(plan::TapeBook book, const QString& name) {
  const plan::Job& job = desk_->job();
  const plan::Element* there = id_.empty() ? nullptr : job.find(id_);
  plan::Element element = there != nullptr ? *there : plan::Element{plan::free_id(job, plan::Kind(book)), {}, {}};
  element.kind = std::move(book);
  desk_->edit(plan::with(job, std::move(element)), name);
}

KnownModel::KnownModel(TapeDesk& tapes, QObject* parent) : SheetModel(parent), tapes_(tapes) {
  rows_ = static_cast<int>(tapes.book().known.size());
  connect(&tapes, &TapeDesk::changed, this, &KnownModel::follow);
}

void KnownModel::follow() {
  const int now = static_cast<int>(tapes_.book().known.size());
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

QVariant KnownModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  return section == name ? tr("Point") : section == east ? tr("East") : tr("North");
}

Qt::ItemFlags KnownModel::flags(const QModelIndex&) const {
  return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable;
}

QVariant KnownModel::data(const QModelIndex& index, int role) const {
  if (index.row() >= rows_) return {};
  const plan::KnownPoint& known = tapes_.book().known[static_cast<std::size_t>(index.row())];
  if (role == Qt::TextAlignmentRole)
    return int((index.column() == name ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
  if (index.column() == name) return QString::fromStdString(known.name);
  const units::Length place = index.column() == east ? known.at.x : known.at.y;
  return role == Qt::EditRole ? QString::fromStdString(units::write_length(place, tapes_.system()))
                              : shown_length(place, tapes_.system(), Measure::distance);
}

SheetModel::Echo KnownModel::echo(const QModelIndex& index, const QString& text) const {
  if (index.column() != name) return typed_length_echo(text, tapes_.system());
  const auto& known = tapes_.book().known;
  for (std::size_t i = 0; i < known.size(); ++i)
    if (static_cast<int>(i) != index.row() && QString::fromStdString(known[i].name) == text.trimmed())
      return {tr("there is a known point of that name: type another"), true};
  return {};
}

bool KnownModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const QString text = value.toString().trimmed();
  if (role != Qt::EditRole || text.isEmpty() || echo(index, text).wrong) return false;
  plan::TapeBook book = tapes_.book();
  if (index.row() >= rows_) book.known.push_back({});
  plan::KnownPoint& known = book.known[static_cast<std::size_t>(index.row())];
  const auto length = typed_length(text, tapes_.system());
  if (index.column() == name) known.name = text.toStdString();
  if (index.column() == east && length) known.at.x = *length;
  if (index.column() == north && length) known.at.y = *length;
  const QString said = tr("Known point %1").arg(QString::fromStdString(known.name));
  tapes_.edit(std::move(book), said);
  return true;
}

void KnownModel::add(const QString& called, geometry::Point at) {
  plan::TapeBook book = tapes_.book();
  book.known.push_back({called.toStdString(), at});
  tapes_.edit(std::move(book), tr("Known point %1").arg(called));
}

void KnownModel::take_out(int row) {
  if (row < 0 || row >= rows_) return;
  plan::TapeBook book = tapes_.book();
  const QString called = QString::fromStdString(book.known[static_cast<std::size_t>(row)].name);
  book.known.erase(book.known.begin() + row);
  tapes_.edit(std::move(book), tr("Take out known point %1").arg(called));
}

}  // namespace ui
