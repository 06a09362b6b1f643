// What the crew sets out, worked out for the sheets that show it.
#pragma once

#include <optional>
#include <string>

#include "sheets/printed.h"
#include "takeoff/setting_out/setting_out.h"

namespace sheets {

takeoff::setting_out::SettingOut set_out(const results::Results& results);

// Of "mark", "diagonal", "offset" or "stake" and its number; nothing of any other list.
std::optional<std::string> working_of_set_out(const Printed& printed, const std::string& list,
                                              const std::string& number);

}  // namespace sheets
