// The program that decodes one picture of a stranger and ends: groundcourse-picture IN OUT MOST_PIXELS. It is run with
// limits (limited_run.h); what goes wrong in a decoder ends here and not in the window. Exit 0 done, 1 not a picture,
// 3 no memory for it.
#include <QCoreApplication>
#include <QImageReader>
#include <new>

#include "ui/plan/picture_file.h"

int main(int count, char** words) try {
  const QCoreApplication application(count, words);
  const QStringList said = QCoreApplication::arguments();
  if (said.size() != 4) return 2;
  const qint64 most = said[3].toLongLong();
  // What the reader may take: four bytes a pixel, in whole MB.
  QImageReader::setAllocationLimit(static_cast<int>(most * 4 / 1'000'000 + 1));
  QImageReader reader(said[1]);
  reader.setDecideFormatFromContent(true);
  reader.setAutoTransform(true);
  const QSize size = reader.size();
  if (!size.isValid() || qint64{size.width()} * size.height() > most) return 1;
  QImage picture;
  if (!reader.read(&picture)) return 1;
  return ui::write_picture_file(said[2], picture) ? 0 : 3;
} catch (const std::bad_alloc&) {
  return 3;
}
