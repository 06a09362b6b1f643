// The list of jobs: searched and sorted as a plain loop does it, and what the office says of a job.
#include "store/job_rows.h"

#include "files/random_job.h"
#include "store/folder.h"
#include "store/jobs.h"

namespace store {
namespace {

TEST(JobRows, EveryStateHasItsWord) {
  for (const State state : all_states) EXPECT_EQ(state_of(word(state)), state);
  EXPECT_EQ(state_of("paid"), std::nullopt);
}

TEST(JobRows, CapitalsAndAccentsMakeNoDifference) {
  EXPECT_EQ(plain("PEÑA Ágüero"), "pena aguero");
  EXPECT_EQ(plain("Pen\xCC\x83"
                  "a"),
            "pena");  // n and a tilde of its own
  EXPECT_EQ(plain("Jardín 12 ½\""), plain("JARDIN 12 ½\""));
}

JobRow row(std::int64_t id, std::string number, std::string name, std::string customer, std::string place) {
  JobRow made;
  made.id = id;
  made.number = std::move(number);
  made.name = std::move(name);
  made.customer = std::move(customer);
  made.place = std::move(place);
  return made;
}

std::vector<std::int64_t> ids(const std::vector<JobRow>& rows) {
  std::vector<std::int64_t> list;
  for (const JobRow& one : rows) list.push_back(one.id);
  return list;
}

using Ids = std::vector<std::int64_t>;

TEST(JobRows, EveryWordStandsSomewhere) {
  const std::vector<JobRow> rows{row(1, "2026-9", "Terraza", "Peña", "Calle Olmo 4"),
                                 row(2, "2026-10", "Pool terrace", "Pena & Sons", "12 Elm Row"),
                                 row(3, "2025-2", "Walk", "Hill", "Elm Row 9")};
  EXPECT_EQ(ids(arranged(rows, {.text = "pena"})), (Ids{1, 2}));
  EXPECT_EQ(ids(arranged(rows, {.text = "PEÑA terra"})), (Ids{1, 2}));
  EXPECT_EQ(ids(arranged(rows, {.text = "elm 2026"})), (Ids{2}));
  EXPECT_EQ(ids(arranged(rows, {.text = "  "})), (Ids{1, 2, 3}));
  EXPECT_EQ(ids(arranged(rows, {.text = "elmrow"})), Ids{});
  EXPECT_EQ(ids(arranged(rows, {.by = Column::number})), (Ids{3, 1, 2}));  // 9 before 10
  EXPECT_EQ(ids(arranged(rows, {.by = Column::number, .falling = true})), (Ids{2, 1, 3}));
  EXPECT_EQ(ids(arranged(rows, {.by = Column::customer})), (Ids{3, 1, 2}));  // hill, pena, pena & sons
}

TEST(JobRows, JobsWithoutATotalComeLastEitherWay) {
  std::vector<JobRow> rows(4);
  for (std::size_t i = 0; i < 4; ++i) rows[i].id = static_cast<std::int64_t>(i);
  rows[1].total = units::Money::of_coins(500);
  rows[3].total = units::Money::of_coins(-20);
  EXPECT_EQ(ids(arranged(rows, {.by = Column::total})), (Ids{3, 1, 0, 2}));
  EXPECT_EQ(ids(arranged(rows, {.by = Column::total, .falling = true})), (Ids{1, 3, 0, 2}));
}

// The plain way: each word looked for in each part of each row, then rows put in one by one behind all that do not come
// after them. Texts are of these letters alone, so folding them is a table.
constexpr const char* letters[][2] = {{"a", "a"}, {"B", "b"}, {"ñ", "n"}, {"É", "e"}, {"c", "c"}};

struct Drawn {
  std::string text, folded;
};

Drawn drawn_text() {
  Drawn made;
  for (int left = random_job::below(4); left > 0; --left) {
    const auto& letter = letters[random_job::below(5)];
    made.text += letter[0];
    made.folded += letter[1];
  }
  return made;
}

struct Both {
  JobRow row;
  std::string parts[4];  // folded: number, name, customer, place
};

Both drawn_row(std::int64_t id) {
  Both made;
  std::string* into[] = {&made.row.number, &made.row.name, &made.row.customer, &made.row.place};
  for (int i = 0; i < 4; ++i) {
    const Drawn text = drawn_text();
    *into[i] = text.text;
    made.parts[i] = text.folded;
  }
  made.row.id = id;
  made.row.archived = random_job::below(3) == 0;
  made.row.state = all_states[random_job::below(5)];
  made.row.versions = random_job::below(4);
  made.row.changed = "2026-11-2" + std::to_string(random_job::below(9)) + "T00:00:00Z";
  if (made.row.versions > 0) made.row.total = units::Money::of_coins(random_job::below(5) - 2);
  return made;
}

// Below 0: a before b, rising.
int by_column(const Both& a, const Both& b, Column by) {
  const auto way = [](const auto& left, const auto& right) { return left < right ? -1 : right < left ? 1 : 0; };
  switch (by) {
    case Column::number: return way(a.parts[0], b.parts[0]);
    case Column::name: return way(a.parts[1], b.parts[1]);
    case Column::customer: return way(a.parts[2], b.parts[2]);
    case Column::place: return way(a.parts[3], b.parts[3]);
    case Column::state: return way(static_cast<int>(a.row.state), static_cast<int>(b.row.state));
    case Column::changed: return way(a.row.changed, b.row.changed);
    case Column::versions: return way(a.row.versions, b.row.versions);
    case Column::total: return way(*a.row.total, *b.row.total);
  }
  return 0;
}

bool after(const Both& a, const Both& b, const Wanted& wanted) {
  if (!wanted.by) return false;
  if (*wanted.by == Column::total && !(a.row.total && b.row.total)) return !a.row.total && b.row.total;
  const int by = by_column(a, b, *wanted.by);
  return wanted.falling ? by < 0 : by > 0;
}

std::vector<std::int64_t> plainly(const std::vector<Both>& all, const Wanted& wanted, const std::vector<Drawn>& words) {
  std::vector<const Both*> list;
  for (const Both& one : all) {
    if (wanted.archived == Archived::left_out && one.row.archived) continue;
    if (wanted.archived == Archived::only && !one.row.archived) continue;
    bool all_there = true;
    for (const Drawn& word : words) {
      bool there = false;
      for (const std::string& part : one.parts) there = there || part.find(word.folded) != std::string::npos;
      all_there = all_there && there;
    }
    if (!all_there) continue;
    auto at = list.begin();
    while (at != list.end() && !after(**at, one, wanted)) ++at;
    list.insert(at, &one);
  }
  std::vector<std::int64_t> found;
  for (const Both* one : list) found.push_back(one->row.id);
  return found;
}

TEST(JobRows, AsAPlainLoopFindsAndSortsThem) {
  EXPECT_TRUE(rc::check("found and sorted alike", [] {
    std::vector<Both> all;
    std::vector<JobRow> rows;
    for (std::int64_t id = random_job::below(12); id > 0; --id) {
      all.push_back(drawn_row(id));
      rows.push_back(all.back().row);
    }
    Wanted wanted;
    std::vector<Drawn> words;
    for (int left = random_job::below(3); left > 0; --left) {
      words.push_back(drawn_text());
      wanted.text += " " + words.back().text;
    }
    if (random_job::below(5) > 0) wanted.by = static_cast<Column>(random_job::below(8));
    wanted.falling = random_job::below(2) == 1;
    wanted.archived = static_cast<Archived>(random_job::below(3));
    RC_ASSERT(ids(arranged(rows, wanted)) == plainly(all, wanted, words));
  }));
}

TEST(JobRows, StateAndArchiveStandInTheBook) {
  const std::string folder = own_folder();
  std::int64_t a = 0, b = 0;
  {
    JobBook book = opened(folder);
    plan::Job job = demo_job("bakery-court");
    job.heading.number = "26-014";
    a = good(book.add(job));
    b = good(book.add(demo_job("pool-terrace-a")));
    EXPECT_EQ(good(book.jobs()).at(1).state, State::asked);
    well(book.set_state(a, State::building));
    well(book.set_archived(b, true));
    EXPECT_EQ(book.set_state(b + 1, State::quoted).error().code, "job-none");
  }
  JobBook book = opened(folder);
  const auto shown = good(book.jobs(Wanted{}));
  ASSERT_EQ(shown.size(), 1u);
  EXPECT_EQ(shown[0].id, a);
  EXPECT_EQ(shown[0].state, State::building);
  EXPECT_EQ(shown[0].number, "26-014");
  EXPECT_EQ(shown[0].changed.size(), std::string("2026-11-28T21:47:26Z").size());
  EXPECT_EQ(ids(good(book.jobs({.archived = Archived::only}))), Ids{b});
  well(book.set_archived(b, false));
  EXPECT_EQ(good(book.jobs(Wanted{})).size(), 2u);
  EXPECT_TRUE(plan::same(good(book.read(b)), demo_job("pool-terrace-a")));
}

TEST(JobRows, ACopyIsTheJobUnderAnotherName) {
  JobBook book = opened(own_folder());
  EXPECT_TRUE(rc::check("copied", [&] {
    plan::Job job = random_job::job();
    const auto id = good(book.add(job));
    const auto copied = good(book.copy(id, "Copy of it"));
    RC_ASSERT(copied != id);
    job.heading.name = "Copy of it";
    job.heading.number = "";
    RC_ASSERT(plan::same(good(book.read(copied)), job));
    well(book.remove(id));
    RC_ASSERT(plan::same(good(book.read(copied)), job));
    well(book.remove(copied));
  }));
  EXPECT_EQ(book.copy(99'999, "").error().code, "job-none");
}

// A book of the form before this one: its jobs stand in the list with the number that their head has.
TEST(JobRows, ABookOfAnEarlierFormGetsItsNumbers) {
  const std::string folder = own_folder();
  plan::Job job = demo_job("bakery-court");
  job.heading.number = "7'\"\\ñ";
  {
    JobBook book = opened(folder);
    good(book.add(job));
  }
  back_to_form(folder + "/book.sqlite", 3);
  JobBook book = opened(folder);
  const auto rows = good(book.jobs());
  ASSERT_EQ(rows.size(), 1u);
  EXPECT_EQ(rows[0].number, "7'\"\\ñ");
  EXPECT_EQ(rows[0].state, State::asked);
  EXPECT_TRUE(plan::same(good(book.read(rows[0].id)), job));
}

}  // namespace
}  // namespace store
