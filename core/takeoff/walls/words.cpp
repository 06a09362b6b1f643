#include "takeoff/walls/words.h"

#include "takeoff/edges/notes.h"

namespace takeoff::walls {

std::string between(const plan::Job& job, double from, double to) {
  return edges::shown(job, from) + " to " + edges::shown(job, to) + " from the wall's start";
}

std::string at(const plan::Job& job, double station) {
  return "at " + edges::shown(job, station) + " from the wall's start";
}

std::string course(int number) { return "course " + std::to_string(number + 1); }

}  // namespace takeoff::walls
