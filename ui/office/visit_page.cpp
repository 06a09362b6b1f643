#include "ui/office/visit_page.h"

#include <QDate>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "ui/book/book_table.h"
#include "ui/look/theme.h"
#include "ui/panels/flow_layout.h"
#include "ui/words/words.h"

namespace ui {

namespace {

// Its words are given when the keyboard leaves it.
class AnswerText : public QPlainTextEdit {
 public:
  AnswerText(std::function<void()> given, QWidget* parent) : QPlainTextEdit(parent), given_(std::move(given)) {
    setTabChangesFocus(true);
  }

 protected:
  void focusOutEvent(QFocusEvent* event) override {
    QPlainTextEdit::focusOutEvent(event);
    given_();
  }

 private:
  std::function<void()> given_;
};

QLabel* label(QWidget* parent, const char* name, Type type = Type::text, bool bold = false) {
  auto* made = new QLabel(parent);
  made->setObjectName(QString::fromLatin1(name));
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  made->setFont(ui::font(type, bold));
  return made;
}

void ink(QLabel* label, QColor colour) {
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, colour);
  label->setPalette(palette);
}

QString state_word(const estimate::VisitPoint& point) {
  switch (point.answer) {
    case estimate::VisitPoint::Answer::open: return VisitPage::tr("open");
    case estimate::VisitPoint::Answer::said: return VisitPage::tr("✓ answered");
    case estimate::VisitPoint::Answer::shown: return VisitPage::tr("✓ on the plan");
  }
  return {};
}

// "SHA-256/name.jpg" or a bare name.
QString name_of_photo(const std::string& photo) { return QString::fromStdString(photo.substr(photo.find('/') + 1)); }

}  // namespace

VisitPage::VisitPage(Desk& desk, KeepBytes keep, QString today, QWidget* parent)
    : QWidget(parent), desk_(desk), keep_(std::move(keep)), today_(std::move(today)), list_(new QTreeWidget(this)) {
  setObjectName(QStringLiteral("visit-page"));
  list_->setObjectName(QStringLiteral("visit-list"));
  list_->setAccessibleName(tr("Points of the site visit"));
  list_->setHeaderLabels({tr("What is looked at"), tr("State")});
  list_->setRootIsDecorated(false);
  list_->setItemDelegate(new WholeRows(list_));
  list_->setAllColumnsShowFocus(true);
  list_->header()->setStretchLastSection(false);
  list_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
  list_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
  counted_ = label(this, "visit-counted", Type::note);
  auto* left = new QVBoxLayout;
  left->addWidget(list_, 1);
  left->addWidget(counted_);
  auto* sides = new QHBoxLayout(this);
  sides->setContentsMargins(px(16), px(12), px(16), px(12));
  sides->setSpacing(px(16));
  sides->addLayout(left, 3);
  sides->addWidget(make_detail(), 2);
  connect(list_, &QTreeWidget::currentItemChanged, this, &VisitPage::show_point);
  connect(&desk_, &Desk::job_changed, this, &VisitPage::refresh);
  refresh();
  if (!points_.empty()) choose(points_.front().code);
}

QWidget* VisitPage::make_detail() {
  auto* made = new QWidget(this);
  auto* rows = new QVBoxLayout(made);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(px(8));
  question_ = label(made, "visit-question", Type::name, true);
  caution_ = label(made, "visit-caution");
  ink(caution_, theme().care);
  assumption_ = label(made, "visit-assumption", Type::note);
  ink(assumption_, theme().ink2);
  for (QLabel* one : {question_, caution_, assumption_}) rows->addWidget(one);
  rows->addWidget(label(made, "visit-answer-label", Type::note));
  qobject_cast<QLabel*>(rows->itemAt(rows->count() - 1)->widget())->setText(tr("Answer"));
  answer_ = new AnswerText(
      [this] { give([this](plan::VisitAnswer& entry) { entry.answer = answer_->toPlainText().toStdString(); }); },
      made);
  answer_->setObjectName(QStringLiteral("visit-answer"));
  answer_->setAccessibleName(tr("Answer"));
  rows->addWidget(answer_, 1);
  auto* day = new QHBoxLayout;
  auto* when_label = label(made, "visit-when-label");
  when_label->setText(tr("Seen on, as 2026-11-28"));
  when_ = new QLineEdit(made);
  when_->setObjectName(QStringLiteral("visit-when"));
  when_->setAccessibleName(tr("Seen on"));
  when_->setFixedWidth(px(120));
  when_label->setBuddy(when_);
  day->addWidget(when_label, 1);
  day->addWidget(when_);
  rows->addLayout(day);
  wrong_ = label(made, "visit-wrong", Type::note);
  ink(wrong_, theme().flag);
  wrong_->hide();
  rows->addWidget(wrong_);
  photo_ = label(made, "visit-photo");
  rows->addWidget(photo_);
  auto* flow = new FlowLayout;
  flow->set_gaps(px(6), px(6));
  auto* choose_photo = new QPushButton(tr("Choose a photo ..."), made);
  choose_photo->setObjectName(QStringLiteral("visit-choose-photo"));
  drop_photo_ = new QPushButton(tr("Without a photo"), made);
  drop_photo_->setObjectName(QStringLiteral("visit-drop-photo"));
  for (QPushButton* one : {choose_photo, drop_photo_}) {
    one->setAutoDefault(false);
    flow->addWidget(one);
  }
  rows->addLayout(flow);
  connect(when_, &QLineEdit::editingFinished, this, [this] {
    const QString text = when_->text().trimmed();
    const bool good = text.isEmpty() || QDate::fromString(text, Qt::ISODate).isValid();
    wrong_->setText(good ? QString() : tr("This is no date: enter it as 2026-11-28"));
    wrong_->setVisible(!good);
    if (good) give([text](plan::VisitAnswer& entry) { entry.when = text.toStdString(); });
  });
  connect(choose_photo, &QPushButton::clicked, this, [this] {
    const QString file =
        QFileDialog::getOpenFileName(this, tr("Choose a photo"), {}, tr("Photos (*.jpg *.jpeg *.png *.webp)"));
    if (!file.isEmpty()) take_photo(file);
  });
  connect(drop_photo_, &QPushButton::clicked, this,
          [this] { give([](plan::VisitAnswer& entry) { entry.photo.clear(); }); });
  return made;
}

void VisitPage::refresh() {
  const std::string was = chosen();
  points_ = estimate::visit_list(desk_.job());
  const QSignalBlocker quiet(list_);
  list_->clear();
  int open = 0;
  for (const estimate::VisitPoint& point : points_) {
    auto* row = new QTreeWidgetItem({said(point.question), state_word(point)});
    row->setData(0, Qt::UserRole, QString::fromStdString(point.code));
    row->setToolTip(0, said(point.question));
    if (point.answer == estimate::VisitPoint::Answer::open) ++open;
    list_->addTopLevelItem(row);
  }
  counted_->setText(open == 0 ? tr("Nothing is open")
                              : tr("%1 of %2 are open: each is an assumption of the quote")
                                    .arg(open)
                                    .arg(static_cast<int>(points_.size())));
  choose(was);
}

void VisitPage::choose(const std::string& code) {
  for (int row = 0; row < list_->topLevelItemCount(); ++row)
    if (list_->topLevelItem(row)->data(0, Qt::UserRole).toString().toStdString() == code)
      list_->setCurrentItem(list_->topLevelItem(row));
  show_point();
}

std::string VisitPage::chosen() const {
  const QTreeWidgetItem* row = list_->currentItem();
  return row == nullptr ? std::string() : row->data(0, Qt::UserRole).toString().toStdString();
}

const estimate::VisitPoint* VisitPage::point() const {
  const auto found = std::ranges::find(points_, chosen(), &estimate::VisitPoint::code);
  return found == points_.end() ? nullptr : &*found;
}

void VisitPage::show_point() {
  const estimate::VisitPoint* now = point();
  for (QWidget* one : std::initializer_list<QWidget*>{answer_, when_}) one->setEnabled(now != nullptr);
  if (now == nullptr) return;
  const plan::VisitAnswer* entry = estimate::entry_of(desk_.job(), now->code);
  question_->setText(said(now->question));
  caution_->setText(tr("Caution: %1").arg(said(now->caution)));
  caution_->setVisible(!now->caution.empty());
  assumption_->setText(now->answer == estimate::VisitPoint::Answer::open
                           ? tr("While it is open the quote says: %1").arg(said(now->assumption))
                       : now->called_for ? QString()
                                         : tr("The plan no longer has what this is about; the answer stays."));
  assumption_->setVisible(!assumption_->text().isEmpty());
  if (!answer_->hasFocus()) answer_->setPlainText(entry ? QString::fromStdString(entry->answer) : QString());
  when_->setText(entry ? QString::fromStdString(entry->when) : QString());
  when_->setPlaceholderText(today_);
  wrong_->hide();
  const bool photo = entry != nullptr && !entry->photo.empty();
  photo_->setText(photo ? tr("Photo: %1").arg(name_of_photo(entry->photo)) : tr("No photo"));
  drop_photo_->setEnabled(photo);
}

// A first entry is of today.
void VisitPage::give(const std::function<void(plan::VisitAnswer&)>& change) {
  const estimate::VisitPoint* now = point();
  if (now == nullptr) return;
  const plan::VisitAnswer* there = estimate::entry_of(desk_.job(), now->code);
  plan::VisitAnswer entry = there ? *there : plan::VisitAnswer{now->code, {}, today_.toStdString(), {}};
  change(entry);
  if (there && entry == *there) return;
  const plan::Job after = estimate::answered(desk_.job(), entry);
  if (!plan::same(after, desk_.job())) desk_.edit(after, tr("Answer of the site visit"));
}

void VisitPage::take_photo(const QString& file) {
  QFile from(file);
  if (!from.open(QIODevice::ReadOnly)) {
    wrong_->setText(tr("%1 can't be read: %2").arg(file, from.errorString()));
    wrong_->show();
    return;
  }
  const std::string kept = keep_ ? keep_(from.readAll()) : std::string();
  const std::string name = QFileInfo(file).fileName().toStdString();
  give([&](plan::VisitAnswer& entry) { entry.photo = kept.empty() ? name : kept + "/" + name; });
}

}  // namespace ui
