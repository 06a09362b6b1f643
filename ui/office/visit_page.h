// The list of the site visit: the points by what the job has, and the one that is chosen with its answer. Each change
// is one edit of the job.
#pragma once

#include <QWidget>
#include <functional>

#include "estimate/visit.h"
#include "ui/desk/desk.h"

class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QTreeWidget;

namespace ui {

class VisitPage : public QWidget {
  Q_OBJECT
 public:
  // Keeps a picture's bytes and gives their SHA-256; empty: only the photo's file name is noted.
  using KeepBytes = std::function<std::string(const QByteArray&)>;
  // `today` is the date that a new answer gets, as 2026-11-28.
  VisitPage(Desk& desk, KeepBytes keep, QString today, QWidget* parent = nullptr);

  void choose(const std::string& point);
  std::string chosen() const;
  void take_photo(const QString& file);

 private:
  QWidget* make_detail();
  void refresh();
  void show_point();
  void give(const std::function<void(plan::VisitAnswer&)>& change);
  const estimate::VisitPoint* point() const;
  Desk& desk_;
  KeepBytes keep_;
  QString today_;
  std::vector<estimate::VisitPoint> points_;
  QTreeWidget* list_;
  QLabel* counted_ = nullptr;
  QLabel* question_ = nullptr;
  QLabel* caution_ = nullptr;
  QLabel* assumption_ = nullptr;
  QLabel* photo_ = nullptr;
  QLabel* wrong_ = nullptr;
  QPlainTextEdit* answer_ = nullptr;
  QLineEdit* when_ = nullptr;
  QPushButton* drop_photo_ = nullptr;
};

}  // namespace ui
