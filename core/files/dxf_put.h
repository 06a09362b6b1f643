// A DXF text as it grows, pair by pair.
#pragma once

#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace files {

// A text inside a DXF: on one line, letters past ASCII and those with a meaning of their own (a caret, a backslash, the
// second of two per cent signs) by their numbers.
std::string dxf_string(std::string_view text);

// The same as the name of a layer, where < > / \ " : ; ? * | = ' ` and the comma may not stand: each becomes a dash.
std::string dxf_layer_name(std::string_view text);

class DxfPut {
 public:
  using Handle = std::uint32_t;

  void text(int code, std::string_view value);  // as it is
  void whole(int code, std::int64_t value);
  void number(int code, double value);
  void handle(int code, Handle handle);
  void at(double x, double y, double z = 0) {
    number(10, x);
    number(20, y);
    number(30, z);
  }
  // "0 TYPE", its handle, whose it is, and the class marks of release 2000.
  void object(std::string_view type, Handle handle, Handle owner, std::initializer_list<std::string_view> classes);
  void section(std::string_view name) {
    text(0, "SECTION");
    text(2, name);
  }
  void end_section() { text(0, "ENDSEC"); }

  std::string made;
};

// The parts of the file that say nothing of the drawing, and the numbers by which its objects know each other.
namespace dxf_frame {

inline constexpr DxfPut::Handle model_space = 0x1F;
inline constexpr DxfPut::Handle first_free = 0x100;

struct Layer {
  std::string name;
  int colour = 7;
  DxfPut::Handle handle = 0;
};
struct Facts {
  bool metric = true;
  double low_x = 0, low_y = 0, high_x = 0, high_y = 0;
  DxfPut::Handle next = first_free;  // the first handle that no object has
};

std::string before_entities(const Facts& facts, const std::vector<Layer>& layers);
std::string after_entities();

}  // namespace dxf_frame

}  // namespace files
