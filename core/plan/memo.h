// Remembers what a step made by the values and pointers that it read, and drops what the last pass did not ask for.
#pragma once

#include <map>
#include <memory>

namespace plan {

// Key must be ordered and hold whatever keeps its meaning alive (a shared_ptr, not a plain pointer). One pass over a
// job is `begin` then any number of `get`; entries not asked for between two `begin`s are dropped at the second.
template <class Key, class Value>
class Memo {
 public:
  void begin() {
    std::erase_if(kept_, [this](const auto& entry) { return entry.second.pass != pass_; });
    ++pass_;
  }

  // The value made for this key before, or make()'s, which is kept. A new value equal to `old` hands back the old
  // pointer, so that nothing after it runs.
  template <class Make>
  std::shared_ptr<const Value> get(const Key& key, Make make) {
    const auto found = kept_.find(key);
    if (found != kept_.end()) {
      found->second.pass = pass_;
      return found->second.value;
    }
    auto made = std::make_shared<const Value>(make());
    kept_.emplace(key, Entry{made, pass_});
    return made;
  }

  std::size_t size() const { return kept_.size(); }

 private:
  struct Entry {
    std::shared_ptr<const Value> value;
    unsigned long pass = 0;
  };
  std::map<Key, Entry> kept_;
  unsigned long pass_ = 0;
};

}  // namespace plan
