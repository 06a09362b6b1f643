#include "files/from_json.h"

#include <charconv>
#include <utility>

#include "files/catalogue_fields.h"
#include "problem/ensure.h"
#include "units/number.h"
#include "units/read_length.h"

namespace files {
namespace {

// A whole number within +-`most`; "1.0" and "1e3" are not whole numbers as written.
std::optional<std::int64_t> whole(const Value& value, std::int64_t most) {
  std::int64_t number = 0;
  const char* end = value.text.data() + value.text.size();
  const auto [stop, fault] = std::from_chars(value.text.data(), end, number);
  if (fault != std::errc() || stop != end || number > most || number < -most) return std::nullopt;
  return number;
}

// A bare "12" means one thing in metres and another in feet, so in a file a typed length names its unit.
bool read_typed(const Value& value, units::Length& into, Reading& reading) {
  const auto in_metres = units::read_length(value.text, units::Bare::metres);
  if (!in_metres) {
    return reading.refuse(value.spot, "length-typed",
                          in_quotes(value.text) + " is not a length: " + in_metres.error().text,
                          "write it with its unit, such as \"3.81 m\" or \"12' 6 1/2\\\"\"");
  }
  const auto in_feet = units::read_length(value.text, units::Bare::feet);
  if (!in_feet || *in_feet != *in_metres) {
    return reading.refuse(value.spot, "length-unit", "the length " + in_quotes(value.text) + " does not name its unit",
                          "add it, such as \"" + std::string("3.81 m\" or \"12' 6\\\"\""));
  }
  into = *in_metres;
  return true;
}

bool read_edge(const Value& value, geometry::Edge& into, Reading& reading) {
  if (!expect(value, Sort::list, reading)) return false;
  if (value.children.size() != 2 && value.children.size() != 3) {
    return reading.refuse(value.spot, "point-parts", "a point of an outline has two coordinates and perhaps a bulge",
                          "write [x, y] or [x, y, bulge]");
  }
  return read(value.children[0], into.from.x, reading) && read(value.children[1], into.from.y, reading) &&
         (value.children.size() == 2 || read(value.children[2], into.bulge, reading));
}

// The one field of a ring or line: its points with edges between them, or the points that a freeform curve runs
// through.
const Value* drawn_field(const Value& value, std::string_view& name, Reading& reading) {
  if (!expect(value, Sort::object, reading)) return nullptr;
  for (std::size_t i = 0; i < value.keys.size(); ++i) {
    if (value.keys[i].name != "points" && value.keys[i].name != "through") {
      unknown_field(value, i, "points, through", reading);
      return nullptr;
    }
  }
  if (value.children.size() != 1) {
    reading.refuse(value.spot, "drawn-twice", "a ring or line has either points or through",
                   "keep exactly one of the two");
    return nullptr;
  }
  name = value.keys[0].name;
  return &value.children[0];
}

}  // namespace

bool Reading::refuse(Spot spot, std::string code, std::string text, std::string mend) {
  if (!fault) {
    fault = problem::Problem{problem::Severity::problem, std::move(code), std::move(text), std::move(mend),
                             place_in(file, spot)};
  }
  return false;
}

problem::Problem Reading::told() const {
  problem::ensure(fault.has_value(), "a reading that failed has a fault");
  problem::Problem found = *fault;
  for (std::string* words : {&found.text, &found.mend, &found.place.element}) {
    for (char& letter : *words) {
      if (static_cast<unsigned char>(letter) < 0x20 || letter == 0x7F) letter = '?';
    }
  }
  return found;
}

bool check_id(const std::string& id, Spot spot, Reading& reading) {
  if (id.empty()) return reading.refuse(spot, "id-empty", "the id is empty", "give a name that is used once");
  for (const char letter : id) {
    if (static_cast<unsigned char>(letter) >= 0x20 && letter != 0x7F) continue;
    return reading.refuse(spot, "id-control", "the id " + in_quotes(id) + " holds a control character", "take it out");
  }
  return true;
}

bool expect(const Value& value, Sort sort, Reading& reading) {
  if (value.sort == sort) return true;
  return reading.refuse(value.spot, "json-type",
                        "here stands " + sort_name(value.sort) + " instead of " + sort_name(sort),
                        "write " + sort_name(sort));
}

bool unknown_field(const Value& object, std::size_t number, const std::string& known, Reading& reading) {
  const Key& key = object.keys[number];
  return reading.refuse(key.spot, "field-unknown", "the field " + in_quotes(key.name) + " is not known here",
                        "take it out; known are " + known);
}

bool missing_field(const Value& object, std::string_view name, Reading& reading) {
  return reading.refuse(object.spot, "field-missing", "the field " + in_quotes(name) + " is missing here", "add it");
}

bool unknown_word(const Value& value, const std::string& known, Reading& reading) {
  return reading.refuse(value.spot, "word-unknown", "the word " + in_quotes(value.text) + " is not known here",
                        "use one of: " + known);
}

bool doubled_id(const Value& value, const std::string& id, Reading& reading) {
  return reading.refuse(value.spot, "id-doubled", "the id " + in_quotes(id) + " is used for the second time",
                        "give each its own id");
}

bool read(const Value& value, std::string& into, Reading& reading) {
  if (!expect(value, Sort::string, reading)) return false;
  into = value.text;
  return true;
}

bool read(const Value& value, bool& into, Reading& reading) {
  if (!expect(value, Sort::boolean, reading)) return false;
  into = value.truth;
  return true;
}

bool read(const Value& value, int& into, Reading& reading) {
  if (!expect(value, Sort::number, reading)) return false;
  const auto number = whole(value, most_count);
  if (!number) {
    return reading.refuse(value.spot, "number-whole",
                          value.text.substr(0, 40) + " is not a whole number up to 1,000,000,000",
                          "write a whole number without dot or exponent");
  }
  into = static_cast<int>(*number);
  return true;
}

bool read(const Value& value, double& into, Reading& reading) {
  if (!expect(value, Sort::number, reading)) return false;
  const auto number = units::read_number(value.text);
  if (!number) {
    return reading.refuse(value.spot, "number-range",
                          value.text.substr(0, 40) + " is too large or too small for a number",
                          "write a number between 1e-300 and 1e300");
  }
  into = *number == 0 ? 0 : *number;  // minus zero is zero
  return true;
}

bool read(const Value& value, units::Length& into, Reading& reading) {
  if (value.sort == Sort::string) return read_typed(value, into, reading);
  if (!expect(value, Sort::number, reading)) return false;
  const auto steps = whole(value, most_steps);
  if (!steps) {
    return reading.refuse(
        value.spot, "length-steps",
        value.text.substr(0, 40) + " is not a length: a number here is whole steps of 1/320 mm, up to 1e9 m",
        "write whole steps, or a text with its unit such as \"3.81 m\"");
  }
  into = units::Length::of_steps(*steps);
  return true;
}

bool read(const Value& value, units::Angle& into, Reading& reading) {
  double degrees = 0;
  if (!read(value, degrees, reading)) return false;
  into = units::Angle::degrees(degrees);
  return true;
}

bool read(const Value& value, units::Money& into, Reading& reading) {
  if (!expect(value, Sort::number, reading)) return false;
  const auto coins = whole(value, reading.most_coins_here);
  if (!coins) {
    return reading.refuse(value.spot, "money-coins",
                          value.text.substr(0, 40) + " is not an amount: money is whole coins, up to " +
                              (reading.most_coins_here == most_coins ? "1,000,000,000" : "1,000,000,000,000,000"),
                          "write 1250 for 12.50");
  }
  into = units::Money::of_coins(*coins);
  return true;
}

bool read(const Value& value, geometry::Point& into, Reading& reading) {
  if (!expect(value, Sort::list, reading)) return false;
  if (value.children.size() != 2) {
    return reading.refuse(value.spot, "point-parts", "a point has two coordinates", "write [x, y]");
  }
  return read(value.children[0], into.x, reading) && read(value.children[1], into.y, reading);
}

bool read(const Value& value, catalogue::CellSide& into, Reading& reading) {
  using Of = catalogue::CellSide::Of;
  const bool module = value.sort == Sort::string && (value.text.starts_with("L") || value.text.starts_with("W"));
  if (!module) {
    into.of = Of::fixed;
    return read(value, into.fixed, reading);
  }
  into.of = value.text[0] == 'L' ? Of::module_length : Of::module_width;
  if (value.text.size() == 1) return true;
  const char* end = value.text.data() + value.text.size();
  const auto [stop, fault] = std::from_chars(value.text.data() + 2, end, into.parts);
  if (value.text[1] == '/' && value.text.size() > 2 && fault == std::errc() && stop == end && into.parts >= 1 &&
      into.parts <= 1000) {
    return true;
  }
  return reading.refuse(value.spot, "cell-side", in_quotes(value.text) + " is not the side of a pattern's cell",
                        "write \"L\", \"W\", a part such as \"L/2\" or \"W/3\", or a length");
}

bool read(const Value& value, catalogue::Pack& into, Reading& reading) {
  if (!read_fields(value, into, {}, reading)) return false;
  for (std::size_t i = 0; i < value.keys.size(); ++i) {
    int count = 1;
    if (value.children[i].sort == Sort::number && read(value.children[i], count, reading) && count < 1) {
      return reading.refuse(value.children[i].spot, "pack-empty",
                            "a pack has 1 or more " + in_quotes(value.keys[i].name) + ", not " + std::to_string(count),
                            "enter how many, or leave the field out where it is not known");
    }
  }
  return true;
}

bool read(const Value& value, plan::DrawnRing& into, Reading& reading) {
  std::string_view name;
  const Value* drawn = drawn_field(value, name, reading);
  if (drawn == nullptr) return false;
  if (name == "through") return read(*drawn, into.through, reading);
  if (!expect(*drawn, Sort::list, reading)) return false;
  into.edges.reserve(drawn->children.size());
  for (const Value& child : drawn->children) {
    if (!read_edge(child, into.edges.emplace_back(), reading)) return false;
  }
  return true;
}

bool read(const Value& value, plan::DrawnLine& into, Reading& reading) {
  std::string_view name;
  const Value* drawn = drawn_field(value, name, reading);
  if (drawn == nullptr) return false;
  if (name == "through") return read(*drawn, into.through, reading);
  if (!expect(*drawn, Sort::list, reading)) return false;
  if (drawn->children.empty()) return true;
  for (std::size_t i = 0; i + 1 < drawn->children.size(); ++i) {
    if (!read_edge(drawn->children[i], into.edges.emplace_back(), reading)) return false;
  }
  const Value& last = drawn->children.back();
  if (last.sort == Sort::list && last.children.size() == 3) {
    return reading.refuse(last.spot, "point-parts", "no edge starts at the last point of a line, so it has no bulge",
                          "write [x, y]");
  }
  return read(last, into.end, reading);
}

bool read(const Value& value, std::map<std::string, std::string>& into, Reading& reading) {
  if (!expect(value, Sort::object, reading)) return false;
  into.clear();
  for (std::size_t i = 0; i < value.keys.size(); ++i) {
    if (!read(value.children[i], into[value.keys[i].name], reading)) return false;
  }
  return true;
}

}  // namespace files
