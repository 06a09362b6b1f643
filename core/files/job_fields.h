// The job round its elements in JSON (fields.h).
#pragma once

#include "files/catalogue_fields.h"
#include "files/element_fields.h"
#include "plan/job.h"

namespace files {

// The format that this program writes. It reads this one and none newer.
inline constexpr int job_format = 1;

using plan::Heading, plan::Datum, plan::Soil, plan::Choices, plan::StageMove, plan::LookedAt;

constexpr auto words(Type<units::System>) {
  return std::array{Word{"us", units::System::us}, Word{"metric", units::System::metric}};
}
constexpr auto words(Type<plan::Reuse>) {
  return std::array{Word{"none", plan::Reuse::none}, Word{"area", plan::Reuse::area}, Word{"job", plan::Reuse::job}};
}

constexpr auto fields(Type<Heading>) {
  return std::tuple{Field{"name", &Heading::name},         Field{"customer", &Heading::customer},
                    Field{"place", &Heading::place},       Field{"notes", &Heading::notes},
                    Field{"units", &Heading::units},       Field{"currency", &Heading::currency},
                    Field{"decimals", &Heading::decimals}, Field{"invented", &Heading::invented}};
}
constexpr auto fields(Type<Datum>) {
  return std::tuple{Field{"what", &Datum::what}, Field{"longitude", &Datum::longitude},
                    Field{"latitude", &Datum::latitude}, Field{"easting_m", &Datum::easting_m},
                    Field{"northing_m", &Datum::northing_m}};
}
constexpr auto fields(Type<Soil>) {
  return std::tuple{Field{"name", &Soil::name},
                    Field{"swell", &Soil::swell},
                    Field{"bank_density_kg_m3", &Soil::bank_density_kg_m3},
                    Field{"compacted", &Soil::compacted},
                    Field{"stands", &Soil::stands},
                    Field{"reusable", &Soil::reusable},
                    Field{"topsoil", &Soil::topsoil},
                    Field{"topsoil_back", &Soil::topsoil_back},
                    Field{"source", &Soil::source}};
}
constexpr auto fields(Type<Choices>) {
  return std::tuple{Field{"reach", &Choices::reach},
                    Field{"reuse", &Choices::reuse},
                    Field{"sliver_share", &Choices::sliver_share},
                    Field{"sliver_width", &Choices::sliver_width},
                    Field{"kerf", &Choices::kerf},
                    Field{"start_tolerance", &Choices::start_tolerance},
                    Field{"soil", &Choices::soil},
                    Field{"truck", &Choices::truck},
                    Field{"disposal", &Choices::disposal},
                    Field{"saw", &Choices::saw},
                    Field{"access", &Choices::access},
                    Field{"crew", &Choices::crew},
                    Field{"day_hours", &Choices::day_hours},
                    Field{"count_attic", &Choices::count_attic},
                    Field{"attic_share", &Choices::attic_share},
                    Field{"cbr", &Choices::cbr},
                    Field{"infiltration_counts", &Choices::infiltration_counts},
                    Field{"infiltration_m_s", &Choices::infiltration_m_s},
                    Field{"infiltration_source", &Choices::infiltration_source},
                    Field{"rain_mm_h", &Choices::rain_mm_h},
                    Field{"rain_source", &Choices::rain_source}};
}
constexpr auto fields(Type<StageMove>) {
  return std::tuple{Field{"item", &StageMove::item, Need::required}, Field{"stage", &StageMove::stage, Need::required}};
}
constexpr auto fields(Type<LookedAt>) {
  return std::tuple{Field{"stage", &LookedAt::stage, Need::required},
                    Field{"look_at", &LookedAt::look_at, Need::required}, Field{"who", &LookedAt::who},
                    Field{"when", &LookedAt::when}};
}

}  // namespace files
