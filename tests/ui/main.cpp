// All tests of the window run in one program with one QApplication, without a display.
#include <gtest/gtest.h>

#include <QApplication>
#include <iostream>

#include "ui/look/theme.h"

int main(int count, char** words) {
  testing::InitGoogleTest(&count, words);
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(count, words);
  QApplication::setEffectEnabled(Qt::UI_AnimateMenu, false);
  if (const QString fault = ui::prepare(application); !fault.isEmpty()) {
    std::cerr << fault.toStdString() << "\n";
    return 1;
  }
  return RUN_ALL_TESTS();
}
