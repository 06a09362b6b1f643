#include "store/read_all.h"

#include <cstdio>

#include "files/files.h"
#include "files/kept_text.h"
#include "store/bodies.h"
#include "store/catalogue_book.h"
#include "store/jobs.h"

namespace store {

namespace {

int say(const problem::Problem& fault) {
  std::fprintf(stderr, "%s\n", problem::sentence(fault).c_str());
  return told;
}

}  // namespace

int read_all(const std::string& folder) {
  auto book = JobBook::open(folder);
  if (!book) return say(book.error());
  const auto rows = book->jobs();
  if (!rows) return say(rows.error());
  std::string versions, jobs;
  for (const JobRow& row : *rows) {
    const auto job = book->read(row.id);
    if (!job) return say(job.error());
    jobs += row.name + row.number + files::write_job(*job);
    const auto saved = book->versions(row.id);
    if (!saved) return say(saved.error());
    for (const VersionRow& one : *saved) {
      const auto version = book->version(one.id);
      if (!version) return say(version.error());
      const auto entries = book->entries(one.id);
      if (!entries) return say(entries.error());
      for (const estimate::Entry& entry : *entries)
        versions += entry.line.item + entry.ticket + entry.note + std::to_string(entry.quantity);
      versions += one.name + one.sha256 + files::write_job(version->job) + files::write_kept(version->kept);
    }
  }
  auto catalogue = CatalogueBook::open(folder);
  if (!catalogue) return say(catalogue.error());
  const auto items = catalogue->read();
  if (!items) return say(items.error());
  plan::Job bare;
  bare.catalogue = std::make_shared<const catalogue::Catalogue>(*items);
  std::printf("%s\n%s\n%s\n", sha256(versions).c_str(), sha256(jobs).c_str(), sha256(files::write_job(bare)).c_str());
  return 0;
}

int read_job_file(const std::string& path) {
  const auto text = files::read_file(path);
  if (!text) return say(text.error());
  const auto job = files::read_job(*text, path);
  if (!job) return say(job.error());
  std::printf("%s\n", sha256(files::write_job(*job)).c_str());
  return 0;
}

int open_and_close(const std::string& folder) {
  const auto book = JobBook::open(folder);
  return book ? 0 : say(book.error());
}

}  // namespace store
