// A tip that shows what it is given letter by letter: Qt takes a tip that looks like mark-up for mark-up, and a job may
// be called <b>.
#pragma once

#include <QTextDocument>

namespace ui {

inline QString plain_tip(const QString& words) {
  return Qt::mightBeRichText(words) ? Qt::convertFromPlainText(words) : words;
}

}  // namespace ui
