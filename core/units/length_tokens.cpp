#include "units/length_tokens.h"

#include <algorithm>
#include <optional>

#include "units/length.h"

namespace units {

namespace {

constexpr std::int64_t foot = Length::feet(1).steps();
constexpr std::int64_t inch = Length::inches(1).steps();
constexpr std::int64_t millimetre = Length::millimetres(1).steps();

const char* const forms = "write a length such as 12' 6 1/2\", 12.5 ft, 3.81 m or 38 mm";

struct Word {
  std::string_view word;
  std::int64_t steps;
};
constexpr Word words[] = {{"ft", foot},      {"feet", foot},   {"foot", foot},           {"in", inch},
                          {"inch", inch},    {"inches", inch}, {"m", 1000 * millimetre}, {"cm", 10 * millimetre},
                          {"mm", millimetre}};

struct Sign {
  char32_t letter;
  Kind kind;
};
constexpr Sign signs[] = {{U'+', Kind::plus},       {U'-', Kind::minus},       {U'\u2010', Kind::minus},
                          {U'\u2011', Kind::minus}, {U'\u2013', Kind::minus},  {U'\u2212', Kind::minus},
                          {U'*', Kind::times},      {U'\u00d7', Kind::times},  {U'\u00b7', Kind::times},
                          {U'/', Kind::divide},     {U'\u2044', Kind::divide}, {U'\u00f7', Kind::divide},
                          {U'(', Kind::open},       {U')', Kind::close}};

struct LetterFraction {
  char32_t letter;
  int top;
  int under;
};
constexpr LetterFraction letter_fractions[] = {{U'\u00bc', 1, 4}, {U'\u00bd', 1, 2}, {U'\u00be', 3, 4},
                                               {U'\u2153', 1, 3}, {U'\u2154', 2, 3}, {U'\u215b', 1, 8},
                                               {U'\u215c', 3, 8}, {U'\u215d', 5, 8}, {U'\u215e', 7, 8}};

constexpr std::u32string_view foot_marks = U"'\u2018\u2019\u2032";
constexpr std::u32string_view inch_marks = U"\"\u201c\u201d\u2033";
constexpr std::u32string_view spaces = U" \t\u00a0\u2009\u202f";

bool is_digit(char32_t letter) { return letter >= U'0' && letter <= U'9'; }
bool is_slash(char32_t letter) { return letter == U'/' || letter == U'\u2044'; }
bool is_letter(char32_t letter) { return (letter >= U'a' && letter <= U'z') || (letter >= U'A' && letter <= U'Z'); }

// How many bytes the letter with this first byte has; 0 where no letter starts.
std::size_t letter_bytes(unsigned char first) {
  if (first < 0x80) return 1;
  if (first >= 0xc2 && first < 0xe0) return 2;
  if (first >= 0xe0 && first < 0xf0) return 3;
  return first >= 0xf0 && first < 0xf5 ? 4 : 0;
}

std::expected<std::u32string, LengthFault> letters_of(std::string_view text) {
  std::u32string letters;
  for (std::size_t at = 0; at < text.size();) {
    const auto first = static_cast<unsigned char>(text[at]);
    const std::size_t count = letter_bytes(first);
    char32_t letter = count == 1 ? first : first & (0x7fu >> count);
    bool good = count > 0 && at + count <= text.size();
    for (std::size_t i = 1; good && i < count; ++i) {
      const auto next = static_cast<unsigned char>(text[at + i]);
      good = (next & 0xc0) == 0x80;
      letter = letter << 6 | (next & 0x3fu);
    }
    if (!good) {
      return std::unexpected(LengthFault{"length-not-understood", "there is a broken letter in it", forms,
                                         static_cast<int>(letters.size()) + 1});
    }
    letters += letter;
    at += count;
  }
  return letters;
}

class Lexer {
 public:
  explicit Lexer(std::u32string_view letters) : letters_(letters) {}

  std::expected<std::vector<Token>, LengthFault> run() {
    while (!fault_) {
      const bool space = skip_spaces();
      Token token;
      token.space_before = space;
      token.column = column();
      if (at_ < letters_.size()) read(token);
      tokens_.push_back(token);
      if (token.kind == Kind::end) break;
    }
    if (fault_) return std::unexpected(*fault_);
    return tokens_;
  }

 private:
  int column() const { return static_cast<int>(at_) + 1; }
  char32_t ahead(std::size_t count = 0) const { return at_ + count < letters_.size() ? letters_[at_ + count] : 0; }

  void refuse(std::string reason, std::string mend = forms, const char* code = "length-not-understood") {
    if (!fault_) fault_ = LengthFault{code, std::move(reason), std::move(mend), column()};
  }
  void too_many_digits() { refuse("it has too many digits", "write fewer digits", "length-too-large"); }

  bool skip_spaces() {
    const std::size_t start = at_;
    while (at_ < letters_.size() && spaces.contains(letters_[at_])) ++at_;
    return at_ > start;
  }

  void read(Token& token) {
    const char32_t letter = ahead();
    if (is_digit(letter) || (letter == U'.' && is_digit(ahead(1)))) return read_number(token);
    if (is_letter(letter)) return read_word(token);
    if (foot_marks.contains(letter)) return take_unit(token, foot);
    if (inch_marks.contains(letter)) return take_unit(token, inch);
    for (const auto& fraction_letter : letter_fractions) {
      if (letter != fraction_letter.letter) continue;
      token.kind = Kind::fraction;
      token.one_letter = true;
      token.value = {fraction_letter.top, fraction_letter.under};
      ++at_;
      return;
    }
    const auto sign = std::ranges::find(signs, letter, &Sign::letter);
    if (sign == std::end(signs)) {
      return letter == U',' ? refuse("a comma has no meaning in a length", "write a decimal with a dot: 12.5")
                            : refuse("there is a letter that has no meaning in a length");
    }
    token.kind = sign->kind;
    ++at_;
  }

  void take_unit(Token& token, std::int64_t steps) {
    token.kind = Kind::unit;
    token.unit_steps = steps;
    ++at_;
  }

  void read_word(Token& token) {
    std::string word;
    std::size_t end = at_;
    for (; end < letters_.size() && is_letter(letters_[end]); ++end) {
      const auto letter = static_cast<char>(letters_[end]);
      word += letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter + ('a' - 'A')) : letter;
    }
    const auto known = std::ranges::find(words, word, &Word::word);
    if (known == std::end(words)) {
      return refuse(word.substr(0, 20) + " is no unit of length", "use ft, in, m, cm, mm or the marks ' and \"");
    }
    token.kind = Kind::unit;
    token.unit_steps = known->steps;
    at_ = end;
  }

  // The digits from here on, added to what `value` holds; how many there were.
  int read_digits(Int128& value) {
    int count = 0;
    for (; is_digit(ahead()); ++at_, ++count) {
      if (__builtin_mul_overflow(value, 10, &value) ||
          __builtin_add_overflow(value, static_cast<int>(ahead() - U'0'), &value)) {
        too_many_digits();
        return count;
      }
    }
    return count;
  }

  void read_number(Token& token) {
    token.kind = Kind::number;
    token.whole = true;
    read_digits(token.value.top);
    if (fault_) return;
    if (ahead() == U'.') return read_decimals(token);
    if (slash_of_fraction()) read_under(token);
  }

  void read_decimals(Token& token) {
    if (!is_digit(ahead(1))) return refuse("a dot needs digits after it");
    token.whole = false;
    ++at_;
    const int places = read_digits(token.value.top);
    Int128 under = 1;
    for (int i = 0; i < places && !fault_; ++i) {
      if (__builtin_mul_overflow(under, 10, &under)) return too_many_digits();
    }
    token.value = *fraction(token.value.top, under);
  }

  bool slash_of_fraction() const {
    if (!is_slash(ahead()) || !is_digit(ahead(1))) return false;
    std::size_t end = 1;
    while (is_digit(ahead(end))) ++end;
    return ahead(end) != U'.';
  }

  void read_under(Token& token) {
    ++at_;
    const std::size_t start = at_;
    Int128 under = 0;
    read_digits(under);
    if (fault_) return;
    if (under == 0) {
      at_ = start;
      return refuse("a fraction over 0 has no value", "write a fraction such as 1/2", "length-zero-division");
    }
    token.kind = Kind::fraction;
    token.whole = false;
    token.value = *fraction(token.value.top, under);
  }

  std::u32string_view letters_;
  std::size_t at_ = 0;
  std::vector<Token> tokens_;
  std::optional<LengthFault> fault_;
};

}  // namespace

std::expected<std::vector<Token>, LengthFault> length_tokens(std::string_view text) {
  const auto letters = letters_of(text);
  if (!letters) return std::unexpected(letters.error());
  return Lexer(*letters).run();
}

}  // namespace units
