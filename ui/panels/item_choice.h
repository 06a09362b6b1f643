// A choice out of the catalogue: a button with what is chosen and its price; pressed it opens a list to search in.
#pragma once

#include <QFrame>
#include <QPushButton>

#include "ui/panels/offers.h"

class QLineEdit;
class QListWidget;

namespace ui {

// The list that opens: what is typed narrows it, arrows and Enter choose, Esc leaves all as it was.
class OfferList : public QFrame {
  Q_OBJECT
 public:
  OfferList(std::vector<Offer> offers, const catalogue::Id& now, bool may_be_empty, QWidget* parent);
  QListWidget* list() const { return list_; }
  QLineEdit* search() const { return search_; }

 signals:
  void picked(QString id);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fill(const catalogue::Id& now);
  void add_heading(const QString& words);
  void add_offer(const Offer& offer, bool now);
  void narrow(const QString& words);
  void move(int rows);
  void pick();
  std::vector<Offer> offers_;
  bool may_be_empty_;
  QLineEdit* search_;
  QListWidget* list_;
};

class ItemChoice : public QPushButton {
  Q_OBJECT
 public:
  explicit ItemChoice(QWidget* parent = nullptr);
  // `offers` is asked each time the list opens.
  void show_choice(const Offer& now, bool may_be_empty, std::function<std::vector<Offer>()> offers);
  const catalogue::Id& id() const { return now_.id; }
  OfferList* open();  // the list, shown
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  void given(QString id);  // empty: none

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  Offer now_;
  bool may_be_empty_ = false;
  std::function<std::vector<Offer>()> offers_;
};

}  // namespace ui
