#include "sheets/section_drawing.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

#include "sheets/parts.h"
#include "sheets/places.h"
#include "sheets/source.h"

namespace sheets {

namespace {

std::string with_primes(const std::string& text) {
  std::string made;
  for (const char letter : text) {
    if (letter == '\'')
      made += "′";
    else if (letter == '"')
      made += "″";
    else
      made += letter;
  }
  return made;
}

// As the section shortens the catalogue's names.
std::string in_short(const std::string& name) { return name.substr(0, std::min(name.find(" ("), name.find(", "))); }

std::string label_words(const Printed& printed, const std::string& label) {
  static const std::string layer = "Layer on course ";
  if (label.starts_with(layer)) return filled(printed, "Layer on course %1", {label.substr(layer.size())});
  for (const auto& [id, item] : printed.job().catalogue->items)
    if (in_short(item->name.en) == label) return in_short(name_in(printed, item->name));
  return printed.say(label);
}

// Values are lengths and numbers, but for a few that say something round them.
std::string value_words(const Printed& printed, const std::string& value) {
  static const std::string courses = " courses", riser = "riser ", tread = ", tread ", by = " x ";
  if (value.ends_with(courses)) return filled(printed, "%1 courses", {value.substr(0, value.size() - courses.size())});
  const std::size_t at = value.find(tread);
  if (value.starts_with(riser) && at != std::string::npos)
    return filled(
        printed, "riser %1, tread %2",
        {with_primes(value.substr(riser.size(), at - riser.size())), with_primes(value.substr(at + tread.size()))});
  if (const std::size_t times = value.find(by); times != std::string::npos)
    return with_primes(value.substr(0, times)) + " × " + with_primes(value.substr(times + by.size()));
  const bool number = std::ranges::any_of(value, [](unsigned char letter) { return std::isdigit(letter) != 0; });
  return number ? with_primes(value) : printed.say(value);
}

Extent extent_of(const Figure& figure, std::initializer_list<Material> materials) {
  Extent extent;
  for (const Part& part : figure.parts)
    if (const auto* area = std::get_if<Area>(&part))
      if (std::ranges::find(materials, area->material) != materials.end()) extent.take(part);
  return extent;
}

// Upright, at the left of the figure.
Dimension upright(const Printed& printed, const Figure& figure, double low, double high, double out_mm,
                  const std::string& from) {
  return {{figure.low.x, low}, {figure.low.x, high}, out_mm, {length_words(printed, high - low), from}};
}

struct Measuring {
  const Printed& printed;
  const plan::ElementId& of;
  const Figure& figure;
  using Made = std::vector<Dimension>;

  // From the finished surface down to formation.
  Made operator()(const plan::PavedArea& area) const {
    const Extent layers = extent_of(
        figure, {Material::paving, Material::sand, Material::mortar, Material::dense_base, Material::open_stone});
    if (layers.empty()) return {};
    return {upright(printed, figure, layers.low().y, layers.high().y, 8, of_item(area.build_up, "layers"))};
  }
  // What shows over the ground in front, and the whole of it from the bottom of the lowest course.
  Made operator()(const plan::Wall&) const {
    const Extent blocks = extent_of(figure, {Material::block, Material::cap});
    if (blocks.empty()) return {};
    Made made{upright(printed, figure, blocks.low().y, blocks.high().y, 16, of_measure(of, "height_with_cap_m"))};
    if (blocks.high().y > 0 && blocks.low().y < 0)
      made.push_back(upright(printed, figure, 0, blocks.high().y, 8, of_element(of, "top")));
    return made;
  }
  template <class Other>
  Made operator()(const Other&) const {
    return {};
  }
};

constexpr double title_mm = 7, edge_mm = 4, bar_mm = 9;

// What notes, dimensions, title and scale bar leave of a drawing's room, mm.
Vec figure_room(const Drawing& drawing, double wide_mm, double high_mm) {
  double notes = 0, left = 0;
  for (const Note& note : drawing.notes) notes = std::max(notes, 0.9 * label_wide_mm(note.said.words) + 13);
  for (const Dimension& one : drawing.dimensions) left = std::max(left, one.out_mm + 6);
  notes = std::clamp(notes, 0.3 * wide_mm, 0.5 * wide_mm);
  return {wide_mm - notes - left - edge_mm, high_mm - title_mm - edge_mm - bar_mm};
}

// Of a wall's ground at both sides less is kept in sight than is drawn: it is paper that the wall itself can use. What
// leaders lead to stays.
void trim(const Section& section, Figure& figure) {
  if (figure.high.x - figure.low.x < 1.2) return;  // metres
  double low = figure.low.x + 6 * units::metres_per_inch, high = figure.high.x - 7 * units::metres_per_inch;
  for (const Leader& leader : section.leaders) {
    low = std::min(low, leader.at.x);
    high = std::max(high, leader.at.x);
  }
  figure.low.x = std::max(low, figure.low.x);
  figure.high.x = std::min(high, figure.high.x);
}

// A round length under the section, with the scale.
void put_bar(const Printed& printed, const plan::ElementId& of, double metres, PaperScale scale, Figure& figure,
             Drawing& drawing) {
  const double y = figure.low.y - scale.under(5), x = figure.low.x, tick = scale.under(1);
  for (const auto& [from, to] :
       {std::pair(Vec{x, y}, Vec{x + metres, y}), std::pair(Vec{x, y - tick}, Vec{x, y + tick}),
        std::pair(Vec{x + metres, y - tick}, Vec{x + metres, y + tick})})
    figure.parts.emplace_back(std::in_place_type<Stroke>, Stroke{line(from, to), Line::cut_edge, of});
  drawing.labels.push_back(
      {{x + metres + scale.under(2), y}, {length_words(printed, metres), counted_here("scale bar")}, Align::left});
  drawing.title = filled(printed, "scale 1 : %1", {std::to_string(scale.one_to)});
  figure.low.y -= scale.under(bar_mm);
}

struct Word {
  const char* kind;
  const char* words;
};
constexpr std::array kind_names{
    Word{"paved-area", "paved area"}, Word{"pool", "pool"},           Word{"wall", "wall"},
    Word{"steps", "steps"},           Word{"building", "building"},   Word{"keep-out", "keep-out"},
    Word{"edge-run", "edge"},         Word{"drain-run", "drain"},     Word{"feature", "feature"},
    Word{"removal", "removal"},       Word{"site-mark", "site mark"}, Word{"protection", "protection"}};

}  // namespace

std::string kind_words(const Printed& printed, const plan::Kind& kind) {
  if (const auto* edge = std::get_if<plan::EdgeRun>(&kind)) return printed.say(edge->what);
  if (const auto* drain = std::get_if<plan::DrainRun>(&kind)) return printed.say(drain->what);
  if (const auto* out = std::get_if<plan::KeepOut>(&kind); out && !out->what.empty()) return printed.say(out->what);
  const std::string word = plan::kind_name(kind);
  const auto found = std::ranges::find(kind_names, std::string_view(word), &Word::kind);
  return printed.say(found == kind_names.end() ? word : std::string(found->words));
}

std::string leader_words(const Printed& printed, const Leader& leader) {
  const std::string label = label_words(printed, leader.label);
  return leader.value.empty() ? label : label + ": " + value_words(printed, leader.value);
}

Drawing section_drawing(const Printed& printed, const plan::ElementId& of, const Section& section, double wide_mm,
                        double high_mm) {
  Drawing drawing;
  for (const Leader& leader : section.leaders)
    drawing.notes.push_back(
        {leader.at,
         {leader_words(printed, leader), of_element(of, leader.field.empty() ? leader.label : leader.field)}});
  auto figure = std::make_shared<Figure>(section.figure);
  const plan::Element* element = printed.job().find(of);
  if (element && std::holds_alternative<plan::Wall>(element->kind)) trim(section, *figure);
  if (element) drawing.dimensions = std::visit(Measuring{printed, of, *figure}, element->kind);
  const Vec room = figure_room(drawing, wide_mm, high_mm);
  const PaperScale scale = fitting(figure->high.x - figure->low.x, figure->high.y - figure->low.y, room.x, room.y,
                                   printed.job().heading.units);
  put_bar(printed, of, section.scale_bar, scale, *figure, drawing);
  drawing.figure = std::move(figure);
  drawing.scale = scale.one_to;
  drawing.bar = false;
  drawing.height_mm = high_mm;
  return drawing;
}

}  // namespace sheets
