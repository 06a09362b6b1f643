// The fields of a tool's prompt as a value: what was typed into each, how it was read, and whether it holds.
//
// Lengths are read by units::read_length; a bare number is in feet (feet and inches) in a US job and in metres in a
// metric one. Angles are degrees: 45, -30, 22.5, with or without a degree sign. Text that is not understood to the last
// letter is refused with a sentence and has no value: it is never read as 0.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "plan/job.h"
#include "sketch/event.h"
#include "sketch/view.h"

namespace sketch {

enum class Reads { length, angle, number, words };

struct FieldKind {
  std::string id;
  std::string label;
  Reads reads = Reads::length;
};

// The fields that tools share, by their words.
namespace field {
FieldKind length();     // "length" ...
FieldKind direction();  // "angle": counter-clockwise from east
FieldKind sweep();      // "angle": how far an arc turns
FieldKind turn();       // "angle": how far something is turned
FieldKind x();
FieldKind y();
FieldKind radius();
FieldKind width();
FieldKind diameter();  // "width"
FieldKind depth();
FieldKind up();  // "angle": the way one climbs
FieldKind rise();
FieldKind opacity();  // a plain number, per cent
FieldKind height();
FieldKind text();  // words, taken as they are
}  // namespace field

class Fields {
 public:
  Fields() = default;
  explicit Fields(std::vector<FieldKind> kinds);

  // Reads what was typed; empty text clears the field. A field that is not here is none of ours: false.
  bool take(const Typed& typed, units::System system);
  // Other fields from now on; what was typed into those that stay (same id, read alike) is kept.
  void become(std::vector<FieldKind> kinds);
  void clear();                       // all of them
  void clear(const std::string& id);  // one

  std::optional<units::Length> length(const std::string& id) const;
  std::optional<double> number(const std::string& id) const;  // angles in degrees
  std::string words(const std::string& id) const;
  bool has(const std::string& id) const;     // typed and understood
  bool locked(const std::string& id) const;  // and held
  bool typed() const;                        // anything typed and understood
  const std::string* wrong() const;          // the first sentence about text that is not understood

  // What the pointer gives stands in a field as long as nothing is typed into it.
  void point(const std::string& id, units::Length value, units::System system);
  void point(const std::string& id, double value);
  std::vector<Field> shown() const { return fields_; }

 private:
  struct Value {
    Reads reads = Reads::length;
    bool typed = false;
    std::optional<units::Length> length;
    std::optional<double> number;
  };
  std::optional<std::size_t> find(const std::string& id) const;
  void read(std::size_t i, units::System system);
  std::vector<Field> fields_;
  std::vector<Value> values_;  // beside fields_
};

// 90° or 22.5°: to a tenth, trailing zeros dropped.
std::string show_angle(double degrees);
units::Bare bare(units::System system);

}  // namespace sketch
