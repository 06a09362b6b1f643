#include "ui/plan/site_plan_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QPointer>
#include <QThreadPool>
#include <algorithm>
#include <cmath>

#include "files/outlines_under.h"
#include "sketch/shapes.h"

namespace ui {

namespace {

constexpr int least_side = 512;  // px: copies are halved down to this

struct Said {
  Q_DECLARE_TR_FUNCTIONS(SitePlanFile)
};

std::unexpected<problem::Problem> fault(const char* code, const QString& name, const QString& text,
                                        const QString& mend) {
  problem::Place place;
  place.file = name.toStdString();
  return problem::fault(code, text.toStdString(), mend.toStdString(), place);
}

std::unexpected<problem::Problem> too_many_bytes(const QString& name, const LoadLimits& limits) {
  return fault("site-plan-big", name, Said::tr("the file has more than %1 million bytes").arg(limits.bytes / 1'000'000),
               Said::tr("save the plan with fewer pixels"));
}

enum class Sort { picture, pdf, outlines, unknown };
Sort sort_of(const QByteArray& bytes, const QString& name) {
  if (bytes.startsWith("\x89PNG\r\n\x1a\n") || bytes.startsWith("\xff\xd8\xff")) return Sort::picture;
  if (bytes.left(1024).contains("%PDF-")) return Sort::pdf;
  const QString ending = QFileInfo(name).suffix().toLower();
  const bool named =
      ending == QLatin1String("geojson") || ending == QLatin1String("json") || ending == QLatin1String("dxf");
  return named ? Sort::outlines : Sort::unknown;
}

std::vector<QImage> halved_copies(QImage whole) {
  std::vector<QImage> copies{std::move(whole)};
  while (std::max(copies.back().width(), copies.back().height()) > least_side) {
    const QSize half((copies.back().width() + 1) / 2, (copies.back().height() + 1) / 2);
    copies.push_back(copies.back().scaled(half, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
  }
  return copies;
}

// Arcs as chords of at most 5 degrees: finer than the eye sees under a drawing.
QPainterPath path_of_line(const plan::DrawnLine& line) {
  constexpr double metre = units::Length::steps_per_metre;
  const auto at = [](geometry::Point p, geometry::Vec by) {
    const geometry::Vec v = (p - geometry::Point()) + by;
    return QPointF(v.x / metre, v.y / metre);
  };
  QPainterPath path;
  for (const geometry::Curve& curve : sketch::drawn_curves(line)) {
    if (path.isEmpty()) path.moveTo(at(curve.start, {}));
    const int chords = curve.straight() ? 1 : static_cast<int>(std::ceil(std::abs(curve.sweep()) / 0.0873));
    for (int i = 1; i < chords; ++i) path.lineTo(at(curve.start, curve.at(double(i) / chords)));
    path.lineTo(at(curve.end, {}));
  }
  return path;
}

problem::Result<LoadedPlan> outlines(const QByteArray& bytes, const QString& name) {
  const std::string own = name.toStdString();
  const std::string_view text(bytes.constData(), static_cast<std::size_t>(bytes.size()));
  // A drawing names its unit itself; where it does not, and of GeoJSON on a plane, its numbers are taken for metres: it
  // gets its scale from two points and a length.
  auto lines = files::outlines_of(text, own, files::is_dxf(own) ? "" : "m");
  if (!lines && files::is_dxf(own))
    if (auto in_metres = files::outlines_of(text, own, "m")) lines = std::move(in_metres);
  if (!lines) return std::unexpected(lines.error());
  LoadedPlan made;
  for (const plan::DrawnLine& line : *lines) {
    QPainterPath path = path_of_line(line);
    if (path.isEmpty()) continue;
    made.bounds |= path.boundingRect();
    made.outlines.push_back(std::move(path));
  }
  if (made.outlines.empty())
    return fault("site-plan-empty", name, Said::tr("there are no outlines in the file"),
                 Said::tr("save the plan with its lines, or as a picture"));
  return made;
}

problem::Result<LoadedPlan> loaded(const QByteArray& bytes, const QString& name, int page, const LoadLimits& limits) {
  if (bytes.size() > limits.bytes) return too_many_bytes(name, limits);
  LoadedPlan made;
  switch (sort_of(bytes, name)) {
    case Sort::outlines: return outlines(bytes, name);
    case Sort::picture: {
      auto picture = read_picture(bytes, name, limits);
      if (!picture) return std::unexpected(picture.error());
      made.copies = halved_copies(std::move(*picture));
      return made;
    }
    case Sort::pdf: {
      auto drawn = draw_pdf_page(bytes, name, page, limits);
      if (!drawn) return std::unexpected(drawn.error());
      made.dots_per_inch = drawn->dots_per_inch;
      made.pages = drawn->pages;
      made.copies = halved_copies(std::move(drawn->picture));
      return made;
    }
    case Sort::unknown: break;
  }
  return fault("site-plan-unknown", name, Said::tr("the file is no picture, PDF or outline that can lie under a plan"),
               Said::tr("save it as PNG, JPEG, PDF, GeoJSON or DXF"));
}

}  // namespace

problem::Result<QByteArray> site_plan_bytes(const QString& path, const LoadLimits& limits) {
  const QString name = QFileInfo(path).fileName();
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    return fault("site-plan-unread", name, Said::tr("the file can't be opened"),
                 Said::tr("look at its name and whether you may read it"));
  if (file.size() > limits.bytes) return too_many_bytes(name, limits);
  return file.read(limits.bytes);
}

problem::Result<LoadedPlanPtr> load_site_plan(const QByteArray& bytes, const QString& name, int page,
                                              const LoadLimits& limits) {
  auto made = loaded(bytes, name, page, limits);
  if (!made) return std::unexpected(made.error());
  return std::make_shared<const LoadedPlan>(std::move(*made));
}

void load_site_plan_later(const QByteArray& bytes, const QString& name, int page, QObject* owner, PlanLoaded done,
                          const LoadLimits& limits) {
  // `owner` may go while the thread works. The answer goes by way of the application's own object, which asks on the
  // window's thread whether the owner is still there.
  const QPointer<QObject> asked = owner;
  QThreadPool::globalInstance()->start([bytes, name, page, asked, done = std::move(done), limits] {
    auto result = load_site_plan(bytes, name, page, limits);
    if (QCoreApplication::instance() == nullptr) return;
    QMetaObject::invokeMethod(
        QCoreApplication::instance(),
        [asked, done, result = std::move(result)] {
          if (asked) done(result);
        },
        Qt::QueuedConnection);
  });
}

}  // namespace ui
