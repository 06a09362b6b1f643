// A picture of a stranger: its size out of its first bytes, its pixels by a program of its own.
#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "files/picture_header.h"
#include "ui/plan/limited_run.h"
#include "ui/plan/picture_file.h"
#include "ui/plan/site_plan_file.h"

namespace ui {

namespace {

struct Said {
  Q_DECLARE_TR_FUNCTIONS(SitePlanFile)
};

std::unexpected<problem::Problem> fault(const char* code, const QString& name, const QString& text,
                                        const QString& mend) {
  problem::Place place;
  place.file = name.toStdString();
  return problem::fault(code, text.toStdString(), mend.toStdString(), place);
}

QString child(const LoadLimits& limits) {
  const QStringList beside{QCoreApplication::applicationDirPath()};
  return QStandardPaths::findExecutable(QStringLiteral("groundcourse-picture"),
                                        limits.programs_in.isEmpty() ? beside : limits.programs_in);
}

// The picture itself, turned once and decoded in pieces, with what the program needs besides.
LoadLimits limits_for(qint64 pixels, qint64 bytes, LoadLimits limits) {
  constexpr qint64 besides = qint64{512} << 20;
  limits.memory_bytes = besides + bytes + 16 * pixels;
  return limits;
}

}  // namespace

problem::Result<QImage> read_picture(const QByteArray& bytes, const QString& name, const LoadLimits& limits) {
  const QString save = Said::tr("save it anew as a PNG");
  const auto header = files::picture_header({bytes.constData(), static_cast<std::size_t>(bytes.size())});
  if (!header) return fault("site-plan-broken", name, Said::tr("the picture can't be read"), save);
  const qint64 width = header->width, height = header->height;
  if (width > limits.pixels / height)
    return fault("site-plan-big", name,
                 Said::tr("the picture is %1 × %2 pixels, and at most %3 million can be shown")
                     .arg(QLocale().toString(width), QLocale().toString(height))
                     .arg(limits.pixels / 1'000'000),
                 Said::tr("save the plan with fewer pixels"));
  const QString program = child(limits);
  if (program.isEmpty())
    return fault("site-plan-no-reader", name,
                 Said::tr("pictures are read by groundcourse-picture, which is not beside this program"),
                 Said::tr("install the program anew"));
  const QTemporaryDir folder;
  const QString in = folder.filePath(QStringLiteral("picture")), out = folder.filePath(QStringLiteral("pixels"));
  QFile written(in);
  if (!folder.isValid() || !written.open(QIODevice::WriteOnly) || written.write(bytes) != bytes.size())
    return fault("site-plan-no-room", name, Said::tr("there is no room to unpack the picture"),
                 Said::tr("make room on the disk"));
  written.close();
  const Ran ran = run_limited(program, {in, out, QString::number(limits.pixels)},
                              limits_for(width * height, bytes.size(), limits), 4 * width * height + picture_file_head);
  if (!ran.in_time) return fault("site-plan-slow", name, Said::tr("the picture takes too long to read"), save);
  auto picture = ran.well ? read_picture_file(out, limits.pixels) : std::nullopt;
  if (!picture) return fault("site-plan-broken", name, Said::tr("the picture can't be read to its end"), save);
  return std::move(*picture);
}

}  // namespace ui
