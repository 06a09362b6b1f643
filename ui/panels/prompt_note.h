// A sentence under the prompt, with links in it and a cross that takes it away.
#pragma once

#include <QWidget>

class QLabel;

namespace ui {

class FlatButton;
class FlowLayout;

class PromptNote : public QWidget {
  Q_OBJECT
 public:
  PromptNote(const QString& name, QWidget* parent = nullptr);
  void set_grave(bool grave) { grave_ = grave; }  // painted with a flag, in flag colours
  void set_closable(bool closable);
  void tell(const QString& sentence);  // empty: goes away
  void add_link(const QString& words, const QString& id);
  QString told() const;

 signals:
  void closed();
  void followed(QString id);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  FlowLayout* flow_;
  QLabel* words_;
  FlatButton* close_;
  bool grave_ = false;
};

}  // namespace ui
