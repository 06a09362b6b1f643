// Another program, run on a stranger's file with so much time, memory and room to write and no more.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include "ui/plan/site_plan_file.h"

namespace ui {

struct Ran {
  QByteArray out;
  QByteArray errors;
  bool in_time = true;
  bool well = false;  // it ended by itself and said so
};

// Waits until it ends or its time on the clock is over. `most_output`: bytes that it may write to any one file.
Ran run_limited(const QString& program, const QStringList& words, const LoadLimits& limits, qint64 most_output);

}  // namespace ui
