#include "ui/window/taped_window.h"

#include <QDialog>
#include <QVBoxLayout>

#include "ui/desk/desk.h"
#include "ui/look/theme.h"
#include "ui/panels/taped_panel.h"

namespace ui {

void show_taped_window(Desk& desk, QWidget* parent) {
  auto* dialog = parent->findChild<QDialog*>(QStringLiteral("taped-window"));
  if (dialog == nullptr) {
    dialog = new QDialog(parent);
    dialog->setObjectName(QStringLiteral("taped-window"));
    dialog->setWindowTitle(QDialog::tr("Measuring in"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    auto* rows = new QVBoxLayout(dialog);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addWidget(new TapedPanel(desk, dialog));
    dialog->resize(px(1000), px(560));
  }
  dialog->show();
  dialog->raise();
  dialog->activateWindow();
}

}  // namespace ui
