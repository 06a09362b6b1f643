// Any bytes as a job file: a job that is written and read again the same, or one sentence.
#include <cstdint>

#include "files/files.h"
#include "problem/ensure.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(bytes), size);
  const auto job = files::read_job(text, "fuzz.json");
  if (!job) {
    problem::ensure(job.error().place.line >= 1 && !job.error().text.empty() && !job.error().mend.empty(),
                    "a refused file has a sentence, a place and a mend");
    return 0;
  }
  const std::string canonical = files::write_job(*job);
  const auto back = files::read_job(canonical, "fuzz.json");
  problem::ensure(back.has_value() && plan::same(*job, *back), "write then read is the identity");
  problem::ensure(files::write_job(*back) == canonical, "the text of a job is always the same");
  return 0;
}
