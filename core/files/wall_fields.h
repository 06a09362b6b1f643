// Walls, steps and pillars in JSON (fields.h).
#pragma once

#include "files/fields.h"
#include "plan/wall.h"

namespace files {

using plan::HeightAt, plan::WallStone, plan::WallPipe, plan::Reinforcement, plan::Earth, plan::WallLoads, plan::Wall,
    plan::Cheeks, plan::Steps, plan::Pillar;

constexpr auto words(Type<geometry::Side>) {
  return std::array{Word{"left", geometry::Side::left}, Word{"right", geometry::Side::right}};
}
constexpr auto words(Type<Wall::Fixed>) {
  return std::array{Word{"top", Wall::Fixed::top}, Word{"base", Wall::Fixed::base}};
}
constexpr auto words(Type<Wall::End>) {
  return std::array{Word{"free", Wall::End::free}, Word{"grade", Wall::End::grade},
                    Word{"against", Wall::End::against}};
}

constexpr auto fields(Type<HeightAt>) {
  return std::tuple{Field{"at", &HeightAt::at}, Field{"height", &HeightAt::height, Need::required}};
}
constexpr auto fields(Type<WallStone>) {
  return std::tuple{Field{"build_up", &WallStone::build_up}, Field{"core", &WallStone::core},
                    Field{"drain", &WallStone::drain},       Field{"drain_depth", &WallStone::drain_depth},
                    Field{"soil_cap", &WallStone::soil_cap}, Field{"fabric", &WallStone::fabric},
                    Field{"fill", &WallStone::fill}};
}
constexpr auto fields(Type<WallPipe>) {
  return std::tuple{Field{"item", &WallPipe::item}, Field{"outlet_item", &WallPipe::outlet_item},
                    Field{"fall", &WallPipe::fall}, Field{"outlets", &WallPipe::outlets},
                    Field{"outlet_length", &WallPipe::outlet_length}};
}
constexpr auto fields(Type<Reinforcement>) {
  return std::tuple{Field{"on_course", &Reinforcement::on_course, Need::required},
                    Field{"item", &Reinforcement::item, Need::required},
                    Field{"length", &Reinforcement::length, Need::required},
                    Field{"from", &Reinforcement::from},
                    Field{"to", &Reinforcement::to},
                    Field{"coverage", &Reinforcement::coverage},
                    Field{"along", &Reinforcement::along}};
}
constexpr auto fields(Type<Earth>) {
  return std::tuple{Field{"friction_deg", &Earth::friction_deg}, Field{"density_kg_m3", &Earth::density_kg_m3},
                    Field{"cohesion_pa", &Earth::cohesion_pa}};
}
constexpr auto fields(Type<WallLoads>) {
  return std::tuple{Field{"infill", &WallLoads::infill},
                    Field{"retained", &WallLoads::retained},
                    Field{"foundation", &WallLoads::foundation},
                    Field{"back_slope_deg", &WallLoads::back_slope_deg},
                    Field{"live_pa", &WallLoads::live_pa},
                    Field{"dead_pa", &WallLoads::dead_pa},
                    Field{"water_behind", &WallLoads::water_behind}};
}
constexpr auto fields(Type<Wall>) {
  return std::tuple{Field{"line", &Wall::line},
                    Field{"block", &Wall::block},
                    Field{"curve_block", &Wall::curve_block},
                    Field{"half_block", &Wall::half_block},
                    Field{"corner_block", &Wall::corner_block},
                    Field{"end_block", &Wall::end_block},
                    Field{"cap", &Wall::cap},
                    Field{"curve_cap", &Wall::curve_cap},
                    Field{"cap_overhang", &Wall::cap_overhang},
                    Field{"adhesive", &Wall::adhesive},
                    Field{"glued", &Wall::glued},
                    Field{"thickness", &Wall::thickness},
                    Field{"behind", &Wall::behind},
                    Field{"free_standing", &Wall::free_standing},
                    Field{"existing", &Wall::existing},
                    Field{"height", &Wall::height},
                    Field{"ground", &Wall::ground},
                    Field{"ground_behind", &Wall::ground_behind},
                    Field{"top", &Wall::top},
                    Field{"base", &Wall::base},
                    Field{"fixed", &Wall::fixed},
                    Field{"bury_courses", &Wall::bury_courses},
                    Field{"toe_slope", &Wall::toe_slope},
                    Field{"least_overlap", &Wall::least_overlap},
                    Field{"start_end", &Wall::start_end},
                    Field{"finish_end", &Wall::finish_end},
                    Field{"stone", &Wall::stone},
                    Field{"pipe", &Wall::pipe},
                    Field{"drained_by", &Wall::drained_by},
                    Field{"layers", &Wall::layers},
                    Field{"loads", &Wall::loads}};
}
constexpr auto fields(Type<Cheeks>) {
  return std::tuple{Field{"block", &Cheeks::block}, Field{"cap", &Cheeks::cap}, Field{"left", &Cheeks::left},
                    Field{"right", &Cheeks::right}, Field{"above", &Cheeks::above}};
}
constexpr auto fields(Type<Steps>) {
  return std::tuple{Field{"outline", &Steps::outline},
                    Field{"unit", &Steps::unit},
                    Field{"riser_block", &Steps::riser_block},
                    Field{"risers", &Steps::risers},
                    Field{"rise", &Steps::rise},
                    Field{"up", &Steps::up},
                    Field{"tread_fall", &Steps::tread_fall},
                    Field{"lap", &Steps::lap},
                    Field{"overhang", &Steps::overhang},
                    Field{"build_up", &Steps::build_up},
                    Field{"adhesive", &Steps::adhesive},
                    Field{"public_way", &Steps::public_way},
                    Field{"cheeks", &Steps::cheeks}};
}
constexpr auto fields(Type<Pillar>) {
  return std::tuple{Field{"block", &Pillar::block},
                    Field{"cap", &Pillar::cap},
                    Field{"adhesive", &Pillar::adhesive},
                    Field{"height", &Pillar::height},
                    Field{"bury_courses", &Pillar::bury_courses},
                    Field{"build_up", &Pillar::build_up}};
}
}  // namespace files
