#include <algorithm>
#include <tuple>

#include "plan/differences.h"

namespace plan {

namespace {

// A row: what people call the field, and where it is. Several fields may have the same words.
template <class Of, class Member>
struct Named {
  const char* words;
  Member Of::* member;
};
template <class Of, class Member>
Named(const char*, Member Of::*) -> Named<Of, Member>;

constexpr auto rows(const PavedArea*) {
  using Of = PavedArea;
  return std::tuple{Named{"outline", &Of::outline},
                    Named{"build-up", &Of::build_up},
                    Named{"borders", &Of::borders},
                    Named{"joint filler", &Of::joint_fill},
                    Named{"edges", &Of::edges},
                    Named{"taped area", &Of::taped_area_m2},
                    Named{"vehicles", &Of::vehicles},
                    Named{"access route", &Of::access},
                    Named{"finished surface", &Of::finish},
                    Named{"where its water goes", &Of::water_to}};
}
constexpr auto rows(const Pool*) {
  using Of = Pool;
  return std::tuple{Named{"outline", &Of::outline},
                    Named{"coping", &Of::coping},
                    Named{"shell", &Of::shell},
                    Named{"surround", &Of::surround},
                    Named{"collar", &Of::collar},
                    Named{"bonding", &Of::bonding},
                    Named{"measured as built", &Of::as_built},
                    Named{"level of the coping", &Of::coping_level}};
}
constexpr auto rows(const Wall*) {
  using Of = Wall;
  return std::tuple{Named{"line", &Of::line},
                    Named{"block", &Of::block},
                    Named{"block", &Of::curve_block},
                    Named{"block", &Of::half_block},
                    Named{"block", &Of::corner_block},
                    Named{"block", &Of::end_block},
                    Named{"cap", &Of::cap},
                    Named{"cap", &Of::curve_cap},
                    Named{"cap", &Of::cap_overhang},
                    Named{"adhesive", &Of::adhesive},
                    Named{"adhesive", &Of::glued},
                    Named{"thickness", &Of::thickness},
                    Named{"side", &Of::behind},
                    Named{"free-standing", &Of::free_standing},
                    Named{"existing", &Of::existing},
                    Named{"height", &Of::height},
                    Named{"height", &Of::top},
                    Named{"height", &Of::base},
                    Named{"height", &Of::fixed},
                    Named{"ground", &Of::ground},
                    Named{"ground", &Of::ground_behind},
                    Named{"ground", &Of::toe_slope},
                    Named{"buried courses", &Of::bury_courses},
                    Named{"bond", &Of::least_overlap},
                    Named{"ends", &Of::start_end},
                    Named{"ends", &Of::finish_end},
                    Named{"stone", &Of::stone},
                    Named{"pipe", &Of::pipe},
                    Named{"pipe", &Of::drained_by},
                    Named{"reinforcement", &Of::layers},
                    Named{"soils and loads", &Of::loads}};
}
constexpr auto rows(const Steps*) {
  using Of = Steps;
  return std::tuple{Named{"outline", &Of::outline},
                    Named{"unit", &Of::unit},
                    Named{"unit", &Of::riser_block},
                    Named{"risers", &Of::risers},
                    Named{"rise", &Of::rise},
                    Named{"direction", &Of::up},
                    Named{"fall of the treads", &Of::tread_fall},
                    Named{"lap", &Of::lap},
                    Named{"overhang", &Of::overhang},
                    Named{"build-up", &Of::build_up},
                    Named{"adhesive", &Of::adhesive},
                    Named{"public way", &Of::public_way},
                    Named{"cheek walls", &Of::cheeks}};
}
constexpr auto rows(const Building*) {
  using Of = Building;
  return std::tuple{Named{"outline", &Of::outline}, Named{"face", &Of::face},  Named{"footing", &Of::footing_depth},
                    Named{"level", &Of::floor},     Named{"level", &Of::sill}, Named{"level", &Of::weep},
                    Named{"level", &Of::siding},    Named{"level", &Of::vent}};
}
constexpr auto rows(const KeepOut*) {
  using Of = KeepOut;
  return std::tuple{Named{"outline", &Of::outline}, Named{"what it is", &Of::what}, Named{"trunk", &Of::trunk},
                    Named{"pillar", &Of::pillar}};
}
constexpr auto rows(const EdgeRun*) {
  using Of = EdgeRun;
  return std::tuple{Named{"line", &Of::line},           Named{"what it is", &Of::what}, Named{"unit", &Of::item},
                    Named{"unit", &Of::item_on_curves}, Named{"side", &Of::paving},     Named{"footing", &Of::footing},
                    Named{"weeps", &Of::weeps},         Named{"spikes", &Of::spikes},   Named{"upstand", &Of::upstand}};
}
constexpr auto rows(const DrainRun*) {
  using Of = DrainRun;
  return std::tuple{Named{"line", &Of::line},
                    Named{"what it is", &Of::what},
                    Named{"pipe or channel", &Of::item},
                    Named{"width", &Of::width},
                    Named{"level", &Of::start},
                    Named{"fall", &Of::fall},
                    Named{"level", &Of::inverts},
                    Named{"where it goes", &Of::into},
                    Named{"outlet", &Of::outlet_ground},
                    Named{"outlet", &Of::outlet_item},
                    Named{"inlets and fittings", &Of::parts},
                    Named{"inlets and fittings", &Of::bend},
                    Named{"inlets and fittings", &Of::joiner},
                    Named{"build-up", &Of::build_up},
                    Named{"caps and string", &Of::caps_and_string}};
}
constexpr auto rows(const Level*) {
  using Of = Level;
  return std::tuple{Named{"place", &Of::at}, Named{"level", &Of::height}, Named{"what it is", &Of::what},
                    Named{"whose it is", &Of::of}};
}
constexpr auto rows(const Feature*) {
  using Of = Feature;
  return std::tuple{Named{"place", &Of::at}, Named{"unit", &Of::item}, Named{"count", &Of::count},
                    Named{"spout", &Of::spout}};
}
constexpr auto rows(const Removal*) {
  using Of = Removal;
  return std::tuple{Named{"outline", &Of::outline},    Named{"line", &Of::line},           Named{"width", &Of::width},
                    Named{"what it is", &Of::what},    Named{"thickness", &Of::thickness}, Named{"level", &Of::top},
                    Named{"where it goes", &Of::fate}, Named{"loss", &Of::loss},           Named{"steel", &Of::steel}};
}
constexpr auto rows(const SiteMark*) {
  using Of = SiteMark;
  return std::tuple{Named{"place", &Of::points},
                    Named{"line", &Of::line},
                    Named{"outline", &Of::outline},
                    Named{"what it is", &Of::what},
                    Named{"depth", &Of::depth},
                    Named{"height", &Of::height},
                    Named{"width", &Of::width},
                    Named{"roof area", &Of::roof_area_m2},
                    Named{"where its water goes", &Of::into}};
}
constexpr auto rows(const Protection*) {
  using Of = Protection;
  return std::tuple{Named{"outline", &Of::outline}, Named{"line", &Of::line}, Named{"unit", &Of::item}};
}
constexpr auto rows(const Note*) { return std::tuple{Named{"place", &Note::at}, Named{"text", &Note::text}}; }
constexpr auto rows(const Dimension*) {
  return std::tuple{Named{"place", &Dimension::from}, Named{"place", &Dimension::to}};
}
constexpr auto rows(const LevelBook*) {
  using Of = LevelBook;
  return std::tuple{Named{"level", &Of::start}, Named{"level", &Of::finish}, Named{"sharing out", &Of::share_out},
                    Named{"readings", &Of::readings}};
}
constexpr auto rows(const BaseLine*) {
  using Of = BaseLine;
  return std::tuple{Named{"place", &Of::from}, Named{"place", &Of::to}, Named{"step along curves", &Of::chord_step}};
}
// A site plan and a tape book are said as a whole.
constexpr auto rows(const SitePlan*) { return std::tuple<>(); }
constexpr auto rows(const TapeBook*) { return std::tuple<>(); }

struct Words {
  std::vector<std::string> said;
  void say(const char* words) {
    if (std::ranges::find(said, words) == said.end()) said.emplace_back(words);
  }
};

void laying(const std::optional<Laying>& a, const std::optional<Laying>& b, Words& words) {
  if (a == b) return;
  if (!a || !b) return words.say("pattern");
  if (a->pattern != b->pattern) words.say("pattern");
  if (a->units != b->units) words.say("unit");
  if (a->start != b->start) words.say("start");
  if (a->direction != b->direction) words.say("direction");
  if (a->joint != b->joint) words.say("joint");
}

template <class Of>
void fields(const Of& a, const Of& b, Words& words) {
  std::apply([&](const auto&... row) { ((a.*row.member == b.*row.member ? void() : words.say(row.words)), ...); },
             rows(&a));
  if constexpr (std::is_same_v<Of, PavedArea>) laying(a.laying, b.laying, words);
}

}  // namespace

std::vector<std::string> what_differs(const Element& before, const Element& after) {
  if (before == after) return {};
  Words words;
  if (before.name != after.name) words.say("name");
  if (before.kind.index() != after.kind.index()) {
    words.say("kind");
    return words.said;
  }
  std::visit([&]<class Of>(const Of& a) { fields(a, std::get<Of>(after.kind), words); }, before.kind);
  if (words.said.empty()) words.say("what it holds");
  return words.said;
}

}  // namespace plan
