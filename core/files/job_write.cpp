#include "catalogue/catalogue.h"
#include "files/catalogue_fields.h"
#include "files/check_value.h"
#include "files/element_text.h"
#include "files/files.h"
#include "files/job_fields.h"
#include "files/to_json.h"

namespace files {

Value to_json(const plan::Element& element) {
  Value object = object_value();
  add(object, "id", to_json(element.id));
  add(object, "kind", to_json(plan::kind_name(element.kind)));
  if (!element.name.empty()) add(object, "name", to_json(element.name));
  std::visit([&](const auto& kind) { add_fields(object, kind); }, element.kind);
  return object;
}

namespace {

template <class T>
void add_unless_empty(Value& object, std::string_view name, const T& part) {
  Value value = to_json(part);
  if (!value.children.empty()) add(object, name, std::move(value));
}

}  // namespace

std::string write_element(const plan::Element& element) { return write_json(to_json(element)); }

std::string write_job(const plan::Job& job) {
  Value object = object_value();
  add(object, "groundcourse", to_json(job_format));
  add_unless_empty(object, "heading", job.heading);
  add_unless_empty(object, "datum", job.datum);
  add_unless_empty(object, "choices", job.choices);
  add_unless_empty(object, "stage_moves", job.stage_moves);
  add_unless_empty(object, "looked_at", job.looked_at);
  add_unless_empty(object, "offer", job.offer);
  add_unless_empty(object, "enquiry", job.enquiry);
  add_unless_empty(object, "visit", job.visit);
  add_unless_empty(object, "catalogue", *job.catalogue);
  Value elements = list_value();
  for (const plan::ElementPtr& element : job.elements) add(elements, to_json(*element));
  add(object, "elements", std::move(elements));
  add(object, check_field, text_value(check_value(object)));
  return write_json(object);
}

}  // namespace files
