// The plan for those who can't see it: a list of its elements, each with its name, kind, size and material.
#include <QAccessible>
#include <QAccessibleWidget>
#include <QCoreApplication>
#include <QPointer>
#include <algorithm>
#include <map>

#include "ui/plan/plan_view.h"

namespace ui {

namespace {

// "A1, pool deck, paved area, net area 741.9 ft2"
QString told(const Desk& desk, const plan::Element& element) {
  QStringList parts{QString::fromStdString(element.id)};
  if (!element.name.empty()) parts << QString::fromStdString(element.name);
  parts << QCoreApplication::translate("kinds", plan::kind_name(element.kind).c_str());
  const ResultsPtr results = desk.results();
  if (results) {
    for (const takeoff::Measures& measures : results->takeoff.measures) {
      if (measures.element != element.id) continue;
      const bool us = desk.units() == units::System::us;
      if (const auto area = measures.get("net_area_m2")) {
        const double shown = us ? *area / (0.3048 * 0.3048) : *area;
        parts
            << PlanView::tr("net area %1 %2").arg(shown, 0, 'f', 1).arg(us ? PlanView::tr("ft²") : PlanView::tr("m²"));
      } else if (const auto length = measures.get("length_m")) {
        const double shown = us ? *length / 0.3048 : *length;
        parts << PlanView::tr("length %1 %2").arg(shown, 0, 'f', 1).arg(us ? PlanView::tr("ft") : PlanView::tr("m"));
      }
    }
  }
  return parts.join(QStringLiteral(", "));
}

class PlanAccess;

class ElementAccess : public QAccessibleInterface, public QAccessibleActionInterface {
 public:
  ElementAccess(PlanView* view, plan::ElementId id) : view_(view), id_(std::move(id)) {}
  bool isValid() const override { return view_ != nullptr && element() != nullptr; }
  QObject* object() const override { return nullptr; }
  QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(view_); }
  QAccessibleInterface* child(int) const override { return nullptr; }
  QAccessibleInterface* childAt(int, int) const override { return nullptr; }
  int childCount() const override { return 0; }
  int indexOfChild(const QAccessibleInterface*) const override { return -1; }
  QAccessible::Role role() const override { return QAccessible::ListItem; }
  QString text(QAccessible::Text which) const override {
    if (!isValid() || which != QAccessible::Name) return {};
    return told(view_->desk(), *element());
  }
  void setText(QAccessible::Text, const QString&) override {}
  QRect rect() const override {
    if (!isValid()) return {};
    const QRect inside = view_->rect_of(id_);
    return {view_->mapToGlobal(inside.topLeft()), inside.size()};
  }
  QAccessible::State state() const override {
    QAccessible::State state;
    state.selectable = true;
    state.selected = isValid() && std::ranges::count(view_->desk().selected(), id_) > 0;
    return state;
  }
  void* interface_cast(QAccessible::InterfaceType type) override {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
  }
  QStringList actionNames() const override { return {pressAction()}; }
  void doAction(const QString& action) override {
    if (action == pressAction() && isValid()) view_->select_element(id_);
  }
  QStringList keyBindingsForAction(const QString&) const override { return {}; }

 private:
  const plan::Element* element() const { return view_->desk().job().find(id_); }
  QPointer<PlanView> view_;
  plan::ElementId id_;
};

class PlanAccess : public QAccessibleWidget {
 public:
  explicit PlanAccess(PlanView* view)
      : QAccessibleWidget(view, QAccessible::List, view->accessibleName()), view_(view) {}
  ~PlanAccess() override {
    for (const auto& [id, key] : made_) QAccessible::deleteAccessibleInterface(key);
  }
  PlanAccess(const PlanAccess&) = delete;
  PlanAccess& operator=(const PlanAccess&) = delete;
  int childCount() const override { return static_cast<int>(view_->desk().job().elements.size()); }
  QAccessibleInterface* child(int index) const override {
    const auto& elements = view_->desk().job().elements;
    if (index < 0 || static_cast<std::size_t>(index) >= elements.size()) return nullptr;
    const plan::ElementId& id = elements[static_cast<std::size_t>(index)]->id;
    auto found = made_.find(id);
    if (found == made_.end()) {
      const auto key = QAccessible::registerAccessibleInterface(new ElementAccess(view_, id));
      found = made_.emplace(id, key).first;
    }
    return QAccessible::accessibleInterface(found->second);
  }
  int indexOfChild(const QAccessibleInterface* child) const override {
    for (int i = 0; i < childCount(); ++i) {
      if (this->child(i) == child) return i;
    }
    return -1;
  }

 private:
  PlanView* view_;
  mutable std::map<plan::ElementId, QAccessible::Id> made_;  // Qt owns the interfaces and asks for the same ones again
};

QAccessibleInterface* make_access(const QString&, QObject* object) {
  auto* view = qobject_cast<PlanView*>(object);
  return view != nullptr ? new PlanAccess(view) : nullptr;
}

}  // namespace

void install_plan_access() {
  static const bool once = [] {
    QAccessible::installFactory(make_access);
    return true;
  }();
  (void)once;
}

}  // namespace ui
