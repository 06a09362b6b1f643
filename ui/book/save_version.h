// Asks for the name and the note of a version before it is saved.
#pragma once

#include <QDialog>
#include <optional>
#include <string>

class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace ui {

struct VersionWords {
  std::string name;
  std::string note;
};

class SaveVersionDialog : public QDialog {
  Q_OBJECT
 public:
  // `total` is what stands under the drawing now; `complete` says whether every line of it has a price.
  SaveVersionDialog(const QString& job, const QString& total, bool complete, QWidget* parent = nullptr);
  VersionWords words() const;

 private:
  QLineEdit* name_;
  QPlainTextEdit* note_;
};

// Nothing where the person left it.
std::optional<VersionWords> save_version_dialog(const QString& job, const QString& total, bool complete,
                                                QWidget* parent);

}  // namespace ui
