#include "print_command.h"

#include <QApplication>
#include <QHash>

#include "commands.h"
#include "sheets/all_sheets.h"
#include "ui/look/theme.h"
#include "ui/print/plan_picture.h"
#include "ui/print/print_sheet.h"
#include "ui/words/words.h"

namespace app {

std::vector<std::string> sheet_words() {
  std::vector<std::string> words;
  for (const sheets::SheetKind& kind : sheets::sheet_kinds()) words.emplace_back(kind.word);
  return words;
}

std::string sheets_told() {
  std::string told;
  for (const sheets::SheetKind& kind : sheets::sheet_kinds()) told += std::string(kind.word) + ": " + kind.about + "\n";
  return told;
}

namespace {

// No display is needed, and the same job is to give the same bytes: fonts are numbered by hash.
void without_display() {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QHashSeed::setDeterministicGlobalSeed();
}

int refuse_font(const QString& fault) {
  return refuse({problem::Severity::problem, "font-missing", fault.toStdString(), "", {}});
}

std::shared_ptr<const results::Results> results_of(plan::Job job) {
  return std::make_shared<const results::Results>(results::compute(std::make_shared<const plan::Job>(std::move(job))));
}

}  // namespace

int draw_picture(int count, char** argument_words, const DrawWords& words) {
  if (words.form == "png" && words.output.empty()) {
    refuse({problem::Severity::problem,
            "output-words",
            "a picture is no text for a terminal",
            "name its file with --output F.png",
            {}});
    return 2;
  }
  auto job = read_job(words.job);
  if (!job) return refuse(job.error());
  without_display();
  QApplication application(count, argument_words);
  if (const QString fault = ui::prepare(application); !fault.isEmpty()) return refuse_font(fault);
  const auto results = results_of(std::move(*job));
  const QByteArray bytes = words.form == "svg" ? ui::plan_svg(*results) : ui::plan_png(*results);
  return deliver(bytes.toStdString(), words.output);
}

int print(int count, char** argument_words, const PrintWords& words) {
  auto job = read_job(words.job);
  if (!job) return refuse(job.error());
  without_display();
  QApplication application(count, argument_words);
  QCoreApplication::setApplicationName(QStringLiteral("groundcourse"));
  if (const QString fault = ui::prepare(application); !fault.isEmpty()) return refuse_font(fault);
  ui::speak(QString::fromStdString(words.language));
  const auto results = results_of(std::move(*job));
  const ui::Paper paper = words.paper == "a4"       ? ui::Paper::a4
                          : words.paper == "letter" ? ui::Paper::letter
                                                    : ui::usual_paper(*results->job);
  sheets::Printed with = ui::printed(results);
  using Detail = sheets::Detail;
  with.detail = words.detail == "total" ? Detail::total : words.detail == "lines" ? Detail::lines : Detail::stages;
  const auto bytes = ui::print_sheet(words.sheet, with, paper);
  if (!bytes) return refuse(bytes.error());
  return deliver(bytes->toStdString(), words.output);
}

}  // namespace app
