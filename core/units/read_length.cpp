#include "units/read_length.h"

#include <optional>
#include <vector>

#include "units/length_tokens.h"
#include "units/rational.h"

namespace units {

namespace {

constexpr std::int64_t foot = Length::feet(1).steps();
constexpr std::int64_t inch = Length::inches(1).steps();
constexpr std::int64_t most_steps = static_cast<std::int64_t>(Length::steps_per_metre) * 1000000000;
constexpr int deepest = 40;  // brackets within brackets

const char* const forms = "write a length such as 12' 6 1/2\", 12.5 ft, 3.81 m or 38 mm";
const char* const put_brackets = "put brackets round what belongs together";
const char* const mark_inches = "mark the inches with \"";

// bare: a number still to be taken in the field's unit, or as a factor. pure: a length over a length.
enum class Sort { bare, pure, length };

// A length's number is in steps. `doubtful`: in a feet-and-inches field it could be parts of feet or of inches.
struct Value {
  Rational number;
  Sort sort = Sort::bare;
  bool doubtful = false;
  int column = 1;
};

// A number as written: 6, 6.5, 1/2 or 6 1/2. `plain`: whole and without a fraction.
struct Written {
  Rational number;
  bool plain = false;
  bool doubtful = false;
  bool improper = false;
  int column = 1;
};

bool under_one(Rational number) { return number.top < number.under; }
bool under_twelve(Rational number) { return number.top / number.under < 12; }

// Recursive descent. After the first fault every function returns at once: the parser then stands at the end token.
class Parser {
 public:
  Parser(std::vector<Token> tokens, Bare bare) : tokens_(std::move(tokens)), bare_(bare) {}

  std::expected<Length, LengthFault> run() {
    const Value value = sum_of_terms();
    if (now().kind != Kind::end) refuse_leftover();
    const Value length = as_length(value);
    const Int128 steps = nearest_whole(length.number);
    if (steps > most_steps || steps < -most_steps) refuse("length-too-large", "it is past 1e9 m", forms, 1);
    if (fault_) return std::unexpected(*fault_);
    return Length::of_steps(static_cast<std::int64_t>(steps));
  }

 private:
  const Token& now() const { return tokens_[at_]; }
  const Token& next() const { return tokens_[at_ + 1 < tokens_.size() ? at_ + 1 : at_]; }
  bool at(Kind kind) const { return now().kind == kind; }
  bool at_number() const { return at(Kind::number) || at(Kind::fraction); }
  Token take() {
    Token token = now();
    if (at_ + 1 < tokens_.size()) ++at_;
    return token;
  }
  // The sign stands free: a space before it and one after.
  bool spaced() const { return now().space_before && next().space_before; }
  bool tight() const { return !now().space_before && !next().space_before; }

  void refuse(const char* code, std::string reason, std::string mend, int column) {
    if (!fault_) fault_ = LengthFault{code, std::move(reason), std::move(mend), column};
    at_ = tokens_.size() - 1;
  }
  void not_understood(std::string reason, std::string mend = forms) {
    refuse("length-not-understood", std::move(reason), std::move(mend), now().column);
  }
  void ambiguous(std::string reason, std::string mend, int column) {
    refuse("length-ambiguous", std::move(reason), std::move(mend), column);
  }

  Rational fitting(MaybeRational number, int column) {
    if (number) return *number;
    refuse("length-too-large", "it has too many digits", "write fewer digits", column);
    return {};
  }

  Rational in_steps(Rational number, std::int64_t unit_steps, int column) {
    return fitting(product(number, {unit_steps, 1}), column);
  }

  Value as_length(Value value) {
    if (fault_ || value.sort == Sort::length) return value;
    if (value.sort == Sort::pure) {
      refuse("length-not-understood", "a length over a length is a plain number", forms, value.column);
      return value;
    }
    if (bare_ == Bare::feet_and_inches && value.doubtful) {
      ambiguous("this could be parts of feet or of inches", "mark it with ' or \"", value.column);
      return value;
    }
    value.number = in_steps(value.number, bare_steps(), value.column);
    value.sort = Sort::length;
    return value;
  }

  std::int64_t bare_steps() const {
    switch (bare_) {
      case Bare::metres: return 1000 * Length::steps_per_millimetre;
      case Bare::millimetres: return Length::steps_per_millimetre;
      case Bare::inches: return inch;
      case Bare::feet:
      case Bare::feet_and_inches: break;
    }
    return foot;
  }

  void refuse_leftover() {
    switch (now().kind) {
      case Kind::unit: return not_understood("a unit stands here without a number");
      case Kind::close: return not_understood("this bracket was never opened", put_brackets);
      default: return not_understood("a unit or a sign is missing before this");
    }
  }

  Value sum_of_terms() {
    Value total = term();
    while (at(Kind::plus) || at(Kind::minus)) {
      const Token sign = take();
      Value more = term();
      if (sign.kind == Kind::minus) more.number.top = -more.number.top;
      total = added(total, more, sign.column);
    }
    return total;
  }

  Value added(Value a, Value b, int column) {
    if (fault_) return a;
    if ((a.sort == Sort::length && b.sort == Sort::pure) || (a.sort == Sort::pure && b.sort == Sort::length)) {
      refuse("length-not-understood", "a length and a plain number can't be added", forms, column);
      return a;
    }
    // Numbers in doubt are settled here, so that the doubt is not lost in the sum.
    const bool lengths = a.sort == Sort::length || b.sort == Sort::length;
    const bool in_doubt = bare_ == Bare::feet_and_inches && (a.doubtful || b.doubtful);
    if (lengths || (in_doubt && a.sort != Sort::pure && b.sort != Sort::pure)) {
      a = as_length(a);
      b = as_length(b);
    }
    a.number = fitting(sum(a.number, b.number), column);
    if (b.sort == Sort::pure) a.sort = Sort::pure;
    return a;
  }

  Value term() {
    Value value = factor();
    bool divided = false;
    while (at(Kind::times) || at(Kind::divide)) {
      const bool close_to_fraction = slash_fraction(tokens_[at_ - 1]) && !spaced();
      const Token sign = take();
      const bool divide = sign.kind == Kind::divide;
      if (divide && (divided || close_to_fraction || slash_fraction(now()))) {
        ambiguous("two slashes in a row can be read in two ways", put_brackets, sign.column);
        return value;
      }
      const Value by = factor();
      value = divide ? over(value, by, sign.column) : times(value, by, sign.column);
      divided = divide;
    }
    return value;
  }

  static bool slash_fraction(const Token& token) { return token.kind == Kind::fraction && !token.one_letter; }

  Value times(Value a, Value b, int column) {
    if (fault_) return a;
    if (a.sort == Sort::length && b.sort == Sort::length) {
      refuse("length-product", "a length times a length is an area", "multiply a length by a plain number", column);
      return a;
    }
    a.number = fitting(product(a.number, b.number), column);
    a.doubtful = a.doubtful || b.doubtful;
    if (a.sort == Sort::bare)
      a.sort = b.sort;
    else if (b.sort == Sort::length)
      a.sort = Sort::length;
    return a;
  }

  Value over(Value a, Value b, int column) {
    if (fault_) return a;
    if (b.number.top == 0) {
      refuse("length-zero-division", "nothing is divided by 0", "divide by another number", b.column);
      return a;
    }
    if (b.sort == Sort::length && a.sort != Sort::length) {
      refuse("length-not-understood", "a plain number over a length is no length", forms, column);
      return a;
    }
    a.number = fitting(quotient(a.number, b.number), column);
    a.doubtful = a.doubtful || b.doubtful;
    if (b.sort == Sort::length || (a.sort == Sort::bare && b.sort == Sort::pure)) a.sort = Sort::pure;
    return a;
  }

  Value factor() {
    bool negative = false;
    const int column = now().column;
    if (at(Kind::minus) || at(Kind::plus)) negative = take().kind == Kind::minus;
    Value value = at(Kind::open) ? bracket() : measure();
    if (negative) value.number.top = -value.number.top;
    value.column = column;
    return value;
  }

  Value bracket() {
    if (++depth_ > deepest) {
      not_understood("the brackets go too deep", "write it in fewer steps");
      return {};
    }
    take();
    Value value = sum_of_terms();
    --depth_;
    if (!at(Kind::close)) {
      if (at(Kind::end)) not_understood("a bracket is not closed", put_brackets);
      refuse_leftover();
      return {};
    }
    take();
    if (!at(Kind::unit) || value.sort != Sort::bare) return value;
    value.number = in_steps(value.number, now().unit_steps, now().column);
    take();
    value.sort = Sort::length;
    value.doubtful = false;
    return value;
  }

  Written written() {
    Written read;
    read.column = now().column;
    if (!at_number()) {
      not_understood(at(Kind::end) ? "it stops short of a number" : "a number is missing here");
      return read;
    }
    const Token first = take();
    read.number = first.value;
    read.plain = first.kind == Kind::number && first.whole;
    if (first.kind == Kind::fraction) {
      read.improper = !under_one(first.value);
      read.doubtful = !read.improper;
      return read;
    }
    if (at(Kind::fraction)) return with_fraction(read, first);
    const bool hyphen = at(Kind::minus) && !spaced() && next().kind == Kind::fraction && under_one(next().value);
    if (read.plain && hyphen) {
      ambiguous("this could be a whole number and a fraction, or a subtraction", "write 6 1/2\", or 6 - 1/2\"",
                now().column);
    }
    return read;
  }

  Written with_fraction(Written read, const Token& whole) {
    const Token& part = now();
    if (!whole.whole || !under_one(part.value) || (!part.space_before && !part.one_letter)) {
      not_understood("a fraction under 1 after a whole number is understood, not this", "write 6 1/2\" or 6.5\"");
      return read;
    }
    read.number = fitting(sum(read.number, part.value), part.column);
    read.plain = false;
    read.doubtful = part.space_before;
    take();
    return read;
  }

  // A number with its unit, feet with their inches, or a bare number.
  Value measure() {
    const Written first = written();
    if (fault_) return {};
    if (at(Kind::unit)) {
      const Token unit = take();
      if (unit.unit_steps == foot && at_number()) return feet_with_inches(first);
      if (unit.unit_steps == foot && at(Kind::minus) && hyphen_joins(first, true)) return feet_with_inches(first);
      return {in_steps(first.number, unit.unit_steps, first.column), Sort::length, false, first.column};
    }
    if (bare_ == Bare::feet_and_inches && first.plain) {
      if (at(Kind::number)) return feet_with_inches(first);
      if (at(Kind::minus)) hyphen_joins(first, false);
    }
    return {first.number, Sort::bare, first.doubtful, first.column};
  }

  Value feet_with_inches(const Written& feet) {
    if (!feet.plain) {
      not_understood("only whole feet are followed by inches");
      return {};
    }
    const Written inches = written();
    if (fault_) return {};
    if (at(Kind::unit) && now().unit_steps != inch) {
      not_understood("only inches follow feet", mark_inches);
      return {};
    }
    if (inches.improper || !under_twelve(inches.number)) {
      refuse("length-not-understood", "inches after feet are under 12", "put a + between the feet and the inches",
             inches.column);
      return {};
    }
    if (at(Kind::unit)) {
      take();
    } else if (at(Kind::divide) || at(Kind::times)) {
      ambiguous("this could be for the inches alone or for the whole", mark_inches, now().column);
      return {};
    }
    const Rational whole = in_steps(feet.number, foot, feet.column);
    const Rational part = in_steps(inches.number, inch, inches.column);
    return {fitting(sum(whole, part), feet.column), Sort::length, false, feet.column};
  }

  // At a minus after feet: does it only join the inches, as in 12'-6"? If so it is taken. What could as well be a
  // subtraction is refused: the two readings differ by twice the inches. `marked`: the feet have their mark.
  bool hyphen_joins(const Written& feet, bool marked) {
    if (next().kind != Kind::number && next().kind != Kind::fraction) return false;
    const std::size_t start = at_;
    const int column = now().column;
    const bool close = tight();
    take();
    const Written inches = written();
    if (fault_) return false;
    const bool with_unit = at(Kind::unit);
    const bool of_inches = !with_unit || now().unit_steps == inch;
    at_ = start;
    if (!of_inches) return false;
    if (!marked && !with_unit && !close) return false;
    const bool like_feet_and_inches = feet.plain && under_twelve(inches.number);
    if (!like_feet_and_inches && !close) return false;
    if (like_feet_and_inches && close && marked && with_unit) {
      take();
      return true;
    }
    if (!marked && !like_feet_and_inches) return false;
    ambiguous("this could be feet and inches, or a subtraction",
              "write 12'-6\" for feet and inches, (12') - 6\" to subtract", column);
    return false;
  }

  std::vector<Token> tokens_;
  std::size_t at_ = 0;
  Bare bare_;
  int depth_ = 0;
  std::optional<LengthFault> fault_;
};

bool blank(std::string_view text) { return text.find_first_not_of(" \t") == std::string_view::npos; }

// Cut between letters, so that the message stays readable text.
std::string shortened(std::string_view text) {
  if (text.size() <= 60) return std::string(text);
  std::size_t end = 57;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0) == 0x80) --end;
  return std::string(text.substr(0, end)) + "...";
}

std::unexpected<problem::Problem> refused(std::string_view text, const LengthFault& fault) {
  problem::Place place;
  place.column = fault.column;
  return problem::fault(fault.code, "The length " + shortened(text) + " can't be read: " + fault.reason, fault.mend,
                        place);
}

}  // namespace

problem::Result<Length> read_length(std::string_view text, Bare bare) {
  if (blank(text)) {
    problem::Place place;
    place.column = 1;
    return problem::fault("length-empty", "A length is missing", forms, place);
  }
  auto tokens = length_tokens(text);
  if (!tokens) return refused(text, tokens.error());
  const auto length = Parser(std::move(*tokens), bare).run();
  if (!length) return refused(text, length.error());
  return *length;
}

}  // namespace units
