#include <gtest/gtest.h>

#include <GeographicLib/Geodesic.hpp>
#include <cmath>

#include "files/files.h"
#include "files/metres_from_degrees.h"

namespace {

using Layers = std::map<std::string, std::string>;

files::Import import(const std::string& text, const Layers& layers, std::string_view units = "") {
  const auto made = files::import_geojson(text, "site.geojson", units, layers);
  if (!made) ADD_FAILURE() << problem::sentence(made.error()) << "\n" << text;
  return made ? *made : files::Import{};
}

problem::Problem fault(const std::string& text, const Layers& layers, std::string_view units = "") {
  const auto made = files::import_geojson(text, "site.geojson", units, layers);
  return made ? problem::Problem{} : made.error();
}

std::string collection(const std::string& features, const std::string& more = R"("units": "m", )") {
  return R"({"type": "FeatureCollection", )" + more + R"("features": [)" + features + "]}";
}

std::string feature(const std::string& head, const std::string& layer, const std::string& type,
                    const std::string& coordinates) {
  return R"({"type": "Feature", )" + head + R"("properties": {"layer": ")" + layer + R"("}, "geometry": {"type": ")" +
         type + R"(", "coordinates": )" + coordinates + "}}";
}

const std::string square = "[[[0, 0], [10, 0], [10, 10], [0, 10], [0, 0]], [[1, 1], [2, 1], [2, 2], [1, 1]]]";

std::vector<std::string> ids(const plan::Job& job) {
  std::vector<std::string> all;
  for (const auto& element : job.elements) all.push_back(element->id);
  return all;
}

TEST(GeoJson, APolygonBecomesAnOutlineWithItsIslands) {
  const auto made =
      import(collection(feature(R"("id": "deck-1", )", "deck", "Polygon", square)), {{"deck", "paved-area"}});
  ASSERT_EQ(made.job.elements.size(), 1u);
  EXPECT_EQ(made.job.elements[0]->id, "deck-1");
  plan::PavedArea expected;
  expected.outline = std::get<plan::PavedArea>(made.job.elements[0]->kind).outline;
  EXPECT_TRUE(std::get<plan::PavedArea>(made.job.elements[0]->kind) == expected) << "nothing but the outline is chosen";
  ASSERT_EQ(expected.outline.size(), 2u);
  ASSERT_EQ(expected.outline[0].edges.size(), 4u) << "the closing point is dropped";
  EXPECT_EQ(expected.outline[0].edges[1].from.x.steps(), 10 * 320'000);
  EXPECT_EQ(expected.outline[1].edges.size(), 3u);
  EXPECT_EQ(made.job.datum.what, "local");
  EXPECT_TRUE(made.job.catalogue->items.empty());
  EXPECT_EQ(made.job.heading.units, units::System::metric);
}

TEST(GeoJson, UnitsAreExact) {
  // One foot is 0.3048 m, a US survey foot 1200 / 3937 m; a step is 1/320 mm.
  const std::vector<std::pair<std::string, std::int64_t>> steps_of_1000{
      {"m", 320'000'000},
      {"mm", 320'000},
      {"ft", 97'536'000},     // 304.8 m
      {"us-ft", 97'536'195},  // 304.800609601... m x 320,000 = 97,536,195.07
      {"in", 8'128'000}};     // 25.4 m
  for (const auto& [unit, steps] : steps_of_1000) {
    const std::string line = feature("", "w", "LineString", "[[0, 0], [1000, 0]]");
    const auto by_word = import(collection(line, ""), {{"w", "wall"}}, unit);
    const auto by_member = import(collection(line, R"("units": ")" + unit + R"(", )"), {{"w", "wall"}});
    EXPECT_EQ(std::get<plan::Wall>(by_word.job.elements.at(0)->kind).line.end.x.steps(), steps) << unit;
    EXPECT_TRUE(plan::same(by_word.job, by_member.job)) << unit;
  }
  EXPECT_EQ(fault(collection(""), {}, "yd").code, "geojson-units");
  EXPECT_EQ(fault(collection("", R"("units": "furlong", )"), {}).code, "geojson-units");
  EXPECT_EQ(fault(collection("", R"("units": 1, )"), {}).code, "geojson-units");
}

TEST(GeoJson, IdsAreKeptAndMade) {
  const std::string line = "[[0, 0], [1, 0]]";
  const auto made =
      import(collection(feature(R"("id": 7, )", "w", "LineString", line) + "," +
                        feature("", "skip", "LineString", line) + "," + feature("", "w", "LineString", line) + "," +
                        feature(R"("id": "m", )", "w", "MultiLineString", "[" + line + "," + line + "," + line + "]") +
                        R"(, {"type": "Feature", "properties": {"kind": "w", "id": "inner", "name": "East"},
                                         "geometry": {"type": "LineString", "coordinates": [[0, 0], [1, 1]]}})"),
             {{"w", "wall"}});
  EXPECT_EQ(ids(made.job), (std::vector<std::string>{"7", "w-3", "m", "m#2", "m#3", "inner"}));
  EXPECT_EQ(made.not_mapped, (std::map<std::string, int>{{"skip", 1}}));
  EXPECT_EQ(made.job.elements.back()->name, "East");
}

TEST(GeoJson, DoubledIdsAreRefused) {
  const std::string line = "[[0, 0], [1, 0]]";
  const auto two = fault(collection(feature(R"("id": "a", )", "w", "LineString", line) + ",\n" +
                                    feature(R"("id": "a", )", "w", "LineString", line)),
                         {{"w", "wall"}});
  EXPECT_EQ(two.code, "id-doubled");
  EXPECT_EQ(two.place.line, 2);
  // A made id that meets one that was there.
  EXPECT_EQ(fault(collection(feature(R"("id": "m#2", )", "w", "LineString", line) + "," +
                             feature(R"("id": "m", )", "w", "MultiLineString", "[" + line + "," + line + "]")),
                  {{"w", "wall"}})
                .code,
            "id-doubled");
}

TEST(GeoJson, StarIsEveryLayerThatIsNotNamed) {
  const auto made = import(collection(feature("", "a", "Polygon", square) + "," + feature("", "b", "Polygon", square)),
                           {{"b", "building"}, {"*", "paved-area"}});
  EXPECT_EQ(plan::kind_name(made.job.elements.at(0)->kind), "paved-area");
  EXPECT_EQ(plan::kind_name(made.job.elements.at(1)->kind), "building");
}

TEST(GeoJson, EveryKind) {
  for (const char* kind : {"paved-area", "pool", "steps", "building", "keep-out", "removal", "protection"}) {
    const auto made = import(collection(feature("", "x", "Polygon", square)), {{"x", kind}});
    EXPECT_EQ(plan::kind_name(made.job.elements.at(0)->kind), kind);
  }
  for (const char* kind : {"wall", "edge-run", "drain-run", "removal", "protection"}) {
    const auto made = import(collection(feature("", "x", "LineString", "[[0, 0], [3, 4]]")), {{"x", kind}});
    EXPECT_EQ(plan::kind_name(made.job.elements.at(0)->kind), kind);
  }
  const auto level = import(collection(feature("", "x", "Point", "[1, 2, 3.5]")), {{"x", "level"}});
  EXPECT_EQ(std::get<plan::Level>(level.job.elements.at(0)->kind).height->steps(), 3500 * 320);
  EXPECT_EQ(std::get<plan::Level>(level.job.elements.at(0)->kind).what, "existing");
  const auto mark = import(collection(feature("", "x", "Point", "[1, 2]")), {{"x", "site-mark:septic"}});
  EXPECT_EQ(std::get<plan::SiteMark>(mark.job.elements.at(0)->kind).what, "septic");
  EXPECT_EQ(std::get<plan::SiteMark>(mark.job.elements.at(0)->kind).points.size(), 1u);
}

TEST(GeoJson, APolygonForALineKindGivesItsRings) {
  const auto made = import(collection(feature(R"("id": "k", )", "x", "Polygon", square)), {{"x", "edge-run"}});
  EXPECT_EQ(ids(made.job), (std::vector<std::string>{"k", "k#2"}));
  const auto& line = std::get<plan::EdgeRun>(made.job.elements[0]->kind).line;
  EXPECT_EQ(line.edges.size(), 4u);
  EXPECT_EQ(line.end, line.edges[0].from);
}

TEST(GeoJson, WhatCannotBeDrawnSoIsRefusedWithItsMend) {
  const std::string line = feature(R"("id": "l", )", "x", "LineString", "[[0, 0], [3, 4]]");
  const auto found = fault(collection(line), {{"x", "pool"}});
  EXPECT_EQ(found.code, "geojson-drawn-as");
  EXPECT_EQ(found.place.element, "l");
  EXPECT_FALSE(found.mend.empty());
  const std::string point = feature("", "x", "Point", "[0, 0]");
  EXPECT_EQ(fault(collection(point), {{"x", "wall"}}).code, "geojson-drawn-as");
  EXPECT_EQ(fault(collection(point), {{"x", "keep-out"}}).code, "geojson-drawn-as");
  EXPECT_EQ(fault(collection(point), {{"x", "level"}}).code, "geojson-height");
  EXPECT_EQ(fault(collection(line), {{"x", "level"}}).code, "geojson-drawn-as");
  for (const char* kind : {"lawn", "site-mark", "site-mark:", "wall:x", ""}) {
    EXPECT_EQ(fault(collection(line), {{"x", kind}}).code, "layer-kind") << kind;
  }
}

TEST(GeoJson, AnInvalidOutlineIsImportedAsDrawn) {
  const auto made = import(collection(feature("", "x", "Polygon", "[[[0, 0], [1, 1], [1, 0], [0, 1], [0, 0]]]") + "," +
                                      feature("", "x", "Polygon", "[]") + "," + feature("", "x", "Polygon", "[[]]") +
                                      "," + feature("", "x", "Polygon", "[[[1, 1]]]")),
                           {{"x", "paved-area"}});
  EXPECT_EQ(std::get<plan::PavedArea>(made.job.elements.at(0)->kind).outline.at(0).edges.size(), 4u);
  EXPECT_EQ(made.job.elements.size(), 4u);
}

TEST(GeoJson, NothingIsDroppedInSilence) {
  const auto made = import(collection(feature("", "a", "Polygon", square) + "," + feature("", "a", "Polygon", square) +
                                      R"(, {"type": "Feature", "properties": null, "geometry": null}
                                         , {"type": "Feature", "properties": {"layer": "x"}, "geometry": null})"),
                           {{"x", "wall"}});
  EXPECT_EQ(made.not_mapped,
            (std::map<std::string, int>{{"a", 2}, {"(no layer) (no geometry)", 1}, {"x (no geometry)", 1}}));
  EXPECT_TRUE(made.job.elements.empty());
}

TEST(GeoJson, PlaneCoordinatesFarFromTheirOriginAreMoved) {
  const std::string far = feature("", "x", "LineString", "[[700000.5, 2900000], [700010.5, 2900000]]");
  const auto made = import(collection(far, ""), {{"x", "wall"}}, "us-ft");
  const auto& line = std::get<plan::Wall>(made.job.elements.at(0)->kind).line;
  EXPECT_EQ(line.edges.at(0).from, geometry::Point{});
  EXPECT_EQ(line.end.x.steps(), 975'362);  // 10 x 1200 / 3937 m x 320,000 = 975,361.95
  EXPECT_EQ(made.job.datum.what, "plane");
  EXPECT_NEAR(made.job.datum.easting_m, 213360.5791, 1e-4);  // 700000.5 x 1200 / 3937
}

TEST(GeoJson, MoreThanFiveKilometresAreAnotherJob) {
  const std::string near = feature(R"("id": "near", )", "x", "LineString", "[[0, 0], [4999, 0]]");
  const std::string far = feature(R"("id": "far", )", "x", "LineString", "[[0, 0], [5001, 0]]");
  EXPECT_EQ(import(collection(near), {{"x", "wall"}}).job.elements.size(), 1u);
  const auto plain = fault(collection(near + "," + far), {{"x", "wall"}});
  EXPECT_EQ(plain.code, "geojson-far");
  EXPECT_EQ(plain.place.element, "far");
  // One degree of latitude is 111 km; the other side of the earth projects onto the origin and must not pass for it.
  const std::string here = feature(R"("id": "here", )", "x", "LineString", "[[-71.1, 42.3], [-71.1, 42.301]]");
  for (const char* there : {"[[-71.1, 42.4], [-71.1, 42.3]]", "[[108.9, -42.3], [108.9, -42.3]]"}) {
    const auto found =
        fault(collection(here + "," + feature(R"("id": "there", )", "x", "LineString", there), ""), {{"x", "wall"}});
    EXPECT_EQ(found.code, "geojson-far") << there;
    EXPECT_TRUE(found.text.contains("\"there\"")) << found.text;
  }
}

TEST(GeoJson, DegreesAreLaidOutTrueToTheMillimetre) {
  // Oracle: the geodesic on WGS 84 between the two points (Karney 2013, as GeographicLib computes it).
  const GeographicLib::Geodesic& earth = GeographicLib::Geodesic::WGS84();
  for (const double latitude : {-60.0, 0.0, 42.37, 70.0}) {
    for (const double turn : {0.0, 37.0, 90.0, 211.0}) {
      for (const double out : {0.0, 1000.0, 4900.0}) {
        double lat1 = 0, lon1 = 0, lat2 = 0, lon2 = 0;
        earth.Direct(latitude, -71.1, turn, out, lat1, lon1);
        for (const double way : {turn, turn + 90}) {
          earth.Direct(lat1, lon1, way, 100, lat2, lon2);
          const auto a = files::metres_from_degrees({-71.1, latitude}, {lon1, lat1});
          const auto b = files::metres_from_degrees({-71.1, latitude}, {lon2, lat2});
          EXPECT_NEAR(std::hypot(b.x - a.x, b.y - a.y), 100, 0.0001)
              << latitude << " " << turn << " " << out << " " << way;
        }
      }
    }
  }
}

TEST(GeoJson, DegreesKeepTheirOrigin) {
  const auto made =
      import(collection(feature("", "x", "LineString", "[[-71.1, 42.3], [-71.1, 42.3009]]"), ""), {{"x", "wall"}});
  EXPECT_EQ(made.job.datum,
            (plan::Datum{.what = "wgs84", .longitude = -71.1, .latitude = 42.3, .easting_m = 0, .northing_m = 0}));
  const auto& line = std::get<plan::Wall>(made.job.elements.at(0)->kind).line;
  EXPECT_EQ(line.edges.at(0).from, geometry::Point{});
  EXPECT_EQ(line.end.x.steps(), 0);  // due north
  // The meridian's radius at 42.30045 degrees is a (1 - e2) / (1 - e2 sin2)^1.5 = 6,364,365 m; x 0.0009 degrees
  // = 99.97121 m.
  EXPECT_NEAR(line.end.y.metres().si(), 99.97121, 0.00001);
}

TEST(GeoJson, WrongCoordinatesAreRefused) {
  const auto with = [](const std::string& coordinates, const std::string& more) {
    return fault(collection(feature("", "x", "LineString", coordinates), more), {{"x", "wall"}}).code;
  };
  EXPECT_EQ(with("[[200, 0], [0, 0]]", ""), "geojson-degrees");
  EXPECT_EQ(with("[[0, 91], [0, 0]]", ""), "geojson-degrees");
  EXPECT_EQ(with("[[1e300, 0], [0, 0]]", R"("units": "m", )"), "geojson-range");
  EXPECT_EQ(with("[[1e999, 0], [0, 0]]", ""), "number-range");
  EXPECT_EQ(with("[[NaN, 0], [0, 0]]", ""), "json-syntax");
  EXPECT_EQ(with("[[\"1\", 0], [0, 0]]", ""), "json-type");
  EXPECT_EQ(with("[[1], [0, 0]]", ""), "geojson-position");
  EXPECT_EQ(with("[null]", ""), "json-type");
  EXPECT_EQ(with("7", ""), "json-type");
  EXPECT_EQ(fault(R"({"type": "Topology"})", {}).code, "geojson-type");
  EXPECT_EQ(fault(R"({"type": "FeatureCollection"})", {}).code, "field-missing");
  EXPECT_EQ(fault(collection("1"), {}).code, "json-type");
  EXPECT_EQ(fault(collection(feature("", "x", "GeometryCollection", "[]")), {{"x", "wall"}}).code, "geojson-geometry");
  EXPECT_EQ(fault(collection("", R"("crs": {"type": "name", "properties": {"name": "EPSG:2249"}}, )"), {}).code,
            "geojson-crs");
}

TEST(GeoJson, RealOutlines) {
  // Features and vertices as the list of the data has them (tests/data/SOURCES.md): pools 21, walls 72.
  for (const auto& [name, kind, count] :
       std::vector<std::tuple<std::string, std::string, std::size_t>>{{"pools", "pool", 21},
                                                                      {"walls", "wall", 72},
                                                                      {"plazas", "paved-area", 28},
                                                                      {"osm_walls", "wall", 50},
                                                                      {"site_05", "removal", 13}}) {
    const auto text = files::read_file(std::string(HOUSE_ROOT) + "/tests/data/" + name + ".geojson");
    ASSERT_TRUE(text) << name;
    const auto made = import(*text, {{"*", kind}});
    EXPECT_EQ(made.job.elements.size(), count) << name;
    EXPECT_FALSE(made.job.heading.notes.empty()) << "the attribution travels with the job";
    const auto back = files::read_job(files::write_job(made.job), name);
    ASSERT_TRUE(back) << problem::sentence(back.error());
    EXPECT_TRUE(plan::same(made.job, *back));
  }
}

}  // namespace
