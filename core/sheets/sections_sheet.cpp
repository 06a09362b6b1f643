// Sections and elevations: how each thing is built up, to scale; walls with their faces unrolled.
#include <map>

#include "sheets/all_sheets.h"
#include "sheets/section_drawing.h"
#include "sheets/wall_page.h"

namespace sheets {

namespace {

constexpr double wide_mm = 123, high_mm = 66;  // of one of four on a page of the smaller paper

// Elements whose sections say the same stand under one drawing: kerbs of one kind, runs of one pipe.
struct Alike {
  plan::ElementId first;
  std::string name;  // of the first
  std::string what;
  std::vector<std::string> ids;
  Section section;
};

std::string key_of(const std::string& what, const Section& section) {
  std::string key = what;
  for (const Leader& leader : section.leaders) key += "|" + leader.label + "=" + leader.value;
  return key;
}

std::vector<Alike> all_alike(const Printed& printed) {
  std::vector<Alike> all;
  std::map<std::string, std::size_t> known;
  for (const plan::ElementPtr& element : printed.job().elements) {
    if (std::holds_alternative<plan::Wall>(element->kind)) continue;
    auto section = section_figure(*printed.results, element->id, {});
    if (!section) continue;
    const std::string what = kind_words(printed, element->kind);
    const auto [at, fresh] = known.try_emplace(key_of(what, *section), all.size());
    if (fresh) all.push_back({element->id, element->name, what, {}, std::move(*section)});
    all[at->second].ids.push_back(element->id);
  }
  return all;
}

Drawing drawing_of(const Printed& printed, const Alike& one) {
  Drawing drawing = section_drawing(printed, one.first, one.section, wide_mm, high_mm);
  std::string ids;
  for (const std::string& id : one.ids) ids += (ids.empty() ? "" : ", ") + id;
  constexpr std::size_t most = 32;  // letters that a title has room for
  const bool own = one.ids.size() == 1 && !one.name.empty() && ids.size() + one.name.size() <= most;
  const std::string& name = own ? one.name : one.what;
  drawing.title = ids + "  " + name + "  " + drawing.title;
  return drawing;
}

// Two beside each other.
void put_sections(const Printed& printed, Sheet& sheet) {
  const std::vector<Alike> all = all_alike(printed);
  for (std::size_t i = 0; i < all.size(); i += 2) {
    Beside two;
    two.left.emplace_back(drawing_of(printed, all[i]));
    if (i + 1 < all.size()) two.right.emplace_back(drawing_of(printed, all[i + 1]));
    sheet.passages.push_back({{std::make_shared<const Beside>(std::move(two)), Gap{2}}});
  }
}

}  // namespace

Sheet sections(const Printed& printed) {
  Sheet sheet;
  sheet.word = "sections";
  sheet.title = printed.say("Sections and elevations");
  sheet.about = {printed.say("How each thing is built up, to scale. Each cut is taken where it says most.")};
  sheet.landscape = true;
  put_sections(printed, sheet);
  for (const plan::ElementPtr& element : printed.job().elements)
    if (auto page = wall_page(printed, element->id)) sheet.passages.push_back(std::move(*page));
  if (sheet.passages.empty())
    sheet.passages.push_back(
        {{Paragraph{printed.say("Nothing that is drawn has a section yet: choose build-ups, units "
                                "and blocks first.")}}});
  return sheet;
}

}  // namespace sheets
