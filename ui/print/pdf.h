// A laid sheet as a PDF: fonts embedded, the same bytes on every run and machine.
#pragma once

#include <QByteArray>
#include <QImage>

#include "ui/print/pages.h"

namespace ui {

// Nothing but the sheet goes in: the time that the writer would put into it, and its ids, are made from the job's date
// and from the pages themselves.
QByteArray pdf_of(const LaidSheet& sheet, const sheets::Printed& printed);

QImage picture_of(const LaidSheet& sheet, std::size_t page, double dots_per_inch);

}  // namespace ui
