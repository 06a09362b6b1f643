// What can be typed or chosen of the thing selected, as data: one descriptor a field, for every kind of element. A form
// shows them; nothing here knows a widget. Labels are translated where they are made.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <functional>
#include <variant>
#include <vector>

#include "plan/job.h"

namespace ui {

class Fields {
  Q_DECLARE_TR_FUNCTIONS(Fields)
};

// monostate: nothing chosen, which is a value of its own where `may_be_empty`. Angles are degrees, shares are shares.
using Value = std::variant<std::monostate, bool, std::int64_t, double, units::Length, std::string>;

enum class Editor {
  text,
  long_text,
  length,
  number,
  percent,  // of a share: 0.02 is typed 2
  degrees,
  area,   // of square metres, typed in the job's units
  money,  // of whole coins; `decimals` says how many of them are behind the dot
  whole,
  yes_no,
  words,     // one of `choices`
  item,      // of the kinds in `fits`
  build_up,  // of the uses in `fits`
  pattern,
  action,  // a button; `set` is what it does
  told     // only shown
};

struct Choice {
  std::string key;
  QString label;
};

struct Field {
  std::string id;  // "coping/overhang", "layer/1/thickness": the names that leaders of a section use too
  QString label;
  QString group;  // heading above it; empty: goes on
  Editor editor = Editor::text;
  bool may_be_empty = false;
  std::vector<Choice> choices;
  bool by_order = false;  // a choice is given by its place among `choices`, not by its key
  std::vector<std::string> fits;
  double least = -1e9;  // of number, percent (as a share), degrees, whole
  double greatest = 1e9;
  bool never_below_0 = false;  // of a length
  int decimals = 2;            // of money
  std::function<Value(const plan::Job&)> get;
  std::function<plan::Job(const plan::Job&, const Value&)> set;
  QString otherwise;  // shown in pale where nothing is given: what holds then
  QString step;       // what undo calls it
};

enum class Page { build_up, pattern, levels };

// The fields of one element on a page; kinds without pages of their own have all on `build_up`. They follow what the
// element holds now (a course of a border has its rows), so make them anew after each edit. Unknown id: none.
std::vector<Field> fields_of(const plan::Job& job, const plan::ElementId& id, Page page);
std::vector<Field> fields_of_job();  // name, customer, place, units, currency, notes
Field name_of(const plan::ElementId& id);

// What several elements have in common: a field that all of them have shows the value that all share, or nothing, and
// changes all in one step. Last comes taking all of them out.
std::vector<Field> common_fields(const plan::Job& job, const std::vector<plan::ElementId>& ids);

QString kind_words(const plan::Kind& kind);  // "Paved area", "Pool" ...
// Ids of the job's elements whose kind_name is one of `kinds`, with their names.
std::vector<Choice> elements_of(const plan::Job& job, const std::vector<std::string>& kinds);

// Thickness, or lap, of each layer of what lies under an element, of any kind; the unit's own is left out.
std::vector<Field> layer_fields(const plan::Job& job, const plan::ElementId& id);

// Of each kind; `job` is read for what may be chosen.
std::vector<Field> area_build_up(const plan::Job& job, const plan::ElementId& id, const plan::PavedArea& area);
std::vector<Field> area_pattern(const plan::Job& job, const plan::ElementId& id, const plan::PavedArea& area);
std::vector<Field> area_levels(const plan::Job& job, const plan::ElementId& id, const plan::PavedArea& area);
std::vector<Field> pool_fields(const plan::ElementId& id, const plan::Pool& pool);
std::vector<Field> wall_fields(const plan::Job& job, const plan::ElementId& id, const plan::Wall& wall);
std::vector<Field> steps_fields(const plan::Job& job, const plan::ElementId& id, const plan::Steps& steps);
std::vector<Field> edge_run_fields(const plan::ElementId& id, const plan::EdgeRun& run);
std::vector<Field> drain_run_fields(const plan::Job& job, const plan::ElementId& id, const plan::DrainRun& run);
std::vector<Field> site_fields(const plan::Job& job, const plan::Element& element);  // every other kind

}  // namespace ui
