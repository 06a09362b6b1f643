#include "files/picture_header.h"

#include <optional>
#include <string>

namespace files {

namespace {

constexpr std::string_view png_signature("\x89PNG\r\n\x1a\n", 8);
constexpr int most_segments = 1000;

std::unexpected<problem::Problem> refuse(const std::string& what) {
  return problem::fault("picture-header", what, "save it anew as a PNG");
}

// Big-endian, as both forms have it; nothing past the end.
std::optional<std::uint32_t> number(std::string_view bytes, std::size_t at, std::size_t count) {
  if (at + count > bytes.size()) return std::nullopt;
  std::uint32_t made = 0;
  for (std::size_t i = 0; i < count; ++i) made = made << 8 | static_cast<unsigned char>(bytes[at + i]);
  return made;
}

bool depth_fits(std::uint32_t depth, std::uint32_t colour) {
  const bool power = depth == 1 || depth == 2 || depth == 4 || depth == 8 || depth == 16;
  switch (colour) {
    case 0: return power;                 // grey
    case 3: return power && depth != 16;  // palette
    case 2:
    case 4:
    case 6: return depth == 8 || depth == 16;
    default: return false;
  }
}

problem::Result<PictureHeader> png(std::string_view bytes) {
  const auto length = number(bytes, 8, 4), width = number(bytes, 16, 4), height = number(bytes, 20, 4);
  const auto depth = number(bytes, 24, 1), colour = number(bytes, 25, 1);
  if (!colour || bytes.substr(12, 4) != "IHDR" || *length != 13) return refuse("the picture does not say its size");
  if (*width == 0 || *height == 0 || *width > 0x7FFFFFFF || *height > 0x7FFFFFFF)
    return refuse("the picture says a size that none has");
  if (!depth_fits(*depth, *colour)) return refuse("the picture says colours that none has");
  return PictureHeader{PictureForm::png, *width, *height};
}

// Start of frame: baseline, extended, progressive. Others are lossless or arithmetic, which no plan is saved in.
bool is_frame(std::uint32_t marker) { return marker >= 0xC0 && marker <= 0xC2; }
bool is_other_frame(std::uint32_t marker) {
  return marker >= 0xC3 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
}

problem::Result<PictureHeader> frame(std::string_view bytes, std::size_t at) {
  const auto height = number(bytes, at + 3, 2), width = number(bytes, at + 5, 2);
  if (!width) return refuse("the picture does not say its size");
  if (*width == 0 || *height == 0) return refuse("the picture says a size that none has");
  return PictureHeader{PictureForm::jpeg, *width, *height};
}

problem::Result<PictureHeader> jpeg(std::string_view bytes) {
  std::size_t at = 2;  // behind the start of the image
  for (int segments = 0; segments < most_segments; ++segments) {
    while (number(bytes, at, 1) == 0xFFu && number(bytes, at + 1, 1) == 0xFFu) ++at;  // filling
    const auto mark = number(bytes, at, 1), marker = number(bytes, at + 1, 1), length = number(bytes, at + 2, 2);
    if (!length || *mark != 0xFF || *length < 2) break;
    if (is_frame(*marker)) return frame(bytes, at + 2);
    if (is_other_frame(*marker)) return refuse("the picture is a JPEG of a kind that is not read");
    if (*marker == 0xD9 || *marker == 0xDA) break;  // its end, or the pixels themselves
    at += 2 + *length;
  }
  return refuse("the picture does not say its size");
}

}  // namespace

problem::Result<PictureHeader> picture_header(std::string_view bytes) {
  if (bytes.starts_with(png_signature)) return png(bytes);
  if (bytes.starts_with("\xff\xd8\xff")) return jpeg(bytes);
  return refuse("the file is neither a PNG nor a JPEG");
}

}  // namespace files
