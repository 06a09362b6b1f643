#include "takeoff/water/pieces.h"

#include <cmath>
#include <numbers>

#include "takeoff/edges/notes.h"
#include "takeoff/levels/words.h"
#include "takeoff/walls/zone.h"

namespace takeoff::water {

namespace {

constexpr double corner = 5 * std::numbers::pi / 180;  // bends under this are sprung

int corners(const geometry::Path& path) {
  int found = 0;
  for (std::size_t i = 1; i < path.size(); ++i) {
    const geometry::Vec in = path.curve(i - 1).direction(1), out = path.curve(i).direction(0);
    if (std::abs(std::atan2(geometry::cross(in, out), geometry::dot(in, out))) > corner) ++found;
  }
  return found;
}

struct Maker {
  const plan::Job& job;
  const plan::ElementId& id;
  const Run& run;
  Share share;

  const plan::DrainRun& drawn() const { return *run.run; }
  Working length() const { return term("length as drawn", run.length, units::metre, id); }

  void line(const catalogue::Item& item, std::string text, Working working, bool approximate = false) {
    share.lines.push_back({Stage::under_ground, item.id, std::move(text), {id}, std::move(working), {}, approximate});
  }

  void run_itself() {
    const std::string& what = drawn().what;
    const catalogue::Item* item = edges::wanted(job, drawn().item, "the " + what, id, share);
    if (!item) return;
    if (what == "channel") return channel(*item);
    line(*item, what == "sleeve" ? "sleeve" : "drain pipe", length());
    edges::add_task(job, "pipe-lay", Stage::under_ground, what + " laid", id, length(), share);
    if (what == "pipe") trench(*item);
    if (what == "sleeve")
      share.problems.push_back(edges::notice(
          "sleeve-ends", "sleeve " + id + ": close both ends and measure them on the plan before they are covered",
          "caps and pull string: " + (drawn().caps_and_string.empty() ? "not entered" : drawn().caps_and_string), id));
  }

  void channel(const catalogue::Item& item) {
    if (!item.length || *item.length <= units::Length())
      return share.problems.push_back(edges::fault("channel-length", "a section of " + item.id + " has no length",
                                                   "enter it in the catalogue", id));
    line(item, "channel",
         Working::up(Working::quotient(
             length(), term("length of a section", item.length->metres().si(), units::metre, item.id + "/length"))));
    edges::add_task(job, "channel-set", Stage::under_ground, "channel set", id, length(), share);
  }

  void trench(const catalogue::Item& pipe) {
    if (drawn().build_up.empty()) return;
    const catalogue::BuildUp* build_up = job.catalogue->build_up(drawn().build_up);
    if (!build_up)
      return share.problems.push_back(edges::fault("build-up-unknown",
                                                   "the job's catalogue has no build-up '" + drawn().build_up + "'",
                                                   "choose one that it has, or copy it in", id));
    const double bore = pipe.number("nominal_diameter_in").value_or(4) * units::metres_per_inch;
    const double wide = bore + 2 * levels::limit(job, "trench-side", levels::Bound::usual, 6 * units::metres_per_inch);
    double high = 0;
    for (const catalogue::Layer& layer : build_up->layers)
      if (layer.role != "fabric" && layer.thickness) {
        stone(layer, bore, wide, high == 0);
        high += layer.thickness->metres().si();
      }
    for (const catalogue::Layer& layer : build_up->layers)
      if (layer.role == "fabric") fabric(layer, wide, high);
  }

  // The pipe lies in the first layer and takes its own room there.
  void stone(const catalogue::Layer& layer, double bore, double wide, bool with_pipe) {
    const std::string field = drawn().build_up + "/" + layer.role;
    Working volume = Working::product({length(), term("width of the trench", wide, units::metre, "trench-side"),
                                       term("depth of stone", layer.thickness->metres().si(), units::metre, field)});
    if (with_pipe)
      volume = Working::difference(
          std::move(volume), Working::product({length(), term("section of the pipe", std::numbers::pi / 4 * bore * bore,
                                                              units::square_metre, drawn().item)}));
    Share made;
    walls::add_stone(job, layer.item, "stone round the pipe", id, volume.named("stone round the pipe"), {}, made);
    for (Line& one : made.lines) one.stage = Stage::under_ground;
    for (Task& one : made.tasks) one.stage = Stage::under_ground;
    share.measures.put("trench_stone_m3", volume.amount().value);
    share.add(std::move(made));
  }

  void fabric(const catalogue::Layer& layer, double wide, double high) {
    const catalogue::Item* item = edges::wanted(job, layer.item, "the fabric round the stone", id, share);
    if (!item) return;
    const double lap = levels::limit(job, "fabric-lap", levels::Bound::usual, 12 * units::metres_per_inch);
    const Working girth = Working::sum({term("round the stone", 2 * (wide + high), units::metre, drawn().build_up),
                                        term("lap", lap, units::metre, "fabric-lap")});
    line(*item, "fabric round the stone of the pipe", Working::product({length(), girth}), true);
  }

  void piece(const plan::Id& item_id, const std::string& what, int count, const std::string& rate) {
    if (item_id.empty() || count == 0) return;
    const catalogue::Item* item = edges::wanted(job, item_id, what, id, share);
    if (!item) return;
    const Working pieces = term(what, count, units::piece, id);
    line(*item, what, pieces);
    if (!rate.empty()) edges::add_task(job, rate, Stage::under_ground, what, id, pieces, share);
  }

  void parts() {
    const int bends = corners(run.path);
    if (drawn().what != "channel" && bends > 0 && drawn().bend.empty())
      share.problems.push_back(edges::notice("bend-not-chosen",
                                             "the line of " + id + " turns " + std::to_string(bends) +
                                                 (bends == 1 ? " corner" : " corners") + " and no bend is chosen",
                                             "choose one, or draw the turn as a curve that the pipe can follow", id));
    piece(drawn().bend, "bends", bends, "fitting");
    if (run.joint) piece(drawn().joiner, "joint with " + run.joint->into, 1, "fitting");
    if (drawn().into.empty()) piece(drawn().outlet_item, "outlet to daylight", 1, "outlet");
    for (const plan::AtRun& part : drawn().parts) {
      const catalogue::Item* item = job.catalogue->item(part.item);
      const bool basin = item && item->kind == "inlet";
      piece(part.item, part.what.empty() ? "fitting" : part.what, 1, basin ? "basin-set" : "fitting");
    }
  }
};

}  // namespace

Share pieces(const plan::Job& job, const plan::ElementId& id, const Run& run) {
  Maker maker{job, id, run, {}};
  maker.run_itself();
  maker.parts();
  return std::move(maker.share);
}

}  // namespace takeoff::water
