#include "ui/plan/limited_run.h"

#include <QProcess>
#include <csignal>

namespace ui {

// The shell sets the limits and then becomes the program, so that nothing of it is left to outlive them. `ulimit -f`
// counts blocks of 512 bytes, `-v` of 1024.
Ran run_limited(const QString& program, const QStringList& words, const LoadLimits& limits, qint64 most_output) {
  const QString limited =
      QStringLiteral("ulimit -t %1 && ulimit -v %2 && ulimit -f %3 && ulimit -c 0 && exec \"$0\" \"$@\"")
          .arg(limits.cpu_seconds)
          .arg(limits.memory_bytes / 1024)
          .arg(most_output / 512 + 1);
  QProcess process;
  process.setStandardInputFile(QProcess::nullDevice());
  process.start(QStringLiteral("/bin/sh"), QStringList{QStringLiteral("-c"), limited, program} + words);
  Ran ran;
  if (!process.waitForStarted(5000)) return ran;
  ran.in_time = process.waitForFinished(limits.wait_seconds * 1000);
  if (!ran.in_time) {
    process.kill();
    process.waitForFinished(5000);
  }
  ran.out = process.readAllStandardOutput();
  ran.errors = process.readAllStandardError();
  ran.well = ran.in_time && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0;
  // The limit of time ends the program by a signal, whose number stands for its exit code.
  if (process.exitStatus() == QProcess::CrashExit && (process.exitCode() == SIGXCPU || process.exitCode() == SIGKILL))
    ran.in_time = false;
  return ran;
}

}  // namespace ui
