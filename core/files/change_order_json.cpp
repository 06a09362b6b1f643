#include "files/change_order_json.h"

#include "files/change_order_fields.h"
#include "files/from_json.h"
#include "files/to_json.h"

namespace files {
namespace {

constexpr std::string_view format_name = "groundcourse_change_orders";
constexpr std::string_view list_name = "orders";

bool read_format(const Value& format, Reading& reading) {
  int number = 0;
  if (!read(format, number, reading)) return false;
  if (number == orders_format) return true;
  const bool newer = number > orders_format;
  return reading.refuse(format.spot, newer ? "format-newer" : "format-unknown",
                        "the change orders were kept in format " + std::to_string(number) +
                            ", and this program reads format " + std::to_string(orders_format),
                        newer ? "open them with a newer version of this program" : "take the text as it was written");
}

}  // namespace

std::string write_change_orders(const std::vector<estimate::KeptOrder>& orders) {
  Value object = object_value();
  add(object, format_name, to_json(orders_format));
  add(object, list_name, to_json(orders));
  return write_json(object);
}

problem::Result<std::vector<estimate::KeptOrder>> read_change_orders(std::string_view text, const std::string& file) {
  const auto tree = parse_json(text, file);
  if (!tree) return std::unexpected(tree.error());
  Reading reading{.file = file, .fault = {}, .most_coins_here = most_sum_coins};
  const auto refused = [&]() { return std::unexpected(reading.told()); };
  if (!expect(*tree, Sort::object, reading)) return refused();
  for (std::size_t i = 0; i < tree->keys.size(); ++i) {
    if (tree->keys[i].name == format_name || tree->keys[i].name == list_name) continue;
    unknown_field(*tree, i, std::string(format_name) + ", " + std::string(list_name), reading);
    return refused();
  }
  const Value* format = tree->find(format_name);
  const Value* list = tree->find(list_name);
  if (format == nullptr || list == nullptr) {
    missing_field(*tree, format == nullptr ? format_name : list_name, reading);
    return refused();
  }
  std::vector<estimate::KeptOrder> orders;
  if (!read_format(*format, reading) || !read(*list, orders, reading)) return refused();
  return orders;
}

}  // namespace files
