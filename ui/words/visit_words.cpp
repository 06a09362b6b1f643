// The list of the site visit as core gives it in English (core/estimate/visit.cpp), marked for translation: questions,
// what the quote takes for granted while they are open, cautions. A test holds this list against core's.
#include "ui/words/visit_words.h"

#include <QtGlobal>
#include <iterator>

namespace ui {

namespace {

constexpr const char* visit_words[] = {
    QT_TRANSLATE_NOOP("core",
                      "Before any digging the locating service is called and its marks are waited for; local law says "
                      "how near to a mark is dug by hand."),
    QT_TRANSLATE_NOOP("core", "How wide are the gate and the narrowest place of the way in?"),
    QT_TRANSLATE_NOOP("core", "Gate and way in are taken as wide enough for the machines that the hours are for."),
    QT_TRANSLATE_NOOP("core", "How steep and how long is the way in, over what, and can it carry a loaded machine?"),
    QT_TRANSLATE_NOOP("core", "The way in is taken as firm and gentle enough for loaded barrows and machines."),
    QT_TRANSLATE_NOOP("core", "Where can pallets, stone and spoil stand, and can the truck reach it?"),
    QT_TRANSLATE_NOOP("core", "A truck is taken to reach a free, firm place for pallets and stone close to the work."),
    QT_TRANSLATE_NOOP("core", "Where do trucks and the crew park, and is leave of the road office wanted?"),
    QT_TRANSLATE_NOOP("core", "Trucks and crew are taken to park at the site without fee or leave."),
    QT_TRANSLATE_NOOP("core", "Who lives beside it: shared drive, fences, hours of noise, dust, what to agree on?"),
    QT_TRANSLATE_NOOP("core",
                      "Nothing is taken to be agreed on with neighbours, and working hours to be the usual ones."),
    QT_TRANSLATE_NOOP("core", "What lines hang over the way in, the drop spot and the work, how high?"),
    QT_TRANSLATE_NOOP("core", "No overhead line is taken to hang over the way in, the drop spot or the work."),
    QT_TRANSLATE_NOOP("core",
                      "Booms and raised bodies keep the distance that the line's owner and safety law ask for; a "
                      "competent person looks before anything is lifted."),
    QT_TRANSLATE_NOOP("core", "Where do power and water for the saw come from, and how much do they give?"),
    QT_TRANSLATE_NOOP("core", "Power and water for the saw are taken to be free of charge within reach of a hose."),
    QT_TRANSLATE_NOOP("core", "The saw runs on a supply with ground-fault protection, as local code asks for it."),
    QT_TRANSLATE_NOOP(
        "core", "What lies buried: gas, power, water, sewer, cable, irrigation? Has the locating service marked it?"),
    QT_TRANSLATE_NOOP("core", "No buried service is taken to lie in the dig."),
    QT_TRANSLATE_NOOP("core", "Is there a septic tank or field, and where?"),
    QT_TRANSLATE_NOOP("core", "No septic tank or field is taken to lie near the work or under the way in."),
    QT_TRANSLATE_NOOP("core", "The local health office says how near may be dug, driven and drained."),
    QT_TRANSLATE_NOOP("core", "Is there a well, and where?"),
    QT_TRANSLATE_NOOP("core", "No well is taken to lie near the work."),
    QT_TRANSLATE_NOOP("core", "The local health office says how near may be dug and drained."),
    QT_TRANSLATE_NOOP("core", "Where is the lot line: pins found, or a survey?"),
    QT_TRANSLATE_NOOP("core", "All work is taken to lie inside the lot; the owner shows the line."),
    QT_TRANSLATE_NOOP("core", "What setbacks and what limit of sealed area does the town ask for?"),
    QT_TRANSLATE_NOOP(
        "core", "No setback and no limit of sealed area is taken to bear on the work; the building office decides."),
    QT_TRANSLATE_NOOP("core", "Are there easements or flood areas on the lot?"),
    QT_TRANSLATE_NOOP("core", "No easement and no flood area is taken to touch the work."),
    QT_TRANSLATE_NOOP("core", "Which trees stay, how thick are they, and how near is the dig?"),
    QT_TRANSLATE_NOOP("core", "No tree that stays is taken to have its roots in the dig or under the way in."),
    QT_TRANSLATE_NOOP("core", "Where do the downspouts come down, and where does the water go?"),
    QT_TRANSLATE_NOOP("core", "No downspout is taken to let its water onto the work."),
    QT_TRANSLATE_NOOP("core", "How high are sills, weeps, vents and siding over the ground, all along?"),
    QT_TRANSLATE_NOOP("core",
                      "Sills, weeps, vents and siding are taken to stay above the paving by what local code asks for."),
    QT_TRANSLATE_NOOP("core", "What does the probe find, spade by spade: topsoil, fill, clay, sand, rock?"),
    QT_TRANSLATE_NOOP("core", "The soil is taken as common earth that carries the base as drawn."),
    QT_TRANSLATE_NOOP("core", "A competent person judges the ground and the cut faces before anyone goes in."),
    QT_TRANSLATE_NOOP("core", "Is it wet: standing water, moss, damp cellar, springs, a high water table?"),
    QT_TRANSLATE_NOOP("core", "The dig is taken to stay dry: no pumping is counted."),
    QT_TRANSLATE_NOOP("core",
                      "Wet ground stands less steep: a competent person looks at a wet dig before anyone goes in."),
    QT_TRANSLATE_NOOP("core",
                      "What is the pool: concrete, liner or one-piece shell, how deep, who builds it and when?"),
    QT_TRANSLATE_NOOP("core", "The pool is taken to be as drawn and ready for the deck when the crew comes."),
    QT_TRANSLATE_NOOP("core", "The pool's builder says what load may stand beside the shell."),
    QT_TRANSLATE_NOOP("core",
                      "How wide and how level is the beam or the edge that carries the coping, and is it sound?"),
    QT_TRANSLATE_NOOP("core", "The pool's edge is taken as level, sound and wide enough for the coping."),
    QT_TRANSLATE_NOOP("core", "Where are skimmers, lids, jets, lights and pipes in the edge and under the deck?"),
    QT_TRANSLATE_NOOP("core", "No skimmer, lid or pipe is taken to need more than a cut in the units."),
    QT_TRANSLATE_NOOP("core", "What is electrical at a pool is left to a licensed electrician and the local code."),
    QT_TRANSLATE_NOOP("core", "What barrier is there or is planned, with what gates, and who builds it?"),
    QT_TRANSLATE_NOOP("core", "The barrier round the pool is taken to be somebody else's work."),
    QT_TRANSLATE_NOOP("core", "Local code says what barrier the pool must have, also while the work goes on."),
    QT_TRANSLATE_NOOP("core", "What stands, drives or runs behind the wall: slope, drive, shed, fence, water?"),
    QT_TRANSLATE_NOOP("core", "Behind the wall nothing is taken to stand, drive or run but what is drawn."),
    QT_TRANSLATE_NOOP("core", "Loads on a wall are for local code and a licensed engineer to judge."),
    QT_TRANSLATE_NOOP("core", "Where can pipes come out into the open, and whose ground is it?"),
    QT_TRANSLATE_NOOP("core", "A free outlet on the owner's ground is taken to lie where it is drawn."),
    QT_TRANSLATE_NOOP("core", "What is at the head and the foot of the steps: door, landing, drive, public way?"),
    QT_TRANSLATE_NOOP("core", "The heights at the head and the foot of the steps are taken to be as drawn."),
    QT_TRANSLATE_NOOP("core", "Local code decides on steps, landings, handrails and guards."),
    QT_TRANSLATE_NOOP("core", "How thick is what goes or stays, is there steel in it, what lies under it?"),
    QT_TRANSLATE_NOOP("core", "What is taken out or built on is taken to be as thick and as sound as drawn."),
};

}  // namespace

std::vector<std::string> words_of_the_visit() { return {std::begin(visit_words), std::end(visit_words)}; }

}  // namespace ui
