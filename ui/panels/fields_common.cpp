#include <algorithm>

#include "ui/panels/fields_making.h"

namespace ui {

namespace {

const Field* same_in(const std::vector<Field>& fields, const Field& wanted) {
  const auto found = std::ranges::find_if(fields, [&wanted](const Field& field) {
    return field.id == wanted.id && field.editor == wanted.editor && field.fits == wanted.fits;
  });
  return found == fields.end() ? nullptr : &*found;
}

// Numbered things (a course of a border, a place in a list) are of one element; so is where it lies.
bool of_one_only(const Field& field) {
  const bool numbered = std::ranges::any_of(field.id, [](char letter) { return letter >= '0' && letter <= '9'; });
  return numbered || field.editor == Editor::action || field.editor == Editor::told || field.id.starts_with("start/");
}

Field shared(const std::vector<Field>& each, std::size_t count) {
  Field field = each.front();
  field.step = Fields::tr("Change %1 of %2 elements").arg(field.label.toLower()).arg(count);
  field.get = [each](const plan::Job& job) -> Value {
    const Value first = each.front().get(job);
    const bool all = std::ranges::all_of(each, [&](const Field& one) { return one.get(job) == first; });
    return all ? first : Value{};
  };
  field.set = [each](const plan::Job& job, const Value& value) {
    plan::Job after = job;
    for (const Field& one : each) after = one.set(after, value);
    return after;
  };
  return field;
}

Field take_out(const std::vector<plan::ElementId>& ids) {
  Field field;
  field.id = "take_out";
  field.label = Fields::tr("Take all %1 out").arg(ids.size());
  field.editor = Editor::action;
  field.step = Fields::tr("Take %1 elements out").arg(ids.size());
  field.get = [](const plan::Job&) -> Value { return {}; };
  field.set = [ids](const plan::Job& job, const Value&) {
    plan::Job after = job;
    for (const plan::ElementId& id : ids) after = plan::without(after, id);
    return after;
  };
  return field;
}

}  // namespace

std::vector<Field> common_fields(const plan::Job& job, const std::vector<plan::ElementId>& ids) {
  std::vector<std::vector<Field>> of_each;
  for (const plan::ElementId& id : ids) {
    std::vector<Field> all;
    for (const Page page : {Page::build_up, Page::pattern, Page::levels}) add(all, fields_of(job, id, page));
    of_each.push_back(std::move(all));
  }
  std::vector<Field> found;
  for (const Field& wanted : of_each.empty() ? std::vector<Field>{} : of_each.front()) {
    if (of_one_only(wanted)) continue;
    std::vector<Field> each;
    for (const std::vector<Field>& fields : of_each)
      if (const Field* same = same_in(fields, wanted)) each.push_back(*same);
    if (each.size() == of_each.size()) found.push_back(shared(each, ids.size()));
  }
  if (!ids.empty()) found.push_back(take_out(ids));
  return found;
}

}  // namespace ui
