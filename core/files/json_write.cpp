#include "files/json_write.h"

#include <utility>

#include "units/number.h"

namespace files {
namespace {

constexpr std::size_t line_width = 100;

void write_text(std::string_view text, std::string& into) {
  into += '"';
  for (const char letter : text) {
    const auto byte = static_cast<unsigned char>(letter);
    if (letter == '"' || letter == '\\') {
      into += '\\';
      into += letter;
    } else if (letter == '\n') {
      into += "\\n";
    } else if (letter == '\t') {
      into += "\\t";
    } else if (byte < 0x20 || byte == 0x7F) {
      constexpr std::string_view hex = "0123456789abcdef";
      into += "\\u00";
      into += hex[byte >> 4];
      into += hex[byte & 15];
    } else {
      into += letter;
    }
  }
  into += '"';
}

bool branches(const Value& value) { return value.sort == Sort::list || value.sort == Sort::object; }

// On one line; gives up when it grows past `end`, so that a large tree is not written once for each of its levels.
bool write_on_line(const Value& value, std::string& into, std::size_t end) {
  switch (value.sort) {
    case Sort::null: into += "null"; break;
    case Sort::boolean: into += value.truth ? "true" : "false"; break;
    case Sort::number: into += value.text; break;
    case Sort::string: write_text(value.text, into); break;
    case Sort::list:
    case Sort::object:
      into += value.sort == Sort::list ? '[' : '{';
      for (std::size_t i = 0; i < value.children.size(); ++i) {
        if (i > 0) into += ", ";
        if (value.sort == Sort::object) {
          write_text(value.keys[i].name, into);
          into += ": ";
        }
        if (!write_on_line(value.children[i], into, end)) return false;
      }
      into += value.sort == Sort::list ? ']' : '}';
  }
  return into.size() <= end;
}

void write(const Value& value, std::string& into, std::size_t indent, std::size_t line_start) {
  const std::size_t from = into.size();
  if (write_on_line(value, into, line_start + line_width) || !branches(value)) return;
  into.resize(from);
  into += value.sort == Sort::list ? '[' : '{';
  for (std::size_t i = 0; i < value.children.size(); ++i) {
    into += i > 0 ? ",\n" : "\n";
    const std::size_t start = into.size();
    into.append(indent + 2, ' ');
    if (value.sort == Sort::object) {
      write_text(value.keys[i].name, into);
      into += ": ";
    }
    write(value.children[i], into, indent + 2, start);
  }
  into += '\n';
  into.append(indent, ' ');
  into += value.sort == Sort::list ? ']' : '}';
}

}  // namespace

Value text_value(std::string_view text) { return {.sort = Sort::string, .text = std::string(text)}; }
Value number_value(double number) { return {.sort = Sort::number, .text = units::write_number(number)}; }
Value number_value(std::int64_t number) { return {.sort = Sort::number, .text = std::to_string(number)}; }
Value truth_value(bool truth) { return {.sort = Sort::boolean, .truth = truth}; }
Value null_value() { return {}; }
Value list_value() { return {.sort = Sort::list}; }
Value object_value() { return {.sort = Sort::object}; }

void add(Value& object, std::string_view name, Value value) {
  object.keys.push_back({std::string(name), {}});
  object.children.push_back(std::move(value));
}

void add(Value& list, Value value) { list.children.push_back(std::move(value)); }

std::string write_on_one_line(const Value& object, std::string_view without) {
  std::string line = "{";
  for (std::size_t i = 0; i < object.children.size(); ++i) {
    if (object.keys[i].name == without) continue;
    if (line.size() > 1) line += ", ";
    write_text(object.keys[i].name, line);
    line += ": ";
    write_on_line(object.children[i], line, std::string::npos);
  }
  return line + "}";
}

std::string write_json(const Value& value) {
  std::string text;
  write(value, text, 0, 0);
  text += '\n';
  return text;
}

}  // namespace files
