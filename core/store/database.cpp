#include "store/database.h"

#include <sys/stat.h>
#include <QtCore/QStandardPaths>
#include <QtCore/QString>
#include <QtCore/QUrl>
#include <QtCore/QVariant>
#include <QtSql/QSqlDatabase>
#include <QtSql/QSqlDriver>
#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>
#include <QtSql/QSqlRecord>

#include <atomic>
#include <filesystem>

#include "problem/ensure.h"
#include "store/page_sums.h"

namespace store {

namespace {

// "GrCo" in ASCII: tells a job book from any other SQLite file. migrations.cpp writes it into a new one.
constexpr std::int64_t application_id = 1198670703;

QString words(const std::string& text) {
  // A null QString would be bound as NULL.
  return text.empty() ? QString(QLatin1String(""))
                      : QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QVariant to_bind(const Bound& value) {
  if (const auto* whole = std::get_if<std::int64_t>(&value)) return QVariant(static_cast<qlonglong>(*whole));
  if (const auto* number = std::get_if<double>(&value)) return QVariant(*number);
  if (const auto* text = std::get_if<std::string>(&value)) return QVariant(words(*text));
  if (const auto* raw = std::get_if<Bytes>(&value))
    return QVariant(QByteArray(raw->bytes.data(), static_cast<qsizetype>(raw->bytes.size())));
  return QVariant();
}

Bound from_column(const QVariant& value) {
  if (value.isNull()) return {};
  switch (value.typeId()) {
    case QMetaType::LongLong:
    case QMetaType::Int: return static_cast<std::int64_t>(value.toLongLong());
    case QMetaType::Double: return value.toDouble();
    case QMetaType::QByteArray: return Bytes{value.toByteArray().toStdString()};
    default: return value.toString().toStdString();
  }
}

std::unexpected<problem::Problem> refuse(const std::string& path, const QSqlError& error) {
  if (a_sum_was_wrong())
    return problem::fault("book-damaged", "the job book's file is damaged: a part of it is not as it was written",
                          "restore the newest whole backup", {{}, path, 0, 0, {}});
  return problem::fault("book-database", "the job book's database says: " + error.text().trimmed().toStdString(),
                        "look at the file's rights and the space on the disk, or put a copy of the book in its place",
                        {{}, path, 0, 0, {}});
}

// The file as SQLite is told of it: by way of the sums of its pages.
QString address(const std::string& path, const char* more) {
  return QString::fromUtf8(QUrl::fromLocalFile(words(path)).toEncoded()) + QLatin1String("?vfs=") +
         QLatin1String(summing_disk) + QLatin1String(more);
}

// Which file lies at a path; nothing where there is none.
std::optional<FileId> file_at(const std::string& path) {
  struct stat found{};
  if (::stat(path.c_str(), &found) != 0) return {};
  return FileId{static_cast<std::uint64_t>(found.st_dev), static_cast<std::uint64_t>(found.st_ino)};
}

// Statements that every connection needs: nothing is called kept before it is on the disk, references hold, and a file
// that someone damaged or made up is not trusted.
constexpr const char* connection_statements[] = {"PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON",
                                                 "PRAGMA trusted_schema = OFF", "PRAGMA cell_size_check = ON",
                                                 "PRAGMA mmap_size = 0"};

std::int64_t number_in(const std::vector<Row>& answer) { return std::get<std::int64_t>(answer.at(0).at(0)); }

problem::Result<void> check_whose(Database& database) {
  const auto id = database.rows("PRAGMA application_id");
  if (!id) return std::unexpected(id.error());
  const std::int64_t whose = number_in(*id);
  if (whose == application_id) return {};
  const auto tables = database.rows("SELECT count(*) FROM sqlite_master");
  if (!tables) return std::unexpected(tables.error());
  if (whose == 0 && number_in(*tables) == 0) return {};
  return problem::fault("book-foreign", "the file is a database of another program",
                        "move it away, and the book is made anew", {{}, database.path(), 0, 0, {}});
}

}  // namespace

std::string data_folder() {
  const QString base = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
  return (base + QStringLiteral("/groundcourse")).toStdString();
}

problem::Result<void> make_folder(const std::string& folder) {
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (!error) return {};
  return problem::fault("book-folder", "the folder of the job book can't be made: " + error.message(),
                        "look at the rights of the folder above it, or set XDG_DATA_HOME", {{}, folder, 0, 0, {}});
}

problem::Result<Database> Database::open(const std::string& path) {
  return open(path, "", "QSQLITE_BUSY_TIMEOUT=5000;QSQLITE_OPEN_URI");
}

problem::Result<Database> Database::open_to_read(const std::string& path) {
  auto shared = open(path, "", "QSQLITE_BUSY_TIMEOUT=5000;QSQLITE_OPEN_URI;QSQLITE_OPEN_READONLY");
  // Readers beside a writer meet in a small file of their own. Where none can be made nobody writes either, so the file
  // stands still, unless a writer left work in its log.
  std::error_code error;
  if (shared || !std::filesystem::exists(path, error)) return shared;
  const auto log = std::filesystem::file_size(path + "-wal", error);
  if (!error && log > 0) return shared;
  auto alone = open(path, "&immutable=1", "QSQLITE_OPEN_URI;QSQLITE_OPEN_READONLY");
  return alone ? std::move(alone) : std::move(shared);
}

problem::Result<Database> Database::open(const std::string& path, const char* more, const char* options) {
  have_summing_disk();
  static std::atomic<int> opened{0};
  const std::string name = "groundcourse-" + std::to_string(++opened);
  Database database(path, name);
  {
    QSqlDatabase link = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), words(name));
    link.setDatabaseName(address(path, more));
    link.setConnectOptions(QString::fromLatin1(options));
    if (!link.open()) return refuse(path, link.lastError());
  }
  reserve_sums(static_cast<sqlite3*>(database.handle()));
  for (const char* statement : connection_statements)
    if (auto good = database.run(statement); !good) return std::unexpected(good.error());
  if (auto ours = check_whose(database); !ours) return std::unexpected(ours.error());
  database.file_ = file_at(path);
  return database;
}

Database::Database(Database&& other) noexcept
    : path_(std::move(other.path_)), connection_(std::move(other.connection_)), file_(other.file_) {
  other.connection_.clear();
}

Database::~Database() {
  if (connection_.empty()) return;
  QSqlDatabase::database(words(connection_), false).close();
  QSqlDatabase::removeDatabase(words(connection_));
}

problem::Result<void> Database::run(const char* statement, const Row& values) {
  auto done = rows(statement, values);
  if (!done) return std::unexpected(done.error());
  return {};
}

problem::Result<void> Database::check_place() const {
  if (!file_ || file_at(path_) == file_) return {};
  return problem::fault("book-gone",
                        "the job book's file no longer lies where it was opened, so nothing can be kept in it",
                        "put its folder back where it was, and what was changed since is written; or save the job to a "
                        "file before you close the window",
                        {{}, path_, 0, 0, {}});
}

problem::Result<std::vector<Row>> Database::rows(const char* statement, const Row& values) {
  static_cast<void>(a_sum_was_wrong());  // what was refused before is told
  QSqlQuery query(QSqlDatabase::database(words(connection_), false));
  query.setForwardOnly(true);
  if (!query.prepare(QString::fromUtf8(statement))) return refuse(path_, query.lastError());
  for (const Bound& value : values) query.addBindValue(to_bind(value));
  if (!query.exec()) return refuse(path_, query.lastError());
  std::vector<Row> found;
  if (!query.isSelect()) return found;
  const int columns = query.record().count();
  while (query.next()) {
    Row row;
    for (int i = 0; i < columns; ++i) row.push_back(from_column(query.value(i)));
    found.push_back(std::move(row));
  }
  if (query.lastError().isValid()) return refuse(path_, query.lastError());
  return found;
}

problem::Result<int> Database::form() {
  const auto number = rows("PRAGMA user_version");
  if (!number) return std::unexpected(number.error());
  return static_cast<int>(std::get<std::int64_t>(number->at(0).at(0)));
}

problem::Result<void> Database::use_write_ahead_log() { return run("PRAGMA journal_mode = WAL"); }

void* Database::handle() {
  const QVariant raw = QSqlDatabase::database(words(connection_), false).driver()->handle();
  problem::ensure(raw.isValid() && qstrcmp(raw.typeName(), "sqlite3*") == 0, "the driver is SQLite's");
  return *static_cast<void* const*>(raw.constData());
}

problem::Result<Transaction> Transaction::begin(Database& database) {
  // IMMEDIATE takes the right to write now, so that it can't be lost to another writer half way.
  if (auto there = database.check_place(); !there) return std::unexpected(there.error());
  if (auto begun = database.run("BEGIN IMMEDIATE"); !begun) return std::unexpected(begun.error());
  return Transaction(database);
}

problem::Result<Transaction> Transaction::begin_reading(Database& database) {
  if (auto begun = database.run("BEGIN"); !begun) return std::unexpected(begun.error());
  return Transaction(database);
}

Transaction::~Transaction() {
  if (database_ != nullptr) static_cast<void>(database_->run("ROLLBACK"));
}

problem::Result<void> Transaction::commit() {
  auto done = database_->run("COMMIT");
  if (done) database_ = nullptr;
  return done;
}

}  // namespace store
