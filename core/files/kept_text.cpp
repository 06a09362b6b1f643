#include "files/kept_text.h"

#include "files/from_json.h"
#include "files/kept_fields.h"
#include "files/to_json.h"

namespace files {
namespace {

constexpr std::string_view format_name = "groundcourse_kept";

bool read_format(const Value& format, Reading& reading) {
  int number = 0;
  if (!read(format, number, reading)) return false;
  if (number == kept_format) return true;
  const bool newer = number > kept_format;
  return reading.refuse(format.spot, newer ? "format-newer" : "format-unknown",
                        "the estimate was kept in format " + std::to_string(number) +
                            ", and this program reads format " + std::to_string(kept_format),
                        newer ? "open it with a newer version of this program" : "take the text as it was written");
}

}  // namespace

std::string write_kept(const estimate::Kept& kept) {
  Value object = object_value();
  add(object, format_name, to_json(kept_format));
  add(object, "kept", to_json(kept));
  return write_json(object);
}

problem::Result<estimate::Kept> read_kept(std::string_view text, const std::string& file) {
  const auto tree = parse_json(text, file);
  if (!tree) return std::unexpected(tree.error());
  // A sum of many lines is larger than any price may be.
  Reading reading{.file = file, .fault = {}, .most_coins_here = most_sum_coins};
  const auto refused = [&]() { return std::unexpected(reading.told()); };
  if (!expect(*tree, Sort::object, reading)) return refused();
  for (std::size_t i = 0; i < tree->keys.size(); ++i) {
    if (tree->keys[i].name == format_name || tree->keys[i].name == "kept") continue;
    unknown_field(*tree, i, std::string(format_name) + ", kept", reading);
    return refused();
  }
  const Value* format = tree->find(format_name);
  const Value* part = tree->find("kept");
  if (format == nullptr || part == nullptr) {
    missing_field(*tree, format == nullptr ? format_name : "kept", reading);
    return refused();
  }
  estimate::Kept kept;
  if (!read_format(*format, reading) || !read(*part, kept, reading)) return refused();
  return kept;
}

}  // namespace files
