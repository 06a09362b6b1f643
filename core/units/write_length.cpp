#include <cstdint>

#include "units/read_length.h"

namespace units {

static constexpr std::uint64_t foot = static_cast<std::uint64_t>(Length::feet(1).steps());
static constexpr std::uint64_t inch = static_cast<std::uint64_t>(Length::inches(1).steps());
static constexpr std::uint64_t millimetre = static_cast<std::uint64_t>(Length::millimetres(1).steps());

// Unsigned, because the lowest int64 has no positive twin.
static std::uint64_t magnitude(Length length) {
  const auto steps = static_cast<std::uint64_t>(length.steps());
  return length.steps() < 0 ? 0 - steps : steps;
}

// `value` / 10^places, without zeros at the end.
static std::string decimals(std::uint64_t value, int places) {
  std::string digits = std::to_string(value);
  const auto after = static_cast<std::size_t>(places);
  if (digits.size() <= after) digits.insert(0, after + 1 - digits.size(), '0');
  digits.insert(digits.size() - after, ".");
  digits.erase(digits.find_last_not_of('0') + 1);
  if (digits.back() == '.') digits.pop_back();
  return digits;
}

// 6, 1/2, 6 1/2: so many parts, of which `whole` make one. "0 1/2" where a zero has to hold the place.
static std::string with_fraction(std::uint64_t parts, std::uint64_t whole, bool zero_first) {
  std::uint64_t rest = parts % whole;
  if (rest == 0) return std::to_string(parts / whole);
  while (rest % 2 == 0) {
    rest /= 2;
    whole /= 2;
    parts /= 2;
  }
  const std::string fraction = std::to_string(rest) + "/" + std::to_string(whole);
  return parts < whole && !zero_first ? fraction : std::to_string(parts / whole) + " " + fraction;
}

// One step is 0.000123 in, so five decimals are always enough.
static std::string inch_decimals(std::uint64_t steps) {
  std::uint64_t scale = 1;
  for (int places = 1;; ++places) {
    scale *= 10;
    const std::uint64_t value = (steps * scale + inch / 2) / inch;
    if ((value * inch + scale / 2) / scale == steps) return decimals(value, places);
  }
}

static std::string in_us(std::uint64_t steps) {
  const std::uint64_t feet = steps / foot;
  const std::uint64_t rest = steps % foot;
  const std::string inches =
      rest * 64 % inch == 0 ? with_fraction(rest * 64 / inch, 64, feet > 0) : inch_decimals(rest);
  return (feet > 0 ? std::to_string(feet) + "' " : "") + inches + "\"";
}

static std::string in_metric(std::uint64_t steps) {
  if (steps % millimetre == 0 && steps >= 1000 * millimetre) return decimals(steps / millimetre, 3) + " m";
  // 1/320 mm is 3125 millionths exactly; the whole millimetres are kept apart, so that nothing overflows.
  const std::uint64_t rest = steps % millimetre * 3125;
  std::string digits = std::to_string(steps / millimetre);
  if (rest > 0) digits += decimals(rest, 6).substr(1);
  return digits + " mm";
}

std::string write_length(Length length, System system) {
  const std::uint64_t steps = magnitude(length);
  return (length.steps() < 0 ? "-" : "") + (system == System::us ? in_us(steps) : in_metric(steps));
}

std::string show_length(Length length, System system) {
  const std::uint64_t steps = magnitude(length);
  const std::uint64_t unit = system == System::us ? inch / 16 : millimetre;
  const std::uint64_t count = (steps + unit / 2) / unit;
  const std::string sign = length.steps() < 0 && count > 0 ? "-" : "";
  if (system == System::us) {
    const std::uint64_t feet = count / (12 * 16);
    return sign + (feet > 0 ? std::to_string(feet) + "' " : "") + with_fraction(count % (12 * 16), 16, feet > 0) + "\"";
  }
  if (count < 1000) return sign + std::to_string(count) + " mm";
  const std::string rest = std::to_string(count % 1000);
  return sign + std::to_string(count / 1000) + "." + std::string(3 - rest.size(), '0') + rest + " m";
}

}  // namespace units
