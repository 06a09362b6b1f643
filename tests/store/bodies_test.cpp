// Bodies stand once each under the hash of their bytes, come back as they were, and go with the last job that names
// them unless they are kept.
#include "store/bodies.h"

#include "store/folder.h"
#include "store/jobs.h"

namespace store {
namespace {

using JobPtr = std::shared_ptr<const plan::Job>;

std::int64_t bodies_in(const std::string& folder) {
  auto database = good(Database::open(folder + "/book.sqlite"));
  return std::get<std::int64_t>(good(database.rows("SELECT count(*) FROM bodies")).at(0).at(0));
}

TEST(Bodies, TheHashIsSha256) {
  // FIPS 180-4's examples: the empty text, "abc".
  EXPECT_EQ(sha256(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST(Bodies, BytesOfAnyKindComeBack) {
  const std::string folder = own_folder();
  std::string all;
  for (int byte = 0; byte < 256; ++byte) all += static_cast<char>(byte);
  const std::string large(5'000'000, '\x89');
  std::vector<std::string> hashes;
  {
    JobBook book = opened(folder);
    for (const std::string& bytes : {all, large, std::string(), std::string(1, '\0'), all})
      hashes.push_back(good(book.keep(bytes)));
  }
  EXPECT_EQ(hashes[0], hashes[4]);
  EXPECT_EQ(hashes[0], sha256(all));
  EXPECT_EQ(bodies_in(folder), 4);  // the one brought twice stands once
  JobBook again = opened(folder);
  EXPECT_TRUE(good(again.body(hashes[0])) == all);
  EXPECT_TRUE(good(again.body(hashes[1])) == large);
  EXPECT_EQ(good(again.body(hashes[2])), "");
  EXPECT_EQ(good(again.body(hashes[3])), std::string(1, '\0'));
}

TEST(Bodies, OneThatIsNotThereOrDamagedIsRefused) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const std::string hash = good(book.keep("a picture"));
  EXPECT_EQ(book.body(sha256("another")).error().code, "body-lost");
  ASSERT_TRUE(good(Database::open(folder + "/book.sqlite")).run("UPDATE bodies SET bytes = ?", {Bytes{"a picturf"}}));
  EXPECT_EQ(book.body(hash).error().code, "body-lost");
}

TEST(Bodies, TheCatalogueOfAJobStandsOnceForAllAndGoesWithTheLast) {
  const std::string folder = own_folder();
  JobBook book = opened(folder);
  const auto picture = good(book.keep("a picture"));
  const plan::Job job = demo_job("bakery-court");
  const auto a = good(book.add(job)), b = good(book.add(job));
  EXPECT_EQ(bodies_in(folder), 2);  // the picture and one catalogue
  plan::Job changed = job;
  auto catalogue = *job.catalogue;
  catalogue.note += " changed";
  changed.catalogue = std::make_shared<const catalogue::Catalogue>(catalogue);
  book.write(b, std::make_shared<const plan::Job>(changed));
  ASSERT_TRUE(book.settle());
  EXPECT_EQ(bodies_in(folder), 3);  // now each has its own
  book.write(b, std::make_shared<const plan::Job>(job));
  ASSERT_TRUE(book.settle());
  EXPECT_EQ(bodies_in(folder), 2);
  ASSERT_TRUE(book.remove(a));
  EXPECT_EQ(bodies_in(folder), 2);  // b still names it
  ASSERT_TRUE(book.remove(b));
  EXPECT_EQ(bodies_in(folder), 1);  // the picture is kept
  EXPECT_EQ(good(book.body(picture)), "a picture");
}

}  // namespace
}  // namespace store
