// The elements of a plan in JSON, kind by kind (fields.h). What all have (id, kind, name) stands before these.
#pragma once

#include "files/site_fields.h"
#include "files/wall_fields.h"
#include "plan/element.h"

namespace files {

using plan::Laying, plan::BorderCourse, plan::JointFill, plan::EdgeChoice, plan::PavedArea, plan::Coping,
    plan::Surround, plan::Collar, plan::Bonding, plan::Pool, plan::Building, plan::KeepOut, plan::Footing, plan::Weeps,
    plan::Spikes, plan::EdgeRun, plan::Note, plan::Dimension;

constexpr auto words(Type<BorderCourse::Way>) {
  return std::array{Word{"soldier", BorderCourse::Way::soldier}, Word{"sailor", BorderCourse::Way::sailor}};
}
constexpr auto words(Type<BorderCourse::Corner>) {
  return std::array{Word{"mitre", BorderCourse::Corner::mitre}, Word{"butt", BorderCourse::Corner::butt},
                    Word{"block", BorderCourse::Corner::block}};
}
constexpr auto words(Type<BorderCourse::Where>) {
  return std::array{Word{"outside", BorderCourse::Where::outside}, Word{"everywhere", BorderCourse::Where::everywhere},
                    Word{"islands", BorderCourse::Where::islands}};
}
constexpr auto words(Type<Coping::Make>) {
  return std::array{Word{"any", Coping::Make::any}, Word{"uncut", Coping::Make::uncut},
                    Word{"tapered", Coping::Make::tapered}, Word{"radius", Coping::Make::radius}};
}

constexpr auto fields(Type<Laying>) {
  return std::tuple{Field{"pattern", &Laying::pattern}, Field{"units", &Laying::units}, Field{"start", &Laying::start},
                    Field{"direction", &Laying::direction}, Field{"joint", &Laying::joint}};
}
constexpr auto fields(Type<BorderCourse>) {
  return std::tuple{Field{"way", &BorderCourse::way}, Field{"corner", &BorderCourse::corner},
                    Field{"where", &BorderCourse::where}, Field{"item", &BorderCourse::item},
                    Field{"joint", &BorderCourse::joint}};
}
constexpr auto fields(Type<JointFill>) {
  return std::tuple{Field{"item", &JointFill::item}, Field{"depth", &JointFill::depth}};
}
constexpr auto fields(Type<EdgeChoice>) {
  return std::tuple{Field{"edge", &EdgeChoice::edge, Need::required},
                    Field{"junction", &EdgeChoice::junction, Need::required}};
}
constexpr auto fields(Type<PavedArea>) {
  return std::tuple{Field{"outline", &PavedArea::outline},
                    Field{"build_up", &PavedArea::build_up},
                    Field{"laying", &PavedArea::laying},
                    Field{"borders", &PavedArea::borders},
                    Field{"joint_fill", &PavedArea::joint_fill},
                    Field{"edges", &PavedArea::edges},
                    Field{"taped_area_m2", &PavedArea::taped_area_m2},
                    Field{"vehicles", &PavedArea::vehicles},
                    Field{"access", &PavedArea::access},
                    Field{"finish", &PavedArea::finish},
                    Field{"water_to", &PavedArea::water_to}};
}
constexpr auto fields(Type<Coping>) {
  return std::tuple{Field{"item", &Coping::item}, Field{"overhang", &Coping::overhang}, Field{"joint", &Coping::joint},
                    Field{"make", &Coping::make}};
}
constexpr auto fields(Type<Surround>) {
  return std::tuple{Field{"item", &Surround::item}, Field{"clearance", &Surround::clearance},
                    Field{"depth", &Surround::depth}};
}
constexpr auto fields(Type<Collar>) {
  return std::tuple{Field{"concrete", &Collar::concrete}, Field{"bar", &Collar::bar}, Field{"width", &Collar::width},
                    Field{"thickness", &Collar::thickness}, Field{"rings", &Collar::rings}};
}
constexpr auto fields(Type<Bonding>) {
  return std::tuple{Field{"item", &Bonding::item}, Field{"out", &Bonding::out}, Field{"depth", &Bonding::depth},
                    Field{"ties", &Bonding::ties}};
}
constexpr auto fields(Type<Pool>) {
  return std::tuple{Field{"outline", &Pool::outline},   Field{"coping", &Pool::coping},
                    Field{"shell", &Pool::shell},       Field{"surround", &Pool::surround},
                    Field{"collar", &Pool::collar},     Field{"bonding", &Pool::bonding},
                    Field{"as_built", &Pool::as_built}, Field{"coping_level", &Pool::coping_level}};
}
constexpr auto fields(Type<Building>) {
  return std::tuple{Field{"outline", &Building::outline},
                    Field{"face", &Building::face},
                    Field{"footing_depth", &Building::footing_depth},
                    Field{"floor", &Building::floor},
                    Field{"sill", &Building::sill},
                    Field{"weep", &Building::weep},
                    Field{"siding", &Building::siding},
                    Field{"vent", &Building::vent}};
}
constexpr auto fields(Type<KeepOut>) {
  return std::tuple{Field{"outline", &KeepOut::outline}, Field{"what", &KeepOut::what}, Field{"trunk", &KeepOut::trunk},
                    Field{"pillar", &KeepOut::pillar}};
}
constexpr auto fields(Type<Footing>) {
  return std::tuple{Field{"concrete", &Footing::concrete}, Field{"width", &Footing::width},
                    Field{"thickness", &Footing::thickness}, Field{"haunch", &Footing::haunch}};
}
constexpr auto fields(Type<Weeps>) {
  return std::tuple{Field{"item", &Weeps::item}, Field{"kind", &Weeps::kind}, Field{"spacing", &Weeps::spacing}};
}
constexpr auto fields(Type<Spikes>) {
  return std::tuple{Field{"item", &Spikes::item}, Field{"spacing", &Spikes::spacing},
                    Field{"on_curves", &Spikes::on_curves}};
}
constexpr auto fields(Type<EdgeRun>) {
  return std::tuple{Field{"line", &EdgeRun::line},      Field{"what", &EdgeRun::what},
                    Field{"item", &EdgeRun::item},      Field{"item_on_curves", &EdgeRun::item_on_curves},
                    Field{"paving", &EdgeRun::paving},  Field{"footing", &EdgeRun::footing},
                    Field{"weeps", &EdgeRun::weeps},    Field{"spikes", &EdgeRun::spikes},
                    Field{"upstand", &EdgeRun::upstand}};
}
constexpr auto fields(Type<Note>) { return std::tuple{Field{"at", &Note::at}, Field{"text", &Note::text}}; }
constexpr auto fields(Type<Dimension>) {
  return std::tuple{Field{"from", &Dimension::from}, Field{"to", &Dimension::to}};
}

}  // namespace files
