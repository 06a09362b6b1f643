// A job is an immutable value. An edit is a pure function Job -> Job that shares all elements it does not touch.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "plan/element.h"
#include "plan/offer.h"
#include "units/read_length.h"

namespace plan {

struct Heading {
  std::string name;
  std::string number;  // the office's own
  std::string customer;
  std::string place;
  std::string notes;
  units::System units = units::System::us;
  std::string currency = "USD";
  int decimals = 2;       // of the currency
  bool invented = false;  // demo jobs say so on everything they print
  bool operator==(const Heading&) const = default;
};

// Where the job's origin lies in the world, as import kept it; nothing is computed from it.
struct Datum {
  std::string what;  // "local", "wgs84", "plane"
  double longitude = 0;
  double latitude = 0;
  double easting_m = 0;  // "plane": what was taken off the plane coordinates of the source, in metres
  double northing_m = 0;
  bool operator==(const Datum&) const = default;
};

// How far an offcut may travel: C2. One lot of units is bought for the whole job, or each area keeps to itself.
enum class Reuse { none, area, job };

// Who removes how much of what kind of ground, at what bulking. Shares are by volume: loose = bank x (1 + swell).
struct Soil {
  std::string name = "common earth";
  double swell = 0.25;  // on bank volume
  double bank_density_kg_m3 = 1800;
  double compacted = 0.9;    // placed and compacted volume for bank volume
  std::string stands = "C";  // A, B, C: how steep its cut faces stand (29 CFR 1926 subpart P); C is the flattest
  double reusable = 0;       // share of what is dug that may be placed again as fill
  units::Length topsoil;     // stripped first, apart from the rest; 0: there is none
  double topsoil_back = 1;   // share of it that is spread on the site again
  std::string source = "common practice; enter your own";
  bool operator==(const Soil&) const = default;
};

// What the person chose for the whole job.
struct Choices {
  units::Length reach = units::Length::millimetres(25);  // junctions look this far
  Reuse reuse = Reuse::area;
  double sliver_share = 1.0 / 3;  // of the unit's area
  units::Length sliver_width = units::Length::inches(2);
  units::Length kerf = units::Length::inch_64ths(8);  // 1/8 in
  units::Length start_tolerance = units::Length::inches(1);
  Soil soil;
  Id truck;                        // for haul
  Id disposal;                     // fee item, empty: none
  Id saw;                          // for blocks, caps and steps; empty: none chosen
  std::string access = "machine";  // machine, tight, hand: picks the rates
  double crew = 3;                 // people
  double day_hours = 8;
  bool count_attic = false;
  double attic_share = 0;            // spare units kept for repairs
  std::string cbr = "firm";          // firm, soft: fabric overlap class
  bool infiltration_counts = false;  // the person counts on water going into the ground
  double infiltration_m_s = 0;       // measured; 0 is none
  std::string infiltration_source;   // date and who measured it
  double rain_mm_h = 0;              // intensity that the person chose for runoff; 0: none
  std::string rain_source;           // of which return period, from where
  bool operator==(const Choices&) const = default;
};

// A line's stage moved for this job; who looked at a hold point and when.
struct StageMove {
  Id item;
  std::string stage;
  bool operator==(const StageMove&) const = default;
};
struct LookedAt {
  std::string stage;
  std::string look_at;
  std::string who;
  std::string when;
  bool operator==(const LookedAt&) const = default;
};

struct Job {
  Heading heading;
  Datum datum;
  Choices choices;
  std::vector<StageMove> stage_moves;
  std::vector<LookedAt> looked_at;
  std::shared_ptr<const catalogue::Catalogue> catalogue;  // the part that the job uses; never null
  std::vector<ElementPtr> elements;                       // in the order of drawing; ids differ
  Offer offer;
  Enquiry enquiry;
  std::vector<VisitAnswer> visit;

  const Element* find(const ElementId& id) const;
};

bool same(const Job& a, const Job& b);  // by value

// Every edit is built on these two. `with` replaces the element of that id where it stands, or adds it at the end.
Job with(const Job& job, Element element);
Job without(const Job& job, const ElementId& id);

}  // namespace plan
