#include "ui/panels/section_form.h"

#include <QLabel>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/look/theme.h"
#include "ui/paint/section_painter.h"
#include "ui/panels/length_field.h"
#include "ui/words/words.h"

namespace ui {

namespace {

const Field* field_of(const std::vector<Field>& fields, const std::string& id) {
  const auto found = std::ranges::find(fields, id, &Field::id);
  return id.empty() || found == fields.end() ? nullptr : &*found;
}

QString with_primes(QString text) {
  return text.replace(QLatin1Char('\''), QChar(0x2032)).replace(QLatin1Char('"'), QChar(0x2033));
}

int side_of(int width) { return std::min(px(164), width * 2 / 5); }
int left_of(int width) { return side_of(width) + px(25); }
int wide_of_value() { return px(72); }
// In a narrow panel the value stands under its words.
bool stacked(int width) { return width - left_of(width) - wide_of_value() < px(96); }

}  // namespace

SectionForm::SectionForm(Desk& desk, const Source& book, QWidget* parent) : QWidget(parent), desk_(desk), book_(book) {
  setObjectName("section");
  setAccessibleName(Fields::tr("Section, to scale"));
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

SectionForm::~SectionForm() = default;

FieldEditor* SectionForm::editor(const std::string& id) const {
  for (const Row& row : rows_)
    if (row.editor && row.editor->field().id == id) return row.editor;
  return nullptr;
}

bool SectionForm::same_rows(const sheets::Section& section, const std::vector<Field>& fields) const {
  const auto same = [&fields](const Row& row, const sheets::Leader& leader) {
    const Field* field = field_of(fields, leader.field);
    return row.leader.label == leader.label && row.leader.field == leader.field && row.leader.later == leader.later &&
           (row.editor != nullptr) == (field != nullptr);
  };
  return std::ranges::equal(rows_, section.leaders, same);
}

void SectionForm::show_section(std::optional<sheets::Section> section, const std::vector<Field>& fields) {
  const bool same = section && same_rows(*section, fields);
  // What is being typed is taken first: it may bring another section, and that one comes back here.
  for (const Row& row : std::vector(rows_))
    if (!same && row.editor && row.editor->input()->hasFocus()) row.editor->input()->clearFocus();
  section_ = std::move(section);
  setVisible(section_.has_value());
  figure_ =
      section_ ? std::make_unique<FigurePainter>(std::make_shared<const sheets::Figure>(section_->figure)) : nullptr;
  if (!same) make_rows(fields);
  for (std::size_t i = 0; section_ && i < rows_.size(); ++i) {
    Row& row = rows_[i];
    row.leader = section_->leaders[i];
    if (row.editor)
      row.editor->show_field(*field_of(fields, row.leader.field));
    else if (auto* told = qobject_cast<QLabel*>(row.value))
      told->setText(row.leader.later ? Fields::tr("later") : with_primes(said(row.leader.value)));
  }
  place();
  updateGeometry();
  update();
}

void SectionForm::make_rows(const std::vector<Field>& fields) {
  const std::vector<Row> gone = std::exchange(rows_, {});
  for (const Row& row : gone) {
    row.words->hide();
    row.value->hide();
    row.words->deleteLater();
    row.value->deleteLater();
  }
  taken_.clear();
  if (!section_) return;
  for (const sheets::Leader& leader : section_->leaders) {
    Row row;
    row.leader = leader;
    row.words = new QLabel(said(leader.label), this);
    row.words->setWordWrap(true);
    row.words->setFont(ui::font(Type::note));
    const Field* field = leader.later ? nullptr : field_of(fields, leader.field);
    if (field && !taken_.contains(field->id)) {
      row.editor = new FieldEditor(desk_, book_, *field, this);
      row.value = row.editor;
      row.words->setBuddy(row.editor->input());
      taken_.insert(field->id);
    } else {
      auto* told = new QLabel(this);
      told->setFont(ui::font(Type::note));
      told->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
      row.value = told;
    }
    row.words->show();
    row.value->show();
    rows_.push_back(row);
  }
}

QRect SectionForm::picture(int width) const { return {0, 0, side_of(width), px(156)}; }

std::vector<QRect> SectionForm::rows(int width) const {
  const int left = left_of(width);
  std::vector<QRect> made;
  int y = 0;
  for (const Row& row : rows_) {
    const int words = width - left - (stacked(width) ? 0 : wide_of_value() + px(6));
    const int text = row.words->heightForWidth(std::max(words, px(40)));
    const bool told = !row.editor && static_cast<const QLabel*>(row.value)->text().isEmpty();
    const int high = stacked(width) ? text + (told ? 0 : px(30)) + px(4) : std::max(px(31), text + px(6));
    made.emplace_back(left, y, width - left, high);
    y += high;
  }
  return made;
}

int SectionForm::heightForWidth(int width) const {
  const std::vector<QRect> all = rows(width);
  return std::max(picture(width).height(), all.empty() ? 0 : all.back().bottom() + 1) + 1;
}

QSize SectionForm::sizeHint() const { return {px(384), heightForWidth(std::max(width(), px(328)))}; }

void SectionForm::place() {
  const std::vector<QRect> all = rows(width());
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    rows_[i].room = all[i];
    const QRect& room = all[i];
    const int wide = wide_of_value();
    if (auto* told = qobject_cast<QLabel*>(rows_[i].value))
      told->setAlignment((stacked(width()) ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    if (stacked(width())) {
      const int text = rows_[i].words->heightForWidth(room.width());
      rows_[i].words->setGeometry(room.left(), room.top(), room.width(), text);
      rows_[i].value->setGeometry(room.left(), room.top() + text, rows_[i].editor ? wide : room.width(), px(28));
      continue;
    }
    rows_[i].value->setGeometry(room.right() - wide + 1, room.center().y() - px(14), wide, px(28));
    rows_[i].words->setGeometry(room.left(), room.top(), room.width() - wide - px(6), room.height());
  }
  setMinimumHeight(section_ ? heightForWidth(width()) : 0);
}

void SectionForm::resizeEvent(QResizeEvent*) { place(); }

void SectionForm::paintEvent(QPaintEvent*) {
  if (!section_) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QString bar = shown_length(units::Length::nearest(units::Metres(section_->scale_bar)), desk_.units());
  paint_leaders(painter, paint_section(painter, *section_, *figure_, picture(width()), bar));
}

// A dot where it points, a line to the edge of its row, the last bit level.
void SectionForm::paint_leaders(QPainter& painter, const std::vector<QPointF>& points) const {
  const QRectF room = picture(width());
  for (std::size_t i = 0; i < rows_.size() && i < points.size(); ++i) {
    const Row& row = rows_[i];
    const QPointF from(std::clamp(points[i].x(), room.left() + 4, room.right() - 4),
                       std::clamp(points[i].y(), room.top() + 4, room.bottom() - 4));
    const double y = (stacked(width()) ? row.words->geometry() : row.room).center().y() + 0.5;
    const QPointF to(row.room.left() - px(5), y);
    const QPointF knee(room.right() + px(9), y);
    painter.setPen(QPen(theme().ink2, 1, row.leader.later ? Qt::DashLine : Qt::SolidLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF({from, knee, to}));
    painter.setPen(QPen(theme().paper, 1));
    painter.setBrush(theme().ink);
    painter.drawEllipse(from, 2.5, 2.5);
  }
}

}  // namespace ui
