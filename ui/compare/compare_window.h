// Two versions of a job side by side: what differs in the drawing, line by line, and in the price.
#pragma once

#include <QDialog>
#include <memory>

#include "estimate/compare.h"
#include "plan/differences.h"

class QTreeWidget;

namespace ui {

struct Version {
  std::shared_ptr<const plan::Job> job;
  estimate::Kept kept;
  QString name;
  std::int64_t id = 0;  // in the book; 0: it is not kept there
};

// Reads what it is given and changes nothing. Text and CSV are saved where the person says. A change order is made of
// two versions that the book keeps, and of nothing else: what it says must be found again.
class CompareWindow : public QDialog {
  Q_OBJECT
 public:
  CompareWindow(const Version& before, const Version& after, QWidget* parent = nullptr);

  const estimate::Comparison& comparison() const { return comparison_; }
  QString total_words() const;
  std::string text() const;
  std::string csv() const;

 signals:
  void change_order(qint64 before, qint64 after);  // of two versions of the book

 private:
  QTreeWidget* lines();
  QTreeWidget* price();
  QTreeWidget* drawing();
  QWidget* head();
  QWidget* foot();
  void save(const QString& title, const QString& ending, const std::string& text);
  QString money(units::Money money) const;
  QString by(units::Money money) const;  // with its sign
  Version before_;
  Version after_;
  estimate::Comparison comparison_;
  plan::Differences differences_;
};

// Opens it, not modal; it deletes itself when closed.
CompareWindow* show_comparison(const Version& before, const Version& after, QWidget* parent);

}  // namespace ui
