// What was printed of a version and given out: its bytes are kept as they were, and are never changed. None of these
// begins or ends a transaction.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "store/database.h"

namespace store {

struct DocumentRow {
  std::int64_t id = 0;
  std::int64_t version = 0;
  std::string name;      // "quote"
  std::string language;  // en, es
  std::string made;      // 2026-11-28T21:47:26Z (UTC)
  std::int64_t size = 0;
  std::string sha256;  // of the bytes
  bool operator==(const DocumentRow&) const = default;
};

struct Document {
  DocumentRow row;
  std::string bytes;
};

// Refused: no such version (version-none), no bytes (document-empty), words that are not UTF-8 (document-words).
problem::Result<DocumentRow> put_document(Database& database, std::int64_t version, const std::string& name,
                                          const std::string& language, const std::string& bytes);
problem::Result<std::vector<DocumentRow>> take_documents(Database& database, std::int64_t version);  // oldest first
problem::Result<Document> take_document(Database& database, std::int64_t id);  // damaged bytes: refused by name

}  // namespace store
