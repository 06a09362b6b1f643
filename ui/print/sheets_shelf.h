// What the window of the sheets asks of the job book.
#pragma once

#include <QByteArray>
#include <QString>
#include <functional>
#include <string>

#include "problem/problem.h"

namespace ui {

// Empty functions: that action is not offered.
struct SheetsShelf {
  std::function<std::string()> version;  // number of the newest version that the job equals; empty: working copy
  // Keeps the bytes with the newest version: what was done, in words, or why not.
  std::function<problem::Result<QString>(const std::string& sheet, const std::string& language, const QByteArray& pdf)>
      keep;
};

}  // namespace ui
