#include "store/page_sums.h"

#include <sqlite3.h>

#include <cstddef>
#include <cstring>
#include <mutex>
#include <new>
#include <utility>
#include <vector>

namespace store {

namespace {

// Questions to a file that SQLite hands on as they are; its own numbers lie far below.
constexpr int ask_has_sums = 0x47724301, tell_expected = 0x47724302;
constexpr sqlite3_int64 lock_byte = 0x40000000;  // the page that holds it is never written

thread_local bool wrong_here = false;

// What is behind a file of ours: the disk's own file, and how its pages are summed.
struct Behind {
  std::vector<std::max_align_t> room;
  bool book = false;  // the database itself, no journal and no log
  bool summed = false;
  int page_bytes = 0;
  std::vector<unsigned char> page;  // to be written
  sqlite3_file* file() { return reinterpret_cast<sqlite3_file*>(room.data()); }
};

struct File {
  sqlite3_file head;
  Behind* behind;
};

Behind& behind(sqlite3_file* file) { return *reinterpret_cast<File*>(file)->behind; }
sqlite3_file* real(sqlite3_file* file) { return behind(file).file(); }
const sqlite3_io_methods& methods_of(sqlite3_file* file) { return *real(file)->pMethods; }

std::uint32_t word_at(const unsigned char* bytes) {
  return std::uint32_t{bytes[0]} | std::uint32_t{bytes[1]} << 8 | std::uint32_t{bytes[2]} << 16 |
         std::uint32_t{bytes[3]} << 24;
}

std::uint64_t sum_in(const unsigned char* page, int bytes) {
  const unsigned char* last = page + bytes - sum_bytes;
  return std::uint64_t{word_at(last)} | std::uint64_t{word_at(last + 4)} << 32;
}

// What the head of a database says: the size of its pages and what is reserved at their end.
void learn(Behind& of, const unsigned char* head) {
  if (std::memcmp(head, "SQLite format 3", 16) != 0) return;
  const int bytes = head[16] << 8 | head[17];
  of.page_bytes = bytes == 1 ? 65536 : bytes;
  of.summed = head[20] == sum_bytes;
}

bool whole_page(const Behind& of, int bytes, sqlite3_int64 from) {
  return bytes == of.page_bytes && bytes > sum_bytes && from % bytes == 0 && from / bytes != lock_byte / bytes;
}

std::uint64_t sum_of(const unsigned char* page, int bytes, sqlite3_int64 from) {
  return page_sum(page, bytes, from / bytes + 1);
}

// The one bit that would turn all looking off: a first page whose sum fits once its byte says that there are sums.
bool hides_its_sums(const unsigned char* page, int bytes) {
  std::vector<unsigned char> as_written(page, page + bytes);
  as_written[20] = sum_bytes;
  return sum_of(as_written.data(), bytes, 0) == sum_in(page, bytes);
}

int refused() {
  wrong_here = true;
  return SQLITE_IOERR_DATA;
}

int close(sqlite3_file* file) {
  const int told = methods_of(file).xClose(real(file));
  delete &behind(file);
  return told;
}

// A page of which the file has only the beginning, as one that was cut off.
bool cut_off(Behind& of, sqlite3_int64 from) {
  sqlite3_int64 there = 0;
  return of.file()->pMethods->xFileSize(of.file(), &there) == SQLITE_OK && there > from;
}

int read(sqlite3_file* file, void* to, int bytes, sqlite3_int64 from) {
  const int told = methods_of(file).xRead(real(file), to, bytes, from);
  Behind& of = behind(file);
  if (!of.book) return told;
  if (told == SQLITE_IOERR_SHORT_READ)
    return of.summed && whole_page(of, bytes, from) && cut_off(of, from) ? refused() : told;
  if (told != SQLITE_OK) return told;
  const auto* page = static_cast<const unsigned char*>(to);
  if (from == 0 && bytes >= 100) learn(of, page);
  if (!whole_page(of, bytes, from)) return told;
  if (of.summed) return sum_of(page, bytes, from) == sum_in(page, bytes) ? SQLITE_OK : refused();
  return from == 0 && hides_its_sums(page, bytes) ? refused() : SQLITE_OK;
}

int write(sqlite3_file* file, const void* what, int bytes, sqlite3_int64 from) {
  Behind& of = behind(file);
  const auto* page = static_cast<const unsigned char*>(what);
  if (of.book && from == 0 && bytes >= 100) learn(of, page);
  if (!of.book || !of.summed || !whole_page(of, bytes, from))
    return methods_of(file).xWrite(real(file), what, bytes, from);
  of.page.assign(page, page + bytes);
  const std::uint64_t sum = sum_of(page, bytes, from);
  unsigned char* const last = of.page.data() + bytes - sum_bytes;
  for (int i = 0; i < sum_bytes; ++i) last[i] = static_cast<unsigned char>(sum >> (8 * i));
  return methods_of(file).xWrite(real(file), of.page.data(), bytes, from);
}

int control(sqlite3_file* file, int what, void* with) {
  Behind& of = behind(file);
  if (what == ask_has_sums) {
    *static_cast<bool*>(with) = of.book && of.summed;
    return SQLITE_OK;
  }
  if (what == tell_expected) {
    of.summed = *static_cast<const bool*>(with);
    return SQLITE_OK;
  }
  return methods_of(file).xFileControl(real(file), what, with);
}

int truncate(sqlite3_file* f, sqlite3_int64 bytes) { return methods_of(f).xTruncate(real(f), bytes); }
int sync(sqlite3_file* f, int flags) { return methods_of(f).xSync(real(f), flags); }
int size(sqlite3_file* f, sqlite3_int64* into) { return methods_of(f).xFileSize(real(f), into); }
int lock(sqlite3_file* f, int level) { return methods_of(f).xLock(real(f), level); }
int unlock(sqlite3_file* f, int level) { return methods_of(f).xUnlock(real(f), level); }
int reserved(sqlite3_file* f, int* into) { return methods_of(f).xCheckReservedLock(real(f), into); }
int sector(sqlite3_file* f) { return methods_of(f).xSectorSize(real(f)); }
int device(sqlite3_file* f) { return methods_of(f).xDeviceCharacteristics(real(f)); }
int shm_map(sqlite3_file* f, int page, int bytes, int extend, void volatile** into) {
  return methods_of(f).xShmMap(real(f), page, bytes, extend, into);
}
int shm_lock(sqlite3_file* f, int from, int many, int flags) {
  return methods_of(f).xShmLock(real(f), from, many, flags);
}
void shm_barrier(sqlite3_file* f) { methods_of(f).xShmBarrier(real(f)); }
int shm_unmap(sqlite3_file* f, int drop) { return methods_of(f).xShmUnmap(real(f), drop); }

// Version 1 for a file that shares no memory; never 3, so that no page is mapped past our reading.
constexpr sqlite3_io_methods methods(int version) {
  return {version, close,  read,   write,   truncate, sync,        size,      lock,    unlock, reserved,
          control, sector, device, shm_map, shm_lock, shm_barrier, shm_unmap, nullptr, nullptr};
}
constexpr sqlite3_io_methods alone = methods(1), shared = methods(2);

// A file just made is one of ours; what its first page says is known before anything else is read from any other.
void begin(Behind& of, int flags) {
  of.book = (flags & SQLITE_OPEN_MAIN_DB) != 0;
  sqlite3_int64 bytes = 0;
  if (!of.book || of.file()->pMethods->xFileSize(of.file(), &bytes) != SQLITE_OK || bytes != 0) return;
  of.summed = true;
  of.page_bytes = 4096;
}

int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* got) {
  file->pMethods = nullptr;
  sqlite3_vfs* const disk = sqlite3_vfs_find(nullptr);
  auto* const made = new (std::nothrow) Behind;
  if (made == nullptr) return SQLITE_NOMEM;
  made->room.resize(static_cast<std::size_t>(disk->szOsFile) / sizeof(std::max_align_t) + 1);
  const int told = disk->xOpen(disk, name, made->file(), flags, got);
  if (told != SQLITE_OK) {
    if (made->file()->pMethods != nullptr) made->file()->pMethods->xClose(made->file());
    delete made;
    return told;
  }
  begin(*made, flags);
  reinterpret_cast<File*>(file)->behind = made;
  const sqlite3_io_methods& theirs = *made->file()->pMethods;
  file->pMethods = theirs.iVersion >= 2 && theirs.xShmMap != nullptr ? &shared : &alone;
  return SQLITE_OK;
}

int remove(sqlite3_vfs*, const char* name, int sync_folder) {
  sqlite3_vfs* const disk = sqlite3_vfs_find(nullptr);
  return disk->xDelete(disk, name, sync_folder);
}

}  // namespace

std::uint64_t page_sum(const unsigned char* page, int bytes, std::int64_t number) {
  auto a = static_cast<std::uint32_t>(number), b = static_cast<std::uint32_t>(number >> 32);
  for (int i = 0; i + sum_bytes < bytes; i += 8) {
    a += word_at(page + i) + b;
    b += word_at(page + i + 4) + a;
  }
  return std::uint64_t{a} | std::uint64_t{b} << 32;
}

void have_summing_disk() {
  static std::once_flag once;
  std::call_once(once, [] {
    static sqlite3_vfs ours = *sqlite3_vfs_find(nullptr);  // times, random numbers and names are the disk's own
    ours.szOsFile = sizeof(File);
    ours.zName = summing_disk;
    ours.pNext = nullptr;
    ours.xOpen = open;
    ours.xDelete = remove;
    sqlite3_vfs_register(&ours, 0);
  });
}

void reserve_sums(sqlite3* database) {
  int bytes = sum_bytes;
  sqlite3_file_control(database, "main", SQLITE_FCNTL_RESERVE_BYTES, &bytes);
}

bool has_sums(sqlite3* database) {
  bool summed = false;
  return sqlite3_file_control(database, "main", ask_has_sums, &summed) == SQLITE_OK && summed;
}

void expect_sums(sqlite3* database, bool expected) { sqlite3_file_control(database, "main", tell_expected, &expected); }

bool a_sum_was_wrong() { return std::exchange(wrong_here, false); }

}  // namespace store
