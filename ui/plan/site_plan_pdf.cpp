// A page of a PDF, drawn by programs that may not use more than they are given.
#include <QCoreApplication>
#include <QFile>
#include <QImageReader>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <optional>

#include "ui/plan/limited_run.h"
#include "ui/plan/site_plan_file.h"

namespace ui {

namespace {

constexpr double finest = 200;  // dots per inch: a tape's sixteenth at 1:100 is finer than any drawing
constexpr double points_per_inch = 72;

struct Said {
  Q_DECLARE_TR_FUNCTIONS(SitePlanFile)
};

std::unexpected<problem::Problem> fault(const char* code, const QString& name, const QString& text,
                                        const QString& mend) {
  problem::Place place;
  place.file = name.toStdString();
  return problem::fault(code, text.toStdString(), mend.toStdString(), place);
}

QString program(const char* name, const LoadLimits& limits) {
  return QStandardPaths::findExecutable(QString::fromLatin1(name), limits.programs_in);
}

std::unexpected<problem::Problem> not_drawn(const QString& name, const Ran& ran) {
  const QString instead = Said::tr("save the page as a PNG, or print it to a new PDF");
  if (!ran.in_time) return fault("site-plan-slow", name, Said::tr("the page takes too long to draw"), instead);
  if (ran.errors.contains("Incorrect password"))
    return fault("site-plan-locked", name, Said::tr("the PDF is locked with a password"),
                 Said::tr("save it without one"));
  if (ran.errors.contains("memory") || ran.errors.contains("bad_alloc"))
    return fault("site-plan-big", name, Said::tr("the page takes too much memory to draw"), instead);
  return fault("site-plan-broken", name, Said::tr("the PDF can't be read"), instead);
}

struct Pages {
  int count = 1;
  double longest = 0;  // side of the page, points
};
std::optional<Pages> read_pages(const QByteArray& told) {
  static const QRegularExpression count(QStringLiteral("^Pages:\\s+(\\d+)"), QRegularExpression::MultilineOption);
  static const QRegularExpression size(QStringLiteral("^Page.*size:\\s+([0-9.]+) x ([0-9.]+) pts"),
                                       QRegularExpression::MultilineOption);
  const QString text = QString::fromUtf8(told);
  const auto counted = count.match(text), sized = size.match(text);
  if (!counted.hasMatch()) return {};
  Pages pages{counted.captured(1).toInt(), 0};
  if (sized.hasMatch()) pages.longest = std::max(sized.captured(1).toDouble(), sized.captured(2).toDouble());
  return pages;
}

}  // namespace

problem::Result<DrawnPage> draw_pdf_page(const QByteArray& bytes, const QString& name, int page,
                                         const LoadLimits& limits) {
  const QString info = program("pdfinfo", limits), draw = program("pdftoppm", limits);
  if (info.isEmpty() || draw.isEmpty())
    return fault("site-plan-no-poppler", name, Said::tr("pages of a PDF are drawn by poppler-utils, which is not here"),
                 Said::tr("install poppler-utils, or save the page as a PNG"));
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("page.pdf"));
  QFile written(file);
  if (!folder.isValid() || !written.open(QIODevice::WriteOnly) || written.write(bytes) != bytes.size())
    return fault("site-plan-no-room", name, Said::tr("there is no room to unpack the PDF"),
                 Said::tr("make room on the disk"));
  written.close();

  const QString number = QString::number(page);
  const Ran counted = run_limited(info, {file}, limits, 1'000'000);
  const auto all = counted.well ? read_pages(counted.out) : std::nullopt;
  if (!all) return not_drawn(name, counted);
  if (page < 1 || page > all->count)
    return fault("site-plan-page", name, Said::tr("there is no page %1: the PDF has %2").arg(page).arg(all->count),
                 Said::tr("choose one of its pages"));
  const Ran sized =
      run_limited(info, {QStringLiteral("-f"), number, QStringLiteral("-l"), number, file}, limits, 1'000'000);
  const auto pages = sized.well ? read_pages(sized.out) : std::nullopt;
  if (!pages || pages->longest <= 0) return not_drawn(name, sized);

  // Even a square page stays within what may be drawn.
  const double longest_side = std::sqrt(static_cast<double>(limits.pixels)) - 2;
  DrawnPage made;
  made.pages = pages->count;
  made.dots_per_inch = std::min(finest, longest_side * points_per_inch / pages->longest);
  const QString out = folder.filePath(QStringLiteral("page"));
  const Ran drawn =
      run_limited(draw,
                  {QStringLiteral("-f"), number, QStringLiteral("-l"), number, QStringLiteral("-singlefile"),
                   QStringLiteral("-r"), QString::number(made.dots_per_inch, 'f', 4), file, out},
                  limits, limits.pixels * 3 + 1000);
  if (!drawn.well) return not_drawn(name, drawn);
  QImageReader reader(out + QStringLiteral(".ppm"));
  // Out of memory it says so, writes an empty picture and ends as if all were well.
  if (drawn.errors.contains("memory") || !reader.read(&made.picture) || made.picture.isNull())
    return not_drawn(name, drawn);
  made.picture.convertTo(QImage::Format_RGB32);
  return made;
}

}  // namespace ui
