// Files in and out. Text in, value out, and back; nothing here touches a disk but `read_file` and `write_file`.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "files/csv.h"
#include "plan/job.h"
#include "results/results.h"

namespace files {

// Limits of every JSON file: 64 levels, 64 MiB, 1 M values.
inline constexpr std::size_t most_bytes = 64 * 1024 * 1024;

problem::Result<std::string> read_file(const std::string& path);  // refuses what is larger than most_bytes
problem::Result<void> write_file(const std::string& path,
                                 std::string_view text);  // temporary file, then rename: never half a file

// The job file (resources/job.schema.json). Unknown fields, doubled keys, doubled ids, numbers that are not finite, and
// a check value that does not fit (check_value.h): refused with line and column.
problem::Result<plan::Job> read_job(std::string_view text, const std::string& file);
std::string write_job(const plan::Job& job);  // canonical order; write then read is the identity

// GeoJSON in: `layers` maps the property `layer` or `kind` ("*": any not named) to an element
// kind.
struct Import {
  plan::Job job;
  std::map<std::string, int> not_mapped;    // layer name -> how many features were left out
  std::vector<problem::Problem> notices{};  // what looks odd, and is imported all the same
};
problem::Result<Import> import_geojson(std::string_view text, const std::string& file, std::string_view units,
                                       const std::map<std::string, std::string>& layers);

// DXF in (text form, R12 and later): lines, arcs, circles, ellipses, splines, polylines with arcs, points, and blocks
// of them where they are placed. `layers` maps the drawing's layers as above; an id is made of the layer and the
// entity's place among all, deck-12 (of a placed block deck-12.3), or is the element's own where this program wrote the
// file. Lines and arcs of one layer that meet end to end, or all but meet (dxf_read.h), become one line, or an outline
// where they close. `units` as above; empty: the unit that the drawing says, and where it says none the file is
// refused. What is not mapped, is of another type, or can't be drawn as the kind that its layer maps to is counted in
// `not_mapped` under its layer and type. A notice (dxf-size) where all of it is under 1 m or over 1 km across: the unit
// may be another. Refused with line and reason: dxf_read.h and what lies more than 5 km away.
problem::Result<Import> import_dxf(std::string_view text, const std::string& file, std::string_view units,
                                   const std::map<std::string, std::string>& layers);

// Survey points in: CSV of point, northing, easting, height, description. The first row may name the columns, in any
// order (also pt, n, e, z, elevation, desc ...; columns of other names are left out and told), or the file has no head
// line and goes by that order, the description optional. `units` is the unit of coordinates and heights: m, mm, ft,
// us-ft (1200/3937 m) or in; there is no default, a foot read as a metre looks right until it is dug.
//
// Each point becomes a level: its id the point, its name the description. What it is: the letters that the description
// begins with (EG existing, FG finished, BM bench-mark, INV invert; anything else is existing), or what `layers` says
// of that code, of the whole description, or of "*" (any other): "level" (existing) or "level:WHAT". A finished level
// whose description ends in "area NAME" (one word) is of that paved area. An empty height is none: the level book may
// have it.
//
// A file of coordinates within 5 km of its own origin keeps it; otherwise the first point is the job's origin and what
// was taken off is its datum. With `into` the levels are added to that job at its datum. Refused with line and reason:
// a missing column, too few cells, not a number, an empty or doubled point, an id that the job has, what lies further
// than 5 km from the origin or 10 km above it, a job that lies by longitude and latitude, a file without points.
struct SurveyImport {
  plan::Job job;
  std::size_t points = 0;
  std::vector<std::string> left_out;  // columns that nothing is made of
};
problem::Result<SurveyImport> import_survey(std::string_view text, const std::string& file, std::string_view units,
                                            const std::map<std::string, std::string>& layers,
                                            const plan::Job* into = nullptr);

std::string takeoff_text(const results::Results& results);
std::string takeoff_csv(const results::Results& results, const CsvForm& form = {});
std::string takeoff_json(const results::Results& results);

// The catalogue's items as CSV, and back: RFC 4180, one row an item. A bad row is refused with its line and reason and
// nothing is imported.
std::string write_catalogue_csv(const catalogue::Catalogue& catalogue);
problem::Result<std::vector<catalogue::Item>> read_catalogue_csv(std::string_view text, const std::string& file);

// The starter catalogue out of a folder of resources (catalogue/*.csv, patterns/*.json): path -> text of each file, so
// that it can be built in.
problem::Result<catalogue::Catalogue> read_starter(const std::map<std::string, std::string>& texts);

}  // namespace files
