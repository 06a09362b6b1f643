#include "ui/panels/price_field.h"

#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "ui/look/plain_tip.h"
#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/panel_words.h"
#include "ui/panels/takeoff_model.h"

namespace ui {

namespace {

QLabel* small_label(const QString& text, QColor colour, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setFont(ui::font(Type::note));
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, colour);
  label->setPalette(palette);
  return label;
}

std::string today() { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }

}  // namespace

PriceField::PriceField(Desk& desk, plan::Id item, QWidget* parent)
    : QWidget(parent), desk_(desk), item_(std::move(item)), field_(new QLineEdit(this)) {
  setObjectName(QStringLiteral("price_field"));
  setAutoFillBackground(false);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(px(30), px(2), px(10), px(2));
  rows->setSpacing(px(1));
  auto* label = small_label(tr("Give a price for %1").arg(item_name()), theme().ink, this);
  label->setBuddy(field_);
  label->setToolTip(plain_tip(label->text()));
  label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  rows->addWidget(label);
  auto* row = new QHBoxLayout;
  row->setSpacing(px(8));
  field_->setObjectName(QStringLiteral("price"));
  field_->setAccessibleName(label->text());
  field_->setFont(ui::font(Type::text));
  field_->setFixedSize(px(76), px(28));
  row->addWidget(field_);
  const catalogue::Item* known = desk_.job().catalogue->item(item_);
  row->addWidget(small_label(tr("per %1").arg(said(known ? known->unit : "")), theme().ink2, this));
  auto* set = new FlatButton(FlatButton::Form::action, tr("Give it"), this);
  set->setObjectName(QStringLiteral("give_price"));
  row->addWidget(set);
  auto* others = new FlatButton(FlatButton::Form::link, tr("Others supply it"), this);
  others->setObjectName(QStringLiteral("by_others"));
  row->addWidget(others);
  row->addStretch(1);
  rows->addLayout(row);
  wrong_ = small_label({}, theme().flag, this);
  wrong_->setObjectName(QStringLiteral("price_wrong"));
  rows->addWidget(wrong_);
  setFocusProxy(field_);
  connect(field_, &QLineEdit::returnPressed, this, &PriceField::give);
  connect(field_, &QLineEdit::textEdited, wrong_, &QLabel::clear);
  connect(set, &QAbstractButton::clicked, this, &PriceField::give);
  connect(others, &QAbstractButton::clicked, this, &PriceField::by_others);
}

QString PriceField::item_name() const {
  const catalogue::Item* item = desk_.job().catalogue->item(item_);
  return item ? own_name(item->name, item_) : QString::fromStdString(item_);
}

void PriceField::give() { take(with_price(desk_.job(), item_, field_->text().toStdString(), today())); }

void PriceField::by_others() { take(with_supplied_by_others(desk_.job(), item_, today())); }

void PriceField::take(const problem::Result<plan::Job>& after) {
  if (!after) {
    wrong_->setText(said(after.error().text) + QStringLiteral(": ") + said(after.error().mend));
    field_->setAccessibleDescription(wrong_->text());
    field_->setFocus();
    return;
  }
  desk_.edit(*after, tr("Give a price for %1").arg(item_name()));
}

}  // namespace ui
