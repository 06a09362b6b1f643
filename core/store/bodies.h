// Bodies: large texts and pictures, kept once each under the SHA-256 of their bytes. None of these begins or ends a
// transaction.
#pragma once

#include <string>

#include "store/database.h"

namespace store {

std::string sha256(const std::string& bytes);  // 64 small hex digits

// Puts the bytes under their hash, which is given back; nothing is written where they stand already. What is `kept`
// stays until the book ends; anything else goes when the last job that names it does.
problem::Result<std::string> put_body(Database& database, const std::string& bytes, bool kept);

// The bytes of that hash. None there, or bytes that no longer have that hash (a damaged disk): refused.
problem::Result<std::string> take_body(Database& database, const std::string& hash);

// Drops a body that is not kept and that no job names.
problem::Result<void> drop_unused_body(Database& database, const std::string& hash);

}  // namespace store
