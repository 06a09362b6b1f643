// How a struct stands in JSON, as data: the names of its fields in the order in which they are written. Reader, writer
// and the tests of the schema all go by these tables (catalogue_fields.h, job_fields.h), so that none can forget a
// field.
#pragma once

#include <array>
#include <string_view>
#include <tuple>

namespace files {

// A mark for picking a table by type, without a value of it.
template <class T>
struct Type {};

enum class Need { optional, required };  // optional: left out when it has the struct's default

template <class Struct, class Member>
struct Field {
  std::string_view name;
  Member Struct::* member;
  Need need = Need::optional;
};

// The word of a file for one value of an enum.
template <class Enum>
struct Word {
  std::string_view word;
  Enum value;
};

// Whole numbers of a file are read within these bounds, so that no sum or product of them can run over.
inline constexpr long long most_count = 1'000'000'000;              // pieces, days, risers ...
inline constexpr long long most_steps = 320'000'000'000'000;        // lengths: 1e9 m
inline constexpr long long most_coins = 1'000'000'000;              // a price
inline constexpr long long most_sum_coins = 1'000'000'000'000'000;  // a sum of many

// Types that have a table of fields, and enums that have a table of words.
template <class T>
concept Tabled = requires { fields(Type<T>{}); };
template <class T>
concept Worded = requires { words(Type<T>{}); };

}  // namespace files
