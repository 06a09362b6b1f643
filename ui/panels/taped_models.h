// The two tables of measuring in, over the job's tape book: the tapes as they were read, and the points that are known.
#pragma once

#include <optional>

#include "sketch/taped.h"
#include "ui/desk/desk.h"
#include "ui/panels/field_sheet.h"

namespace ui {

// The first tape book of the job, worked out. Edits go to the desk, each with its name; a job without a book gets one
// with the first edit.
class TapeDesk : public QObject {
  Q_OBJECT
 public:
  explicit TapeDesk(Desk& desk, QObject* parent = nullptr);
  const plan::TapeBook& book() const { return book_; }
  const sketch::Measured& measured() const { return measured_; }
  const sketch::Allowed& allowed() const { return allowed_; }
  units::System system() const { return desk_->units(); }
  Desk& desk() const { return *desk_; }
  void edit(plan::TapeBook book, const QString& name);

 signals:
  void changed();

 private:
  void follow();
  Desk* desk_;
  plan::ElementId id_;
  plan::TapeBook book_;
  sketch::Allowed allowed_;
  sketch::Measured measured_;
};

// Lengths as they are typed into both tables: a bare number is in feet (feet and inches) or metres.
SheetModel::Echo typed_length_echo(const QString& text, units::System system);
std::optional<units::Length> typed_length(const QString& text, units::System system);

class TapesModel : public SheetModel {
  Q_OBJECT
 public:
  enum Column { number, point, way, from, to, measure, offset, side, residual, state, columns };
  explicit TapesModel(TapeDesk& tapes, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : rows_ + 1; }
  int columnCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : columns; }
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  Echo echo(const QModelIndex& index, const QString& text) const override;
  bool wanted(const QModelIndex& index) const override;

  // Sorted once, when it is asked for: rows do not run away under the hand.
  void sort_worst_first(bool on);
  std::optional<std::size_t> tape_at(int row) const;  // its number in the book; none of the blank row
  void strike(int row, const QString& why);           // empty: it counts again
  void take_out(int row);

 private:
  void follow();
  QString shown(std::size_t tape, int column) const;
  QString state_of(std::size_t tape) const;
  QString typed(std::size_t tape, int column) const;
  TapeDesk& tapes_;
  int rows_ = 0;
  std::vector<std::size_t> order_;  // by row; empty: as typed
};

class KnownModel : public SheetModel {
  Q_OBJECT
 public:
  enum Column { name, east, north, columns };
  explicit KnownModel(TapeDesk& tapes, QObject* parent = nullptr);
  int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : rows_ + 1; }
  int columnCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : columns; }
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  Echo echo(const QModelIndex& index, const QString& text) const override;
  bool wanted(const QModelIndex&) const override { return true; }
  void add(const QString& name, geometry::Point at);
  void take_out(int row);

 private:
  void follow();
  TapeDesk& tapes_;
  int rows_ = 0;
};

}  // namespace ui
