#include "store/bodies.h"

#include <QtCore/QCryptographicHash>

namespace store {

using problem::Result;

namespace {

std::unexpected<problem::Problem> lost(const Database& database, std::string text) {
  return problem::fault("body-lost", std::move(text), "put a copy of the book in its place, or bring the picture again",
                        {{}, database.path(), 0, 0, {}});
}

}  // namespace

std::string sha256(const std::string& bytes) {
  const auto view = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
  return QCryptographicHash::hash(view, QCryptographicHash::Sha256).toHex().toStdString();
}

Result<std::string> put_body(Database& database, const std::string& bytes, bool kept) {
  const std::string hash = sha256(bytes);
  const auto there = database.rows("SELECT kept FROM bodies WHERE sha256 = ?", {hash});
  if (!there) return std::unexpected(there.error());
  Result<void> done;
  if (there->empty())
    done = database.run("INSERT INTO bodies VALUES (?, ?, ?)", {hash, std::int64_t{kept ? 1 : 0}, Bytes{bytes}});
  else if (kept && there->front().front() == Bound(std::int64_t{0}))
    done = database.run("UPDATE bodies SET kept = 1 WHERE sha256 = ?", {hash});
  if (!done) return std::unexpected(done.error());
  return hash;
}

Result<std::string> take_body(Database& database, const std::string& hash) {
  const auto rows = database.rows("SELECT bytes FROM bodies WHERE sha256 = ?", {hash});
  if (!rows) return std::unexpected(rows.error());
  if (rows->empty()) return lost(database, "the job book has no body " + hash);
  const auto* found = std::get_if<Bytes>(&rows->front().front());
  std::string bytes = found == nullptr ? "" : found->bytes;  // an empty body comes back as no bytes at all
  if (sha256(bytes) != hash) return lost(database, "the body " + hash + " in the job book is damaged");
  return bytes;
}

Result<void> drop_unused_body(Database& database, const std::string& hash) {
  return database.run(
      "DELETE FROM bodies WHERE sha256 = ? AND kept = 0 AND NOT EXISTS (SELECT 1 FROM jobs WHERE catalogue = ?)",
      {hash, hash});
}

}  // namespace store
