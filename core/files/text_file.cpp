#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>

#include "files/files.h"
#include "files/json_read.h"

namespace files {
namespace {

std::unexpected<problem::Problem> cannot(const char* doing, const std::string& path, int error) {
  return problem::fault(std::string("file-") + doing,
                        std::string("the file can't be ") + doing + ": " + std::strerror(error),
                        "look at its name, its folder and its rights", place_in(path));
}

// Closes what it holds on every way out.
struct Handle {
  int number = -1;
  explicit Handle(int opened) : number(opened) {}
  Handle(const Handle&) = delete;
  Handle& operator=(const Handle&) = delete;
  ~Handle() {
    if (number >= 0) ::close(number);
  }
};

int write_all(int number, std::string_view text) {
  while (!text.empty()) {
    const ssize_t done = ::write(number, text.data(), text.size());
    if (done < 0 && errno == EINTR) continue;
    if (done < 0) return errno;
    text.remove_prefix(static_cast<std::size_t>(done));
  }
  return 0;
}

// The rights that a new file gets, or those of the file that is replaced.
mode_t rights_of(const std::string& path) {
  struct stat found{};
  if (::stat(path.c_str(), &found) == 0) return found.st_mode & 07777;
  const mode_t mask = ::umask(0);
  ::umask(mask);
  return 0666 & ~mask;
}

problem::Result<void> replace(const std::string& path, std::string_view text) {
  std::string temporary = path + ".XXXXXX";
  const Handle file(::mkstemp(temporary.data()));
  if (file.number < 0) return cannot("written", path, errno);
  int error = write_all(file.number, text);
  if (error == 0 && (::fchmod(file.number, rights_of(path)) != 0 || ::fsync(file.number) != 0)) error = errno;
  if (error == 0 && ::rename(temporary.c_str(), path.c_str()) != 0) error = errno;
  if (error != 0) {
    ::unlink(temporary.c_str());
    return cannot("written", path, error);
  }
  // The rename itself is durable once the folder is; a file system that can't sync a folder has done its best.
  const std::filesystem::path folder = std::filesystem::path(path).parent_path();
  const Handle opened(::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (opened.number >= 0) ::fsync(opened.number);
  return {};
}

}  // namespace

problem::Result<std::string> read_file(const std::string& path) {
  const Handle file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (file.number < 0) return cannot("read", path, errno);
  std::string text;
  char block[65536];
  for (;;) {
    const ssize_t got = ::read(file.number, block, sizeof block);
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return cannot("read", path, errno);
    if (got == 0) return text;
    text.append(block, static_cast<std::size_t>(got));
    if (text.size() > most_bytes) {
      return problem::fault("file-large", "the file is larger than 64 MiB", "split it into several files",
                            place_in(path));
    }
  }
}

problem::Result<void> write_file(const std::string& path, std::string_view text) {
  std::error_code ignored;
  // A link is kept and its target replaced; what is no plain file (a pipe, a terminal) is written to as it stands.
  const std::filesystem::path target = std::filesystem::canonical(path, ignored);
  const std::string real = ignored ? path : target.string();
  const auto status = std::filesystem::status(real, ignored);
  if (!std::filesystem::exists(status) || std::filesystem::is_regular_file(status)) {
    auto written = replace(real, text);
    if (!written) written.error().place.file = path;
    return written;
  }
  const Handle file(::open(real.c_str(), O_WRONLY | O_CLOEXEC));
  if (file.number < 0) return cannot("written", path, errno);
  const int error = write_all(file.number, text);
  if (error != 0) return cannot("written", path, error);
  return {};
}

}  // namespace files
