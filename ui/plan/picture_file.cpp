#include "ui/plan/picture_file.h"

#include <QFile>
#include <array>
#include <cstring>

namespace ui {

namespace {

constexpr std::uint32_t mark = 0x47435058;
using Head = std::array<std::uint32_t, 4>;  // mark, width, height, whether pixels may be clear
static_assert(sizeof(Head) == picture_file_head);

}  // namespace

bool write_picture_file(const QString& path, const QImage& picture) {
  const bool clear = picture.hasAlphaChannel();
  const QImage plain = picture.convertToFormat(clear ? QImage::Format_ARGB32_Premultiplied : QImage::Format_RGB32);
  QFile file(path);
  if (plain.isNull() || !file.open(QIODevice::WriteOnly)) return false;
  const Head head{mark, static_cast<std::uint32_t>(plain.width()), static_cast<std::uint32_t>(plain.height()),
                  clear ? 1u : 0u};
  if (file.write(reinterpret_cast<const char*>(head.data()), picture_file_head) != picture_file_head) return false;
  const qint64 row = qint64{4} * plain.width();
  for (int y = 0; y < plain.height(); ++y)
    if (file.write(reinterpret_cast<const char*>(plain.constScanLine(y)), row) != row) return false;
  return file.flush();
}

std::optional<QImage> read_picture_file(const QString& path, qint64 most_pixels) {
  QFile file(path);
  Head head{};
  if (!file.open(QIODevice::ReadOnly) ||
      file.read(reinterpret_cast<char*>(head.data()), picture_file_head) != picture_file_head || head[0] != mark)
    return {};
  const qint64 width = head[1], height = head[2], row = 4 * width;
  if (width < 1 || height < 1 || width > most_pixels || height > most_pixels / width ||
      file.size() != picture_file_head + row * height)
    return {};
  QImage picture(static_cast<int>(width), static_cast<int>(height),
                 head[3] != 0 ? QImage::Format_ARGB32_Premultiplied : QImage::Format_RGB32);
  if (picture.isNull()) return {};
  for (int y = 0; y < picture.height(); ++y)
    if (file.read(reinterpret_cast<char*>(picture.scanLine(y)), row) != row) return {};
  return picture;
}

}  // namespace ui
