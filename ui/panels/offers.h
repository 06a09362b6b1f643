// What can be chosen in a field: first what the job's own catalogue has, then what the book has besides.
#pragma once

#include <QString>
#include <memory>

#include "ui/desk/take_in.h"
#include "ui/panels/fields.h"

namespace ui {

// Gives the book's catalogue; empty, or giving null: there is no book.
using Source = std::function<std::shared_ptr<const catalogue::Catalogue>()>;

struct Offer {
  catalogue::Id id;
  QString name;
  QString price;  // "$4.95 a sq ft", "no price"; empty where nothing is bought (patterns, build-ups)
  bool from_book = false;
};

// Items of the kinds, build-ups of the uses, or patterns, as the field asks; by name within job and book.
std::vector<Offer> offers(const plan::Job& job, const catalogue::Catalogue* book, const Field& field);
Offer offer_of(const plan::Job& job, const Field& field,
               const catalogue::Id& id);  // its id as name where it is unknown

// The job with what is chosen in the field, taken in from the book where the job has not got it. A pattern that the
// job's units don't fit brings those of the book that do.
plan::Job chosen(const plan::Job& job, const catalogue::Catalogue* book, const Field& field, const catalogue::Id& id);

}  // namespace ui
