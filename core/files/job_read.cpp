#include <unordered_set>

#include "files/catalogue_fields.h"
#include "files/check_value.h"
#include "files/element_text.h"
#include "files/files.h"
#include "files/from_json.h"
#include "files/job_fields.h"
#include "takeoff/stage.h"

namespace files {
namespace {

// Whether sizes agree is looked at piece against piece, so a pattern of a million pieces would take hours to check.
constexpr std::size_t most_pieces = 10'000;

// One empty value of each kind, in the order of the variant.
template <std::size_t... I>
std::vector<plan::Kind> each_kind(std::index_sequence<I...>) {
  return {plan::Kind(std::in_place_index<I>)...};
}

bool read_kind(const Value& value, plan::Kind& into, Reading& reading) {
  static const std::vector<plan::Kind> kinds = each_kind(std::make_index_sequence<std::variant_size_v<plan::Kind>>());
  if (!expect(value, Sort::string, reading)) return false;
  std::string known;
  for (const plan::Kind& kind : kinds) {
    const std::string name = plan::kind_name(kind);
    if (name == value.text) {
      into = kind;
      return true;
    }
    known += (known.empty() ? "" : ", ") + name;
  }
  return reading.refuse(value.spot, "kind-unknown", "there is no kind of element called " + in_quotes(value.text),
                        "use one of: " + known);
}

bool read_id(const Value& object, std::string& into, Reading& reading) {
  const Value* id = object.find("id");
  if (id == nullptr) return missing_field(object, "id", reading);
  return read(*id, into, reading) && check_id(into, id->spot, reading);
}

}  // namespace

bool read(const Value& value, plan::Element& into, Reading& reading) {
  if (!expect(value, Sort::object, reading) || !read_id(value, into.id, reading)) return false;
  const Value* kind = value.find("kind");
  if (kind == nullptr) return missing_field(value, "kind", reading);
  if (!read_kind(*kind, into.kind, reading)) return false;
  const Value* name = value.find("name");
  if (name != nullptr && !read(*name, into.name, reading)) return false;
  return std::visit([&](auto& fields) { return read_fields(value, fields, {"id", "kind", "name"}, reading); },
                    into.kind);
}

namespace {

bool read_elements(const Value& list, std::vector<plan::ElementPtr>& into, Reading& reading) {
  if (!expect(list, Sort::list, reading)) return false;
  std::unordered_set<std::string> ids;
  into.reserve(list.children.size());
  for (const Value& child : list.children) {
    auto element = std::make_shared<plan::Element>();
    if (!read(child, *element, reading)) {
      if (reading.fault->place.element.empty()) reading.fault->place.element = element->id;
      return false;
    }
    if (!ids.insert(element->id).second) return doubled_id(*child.find("id"), element->id, reading);
    into.push_back(std::move(element));
  }
  return true;
}

// The entry of a list in the file that has this id: for the place of what catalogue::check found.
Spot spot_of(const Value& catalogue, std::string_view list, const std::string& id) {
  for (const Value& child : catalogue.find(list)->children) {
    if (child.find("id")->text == id) return child.spot;
  }
  return catalogue.spot;
}

bool refuse_entry(const problem::Problem& found, Spot spot, Reading& reading) {
  reading.refuse(spot, found.code, found.text, found.mend);
  reading.fault->place.element = found.place.element;
  return false;
}

// Junctions are a list, because their order counts, but a choice of an edge names one by its id.
bool check_junctions(const Value& list, Reading& reading) {
  std::unordered_set<std::string> ids;
  for (const Value& child : list.children) {
    const std::string& id = child.find("id")->text;
    if (!check_id(id, child.spot, reading)) return false;
    if (!ids.insert(id).second) return doubled_id(child, id, reading);
  }
  return true;
}

bool read_catalogue(const Value& value, catalogue::Catalogue& into, Reading& reading) {
  if (!read(value, into, reading)) return false;
  const Value* junctions = value.find("junctions");
  if (junctions != nullptr && !check_junctions(*junctions, reading)) return false;
  for (const auto& [id, item] : into.items) {
    const auto checked = catalogue::check(*item);
    if (!checked) return refuse_entry(checked.error(), spot_of(value, "items", id), reading);
  }
  for (const auto& [id, pattern] : into.patterns) {
    if (pattern.pieces.size() > most_pieces) {
      return reading.refuse(spot_of(value, "patterns", id), "pattern-large",
                            "the pattern " + in_quotes(id) + " has more than 10,000 pieces", "find a smaller repeat");
    }
    const auto checked = catalogue::check(pattern);
    if (!checked) return refuse_entry(checked.error(), spot_of(value, "patterns", id), reading);
  }
  return true;
}

// A list whose entries name a stage: a word that is none would be dropped later without a sound.
template <class T>
bool read_staged(const Value& list, std::vector<T>& into, Reading& reading) {
  if (!read(list, into, reading)) return false;
  for (std::size_t i = 0; i < into.size(); ++i) {
    if (takeoff::stage_of(into[i].stage)) continue;
    std::string known;
    for (const takeoff::Stage stage : takeoff::all_stages) known += (known.empty() ? "" : ", ") + takeoff::word(stage);
    return unknown_word(*list.children[i].find("stage"), known, reading);
  }
  return true;
}

bool read_format(const Value& object, Reading& reading) {
  const Value* format = object.find("groundcourse");
  if (format == nullptr) {
    return reading.refuse(object.spot, "format-missing",
                          "this is not a job file: the field \"groundcourse\" is missing",
                          "take a job file, or add \"groundcourse\": 1");
  }
  int number = 0;
  if (!read(*format, number, reading)) return false;
  if (number > job_format) {
    return reading.refuse(format->spot, "format-newer",
                          "the file has format " + std::to_string(number) + ", and this program reads format " +
                              std::to_string(job_format),
                          "open it with a newer version of this program");
  }
  if (number == job_format) return true;
  return reading.refuse(format->spot, "format-unknown", "there is no format " + std::to_string(number),
                        "write \"groundcourse\": 1");
}

bool read_parts(const Value& object, plan::Job& into, Reading& reading) {
  auto catalogue = std::make_shared<catalogue::Catalogue>();
  for (std::size_t i = 0; i < object.keys.size(); ++i) {
    const std::string& name = object.keys[i].name;
    const Value& part = object.children[i];
    const bool done =
        name == "groundcourse"  ? true
        : name == check_field   ? true
        : name == "heading"     ? read(part, into.heading, reading)
        : name == "datum"       ? read(part, into.datum, reading)
        : name == "choices"     ? read(part, into.choices, reading)
        : name == "stage_moves" ? read_staged(part, into.stage_moves, reading)
        : name == "looked_at"   ? read_staged(part, into.looked_at, reading)
        : name == "offer"       ? read(part, into.offer, reading)
        : name == "enquiry"     ? read(part, into.enquiry, reading)
        : name == "visit"       ? read(part, into.visit, reading)
        : name == "catalogue"   ? read_catalogue(part, *catalogue, reading)
        : name == "elements"
            ? read_elements(part, into.elements, reading)
            : unknown_field(object, i,
                            "groundcourse, heading, datum, choices, stage_moves, looked_at, offer, enquiry, visit, "
                            "catalogue, elements, check",
                            reading);
    if (!done) return false;
  }
  into.catalogue = std::move(catalogue);
  return true;
}

// After all else, so that a field that can't be is named by itself. A file without the field is taken as it stands.
bool agrees_with_check(const Value& object, Reading& reading) {
  const Value* check = object.find(check_field);
  if (check == nullptr) return true;
  if (!expect(*check, Sort::string, reading)) return false;
  const std::string now = check_value(object);
  if (check->text == now) return true;
  return reading.refuse(check->spot, "check-differs",
                        "the file is not as it was written: its check value is " + in_quotes(check->text) +
                            ", and what it holds gives \"" + now + "\"",
                        "take a whole copy of the file; where it was changed by hand, take out its field \"check\"");
}

}  // namespace

problem::Result<plan::Element> read_element(std::string_view text, const std::string& file) {
  const auto tree = parse_json(text, file);
  if (!tree) return std::unexpected(tree.error());
  Reading reading{.file = file, .fault = {}};
  plan::Element element;
  if (read(*tree, element, reading)) return element;
  if (reading.fault->place.element.empty()) reading.fault->place.element = element.id;
  return std::unexpected(reading.told());
}

problem::Result<plan::Job> read_job(std::string_view text, const std::string& file) {
  const auto tree = parse_json(text, file);
  if (!tree) return std::unexpected(tree.error());
  Reading reading{.file = file, .fault = {}};
  plan::Job job;
  if (expect(*tree, Sort::object, reading) && read_format(*tree, reading) && read_parts(*tree, job, reading) &&
      agrees_with_check(*tree, reading))
    return job;
  return std::unexpected(reading.told());
}

}  // namespace files
