// For those who use the keyboard and a reader of the screen: every part has a name and a role, and can be reached.
#include <gtest/gtest.h>

#include <QAbstractScrollArea>
#include <QAccessible>
#include <QAction>
#include <QSet>

#include "person.h"

namespace {

TEST(Access, thePlanTellsItsElementsWithNameKindAndSize) {
  person::Person who(person::job_of("pool-terrace-a"));
  ASSERT_TRUE(who.results());
  QAccessibleInterface* plan = QAccessible::queryAccessibleInterface(&who.window->plan());
  ASSERT_NE(plan, nullptr);
  ASSERT_EQ(plan->childCount(), static_cast<int>(who.desk.job().elements.size()));
  for (int i = 0; i < plan->childCount(); ++i) {
    QAccessibleInterface* child = plan->child(i);
    ASSERT_NE(child, nullptr);
    const plan::Element& element = *who.desk.job().elements[static_cast<std::size_t>(i)];
    EXPECT_TRUE(child->text(QAccessible::Name).startsWith(QString::fromStdString(element.id + ", ")))
        << child->text(QAccessible::Name).toStdString();
    EXPECT_EQ(child->role(), QAccessible::ListItem);
    EXPECT_EQ(plan->indexOfChild(child), i);
  }
  // A1 of the demo job: 50.9 m2 and more; its size stands in its name in square feet.
  for (int i = 0; i < plan->childCount(); ++i) {
    if (who.desk.job().elements[static_cast<std::size_t>(i)]->id == "A1") {
      const double feet = who.measure("A1", "net_area_m2") / (0.3048 * 0.3048);
      EXPECT_TRUE(plan->child(i)->text(QAccessible::Name).contains(QString::number(feet, 'f', 1)));
      plan->child(i)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
      EXPECT_EQ(who.desk.selected(), std::vector<plan::ElementId>{"A1"});
      EXPECT_TRUE(plan->child(i)->state().selected);
    }
  }
}

TEST(Access, everyWidgetThatTakesFocusHasANameToBeReadOut) {
  person::Person who(person::job_of("pool-terrace-a"));
  ASSERT_TRUE(who.results());
  for (const char* id : {"A1", "P", "RW", "S", "K1", "D1"}) {
    who.desk.select({id});
    QCoreApplication::processEvents();
    for (QWidget* widget : who.window->findChildren<QWidget*>()) {
      if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus) continue;
      QAccessibleInterface* access = QAccessible::queryAccessibleInterface(widget);
      ASSERT_NE(access, nullptr);
      // Parts of Qt's own that stand inside a named widget (a combo box's line, a table's viewport).
      if (widget->objectName().startsWith("qt_") || qobject_cast<QAbstractScrollArea*>(widget->parentWidget()))
        continue;
      EXPECT_FALSE(access->text(QAccessible::Name).isEmpty())
          << id << ": " << widget->metaObject()->className() << " '" << widget->objectName().toStdString() << "' in "
          << widget->parentWidget()->objectName().toStdString();
    }
  }
}

TEST(Access, everyActionHasANameAndNoTwoShareAKey) {
  person::Person who(person::empty_job());
  QMap<QString, QString> keys;
  QSet<QString> names;
  for (QAction* action : who.window->actions_by_id().all()) {
    EXPECT_FALSE(action->text().isEmpty()) << action->objectName().toStdString();
    EXPECT_FALSE(names.contains(action->objectName())) << action->objectName().toStdString();
    names.insert(action->objectName());
    for (const QKeySequence& key : action->shortcuts()) {
      ASSERT_FALSE(key.isEmpty()) << action->objectName().toStdString();
      EXPECT_FALSE(keys.contains(key.toString()))
          << key.toString().toStdString() << ": " << keys.value(key.toString()).toStdString() << " and "
          << action->objectName().toStdString();
      keys.insert(key.toString(), action->objectName());
    }
  }
}

TEST(Access, partsOfTheWindowAreReachedByF6) {
  person::Person who(person::job_of("bakery-court"));
  ASSERT_TRUE(who.results());
  QSet<QWidget*> reached;
  for (int i = 0; i < 12; ++i) {
    who.choose("next-part");
    reached.insert(QApplication::focusWidget());
  }
  EXPECT_GE(reached.size(), 5);
}

}  // namespace
