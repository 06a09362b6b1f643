#include <algorithm>
#include <utility>
#include <vector>

#include "files/drawing_dxf.h"
#include "files/dxf_put.h"

// Every drawing of release 2000 has these tables, even where they hold one entry that nobody looks at; a strict reader
// misses each of them.
namespace files::dxf_frame {

namespace {

using Handle = DxfPut::Handle;

enum Table : Handle {
  viewports = 1,
  line_types,
  layers_table,
  styles,
  views,
  ucs,
  applications,
  dimension_styles,
  records,
  dictionary,
  groups
};
enum Entry : Handle {
  viewport = 0x10,
  by_block,
  by_layer,
  continuous,
  style,
  acad,
  groundcourse,
  dimension_style,
  model_begin = 0x20,
  model_end,
  paper_begin,
  paper_end,
  paper_space
};

void begin_table(DxfPut& put, std::string_view name, Handle handle, std::size_t entries) {
  put.text(0, "TABLE");
  put.text(2, name);
  put.handle(5, handle);
  put.handle(330, 0);
  put.text(100, "AcDbSymbolTable");
  put.whole(70, static_cast<std::int64_t>(entries));
}
void end_table(DxfPut& put) { put.text(0, "ENDTAB"); }

void header(DxfPut& put, const Facts& facts) {
  const auto variable = [&put](std::string_view name) { put.text(9, name); };
  put.section("HEADER");
  variable("$ACADVER");
  put.text(1, "AC1015");
  variable("$DWGCODEPAGE");
  put.text(3, "ANSI_1252");
  variable("$INSUNITS");
  put.whole(70, facts.metric ? 6 : 2);
  variable("$MEASUREMENT");
  put.whole(70, facts.metric ? 1 : 0);
  variable("$LUNITS");
  put.whole(70, 2);
  variable("$EXTMIN");
  put.at(facts.low_x, facts.low_y);
  variable("$EXTMAX");
  put.at(facts.high_x, facts.high_y);
  variable("$HANDSEED");
  put.handle(5, facts.next);
  put.end_section();
  put.section("CLASSES");
  put.end_section();
}

// The window through which the drawing is first seen: all of it.
void viewport_table(DxfPut& put, const Facts& facts) {
  const double height = std::max(facts.high_y - facts.low_y, 1.0), width = std::max(facts.high_x - facts.low_x, 1.0);
  begin_table(put, "VPORT", viewports, 1);
  put.object("VPORT", viewport, viewports, {"AcDbSymbolTableRecord", "AcDbViewportTableRecord"});
  put.text(2, "*ACTIVE");
  put.whole(70, 0);
  const auto pair = [&put](int code, double x, double y) {
    put.number(code, x);
    put.number(code + 10, y);
  };
  pair(10, 0, 0);
  pair(11, 1, 1);
  pair(12, (facts.low_x + facts.high_x) / 2, (facts.low_y + facts.high_y) / 2);
  put.number(16, 0);
  put.number(26, 0);
  put.number(36, 1);
  put.number(40, 1.1 * std::max(height, width / 1.6));
  put.number(41, 1.6);
  end_table(put);
}

void line_type_table(DxfPut& put) {
  begin_table(put, "LTYPE", line_types, 3);
  const std::pair<Handle, const char*> all[] = {
      {by_block, "ByBlock"}, {by_layer, "ByLayer"}, {continuous, "Continuous"}};
  for (const auto& [handle, name] : all) {
    put.object("LTYPE", handle, line_types, {"AcDbSymbolTableRecord", "AcDbLinetypeTableRecord"});
    put.text(2, name);
    put.whole(70, 0);
    put.text(3, "");
    put.whole(72, 65);
    put.whole(73, 0);
    put.number(40, 0);
  }
  end_table(put);
}

void layer_table(DxfPut& put, const std::vector<Layer>& layers) {
  begin_table(put, "LAYER", layers_table, layers.size());
  for (const Layer& layer : layers) {
    put.object("LAYER", layer.handle, layers_table, {"AcDbSymbolTableRecord", "AcDbLayerTableRecord"});
    put.text(2, layer.name);
    put.whole(70, 0);
    put.whole(62, layer.colour);
    put.text(6, "Continuous");
  }
  end_table(put);
}

void small_tables(DxfPut& put) {
  begin_table(put, "STYLE", styles, 1);
  put.object("STYLE", style, styles, {"AcDbSymbolTableRecord", "AcDbTextStyleTableRecord"});
  put.text(2, "Standard");
  put.whole(70, 0);
  put.number(40, 0);
  put.number(41, 1);
  put.number(50, 0);
  put.whole(71, 0);
  put.number(42, 1);
  put.text(3, "txt");
  put.text(4, "");
  end_table(put);
  begin_table(put, "VIEW", views, 0);
  end_table(put);
  begin_table(put, "UCS", ucs, 0);
  end_table(put);
  begin_table(put, "APPID", applications, 2);
  const std::pair<Handle, const char*> all[] = {{acad, "ACAD"}, {groundcourse, dxf_application}};
  for (const auto& [handle, name] : all) {
    put.object("APPID", handle, applications, {"AcDbSymbolTableRecord", "AcDbRegAppTableRecord"});
    put.text(2, name);
    put.whole(70, 0);
  }
  end_table(put);
  begin_table(put, "DIMSTYLE", dimension_styles, 1);
  put.text(100, "AcDbDimStyleTable");
  put.object("DIMSTYLE", dimension_style, dimension_styles, {"AcDbSymbolTableRecord", "AcDbDimStyleTableRecord"});
  put.text(2, "Standard");
  put.whole(70, 0);
  end_table(put);
  begin_table(put, "BLOCK_RECORD", records, 2);
  const std::pair<Handle, const char*> spaces[] = {{model_space, "*Model_Space"}, {paper_space, "*Paper_Space"}};
  for (const auto& [handle, name] : spaces) {
    put.object("BLOCK_RECORD", handle, records, {"AcDbSymbolTableRecord", "AcDbBlockTableRecord"});
    put.text(2, name);
  }
  end_table(put);
}

void blocks(DxfPut& put) {
  struct Space {
    Handle record, begin, end;
    const char* name;
  };
  const Space spaces[] = {{model_space, model_begin, model_end, "*Model_Space"},
                          {paper_space, paper_begin, paper_end, "*Paper_Space"}};
  put.section("BLOCKS");
  for (const Space& space : spaces) {
    put.object("BLOCK", space.begin, space.record, {"AcDbEntity"});
    if (space.record == paper_space) put.whole(67, 1);
    put.text(8, "0");
    put.text(100, "AcDbBlockBegin");
    put.text(2, space.name);
    put.whole(70, 0);
    put.at(0, 0);
    put.text(3, space.name);
    put.text(1, "");
    put.object("ENDBLK", space.end, space.record, {"AcDbEntity"});
    if (space.record == paper_space) put.whole(67, 1);
    put.text(8, "0");
    put.text(100, "AcDbBlockEnd");
  }
  put.end_section();
}

}  // namespace

std::string before_entities(const Facts& facts, const std::vector<Layer>& layers) {
  DxfPut put;
  header(put, facts);
  put.section("TABLES");
  viewport_table(put, facts);
  line_type_table(put);
  layer_table(put, layers);
  small_tables(put);
  put.end_section();
  blocks(put);
  return std::move(put.made);
}

std::string after_entities() {
  DxfPut put;
  put.section("OBJECTS");
  put.object("DICTIONARY", dictionary, 0, {"AcDbDictionary"});
  put.whole(281, 1);
  put.text(3, "ACAD_GROUP");
  put.handle(350, groups);
  put.object("DICTIONARY", groups, dictionary, {"AcDbDictionary"});
  put.whole(281, 1);
  put.end_section();
  put.text(0, "EOF");
  return std::move(put.made);
}

}  // namespace files::dxf_frame
