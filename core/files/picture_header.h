// What the first bytes of a picture say of it, read before any decoder sees the file.
#pragma once

#include <cstdint>
#include <string_view>

#include "problem/problem.h"

namespace files {

enum class PictureForm { png, jpeg };

struct PictureHeader {
  PictureForm form = PictureForm::png;
  std::uint32_t width = 0;  // pixels, as stored: a JPEG may say that it is to be turned
  std::uint32_t height = 0;
};

// Of PNG (ISO/IEC 15948: signature, then IHDR) and JPEG (ISO/IEC 10918-1: segments up to the frame's). Refused, code
// picture-header: another form; a file that ends before it says its size; sides of 0 or past what the form allows
// (2^31 - 1, 65,535); of a PNG a depth and colour type that do not go together, of a JPEG a frame that is not coded
// baseline, extended or progressive, or more than 1,000 segments before it.
problem::Result<PictureHeader> picture_header(std::string_view bytes);

}  // namespace files
