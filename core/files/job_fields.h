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
  return std::tuple{Field{"name", &Heading::name},         Field{"number", &Heading::number},
                    Field{"customer", &Heading::customer}, Field{"place", &Heading::place},
                    Field{"notes", &Heading::notes},       Field{"units", &Heading::units},
                    Field{"currency", &Heading::currency}, Field{"decimals", &Heading::decimals},
                    Field{"invented", &Heading::invented}};
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

using plan::HoursFactor, plan::AddedLine, plan::Statement, plan::UnitPrice, plan::PaymentStep, plan::Option,
    plan::Offer, plan::Enquiry, plan::VisitAnswer;

constexpr auto words(Type<plan::CostKind>) {
  return std::array{Word{"material", plan::CostKind::material},
                    Word{"labour", plan::CostKind::labour},
                    Word{"machine", plan::CostKind::machine},
                    Word{"trucking", plan::CostKind::trucking},
                    Word{"subcontract", plan::CostKind::subcontract},
                    Word{"allowance", plan::CostKind::allowance},
                    Word{"fee", plan::CostKind::fee}};
}
constexpr auto words(Type<Statement::What>) {
  return std::array{Word{"exclusion", Statement::What::exclusion}, Word{"assumption", Statement::What::assumption}};
}
constexpr auto words(Type<plan::ProfitAs>) {
  return std::array{Word{"markup", plan::ProfitAs::markup}, Word{"margin", plan::ProfitAs::margin}};
}
constexpr auto fields(Type<HoursFactor>) {
  return std::tuple{Field{"name", &HoursFactor::name, Need::required}, Field{"factor", &HoursFactor::factor},
                    Field{"stage", &HoursFactor::stage}, Field{"note", &HoursFactor::note}};
}
constexpr auto fields(Type<AddedLine>) {
  return std::tuple{Field{"id", &AddedLine::id, Need::required},
                    Field{"stage", &AddedLine::stage},
                    Field{"kind", &AddedLine::kind},
                    Field{"text", &AddedLine::text},
                    Field{"quantity", &AddedLine::quantity},
                    Field{"unit", &AddedLine::unit},
                    Field{"unit_price", &AddedLine::unit_price},
                    Field{"nothing_on_purpose", &AddedLine::nothing_on_purpose},
                    Field{"note", &AddedLine::note}};
}
constexpr auto fields(Type<Statement>) {
  return std::tuple{Field{"code", &Statement::code, Need::required}, Field{"what", &Statement::what},
                    Field{"text", &Statement::text}, Field{"struck", &Statement::struck},
                    Field{"why", &Statement::why}};
}
constexpr auto fields(Type<UnitPrice>) {
  return std::tuple{Field{"code", &UnitPrice::code, Need::required}, Field{"text", &UnitPrice::text},
                    Field{"unit", &UnitPrice::unit}, Field{"assumed", &UnitPrice::assumed},
                    Field{"price", &UnitPrice::price}};
}
constexpr auto fields(Type<PaymentStep>) {
  return std::tuple{Field{"name", &PaymentStep::name, Need::required}, Field{"share", &PaymentStep::share},
                    Field{"stage", &PaymentStep::stage}};
}
constexpr auto fields(Type<Option>) {
  return std::tuple{Field{"id", &Option::id, Need::required},
                    Field{"name", &Option::name},
                    Field{"text", &Option::text},
                    Field{"alternate", &Option::alternate},
                    Field{"elements", &Option::elements},
                    Field{"without", &Option::without},
                    Field{"lines", &Option::lines}};
}
constexpr auto fields(Type<Offer>) {
  return std::tuple{Field{"factors", &Offer::factors},
                    Field{"lines", &Offer::lines},
                    Field{"overhead", &Offer::overhead},
                    Field{"contingency", &Offer::contingency},
                    Field{"profit", &Offer::profit},
                    Field{"profit_as", &Offer::profit_as},
                    Field{"chained", &Offer::chained},
                    Field{"tax", &Offer::tax},
                    Field{"taxed", &Offer::taxed},
                    Field{"round_to", &Offer::round_to},
                    Field{"date", &Offer::date},
                    Field{"valid_days", &Offer::valid_days},
                    Field{"basis", &Offer::basis},
                    Field{"terms", &Offer::terms},
                    Field{"cancellation", &Offer::cancellation},
                    Field{"statements", &Offer::statements},
                    Field{"unit_prices", &Offer::unit_prices},
                    Field{"payments", &Offer::payments},
                    Field{"options", &Offer::options}};
}
constexpr auto fields(Type<Enquiry>) {
  return std::tuple{Field{"when", &Enquiry::when},           Field{"wants", &Enquiry::wants},
                    Field{"heard", &Enquiry::heard},         Field{"budget", &Enquiry::budget},
                    Field{"next_step", &Enquiry::next_step}, Field{"next_when", &Enquiry::next_when}};
}
constexpr auto fields(Type<VisitAnswer>) {
  return std::tuple{Field{"point", &VisitAnswer::point, Need::required}, Field{"answer", &VisitAnswer::answer},
                    Field{"when", &VisitAnswer::when}, Field{"photo", &VisitAnswer::photo}};
}

}  // namespace files
