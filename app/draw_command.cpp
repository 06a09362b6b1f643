#include <cstdio>

#include "commands.h"
#include "files/drawing_dxf.h"
#include "files/files.h"
#include "files/geojson_write.h"

namespace app {

int draw(const DrawWords& words) {
  const auto job = read_job(words.job);
  if (!job) return refuse(job.error());
  const files::DrawnThings drawn = files::drawn_things(*job);
  const std::string text =
      words.form == "geojson" ? files::write_geojson(*job, drawn) : files::drawing_dxf(*job, drawn);
  const int code = deliver(text, words.output);
  if (code != 0) return code;
  for (const std::string& id : drawn.left_out)
    std::fprintf(stderr, "groundcourse: %s has no line to draw and is left out\n", id.c_str());
  return 0;
}

}  // namespace app
