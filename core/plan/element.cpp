#include "plan/element.h"

namespace plan {

std::uint64_t mark(const ElementId& id) {
  // FNV-1a, 64 bit (Fowler, Noll, Vo): offset basis and prime as published.
  std::uint64_t hash = 14695981039346656037ULL;
  for (const char letter : id) {
    hash ^= static_cast<unsigned char>(letter);
    hash *= 1099511628211ULL;
  }
  return hash == 0 ? 1 : hash;
}

namespace {
struct KindName {
  std::string operator()(const PavedArea&) const { return "paved-area"; }
  std::string operator()(const Pool&) const { return "pool"; }
  std::string operator()(const Wall&) const { return "wall"; }
  std::string operator()(const Steps&) const { return "steps"; }
  std::string operator()(const Building&) const { return "building"; }
  std::string operator()(const KeepOut&) const { return "keep-out"; }
  std::string operator()(const EdgeRun&) const { return "edge-run"; }
  std::string operator()(const DrainRun&) const { return "drain-run"; }
  std::string operator()(const Level&) const { return "level"; }
  std::string operator()(const Feature&) const { return "feature"; }
  std::string operator()(const Removal&) const { return "removal"; }
  std::string operator()(const SiteMark&) const { return "site-mark"; }
  std::string operator()(const Protection&) const { return "protection"; }
  std::string operator()(const Note&) const { return "note"; }
  std::string operator()(const Dimension&) const { return "dimension"; }
  std::string operator()(const SitePlan&) const { return "site-plan"; }
  std::string operator()(const LevelBook&) const { return "level-book"; }
  std::string operator()(const BaseLine&) const { return "base-line"; }
  std::string operator()(const TapeBook&) const { return "tape-book"; }
};
}  // namespace

std::string kind_name(const Kind& kind) { return std::visit(KindName{}, kind); }

}  // namespace plan
