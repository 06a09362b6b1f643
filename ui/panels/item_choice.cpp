#include "ui/panels/item_choice.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QScreen>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include "ui/look/plain_tip.h"
#include "ui/look/theme.h"

namespace ui {

namespace {

constexpr int id_role = Qt::UserRole;
constexpr int price_role = Qt::UserRole + 1;
constexpr int heading_role = Qt::UserRole + 2;

// Name at the left, price at the right; a heading in small letters.
class OfferDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override { return {px(240), px(26)}; }
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Theme& now = theme();
    const bool heading = index.data(heading_role).toBool();
    const bool in_hand = option.state.testFlag(QStyle::State_Selected);
    if (in_hand) painter->fillRect(option.rect, now.chalk_wash);
    if (in_hand) painter->fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())), now.chalk);
    QRect room = option.rect.adjusted(px(10), 0, -px(10), 0);
    painter->setFont(ui::font(heading ? Type::small : Type::text));
    painter->setPen(heading ? now.ink3 : now.ink);
    const QString price = index.data(price_role).toString();
    if (!price.isEmpty()) {
      painter->setFont(ui::font(Type::note));
      painter->setPen(now.ink2);
      painter->drawText(room, Qt::AlignRight | Qt::AlignVCenter, price);
      room.setRight(room.right() - painter->fontMetrics().horizontalAdvance(price) - px(8));
      painter->setFont(ui::font(Type::text));
      painter->setPen(now.ink);
    }
    const QString name = index.data(Qt::DisplayRole).toString();
    painter->drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(name, Qt::ElideRight, room.width()));
  }
};

}  // namespace

OfferList::OfferList(std::vector<Offer> offers, const catalogue::Id& now, bool may_be_empty, QWidget* parent)
    : QFrame(parent, Qt::Popup), offers_(std::move(offers)), may_be_empty_(may_be_empty) {
  setObjectName("offers");
  setAttribute(Qt::WA_DeleteOnClose);
  setFrameShape(QFrame::NoFrame);
  setStyleSheet(QString("QFrame#offers { background: %1; border: 1px solid %2; }")
                    .arg(theme().raised.name(), theme().rule.name()));
  search_ = new QLineEdit(this);
  search_->setObjectName("offers/search");
  search_->setAccessibleName(Fields::tr("Search in the list"));
  search_->setPlaceholderText(Fields::tr("Type to search"));
  search_->setFont(ui::font(Type::text));
  search_->installEventFilter(this);
  list_ = new QListWidget(this);
  list_->setObjectName("offers/list");
  list_->setAccessibleName(Fields::tr("What can be chosen"));
  list_->setItemDelegate(new OfferDelegate(list_));
  list_->setFrameShape(QFrame::NoFrame);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setFocusPolicy(Qt::NoFocus);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(6), px(6), px(6), px(6));
  rows->setSpacing(px(6));
  rows->addWidget(search_);
  rows->addWidget(list_);
  fill(now);
  connect(search_, &QLineEdit::textChanged, this, &OfferList::narrow);
  connect(list_, &QListWidget::itemClicked, this, [this] { pick(); });
  search_->setFocus();
}

void OfferList::add_heading(const QString& words) {
  auto* item = new QListWidgetItem(words, list_);
  item->setFlags(Qt::NoItemFlags);
  item->setData(heading_role, true);
}

void OfferList::add_offer(const Offer& offer, bool now) {
  auto* item = new QListWidgetItem(offer.name, list_);
  item->setData(id_role, QString::fromStdString(offer.id));
  item->setData(price_role, offer.price);
  item->setData(Qt::AccessibleTextRole, offer.price.isEmpty() ? offer.name : offer.name + ", " + offer.price);
  item->setToolTip(plain_tip(offer.name));
  if (now) list_->setCurrentItem(item);
}

void OfferList::fill(const catalogue::Id& now) {
  if (may_be_empty_) add_offer({{}, Fields::tr("None"), {}, false}, now.empty());
  bool own = false;
  bool book = false;
  for (const Offer& offer : offers_) {
    if (!offer.from_book && !own) add_heading(Fields::tr("In this job"));
    if (offer.from_book && !book) add_heading(Fields::tr("From the book"));
    (offer.from_book ? book : own) = true;
    add_offer(offer, offer.id == now && !now.empty());
  }
}

// Every word must be in the name, in any order.
void OfferList::narrow(const QString& words) {
  const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (int i = 0; i < list_->count(); ++i) {
    QListWidgetItem* item = list_->item(i);
    const bool heading = item->data(heading_role).toBool();
    bool shown = wanted.isEmpty() || !heading;
    for (const QString& word : wanted) shown = shown && item->text().contains(word, Qt::CaseInsensitive);
    item->setHidden(!shown);
  }
  const QListWidgetItem* now = list_->currentItem();
  if (!now || now->isHidden()) {
    list_->setCurrentItem(nullptr);
    move(1);
  }
}

void OfferList::move(int rows) {
  const int step = rows < 0 ? -1 : 1;
  int row = list_->currentRow();
  for (int left = std::abs(rows); left > 0; --left) {
    int next = row + step;
    while (next >= 0 && next < list_->count() &&
           (list_->item(next)->isHidden() || list_->item(next)->data(heading_role).toBool()))
      next += step;
    if (next < 0 || next >= list_->count()) break;
    row = next;
  }
  if (row >= 0) list_->setCurrentRow(row);
}

void OfferList::pick() {
  const QListWidgetItem* item = list_->currentItem();
  if (!item || item->isHidden() || item->data(heading_role).toBool()) return;
  emit picked(item->data(id_role).toString());
  close();
}

bool OfferList::eventFilter(QObject* watched, QEvent* event) {
  if (watched != search_ || event->type() != QEvent::KeyPress) return QFrame::eventFilter(watched, event);
  switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Down: return move(1), true;
    case Qt::Key_Up: return move(-1), true;
    case Qt::Key_PageDown: return move(8), true;
    case Qt::Key_PageUp: return move(-8), true;
    case Qt::Key_Return:
    case Qt::Key_Enter: return pick(), true;
    case Qt::Key_Escape: return close(), true;
    default: return false;
  }
}

ItemChoice::ItemChoice(QWidget* parent) : QPushButton(parent) {
  setFont(ui::font(Type::text));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  connect(this, &QPushButton::clicked, this, [this] { open(); });
}

void ItemChoice::show_choice(const Offer& now, bool may_be_empty, std::function<std::vector<Offer>()> offers) {
  now_ = now;
  may_be_empty_ = may_be_empty;
  offers_ = std::move(offers);
  setToolTip(plain_tip(now_.price.isEmpty() ? now_.name : now_.name + ", " + now_.price));
  setAccessibleDescription(toolTip());
  update();
}

OfferList* ItemChoice::open() {
  auto* list = new OfferList(offers_ ? offers_() : std::vector<Offer>{}, now_.id, may_be_empty_, this);
  connect(list, &OfferList::picked, this, [this](const QString& id) {
    if (id.toStdString() != now_.id) emit given(id);
  });
  const int rows = std::min(list->list()->count(), 12);
  const QSize size(std::max(width(), px(320)), px(26) * std::max(rows, 3) + px(58));
  QPoint at = mapToGlobal(QPoint(width() - size.width(), height()));
  if (const QScreen* seen = screen()) {
    const QRect room = seen->availableGeometry();
    at.setX(std::clamp(at.x(), room.left(), std::max(room.left(), room.right() - size.width())));
    if (at.y() + size.height() > room.bottom())
      at.setY(std::max(room.top(), mapToGlobal(QPoint(0, 0)).y() - size.height()));
  }
  list->setGeometry(QRect(at, size));
  list->show();
  return list;
}

QSize ItemChoice::sizeHint() const { return {px(200), px(28)}; }
QSize ItemChoice::minimumSizeHint() const { return {px(96), px(28)}; }

void ItemChoice::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Down || event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
    open();
  else
    QPushButton::keyPressEvent(event);
}

void ItemChoice::paintEvent(QPaintEvent*) {
  const Theme& now = theme();
  QPainter painter(this);
  const QRect room = rect().adjusted(0, 0, -1, -1);
  painter.setPen(QPen(hasFocus() ? now.chalk : now.rule, hasFocus() ? 2 : 1));
  painter.setBrush(now.raised);
  painter.drawRoundedRect(hasFocus() ? room.adjusted(1, 1, 0, 0) : room, 2, 2);
  QRect words = room.adjusted(px(8), 0, -px(20), 0);
  painter.setFont(ui::font(Type::note));
  const int price = now_.price.isEmpty() ? 0 : painter.fontMetrics().horizontalAdvance(now_.price);
  const bool both = price > 0 && words.width() - price > px(100);
  if (both) {
    painter.setPen(now.ink2);
    painter.drawText(words, Qt::AlignRight | Qt::AlignVCenter, now_.price);
    words.setRight(words.right() - price - px(8));
  }
  painter.setFont(ui::font(Type::text));
  painter.setPen(now_.id.empty() ? now.ink3 : now.ink);
  const QString name = now_.id.empty() ? Fields::tr("None") : now_.name;
  painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                   painter.fontMetrics().elidedText(name, Qt::ElideRight, words.width()));
  const QPointF tip(room.right() - px(10), room.center().y() + px(2));
  painter.setPen(QPen(now.ink2, 1.5));
  painter.drawPolyline(QPolygonF({tip + QPointF(-px(4), -px(4)), tip, tip + QPointF(px(4), -px(4))}));
}

}  // namespace ui
