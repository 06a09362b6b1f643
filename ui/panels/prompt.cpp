#include "ui/panels/prompt.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/panels/flow_layout.h"
#include "ui/panels/one_line.h"
#include "ui/panels/panel_words.h"
#include "ui/panels/prompt_field.h"
#include "ui/panels/prompt_note.h"

namespace ui {

// The drawing of what is in hand, in chalk.
class Prompt::Sign : public QWidget {
 public:
  using QWidget::QWidget;
  QString name;
  QSize sizeHint() const override { return {px(22), px(22)}; }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    if (!name.isEmpty()) paint_icon(painter, name, rect(), theme().chalk);
  }
};

Prompt::Prompt(QWidget* parent)
    : QWidget(parent),
      row_(new QWidget(this)),
      flow_(new FlowLayout(row_)),
      sign_(new Sign(row_)),
      hand_(new QLabel(row_)),
      wants_(new OneLine(row_)),
      wrong_(new PromptNote(QStringLiteral("prompt_wrong"), this)),
      said_(new PromptNote(QStringLiteral("prompt_said"), this)),
      first_(new PromptNote(QStringLiteral("first_note"), this)) {
  setObjectName(QStringLiteral("prompt"));
  setAccessibleName(tr("Prompt"));
  setAutoFillBackground(true);
  flow_->setContentsMargins(px(14), px(4), px(14), px(2));
  flow_->set_gaps(px(10), 0);
  flow_->set_least_row(px(38));
  hand_->setObjectName(QStringLiteral("hand"));
  hand_->setFont(ui::font(Type::text, true));
  wants_->setObjectName(QStringLiteral("wants"));
  wants_->setFont(ui::font(Type::text));
  for (QWidget* each : {static_cast<QWidget*>(sign_), static_cast<QWidget*>(hand_), static_cast<QWidget*>(wants_)})
    flow_->addWidget(each);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(0);
  for (QWidget* each :
       {row_, static_cast<QWidget*>(wrong_), static_cast<QWidget*>(said_), static_cast<QWidget*>(first_)})
    rows->addWidget(each);
  wrong_->set_grave(true);
  wrong_->set_closable(false);
  first_->add_link(tr("Choose stage 3"), QStringLiteral("stage"));
  first_->add_link(tr("Drag a corner"), QStringLiteral("corner"));
  first_->add_link(tr("Print the crew list"), QStringLiteral("crew_list"));
  connect(first_, &PromptNote::followed, this, &Prompt::tried);
  connect(first_, &PromptNote::closed, this, &Prompt::first_note_closed);
}

void Prompt::show_view(const sketch::View& view, const QString& icon) {
  // Showing it may change the height of the row, and with it the plan, which shows its view again: that one comes next.
  waiting_ = Shown{view, icon};
  if (showing_) return;
  showing_ = true;
  while (waiting_) {
    const Shown next = std::move(*waiting_);
    waiting_.reset();
    show_now(next.view, next.icon);
  }
  showing_ = false;
}

void Prompt::show_now(const sketch::View& view, const QString& icon) {
  sign_->name = icon;
  sign_->update();
  QPalette palette = hand_->palette();
  palette.setColor(QPalette::WindowText, theme().chalk);
  hand_->setPalette(palette);
  const QString hand = said(view.hand), wants = said(view.wants);
  if (hand != hand_->text()) hand_->setText(hand);
  if (wants != wants_->text()) wants_->setText(wants);
  setAccessibleDescription(hand + QStringLiteral(". ") + wants);
  show_fields(view.fields);
  show_choices(view.choices);
  show_wrong(view.fields);
}

// Fields are kept by their ids, so that the one being typed in stays what it is.
void Prompt::show_fields(const std::vector<sketch::Field>& fields) {
  const bool same = std::ranges::equal(fields, fields_, {}, &sketch::Field::id,
                                       [](const PromptField* field) { return field->id().toStdString(); });
  if (!same) {
    std::vector<PromptField*> old = std::move(fields_);
    fields_.clear();
    for (PromptField* each : old) flow_->removeWidget(each);
    for (const sketch::Field& field : fields) {
      const QString id = QString::fromStdString(field.id);
      const auto known = std::ranges::find(old, id, &PromptField::id);
      PromptField* made = known == old.end() ? new PromptField(id, row_) : *known;
      if (known == old.end()) {
        connect(made, &PromptField::typed, this,
                [this, id](const QString& text, bool locked) { emit typed(id, text, locked); });
        connect(made, &PromptField::entered, this, &Prompt::entered);
        connect(made, &PromptField::keyed, this, &Prompt::keyed);
      } else {
        old.erase(known);
      }
      flow_->addWidget(made);
      made->setVisible(true);
      fields_.push_back(made);
    }
    bool lost = false;
    for (PromptField* gone : old) {
      lost = lost || gone->edit()->hasFocus();
      gone->hide();
      gone->deleteLater();
    }
    // Choices stand after the fields.
    for (FlatButton* each : choices_) flow_->removeWidget(each);
    choice_ids_.clear();
    if (lost) emit lost_field();
  }
  for (std::size_t i = 0; i < fields.size(); ++i) fields_[i]->show(fields[i]);
}

void Prompt::show_choices(const std::vector<sketch::Choice>& choices) {
  const bool same =
      choices_.size() == choice_ids_.size() && std::ranges::equal(choices, choice_ids_, {}, &sketch::Choice::id);
  if (!same) {
    bool lost = false;
    for (FlatButton* each : choices_) {
      lost = lost || each->hasFocus();
      flow_->removeWidget(each);
      each->hide();
      each->deleteLater();
    }
    choices_.clear();
    choice_ids_.clear();
    for (const sketch::Choice& choice : choices) {
      auto* made = new FlatButton(choice.action ? FlatButton::Form::action : FlatButton::Form::segment, {}, row_);
      const QString id = QString::fromStdString(choice.id);
      made->setObjectName(QStringLiteral("choice_") + id);
      connect(made, &QAbstractButton::clicked, this, [this, id] { emit chosen(id); });
      if (choice.action)
        flow_->add_at_right(made);
      else
        flow_->addWidget(made);
      made->setVisible(true);
      choices_.push_back(made);
      choice_ids_.push_back(choice.id);
    }
    if (lost) emit lost_field();
  }
  for (std::size_t i = 0; i < choices.size(); ++i) {
    choices_[i]->setText(said(choices[i].label));
    choices_[i]->setAccessibleName(choices_[i]->text());
    if (!choices[i].action) choices_[i]->setChecked(choices[i].taken);
    choices_[i]->updateGeometry();
  }
}

// What is wrong with a typed text, whole, under the prompt.
void Prompt::show_wrong(const std::vector<sketch::Field>& fields) {
  const auto wrong = std::ranges::find_if(fields, &sketch::Field::wrong);
  wrong_->tell(wrong == fields.end() ? QString() : said(wrong->label) + QStringLiteral(": ") + said(wrong->understood));
}

bool Prompt::take_key(QKeyEvent* event) {
  const QString text = event->text();
  const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
  if (fields_.empty() || text.size() != 1 || !plain) return false;
  if (!text[0].isDigit() && text[0] != QLatin1Char('.') && text[0] != QLatin1Char('-')) return false;
  fields_.front()->begin(text);
  return true;
}

void Prompt::say(const QString& sentence) { said_->tell(sentence); }

void Prompt::show_first_note() { first_->tell(tr("This is a demo job. Try:")); }

void Prompt::hide_first_note() { first_->tell({}); }

}  // namespace ui
