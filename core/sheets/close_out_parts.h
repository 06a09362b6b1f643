// The parts of the close-out: what was built, as it was taped, looked at, tested and left behind.
#pragma once

#include "sheets/crew_parts.h"

namespace sheets {

// Each is empty where the job has none of it.
Passage pipes_passage(const Printed& printed);    // pipes, channels and sleeves, with room for what was taped
Passage outlets_passage(const Printed& printed);  // where water comes out
Passage bonding_passage(const Printed& printed);
Passage services_passage(const Printed& printed);     // buried services as marked, and as found
Passage looked_at_passage(const Printed& printed);    // the record of hold points
Passage levels_passage(const Printed& printed);       // asked for and read
Passage hose_test_passage(const Printed& printed);    // with the limits of its hold point
Passage care_passage(const Printed& printed);         // fillers, sealants, finishes with their dates
Passage left_behind_passage(const Printed& printed);  // spare units and their place; lots
Passage papers_passage(const Printed& printed);       // warranties, releases, certificates, photos

}  // namespace sheets
