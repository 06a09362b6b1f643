// The line over the plan: what is in hand, what it wants next, its fields, its choices, and one sentence of answer.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "sketch/event.h"
#include "sketch/view.h"

class QKeyEvent;
class QLabel;

namespace ui {

class FlatButton;
class FlowLayout;
class PromptField;
class PromptNote;

class Prompt : public QWidget {
  Q_OBJECT
 public:
  explicit Prompt(QWidget* parent = nullptr);

  // `icon` is the drawing of what is in hand. Fields and choices that stay keep their focus, cursor and text.
  void show_view(const sketch::View& view, const QString& icon);
  // A digit (or the sign or point of a number) typed while the plan has the keyboard goes into the first field, which
  // has the keyboard then. False where there is no field for it.
  bool take_key(QKeyEvent* event);
  const std::vector<PromptField*>& fields() const { return fields_; }

 public slots:
  void say(const QString& sentence);  // stays until it is closed or another is said; empty takes it away
  void show_first_note();             // what to try with the demo job
  void hide_first_note();

 signals:
  void typed(QString field, QString text, bool locked);
  void chosen(QString id);
  void entered();               // Enter in a field that holds already
  void keyed(sketch::Key key);  // Escape or Backspace in a field: they are the tool's
  void tried(QString what);     // a link of the first note: "stage", "corner", "crew_list"
  void first_note_closed();
  void lost_field();  // the field or choice with the keyboard is gone: the plan has it then

 private:
  struct Shown {
    sketch::View view;
    QString icon;
  };
  void show_now(const sketch::View& view, const QString& icon);
  void show_fields(const std::vector<sketch::Field>& fields);
  void show_choices(const std::vector<sketch::Choice>& choices);
  void show_wrong(const std::vector<sketch::Field>& fields);
  class Sign;
  QWidget* row_;
  FlowLayout* flow_;
  Sign* sign_;
  QLabel* hand_;
  QLabel* wants_;
  std::vector<PromptField*> fields_;
  std::vector<FlatButton*> choices_;
  std::vector<std::string> choice_ids_;
  PromptNote* wrong_;
  PromptNote* said_;
  PromptNote* first_;
  std::optional<Shown> waiting_;
  bool showing_ = false;
};

}  // namespace ui
