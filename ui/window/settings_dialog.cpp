#include "ui/window/settings_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <algorithm>

#include "ui/look/theme.h"

namespace ui {

namespace {
constexpr int least_px = 13;
constexpr int greatest_px = 20;
const char* const lights[] = {"system", "light", "dark"};
}  // namespace

QSettings settings_file() {
  return QSettings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("groundcourse"),
                   QStringLiteral("groundcourse"));
}

Settings read_settings() {
  const QSettings file = settings_file();
  Settings settings;
  settings.language = file.value("look/language").toString();
  if (settings.language != "en" && settings.language != "es") settings.language.clear();
  const QString light = file.value("look/light").toString();
  for (int i = 0; i < 3; ++i) {
    if (light == QLatin1String(lights[i])) settings.light = static_cast<Settings::Light>(i);
  }
  settings.text_px = std::clamp(file.value("look/text", least_px).toInt(), least_px, greatest_px);
  return settings;
}

void write_settings(const Settings& settings) {
  QSettings file = settings_file();
  file.setValue("look/language", settings.language);
  file.setValue("look/light", QString::fromLatin1(lights[static_cast<int>(settings.light)]));
  file.setValue("look/text", settings.text_px);
}

bool is_dark(const Settings& settings) {
  return settings.light == Settings::Light::system ? system_is_dark() : settings.light == Settings::Light::dark;
}

SettingsDialog::SettingsDialog(QWidget* parent) : QDialog(parent) {
  setObjectName("settings-dialog");
  setWindowTitle(tr("Settings"));
  const Settings now = read_settings();
  const auto choice = [this](const char* name, const QString& spoken) {
    auto* box = new QComboBox(this);
    box->setObjectName(QString::fromLatin1(name));
    box->setAccessibleName(spoken);
    return box;
  };
  language_ = choice("language", tr("Language"));
  language_->addItem(tr("As the machine"), QString());
  language_->addItem(QStringLiteral("English"), QStringLiteral("en"));
  language_->addItem(QStringLiteral("Español"), QStringLiteral("es"));
  language_->setCurrentIndex(std::max(0, language_->findData(now.language)));
  light_ = choice("light", tr("Light or dark"));
  light_->addItem(tr("As the machine"));
  light_->addItem(tr("Light"));
  light_->addItem(tr("Dark"));
  light_->setCurrentIndex(static_cast<int>(now.light));
  size_ = choice("text-size", tr("Size of text"));
  for (const int size : {13, 14, 16, 18, 20}) size_->addItem(tr("%1 px").arg(size), size);
  size_->setCurrentIndex(std::max(0, size_->findData(now.text_px)));
  auto* form = new QFormLayout(this);
  form->addRow(tr("Language"), language_);
  form->addRow(tr("Light or dark"), light_);
  form->addRow(tr("Size of text"), size_);
  auto* buttons = new QDialogButtonBox(this);
  buttons->addButton(tr("Take these"), QDialogButtonBox::AcceptRole);
  buttons->addButton(tr("Leave as it was"), QDialogButtonBox::RejectRole);
  connect(buttons, &QDialogButtonBox::accepted, this, [this] {
    keep();
    accept();
  });
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  form->addRow(buttons);
}

void SettingsDialog::keep() {
  Settings settings;
  settings.language = language_->currentData().toString();
  settings.light = static_cast<Settings::Light>(light_->currentIndex());
  settings.text_px = size_->currentData().toInt();
  write_settings(settings);
}

}  // namespace ui
