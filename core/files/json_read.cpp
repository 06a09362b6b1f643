#include "files/json_read.h"

#include <algorithm>
#include <utility>

// The one place where Boost.JSON's own code is compiled; its `parse` is not used: it alters doubles and drops doubled
// keys.
#include <boost/json/basic_parser_impl.hpp>
#include <boost/json/src.hpp>

#include "files/files.h"

namespace files {
namespace {

namespace json = boost::json;

// The parser tells what it read but not where, and it tells it in the order of the text. So a second walk over the same
// bytes, token by token, finds each place.
class Walk {
 public:
  explicit Walk(std::string_view text) : text_(text) {}

  // Passes over what stands between tokens.
  Spot next() {
    while (at_ < text_.size() && std::string_view(" \t\r\n,:").contains(text_[at_])) step();
    return {line_, column_};
  }
  void over(std::size_t bytes) {
    for (std::size_t i = 0; i < bytes && at_ < text_.size(); ++i) step();
  }
  void over_string() {
    step();
    while (at_ < text_.size() && text_[at_] != '"') {
      if (text_[at_] == '\\') step();
      step();
    }
    step();
  }
  std::string_view over_number() {
    const std::size_t from = at_;
    while (at_ < text_.size() && std::string_view("+-.eE0123456789").contains(text_[at_])) step();
    return text_.substr(from, at_ - from);
  }
  Spot spot_of(std::size_t byte) {
    over(byte > at_ ? byte - at_ : 0);
    return {line_, column_};
  }

 private:
  void step() {
    if (at_ >= text_.size()) return;
    const auto letter = static_cast<unsigned char>(text_[at_++]);
    if (letter == '\n') {
      ++line_;
      column_ = 1;
    } else if (at_ >= text_.size() || (static_cast<unsigned char>(text_[at_]) & 0xC0) != 0x80) {
      ++column_;  // the last byte of a character
    }
  }

  std::string_view text_;
  std::size_t at_ = 0;
  int line_ = 1;
  int column_ = 1;
};

// The first key of an object that was there before.
const Key* doubled(const std::vector<Key>& keys) {
  std::vector<std::pair<std::string_view, const Key*>> sorted;
  sorted.reserve(keys.size());
  for (const Key& key : keys) sorted.emplace_back(key.name, &key);
  std::ranges::sort(sorted);
  const Key* first = nullptr;
  for (std::size_t i = 1; i < sorted.size(); ++i) {
    const auto& [name, key] = sorted[i];
    if (name == sorted[i - 1].first && (first == nullptr || key < first)) first = key;
  }
  return first;
}

struct Handler {
  static constexpr std::size_t max_object_size = std::size_t(-1);
  static constexpr std::size_t max_array_size = std::size_t(-1);
  static constexpr std::size_t max_key_size = std::size_t(-1);
  static constexpr std::size_t max_string_size = std::size_t(-1);

  explicit Handler(std::string_view text) : walk(text) {}

  Walk walk;
  std::vector<Value> open{Value{}};  // the first holds the document
  std::vector<Key> key_of{Key{}};    // the key under which each open value goes
  std::string pieces;
  int values = 0;
  std::optional<problem::Problem> fault;

  bool stop(json::error_code& ec, std::string code, std::string text, std::string mend, Spot spot) {
    fault = problem::Problem{problem::Severity::problem, std::move(code), std::move(text), std::move(mend),
                             place_in({}, spot)};
    ec = json::error::syntax;
    return false;
  }

  bool count(json::error_code& ec, Spot spot) {
    if (++values <= most_values) return true;
    return stop(ec, "json-many", "the file holds more than 1,000,000 values", "split it into several files", spot);
  }
  void put(Value value) {
    Value& into = open.back();
    if (into.sort == Sort::object) into.keys.push_back(std::move(key_of.back()));
    into.children.push_back(std::move(value));
  }
  bool begin(Sort sort, json::error_code& ec) {
    Value value{.sort = sort};
    value.spot = walk.next();
    walk.over(1);
    open.push_back(std::move(value));
    key_of.emplace_back();
    return count(ec, open.back().spot);
  }
  bool end(json::error_code& ec) {
    walk.next();
    walk.over(1);
    if (const Key* key = doubled(open.back().keys)) {
      return stop(ec, "json-doubled-key", "the field " + in_quotes(key->name) + " stands here for the second time",
                  "take one of the two out", key->spot);
    }
    Value done = std::move(open.back());
    open.pop_back();
    key_of.pop_back();
    put(std::move(done));
    return true;
  }
  bool scalar(Sort sort, std::size_t bytes, bool truth, json::error_code& ec) {
    Value value{.sort = sort, .truth = truth};
    value.spot = walk.next();
    walk.over(bytes);
    put(std::move(value));
    return count(ec, open.back().children.back().spot);
  }
  bool number(json::error_code& ec) {
    Value value{.sort = Sort::number};
    value.spot = walk.next();
    value.text = walk.over_number();
    put(std::move(value));
    return count(ec, open.back().children.back().spot);
  }

  bool on_document_begin(json::error_code&) { return true; }
  bool on_document_end(json::error_code&) { return true; }
  bool on_array_begin(json::error_code& ec) { return begin(Sort::list, ec); }
  bool on_array_end(std::size_t, json::error_code& ec) { return end(ec); }
  bool on_object_begin(json::error_code& ec) { return begin(Sort::object, ec); }
  bool on_object_end(std::size_t, json::error_code& ec) { return end(ec); }
  bool on_string_part(std::string_view part, std::size_t, json::error_code&) {
    pieces += part;
    return true;
  }
  bool on_string(std::string_view part, std::size_t, json::error_code& ec) {
    Value value{.sort = Sort::string, .text = std::exchange(pieces, {}).append(part)};
    value.spot = walk.next();
    walk.over_string();
    put(std::move(value));
    return count(ec, open.back().children.back().spot);
  }
  bool on_key_part(std::string_view part, std::size_t n, json::error_code& ec) { return on_string_part(part, n, ec); }
  bool on_key(std::string_view part, std::size_t, json::error_code&) {
    const Spot spot = walk.next();
    walk.over_string();
    key_of.back() = Key{std::exchange(pieces, {}).append(part), spot};
    return true;
  }
  bool on_number_part(std::string_view, json::error_code&) { return true; }
  bool on_int64(std::int64_t, std::string_view, json::error_code& ec) { return number(ec); }
  bool on_uint64(std::uint64_t, std::string_view, json::error_code& ec) { return number(ec); }
  bool on_double(double, std::string_view, json::error_code& ec) { return number(ec); }
  bool on_bool(bool truth, json::error_code& ec) { return scalar(Sort::boolean, truth ? 4 : 5, truth, ec); }
  bool on_null(json::error_code& ec) { return scalar(Sort::null, 4, false, ec); }
  bool on_comment_part(std::string_view, json::error_code&) { return true; }
  bool on_comment(std::string_view, json::error_code&) { return true; }
};

problem::Problem syntax_fault(const json::error_code& ec, Spot spot) {
  problem::Problem fault{problem::Severity::problem, "json-syntax", "this is not JSON",
                         "look for a missing comma, quote or bracket before this place", place_in({}, spot)};
  if (ec == json::error::incomplete) {
    fault.code = "json-ends-early";
    fault.text = "the file ends before its last bracket is closed";
    fault.mend = "take a complete copy of the file";
  } else if (ec == json::error::too_deep) {
    fault.code = "json-deep";
    fault.text = "lists and objects stand more than 64 deep in each other";
    fault.mend = "this can't be a file of this program; take another";
  } else if (ec == json::error::exponent_overflow) {
    fault.text = "the exponent of this number is too large";
    fault.mend = "write the number without it";
  } else if (ec == json::error::extra_data) {
    fault.text = "more text follows after the end of the JSON value";
    fault.mend = "take out what follows";
  } else if (ec == json::error::illegal_leading_surrogate || ec == json::error::illegal_trailing_surrogate ||
             ec == json::error::expected_hex_digit || ec == json::error::expected_utf16_escape) {
    fault.text = "this \\u escape stands for no character";
    fault.mend = "write the character itself in UTF-8";
  }
  return fault;
}

}  // namespace

const Value* Value::find(std::string_view name) const {
  for (std::size_t i = 0; i < keys.size(); ++i) {
    if (keys[i].name == name) return &children[i];
  }
  return nullptr;
}

problem::Result<Value> parse_json(std::string_view text, const std::string& file) {
  if (text.size() > most_bytes) {
    return problem::fault("json-large", "the file is larger than 64 MiB", "split it into several files",
                          place_in(file));
  }
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  json::parse_options options;
  options.max_depth = most_levels;
  json::basic_parser<Handler> parser(options, text);
  json::error_code ec;
  const std::size_t used = parser.write_some(false, text.data(), text.size(), ec);
  Handler& handler = parser.handler();
  if (!ec && used < text.size()) ec = json::error::extra_data;
  if (ec) {
    const problem::Problem fault = handler.fault ? *handler.fault : syntax_fault(ec, Walk(text).spot_of(used));
    return std::unexpected(problem::in_file(fault, file));
  }
  return std::move(handler.open.front().children.front());
}

problem::Place place_in(const std::string& file, Spot spot) { return {{}, file, spot.line, spot.column, {}}; }

std::string sort_name(Sort sort) {
  switch (sort) {
    case Sort::null: return "null";
    case Sort::boolean: return "true or false";
    case Sort::number: return "a number";
    case Sort::string: return "a text";
    case Sort::list: return "a list";
    case Sort::object: return "an object";
  }
  return {};
}

std::string in_quotes(std::string_view text) {
  std::string words = "\"";
  std::size_t letters = 0;
  for (const char letter : text) {
    const auto byte = static_cast<unsigned char>(letter);
    if ((byte & 0xC0) != 0x80 && ++letters > 60) return words + "...\"";
    words += byte < 0x20 || byte == 0x7F ? '?' : letter;
  }
  return words + "\"";
}

}  // namespace files
