#include <cstdio>

#include "commands.h"
#include "files/files.h"
#include "store/catalogue_book.h"

namespace app {

int catalogue_list() {
  auto book = store::CatalogueBook::open();
  if (!book) return refuse(book.error());
  const auto all = book->read();
  if (!all) return refuse(all.error());
  std::string text;
  for (const auto& [id, item] : all->items) {
    char row[320];
    const std::string price = item->price ? units::write_money(item->price->amount, 2) + " per " + item->price->unit +
                                                (item->price->by_others ? " (by others)" : "")
                                          : "no price";
    std::snprintf(row, sizeof row, "%-24s %-16s %-44s %s\n", id.c_str(), item->kind.c_str(), item->name.en.c_str(),
                  price.c_str());
    text += row;
  }
  if (!all->note.empty()) text += all->note + "\n";
  return deliver(text, "");
}

int catalogue_import(const std::string& file) {
  const auto text = files::read_file(file);
  if (!text) return refuse(text.error());
  const auto items = files::read_catalogue_csv(*text, file);
  if (!items) return refuse(items.error());
  auto book = store::CatalogueBook::open();
  if (!book) return refuse(book.error());
  const auto kept = book->replace_items(*items);
  if (!kept) return refuse(kept.error());
  std::fprintf(stderr, "groundcourse: %zu items taken in\n", items->size());
  return 0;
}

int catalogue_export(const std::string& file) {
  auto book = store::CatalogueBook::open();
  if (!book) return refuse(book.error());
  const auto all = book->read();
  if (!all) return refuse(all.error());
  return deliver(files::write_catalogue_csv(*all), file);
}

}  // namespace app
