// Who may change the job book: one program at a time. A lock whose program has died is taken over.
#pragma once

#include <memory>
#include <string>

#include "problem/problem.h"

namespace store {

class Lock {
 public:
  // Waits up to `milliseconds` for the lock file; then refuses, naming the program, its process number and its machine.
  static problem::Result<Lock> take(const std::string& path, int milliseconds);

  Lock(Lock&&) noexcept;
  Lock& operator=(Lock&&) noexcept;
  ~Lock();  // lets go

 private:
  struct Held;
  explicit Lock(std::unique_ptr<Held> held);
  std::unique_ptr<Held> held_;
};

}  // namespace store
