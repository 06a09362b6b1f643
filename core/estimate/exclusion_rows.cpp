#include <array>

#include "estimate/statement_rows.h"

namespace estimate {

namespace {

constexpr auto out = plan::Statement::What::exclusion;

bool electric(const Known& of) { return of.work.has("pool") || of.work.has("electric"); }
bool electrician_priced(const Known& of) {
  return of.has_item("light-allow") || of.has_item("pump-allow") || of.added("electrician") || of.added("light-allow");
}
bool unseen(const Known& of) { return of.work.has("digging"); }
bool holds_earth(const Known& of) { return of.work.has("wall") || !of.takeoff.checks.empty(); }

constexpr std::array rows{
    StatementRow{
        "no-barrier", out, "a pool is drawn, and no barrier round it",
        [](const Known& of) { return of.work.has("pool") && !of.work.shows("barrier") && !of.added("barrier"); },
        "No pool barrier is in the price: no fence, gate, latch, cover or alarm.",
        "Local code says what barrier the pool must have, also while the work goes on; the owner has it built "
        "and inspected before there is water in the pool.",
        "pool-barrier"},
    StatementRow{
        "no-rail", out, "people walk beside a drop, and no guard can be drawn",
        [](const Known& of) { return !of.said_at("edge-guard steps-guard wall-guard").empty() && !of.added("rail"); },
        "No guard or rail is in the price where people walk beside a drop: %1.",
        "Local code decides where a guard must stand; posts through a wall's reinforcement want a licensed "
        "engineer.",
        "", [](const Known& of) { return of.said_at("edge-guard steps-guard wall-guard"); }},
    StatementRow{"no-handrail", out, "a flight has as many risers as want a handrail",
                 [](const Known& of) { return !of.said_at("steps-handrail").empty() && !of.added("handrail"); },
                 "No handrail is in the price: %1.", "Local code decides where a handrail must be.", "",
                 [](const Known& of) { return of.said_at("steps-handrail"); }},
    StatementRow{
        "no-bonding", out, "a pool is drawn without a conductor, and no bonding is priced",
        [](const Known& of) { return of.work.has("no-bonding") && !of.has_item("bond-allow") && !of.added("bonding"); },
        "No bonding of the pool, its deck and its metal parts is in the price.",
        "Bonding at a pool is asked for by electrical code: a licensed electrician does it, and it is inspected "
        "before it is covered."},
    StatementRow{"no-electrician", out, "a pool, lights or running water are drawn, and no electrician is priced",
                 [](const Known& of) { return electric(of) && !electrician_priced(of); },
                 "No supply, no wiring and no connecting of pumps or lights is in the price.",
                 "Electricity near water is left to a licensed electrician under the local code, with permit and "
                 "inspection."},
    StatementRow{
        "no-lighting", out, "no light is drawn",
        [](const Known& of) { return !of.work.has("light") && !of.has_kind("light") && !of.added("lighting"); },
        "No lighting is in the price."},
    StatementRow{"no-irrigation", out, "nothing of irrigation is priced",
                 [](const Known& of) { return !of.has_kind("irrigation") && !of.added("irrigation"); },
                 "No irrigation is in the price."},
    StatementRow{"no-irrigation-repair", out, "something is dug, and the mending of irrigation is not priced",
                 [](const Known& of) { return of.work.has("digging") && !of.added("irrigation-repair"); },
                 "Irrigation that is met in the dig is not moved or mended in this price."},
    StatementRow{"no-permit", out, "no permit line has a price",
                 [](const Known& of) { return !of.has_item("permit-allow") && !of.added("permit"); },
                 "Permits, plan review and inspection fees are not in the price.",
                 "Before the work starts the local building office is asked what permits it wants."},
    StatementRow{
        "no-engineer", out, "a wall holds earth, and no engineer is priced",
        [](const Known& of) { return holds_earth(of) && !of.has_item("engineer-allow") && !of.added("engineer"); },
        "No design, drawing or seal of an engineer is in the price.",
        "What is checked here is preliminary and no design: local code says which walls want a licensed "
        "engineer."},
    StatementRow{"no-shell", out, "a pool is drawn", [](const Known& of) { return of.work.has("pool"); },
                 "The pool's shell, plumbing, equipment and water are not in the price."},
    StatementRow{"no-drainage", out, "paving is drawn, and no pipe or channel",
                 [](const Known& of) { return of.work.has("paving") && !of.work.has("drain"); },
                 "No drain, channel or inlet is in the price: water leaves over the surface as it falls."},
    StatementRow{"no-lawn-repair", out, "something is dug, and making good is not priced",
                 [](const Known& of) { return of.work.has("digging") && !of.added("lawn-repair"); },
                 "Lawn and planting beside the work and on the way in are not made good in this price."},
    StatementRow{"no-protection", out, "no protection is drawn or priced",
                 [](const Known& of) {
                   return !of.work.has("protection") && !of.has_item("protect-allow") && !of.added("protection");
                 },
                 "Nothing is laid down to protect lawn, drive and plants on the way in."},
    StatementRow{"no-haul", out, "earth or rubble goes away, and no truck is chosen",
                 [](const Known& of) { return !of.said_at("haul-not-chosen").empty(); },
                 "Haul is not in the price: what is dug or taken out stays on the site."},
    StatementRow{"no-dump", out, "a truck hauls, and no disposal is priced",
                 [](const Known& of) { return of.has_kind("truck") && !of.has_kind("disposal") && !of.added("dump"); },
                 "Dump fees are not in the price."},
    StatementRow{"rock", out, "something is dug", unseen,
                 "What can't be seen before the dig is not in the price: rock, boulders, roots, old footings, rubbish, "
                 "bad or fouled soil, ground water. %1.",
                 "Whoever meets an unknown pipe, cable or tank stops and asks its owner or the local office.", "",
                 [](const Known& of) {
                   return std::string(of.job.offer.unit_prices.empty()
                                          ? "What turns up is priced and agreed on before the work goes on"
                                          : "What turns up is charged at the unit prices of this quote");
                 }},
    StatementRow{"not-counted", out, "the takeoff has no result for a part of the plan",
                 [](const Known& of) {
                   for (const problem::Problem& one : of.takeoff.problems)
                     if (one.severity == problem::Severity::problem) return true;
                   return false;
                 },
                 "Not counted, or not wholly, because something about it is not settled yet: %1.", "", "",
                 [](const Known& of) { return of.said_at(""); }},
};

}  // namespace

std::span<const StatementRow> exclusion_rows() { return rows; }

}  // namespace estimate
