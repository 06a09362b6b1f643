#include "store/faulty_disk.h"

#include <sqlite3.h>

#include <atomic>
#include <cstring>
#include <mutex>
#include <new>

namespace store {

namespace {

std::atomic<int> count{0}, at{0};
std::atomic<Fails> how{Fails::never};

bool fails_now() {
  const int mine = ++count;
  const Fails now = how;
  if (now == Fails::never) return false;
  return now == Fails::once ? mine == at : mine >= at;
}

// A file of ours: SQLite's head, and the real one behind it in the same block.
struct File {
  sqlite3_file head;
  sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

sqlite3_file* real(sqlite3_file* file) { return reinterpret_cast<File*>(file)->real(); }
sqlite3_vfs* disk() {
  static sqlite3_vfs* const found = sqlite3_vfs_find("unix");
  return found;
}

int close(sqlite3_file* f) { return real(f)->pMethods->xClose(real(f)); }
int read(sqlite3_file* f, void* to, int bytes, sqlite3_int64 from) {
  return real(f)->pMethods->xRead(real(f), to, bytes, from);
}
int write(sqlite3_file* f, const void* from, int bytes, sqlite3_int64 to) {
  return fails_now() ? SQLITE_FULL : real(f)->pMethods->xWrite(real(f), from, bytes, to);
}
int truncate(sqlite3_file* f, sqlite3_int64 size) {
  return fails_now() ? SQLITE_IOERR_TRUNCATE : real(f)->pMethods->xTruncate(real(f), size);
}
int sync(sqlite3_file* f, int flags) {
  return fails_now() ? SQLITE_IOERR_FSYNC : real(f)->pMethods->xSync(real(f), flags);
}
int size(sqlite3_file* f, sqlite3_int64* into) { return real(f)->pMethods->xFileSize(real(f), into); }
int lock(sqlite3_file* f, int level) { return real(f)->pMethods->xLock(real(f), level); }
int unlock(sqlite3_file* f, int level) { return real(f)->pMethods->xUnlock(real(f), level); }
int reserved(sqlite3_file* f, int* into) { return real(f)->pMethods->xCheckReservedLock(real(f), into); }
int control(sqlite3_file* f, int what, void* with) { return real(f)->pMethods->xFileControl(real(f), what, with); }
int sector(sqlite3_file* f) { return real(f)->pMethods->xSectorSize(real(f)); }
int device(sqlite3_file* f) { return real(f)->pMethods->xDeviceCharacteristics(real(f)); }
int shm_map(sqlite3_file* f, int page, int bytes, int extend, void volatile** into) {
  return real(f)->pMethods->xShmMap(real(f), page, bytes, extend, into);
}
int shm_lock(sqlite3_file* f, int from, int many, int flags) {
  return real(f)->pMethods->xShmLock(real(f), from, many, flags);
}
void shm_barrier(sqlite3_file* f) { real(f)->pMethods->xShmBarrier(real(f)); }
int shm_unmap(sqlite3_file* f, int drop) { return real(f)->pMethods->xShmUnmap(real(f), drop); }

const sqlite3_io_methods methods{2,        close,       read,      write,   truncate, sync,   size,
                                 lock,     unlock,      reserved,  control, sector,   device, shm_map,
                                 shm_lock, shm_barrier, shm_unmap, nullptr, nullptr};

int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* got) {
  file->pMethods = nullptr;
  if (fails_now()) return SQLITE_CANTOPEN;
  const int told = disk()->xOpen(disk(), name, real(file), flags, got);
  if (told == SQLITE_OK) file->pMethods = &methods;
  return told;
}

int remove(sqlite3_vfs*, const char* name, int sync_folder) {
  return fails_now() ? SQLITE_IOERR_DELETE : disk()->xDelete(disk(), name, sync_folder);
}

void put_in_between() {
  static std::once_flag once;
  std::call_once(once, [] {
    static sqlite3_vfs ours = *disk();  // times, random numbers and names are the disk's own
    ours.szOsFile = static_cast<int>(sizeof(File)) + disk()->szOsFile;
    ours.zName = "faulty";
    ours.pNext = nullptr;
    ours.xOpen = open;
    ours.xDelete = remove;
    sqlite3_vfs_register(&ours, 1);
  });
}

}  // namespace

void let_disk_fail(Fails what, int n) {
  put_in_between();
  how = Fails::never;
  count = 0;
  at = n;
  how = what;
}

bool disk_failed() { return how != Fails::never && count >= at; }

}  // namespace store
