#include "ui/office/restoring.h"

#include <QCoreApplication>
#include <filesystem>

#include "files/files.h"
#include "store/backup.h"
#include "ui/book/book_words.h"

namespace ui {

namespace {

class RestoreWords {
  Q_DECLARE_TR_FUNCTIONS(RestoreWords)
};

std::string note_in(const std::string& folder) { return folder + "/restore-wanted"; }

}  // namespace

problem::Result<void> note_restore(const std::string& folder, const std::string& backup) {
  return files::write_file(note_in(folder), backup);
}

std::optional<QString> restore_noted(const std::string& folder, const std::string& now) {
  std::error_code error;
  const std::string note = note_in(folder);
  if (!std::filesystem::exists(note, error)) return std::nullopt;
  const auto backup = files::read_file(note);
  std::filesystem::remove(note, error);
  if (!backup) return told(backup.error());
  if (const auto done = store::restore(folder, *backup, now); !done)
    return RestoreWords::tr("The book was not put back: %1").arg(told(done.error()));
  return RestoreWords::tr("The book is back as the backup has it; what it was before is among the backups");
}

}  // namespace ui
