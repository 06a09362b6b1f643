// One program at a time may change the book, and the other is told who has it.
#include "store/lock.h"

#include <QtCore/QCoreApplication>

#include "store/folder.h"

namespace store {
namespace {

TEST(Lock, NamesWhoHoldsIt) {
  const std::string path = own_folder() + "/book.lock";
  {
    const auto held = Lock::take(path, 0);
    ASSERT_TRUE(held);
    const auto refused = Lock::take(path, 0);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, "book-held");
    const std::string process = "process " + std::to_string(QCoreApplication::applicationPid());
    EXPECT_NE(refused.error().text.find(process), std::string::npos) << refused.error().text;
    EXPECT_NE(refused.error().text.find("store_tests"), std::string::npos) << refused.error().text;
  }
  EXPECT_TRUE(Lock::take(path, 0));  // let go
}

TEST(Lock, AFolderThatIsNotThereIsAProblem) {
  const auto refused = Lock::take(own_folder() + "/none/book.lock", 0);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "book-lock");
}

}  // namespace
}  // namespace store
