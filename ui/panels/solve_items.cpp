#include "ui/panels/solve_items.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"

namespace ui {

using problem::Problem;
using problem::Severity;

namespace {

struct Texts {
  QString place, text, mend;
};

Texts texts(const Problem& said) {
  return {QString::fromStdString(said.place.element), sentence_of(said.text), sentence_of(said.mend)};
}

int height_of(const QFont& font, const QString& text, int width) {
  if (text.isEmpty()) return 0;
  return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10000), int(Qt::TextWordWrap), text).height();
}

}  // namespace

QString grave_word(Severity severity) {
  if (severity == Severity::problem) return SolveItems::tr("Problem");
  return severity == Severity::flag ? SolveItems::tr("To decide") : SolveItems::tr("To know");
}

QString grave_icon(Severity severity) {
  if (severity == Severity::problem) return QStringLiteral("solve");
  return severity == Severity::flag ? QStringLiteral("caution") : QString();
}

QColor grave_colour(Severity severity) {
  if (severity == Severity::problem) return theme().flag;
  return severity == Severity::flag ? theme().care : theme().ink2;
}

QString sentence_of(const std::string& text) {
  QString told = said(text);
  if (told.isEmpty()) return told;
  told[0] = told[0].toUpper();
  if (!told.endsWith(QLatin1Char('.'))) told += QLatin1Char('.');
  return told;
}

void SolveItems::show(std::vector<Problem> all, bool notices) {
  beginResetModel();
  all_ = std::move(all);
  shown_.clear();
  for (const Severity severity : {Severity::problem, Severity::flag, Severity::notice})
    for (const Problem& said : all_)
      if (said.severity == severity && (notices || severity != Severity::notice)) shown_.push_back(said);
  endResetModel();
}

int SolveItems::count(Severity severity) const {
  return static_cast<int>(std::ranges::count(all_, severity, &Problem::severity));
}

int SolveItems::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

QVariant SolveItems::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Problem& said = at(index.row());
  const Texts words = texts(said);
  if (role == Qt::DisplayRole) return words.text;
  if (role != Qt::AccessibleTextRole) return {};
  const QString place = words.place.isEmpty() ? QString() : words.place + QStringLiteral(". ");
  return grave_word(said.severity) + QStringLiteral(". ") + place + words.text + QLatin1Char(' ') + words.mend;
}

SolveDelegate::SolveDelegate(QListView& view) : view_(view) {}

QRect SolveDelegate::text_room(const QRect& row) const { return row.adjusted(px(44), px(28), -px(16), -px(8)); }

QSize SolveDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
  const Texts words = texts(static_cast<const SolveItems*>(index.model())->at(index.row()));
  const int width = view_.viewport()->width() - px(60);
  return {px(100), px(28) + height_of(ui::font(Type::text), words.text, width) +
                       height_of(ui::font(Type::note), words.mend, width) + px(10)};
}

void SolveDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const Problem& said = static_cast<const SolveItems*>(index.model())->at(index.row());
  const Texts words = texts(said);
  const QRect row = option.rect;
  painter->save();
  if (option.state & QStyle::State_MouseOver) painter->fillRect(row, theme().raised);
  painter->fillRect(QRect(row.left() + px(16), row.bottom(), row.width() - px(32), 1), theme().line);
  const QColor colour = grave_colour(said.severity);
  const QRectF sign(row.left() + px(16), row.top() + px(7), px(18), px(18));
  if (const QString icon = grave_icon(said.severity); !icon.isEmpty()) {
    paint_icon(*painter, icon, sign, colour);
  } else {
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(colour, 1.5));
    painter->drawEllipse(sign.adjusted(3, 3, -3, -3));
    painter->setRenderHint(QPainter::Antialiasing, false);
  }
  painter->setFont(ui::font(Type::note, true));
  painter->setPen(colour);
  QString head = grave_word(said.severity);
  if (!words.place.isEmpty()) head += QStringLiteral(" · ") + words.place;
  const QRect line(row.left() + px(44), row.top() + px(6), row.width() - px(60), px(20));
  painter->drawText(line, int(Qt::AlignLeft | Qt::AlignVCenter), head);
  if (!words.place.isEmpty() || said.place.at) {
    QFont link = ui::font(Type::note);
    link.setUnderline(true);
    painter->setFont(link);
    painter->setPen(theme().chalk);
    painter->drawText(line, int(Qt::AlignRight | Qt::AlignVCenter), SolveItems::tr("Go to it"));
  }
  QRect room = text_room(row);
  painter->setFont(ui::font(Type::text));
  painter->setPen(theme().ink);
  painter->drawText(room, int(Qt::TextWordWrap), words.text);
  room.setTop(room.top() + height_of(ui::font(Type::text), words.text, room.width()));
  painter->setFont(ui::font(Type::note));
  painter->setPen(theme().ink2);
  painter->drawText(room, int(Qt::TextWordWrap), words.mend);
  if ((option.state & QStyle::State_HasFocus) && view_.hasFocus()) {
    painter->setPen(QPen(theme().chalk, 2));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(row.adjusted(1, 1, -1, -1));
  }
  painter->restore();
}

SolveView::SolveView(QWidget* parent) : QListView(parent) {
  setObjectName(QStringLiteral("solve_list"));
  auto* delegate = new SolveDelegate(*this);
  delegate->setParent(this);
  setItemDelegate(delegate);
  setFrameShape(QFrame::NoFrame);
  setSelectionMode(QAbstractItemView::NoSelection);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setResizeMode(QListView::Adjust);
  setMouseTracking(true);
  connect(this, &QListView::clicked, this, [this](const QModelIndex& index) { emit wanted(index.row()); });
}

void SolveView::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space;
  if (enter && currentIndex().isValid()) {
    emit wanted(currentIndex().row());
    return;
  }
  QListView::keyPressEvent(event);
}

void SolveView::paintEvent(QPaintEvent* event) {
  QListView::paintEvent(event);
  if (model() && model()->rowCount() > 0) return;
  QPainter painter(viewport());
  painter.setFont(ui::font(Type::text));
  painter.setPen(theme().ink2);
  painter.drawText(viewport()->rect().adjusted(px(16), px(8), -px(16), -px(8)),
                   int(Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap), SolveItems::tr("Nothing is to solve."));
}

// Text wraps by the width, so the heights are asked again.
void SolveView::resizeEvent(QResizeEvent* event) {
  QListView::resizeEvent(event);
  scheduleDelayedItemsLayout();
}

}  // namespace ui
