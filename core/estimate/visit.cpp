#include "estimate/visit.h"

#include <algorithm>
#include <array>
#include <ranges>

namespace estimate {

namespace {

struct Row {
  const char* code;
  const char* jobs;
  const char* shown;  // words of the plan, any of which answers it; empty: none
  const char* question;
  const char* assumption;
  const char* caution = "";
};

constexpr std::array rows{
    // The way in.
    Row{"gate", "always", "gate", "How wide are the gate and the narrowest place of the way in?",
        "Gate and way in are taken as wide enough for the machines that the hours are for."},
    Row{"path", "always", "path", "How steep and how long is the way in, over what, and can it carry a loaded machine?",
        "The way in is taken as firm and gentle enough for loaded barrows and machines."},
    Row{"drop-spot", "always", "drop-spot", "Where can pallets, stone and spoil stand, and can the truck reach it?",
        "A truck is taken to reach a free, firm place for pallets and stone close to the work."},
    Row{"parking", "always", "", "Where do trucks and the crew park, and is leave of the road office wanted?",
        "Trucks and crew are taken to park at the site without fee or leave."},
    Row{"neighbours", "always", "",
        "Who lives beside it: shared drive, fences, hours of noise, dust, what to agree on?",
        "Nothing is taken to be agreed on with neighbours, and working hours to be the usual ones."},
    Row{"overhead", "always", "overhead-line", "What lines hang over the way in, the drop spot and the work, how high?",
        "No overhead line is taken to hang over the way in, the drop spot or the work.",
        "Booms and raised bodies keep the distance that the line's owner and safety law ask for; a competent person "
        "looks before anything is lifted."},
    Row{"power-water", "always", "", "Where do power and water for the saw come from, and how much do they give?",
        "Power and water for the saw are taken to be free of charge within reach of a hose.",
        "The saw runs on a supply with ground-fault protection, as local code asks for it."},
    // What may not be touched.
    Row{"services", "digging removal", "buried-service",
        "What lies buried: gas, power, water, sewer, cable, irrigation? Has the locating service marked it?",
        "No buried service is taken to lie in the dig.", locating_caution},
    Row{"septic", "digging", "septic", "Is there a septic tank or field, and where?",
        "No septic tank or field is taken to lie near the work or under the way in.",
        "The local health office says how near may be dug, driven and drained."},
    Row{"well", "digging drain", "well", "Is there a well, and where?", "No well is taken to lie near the work.",
        "The local health office says how near may be dug and drained."},
    Row{"lot-line", "always", "lot-line", "Where is the lot line: pins found, or a survey?",
        "All work is taken to lie inside the lot; the owner shows the line."},
    Row{"setbacks", "always", "setback", "What setbacks and what limit of sealed area does the town ask for?",
        "No setback and no limit of sealed area is taken to bear on the work; the building office decides."},
    Row{"easements", "always", "easement flood", "Are there easements or flood areas on the lot?",
        "No easement and no flood area is taken to touch the work."},
    Row{"trees", "digging", "tree", "Which trees stay, how thick are they, and how near is the dig?",
        "No tree that stays is taken to have its roots in the dig or under the way in."},
    // Water, ground and house.
    Row{"downspouts", "paving drain at-building", "downspout",
        "Where do the downspouts come down, and where does the water go?",
        "No downspout is taken to let its water onto the work."},
    Row{"house-levels", "at-building", "house-levels",
        "How high are sills, weeps, vents and siding over the ground, all along?",
        "Sills, weeps, vents and siding are taken to stay above the paving by what local code asks for."},
    Row{"soil", "digging", "", "What does the probe find, spade by spade: topsoil, fill, clay, sand, rock?",
        "The soil is taken as common earth that carries the base as drawn.",
        "A competent person judges the ground and the cut faces before anyone goes in."},
    Row{"wet", "digging", "", "Is it wet: standing water, moss, damp cellar, springs, a high water table?",
        "The dig is taken to stay dry: no pumping is counted.",
        "Wet ground stands less steep: a competent person looks at a wet dig before anyone goes in."},
    // By kind of job.
    Row{"pool-kind", "pool", "",
        "What is the pool: concrete, liner or one-piece shell, how deep, who builds it and when?",
        "The pool is taken to be as drawn and ready for the deck when the crew comes.",
        "The pool's builder says what load may stand beside the shell."},
    Row{"pool-beam", "pool", "",
        "How wide and how level is the beam or the edge that carries the coping, and is it sound?",
        "The pool's edge is taken as level, sound and wide enough for the coping."},
    Row{"pool-skimmers", "pool", "", "Where are skimmers, lids, jets, lights and pipes in the edge and under the deck?",
        "No skimmer, lid or pipe is taken to need more than a cut in the units.",
        "What is electrical at a pool is left to a licensed electrician and the local code."},
    Row{"pool-barrier", "pool", "barrier", "What barrier is there or is planned, with what gates, and who builds it?",
        "The barrier round the pool is taken to be somebody else's work.",
        "Local code says what barrier the pool must have, also while the work goes on."},
    Row{"wall-load", "wall", "", "What stands, drives or runs behind the wall: slope, drive, shed, fence, water?",
        "Behind the wall nothing is taken to stand, drive or run but what is drawn.",
        "Loads on a wall are for local code and a licensed engineer to judge."},
    Row{"wall-outlet", "wall drain", "", "Where can pipes come out into the open, and whose ground is it?",
        "A free outlet on the owner's ground is taken to lie where it is drawn."},
    Row{"steps-ends", "steps", "", "What is at the head and the foot of the steps: door, landing, drive, public way?",
        "The heights at the head and the foot of the steps are taken to be as drawn.",
        "Local code decides on steps, landings, handrails and guards."},
    Row{"old-work", "removal stays", "", "How thick is what goes or stays, is there steel in it, what lies under it?",
        "What is taken out or built on is taken to be as thick and as sound as drawn."},
};

// Words apart by blanks: does any of them hold?
bool any_word(std::string_view words, const auto& holds) {
  for (const auto part : std::views::split(words, ' '))
    if (!part.empty() && holds(std::string_view(part.begin(), part.end()))) return true;
  return false;
}

bool called_for(const Row& row, const Work& work) {
  return !work.anything() ||
         any_word(row.jobs, [&work](std::string_view kind) { return kind == "always" || work.has(kind); });
}

bool blank(const std::string& text) { return text.find_first_not_of(" \t\r\n") == std::string::npos; }

// The latest by date; of one date, or without dates, the last entered.
const plan::VisitAnswer* latest(const plan::Job& job, std::string_view code) {
  const plan::VisitAnswer* found = nullptr;
  for (const plan::VisitAnswer& entry : job.visit)
    if (entry.point == code && !blank(entry.answer) && (!found || entry.when >= found->when)) found = &entry;
  return found;
}

}  // namespace

const plan::VisitAnswer* entry_of(const plan::Job& job, std::string_view point) {
  if (const plan::VisitAnswer* said = latest(job, point)) return said;
  const auto last = std::ranges::find(job.visit | std::views::reverse, point, &plan::VisitAnswer::point);
  return last == job.visit.rend() ? nullptr : &*last;
}

plan::Job answered(const plan::Job& job, const plan::VisitAnswer& entry) {
  plan::Job after = job;
  const plan::VisitAnswer* now = entry_of(job, entry.point);
  const bool none = blank(entry.answer) && entry.photo.empty();
  if (now == nullptr) {
    if (!none) after.visit.push_back(entry);
    return after;
  }
  const auto at = after.visit.begin() + (now - job.visit.data());
  if (none)
    after.visit.erase(at);
  else
    *at = entry;
  return after;
}

std::vector<VisitPoint> visit_list(const plan::Job& job) {
  using Answer = VisitPoint::Answer;
  const Work all = work(job);
  std::vector<VisitPoint> list;
  for (const Row& row : rows) {
    const plan::VisitAnswer* said = latest(job, row.code);
    VisitPoint point;
    point.called_for = called_for(row, all);
    if (!point.called_for && !said) continue;
    point.code = row.code;
    point.question = row.question;
    point.jobs = row.jobs;
    point.assumption = row.assumption;
    point.caution = row.caution;
    if (any_word(row.shown, [&all](std::string_view what) { return all.shows(what); })) point.answer = Answer::shown;
    if (said) {
      point.answer = Answer::said;
      point.text = said->answer;
      point.when = said->when;
      point.photo = said->photo;
    }
    list.push_back(std::move(point));
  }
  return list;
}

std::vector<std::string> visit_codes() {
  std::vector<std::string> codes;
  for (const Row& row : rows) codes.emplace_back(row.code);
  return codes;
}

}  // namespace estimate
