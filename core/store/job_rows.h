// The jobs of the book as rows of a list: searched as one types, sorted by any column, archived ones apart.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "units/money.h"

namespace store {

// How far the work is, from the first call to the last bill. In the order in which a job goes through them.
enum class State { asked, quoted, agreed, building, closed };
inline constexpr State all_states[] = {State::asked, State::quoted, State::agreed, State::building, State::closed};
std::string word(State state);                             // as the book has it: "asked"
std::optional<State> state_of(std::string_view its_word);  // nothing where there is no such word

struct JobRow {
  std::int64_t id = 0;
  std::string name;
  std::string customer;
  std::string place;
  std::int64_t edits = 0;  // how often it was written
  std::string number;      // the office's own
  State state = State::asked;
  bool archived = false;
  std::string changed;        // 2026-11-28T21:47:26Z (UTC); empty: before the book took note of it
  std::int64_t versions = 0;  // saved of it
  std::string currency;       // of the newest version, as its decimals and total
  int decimals = 2;
  std::optional<units::Money> total;  // with tax; nothing: no version yet
};

enum class Column { number, name, customer, place, state, changed, versions, total };
enum class Archived { left_out, shown, only };

// What a list shows. Every word of `text` must stand somewhere in number, name, customer or place; capitals and accents
// make no difference (pena finds Peña).
struct Wanted {
  std::string text{};
  std::optional<Column> by{};  // nothing: as they come, from the book the newest first
  bool falling = false;        // Z to A, the newest or the dearest first
  Archived archived = Archived::left_out;
};

// Those of the rows that are wanted, in the wanted order; equal ones stay as they came. Numbers inside words count as
// numbers (2026-9 before 2026-10). Jobs without a total come last, either way.
std::vector<JobRow> arranged(const std::vector<JobRow>& rows, const Wanted& wanted);

// A text without capitals and accents, for comparing.
std::string plain(const std::string& text);

}  // namespace store
