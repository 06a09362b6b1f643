// The program that runs these tests: Qt finds its SQLite driver through an application, and the job book lies in a
// folder that is thrown away.
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QTemporaryDir>
#include <cstring>
#include <string>
#include <utility>

#include "store/edit_until_killed.h"
#include "store/enter_until_killed.h"
#include "store/read_all.h"
#include "store/save_until_killed.h"
#include "store/small_disk.h"

int main(int count, char** words) {
  if (count == 3 && std::strcmp(words[1], store::edit_until_killed_word) == 0) {
    const QCoreApplication application(count, words);
    return store::edit_until_killed(words[2]);
  }
  if (count == 3 && std::strcmp(words[1], store::save_until_killed_word) == 0) {
    const QCoreApplication application(count, words);
    return store::save_until_killed(words[2]);
  }
  using Job = int (*)(const std::string&);
  const std::pair<const char*, Job> others[] = {{store::enter_until_killed_word, store::enter_until_killed},
                                                {store::read_all_word, store::read_all},
                                                {store::read_job_word, store::read_job_file},
                                                {store::open_word, store::open_and_close},
                                                {store::small_disk_word, store::on_a_small_disk}};
  for (const auto& [word, job] : others) {
    if (count != 3 || std::strcmp(words[1], word) != 0) continue;
    const QCoreApplication application(count, words);
    return job(words[2]);
  }
  const QTemporaryDir folder;
  if (!folder.isValid()) return 1;
  qputenv("XDG_DATA_HOME", folder.path().toLocal8Bit());
  const QCoreApplication application(count, words);
  ::testing::InitGoogleTest(&count, words);
  return RUN_ALL_TESTS();
}
