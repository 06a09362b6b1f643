#include "ui/panels/six_measures.h"

#include <algorithm>
#include <map>

#include "ui/panels/fields.h"
#include "ui/panels/length_field.h"
#include "units/number.h"

namespace ui {

namespace {

enum class Shown { length, area, volume, count, percent };
struct Row {
  const char* measure;
  QString label;
  Shown shown;
};

struct Rows {
  std::vector<Row> operator()(const plan::PavedArea&) const {
    return {{"net_area_m2", Fields::tr("Net area"), Shown::area},
            {"outline_area_m2", Fields::tr("As drawn"), Shown::area},
            {"perimeter_m", Fields::tr("Edge"), Shown::length},
            {"units_whole", Fields::tr("Whole units"), Shown::count},
            {"units_cut", Fields::tr("Cut units"), Shown::count},
            {"bought_area", Fields::tr("Bought for cuts"), Shown::count}};
  }
  std::vector<Row> operator()(const plan::Pool& pool) const {
    std::vector<Row> rows{{"water_area_m2", Fields::tr("Water"), Shown::area},
                          {"water_edge_m", Fields::tr("Water’s edge"), Shown::length}};
    if (!pool.coping) return rows;
    rows.push_back({"coping_back_m", Fields::tr("Back of coping"), Shown::length});
    rows.push_back({"coping_area_m2", Fields::tr("Coping"), Shown::area});
    rows.push_back({"coping_units", Fields::tr("Coping pieces"), Shown::count});
    rows.push_back({"coping_cut", Fields::tr("Cut pieces"), Shown::count});
    return rows;
  }
  std::vector<Row> operator()(const plan::Wall&) const {
    return {{"length_m", Fields::tr("Length"), Shown::length},
            {"face_area_m2", Fields::tr("Face"), Shown::area},
            {"height_with_cap_m", Fields::tr("Height with cap"), Shown::length},
            {"units", Fields::tr("Blocks"), Shown::count},
            {"units_cut", Fields::tr("Cut blocks"), Shown::count},
            {"caps", Fields::tr("Caps"), Shown::count}};
  }
  std::vector<Row> operator()(const plan::Steps&) const {
    return {
        {"net_area_m2", Fields::tr("Area"), Shown::area},       {"risers", Fields::tr("Risers"), Shown::count},
        {"riser_m", Fields::tr("Each riser"), Shown::length},   {"tread_m", Fields::tr("Tread"), Shown::length},
        {"step_units", Fields::tr("Step units"), Shown::count}, {"steps_cut", Fields::tr("Cut units"), Shown::count}};
  }
  std::vector<Row> operator()(const plan::EdgeRun& run) const {
    std::vector<Row> rows{{"length_m", Fields::tr("Length"), Shown::length}};
    if (run.what != "kerb") {
      rows.push_back({"restraint_m", Fields::tr("Restraint"), Shown::length});
      rows.push_back({"spikes", Fields::tr("Spikes"), Shown::count});
      return rows;
    }
    rows.push_back({"kerb_centre_length_m", Fields::tr("Centre line"), Shown::length});
    rows.push_back({"kerb_units:", Fields::tr("Kerb units"), Shown::count});
    rows.push_back({"kerb_cut", Fields::tr("Cut units"), Shown::count});
    rows.push_back({"footing_m3", Fields::tr("Footing"), Shown::volume});
    rows.push_back({"weeps", Fields::tr("Weeps"), Shown::count});
    return rows;
  }
  std::vector<Row> operator()(const plan::DrainRun&) const {
    return {{"length_m", Fields::tr("Length"), Shown::length},
            {"run_m", Fields::tr("Laid length"), Shown::length},
            {"trench_m3", Fields::tr("Trench"), Shown::volume},
            {"trench_stone_m3", Fields::tr("Stone"), Shown::volume}};
  }
  std::vector<Row> operator()(const plan::Removal&) const {
    return {{"removal_area_m2", Fields::tr("Area"), Shown::area},
            {"removal_length_m", Fields::tr("Length"), Shown::length},
            {"removal_m3", Fields::tr("In place"), Shown::volume}};
  }
  std::vector<Row> operator()(const plan::KeepOut&) const {
    return {{"outline_area_m2", Fields::tr("Area"), Shown::area},
            {"perimeter_m", Fields::tr("Edge"), Shown::length},
            {"pillar_blocks", Fields::tr("Blocks"), Shown::count},
            {"pillar_courses", Fields::tr("Courses"), Shown::count}};
  }
  template <class Other>
  std::vector<Row> operator()(const Other&) const {
    return {{"outline_area_m2", Fields::tr("Area"), Shown::area},
            {"perimeter_m", Fields::tr("Edge"), Shown::length},
            {"length_m", Fields::tr("Length"), Shown::length}};
  }
};

// A name that ends in a colon stands for all of that beginning, added up (one for each item).
std::optional<double> value_of(const takeoff::Measures& measures, std::string_view name) {
  if (!name.ends_with(':')) return measures.get(name);
  std::optional<double> sum;
  for (const auto& [key, value] : measures.values)
    if (key.starts_with(name)) sum = sum.value_or(0) + value;
  return sum;
}

QString shown(double value, Shown how, units::System system) {
  switch (how) {
    case Shown::length: return shown_length(units::Length::nearest(units::Metres(value)), system);
    case Shown::area: return shown_area(value, system);
    case Shown::volume: return shown_volume(value, system);
    case Shown::percent: return QString::fromStdString(units::show_number(value, 1)) + QStringLiteral(" %");
    case Shown::count: return QString::fromStdString(units::show_grouped(value, 0));
  }
  return {};
}

// What must be there where it is not measured: a laid area without numbers of units shows dashes.
bool always(const plan::Element& element) { return std::holds_alternative<plan::PavedArea>(element.kind); }

}  // namespace

QString shown_area(double square_metres, units::System system) {
  if (system == units::System::metric)
    return QString::fromStdString(units::show_grouped(square_metres, 2)) + QStringLiteral(" m²");
  return QString::fromStdString(units::show_grouped(square_metres / units::square_metres_per_square_foot, 1)) +
         QStringLiteral(" ft²");
}

QString shown_volume(double cubic_metres, units::System system) {
  if (system == units::System::metric)
    return QString::fromStdString(units::show_grouped(cubic_metres, 2)) + QStringLiteral(" m³");
  return QString::fromStdString(units::show_grouped(cubic_metres / units::cubic_metres_per_cubic_yard, 2)) +
         QStringLiteral(" yd³");
}

std::vector<Told> six_measures(const results::Results& results, const plan::Element& element) {
  const auto& all = results.takeoff.measures;
  const auto own = std::ranges::find(all, element.id, &takeoff::Measures::element);
  std::vector<Told> told;
  for (const Row& row : std::visit(Rows{}, element.kind)) {
    const auto value = own == all.end() ? std::nullopt : value_of(*own, row.measure);
    if (value)
      told.push_back({row.label, shown(*value, row.shown, results.job->heading.units)});
    else if (always(element))
      told.push_back({row.label, QStringLiteral("–")});
  }
  return told;
}

std::vector<Told> counts_of(const plan::Job& job) {
  std::vector<std::pair<QString, int>> counts;
  for (const plan::ElementPtr& element : job.elements) {
    const QString words = kind_words(element->kind);
    const auto found = std::ranges::find(counts, words, &std::pair<QString, int>::first);
    if (found == counts.end())
      counts.emplace_back(words, 1);
    else
      ++found->second;
  }
  std::vector<Told> told;
  for (const auto& [words, count] : counts) told.push_back({words, QString::number(count)});
  return told;
}

}  // namespace ui
