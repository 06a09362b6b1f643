// Names of any kind stand in the window as they were typed: no mark-up of them is obeyed, none breaks a pattern or the
// window's own words, and they go through the desk unchanged.
#include <QAbstractButton>
#include <QLabel>
#include <set>

#include "person.h"

namespace {

// A name that would be seen as mark-up by whoever is not told that it is plain.
constexpr const char* mark_up = "<b>Bold</b><br>two";

std::vector<std::string> odd_names() {
  return {"'; DROP TABLE jobs; --",
          "%s%n%1 %2",
          mark_up,
          std::string(1'000, 'x'),
          "\xE2\x80\xAE right to left \xE2\x80\xAC",
          "\xD9\x85\xD8\xB3\xD8\xA8\xD8\xAD &amp; I \xC4\xB0 \xC4\xB1",
          "tab\tand\nline"};
}

plan::Job named(const std::string& name) {
  plan::Job job = person::job_of("bakery-court");
  job.heading.name = job.heading.customer = job.heading.place = job.heading.notes = name;
  for (plan::ElementPtr& element : job.elements) {
    plan::Element renamed = *element;
    renamed.name = name;
    element = std::make_shared<const plan::Element>(std::move(renamed));
  }
  return job;
}

// What the window obeys as mark-up although it holds the name.
QStringList obeyed(const QWidget& window) {
  QStringList found;
  const QString name = QString::fromUtf8(mark_up);
  for (const QLabel* label : window.findChildren<QLabel*>()) {
    const bool rich = label->textFormat() == Qt::RichText ||
                      (label->textFormat() == Qt::AutoText && Qt::mightBeRichText(label->text()));
    if (label->text().contains(name) && rich) found << "label " + label->objectName() + ": " + label->text().left(80);
  }
  for (const QWidget* widget : window.findChildren<QWidget*>())
    if (widget->toolTip().contains(name) && Qt::mightBeRichText(widget->toolTip()))
      found << "tip of " + widget->objectName() + " " + widget->metaObject()->className();
  return found;
}

TEST(Names, OfAnyKindAreShownAsTheyAre) {
  for (const std::string& name : odd_names()) {
    person::Person who(named(name));
    ASSERT_TRUE(who.results()) << name.substr(0, 40);
    std::set<std::size_t> kinds;  // one element of each
    for (const plan::ElementPtr& element : who.desk.job().elements) {
      if (!kinds.insert(element->kind.index()).second) continue;
      who.desk.select({element->id});
      QCoreApplication::processEvents();
      const QStringList marked = obeyed(*who.window);
      EXPECT_TRUE(marked.isEmpty()) << marked.join("\n").toStdString();
      if (!marked.isEmpty()) break;
    }
    EXPECT_FALSE(who.window->grab().isNull());
    EXPECT_EQ(who.desk.job().heading.name, name);
    const std::string text = files::write_job(who.desk.job());
    EXPECT_TRUE(plan::same(files::read_job(text, "again").value(), who.desk.job())) << name.substr(0, 40);
  }
}

}  // namespace
