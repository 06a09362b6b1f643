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
};

// Reads what it is given and changes nothing. Text and CSV are saved where the person says.
class CompareWindow : public QDialog {
  Q_OBJECT
 public:
  CompareWindow(const Version& before, const Version& after, QWidget* parent = nullptr);

  const estimate::Comparison& comparison() const { return comparison_; }
  QString total_words() const;
  std::string text() const;
  std::string csv() const;

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
