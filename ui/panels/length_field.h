// A length typed as the trade writes it (units/read_length.h has the grammar), and plain numbers beside it.
#pragma once

#include "ui/panels/typed_field.h"
#include "units/read_length.h"

namespace ui {

// What a bare number means, and how the length is shown. part: a thickness, a joint (inches or millimetres). distance:
// a place, a run (feet or metres). height: above the datum, as surveyors write it, 102.00 ft or 31.090 m.
enum class Measure { part, distance, height };

QString shown_length(units::Length length, units::System system, Measure measure = Measure::part);  // with ′ and ″
// Reads back as the same length, to the step, where `measure` says what a bare number is.
QString full_length(units::Length length, units::System system, Measure measure);

Typing length_typing(units::System system, Measure measure, bool may_be_empty, bool never_below_0);
// number, percent, degrees, area, whole, by the field's editor and limits.
Typing number_typing(const Field& field, units::System system);
Typing text_typing();
// Money as it is written, "1,234.50"; a currency sign before it may stand. Never below 0.
Typing money_typing(int decimals, bool may_be_empty);
// Of any field that is typed: for lengths its id tells the measure.
Typing typing_of(const Field& field, units::System system);
Measure measure_of(const std::string& field_id);

// Arrow up and down step by 1/16 in or 1 mm.
class LengthField : public TypedField {
  Q_OBJECT
 public:
  LengthField(units::System system, Measure measure, QWidget* parent = nullptr)
      : TypedField(length_typing(system, measure, false, false), parent) {}
};

}  // namespace ui
