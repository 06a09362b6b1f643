#include "ui/panels/stage_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/look/plain_tip.h"
#include "ui/look/theme.h"
#include "ui/panels/hold_list.h"
#include "ui/panels/panel_words.h"
#include "ui/panels/total_model.h"

namespace ui {

namespace {

QLabel* words(const QString& text, Type type, bool bold, QColor colour, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setFont(ui::font(type, bold));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, colour);
  label->setPalette(palette);
  return label;
}

// A caution: a bar, the wash, a triangle, and words.
class CautionBox : public QWidget {
 public:
  CautionBox(const CautionRow& row, QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("caution"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(px(38), px(6), px(10), px(6));
    rows->setSpacing(px(1));
    rows->addWidget(words(row.text, Type::note, false, theme().ink, this));
    QStringList under;
    if (!row.who.isEmpty()) under << StagePanel::tr("Decides: %1").arg(row.who);
    if (!row.source.isEmpty()) under << row.source;
    if (!under.isEmpty())
      rows->addWidget(words(under.join(QStringLiteral(" · ")), Type::small, false, theme().care, this));
    setAccessibleName(StagePanel::tr("Caution. %1").arg(row.text));
    setAccessibleDescription(under.join(QStringLiteral(". ")));
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.fillRect(rect(), theme().care_wash);
    painter.fillRect(QRect(0, 0, px(3), height()), theme().care);
    paint_icon(painter, QStringLiteral("caution"), QRectF(px(11), px(5), px(18), px(18)), theme().care);
  }
};

// The stage's number on a round ground, as in the strip and the gutter.
class Badge : public QWidget {
 public:
  using QWidget::QWidget;
  int number = 1;
  QSize sizeHint() const override { return {px(24), px(24)}; }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme().ink);
    painter.drawEllipse(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5));
    painter.setFont(ui::font(Type::note, true));
    painter.setPen(theme().panel);
    painter.drawText(rect(), int(Qt::AlignCenter), QString::number(number));
  }
};

// The eye over the ground line.
class Eye : public QWidget {
 public:
  using QWidget::QWidget;
  QSize sizeHint() const override { return {px(20), px(20)}; }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    paint_icon(painter, QStringLiteral("hold-point"), rect(), theme().ink);
  }
};

}  // namespace

StagePanel::StagePanel(Desk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName(QStringLiteral("stage_panel"));
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  auto* area = new QScrollArea(this);
  area->setObjectName(QStringLiteral("stage_scroll"));
  area->setFrameShape(QFrame::NoFrame);
  area->setWidgetResizable(true);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  outer->addWidget(area);
  auto* inside = new QWidget;
  auto* rows = new QVBoxLayout(inside);
  rows->setContentsMargins(px(16), px(10), px(16), px(10));
  rows->setSpacing(px(4));
  add_head(rows);
  auto* eye_row = new QHBoxLayout;
  hold_head_ = new QWidget(inside);
  hold_head_->setLayout(eye_row);
  eye_row->setContentsMargins(0, px(8), 0, 0);
  eye_row->addWidget(words(tr("Before it is covered up"), Type::text, true, theme().ink, inside), 1);
  eye_row->addWidget(new Eye(inside));
  rows->addWidget(hold_head_);
  holds_ = new HoldList(inside);
  rows->addWidget(holds_);
  cautions_ = new QVBoxLayout;
  cautions_->setSpacing(px(4));
  rows->addSpacing(px(4));
  rows->addLayout(cautions_);
  rows->addStretch(1);
  area->setWidget(inside);
  connect(&desk_, &Desk::stage_changed, this, &StagePanel::show_stage);
  connect(&desk_, &Desk::results_changed, this, &StagePanel::show_stage);
  connect(&desk_, &Desk::job_changed, this, &StagePanel::show_stage);
  connect(holds_, &HoldList::looked, this, &StagePanel::looked);
  connect(holds_, &HoldList::taken_back, this, [this](const std::string& look_at) {
    if (desk_.stage()) desk_.edit(without_look(desk_.job(), *desk_.stage(), look_at), tr("Take back a look"));
  });
  show_stage();
}

void StagePanel::add_head(QVBoxLayout* rows) {
  auto* head = new QHBoxLayout;
  head->setSpacing(px(8));
  badge_room_ = new Badge(this);
  badge_room_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  title_ = words({}, Type::name, true, theme().ink, this);
  title_->setObjectName(QStringLiteral("stage_title"));
  takes_ = words({}, Type::note, false, theme().ink2, this);
  takes_->setObjectName(QStringLiteral("stage_takes"));
  head->addWidget(badge_room_, 0, Qt::AlignTop);
  head->addWidget(title_, 1);
  rows->addLayout(head);
  rows->addWidget(takes_);
  rows->addWidget(words(tr("The job as it stands when this stage is done."), Type::note, false, theme().ink2, this));
  covers_ = words({}, Type::note, false, theme().care, this);
  covers_->setObjectName(QStringLiteral("stage_covers"));
  rows->addWidget(covers_);
}

void StagePanel::show_stage() {
  const ResultsPtr results = desk_.results();
  if (!desk_.stage() || !results) return;
  StageSaid now = stage_said(*results, desk_.job(), *desk_.stage());
  QString takes = hours_in_words(now.hours, desk_.job().choices);
  if (const QString days = days_of(*results, *desk_.stage()); !days.isEmpty())
    takes = shown_hours(now.hours) + QStringLiteral(" · ") +
            tr("crew of %1").arg(shown_number(desk_.job().choices.crew)) + QStringLiteral(" · ") + days;
  takes_->setText(takes);
  if (now == shown_) return;
  shown_ = std::move(now);
  static_cast<Badge*>(badge_room_)->number = shown_.number;
  badge_room_->update();
  title_->setText(shown_.title);
  setAccessibleName(tr("Stage %1, %2").arg(shown_.number).arg(shown_.title));
  const auto unseen = static_cast<int>(shown_.covers_unseen.size());
  covers_->setVisible(unseen > 0);
  covers_->setText(unseen == 1
                       ? tr("This stage covers 1 thing that nobody has looked at: %1.").arg(shown_.covers_unseen[0])
                       : tr("This stage covers %1 things that nobody has looked at yet.").arg(unseen));
  QStringList all;
  for (const QString& each : shown_.covers_unseen) all << each;
  covers_->setToolTip(plain_tip(all.join(QLatin1Char('\n'))));
  hold_head_->setVisible(!shown_.holds.empty());
  holds_->show(shown_.holds);
  show_cautions();
}

void StagePanel::show_cautions() {
  while (QLayoutItem* item = cautions_->takeAt(0)) {
    if (item->widget()) {
      item->widget()->setParent(nullptr);
      item->widget()->deleteLater();
    }
    delete item;
  }
  for (const CautionRow& row : shown_.cautions) cautions_->addWidget(new CautionBox(row, cautions_->parentWidget()));
}

void StagePanel::looked(const std::string& look_at, const QString& who, const QString& when) {
  if (!desk_.stage()) return;
  desk_.edit(with_look(desk_.job(), *desk_.stage(), look_at, who.toStdString(), when.toStdString()),
             tr("Looked at: %1").arg(said(look_at)));
}

void StagePanel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), theme().panel);
}

}  // namespace ui
