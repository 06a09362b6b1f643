// Places along a wall, in words.
#pragma once

#include <string>

#include "plan/job.h"

namespace takeoff::walls {

// "0 to 12 ft 6 in along the wall", in the job's own system; metres.
std::string between(const plan::Job& job, double from, double to);
// "at 12 ft 6 in along the wall".
std::string at(const plan::Job& job, double station);
// "course 3": people count from 1, the program from 0.
std::string course(int number);

}  // namespace takeoff::walls
