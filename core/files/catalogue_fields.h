// The catalogue in JSON, table by table (fields.h). Maps stand as lists, sorted by the id that each entry carries.
#pragma once

#include "catalogue/catalogue.h"
#include "files/fields.h"

namespace files {

using catalogue::BuildUp, catalogue::Catalogue, catalogue::Caution, catalogue::SiteRule, catalogue::HoldPoint,
    catalogue::Item, catalogue::Junction, catalogue::Layer, catalogue::Limit, catalogue::Pack, catalogue::PackContent,
    catalogue::Pattern, catalogue::PatternPiece, catalogue::Price, catalogue::Rate, catalogue::Supplier,
    catalogue::Words;

constexpr auto fields(Type<Words>) { return std::tuple{Field{"en", &Words::en}, Field{"es", &Words::es}}; }

constexpr auto fields(Type<Pack>) {
  return std::tuple{Field{"kind", &Pack::kind}, Field{"pieces_per_layer", &Pack::pieces_per_layer},
                    Field{"layers", &Pack::layers}, Field{"pieces", &Pack::pieces}};
}

constexpr auto fields(Type<Price>) {
  return std::tuple{Field{"amount", &Price::amount}, Field{"unit", &Price::unit}, Field{"date", &Price::date},
                    Field{"by_others", &Price::by_others}};
}

constexpr auto fields(Type<PackContent>) {
  return std::tuple{Field{"item", &PackContent::item, Need::required},
                    Field{"pieces", &PackContent::pieces, Need::required}};
}

constexpr auto fields(Type<Item>) {
  return std::tuple{Field{"id", &Item::id, Need::required},
                    Field{"kind", &Item::kind, Need::required},
                    Field{"name", &Item::name},
                    Field{"supplier", &Item::supplier},
                    Field{"unit", &Item::unit},
                    Field{"length", &Item::length},
                    Field{"width", &Item::width},
                    Field{"height", &Item::height},
                    Field{"joint", &Item::joint},
                    Field{"mass_kg", &Item::mass_kg},
                    Field{"density_kg_m3", &Item::density_kg_m3},
                    Field{"void_share", &Item::void_share},
                    Field{"sold_by", &Item::sold_by},
                    Field{"pack", &Item::pack},
                    Field{"contents", &Item::contents},
                    Field{"price", &Item::price},
                    Field{"breakage", &Item::breakage},
                    Field{"rule", &Item::rule},
                    Field{"rule_source", &Item::rule_source},
                    Field{"notes", &Item::notes},
                    Field{"details", &Item::details}};
}

constexpr auto fields(Type<PatternPiece>) {
  return std::tuple{Field{"size", &PatternPiece::size, Need::required}, Field{"x", &PatternPiece::x, Need::required},
                    Field{"y", &PatternPiece::y, Need::required}, Field{"w", &PatternPiece::w, Need::required},
                    Field{"h", &PatternPiece::h, Need::required}};
}

constexpr auto fields(Type<Pattern>) {
  return std::tuple{Field{"id", &Pattern::id, Need::required},
                    Field{"name", &Pattern::name},
                    Field{"cell_x", &Pattern::cell_x, Need::required},
                    Field{"cell_y", &Pattern::cell_y, Need::required},
                    Field{"direction", &Pattern::direction},
                    Field{"along", &Pattern::along, Need::required},
                    Field{"across_x", &Pattern::across_x, Need::required},
                    Field{"across_y", &Pattern::across_y, Need::required},
                    Field{"pieces", &Pattern::pieces, Need::required},
                    Field{"herringbone", &Pattern::herringbone},
                    Field{"fits", &Pattern::fits},
                    Field{"advice", &Pattern::advice}};
}

constexpr auto fields(Type<Layer>) {
  return std::tuple{Field{"role", &Layer::role, Need::required},
                    Field{"item", &Layer::item},
                    Field{"thickness", &Layer::thickness},
                    Field{"past_edge", &Layer::past_edge},
                    Field{"lift", &Layer::lift},
                    Field{"source", &Layer::source},
                    Field{"notes", &Layer::notes}};
}

constexpr auto fields(Type<BuildUp>) {
  return std::tuple{
      Field{"id", &BuildUp::id, Need::required}, Field{"use", &BuildUp::use},     Field{"name", &BuildUp::name},
      Field{"surface", &BuildUp::surface},       Field{"water", &BuildUp::water}, Field{"notes", &BuildUp::notes},
      Field{"layers", &BuildUp::layers}};
}

constexpr auto fields(Type<Limit>) {
  return std::tuple{Field{"id", &Limit::id, Need::required},
                    Field{"group", &Limit::group},
                    Field{"name", &Limit::name},
                    Field{"least", &Limit::least},
                    Field{"greatest", &Limit::greatest},
                    Field{"usual", &Limit::usual},
                    Field{"unit", &Limit::unit},
                    Field{"source", &Limit::source},
                    Field{"known", &Limit::known},
                    Field{"notes", &Limit::notes}};
}

constexpr auto fields(Type<Junction>) {
  return std::tuple{Field{"id", &Junction::id, Need::required},
                    Field{"side_a", &Junction::side_a},
                    Field{"side_b", &Junction::side_b},
                    Field{"condition", &Junction::condition},
                    Field{"name", &Junction::name},
                    Field{"built", &Junction::built},
                    Field{"joint", &Junction::joint},
                    Field{"rod", &Junction::rod},
                    Field{"sealant", &Junction::sealant},
                    Field{"filler", &Junction::filler},
                    Field{"edge", &Junction::edge},
                    Field{"other", &Junction::other},
                    Field{"source", &Junction::source},
                    Field{"known", &Junction::known},
                    Field{"notes", &Junction::notes}};
}

constexpr auto fields(Type<Rate>) {
  return std::tuple{Field{"id", &Rate::id, Need::required},
                    Field{"stage", &Rate::stage},
                    Field{"line_kind", &Rate::line_kind},
                    Field{"name", &Rate::name},
                    Field{"si_unit", &Rate::si_unit},
                    Field{"hours_per_si_unit", &Rate::hours_per_si_unit},
                    Field{"crew", &Rate::crew},
                    Field{"machine", &Rate::machine},
                    Field{"condition", &Rate::condition},
                    Field{"source", &Rate::source},
                    Field{"known", &Rate::known},
                    Field{"notes", &Rate::notes}};
}

constexpr auto fields(Type<Supplier>) {
  return std::tuple{Field{"id", &Supplier::id, Need::required},
                    Field{"name", &Supplier::name},
                    Field{"sells", &Supplier::sells},
                    Field{"delivery", &Supplier::delivery},
                    Field{"lead_days", &Supplier::lead_days},
                    Field{"least_order", &Supplier::least_order},
                    Field{"notes", &Supplier::notes}};
}

constexpr auto fields(Type<HoldPoint>) {
  return std::tuple{Field{"stage", &HoldPoint::stage},    Field{"look_at", &HoldPoint::look_at},
                    Field{"limit", &HoldPoint::limit},    Field{"before", &HoldPoint::before},
                    Field{"who", &HoldPoint::who},        Field{"source", &HoldPoint::source},
                    Field{"applies", &HoldPoint::applies}};
}

constexpr auto fields(Type<Caution>) {
  return std::tuple{Field{"stage", &Caution::stage}, Field{"text", &Caution::text}, Field{"who", &Caution::who},
                    Field{"source", &Caution::source}, Field{"applies", &Caution::applies}};
}

constexpr auto fields(Type<SiteRule>) {
  return std::tuple{Field{"id", &SiteRule::id, Need::required},
                    Field{"mark", &SiteRule::mark},
                    Field{"against", &SiteRule::against},
                    Field{"distance", &SiteRule::distance},
                    Field{"per_size", &SiteRule::per_size},
                    Field{"severity", &SiteRule::severity},
                    Field{"text", &SiteRule::text},
                    Field{"who", &SiteRule::who},
                    Field{"source", &SiteRule::source}};
}

constexpr auto fields(Type<Catalogue>) {
  return std::tuple{Field{"note", &Catalogue::note},
                    Field{"items", &Catalogue::items},
                    Field{"patterns", &Catalogue::patterns},
                    Field{"build_ups", &Catalogue::build_ups},
                    Field{"junctions", &Catalogue::junctions},
                    Field{"rates", &Catalogue::rates},
                    Field{"limits", &Catalogue::limits},
                    Field{"suppliers", &Catalogue::suppliers},
                    Field{"hold_points", &Catalogue::hold_points},
                    Field{"cautions", &Catalogue::cautions},
                    Field{"site_rules", &Catalogue::site_rules}};
}

}  // namespace files
