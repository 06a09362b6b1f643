#include "store/lock.h"

#include <QtCore/QLockFile>
#include <QtCore/QString>

namespace store {

struct Lock::Held {
  explicit Held(const QString& path) : file(path) {}
  QLockFile file;
};

Lock::Lock(std::unique_ptr<Held> held) : held_(std::move(held)) {}
Lock::Lock(Lock&&) noexcept = default;
Lock& Lock::operator=(Lock&&) noexcept = default;
Lock::~Lock() = default;

problem::Result<Lock> Lock::take(const std::string& path, int milliseconds) {
  auto held = std::make_unique<Held>(QString::fromStdString(path));
  // A window holds the book for days: age says nothing, only whether its process lives.
  held->file.setStaleLockTime(0);
  if (held->file.tryLock(milliseconds)) return Lock(std::move(held));
  const problem::Place place{{}, path, 0, 0, {}};
  if (held->file.error() != QLockFile::LockFailedError)
    return problem::fault("book-lock", "the lock file can't be made", "look at the rights of its folder", place);
  qint64 process = 0;
  QString machine, program;
  if (!held->file.getLockInfo(&process, &machine, &program))
    return problem::fault("book-held", "another program holds the job book", "close it, or try again", place);
  return problem::fault("book-held",
                        "the job book is held by " + program.toStdString() + ", process " + std::to_string(process) +
                            " on " + machine.toStdString(),
                        "close it there, or try again", place);
}

}  // namespace store
