#include "store/job_rows.h"

#include <QtCore/QStringList>
#include <algorithm>
#include <iterator>

namespace store {

namespace {

constexpr const char* state_words[] = {"asked", "quoted", "agreed", "building", "closed"};

bool digit(char letter) { return letter >= '0' && letter <= '9'; }

// The digits that begin at `at`, without leading noughts, and `at` behind them.
std::string_view digits(std::string_view text, std::size_t& at) {
  const std::size_t from = at;
  while (at < text.size() && digit(text[at])) ++at;
  std::string_view found = text.substr(from, at - from);
  while (found.size() > 1 && found.front() == '0') found.remove_prefix(1);
  return found;
}

// Below 0: a before b. Digits count as numbers of any size.
int compared(std::string_view a, std::string_view b) {
  std::size_t i = 0, j = 0;
  while (i < a.size() && j < b.size()) {
    if (digit(a[i]) && digit(b[j])) {
      const std::string_view left = digits(a, i), right = digits(b, j);
      if (left.size() != right.size()) return left.size() < right.size() ? -1 : 1;
      if (const int by = left.compare(right); by != 0) return by;
      continue;
    }
    if (a[i] != b[j]) return static_cast<unsigned char>(a[i]) < static_cast<unsigned char>(b[j]) ? -1 : 1;
    ++i;
    ++j;
  }
  return (i < a.size() ? 1 : 0) - (j < b.size() ? 1 : 0);
}

std::vector<std::string> words_of(const std::string& text) {
  std::vector<std::string> words;
  const QString whole = QString::fromStdString(plain(text)).simplified();
  for (const QString& one : whole.split(QLatin1Char(' '), Qt::SkipEmptyParts)) words.push_back(one.toStdString());
  return words;
}

// A row with what it is compared by, made once for each.
struct Keyed {
  const JobRow* row;
  std::string text;
  std::int64_t number = 0;
};

Keyed keyed(const JobRow& row, Column by) {
  switch (by) {
    case Column::number: return {&row, plain(row.number)};
    case Column::name: return {&row, plain(row.name)};
    case Column::customer: return {&row, plain(row.customer)};
    case Column::place: return {&row, plain(row.place)};
    case Column::changed: return {&row, row.changed};
    case Column::state: return {&row, {}, static_cast<std::int64_t>(row.state)};
    case Column::versions: return {&row, {}, row.versions};
    case Column::total: return {&row, {}, row.total.value_or(units::Money()).coins()};
  }
  return {&row, {}};
}

void sort(std::vector<Keyed>& rows, const Wanted& wanted) {
  std::stable_sort(rows.begin(), rows.end(), [&](const Keyed& a, const Keyed& b) {
    if (wanted.by == Column::total && a.row->total.has_value() != b.row->total.has_value())
      return a.row->total.has_value();
    const int words = compared(a.text, b.text);
    const int by = words != 0 ? words : a.number < b.number ? -1 : a.number > b.number ? 1 : 0;
    return wanted.falling ? by > 0 : by < 0;
  });
}

bool fits(const JobRow& row, Archived archived) {
  return archived == Archived::shown || row.archived == (archived == Archived::only);
}

bool fits(const JobRow& row, const std::vector<std::string>& words) {
  if (words.empty()) return true;
  const std::string parts[] = {plain(row.number), plain(row.name), plain(row.customer), plain(row.place)};
  return std::all_of(words.begin(), words.end(), [&](const std::string& one) {
    return std::any_of(std::begin(parts), std::end(parts), [&](const auto& part) { return part.contains(one); });
  });
}

}  // namespace

std::string word(State state) { return state_words[static_cast<std::size_t>(state)]; }

std::optional<State> state_of(std::string_view its_word) {
  for (const State state : all_states)
    if (its_word == state_words[static_cast<std::size_t>(state)]) return state;
  return std::nullopt;
}

std::string plain(const std::string& text) {
  const bool ascii =
      std::all_of(text.begin(), text.end(), [](char letter) { return static_cast<unsigned char>(letter) < 0x80; });
  if (ascii) {
    std::string small = text;
    for (char& letter : small)
      if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return small;
  }
  QString apart = QString::fromStdString(text).normalized(QString::NormalizationForm_KD).toCaseFolded();
  erase_if(apart, [](QChar letter) { return letter.category() == QChar::Mark_NonSpacing; });
  return apart.toStdString();
}

std::vector<JobRow> arranged(const std::vector<JobRow>& rows, const Wanted& wanted) {
  const std::vector<std::string> words = words_of(wanted.text);
  std::vector<Keyed> found;
  for (const JobRow& row : rows)
    if (fits(row, wanted.archived) && fits(row, words))
      found.push_back(wanted.by ? keyed(row, *wanted.by) : Keyed{&row, {}});
  if (wanted.by) sort(found, wanted);
  std::vector<JobRow> list;
  list.reserve(found.size());
  for (const Keyed& one : found) list.push_back(*one.row);
  return list;
}

}  // namespace store
