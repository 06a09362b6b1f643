#include "ui/print/print_sheet.h"

#include "sheets/all_sheets.h"
#include "ui/print/pdf.h"
#include "ui/words/words.h"

namespace ui {

sheets::Printed printed(std::shared_ptr<const results::Results> results, std::string version) {
  sheets::Printed made;
  made.date = results->job->offer.date;
  made.results = std::move(results);
  made.version = std::move(version);
  made.language = language().toStdString();
  made.say = [](const std::string& english) { return said(english).toStdString(); };
  return made;
}

InLanguage::InLanguage(const QString& wanted) : before_(language()) {
  if (wanted != before_) speak(wanted);
}
InLanguage::~InLanguage() {
  if (language() != before_) speak(before_);
}

Paper usual_paper(const plan::Job& job) { return job.heading.units == units::System::us ? Paper::letter : Paper::a4; }

sheets::Printed printed_of(const plan::Job& job, std::string version, std::string date) {
  auto results = std::make_shared<const results::Results>(results::compute(std::make_shared<const plan::Job>(job)));
  sheets::Printed made = printed(std::move(results), std::move(version));
  made.date = std::move(date);
  return made;
}

QByteArray print_made(sheets::Sheet sheet, const sheets::Printed& printed) {
  return pdf_of(LaidSheet(std::move(sheet), printed, usual_paper(printed.job())), printed);
}

problem::Result<QByteArray> print_sheet(const std::string& word, const sheets::Printed& printed, Paper paper) {
  const sheets::SheetKind* kind = sheets::sheet_kind(word);
  if (!kind)
    return std::unexpected(problem::Problem{problem::Severity::problem,
                                            "sheet-unknown",
                                            "there is no sheet '" + word + "'",
                                            "take one of the words that --help lists",
                                            {}});
  return pdf_of(LaidSheet(kind->make(printed), printed, paper), printed);
}

}  // namespace ui
