// The balance of the earth: what is dug, what is placed again, what goes and what comes.
#include <algorithm>

#include "takeoff/ground/earth.h"
#include "takeoff/loads.h"
#include "units/number.h"
#include "units/quantity.h"

namespace takeoff::ground {

using problem::Severity;

namespace {

constexpr const char* fill_item = "agg-soil-fill";
constexpr double nothing = 1e-9;  // m3

struct Maker {
  const plan::Job& job;
  const plan::Soil& soil;
  std::vector<plan::ElementId> all;
  Share share;

  std::string shown(double cubic_metres) const {
    if (job.heading.units == units::System::us)
      return units::show_number(cubic_metres / units::cubic_metres_per_cubic_yard, 1) + " cu yd";
    return units::show_number(cubic_metres, 1) + " m3";
  }

  void say(Severity severity, std::string code, std::string text, std::string mend) {
    share.problems.push_back({severity, std::move(code), std::move(text), std::move(mend), {}});
  }

  const catalogue::Item* chosen(const plan::Id& id, const std::string& what) {
    if (id.empty()) {
      say(Severity::notice, "haul-not-chosen", "no " + what + " is chosen, so its cost is not here",
          "choose one for the job");
      return nullptr;
    }
    const catalogue::Item* item = job.catalogue->item(id);
    if (!item)
      say(Severity::problem, "item-unknown", "the job's catalogue has no '" + id + "'",
          "choose an item that it has, or copy it in");
    return item;
  }

  void trucked(const Working& bank, const std::string& what, const std::string& note = {}) {
    const Working loose =
        Working::product({bank, term("loose for bank, " + soil.name, 1 + soil.swell, units::piece, "soil/swell")})
            .named("loose volume");
    const Working weight = Working::product({bank, term("bank density", soil.bank_density_kg_m3,
                                                        units::kilogram_per_cubic_metre, "soil/bank_density")})
                               .named("weight");
    if (const catalogue::Item* truck = chosen(job.choices.truck, "truck")) {
      auto count = loads(loose, weight, *truck);
      if (!count) return share.problems.push_back(count.error());
      share.lines.push_back({Stage::dig, truck->id, what + " to haul" + note, all, *count, 0, false});
      share.tasks.push_back({Stage::dig, "load-haul", "load and haul " + what, all, *count, 1, {}});
    }
    if (const catalogue::Item* fee = chosen(job.choices.disposal, "disposal fee"))
      share.lines.push_back({Stage::dig, fee->id, what + ", by weight", all, weight, 0, false});
  }

  // `missing`: compacted in place, m3.
  void bring(const Working& missing) {
    const catalogue::Item* fill = job.catalogue->item(fill_item);
    const auto density = fill ? fill->number("compacted_density_kg_m3") : std::nullopt;
    if (!density || *density <= 0) {
      say(Severity::problem, "fill-to-bring",
          shown(missing.amount().value) + " of fill, compacted, has to be brought, and the catalogue has no '" +
              std::string(fill_item) + "' with a placed density",
          "copy it into the catalogue, or let more of what is dug be reused");
      return;
    }
    const Working weight = Working::product({missing, term("placed density", *density, units::kilogram_per_cubic_metre,
                                                           std::string(fill_item) + "/compacted_density_kg_m3")});
    share.lines.push_back({Stage::dig, fill->id, "fill to bring", all, weight, {}, false});
  }

  void topsoil(const std::vector<Working>& stripped) {
    if (stripped.empty()) return;
    const Working volume = Working::sum(stripped).named("topsoil stripped");
    if (volume.amount().value < nothing) return;
    const double share_back = std::clamp(soil.topsoil_back, 0.0, 1.0);
    const Working back =
        Working::product({volume, term("spread on the site again", share_back, units::piece, "soil/topsoil_back")})
            .named("topsoil spread");
    if (share_back > 0)
      share.tasks.push_back({Stage::finish, "topsoil", "topsoil spread on the site again", all, back, 1, {}});
    const Working away = Working::difference(volume, back).named("topsoil to haul");
    if (away.amount().value > nothing) trucked(away, "topsoil");
    say(Severity::notice, "topsoil-balance",
        "topsoil: " + shown(volume.amount().value) + " stripped = " + shown(back.amount().value) +
            " spread on the site again + " + shown(away.amount().value) + " hauled",
        "it is kept apart from the spoil, under a cover where rain would carry it off");
  }
};

void balance(Maker& make, const std::vector<Working>& bank, const std::vector<Working>& fill) {
  const plan::Soil& soil = make.soil;
  const Working dug = Working::sum(bank).named("bank volume");
  Working hauled = dug;
  double placed = 0, brought = 0;
  if (!fill.empty()) {
    const double compacted = soil.compacted > 0 ? soil.compacted : 1;
    const Working needed = Working::sum(fill).named("fill, compacted");
    const Working in_bank =
        Working::quotient(needed, term("compacted for bank, " + soil.name, compacted, units::piece, "soil/compacted"))
            .named("fill, in bank volume");
    const Working may =
        Working::product({dug, term("may be placed again", soil.reusable, units::piece, "soil/reusable")})
            .named("reusable");
    const Working reused = Working::least({in_bank, may}).named("placed again");
    placed = reused.amount().value;
    hauled = Working::difference(dug, reused).named("spoil, bank volume");
    const Working missing =
        Working::difference(needed, Working::product({reused, term("compacted for bank, " + soil.name, compacted,
                                                                   units::piece, "soil/compacted")}))
            .named("fill to bring, compacted");
    brought = missing.amount().value;
    if (brought > nothing) make.bring(missing);
  }
  if (hauled.amount().value > nothing) make.trucked(hauled, "spoil", placed > 0 ? "" : "; nothing reused");
  make.say(Severity::notice, "earth-balance",
           "earth: " + make.shown(dug.amount().value) + " dug, measured in the ground = " + make.shown(placed) +
               " placed again + " + make.shown(hauled.amount().value) + " hauled" +
               (brought > nothing ? "; " + make.shown(brought) + " of fill, compacted, to bring" : ""),
           "say in the job's soil what share of it may be placed again");
}

}  // namespace

Share haul(const plan::Job& job, const std::vector<Dug>& dug) {
  Maker make{job, job.choices.soil, {}, {}};
  std::vector<Working> bank, fill, topsoil;
  for (const Dug& hole : dug) {
    make.all.insert(make.all.end(), hole.of.begin(), hole.of.end());
    if (hole.bank) (hole.topsoil ? topsoil : bank).push_back(*hole.bank);
    if (hole.fill) fill.push_back(*hole.fill);
  }
  std::ranges::sort(make.all);
  make.all.erase(std::unique(make.all.begin(), make.all.end()), make.all.end());
  make.topsoil(topsoil);
  if (!bank.empty()) balance(make, bank, fill);
  return std::move(make.share);
}

}  // namespace takeoff::ground
