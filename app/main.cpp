// Reads the words, then does one thing. Exit 0 done, 1 a fault in the input, 2 wrong usage.
#include <QCoreApplication>

#include <CLI/CLI.hpp>
#include <clocale>
#include <cstdio>
#include <functional>
#include <optional>

#include "commands.h"
#include "print_command.h"
#include "ui/window/run_window.h"

namespace {

using Action = std::function<int()>;

void add_takeoff(CLI::App& program, Action& action) {
  auto words = std::make_shared<app::TakeoffWords>();
  CLI::App* command = program.add_subcommand("takeoff", "What the job needs, priced, each number with its working");
  command->add_option("JOB", words->job, "job file")->required();
  command->add_option("--as", words->form, "text, csv, json or xlsx")
      ->check(CLI::IsMember({"text", "csv", "json", "xlsx"}));
  command->add_option("--separator", words->separator, "between the cells of a CSV: a comma where none is given")
      ->check(CLI::IsMember({",", ";", "tab"}));
  command->add_flag("--bom", words->byte_order_mark, "a CSV begins with a byte order mark, for spreadsheets that ask");
  command->add_option("--output", words->output, "file to write; standard output otherwise");
  command->callback([words, &action] { action = [words] { return app::takeoff(*words); }; });
}

// Pictures are painted with fonts: they make their own application, as sheets do.
void add_draw(CLI::App& program, Action& action, std::optional<app::DrawWords>& picture) {
  auto words = std::make_shared<app::DrawWords>();
  CLI::App* command = program.add_subcommand("draw", "The drawing of the job, for other programs");
  command->add_option("JOB", words->job, "job file")->required();
  command
      ->add_option("--as", words->form,
                   "dxf (release 2000, in the job's unit), geojson (in metres), or a picture: svg, png")
      ->check(CLI::IsMember({"dxf", "geojson", "svg", "png"}));
  command->add_option("--output", words->output, "file to write; standard output otherwise");
  command->callback([words, &action, &picture] {
    if (words->form == "svg" || words->form == "png")
      picture = *words;
    else
      action = [words] { return app::draw(*words); };
  });
}

void add_check(CLI::App& program, Action& action) {
  auto job = std::make_shared<std::string>();
  CLI::App* command = program.add_subcommand("check", "Problems of the job, a line each");
  command->add_option("JOB", *job, "job file")->required();
  command->callback([job, &action] { action = [job] { return app::check(*job); }; });
}

void add_start(CLI::App& program, Action& action) {
  auto words = std::make_shared<app::StartWords>();
  CLI::App* command = program.add_subcommand("start", "Start points of a paved area, best first");
  command->add_option("JOB", words->job, "job file")->required();
  command->add_option("ELEMENT", words->element, "id of the paved area")->required();
  command->add_option("--for", words->what, "fewest cuts, fewest slivers, or widest cut if the site is not as drawn")
      ->check(CLI::IsMember({"cuts", "slivers", "site"}));
  command->add_option("--output", words->output, "the job with the best start point");
  command->callback([words, &action] { action = [words] { return app::start(*words); }; });
}

void add_import(CLI::App& program, Action& action) {
  auto words = std::make_shared<app::ImportWords>();
  CLI::App* command =
      program.add_subcommand("import", "A job file from outlines or points that somebody else drew or measured");
  command
      ->add_option("FILE", words->file,
                   "GeoJSON, or survey points: CSV of point, northing, easting, height, description")
      ->required();
  command
      ->add_option("--units", words->units,
                   "unit of plain coordinates and of survey points; longitude and latitude otherwise")
      ->check(CLI::IsMember({"m", "mm", "ft", "us-ft", "in"}));
  command
      ->add_option("--layer", words->layers,
                   "NAME=KIND: what a layer's features are, or points of a code (level:finished); * is any not named")
      ->take_all()
      ->allow_extra_args(false);
  command->add_option("--into", words->into, "job file that survey points are added to; a new job otherwise");
  command->add_option("--output", words->output, "job file to write")->required();
  command->callback([words, &action] { action = [words] { return app::import(*words); }; });
}

void add_setting_out(CLI::App& program, Action& action) {
  auto words = std::make_shared<app::SettingOutWords>();
  CLI::App* command = program.add_subcommand("setting-out", "What the crew sets out from the base line, as CSV");
  command->add_option("JOB", words->job, "job file")->required();
  command->add_option("--output", words->output, "file to write; standard output otherwise");
  command->callback([words, &action] { action = [words] { return app::setting_out(*words); }; });
}

// It makes its own application, with fonts: `print` is left empty where the command is not given.
void add_print(CLI::App& program, std::optional<app::PrintWords>& print) {
  auto words = std::make_shared<app::PrintWords>();
  CLI::App* command = program.add_subcommand("print", "A sheet for crew, supplier, customer or office, as a PDF");
  command->footer("SHEET is one of\n" + app::sheets_told());
  command->add_option("SHEET", words->sheet, "which sheet")->required()->check(CLI::IsMember(app::sheet_words()));
  command->add_option("JOB", words->job, "job file")->required();
  command->add_option("--output", words->output, "PDF file to write")->required();
  command->add_option("--language", words->language, "en or es")->check(CLI::IsMember({"en", "es"}));
  command->add_option("--detail", words->detail, "how far the quote opens its price: total, stages or lines")
      ->check(CLI::IsMember({"total", "stages", "lines"}));
  command->add_option("--paper", words->paper, "a4 or letter; letter for a US job otherwise, a4 for a metric one")
      ->check(CLI::IsMember({"a4", "letter"}));
  command->callback([words, &print] { print = *words; });
}

void add_catalogue(CLI::App& program, Action& action) {
  CLI::App* command = program.add_subcommand("catalogue", "The catalogue of this machine's job book");
  command->require_subcommand(1);
  command->add_subcommand("list", "Items with their prices")->callback([&action] { action = app::catalogue_list; });
  auto in = std::make_shared<std::string>();
  CLI::App* import = command->add_subcommand("import", "Take items from a CSV file, all or none");
  import->add_option("FILE", *in, "CSV")->required();
  import->callback([in, &action] { action = [in] { return app::catalogue_import(*in); }; });
  auto out = std::make_shared<std::string>();
  CLI::App* export_to = command->add_subcommand("export", "Write all items to a CSV file");
  export_to->add_option("FILE", *out, "CSV")->required();
  export_to->callback([out, &action] { action = [out] { return app::catalogue_export(*out); }; });
}

// The file of the window's job: none of the commands, so a word that ends in .json.
std::string job_file_word(std::string& word) {
  const bool json = word.size() > 5 && word.ends_with(".json");
  return json ? std::string() : "a command, or a job file whose name ends in .json: not '" + word + "'";
}

int run_command(int count, char** words, const Action& action) {
  // Without it Qt looks for its database driver far longer than a takeoff takes.
  const QCoreApplication application(count, words);
  // Qt has taken over the person's locale. Whatever writes numbers by printf (spreadsheets) keeps its decimal points.
  std::setlocale(LC_NUMERIC, "C");
  QCoreApplication::setApplicationName("groundcourse");
  return action();
}

}  // namespace

int main(int count, char** words) {
  CLI::App program("Groundcourse: from the drawing of a paved outdoor space to a priced order list");
  program.require_subcommand(0, 1);
  std::string job;
  program.add_option("JOB", job, "job file to open in the window; without one the job that was open last")
      ->check(CLI::Validator(job_file_word, "JOB.json"));
  Action action;
  add_takeoff(program, action);
  std::optional<app::DrawWords> picture;
  add_draw(program, action, picture);
  add_check(program, action);
  add_start(program, action);
  add_import(program, action);
  add_setting_out(program, action);
  add_catalogue(program, action);
  std::optional<app::PrintWords> print;
  add_print(program, print);
  try {
    program.parse(count, words);
  } catch (const CLI::ParseError& said) {
    const bool asked_for_help = said.get_exit_code() == 0;
    program.exit(said);
    return asked_for_help ? 0 : 2;
  }
  if (print) return app::print(count, words, *print);
  if (picture) return app::draw_picture(count, words, *picture);
  return action ? run_command(count, words, action) : ui::run_window(count, words, job);
}
