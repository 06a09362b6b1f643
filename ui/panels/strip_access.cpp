// The order of work for those who can't see it: a list of nine, each with its number, name, cost, hours and what is to
// solve in it.
#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>
#include <array>

#include "ui/panels/strip.h"

namespace ui {

namespace {

class CellAccess : public QAccessibleInterface, public QAccessibleActionInterface {
 public:
  CellAccess(Strip* strip, int index) : strip_(strip), index_(index) {}
  bool isValid() const override { return strip_ != nullptr; }
  QObject* object() const override { return nullptr; }
  QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(strip_); }
  QAccessibleInterface* child(int) const override { return nullptr; }
  QAccessibleInterface* childAt(int, int) const override { return nullptr; }
  int childCount() const override { return 0; }
  int indexOfChild(const QAccessibleInterface*) const override { return -1; }
  QAccessible::Role role() const override { return QAccessible::ListItem; }
  QString text(QAccessible::Text which) const override {
    if (!strip_) return {};
    const StripCell& cell = strip_->cells()[static_cast<std::size_t>(index_)];
    const QString all = strip_cell_told(index_ + 1, cell);
    const QString name = QStringLiteral("%1, %2").arg(index_ + 1).arg(cell.name);
    if (which == QAccessible::Name) return name;
    return which == QAccessible::Value ? all.mid(name.size() + 2) : QString();
  }
  void setText(QAccessible::Text, const QString&) override {}
  QRect rect() const override {
    if (!strip_) return {};
    const QRect inside = strip_->cell(index_).toRect();
    return {strip_->mapToGlobal(inside.topLeft()), inside.size()};
  }
  QAccessible::State state() const override {
    QAccessible::State state;
    state.selectable = true;
    state.selected = strip_ && strip_->shown() == takeoff::all_stages[static_cast<std::size_t>(index_)];
    return state;
  }
  void* interface_cast(QAccessible::InterfaceType type) override {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
  }
  QStringList actionNames() const override { return {pressAction()}; }
  void doAction(const QString& action) override {
    if (action == pressAction() && strip_) strip_->choose(index_);
  }
  QStringList keyBindingsForAction(const QString&) const override { return {}; }

 private:
  QPointer<Strip> strip_;
  int index_;
};

class StripAccess : public QAccessibleWidget {
 public:
  explicit StripAccess(Strip* strip) : QAccessibleWidget(strip, QAccessible::List, strip->accessibleName()) {
    for (int i = 0; i < static_cast<int>(stage_count); ++i)
      cells_[static_cast<std::size_t>(i)] = QAccessible::registerAccessibleInterface(new CellAccess(strip, i));
  }
  ~StripAccess() override {
    for (const QAccessible::Id id : cells_) QAccessible::deleteAccessibleInterface(id);
  }
  StripAccess(const StripAccess&) = delete;
  StripAccess& operator=(const StripAccess&) = delete;
  int childCount() const override { return static_cast<int>(stage_count); }
  QAccessibleInterface* child(int index) const override {
    if (index < 0 || index >= childCount()) return nullptr;
    return QAccessible::accessibleInterface(cells_[static_cast<std::size_t>(index)]);
  }
  int indexOfChild(const QAccessibleInterface* child) const override {
    for (int i = 0; i < childCount(); ++i) {
      if (this->child(i) == child) return i;
    }
    return -1;
  }

 private:
  std::array<QAccessible::Id, stage_count> cells_{};
};

QAccessibleInterface* make_access(const QString&, QObject* object) {
  auto* strip = qobject_cast<Strip*>(object);
  return strip != nullptr ? new StripAccess(strip) : nullptr;
}

}  // namespace

void install_strip_access() {
  static const bool once = [] {
    QAccessible::installFactory(make_access);
    return true;
  }();
  (void)once;
}

}  // namespace ui
