// The check value of a job file: eight hexadecimal digits in its last field, `check`, so that a file that was altered
// on its way (a bit turned on a disk or in the mail) is told apart from what was written.
//
// It is the CRC-32 of zip and PNG (polynomial 04C11DB7, reflected) over the file's fields but `check`, as one line:
// `, ` and `: ` between parts, no other blanks, texts as UTF-8, numbers as they stand. So another lay-out of the same
// file has the same value. It finds every single turned bit and every run of up to 32; of any other change it misses
// one in four thousand million. It is no signature: whoever changes a file by hand takes the field out.
#pragma once

#include <string>

#include "files/json_read.h"

namespace files {

inline constexpr const char* check_field = "check";

std::string check_value(const Value& object);

}  // namespace files
