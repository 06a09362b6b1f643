#include "estimate/work.h"

#include <algorithm>
#include <array>
#include <span>
#include <variant>

namespace estimate {

namespace {

using namespace std::string_view_literals;

constexpr std::array built{"paving"sv, "pool"sv,   "wall"sv,  "seat-wall"sv, "steps"sv,  "drain"sv,
                           "edge"sv,   "pillar"sv, "light"sv, "feature"sv,   "removal"sv};
constexpr std::array dug{"paving"sv, "pool"sv, "wall"sv, "seat-wall"sv, "steps"sv, "drain"sv, "pillar"sv, "edge"sv};
constexpr std::array stands_by_a_house{"paving"sv, "wall"sv, "seat-wall"sv, "steps"sv};

bool any_of(const Work& all, std::span<const std::string_view> kinds) {
  return std::ranges::any_of(kinds, [&all](std::string_view kind) { return all.has(kind); });
}

bool read_in_a_book(const plan::Job& job, const std::string& point) {
  return std::ranges::any_of(job.elements, [&point](const plan::ElementPtr& element) {
    const auto* book = std::get_if<plan::LevelBook>(&element->kind);
    return book && std::ranges::find(book->readings, point, &plan::RodReading::point) != book->readings.end();
  });
}

struct Reader {
  const plan::Job& job;
  const plan::Element& element;
  Work& all;

  void operator()(const plan::PavedArea&) { all.kinds.insert("paving"); }
  void operator()(const plan::Pool& of) {
    all.kinds.insert("pool");
    if (!of.as_built) all.kinds.insert("to-measure");
    if (!of.bonding) all.kinds.insert("no-bonding");
  }
  void operator()(const plan::Wall& of) {
    if (!of.existing) all.kinds.insert(of.free_standing ? "seat-wall" : "wall");
  }
  void operator()(const plan::Steps&) { all.kinds.insert("steps"); }
  void operator()(const plan::Building&) { all.kinds.insert("building"); }
  void operator()(const plan::KeepOut& of) {
    if (of.what == "tree") all.shown.insert("tree");
    if (of.pillar) all.kinds.insert("pillar");
  }
  void operator()(const plan::EdgeRun&) { all.kinds.insert("edge"); }
  void operator()(const plan::DrainRun& of) { all.kinds.insert(of.what == "sleeve" ? "sleeve" : "drain"); }
  void operator()(const plan::Feature& of) {
    const catalogue::Item* item = job.catalogue->item(of.item);
    const std::string kind = item ? item->kind : "";
    all.kinds.insert(kind == "light" ? "light" : "feature");
    if (kind == "light" || kind == "spout" || kind == "basin" || of.spout) all.kinds.insert("electric");
  }
  void operator()(const plan::Removal& of) { all.kinds.insert(of.fate == "leave" ? "stays" : "removal"); }
  void operator()(const plan::Protection&) { all.kinds.insert("protection"); }
  void operator()(const plan::SiteMark& of) {
    const bool measured = of.width.has_value() || (of.what != "gate" && of.what != "path");
    if (measured) all.shown.insert(of.what);
  }
  void operator()(const plan::Level& of) {
    if (of.what == "existing" && (of.height || read_in_a_book(job, element.id))) all.shown.insert("existing");
  }
  void operator()(const auto&) {}  // notes, dimensions, pictures, lines to set out from
};

bool levels_of_every_house(const plan::Job& job) {
  return std::ranges::all_of(job.elements, [](const plan::ElementPtr& element) {
    const auto* house = std::get_if<plan::Building>(&element->kind);
    return !house || house->sill || house->weep || house->siding;
  });
}

}  // namespace

bool Work::anything() const { return any_of(*this, built); }

Work work(const plan::Job& job) {
  Work all;
  for (const plan::ElementPtr& element : job.elements) std::visit(Reader{job, *element, all}, element->kind);
  if (any_of(all, dug)) all.kinds.insert("digging");
  if (all.has("building") && any_of(all, stands_by_a_house)) all.kinds.insert("at-building");
  if (all.has("building") && levels_of_every_house(job)) all.shown.insert("house-levels");
  return all;
}

}  // namespace estimate
