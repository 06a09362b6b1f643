// Levels, drains and what is on the site, in JSON, struct by struct (fields.h).
#pragma once

#include "files/wall_fields.h"
#include "plan/element.h"

namespace files {

using plan::KnownPoint, plan::Taped, plan::TapeBook, plan::KnownLength, plan::SitePlan;
using plan::Level, plan::RodReading, plan::LevelBook, plan::FallFrom, plan::Finish, plan::BaseLine, plan::Removal,
    plan::SiteMark, plan::Protection, plan::AtRun, plan::DrainRun, plan::Spout, plan::Feature;

constexpr auto words(Type<Taped::Way>) {
  return std::array{Word{"tie", Taped::Way::tie}, Word{"offset", Taped::Way::offset}};
}
constexpr auto words(Type<Finish::Way>) {
  return std::array{Word{"edges", Finish::Way::edges}, Word{"plane", Finish::Way::plane},
                    Word{"two-falls", Finish::Way::two_falls}, Word{"levels", Finish::Way::levels},
                    Word{"along", Finish::Way::along}};
}

constexpr auto fields(Type<Level>) {
  return std::tuple{Field{"at", &Level::at}, Field{"height", &Level::height}, Field{"what", &Level::what},
                    Field{"of", &Level::of}};
}
constexpr auto fields(Type<RodReading>) {
  return std::tuple{Field{"point", &RodReading::point, Need::required}, Field{"back", &RodReading::back},
                    Field{"between", &RodReading::between}, Field{"fore", &RodReading::fore},
                    Field{"note", &RodReading::note}};
}
constexpr auto fields(Type<LevelBook>) {
  return std::tuple{Field{"start", &LevelBook::start}, Field{"finish", &LevelBook::finish},
                    Field{"share_out", &LevelBook::share_out}, Field{"readings", &LevelBook::readings}};
}
constexpr auto fields(Type<FallFrom>) {
  return std::tuple{Field{"element", &FallFrom::element}, Field{"edge", &FallFrom::edge},
                    Field{"height", &FallFrom::height},   Field{"height_end", &FallFrom::height_end},
                    Field{"lip", &FallFrom::lip},         Field{"fall", &FallFrom::fall}};
}
constexpr auto fields(Type<Finish>) {
  return std::tuple{Field{"way", &Finish::way, Need::required},
                    Field{"from", &Finish::from},
                    Field{"at", &Finish::at},
                    Field{"height", &Finish::height},
                    Field{"height_end", &Finish::height_end},
                    Field{"direction", &Finish::direction},
                    Field{"fall", &Finish::fall},
                    Field{"fall_right", &Finish::fall_right},
                    Field{"line", &Finish::line},
                    Field{"heights", &Finish::heights}};
}
constexpr auto fields(Type<BaseLine>) {
  return std::tuple{Field{"from", &BaseLine::from}, Field{"to", &BaseLine::to},
                    Field{"chord_step", &BaseLine::chord_step}};
}
constexpr auto fields(Type<Removal>) {
  return std::tuple{
      Field{"outline", &Removal::outline}, Field{"line", &Removal::line},           Field{"width", &Removal::width},
      Field{"what", &Removal::what},       Field{"thickness", &Removal::thickness}, Field{"top", &Removal::top},
      Field{"fate", &Removal::fate},       Field{"loss", &Removal::loss},           Field{"steel", &Removal::steel}};
}
constexpr auto fields(Type<SiteMark>) {
  return std::tuple{Field{"points", &SiteMark::points},   Field{"line", &SiteMark::line},
                    Field{"outline", &SiteMark::outline}, Field{"what", &SiteMark::what},
                    Field{"depth", &SiteMark::depth},     Field{"height", &SiteMark::height},
                    Field{"width", &SiteMark::width},     Field{"roof_area_m2", &SiteMark::roof_area_m2},
                    Field{"into", &SiteMark::into}};
}
constexpr auto fields(Type<KnownPoint>) {
  return std::tuple{Field{"name", &KnownPoint::name, Need::required}, Field{"at", &KnownPoint::at, Need::required}};
}
constexpr auto fields(Type<Taped>) {
  return std::tuple{Field{"point", &Taped::point, Need::required},
                    Field{"way", &Taped::way},
                    Field{"from", &Taped::from},
                    Field{"to", &Taped::to},
                    Field{"measure", &Taped::measure},
                    Field{"offset", &Taped::offset},
                    Field{"side", &Taped::side},
                    Field{"struck", &Taped::struck}};
}
constexpr auto fields(Type<TapeBook>) {
  return std::tuple{Field{"known", &TapeBook::known}, Field{"rows", &TapeBook::rows}};
}
constexpr auto fields(Type<KnownLength>) {
  return std::tuple{Field{"from", &KnownLength::from, Need::required}, Field{"to", &KnownLength::to, Need::required},
                    Field{"length", &KnownLength::length, Need::required}};
}
constexpr auto fields(Type<SitePlan>) {
  return std::tuple{Field{"file", &SitePlan::file},
                    Field{"at", &SitePlan::at},
                    Field{"metres_per_pixel", &SitePlan::metres_per_pixel},
                    Field{"turn", &SitePlan::turn},
                    Field{"page", &SitePlan::page},
                    Field{"opacity", &SitePlan::opacity},
                    Field{"locked", &SitePlan::locked},
                    Field{"scale", &SitePlan::scale},
                    Field{"check", &SitePlan::check}};
}
constexpr auto fields(Type<Protection>) {
  return std::tuple{Field{"outline", &Protection::outline}, Field{"line", &Protection::line},
                    Field{"item", &Protection::item}};
}
constexpr auto fields(Type<AtRun>) {
  return std::tuple{Field{"at", &AtRun::at, Need::required}, Field{"item", &AtRun::item}, Field{"what", &AtRun::what},
                    Field{"top", &AtRun::top}, Field{"takes", &AtRun::takes}};
}
constexpr auto fields(Type<DrainRun>) {
  return std::tuple{Field{"line", &DrainRun::line},
                    Field{"what", &DrainRun::what},
                    Field{"item", &DrainRun::item},
                    Field{"width", &DrainRun::width},
                    Field{"start", &DrainRun::start},
                    Field{"fall", &DrainRun::fall},
                    Field{"inverts", &DrainRun::inverts},
                    Field{"into", &DrainRun::into},
                    Field{"outlet_ground", &DrainRun::outlet_ground},
                    Field{"parts", &DrainRun::parts},
                    Field{"bend", &DrainRun::bend},
                    Field{"joiner", &DrainRun::joiner},
                    Field{"outlet_item", &DrainRun::outlet_item},
                    Field{"build_up", &DrainRun::build_up},
                    Field{"caps_and_string", &DrainRun::caps_and_string}};
}
constexpr auto fields(Type<Spout>) {
  return std::tuple{Field{"length", &Spout::length}, Field{"head", &Spout::head},
                    Field{"contractions", &Spout::contractions}};
}
constexpr auto fields(Type<Feature>) {
  return std::tuple{Field{"at", &Feature::at}, Field{"item", &Feature::item}, Field{"count", &Feature::count},
                    Field{"spout", &Feature::spout}};
}

}  // namespace files
