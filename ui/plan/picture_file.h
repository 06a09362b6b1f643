// A picture as its bare pixels in a file: how the program that decodes strangers' pictures hands them over.
#pragma once

#include <QImage>
#include <QString>
#include <optional>

namespace ui {

// 4 bytes a pixel and 16 before the first.
inline constexpr qint64 picture_file_head = 16;

// False where it can't be written to its end.
bool write_picture_file(const QString& path, const QImage& picture);

// The picture, RGB32 or ARGB32_Premultiplied; nothing where the file is not one of these, whole, of at most so many
// pixels.
std::optional<QImage> read_picture_file(const QString& path, qint64 most_pixels);

}  // namespace ui
