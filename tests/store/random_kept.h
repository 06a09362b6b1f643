// What is kept of an estimate, drawn field by field.
#pragma once

#include "files/kept_fields.h"
#include "files/random_job.h"

namespace random_job {

inline estimate::Kept kept() {
  estimate::Kept kept;
  fill(kept);
  return kept;
}

}  // namespace random_job
