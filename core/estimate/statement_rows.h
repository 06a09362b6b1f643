// The rules of the sentences, as data: used by estimate/statements alone.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "estimate/work.h"
#include "takeoff/takeoff.h"

namespace estimate {

// What the rules look at.
struct Known {
  const plan::Job& job;
  const takeoff::Takeoff& takeoff;
  Work work;
  // A line of the takeoff with an item of this kind, or this item, or an added line of this code that has a price.
  bool has_kind(std::string_view kind) const;
  bool has_item(std::string_view item) const;
  bool added(std::string_view code) const;
  // The elements at which the takeoff said one of these (by blanks apart), by name, each once: "deck, steps".
  std::string said_at(std::string_view codes) const;
};

struct StatementRow {
  const char* code;
  plan::Statement::What what;
  const char* rule;
  bool (*when)(const Known&);
  const char* text;  // %1 stands for the value
  const char* caution = "";
  const char* visit = "";  // the point of the visit that needs no sentence of its own beside this
  std::string (*value)(const Known&) = nullptr;
};

std::span<const StatementRow> exclusion_rows();
std::span<const StatementRow> assumption_rows();

}  // namespace estimate
