// Words of the estimate that core gives in English, marked for translation: the points of the checklist
// (core/estimate/checklist.cpp) and the assumptions that could bite (core/results/could_bite.cpp).
#include <QtGlobal>

namespace ui {

namespace {

[[maybe_unused]] constexpr const char* estimate_words[] = {
    QT_TRANSLATE_NOOP("core", "Permit and inspections"),
    QT_TRANSLATE_NOOP("core", "Engineer"),
    QT_TRANSLATE_NOOP("core", "Locating buried services"),
    QT_TRANSLATE_NOOP("core", "Moving on and off the site"),
    QT_TRANSLATE_NOOP("core", "Bringing and fetching machines"),
    QT_TRANSLATE_NOOP("core", "Fuel"),
    QT_TRANSLATE_NOOP("core", "Dump fees"),
    QT_TRANSLATE_NOOP("core", "Toilet for the crew"),
    QT_TRANSLATE_NOOP("core", "Protection of lawn, plants and drive"),
    QT_TRANSLATE_NOOP("core", "Lawn made good"),
    QT_TRANSLATE_NOOP("core", "Irrigation made good"),
    QT_TRANSLATE_NOOP("core", "Delivery"),
    QT_TRANSLATE_NOOP("core", "Deposit on pallets"),
    QT_TRANSLATE_NOOP("core", "Saw blades"),
    QT_TRANSLATE_NOOP("core", "Small tools"),
    QT_TRANSLATE_NOOP("core", "Washing down"),
    QT_TRANSLATE_NOOP("core", "Last list of small faults"),
    QT_TRANSLATE_NOOP("core", "Reserve for the warranty"),
    QT_TRANSLATE_NOOP("core", "Fee on card payments"),
    QT_TRANSLATE_NOOP("core", "Swell of the soil"),
    QT_TRANSLATE_NOOP("core", "Soil that can be placed again"),
    QT_TRANSLATE_NOOP("core", "Depth of the base"),
    QT_TRANSLATE_NOOP("core", "Price of haul and disposal"),
    QT_TRANSLATE_NOOP("core", "Width of the gate and the path"),
    QT_TRANSLATE_NOOP("core", "Breakage"),
    QT_TRANSLATE_NOOP("core", "Hours of work"),
    QT_TRANSLATE_NOOP("core", "Direct cost"),
};

}  // namespace

}  // namespace ui
