#include "ui/panels/tool_list.h"

#include <QAbstractButton>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "ui/look/theme.h"

namespace ui {

using sketch::Hand;

namespace {

struct Tool {
  Hand hand;
  const char* name;
  const char* icon;
  bool begins_group = false;
};

// Names are marked for translation here and looked up in tool_name.
constexpr std::array tools{
    Tool{Hand::pick, QT_TRANSLATE_NOOP("ui::ToolList", "Pick"), "pick"},
    Tool{Hand::site_plan, QT_TRANSLATE_NOOP("ui::ToolList", "Site plan"), "site-plan", true},
    Tool{Hand::site_mark, QT_TRANSLATE_NOOP("ui::ToolList", "Site mark"), "site-mark"},
    Tool{Hand::building, QT_TRANSLATE_NOOP("ui::ToolList", "Building"), "building"},
    Tool{Hand::keep_out, QT_TRANSLATE_NOOP("ui::ToolList", "Keep-out"), "keep-out"},
    Tool{Hand::removal, QT_TRANSLATE_NOOP("ui::ToolList", "Removal"), "removal"},
    Tool{Hand::protection, QT_TRANSLATE_NOOP("ui::ToolList", "Protection"), "protection"},
    Tool{Hand::level, QT_TRANSLATE_NOOP("ui::ToolList", "Level"), "level"},
    Tool{Hand::wall, QT_TRANSLATE_NOOP("ui::ToolList", "Wall"), "wall", true},
    Tool{Hand::drain, QT_TRANSLATE_NOOP("ui::ToolList", "Drain"), "drain"},
    Tool{Hand::pool, QT_TRANSLATE_NOOP("ui::ToolList", "Pool"), "pool"},
    Tool{Hand::steps, QT_TRANSLATE_NOOP("ui::ToolList", "Steps"), "steps"},
    Tool{Hand::area, QT_TRANSLATE_NOOP("ui::ToolList", "Area"), "area"},
    Tool{Hand::edge, QT_TRANSLATE_NOOP("ui::ToolList", "Edge"), "edge"},
    Tool{Hand::feature, QT_TRANSLATE_NOOP("ui::ToolList", "Feature"), "feature"},
    Tool{Hand::measure, QT_TRANSLATE_NOOP("ui::ToolList", "Measure"), "measure", true},
    Tool{Hand::dimension, QT_TRANSLATE_NOOP("ui::ToolList", "Dimension"), "dimension"},
    Tool{Hand::note, QT_TRANSLATE_NOOP("ui::ToolList", "Note"), "note"},
    Tool{Hand::move, QT_TRANSLATE_NOOP("ui::ToolList", "Move"), "move", true},
    Tool{Hand::turn, QT_TRANSLATE_NOOP("ui::ToolList", "Turn"), "turn"},
    Tool{Hand::copy, QT_TRANSLATE_NOOP("ui::ToolList", "Copy"), "copy"},
    Tool{Hand::mirror, QT_TRANSLATE_NOOP("ui::ToolList", "Mirror"), "mirror"},
    Tool{Hand::offset, QT_TRANSLATE_NOOP("ui::ToolList", "Offset"), "offset"},
    Tool{Hand::split, QT_TRANSLATE_NOOP("ui::ToolList", "Split"), "split"},
    Tool{Hand::join, QT_TRANSLATE_NOOP("ui::ToolList", "Join"), "join"},
    Tool{Hand::hole, QT_TRANSLATE_NOOP("ui::ToolList", "Cut a hole"), "hole"},
    Tool{Hand::edge_to_arc, QT_TRANSLATE_NOOP("ui::ToolList", "Edge to arc"), "edge-to-arc"},
    Tool{Hand::trace, QT_TRANSLATE_NOOP("ui::ToolList", "Trace an edge"), "trace"},
    Tool{Hand::start_point, QT_TRANSLATE_NOOP("ui::ToolList", "Start point"), "start-point", true},
};

const Tool& tool_of(Hand hand) { return *std::ranges::find(tools, hand, &Tool::hand); }

int wide() { return px(72); }
int bar() { return px(5); }  // the scroll bar, where the height is short

}  // namespace

QString tool_name(Hand hand) { return ToolList::tr(tool_of(hand).name); }
bool begins_group(Hand hand) { return tool_of(hand).begins_group; }
QString tool_icon(Hand hand) { return QString::fromLatin1(tool_of(hand).icon); }

// At rest plain, under the pointer framed, in hand with a bar, a wash and bold words; ringed with the keyboard.
class ToolButton : public QAbstractButton {
 public:
  ToolButton(Hand hand, QWidget* parent) : QAbstractButton(parent), hand_(hand) {
    setText(tool_name(hand));
    setAccessibleName(text());
    setObjectName(QStringLiteral("tool_") + tool_icon(hand).replace(QLatin1Char('-'), QLatin1Char('_')));
    setCheckable(true);
    setAttribute(Qt::WA_Hover);
    setFocusPolicy(Qt::ClickFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  }
  Hand hand() const { return hand_; }
  QSize sizeHint() const override { return {wide() - bar(), std::max(px(40), px(28) + words().height() + px(3))}; }

 protected:
  void nextCheckState() override { setChecked(true); }
  void keyPressEvent(QKeyEvent* event) override {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return click();
    if (event->key() == Qt::Key_Space) return QAbstractButton::keyPressEvent(event);
    event->ignore();
  }
  void paintEvent(QPaintEvent*) override {
    const Theme& look = theme();
    QPainter painter(this);
    if (isChecked()) {
      painter.fillRect(rect(), look.chalk_wash);
      painter.fillRect(QRect(0, 0, px(3), height()), look.chalk);
    } else if (underMouse()) {
      painter.setPen(QPen(look.rule, 1));
      painter.setBrush(look.raised);
      painter.drawRect(rect().adjusted(1, 1, -2, -2));
    }
    const QColor ink = isChecked() ? look.chalk : look.ink;
    paint_icon(painter, tool_icon(hand_), QRectF((width() - px(24)) / 2.0, px(2), px(24), px(24)), ink);
    painter.setFont(ui::font(Type::small, isChecked()));
    painter.setPen(isChecked() ? look.chalk : look.ink2);
    painter.drawText(QRect(px(3), px(27), width() - px(4), height() - px(27)),
                     int(Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap), text());
    if (!hasFocus()) return;
    painter.setPen(QPen(look.chalk, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
  }

 private:
  QRect words() const {
    return QFontMetrics(ui::font(Type::small, true))
        .boundingRect(QRect(0, 0, wide() - bar() - px(4), 1000), int(Qt::TextWordWrap), text());
  }
  Hand hand_;
};

ToolList::ToolList(QWidget* parent) : QWidget(parent), area_(new QScrollArea(this)) {
  setObjectName(QStringLiteral("tool_list"));
  setAccessibleName(tr("Tools"));
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  outer->addWidget(area_);
  area_->setFrameShape(QFrame::NoFrame);
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area_->verticalScrollBar()->setFixedWidth(bar());
  area_->setFocusPolicy(Qt::NoFocus);
  area_->setWidgetResizable(true);
  auto* column = new QWidget;
  auto* rows = new QVBoxLayout(column);
  rows->setContentsMargins(0, px(3), 0, px(3));
  rows->setSpacing(0);
  for (const Tool& tool : tools) {
    if (tool.begins_group) {
      auto* rule = new QFrame(column);
      rule->setFrameShape(QFrame::HLine);
      rule->setFixedHeight(px(9));
      rule->setContentsMargins(px(16), 0, px(16), 0);
      rows->addWidget(rule);
    }
    auto* button = new ToolButton(tool.hand, column);
    rows->addWidget(button);
    button->installEventFilter(this);
    tools_.push_back(button);
    connect(button, &QAbstractButton::clicked, this, [this, hand = tool.hand] {
      show_hand(hand);
      emit picked(hand);
    });
  }
  rows->addStretch(1);
  area_->setWidget(column);
  setFixedWidth(wide());
  show_hand(Hand::pick);
}

void ToolList::show_hand(Hand hand) {
  hand_ = hand;
  for (ToolButton* tool : tools_) {
    const bool taken = tool->hand() == hand;
    tool->setChecked(taken);
    tool->setFocusPolicy(taken ? Qt::StrongFocus : Qt::ClickFocus);
    if (taken) {
      setFocusProxy(tool);
      if (tool == tools_.front())
        area_->verticalScrollBar()->setValue(0);
      else
        area_->ensureWidgetVisible(tool, 0, px(8));
    }
  }
}

// Another height shows another part of the list: the tool in hand stays in it.
void ToolList::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  show_hand(hand_);
}

// Before the scroll area takes the arrow keys for itself.
bool ToolList::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  const auto at = std::ranges::find_if(tools_, [watched](const ToolButton* tool) { return tool == watched; });
  const int step = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
  if (at == tools_.end() || step == 0) return QWidget::eventFilter(watched, event);
  const auto row = std::clamp<std::ptrdiff_t>(at - tools_.begin() + step, 0, std::ssize(tools_) - 1);
  ToolButton* next = tools_[static_cast<std::size_t>(row)];
  next->setFocus(Qt::OtherFocusReason);
  area_->ensureWidgetVisible(next, 0, px(8));
  return true;
}

}  // namespace ui
