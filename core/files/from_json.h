// From a tree of JSON values to structs, by the tables of fields.h. The first fault ends the reading; it is a sentence
// with its place in the file.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "catalogue/pattern.h"
#include "files/fields.h"
#include "files/json_read.h"
#include "plan/element.h"
#include "units/money.h"

namespace files {

// What a reading knows and finds: the file's name, and the first fault.
struct Reading {
  std::string file;
  std::optional<problem::Problem> fault;
  long long most_coins_here = most_coins;  // of an amount of money

  // Keeps the first fault and gives false, so that a reader can say `return reading.refuse(...)`.
  bool refuse(Spot spot, std::string code, std::string text, std::string mend);
  // The fault on one line: ids and words of the file that stand in it have their control characters replaced. There is
  // one.
  problem::Problem told() const;
};

// Each reads one value into what stands there already (its default) and gives false after a fault. Lengths are whole
// steps of 1/320 mm, or a text with its unit ("12' 6 1/2\"", "3.81 m"); money is whole coins.
bool read(const Value& value, std::string& into, Reading& reading);
bool read(const Value& value, bool& into, Reading& reading);
bool read(const Value& value, int& into, Reading& reading);
bool read(const Value& value, double& into, Reading& reading);
bool read(const Value& value, units::Length& into, Reading& reading);
bool read(const Value& value, units::Angle& into, Reading& reading);
bool read(const Value& value, units::Money& into, Reading& reading);
bool read(const Value& value, geometry::Point& into, Reading& reading);
bool read(const Value& value, catalogue::CellSide& into, Reading& reading);
// A field of a pack that is given must be 1 or more (code pack-empty): left out is the way to say "not known".
bool read(const Value& value, catalogue::Pack& into, Reading& reading);
bool read(const Value& value, plan::DrawnRing& into, Reading& reading);
bool read(const Value& value, plan::DrawnLine& into, Reading& reading);
bool read(const Value& value, plan::Element& into, Reading& reading);

// An id: not empty and without control characters (codes id-empty, id-control).
bool check_id(const std::string& id, Spot spot, Reading& reading);
bool expect(const Value& value, Sort sort, Reading& reading);  // else a fault "json-type"
bool unknown_field(const Value& object, std::size_t number, const std::string& known,
                   Reading& reading);                                               // always false
bool missing_field(const Value& object, std::string_view name, Reading& reading);   // always false
bool unknown_word(const Value& value, const std::string& known, Reading& reading);  // always false
bool doubled_id(const Value& value, const std::string& id, Reading& reading);       // always false

// The templates call each other for what stands inside, so all are declared first.
template <Worded T>
bool read(const Value& value, T& into, Reading& reading);
template <Tabled T>
bool read(const Value& value, T& into, Reading& reading);
template <class T>
bool read(const Value& value, std::optional<T>& into, Reading& reading);
template <class T>
bool read(const Value& value, std::shared_ptr<const T>& into, Reading& reading);
template <class T>
bool read(const Value& value, std::vector<T>& into, Reading& reading);
bool read(const Value& value, std::map<std::string, std::string>& into, Reading& reading);
template <class T>
bool read(const Value& value, std::map<std::string, T>& into, Reading& reading);

template <Worded T>
bool read(const Value& value, T& into, Reading& reading) {
  if (!expect(value, Sort::string, reading)) return false;
  std::string known;
  for (const auto& entry : words(Type<T>{})) {
    if (entry.word == value.text) {
      into = entry.value;
      return true;
    }
    known += (known.empty() ? "" : ", ") + std::string(entry.word);
  }
  return unknown_word(value, known, reading);
}

// Fields of `table` that stand in `value`, after the `extra` names, which the caller reads.
template <class T>
bool read_fields(const Value& value, T& into, const std::vector<std::string_view>& extra, Reading& reading) {
  if (!expect(value, Sort::object, reading)) return false;
  const auto table = fields(Type<T>{});
  std::vector<std::string_view> names = extra;
  std::apply([&](const auto&... field) { (names.push_back(field.name), ...); }, table);
  for (std::size_t i = 0; i < value.keys.size(); ++i) {
    bool known = false;
    for (const std::string_view name : names) known = known || name == value.keys[i].name;
    if (known) continue;
    std::string list;
    for (const std::string_view name : names) list += (list.empty() ? "" : ", ") + std::string(name);
    return unknown_field(value, i, list, reading);
  }
  const auto one = [&](const auto& field) {
    if (const Value* found = value.find(field.name)) return read(*found, into.*field.member, reading);
    return field.need == Need::optional || missing_field(value, field.name, reading);
  };
  return std::apply([&](const auto&... field) { return (one(field) && ...); }, table);
}

template <Tabled T>
bool read(const Value& value, T& into, Reading& reading) {
  return read_fields(value, into, {}, reading);
}

template <class T>
bool read(const Value& value, std::optional<T>& into, Reading& reading) {
  return read(value, into.emplace(), reading);
}

template <class T>
bool read(const Value& value, std::shared_ptr<const T>& into, Reading& reading) {
  auto made = std::make_shared<T>();
  if (!read(value, *made, reading)) return false;
  into = std::move(made);
  return true;
}

template <class T>
bool read(const Value& value, std::vector<T>& into, Reading& reading) {
  if (!expect(value, Sort::list, reading)) return false;
  into.clear();
  into.reserve(value.children.size());
  for (const Value& child : value.children) {
    if (!read(child, into.emplace_back(), reading)) return false;
  }
  return true;
}

template <class T>
const std::string& id_of(const T& entry) {
  return entry.id;
}
template <class T>
const std::string& id_of(const std::shared_ptr<const T>& entry) {
  return entry->id;
}

// A map by id is a list of entries that carry their id.
template <class T>
bool read(const Value& value, std::map<std::string, T>& into, Reading& reading) {
  if (!expect(value, Sort::list, reading)) return false;
  into.clear();
  for (const Value& child : value.children) {
    T entry{};
    if (!read(child, entry, reading)) return false;
    const std::string id = id_of(entry);
    if (!check_id(id, child.spot, reading)) return false;
    if (!into.emplace(id, std::move(entry)).second) return doubled_id(child, id, reading);
  }
  return true;
}

}  // namespace files
