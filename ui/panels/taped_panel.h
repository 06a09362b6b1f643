// Measuring in: the tapes as they were read on site, the points that are known, how well all of it agrees, and drawing
// through the points that were found.
#pragma once

#include <QWidget>

#include "sketch/tool.h"
#include "ui/panels/taped_models.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace ui {

class TapedPanel : public QWidget {
  Q_OBJECT
 public:
  explicit TapedPanel(Desk& desk, QWidget* parent = nullptr);

 protected:
  bool eventFilter(QObject* object, QEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QWidget* tapes_side();
  QWidget* points_side();
  void follow();
  void follow_corners();
  void say(const QString& text, bool wrong);
  void ask_reason();
  void strike();
  void add_corner();
  void draw();
  QPushButton* button(const QString& words, const char* name);
  QLabel* heading(const QString& words);
  TapeDesk tapes_;
  TapesModel* rows_;
  KnownModel* known_;
  FieldSheet* sheet_;
  FieldSheet* known_sheet_;
  QLabel* sum_;
  QLabel* echo_;
  QListWidget* problems_;
  QPushButton* strike_;
  QPushButton* take_out_;
  QPushButton* worst_;
  QWidget* asking_;
  QLabel* asking_words_;
  QLineEdit* reason_;
  QComboBox* corner_;
  QLineEdit* through_;
  QComboBox* as_;
  QCheckBox* smooth_;
  QList<QLabel*> headings_;
};

// What is drawn through points that were found: the hand's kind, fitted as a drawn one. Levels are one element each.
// The new job and the ids of what is new.
struct DrawnThrough {
  plan::Job after;
  std::vector<plan::ElementId> ids;
};
problem::Result<DrawnThrough> drawn_through(const plan::Job& job, const sketch::Measured& measured,
                                            const std::string& names, sketch::Hand hand, bool smooth);

}  // namespace ui
