// How the catalogue is parted for whoever looks through it: one row a group, with what belongs to it. Every kind of
// entry, and every kind of item, is in one group.
#pragma once

#include <QString>
#include <vector>

#include "catalogue/change.h"

namespace ui {

struct CatalogueGroup {
  const char* id;
  const char* heading;                  // over the first of several
  const char* name;                     // in English; `group_name` says it
  std::size_t kind;                     // of catalogue::Entry
  std::vector<std::string> item_kinds;  // of items
};
const std::vector<CatalogueGroup>& catalogue_groups();
QString group_name(const CatalogueGroup& group);
QString group_heading(const CatalogueGroup& group);

bool belongs(const CatalogueGroup& group, const catalogue::Entry& entry);
std::size_t group_of(const catalogue::Entry& entry);  // its place among the groups

// A new entry of the group: the least that the catalogue takes. Of a hold point or a caution the name is what it says.
catalogue::Entry fresh_entry(const CatalogueGroup& group, const catalogue::Id& id, const std::string& name);

// What people call it: its name in the language in use, or what it says.
QString name_of(const catalogue::Entry& entry);

// An id out of a name: small letters, digits and dashes, and none that the stock has. "Stone, grey" is "stone-grey".
catalogue::Id free_id(const catalogue::Stock& stock, std::size_t kind, const QString& name);

}  // namespace ui
