// Short ways to say something about an element, shared by everything along an edge.
#pragma once

#include <string>
#include <utility>

#include "takeoff/line.h"

namespace takeoff::edges {

inline problem::Problem said(problem::Severity severity, std::string code, std::string text, std::string mend,
                             const plan::ElementId& element) {
  return {severity, std::move(code), std::move(text), std::move(mend), {.element = element, .file = {}, .at = {}}};
}
inline problem::Problem notice(std::string code, std::string text, std::string mend, const plan::ElementId& element) {
  return said(problem::Severity::notice, std::move(code), std::move(text), std::move(mend), element);
}
inline problem::Problem flag(std::string code, std::string text, std::string mend, const plan::ElementId& element) {
  return said(problem::Severity::flag, std::move(code), std::move(text), std::move(mend), element);
}
inline problem::Problem fault(std::string code, std::string text, std::string mend, const plan::ElementId& element) {
  return said(problem::Severity::problem, std::move(code), std::move(text), std::move(mend), element);
}

// The item, or nullptr with a problem "item-missing" that says what it was wanted for.
const catalogue::Item* wanted(const plan::Job& job, const catalogue::Id& id, const std::string& use,
                              const plan::ElementId& element, Share& share);

// Metres of work at the catalogue's rate, straight and curved apart: a rate whose condition reads "curves x 1.4" takes
// that factor on its curves. Nothing where the length is 0; a notice "rate-missing" where the catalogue has no such
// rate.
struct RunOfWork {
  Working straight;
  Working curved;
};
void add_task(const plan::Job& job, const catalogue::Id& rate, Stage stage, const std::string& text,
              const plan::ElementId& element, const RunOfWork& work, Share& share);
void add_task(const plan::Job& job, const catalogue::Id& rate, Stage stage, const std::string& text,
              const plan::ElementId& element, const Working& work, Share& share);

// "1/2 in"-like text of a length for sentences, in the job's own system.
std::string shown(const plan::Job& job, double metres);

// The least or greatest value of a limit given in inches, in metres.
enum class Bound { least, greatest };
double limit_inches(const plan::Job& job, const catalogue::Id& id, Bound bound, double otherwise_inches);

// Pieces over what one person lifts (limit lift-person; 51 lb, the lifting equation's load constant of 23 kg): the flag
// "heavy-unit" with their count and weight each, and the fact of that name. Nothing for lighter or no pieces.
void add_weight(const plan::Job& job, const catalogue::Item& item, std::int64_t count, const plan::ElementId& element,
                Share& share);

inline constexpr units::Unit kilogram_per_square_metre{-2, 1, 0};

}  // namespace takeoff::edges
