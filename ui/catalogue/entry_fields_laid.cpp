// Fields of patterns and build-ups.
#include <algorithm>

#include "ui/catalogue/entry_making.h"
#include "ui/panels/length_field.h"
#include "ui/words/words.h"

namespace ui {

using catalogue::BuildUp;
using catalogue::CellSide;
using catalogue::Layer;
using catalogue::Pattern;

namespace {

QString shown_side(const CellSide& side, units::System system) {
  if (side.of == CellSide::Of::fixed) return shown_length(side.fixed, system);
  const QString letter = side.of == CellSide::Of::module_length ? QStringLiteral("L") : QStringLiteral("W");
  return side.parts == 1 ? letter : letter + QLatin1Char('/') + QString::number(side.parts);
}

// "L", "W/2" or a length. Empty: understood.
QString read_side(const QString& text, units::System system, CellSide& into) {
  const QString plain = text.trimmed().toUpper();
  const bool share = plain.startsWith(QLatin1Char('L')) || plain.startsWith(QLatin1Char('W'));
  if (share) {
    bool whole = plain.size() == 1;
    const int parts = whole ? 1 : plain.mid(1, 1) == QLatin1String("/") ? plain.mid(2).toInt(&whole) : 0;
    if (!whole || parts < 1 || parts > 1000)
      return Entries::tr("This takes L or W, a part of it such as L/2, or a length");
    into = {plain.startsWith(QLatin1Char('L')) ? CellSide::Of::module_length : CellSide::Of::module_width, parts, {}};
    return {};
  }
  const auto read = length_typing(system, Measure::part, false, true).read(text);
  const auto* length = read ? std::get_if<units::Length>(&*read) : nullptr;
  if (!length || *length <= units::Length())
    return Entries::tr("This takes L or W, a part of it such as L/2, or a length");
  into = {CellSide::Of::fixed, 1, *length};
  return {};
}

EntryField side_field(std::string id, const QString& label, CellSide Pattern::* member, units::System system) {
  EntryField field = entry_field<Pattern>(
      std::move(id), label, Editor::text,
      [=](const Pattern& pattern) -> Value { return shown_side(pattern.*member, system).toStdString(); },
      [=](Pattern& pattern, const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        return text ? read_side(QString::fromStdString(*text), system, pattern.*member) : QString();
      });
  field.look.fits = {"short"};
  return field;
}

QString shown_pieces(const Pattern& pattern) {
  QStringList lines;
  for (const catalogue::PatternPiece& piece : pattern.pieces)
    lines << QStringLiteral("%1 %2 %3 %4 %5")
                 .arg(QString::fromStdString(piece.size))
                 .arg(piece.x)
                 .arg(piece.y)
                 .arg(piece.w)
                 .arg(piece.h);
  return lines.join(QLatin1Char('\n'));
}

QString read_pieces(const QString& text, Pattern& into) {
  std::vector<catalogue::PatternPiece> pieces;
  int line = 0;
  for (const QString& row : text.split(QLatin1Char('\n'))) {
    ++line;
    const QStringList words = row.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (words.isEmpty()) continue;
    int numbers[4] = {};
    bool good = words.size() == 5;
    for (int i = 0; good && i < 4; ++i) numbers[i] = words[i + 1].toInt(&good);
    if (!good)
      return Entries::tr("Line %1: a piece is its size, its place and its extent in cells, such as unit 0 0 2 1")
          .arg(line);
    pieces.push_back({words[0].toStdString(), numbers[0], numbers[1], numbers[2], numbers[3]});
  }
  into.pieces = std::move(pieces);
  return {};
}

std::vector<Choice> role_words() {
  return same_words(
      {QT_TRANSLATE_NOOP("core", "unit"), QT_TRANSLATE_NOOP("core", "bedding"), QT_TRANSLATE_NOOP("core", "base"),
       QT_TRANSLATE_NOOP("core", "sub-base"), QT_TRANSLATE_NOOP("core", "fabric"), QT_TRANSLATE_NOOP("core", "mortar"),
       QT_TRANSLATE_NOOP("core", "slab"), QT_TRANSLATE_NOOP("core", "mesh"), QT_TRANSLATE_NOOP("core", "footing"),
       QT_TRANSLATE_NOOP("core", "collar"), QT_TRANSLATE_NOOP("core", "bar"), QT_TRANSLATE_NOOP("core", "backfill"),
       QT_TRANSLATE_NOOP("core", "stone")});
}

template <class Member>
EntryField of_layer(std::size_t i, const char* id, const QString& label, Member Layer::* member) {
  return made_of<BuildUp>("layer/" + std::to_string(i) + "/" + id, label, [i, member](auto& build_up) {
    return i < build_up.layers.size() ? &(build_up.layers[i].*member) : nullptr;
  });
}

std::vector<EntryField> layer_fields_of(std::size_t i) {
  EntryField thickness = of_layer(i, "thickness", Entries::tr("Thickness"), &Layer::thickness);
  EntryField past = of_layer(i, "past_edge", Entries::tr("Past a free edge"), &Layer::past_edge);
  past.look.never_below_0 = true;
  const std::string at = "layer/" + std::to_string(i) + "/";
  return {words(of_layer(i, "role", Entries::tr("It is"), &Layer::role), role_words()),
          blamed(of_items(of_layer(i, "item", Entries::tr("Of"), &Layer::item),
                          {"aggregate", "fabric", "concrete", "bonding", "reinforcement", "bar", "joint-sand",
                           "joint-chips", "paving-unit", "slab", "permeable-unit", "clay-unit", "kerb-unit", "pipe"}),
                 {"item-contents"}),
          std::move(thickness),
          std::move(past),
          of_layer(i, "lift", Entries::tr("Greatest lift"), &Layer::lift),
          long_text(of_layer(i, "source", Entries::tr("Source"), &Layer::source)),
          long_text(of_layer(i, "notes", Entries::tr("Notes"), &Layer::notes)),
          entry_action<BuildUp>(at + "up", Entries::tr("Move it up"),
                                [i](BuildUp& build_up) {
                                  if (i > 0 && i < build_up.layers.size())
                                    std::swap(build_up.layers[i - 1], build_up.layers[i]);
                                }),
          entry_action<BuildUp>(at + "out", Entries::tr("Take it out"), [i](BuildUp& build_up) {
            if (i < build_up.layers.size())
              build_up.layers.erase(build_up.layers.begin() + static_cast<std::ptrdiff_t>(i));
          })};
}

}  // namespace

std::vector<EntryField> pattern_fields(const Pattern&, const Around& around) {
  std::vector<EntryField> all = named_fields<Pattern>();
  EntryField pieces = entry_field<Pattern>(
      "pieces", Entries::tr("Pieces: size, x, y, along, across, in cells"), Editor::long_text,
      [](const Pattern& pattern) -> Value { return shown_pieces(pattern).toStdString(); },
      [](Pattern& pattern, const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        return text ? read_pieces(QString::fromStdString(*text), pattern) : QString();
      });
  add(all,
      {side_field("cell_x", Entries::tr("Cell along"), &Pattern::cell_x, around.system),
       side_field("cell_y", Entries::tr("Cell across"), &Pattern::cell_y, around.system),
       between(made_of("along", Entries::tr("Repeats after cells"), &Pattern::along), 1, 1000),
       between(made_of("across_x", Entries::tr("Next row: cells along"), &Pattern::across_x), -1000, 1000),
       between(made_of("across_y", Entries::tr("Next row: cells across"), &Pattern::across_y), 1, 1000),
       blamed(std::move(pieces), {"pattern-overlap", "pattern-gap", "pattern-vectors"}),
       between(made_of("direction", Entries::tr("Turned by"), &Pattern::direction), -180, 180),
       made_of("herringbone", Entries::tr("Herringbone: length is two widths and a joint"), &Pattern::herringbone)},
      Entries::tr("The repeat"));
  add(all,
      {made_of("fits", Entries::tr("Units that fit"), &Pattern::fits),
       long_text(made_of("advice", Entries::tr("Advice"), &Pattern::advice))},
      Entries::tr("Use"));
  return all;
}

std::vector<EntryField> build_up_fields(const BuildUp& build_up, const Around&) {
  std::vector<EntryField> all = named_fields<BuildUp>();
  add(all, {words(made_of("use", Entries::tr("Lies under"), &BuildUp::use),
                  same_words({QT_TRANSLATE_NOOP("core", "paving"), QT_TRANSLATE_NOOP("core", "wall-base"),
                              QT_TRANSLATE_NOOP("core", "steps"), QT_TRANSLATE_NOOP("core", "kerb"),
                              QT_TRANSLATE_NOOP("core", "pool"), QT_TRANSLATE_NOOP("core", "pipe")})),
            made_of("surface", Entries::tr("Surface"), &BuildUp::surface),
            made_of("water", Entries::tr("Where water goes"), &BuildUp::water),
            long_text(made_of("notes", Entries::tr("Notes"), &BuildUp::notes))});
  for (std::size_t i = 0; i < build_up.layers.size(); ++i)
    add(all, layer_fields_of(i), Entries::tr("Layer %1, from the top").arg(i + 1));
  add(all, {entry_action<BuildUp>("layer/add", Entries::tr("Add a layer"), [](BuildUp& of) {
        Layer layer;
        layer.role = "base";
        layer.thickness = units::Length::inches(4);
        of.layers.push_back(std::move(layer));
      })});
  return all;
}

}  // namespace ui
