// The site plans of the open job, loaded once each and painted under the drawing.
#pragma once

#include <QObject>
#include <functional>
#include <map>

#include "plan/taped.h"
#include "ui/desk/desk.h"
#include "ui/paint/figure_painter.h"
#include "ui/plan/site_plan_file.h"

namespace ui {

class PlanView;

class SitePlans : public QObject {
  Q_OBJECT
 public:
  // `body` gives the bytes that the job book keeps under a SHA-256. A plan's file is "SHA-256/NAME" of such bytes, or
  // the path of a file.
  SitePlans(Desk& desk, PlanView& view, std::function<QByteArray(const std::string&)> body);

  // Loads the bytes; when that is done the plan becomes an element in the middle of the view and `told` gets an empty
  // sentence, else what is wrong.
  void bring_in(plan::SitePlan plan, const QByteArray& bytes, std::function<void(const QString&)> told);
  bool loaded(const plan::ElementId& id) const;

 private:
  void follow_job();
  void load(const std::string& file, int page);
  QRectF room() const;  // of all that are loaded, metres
  void paint(QPainter& painter, const Sight& sight, const QRectF& clip) const;
  using Key = std::pair<std::string, int>;  // file and page
  Desk* desk_;
  PlanView* view_;
  std::function<QByteArray(const std::string&)> body_;
  std::map<Key, LoadedPlanPtr> loaded_;  // null while it is loading, or when it can't be
};

}  // namespace ui
