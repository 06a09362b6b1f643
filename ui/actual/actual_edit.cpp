// What a newer version of the job needs otherwise than was ordered, and how that is entered.
#include <QDate>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <algorithm>

#include "ui/actual/actual_window.h"
#include "ui/panels/panel_words.h"

namespace ui {

using estimate::Act;
using estimate::Entry;

// A newer version of the job may need otherwise than what was ordered.
void ActualWindow::find_edit() {
  edit_.clear();
  const auto versions = book_.versions(version_.row.job);
  std::int64_t newest = 0;
  if (versions && !versions->empty() && versions->front().number > version_.row.number &&
      std::ranges::any_of(actual_.lines, [](const estimate::LineActual& line) { return line.ordered > 0; })) {
    newest = versions->front().number;
    if (const auto later = book_.version(versions->front().id))
      edit_ = estimate::after_edit(later->job, later->kept, actual_,
                                   QDate::currentDate().toString(Qt::ISODate).toStdString());
  }
  edit_said_->setText(tr("Version %1 needs otherwise than was ordered. The order stands: what differs is added or "
                         "returned.")
                          .arg(newest));
  edit_said_->setVisible(!edit_.empty());
  edit_enter_->setVisible(!edit_.empty());
  edit_enter_->setEnabled(!book_.only_read());
}

void ActualWindow::enter_edit() {
  QStringList each;
  for (const Entry& one : edit_) {
    const auto line = std::ranges::find(actual_.lines, one.line, &estimate::LineActual::key);
    const QString name = line == actual_.lines.end() ? QString() : QString::fromStdString(line->description);
    const QString note = one.note.empty() ? QString() : QStringLiteral(" (%1)").arg(QString::fromStdString(one.note));
    each << (one.act == Act::ordered ? tr("Order %1 more: %2") : tr("Return %1: %2"))
                    .arg(shown_count(one.quantity, one.unit), name) +
                note;
  }
  QMessageBox ask(QMessageBox::Question, tr("Add and return"), each.join(QLatin1Char('\n')), QMessageBox::NoButton,
                  this);
  ask.setTextFormat(Qt::PlainText);
  ask.setObjectName(QStringLiteral("actual-edit-ask"));
  ask.addButton(tr("Enter these"), QMessageBox::AcceptRole)->setObjectName(QStringLiteral("actual-edit-yes"));
  ask.setDefaultButton(ask.addButton(tr("Leave it"), QMessageBox::RejectRole));
  ask.exec();
  if (ask.buttonRole(ask.clickedButton()) != QMessageBox::AcceptRole) return;
  for (const Entry& one : std::vector<Entry>(edit_)) {
    if (const auto entered = book_.enter(version_.row.id, one); entered) continue;
    QMessageBox::warning(this, tr("Add and return"), tr("Not all could be entered; what is missing is still offered."));
    break;
  }
  reload();
}

}  // namespace ui
