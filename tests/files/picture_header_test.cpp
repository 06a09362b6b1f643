// Sizes of pictures out of their first bytes.
#include <gtest/gtest.h>

#include <random>

#include "files/picture_header.h"

namespace {

std::string bytes(std::initializer_list<int> all) {
  std::string made;
  for (const int one : all) made += static_cast<char>(one);
  return made;
}

const std::string png_signature = bytes({0x89, 'P', 'N', 'G', 13, 10, 26, 10});

std::string png(std::initializer_list<int> width, std::initializer_list<int> height, int depth, int colour) {
  return png_signature + bytes({0, 0, 0, 13, 'I', 'H', 'D', 'R'}) + bytes(width) + bytes(height) +
         bytes({depth, colour, 0, 0, 0, 1, 2, 3, 4});
}

// Start, a comment of 3 letters, a table of Huffman codes (C4, no frame), then the frame: 8 bits, 258 high, 4 wide.
std::string jpeg(int frame) {
  return bytes(
      {0xFF, 0xD8, 0xFF, 0xFE, 0, 5, 'a', 'b', 'c', 0xFF, 0xC4, 0, 3, 9, 0xFF, 0xFF, frame, 0, 17, 8, 1, 2, 0, 4, 3});
}

std::string said(const std::string& file) {
  const auto made = files::picture_header(file);
  if (made) return std::to_string(made->width) + " x " + std::to_string(made->height);
  EXPECT_EQ(made.error().code, "picture-header");
  EXPECT_FALSE(made.error().mend.empty());
  return made.error().text;
}

TEST(PictureHeader, SaysTheSize) {
  EXPECT_EQ(said(png({0, 0, 1, 0}, {0, 0, 0, 2}, 8, 2)), "256 x 2");
  EXPECT_EQ(said(png({0, 0, 0xC3, 0x50}, {0, 0, 0xC3, 0x50}, 1, 0)), "50000 x 50000");
  for (const int frame : {0xC0, 0xC1, 0xC2}) EXPECT_EQ(said(jpeg(frame)), "4 x 258");
}

TEST(PictureHeader, RefusesWhatNoPictureSays) {
  EXPECT_EQ(said(""), "the file is neither a PNG nor a JPEG");
  EXPECT_EQ(said("GIF89a"), "the file is neither a PNG nor a JPEG");
  EXPECT_EQ(said(png({0, 0, 0, 0}, {0, 0, 0, 2}, 8, 2)), "the picture says a size that none has");
  EXPECT_EQ(said(png({0x80, 0, 0, 0}, {0, 0, 0, 2}, 8, 2)), "the picture says a size that none has");
  EXPECT_EQ(said(png({0, 0, 0, 1}, {0, 0, 0, 2}, 16, 3)), "the picture says colours that none has");
  EXPECT_EQ(said(png({0, 0, 0, 1}, {0, 0, 0, 2}, 4, 2)), "the picture says colours that none has");
  EXPECT_EQ(said(png({0, 0, 0, 1}, {0, 0, 0, 2}, 8, 5)), "the picture says colours that none has");
  EXPECT_EQ(said(jpeg(0xC3)), "the picture is a JPEG of a kind that is not read");
  EXPECT_EQ(said(jpeg(0xDA)), "the picture does not say its size");
  std::string none = jpeg(0xC0);
  none[20] = none[21] = 0;
  EXPECT_EQ(said(none), "the picture says a size that none has");
  EXPECT_EQ(said(bytes({0xFF, 0xD8, 0xFF, 0xFE, 0, 1})), "the picture does not say its size")
      << "a segment of one byte";
}

TEST(PictureHeader, EndsBeforeItsSizeAtEveryByte) {
  for (const std::string& whole : {png({0, 0, 1, 0}, {0, 0, 0, 2}, 8, 2).substr(0, 26), jpeg(0xC0).substr(0, 24)}) {
    EXPECT_TRUE(files::picture_header(whole));
    for (std::size_t size = 0; size < whole.size(); ++size) EXPECT_FALSE(files::picture_header(whole.substr(0, size)));
  }
}

// A file of nothing but small segments is given up after a thousand, however long it is.
TEST(PictureHeader, SegmentsWithoutEndAreGivenUp) {
  std::string many = bytes({0xFF, 0xD8});
  for (int i = 0; i < 1000; ++i) many += bytes({0xFF, 0xE0, 0, 2});
  EXPECT_EQ(said(many + bytes({0xFF, 0xC0, 0, 17, 8, 0, 1, 0, 1})), "the picture does not say its size");
  EXPECT_EQ(said(many.substr(0, 2 + 999 * 4) + bytes({0xFF, 0xC0, 0, 17, 8, 0, 1, 0, 1})), "1 x 1");
}

}  // namespace
