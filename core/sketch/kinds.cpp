#include "sketch/kinds.h"

#include <algorithm>
#include <array>

#include "sketch/words.h"

namespace sketch {

namespace {

constexpr std::array outline{Form::outline};
constexpr std::array line{Form::line};
constexpr std::array point{Form::point};
constexpr std::array outline_or_line{Form::outline, Form::line};
constexpr std::array any{Form::line, Form::outline, Form::point};

constexpr std::array keep_outs{What{"planter", words::planter},     What{"tree", words::tree},
                               What{"pillar", words::pillar},       What{"column", words::column},
                               What{"equipment", words::equipment}, What{"inlet", words::inlet}};
constexpr std::array edges{What{"restraint", words::restraint}, What{"kerb", words::kerb},
                           What{"edging", words::edging}};
constexpr std::array drains{What{"pipe", words::pipe}, What{"channel", words::channel}, What{"sleeve", words::sleeve}};
constexpr std::array removals{
    What{"concrete", words::concrete}, What{"asphalt", words::asphalt}, What{"unit-paving", words::unit_paving},
    What{"wall", words::wall_there},   What{"coping", words::coping},   What{"sod", words::sod},
    What{"stump", words::stump}};
constexpr std::array site_marks{What{"buried-service", words::buried_service},
                                What{"overhead-line", words::overhead_line},
                                What{"lot-line", words::lot_line},
                                What{"setback", words::setback},
                                What{"easement", words::easement},
                                What{"flood", words::flood},
                                What{"barrier", words::barrier},
                                What{"septic", words::septic},
                                What{"well", words::well},
                                What{"gate", words::gate},
                                What{"path", words::path},
                                What{"drop-spot", words::drop_spot},
                                What{"downspout", words::downspout}};
constexpr std::array levels{What{"existing", words::existing}, What{"finished", words::finished},
                            What{"bench-mark", words::bench_mark}, What{"invert", words::invert}};
constexpr std::span<const What> none;

constexpr std::array table{
    Drawing{Hand::area, words::area, "area", outline, none, words::first_corner},
    Drawing{Hand::pool, words::pool, "pool", outline, none, words::pool_begin},
    Drawing{Hand::wall, words::wall, "wall", line, none, words::wall_begin},
    Drawing{Hand::building, words::building, "building", outline, none, words::first_corner},
    Drawing{Hand::keep_out, words::keep_out, "keep-out", outline, keep_outs, words::first_corner},
    Drawing{Hand::edge, words::edge, "edge", line, edges, words::edge_begin},
    Drawing{Hand::drain, words::drain, "drain", line, drains, words::drain_begin},
    Drawing{Hand::removal, words::removal, "removal", outline_or_line, removals, words::removal_begin},
    Drawing{Hand::protection, words::protection, "protection", outline_or_line, none, words::protection_begin},
    Drawing{Hand::site_mark, words::site_mark, "site mark", any, site_marks, words::site_mark_begin},
    Drawing{Hand::steps, words::steps, "steps", outline, none, words::steps_begin},
    Drawing{Hand::level, words::level, "level", point, levels, words::level_begin},
    Drawing{Hand::feature, words::feature, "feature", point, none, words::feature_begin},
    Drawing{Hand::note, words::note, "note", point, none, words::note_begin},
};

}  // namespace

std::span<const Drawing> drawings() { return table; }

const Drawing* drawing(Hand hand) {
  const auto* found = std::ranges::find(table, hand, &Drawing::hand);
  return found == table.end() ? nullptr : found;
}

}  // namespace sketch
