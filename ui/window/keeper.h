// Keeps the open job in the book: each edit is handed to the book's writer as soon as it is made.
#pragma once

#include <QObject>

#include "store/job_book.h"
#include "ui/desk/desk.h"

namespace ui {

class Keeper : public QObject {
  Q_OBJECT
 public:
  Keeper(Desk& desk, store::JobBook& book);
  ~Keeper() override;

  void adopt(std::int64_t id);  // the desk's job is that row of the book
  problem::Result<void> add();  // the desk's job becomes a new row
  std::int64_t id() const { return id_; }

 private:
  Desk* desk_;
  store::JobBook* book_;
  std::int64_t id_ = 0;
  JobPtr written_;
};

}  // namespace ui
