// Places along a wall, in words: measured on its line from the first point that was drawn. Which end that is, seen from
// in front of the face, stands on the sheet with the wall's measures.
#pragma once

#include <string>

#include "plan/job.h"

namespace takeoff::walls {

// "0 to 12 ft 6 in from the wall's start", in the job's own system; metres.
std::string between(const plan::Job& job, double from, double to);
// "at 12 ft 6 in from the wall's start".
std::string at(const plan::Job& job, double station);
// "course 3": people count from 1, the program from 0.
std::string course(int number);

}  // namespace takeoff::walls
