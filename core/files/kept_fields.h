// What is kept of an estimate, in JSON (fields.h). Money is whole coins.
#pragma once

#include "estimate/kept.h"
#include "files/job_fields.h"

namespace files {

// The format that this program writes. It reads this one and none newer.
inline constexpr int kept_format = 1;

using estimate::KeptLine, estimate::KeptStep, estimate::Kept;

constexpr auto fields(Type<KeptLine>) {
  return std::tuple{Field{"stage", &KeptLine::stage},
                    Field{"item", &KeptLine::item},
                    Field{"kind", &KeptLine::kind, Need::required},
                    Field{"description", &KeptLine::description},
                    Field{"elements", &KeptLine::of},
                    Field{"quantity", &KeptLine::quantity},
                    Field{"unit", &KeptLine::unit},
                    Field{"order_quantity", &KeptLine::order_quantity},
                    Field{"order_unit", &KeptLine::order_unit},
                    Field{"unit_price", &KeptLine::unit_price},
                    Field{"amount", &KeptLine::amount},
                    Field{"by_others", &KeptLine::by_others},
                    Field{"allowance", &KeptLine::allowance},
                    Field{"sentence", &KeptLine::sentence},
                    Field{"working", &KeptLine::working}};
}
constexpr auto fields(Type<KeptStep>) {
  return std::tuple{Field{"code", &KeptStep::code, Need::required}, Field{"name", &KeptStep::name},
                    Field{"amount", &KeptStep::amount, Need::required}, Field{"working", &KeptStep::working}};
}
constexpr auto fields(Type<Kept>) {
  return std::tuple{Field{"currency", &Kept::currency, Need::required},
                    Field{"decimals", &Kept::decimals, Need::required},
                    Field{"program", &Kept::program},
                    Field{"lines", &Kept::lines},
                    Field{"steps", &Kept::steps},
                    Field{"direct", &Kept::direct, Need::required},
                    Field{"price", &Kept::price, Need::required},
                    Field{"total", &Kept::total, Need::required},
                    Field{"final", &Kept::final},
                    Field{"problems", &Kept::problems}};
}

}  // namespace files
