#include "store/catalogue_tables.h"

#include "problem/ensure.h"
#include "store/columns.h"

namespace store {

namespace {

using catalogue::Catalogue;
using problem::Result;

// The row of a part: `first` (an owner's id, a place in a list), then what `columns` names.
template <class Columns>
Row row_of(Row first, Columns columns) {
  Out out{std::move(first)};
  columns(out);
  return std::move(out.values);
}

Row numbered(std::size_t place) { return {static_cast<std::int64_t>(place)}; }
Row numbered(const std::string& owner, std::size_t place) { return {owner, static_cast<std::int64_t>(place)}; }

// Each row of a query given to `take`.
template <class Take>
Result<void> each(Database& database, const char* query, Take take) {
  const auto rows = database.rows(query);
  if (!rows) return std::unexpected(rows.error());
  for (const Row& row : *rows) take(row);
  return {};
}

std::string text_at(const Row& row, std::size_t at) {
  std::string text;
  In(row, at)(text);
  return text;
}

Result<void> put_suppliers(Database& database, const Catalogue& catalogue) {
  for (const auto& [id, supplier] : catalogue.suppliers)
    if (auto done = database.run("INSERT INTO suppliers VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                                 row_of({}, [&](Out& out) { supplier_columns(out, supplier); }));
        !done)
      return done;
  return {};
}

Result<void> put_items(Database& database, const Catalogue& catalogue) {
  for (const auto& [id, item] : catalogue.items)
    if (auto done = put_item(database, *item); !done) return done;
  return {};
}

Result<void> put_patterns(Database& database, const Catalogue& catalogue) {
  for (const auto& [id, pattern] : catalogue.patterns) {
    auto done = database.run("INSERT INTO patterns VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                             row_of({}, [&](Out& out) { pattern_columns(out, pattern); }));
    for (std::size_t i = 0; done && i < pattern.pieces.size(); ++i)
      done = database.run("INSERT INTO pattern_pieces VALUES (?, ?, ?, ?, ?, ?, ?)",
                          row_of(numbered(id, i), [&](Out& out) { piece_columns(out, pattern.pieces[i]); }));
    if (!done) return done;
  }
  return {};
}

Result<void> put_build_ups(Database& database, const Catalogue& catalogue) {
  for (const auto& [id, build_up] : catalogue.build_ups) {
    auto done = database.run("INSERT INTO build_ups VALUES (?, ?, ?, ?, ?, ?, ?)",
                             row_of({}, [&](Out& out) { build_up_columns(out, build_up); }));
    for (std::size_t i = 0; done && i < build_up.layers.size(); ++i)
      done = database.run("INSERT INTO layers VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                          row_of(numbered(id, i), [&](Out& out) { layer_columns(out, build_up.layers[i]); }));
    if (!done) return done;
  }
  return {};
}

Result<void> put_limits(Database& database, const Catalogue& catalogue) {
  for (const auto& [id, limit] : catalogue.limits)
    if (auto done = database.run("INSERT INTO limits VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                                 row_of({}, [&](Out& out) { limit_columns(out, limit); }));
        !done)
      return done;
  return {};
}

Result<void> put_rates(Database& database, const Catalogue& catalogue) {
  for (const auto& [id, rate] : catalogue.rates)
    if (auto done = database.run("INSERT INTO rates VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                                 row_of({}, [&](Out& out) { rate_columns(out, rate); }));
        !done)
      return done;
  return {};
}

Result<void> put_junctions(Database& database, const Catalogue& catalogue) {
  Result<void> done;
  for (std::size_t i = 0; done && i < catalogue.junctions.size(); ++i)
    done = database.run("INSERT INTO junctions VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                        row_of(numbered(i), [&](Out& out) { junction_columns(out, catalogue.junctions[i]); }));
  return done;
}

Result<void> put_hold_points(Database& database, const Catalogue& catalogue) {
  Result<void> done;
  for (std::size_t i = 0; done && i < catalogue.hold_points.size(); ++i)
    done = database.run("INSERT INTO hold_points VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                        row_of(numbered(i), [&](Out& out) { hold_point_columns(out, catalogue.hold_points[i]); }));
  return done;
}

Result<void> put_cautions(Database& database, const Catalogue& catalogue) {
  Result<void> done;
  for (std::size_t i = 0; done && i < catalogue.cautions.size(); ++i)
    done = database.run("INSERT INTO cautions VALUES (?, ?, ?, ?, ?, ?)",
                        row_of(numbered(i), [&](Out& out) { caution_columns(out, catalogue.cautions[i]); }));
  return done;
}

Result<void> put_site_rules(Database& database, const Catalogue& catalogue) {
  Result<void> done;
  for (std::size_t i = 0; done && i < catalogue.site_rules.size(); ++i)
    done = database.run("INSERT INTO site_rules VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                        row_of(numbered(i), [&](Out& out) { site_rule_columns(out, catalogue.site_rules[i]); }));
  return done;
}

Result<void> put_note(Database& database, const Catalogue& catalogue) {
  return database.run("INSERT INTO catalogue_note VALUES (?)", {catalogue.note});
}

Result<void> take_items(Database& database, Catalogue& into) {
  std::map<catalogue::Id, catalogue::Item> items;
  auto done = each(database, "SELECT * FROM items", [&](const Row& row) {
    catalogue::Item item;
    In in(row);
    item_columns(in, item);
    items[item.id] = item;
  });
  if (done)
    done = each(database, "SELECT * FROM item_details",
                [&](const Row& row) { items[text_at(row, 0)].details[text_at(row, 1)] = text_at(row, 2); });
  if (done)
    done = each(database, "SELECT * FROM pack_contents ORDER BY pack, place", [&](const Row& row) {
      catalogue::PackContent content;
      In in(row, 2);
      in(content.item);
      in(content.pieces);
      items[text_at(row, 0)].contents.push_back(content);
    });
  if (!done) return done;
  for (const auto& [id, item] : items) {
    if (auto good = catalogue::check(item); !good)
      return std::unexpected(problem::in_file(good.error(), database.path()));
    into.items[id] = std::make_shared<const catalogue::Item>(item);
  }
  return {};
}

Result<void> take_patterns(Database& database, Catalogue& into) {
  auto done = each(database, "SELECT * FROM patterns", [&](const Row& row) {
    catalogue::Pattern pattern;
    In in(row);
    pattern_columns(in, pattern);
    into.patterns[pattern.id] = pattern;
  });
  if (done)
    done = each(database, "SELECT * FROM pattern_pieces ORDER BY pattern, place", [&](const Row& row) {
      catalogue::PatternPiece piece;
      In in(row, 2);
      piece_columns(in, piece);
      into.patterns[text_at(row, 0)].pieces.push_back(piece);
    });
  for (const auto& [id, pattern] : into.patterns)
    if (done) done = catalogue::check(pattern);
  return done;
}

Result<void> take_build_ups(Database& database, Catalogue& into) {
  auto done = each(database, "SELECT * FROM build_ups", [&](const Row& row) {
    catalogue::BuildUp build_up;
    In in(row);
    build_up_columns(in, build_up);
    into.build_ups[build_up.id] = build_up;
  });
  if (done)
    done = each(database, "SELECT * FROM layers ORDER BY build_up, place", [&](const Row& row) {
      catalogue::Layer layer;
      In in(row, 2);
      layer_columns(in, layer);
      into.build_ups[text_at(row, 0)].layers.push_back(layer);
    });
  return done;
}

Result<void> take_tables(Database& database, Catalogue& into) {
  auto done = each(database, "SELECT * FROM suppliers", [&](const Row& row) {
    catalogue::Supplier supplier;
    In in(row);
    supplier_columns(in, supplier);
    into.suppliers[supplier.id] = supplier;
  });
  if (done)
    done = each(database, "SELECT * FROM limits", [&](const Row& row) {
      catalogue::Limit limit;
      In in(row);
      limit_columns(in, limit);
      into.limits[limit.id] = limit;
    });
  if (done)
    done = each(database, "SELECT * FROM rates", [&](const Row& row) {
      catalogue::Rate rate;
      In in(row);
      rate_columns(in, rate);
      into.rates[rate.id] = rate;
    });
  return done;
}

Result<void> take_lists(Database& database, Catalogue& into) {
  auto done = each(database, "SELECT * FROM junctions ORDER BY place", [&](const Row& row) {
    In in(row, 1);
    junction_columns(in, into.junctions.emplace_back());
  });
  if (done)
    done = each(database, "SELECT * FROM hold_points ORDER BY place", [&](const Row& row) {
      In in(row, 1);
      hold_point_columns(in, into.hold_points.emplace_back());
    });
  if (done)
    done = each(database, "SELECT * FROM cautions ORDER BY place", [&](const Row& row) {
      In in(row, 1);
      caution_columns(in, into.cautions.emplace_back());
    });
  if (done)
    done = each(database, "SELECT * FROM site_rules ORDER BY place", [&](const Row& row) {
      In in(row, 1);
      site_rule_columns(in, into.site_rules.emplace_back());
    });
  if (done)
    done = each(database, "SELECT note FROM catalogue_note", [&](const Row& row) { into.note = text_at(row, 0); });
  return done;
}

}  // namespace

Result<void> put_item(Database& database, const catalogue::Item& item) {
  auto done = database.run("DELETE FROM items WHERE id = ?", {item.id});
  if (done)
    done = database.run(
        "INSERT INTO items VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        row_of({}, [&](Out& out) { item_columns(out, item); }));
  for (const auto& [key, value] : item.details)
    if (done) done = database.run("INSERT INTO item_details VALUES (?, ?, ?)", {item.id, key, value});
  for (std::size_t i = 0; done && i < item.contents.size(); ++i)
    done = database.run("INSERT INTO pack_contents VALUES (?, ?, ?, ?)", row_of(numbered(item.id, i), [&](Out& out) {
                          out(item.contents[i].item);
                          out(item.contents[i].pieces);
                        }));
  return done;
}

Result<void> put_catalogue(Database& database, const Catalogue& catalogue) {
  for (const auto& part : {put_suppliers, put_items, put_patterns, put_build_ups, put_limits, put_rates, put_junctions,
                           put_hold_points, put_cautions, put_site_rules, put_note})
    if (auto done = part(database, catalogue); !done) return done;
  return {};
}

Result<void> replace_kind(Database& database, const Catalogue& catalogue, std::size_t kind) {
  // In the order of catalogue::Entry. Parts of a row (pieces, layers) go with it.
  static constexpr struct {
    const char* empty;
    Result<void> (*put)(Database&, const Catalogue&);
  } kinds[] = {{"DELETE FROM items", put_items},         {"DELETE FROM patterns", put_patterns},
               {"DELETE FROM build_ups", put_build_ups}, {"DELETE FROM limits", put_limits},
               {"DELETE FROM rates", put_rates},         {"DELETE FROM suppliers", put_suppliers},
               {"DELETE FROM junctions", put_junctions}, {"DELETE FROM hold_points", put_hold_points},
               {"DELETE FROM cautions", put_cautions},   {"DELETE FROM site_rules", put_site_rules}};
  problem::ensure(kind < std::size(kinds), "a kind of entry has its table");
  if (auto done = database.run(kinds[kind].empty); !done) return done;
  return kinds[kind].put(database, catalogue);
}

Result<Catalogue> take_catalogue(Database& database) {
  Catalogue catalogue;
  for (const auto& part : {take_tables, take_items, take_patterns, take_build_ups, take_lists})
    if (auto done = part(database, catalogue); !done) return std::unexpected(done.error());
  return catalogue;
}

}  // namespace store
