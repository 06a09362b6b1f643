// Any bytes as GeoJSON, as one kind or another (by the size of the text, so that the seeds stay plain files): a job
// that can be written and read, or one sentence.
#include <array>
#include <cstdint>

#include "files/files.h"
#include "problem/ensure.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  static constexpr std::array kinds{"paved-area", "wall", "removal", "site-mark:gate", "level"};
  static constexpr std::array units{"", "m", "us-ft"};
  const std::string_view text(reinterpret_cast<const char*>(bytes), size);
  const auto made =
      files::import_geojson(text, "fuzz.json", units[size % units.size()], {{"*", kinds[size % kinds.size()]}});
  if (!made) {
    problem::ensure(made.error().place.line >= 1 && !made.error().text.empty() && !made.error().mend.empty(),
                    "a refused file has a sentence, a place and a mend");
    return 0;
  }
  const auto back = files::read_job(files::write_job(made->job), "fuzz.json");
  problem::ensure(back.has_value() && plan::same(made->job, *back), "what is imported can be kept");
  return 0;
}
