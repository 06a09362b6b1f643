#include "ui/catalogue/entry_picture.h"

#include <QPainter>
#include <algorithm>

#include "sheets/catalogue_figures.h"
#include "ui/catalogue/entry_making.h"
#include "ui/desk/lay_pattern.h"
#include "ui/look/theme.h"
#include "ui/paint/section_painter.h"
#include "ui/panels/length_field.h"
#include "ui/words/words.h"

namespace ui {

namespace {

constexpr double pattern_across = 1.2, pattern_up = 0.6;  // metres

// The module of the unit that the pattern's first size can be laid with; any usual one where the catalogue has none.
sheets::Module module_of(const catalogue::Catalogue& catalogue, const catalogue::Pattern& pattern) {
  const auto units = units_for(catalogue, pattern, {});
  const auto sizes = catalogue::sizes(pattern);
  if (!units || sizes.empty() || !units->contains(sizes.front())) return {};
  const catalogue::Item* unit = catalogue.item(units->at(sizes.front()));
  if (!unit || !unit->length || !unit->width) return {};
  const units::Length joint = unit->joint.value_or(units::Length());
  return {*unit->length + joint, *unit->width + joint};
}

}  // namespace

EntryPicture::EntryPicture(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("catalogue-picture"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  hide();
}

void EntryPicture::show_nothing() {
  figure_.reset();
  labels_.clear();
  hide();
}

void EntryPicture::show_entry(const catalogue::Entry& entry, const catalogue::Catalogue& catalogue,
                              units::System system) {
  show_nothing();
  QStringList told;
  if (const auto* pattern = std::get_if<catalogue::Pattern>(&entry)) {
    auto figure = sheets::pattern_figure(*pattern, module_of(catalogue, *pattern), pattern_across, pattern_up);
    if (!figure) return;
    figure_ = std::make_unique<FigurePainter>(std::make_shared<const sheets::Figure>(std::move(*figure)));
    setAccessibleName(Entries::tr("The pattern, drawn"));
  } else if (const auto* build_up = std::get_if<catalogue::BuildUp>(&entry)) {
    auto section = sheets::build_up_figure(catalogue, *build_up, system);
    if (!section) return;
    for (const sheets::Leader& leader : section->leaders) {
      QString words = said(leader.label);
      if (!leader.value.empty()) words += QStringLiteral("  ") + QString::fromStdString(leader.value);
      words.replace(QLatin1Char('\''), QChar(0x2032)).replace(QLatin1Char('"'), QChar(0x2033));
      labels_.push_back({leader.at, words});
      told << words;
    }
    figure_ = std::make_unique<FigurePainter>(std::make_shared<const sheets::Figure>(std::move(section->figure)));
    setAccessibleName(Entries::tr("The layers, drawn"));
  } else {
    return;
  }
  setAccessibleDescription(told.join(QStringLiteral("; ")));
  updateGeometry();
  show();
  update();
}

int EntryPicture::label_height() const { return QFontMetrics(ui::font(Type::note)).height() + px(6); }

QSize EntryPicture::sizeHint() const {
  return {px(320), std::max(px(160), static_cast<int>(labels_.size()) * label_height() + px(12))};
}

void EntryPicture::paintEvent(QPaintEvent*) {
  if (!figure_) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRect all = rect().adjusted(0, 0, -1, -1);
  const QRect room = labels_.empty() ? all : QRect(all.topLeft(), QSize(all.width() * 2 / 5, all.height()));
  painter.fillRect(room, theme().paper);
  const sheets::Figure& figure = figure_->figure();
  Sight sight;
  const double wide = figure.high.x - figure.low.x, tall = figure.high.y - figure.low.y;
  // A pattern goes on past its room; a section stands whole in it.
  const double across = room.width() / wide, up = room.height() / tall;
  sight.scale = labels_.empty() ? std::max(across, up) : std::min(across, up) * 0.94;
  sight.origin = QRectF(room).center() - QPointF((figure.low.x + figure.high.x) / 2 * sight.scale,
                                                 -(figure.low.y + figure.high.y) / 2 * sight.scale);
  painter.save();
  painter.setClipRect(room);
  figure_->paint(painter, sight, room);
  painter.restore();
  paint_labels(painter, sight, room);
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setPen(QPen(theme().rule, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(room);
}

// The words stand beside the drawing, evenly, each with a line to its layer.
void EntryPicture::paint_labels(QPainter& painter, const Sight& sight, const QRect& room) const {
  painter.setFont(ui::font(Type::note));
  const QFontMetrics metrics(ui::font(Type::note));
  const int count = static_cast<int>(labels_.size());
  const int left = room.right() + px(22);
  for (int i = 0; i < count; ++i) {
    const Label& label = labels_[static_cast<std::size_t>(i)];
    const int middle = room.top() + room.height() * (2 * i + 1) / (2 * count);
    const QPointF end = sight.to_px(label.at);
    painter.setPen(QPen(theme().ink2, 1));
    painter.drawPolyline(QPolygonF{end, QPointF(room.right() + px(8), middle), QPointF(left - px(4), middle)});
    painter.setBrush(theme().ink2);
    painter.drawEllipse(end, 2, 2);
    painter.setPen(theme().ink);
    const QRect line(left, middle - label_height() / 2, width() - left, label_height());
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(label.words, Qt::ElideMiddle, line.width()));
  }
}

}  // namespace ui
