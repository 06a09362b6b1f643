// Files in and out. Text in, value out, and back; nothing here touches a disk but `read_file` and `write_file`.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "plan/job.h"
#include "results/results.h"

namespace files {

// Limits of every JSON file: 64 levels, 64 MiB, 1 M values.
inline constexpr std::size_t most_bytes = 64 * 1024 * 1024;

problem::Result<std::string> read_file(const std::string& path);  // refuses what is larger than most_bytes
problem::Result<void> write_file(const std::string& path,
                                 std::string_view text);  // temporary file, then rename: never half a file

// The job file (resources/job.schema.json). Unknown fields, doubled keys, doubled ids, numbers that are not finite:
// refused with line and column.
problem::Result<plan::Job> read_job(std::string_view text, const std::string& file);
std::string write_job(const plan::Job& job);  // canonical order; write then read is the identity

// GeoJSON in: `layers` maps the property `layer` or `kind` ("*": any not named) to an element
// kind.
struct Import {
  plan::Job job;
  std::map<std::string, int> not_mapped;  // layer name -> how many features were left out
};
problem::Result<Import> import_geojson(std::string_view text, const std::string& file, std::string_view units,
                                       const std::map<std::string, std::string>& layers);

std::string takeoff_text(const results::Results& results);
std::string takeoff_csv(const results::Results& results);
std::string takeoff_json(const results::Results& results);

// The catalogue's items as CSV, and back: RFC 4180, one row an item. A bad row is refused with its line and reason and
// nothing is imported.
std::string write_catalogue_csv(const catalogue::Catalogue& catalogue);
problem::Result<std::vector<catalogue::Item>> read_catalogue_csv(std::string_view text, const std::string& file);

// The starter catalogue out of a folder of resources (catalogue/*.csv, patterns/*.json): path -> text of each file, so
// that it can be built in.
problem::Result<catalogue::Catalogue> read_starter(const std::map<std::string, std::string>& texts);

}  // namespace files
