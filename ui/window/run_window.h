// From the program's start to its window: fonts, language, the job book, the job that was open last.
#pragma once

#include <string>

#include "plan/job.h"

namespace ui {

// The demo job that is built in.
problem::Result<plan::Job> demo_job();

// Runs until the window is closed; gives the program's exit code. `file` is a job file to open; empty: the job that was
// open last, at the very first start the demo job. Says what is wrong on standard error and gives 1 where there is no
// display, no font or the book is held by another window.
int run_window(int& count, char** words, const std::string& file);

}  // namespace ui
