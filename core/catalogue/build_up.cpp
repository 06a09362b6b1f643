#include "catalogue/build_up.h"

namespace catalogue {

bool open_graded(const Item& item) { return item.kind == "aggregate" && item.number("porosity").value_or(0) > 0; }

}  // namespace catalogue
