#include "files/dxf_pairs.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "files/drawing_dxf.h"
#include "files/files.h"

namespace files {
namespace {

using problem::Problem;

std::unexpected<Problem> refuse(const std::string& file, int line, std::string code, std::string text,
                                std::string mend) {
  return problem::fault(std::move(code), std::move(text), std::move(mend), place_in(file, {line, 1}));
}

std::string_view trimmed(std::string_view text) {
  const auto blank = [](char letter) { return letter == ' ' || letter == '\t' || letter == '\r'; };
  while (!text.empty() && blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && blank(text.back())) text.remove_suffix(1);
  return text;
}

template <class T>
std::optional<T> number_of(std::string_view text) {
  text = trimmed(text);
  if (text.starts_with('+')) text.remove_prefix(1);
  T number{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return number;
}

void put_utf8(std::uint32_t letter, std::string& into) {
  const auto low = [](std::uint32_t bits) { return static_cast<char>(0x80 | (bits & 0x3F)); };
  if (letter < 0x80) {
    into += static_cast<char>(letter);
  } else if (letter < 0x800) {
    into += static_cast<char>(0xC0 | (letter >> 6));
    into += low(letter);
  } else {
    into += static_cast<char>(0xE0 | (letter >> 12));
    into += low(letter >> 6);
    into += low(letter);
  }
}

// How many bytes the letter at the front has in UTF-8; 0 where it is none.
std::size_t letter_bytes(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char first = byte(0);
  const std::size_t count = first < 0x80   ? 1
                            : first < 0xC2 ? 0
                            : first < 0xE0 ? 2
                            : first < 0xF0 ? 3
                            : first < 0xF5 ? 4
                                           : 0;
  if (count > text.size()) return 0;
  for (std::size_t i = 1; i < count; ++i)
    if ((byte(i) & 0xC0) != 0x80) return 0;
  if ((first == 0xE0 && byte(1) < 0xA0) || (first == 0xED && byte(1) > 0x9F)) return 0;
  if ((first == 0xF0 && byte(1) < 0x90) || (first == 0xF4 && byte(1) > 0x8F)) return 0;
  return count;
}

// "\U+00F1" is a letter written by its number.
std::optional<std::uint32_t> escaped(std::string_view text) {
  if (!text.starts_with("\\U+") || text.size() < 7) return std::nullopt;
  std::uint32_t letter = 0;
  const auto [end, error] = std::from_chars(text.data() + 3, text.data() + 7, letter, 16);
  if (error != std::errc() || end != text.data() + 7 || (letter >= 0xD800 && letter < 0xE000)) return std::nullopt;
  return letter;
}

// Names of layers as UTF-8: newer files are; of older ones a byte that is none is taken as Latin-1.
std::string name_of(std::string_view text) {
  text = trimmed(text);
  std::string name;
  while (!text.empty()) {
    const auto letter = escaped(text);
    const std::size_t bytes = letter ? 7 : letter_bytes(text);
    if (letter)
      put_utf8(*letter, name);
    else if (bytes == 0)
      put_utf8(static_cast<unsigned char>(text.front()), name);
    else
      name += text.substr(0, bytes);
    text.remove_prefix(std::max<std::size_t>(bytes, 1));
  }
  return name;
}

bool is_drawn(std::string_view type) {
  static constexpr std::array drawn{"LINE",       "ARC",      "CIRCLE", "ELLIPSE", "SPLINE",
                                    "LWPOLYLINE", "POLYLINE", "VERTEX", "POINT",   "INSERT"};
  return std::ranges::find(drawn, type) != drawn.end();
}

// Codes that shape or place what is drawn; all others are passed over.
bool is_wanted(std::string_view type, int code) {
  static constexpr std::array wanted{10, 20, 30, 11, 21, 31, 38, 40, 42, 50, 51, 67, 70, 210, 220, 230};
  static constexpr std::array of_curves{41, 43, 44, 45, 71};  // of other types these are widths and colours of a kind
  const bool curve = type == "ELLIPSE" || type == "SPLINE" || type == "INSERT";
  return std::ranges::find(wanted, code) != wanted.end() ||
         (curve && std::ranges::find(of_curves, code) != of_curves.end());
}

std::string in_capitals(std::string name) {
  std::ranges::transform(name, name.begin(),
                         [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
  return name;
}

struct Pair {
  int code = 0;
  std::string_view value;
};

class Pairs {
 public:
  Pairs(std::string_view text, const std::string& file) : rest_(text), file_(file) {}
  int line() const { return line_; }  // of the last value

  // The next pair; nothing at the end of the text.
  problem::Result<std::optional<Pair>> next() {
    const auto code_line = next_line();
    if (!code_line || (rest_.empty() && trimmed(*code_line).empty())) return std::nullopt;
    const auto code = number_of<int>(*code_line);
    if (!code) {
      return refuse(file_, line_, "dxf-code", in_quotes(trimmed(*code_line)) + " stands where a group code belongs",
                    "take a text DXF as its program wrote it");
    }
    const auto value = next_line();
    if (!value) return std::nullopt;
    return Pair{*code, trimmed(*value)};
  }

 private:
  std::optional<std::string_view> next_line() {
    if (rest_.empty()) return std::nullopt;
    ++line_;
    const std::size_t end = std::min(rest_.find('\n'), rest_.size());
    const std::string_view line = rest_.substr(0, end);
    rest_.remove_prefix(std::min(end + 1, rest_.size()));
    return line;
  }

  std::string_view rest_;
  const std::string& file_;
  int line_ = 0;
};

// Reads the sections one pair after the other.
struct Sections {
  const std::string& file;
  DxfText made{};
  std::string section{};  // empty: between two
  std::string variable{};
  std::string application{};  // whose extended data of an entity is being read
  bool seen = false;          // the section of entities
  bool ended = false;
  bool named = true;  // the name of the section that began has come
  std::size_t entities = 0;
  std::size_t all = 0;                     // vertices and what is in blocks too
  std::vector<DxfEntity>* into = nullptr;  // that what is drawn goes into; null: nothing is drawn here
  DxfBlock block{};                        // that is being read ...
  std::string block_name{};                // ... and its name, once it has come

  problem::Result<void> begin(std::string_view what, int line) {
    application.clear();
    if (what == "SECTION") {
      named = false;
    } else if (what == "ENDSEC") {
      section.clear();
    } else if (what == "EOF") {
      ended = true;
    } else if (section == "BLOCKS" && what == "BLOCK") {
      block = {};
      block.line = line;
      block_name.clear();
      into = nullptr;
    } else if (section == "BLOCKS" && what == "ENDBLK") {
      if (!block_name.empty()) made.blocks[block_name] = std::move(block);
      into = nullptr;
      block_name.clear();
    } else if (what != "SEQEND" && (section == "ENTITIES" || (section == "BLOCKS" && !block_name.empty()))) {
      into = section == "ENTITIES" ? &made.entities : &block.entities;
      if (++all > static_cast<std::size_t>(most_values))
        return refuse(file, line, "dxf-many", "the drawing has more than 1,000,000 entities", "split the file");
      const bool counts = section == "ENTITIES" && what != "VERTEX";
      if (counts) ++entities;
      into->push_back({std::string(what), "0", section == "ENTITIES" ? entities : 0, line, {}});
    }
    return {};
  }

  // The head of a block: its name and where its base point is.
  void in_block(const Pair& pair) {
    if (pair.code == 2) block_name = in_capitals(name_of(pair.value));
    const double number = number_of<double>(pair.value).value_or(0);
    if (!std::isfinite(number)) return;
    if (pair.code == 10) block.x = number;
    if (pair.code == 20) block.y = number;
    if (pair.code == 30) block.z = number;
  }

  void in_extended(const Pair& pair, DxfEntity& entity) {
    if (pair.code == 1001) application = pair.value;
    if (application != dxf_application) return;
    if (pair.code == 1000 && pair.value.starts_with("id ")) entity.id = name_of(pair.value.substr(3));
    if (pair.code == 1070) entity.ring = std::max(number_of<int>(pair.value).value_or(0), 0);
  }

  problem::Result<void> in_entity(const Pair& pair, int line) {
    DxfEntity& entity = into->back();
    if (pair.code >= 1000) {
      in_extended(pair, entity);
      return {};
    }
    if (pair.code == 8) entity.layer = name_of(pair.value);
    if (pair.code == 2 && entity.type == "INSERT") entity.block = in_capitals(name_of(pair.value));
    if (!is_drawn(entity.type) || !is_wanted(entity.type, pair.code)) {
      if (pair.code == 67 && number_of<int>(pair.value).value_or(0) != 0) entity.numbers.push_back({67, 1, line});
      return {};
    }
    const auto number = number_of<double>(pair.value);
    if (!number || !std::isfinite(*number)) {
      return refuse(file, line, "dxf-number",
                    in_quotes(pair.value) + " is no number, and a " + entity.type + " needs one here",
                    "take a text DXF as its program wrote it");
    }
    entity.numbers.push_back({pair.code, *number, line});
    return {};
  }

  problem::Result<void> take(const Pair& pair, int line) {
    if (pair.code == 999) return {};  // a comment
    if (pair.code == 0) return begin(pair.value, line);
    if (!named && pair.code == 2) {
      section = pair.value;
      into = nullptr;
      seen = seen || section == "ENTITIES";
      named = true;
    } else if (section == "HEADER") {
      if (pair.code == 9) variable = pair.value;
      if (pair.code == 70 && variable == "$INSUNITS") {
        const auto unit = number_of<int>(pair.value);
        if (!unit)
          return refuse(file, line, "dxf-number", in_quotes(pair.value) + " is no number of a unit",
                        "name the unit with --units");
        made.unit = *unit;
        made.unit_line = line;
      }
    } else if (into != nullptr && !into->empty() && (section == "ENTITIES" || section == "BLOCKS")) {
      return in_entity(pair, line);
    } else if (section == "BLOCKS" && named) {
      in_block(pair);
    }
    return {};
  }
};

}  // namespace

const DxfNumber* DxfEntity::find(int code) const {
  const auto found = std::ranges::find(numbers, code, &DxfNumber::code);
  return found == numbers.end() ? nullptr : &*found;
}

double DxfEntity::number_or(int code, double otherwise) const {
  const DxfNumber* found = find(code);
  return found == nullptr ? otherwise : found->value;
}

problem::Result<DxfText> read_dxf_text(std::string_view text, const std::string& file) {
  if (text.size() > most_bytes) return refuse(file, 1, "dxf-large", "the file is larger than 64 MiB", "split the file");
  if (const auto nul = text.find('\0'); nul != std::string_view::npos)
    return refuse(file, 1, "dxf-binary", "this is no text: a binary DXF, or another kind of drawing",
                  "save it as a DXF in text (ASCII) form");
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  Pairs pairs(text, file);
  Sections sections{file};
  while (!sections.ended) {
    const auto pair = pairs.next();
    if (!pair) return std::unexpected(pair.error());
    if (!*pair) break;
    if (auto taken = sections.take(**pair, pairs.line()); !taken) return std::unexpected(taken.error());
  }
  const int last = std::max(pairs.line(), 1);
  if (!sections.ended)
    return refuse(file, last, "dxf-ends-early", "the file ends before its end mark (0, EOF)", "bring the whole file");
  if (!sections.seen)
    return refuse(file, last, "dxf-empty", "there is no section ENTITIES: nothing is drawn",
                  "take a DXF of the drawing itself");
  return std::move(sections.made);
}

}  // namespace files
