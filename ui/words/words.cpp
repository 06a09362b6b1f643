#include "ui/words/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>
#include <memory>

namespace ui {

namespace {

struct Spoken {
  QString language = QStringLiteral("en");
  std::unique_ptr<QTranslator> ours;
};
Spoken& spoken() {
  static Spoken now;
  return now;
}

}  // namespace

void speak(const QString& wanted) {
  const QString machine =
      QLocale::system().language() == QLocale::Spanish ? QStringLiteral("es") : QStringLiteral("en");
  const QString chosen = wanted.isEmpty() ? machine : wanted;
  Spoken& now = spoken();
  if (now.ours) QCoreApplication::removeTranslator(now.ours.get());
  now.ours.reset();
  now.language = QStringLiteral("en");
  if (chosen == QLatin1String("en")) return;
  auto translator = std::make_unique<QTranslator>();
  if (!translator->load(QStringLiteral(":/words/groundcourse_%1.qm").arg(chosen))) return;
  QCoreApplication::installTranslator(translator.get());
  now.ours = std::move(translator);
  now.language = chosen;
}

QString language() { return spoken().language; }

QString said(const std::string& english) { return QCoreApplication::translate("core", english.c_str()); }

}  // namespace ui
