// What a person chose for the program itself: language, light, size of text. Kept with the window's own settings in the
// configuration folder of the machine.
#pragma once

#include <QComboBox>
#include <QDialog>
#include <QSettings>

namespace ui {

struct Settings {
  QString language;  // "en", "es"; empty: the machine's
  enum class Light { system, light, dark } light = Light::system;
  int text_px = 13;  // 13 to 20
  bool operator==(const Settings&) const = default;
};

QSettings settings_file();  // its own file; what can't be read there counts as not chosen
Settings read_settings();
void write_settings(const Settings& settings);
bool is_dark(const Settings& settings);

class SettingsDialog : public QDialog {
  Q_OBJECT
 public:
  explicit SettingsDialog(QWidget* parent = nullptr);

 private:
  void keep();
  QComboBox* language_;
  QComboBox* light_;
  QComboBox* size_;
};

}  // namespace ui
