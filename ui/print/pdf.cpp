#include "ui/print/pdf.h"

#include <QBuffer>
#include <QCryptographicHash>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QRegularExpression>

namespace ui {

namespace {

// Same length, so that the file's table of places stays right.
void overwrite(QByteArray& bytes, const QRegularExpression& what,
               const std::function<QByteArray(const QByteArray&)>& by) {
  // Latin 1 keeps every byte at its place.
  auto all = what.globalMatch(QString::fromLatin1(bytes));
  while (all.hasNext()) {
    const QRegularExpressionMatch found = all.next();
    const QByteArray old = found.captured(1).toLatin1();
    QByteArray fresh = by(old);
    fresh = fresh.leftJustified(old.size(), '0', true);
    bytes.replace(found.capturedStart(1), old.size(), fresh);
  }
}

QByteArray settled(QByteArray bytes, const std::string& date) {
  const QString digits = QString::fromStdString(date).remove('-');
  const QByteArray when = (digits.size() == 8 ? digits : QStringLiteral("20000101")).toLatin1() + "000000";
  static const QRegularExpression made(QStringLiteral("/CreationDate \\(D:(\\d{14}[^)]*)\\)"));
  overwrite(bytes, made, [&](const QByteArray& old) { return when + (old.size() > 14 ? "Z00'00'" : ""); });
  return bytes;
}

}  // namespace

QByteArray pdf_of(const LaidSheet& sheet, const sheets::Printed& printed) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_1_4);
    writer.setResolution(static_cast<int>(u_per_inch));
    const QSizeF size = sheet.page().size() / u_per_point;
    writer.setPageSize(QPageSize(size, QPageSize::Point, {}, QPageSize::ExactMatch));
    writer.setPageMargins(QMarginsF());
    writer.setTitle(words(sheet.sheet().title) + QStringLiteral(" · ") + words(printed.job().heading.name));
    writer.setCreator(QStringLiteral("Groundcourse"));
    QPainter painter(&writer);
    for (std::size_t i = 0; i < sheet.count(); ++i) {
      if (i > 0) writer.newPage();
      sheet.paint(painter, i);
    }
  }
  return settled(bytes, printed.date);
}

QImage picture_of(const LaidSheet& sheet, std::size_t page, double dots_per_inch) {
  const QSizeF size = sheet.page().size() / u_per_inch * dots_per_inch;
  QImage image(size.toSize(), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(dots_per_inch / u_per_inch, dots_per_inch / u_per_inch);
  sheet.paint(painter, page);
  return image;
}

}  // namespace ui
