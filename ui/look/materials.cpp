#include "ui/look/theme.h"

namespace ui {

namespace {

using sheets::Material;

struct Row {
  Material material;
  const char* light[4];  // low, high, line, cut
  const char* dark[4];
};

// In the order of sheets::Material. Cut pieces of other materials than paving are a little lighter than
// the lightest; a block's in the dark are as light as its line lets them be.
const Row rows[] = {
    {Material::none, {"#FBFBF8", "#FBFBF8", "#5C6661", "#FBFBF8"}, {"#151B1E", "#151B1E", "#97A39F", "#151B1E"}},
    {Material::paving, {"#C5B39B", "#DBCCB7", "#695D4C", "#EADFCE"}, {"#6F6252", "#857766", "#171411", "#8F806D"}},
    {Material::border, {"#6B777F", "#828E95", "#252C30", "#929DA4"}, {"#5A666D", "#6A777E", "#10151A", "#78858C"}},
    {Material::walk, {"#B3B8B5", "#CBCECB", "#5C615F", "#D9DCD9"}, {"#666D6B", "#7A807E", "#14191A", "#878D8B"}},
    {Material::coping, {"#E7DFCD", "#F4EEE2", "#837860", "#FAF6EE"}, {"#9B917D", "#B2A893", "#332E24", "#BFB6A2"}},
    {Material::block, {"#B8B2A8", "#CCC8BF", "#605B53", "#D7D3CB"}, {"#625F59", "#77736C", "#DAD5CA", "#77736C"}},
    {Material::cap, {"#9D988F", "#B4AFA7", "#4E4A44", "#C1BDB6"}, {"#807B73", "#969188", "#23211E", "#A29D94"}},
    {Material::kerb, {"#BFBCB4", "#CFCCC4", "#4A4742", "#D9D6CF"}, {"#716E68", "#7D7A74", "#1B1D1D", "#8A8781"}},
    {Material::concrete, {"#DEDFDB", "#DEDFDB", "#71776F", "#DEDFDB"}, {"#3B4241", "#3B4241", "#A3ABA7", "#3B4241"}},
    {Material::mortar, {"#DEDFDB", "#DEDFDB", "#71776F", "#DEDFDB"}, {"#3B4241", "#3B4241", "#A3ABA7", "#3B4241"}},
    {Material::dense_base, {"#E4DED2", "#E4DED2", "#7B7261", "#E4DED2"}, {"#3A362F", "#3A362F", "#B0A58F", "#3A362F"}},
    {Material::open_stone, {"#ECE8E0", "#ECE8E0", "#6C675F", "#ECE8E0"}, {"#33322E", "#33322E", "#B5AFA2", "#33322E"}},
    {Material::sand, {"#F0E3C3", "#F0E3C3", "#8A7443", "#F0E3C3"}, {"#4A4029", "#4A4029", "#CDB77F", "#4A4029"}},
    {Material::soil, {"#E3D8C6", "#E3D8C6", "#7A6A52", "#E3D8C6"}, {"#2C261F", "#2C261F", "#A08C6E", "#2C261F"}},
    {Material::made_up_ground,
     {"#E3D8C6", "#E3D8C6", "#7A6A52", "#E3D8C6"},
     {"#2C261F", "#2C261F", "#A08C6E", "#2C261F"}},
    {Material::geotextile, {"#FBFBF8", "#FBFBF8", "#2E3A36", "#FBFBF8"}, {"#151B1E", "#151B1E", "#D5DEDA", "#151B1E"}},
    {Material::pipe, {"#FBFBF8", "#FBFBF8", "#2F6F73", "#FBFBF8"}, {"#151B1E", "#151B1E", "#6FC1C2", "#151B1E"}},
    {Material::water, {"#CFE5EE", "#CFE5EE", "#52849B", "#CFE5EE"}, {"#1E4152", "#1E4152", "#6FA6BF", "#1E4152"}},
    {Material::building, {"#E9EAE7", "#E9EAE7", "#6D7570", "#E9EAE7"}, {"#242B2D", "#242B2D", "#8D9895", "#242B2D"}},
    {Material::planting, {"#E1EBDA", "#E1EBDA", "#5F7F55", "#E1EBDA"}, {"#1D2A1D", "#1D2A1D", "#7E9F72", "#1D2A1D"}},
    {Material::lawn, {"#FBFBF8", "#FBFBF8", "#7C9A6C", "#FBFBF8"}, {"#151B1E", "#151B1E", "#5E7A55", "#151B1E"}},
    {Material::joint, {"#695D4C", "#695D4C", "#695D4C", "#695D4C"}, {"#171411", "#171411", "#171411", "#171411"}},
};

std::vector<MaterialLook> looks(bool dark) {
  std::vector<MaterialLook> made;
  for (const Row& row : rows) {
    const char* const(&words)[4] = dark ? row.dark : row.light;
    made.push_back({QColor(words[0]), QColor(words[1]), QColor(words[2]), QColor(words[3])});
  }
  return made;
}

// On black and white paper a material is its hatch and its edge; what lies beside units of the same hatch has a grey
// ground, light enough for a copier.
std::vector<MaterialLook> printed_looks() {
  std::vector<MaterialLook> made;
  for (const Row& row : rows) {
    const bool grey = row.material == Material::border || row.material == Material::cap;
    const bool black = row.material == Material::joint;
    const QColor ground = black ? QColor(Qt::black) : grey ? QColor("#DADADA") : QColor(Qt::white);
    made.push_back({ground, ground, QColor(Qt::black), black ? ground : QColor(Qt::white)});
  }
  return made;
}

}  // namespace

const MaterialLook& look(Material material) {
  static const std::vector<MaterialLook> light = looks(false);
  static const std::vector<MaterialLook> dark = looks(true);
  static const std::vector<MaterialLook> printed = printed_looks();
  if (theme().on_paper && !theme().in_colour) return printed.at(static_cast<std::size_t>(material));
  return (theme().dark ? dark : light).at(static_cast<std::size_t>(material));
}

}  // namespace ui
