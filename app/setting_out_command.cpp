#include "commands.h"
#include "files/setting_out_csv.h"
#include "plan/site.h"

namespace app {

int setting_out(const SettingOutWords& words) {
  const auto job = read_job(words.job);
  if (!job) return refuse(job.error());
  const plan::Site site = plan::site(*job);
  const takeoff::levels::Terrain terrain = takeoff::levels::terrain(*job, site);
  const auto out = takeoff::setting_out::setting_out(*job, site, takeoff::ground::bodies(*job, site), terrain);
  return deliver(files::setting_out_csv(*job, out), words.output);
}

}  // namespace app
