// A sheet of a job, by its word, as a PDF: what the command line and the window call.
#pragma once

#include <QByteArray>
#include <QString>
#include <memory>
#include <string>

#include "problem/problem.h"
#include "results/results.h"
#include "sheets/printed.h"
#include "ui/print/paper.h"

namespace ui {

// Said in the language in use (ui/words speak). The date is the quote's, or none.
sheets::Printed printed(std::shared_ptr<const results::Results> results, std::string version = {});

// While it lives, words are said in another language than the window's: a sheet is made and painted in one.
class InLanguage {
 public:
  explicit InLanguage(const QString& wanted);
  ~InLanguage();
  InLanguage(const InLanguage&) = delete;
  InLanguage& operator=(const InLanguage&) = delete;

 private:
  QString before_;
};

// US jobs on letter, metric ones on A4.
Paper usual_paper(const plan::Job& job);

// Of a job as it was kept, worked out anew for its names and units; what is printed of it brings its own numbers.
sheets::Printed printed_of(const plan::Job& job, std::string version, std::string date);

// A sheet that was made already.
QByteArray print_made(sheets::Sheet sheet, const sheets::Printed& printed);

// Refused: a word that is no sheet's (sheet-unknown).
problem::Result<QByteArray> print_sheet(const std::string& word, const sheets::Printed& printed, Paper paper);

}  // namespace ui
