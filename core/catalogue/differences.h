// What a job from elsewhere brings: the parts of its catalogue that the book lacks or has otherwise. Each can be left
// as the job has it, taken as the book has it, or put into the book; nothing here decides.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"

namespace catalogue {

enum class Part { item, pattern, build_up, limit, rate, supplier, junction };

// `missing`: the book has none of that id. `price`: an item that is the same but for its price. `other`: more differs.
struct PartDifference {
  enum class What { missing, price, other };
  Part part = Part::item;
  Id id;
  Words name;  // as the job calls it
  What what = What::missing;
  std::optional<Price> in_job;   // of an item
  std::optional<Price> in_book;  // of an item that the book has
  bool operator==(const PartDifference&) const = default;
};

// Items first, then patterns, build-ups, limits, rates, suppliers and junctions, each by id. Only what the job has is
// looked at: what the book has besides makes no difference.
std::vector<PartDifference> differences(const Catalogue& job, const Catalogue& book);

// What is done with one of them. Nothing becomes of `take_books` where the book has none.
enum class Choice { keep_jobs, take_books, put_into_book };
struct Chosen {
  Part part = Part::item;
  Id id;
  Choice choice = Choice::keep_jobs;
};

// Both catalogues after the choices; what is not chosen, or is chosen to be kept, stays as it is in either. What stands
// in neither is passed over. An item put into the book brings the pieces of its mixed pack that the book lacks, a
// build-up the items of its layers, so that the book never names what it does not have.
struct Settled {
  Catalogue job;
  Catalogue book;
};
Settled settled(const Catalogue& job, const Catalogue& book, const std::vector<Chosen>& choices);

}  // namespace catalogue
