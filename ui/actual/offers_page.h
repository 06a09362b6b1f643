// What closed jobs say against the book's catalogue: shown, and taken only when a person says so.
#pragma once

#include <QWidget>
#include <set>
#include <string>

#include "catalogue/change.h"
#include "estimate/offers.h"
#include "store/job_book.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace ui {

class OffersPage : public QWidget {
  Q_OBJECT
 public:
  // `folder` is the book's: its catalogue is read and changed there.
  OffersPage(store::JobBook& book, std::string folder, units::System units, QWidget* parent = nullptr);

  void refresh();  // reads the closed jobs and the catalogue anew; all jobs are ticked then
  const std::vector<estimate::CatalogueOffer>& offers() const { return offers_; }

 private:
  void show_offers();
  void show_jobs();
  void job_ticked();
  void say_job(int row, const estimate::SeenInJob& job, bool out);
  void show_words();
  void take();
  void say(const QString& words);
  const estimate::CatalogueOffer* chosen() const;
  store::JobBook& book_;
  std::string folder_;
  units::System units_;
  std::vector<estimate::CatalogueOffer> offers_;  // from the jobs that are ticked
  std::vector<std::set<std::int64_t>> left_out_;  // of each offer, the jobs that are not
  QTableWidget* list_;
  QTableWidget* jobs_;
  QLabel* spread_;
  QLabel* said_;
  QPushButton* take_;
};

// The change of the catalogue that takes the offer: one step, the entry with the offered number. Refused (offer-none)
// where there is nothing offered or the catalogue no longer has the entry.
problem::Result<catalogue::Change> change_for(const estimate::CatalogueOffer& offer, const catalogue::Stock& stock);

}  // namespace ui
