// The program that runs these tests: Qt finds its SQLite driver through an application, and the job book lies in a
// folder that is thrown away.
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QTemporaryDir>

int main(int count, char** words) {
  const QTemporaryDir folder;
  if (!folder.isValid()) return 1;
  qputenv("XDG_DATA_HOME", folder.path().toLocal8Bit());
  const QCoreApplication application(count, words);
  ::testing::InitGoogleTest(&count, words);
  return RUN_ALL_TESTS();
}
