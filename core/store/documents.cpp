#include "store/documents.h"

#include <QtCore/QString>

#include "store/bodies.h"
#include "store/cell.h"
#include "store/now.h"

namespace store {

using problem::Result;

namespace {

bool is_utf8(const std::string& text) { return QString::fromStdString(text).toStdString() == text; }

DocumentRow row_of(const Row& row) {
  return {whole_of(row.at(0)), whole_of(row.at(1)), text_of(row.at(2)), text_of(row.at(3)),
          text_of(row.at(4)),  whole_of(row.at(5)), text_of(row.at(6))};
}

}  // namespace

Result<DocumentRow> put_document(Database& database, std::int64_t version, const std::string& name,
                                 const std::string& language, const std::string& bytes) {
  if (bytes.empty())
    return problem::fault("document-empty", "the printed sheet is empty", "print it again; nothing was kept");
  if (!is_utf8(name) || !is_utf8(language))
    return problem::fault("document-words", "the name of the printed sheet is not text", "give it another name");
  const auto there = database.rows("SELECT id FROM versions WHERE id = ?", {version});
  if (!there) return std::unexpected(there.error());
  if (there->empty())
    return problem::fault("version-none", "the job book has no version " + std::to_string(version),
                          "choose another version", {{}, database.path(), 0, 0, {}});
  const auto hash = put_body(database, bytes, true);
  if (!hash) return std::unexpected(hash.error());
  DocumentRow row{0, version, name, language, utc_now(), static_cast<std::int64_t>(bytes.size()), *hash};
  auto done =
      database.run("INSERT INTO documents (version, name, language, made, size, body) VALUES (?, ?, ?, ?, ?, ?)",
                   {version, name, language, row.made, row.size, row.sha256});
  if (!done) return std::unexpected(done.error());
  const auto id = database.rows("SELECT last_insert_rowid()");
  if (!id) return std::unexpected(id.error());
  row.id = whole_of(id->front().front());
  return row;
}

Result<std::vector<DocumentRow>> take_documents(Database& database, std::int64_t version) {
  const auto rows = database.rows(
      "SELECT id, version, name, language, made, size, body FROM documents WHERE version = ? ORDER BY id", {version});
  if (!rows) return std::unexpected(rows.error());
  std::vector<DocumentRow> documents;
  for (const Row& row : *rows) documents.push_back(row_of(row));
  return documents;
}

Result<Document> take_document(Database& database, std::int64_t id) {
  const auto rows =
      database.rows("SELECT id, version, name, language, made, size, body FROM documents WHERE id = ?", {id});
  if (!rows) return std::unexpected(rows.error());
  const problem::Place place{{}, database.path(), 0, 0, {}};
  if (rows->empty())
    return problem::fault("document-none", "the job book has no printed sheet " + std::to_string(id),
                          "choose another one", place);
  Document document{row_of(rows->front()), {}};
  auto bytes = take_body(database, document.row.sha256);
  if (!bytes)
    return problem::fault(
        "document-damaged",
        "the printed sheet " + document.row.name.substr(0, 60) + " is not what was kept: " + bytes.error().text,
        "take it from a copy of the job book", place);
  document.bytes = std::move(*bytes);
  return document;
}

}  // namespace store
