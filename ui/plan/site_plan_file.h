// A plan that somebody else drew, read from the bytes of its file: a picture (PNG, JPEG), a page (PDF) or outlines
// (GeoJSON, DXF). What a file is shows in its first bytes; for outlines its name decides. Files of strangers are read
// with limits, and what is refused is refused with a sentence.
//
// A page is drawn by poppler's programs (pdfinfo, pdftoppm) and a picture is decoded by groundcourse-picture, which
// stands beside this program: each a process of its own that may use so much time and memory and write so much, so that
// a file made to harm takes nothing down with it.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QObject>
#include <QPainterPath>
#include <QString>
#include <QStringList>
#include <functional>
#include <memory>
#include <vector>

#include "plan/drawn.h"
#include "problem/problem.h"

namespace ui {

struct LoadedPlan {
  // The picture, then its copies of half the width and height, down to 512 px. Empty of outlines. Pixel (0, 0) is the
  // upper left one, as in the file.
  std::vector<QImage> copies;
  double dots_per_inch = 0;  // of a page: how finely it was drawn; 0 of pictures
  int pages = 1;             // in the file

  // Outlines, one path each: one unit of the file is one unit, y goes up.
  std::vector<QPainterPath> outlines;
  QRectF bounds;  // of all of them

  bool picture() const { return !copies.empty(); }
  QSize size() const { return copies.empty() ? QSize() : copies.front().size(); }
};
using LoadedPlanPtr = std::shared_ptr<const LoadedPlan>;

struct LoadLimits {
  qint64 bytes = 200'000'000;
  qint64 pixels = 100'000'000;
  int cpu_seconds = 20;  // of each program that draws a page or decodes a picture
  int wait_seconds = 30;
  qint64 memory_bytes = qint64{1} << 30;  // of a page; a picture gets what its size takes
  QStringList programs_in;                // where these programs are looked for; empty: the PATH, and beside this one
};

// The file's bytes, to be kept in the job book and read again from there.
problem::Result<QByteArray> site_plan_bytes(const QString& path, const LoadLimits& limits = {});

// Takes as long as it takes: for threads and tests. `page` counts from 1.
problem::Result<LoadedPlanPtr> load_site_plan(const QByteArray& bytes, const QString& name, int page = 1,
                                              const LoadLimits& limits = {});

// In a thread of its own; `done` is called on the window's thread, unless `owner` is gone by then.
using PlanLoaded = std::function<void(problem::Result<LoadedPlanPtr>)>;
void load_site_plan_later(const QByteArray& bytes, const QString& name, int page, QObject* owner, PlanLoaded done,
                          const LoadLimits& limits = {});

// Pages of a PDF, drawn: the part with the other programs.
struct DrawnPage {
  QImage picture;
  double dots_per_inch = 0;
  int pages = 1;
};
problem::Result<DrawnPage> draw_pdf_page(const QByteArray& bytes, const QString& name, int page,
                                         const LoadLimits& limits);
problem::Result<QImage> read_picture(const QByteArray& bytes, const QString& name, const LoadLimits& limits);

}  // namespace ui
