// What a PDF says, as a reader that is not ours finds it.
#pragma once

#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

inline QString printed_text(const QByteArray& pdf) {
  const QTemporaryDir folder;
  QFile file(folder.filePath("printed.pdf"));
  EXPECT_TRUE(file.open(QIODevice::WriteOnly));
  EXPECT_EQ(file.write(pdf), pdf.size());
  file.close();
  QProcess reader;
  reader.start("pdftotext", {"-layout", file.fileName(), "-"});
  EXPECT_TRUE(reader.waitForFinished(60000));
  return QString::fromUtf8(reader.readAllStandardOutput());
}
