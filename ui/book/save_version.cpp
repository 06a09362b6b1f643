#include "ui/book/save_version.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

#include "ui/book/book_table.h"
#include "ui/look/theme.h"

namespace ui {

namespace {

QLabel* told(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setTextFormat(Qt::PlainText);  // a job may be called <b>
  label->setWordWrap(true);
  return label;
}

}  // namespace

SaveVersionDialog::SaveVersionDialog(const QString& job, const QString& total, bool complete, QWidget* parent)
    : QDialog(parent), name_(new QLineEdit(this)), note_(new QPlainTextEdit(this)) {
  setObjectName(QStringLiteral("save-version"));
  setWindowTitle(tr("Save a version"));
  name_->setObjectName(QStringLiteral("version-name"));
  name_->setAccessibleName(tr("Name of the version"));
  name_->setPlaceholderText(tr("As quoted, with steps, second price ..."));
  note_->setObjectName(QStringLiteral("version-note"));
  note_->setAccessibleName(tr("Note"));
  note_->setTabChangesFocus(true);
  note_->setMinimumHeight(px(72));
  auto* form = new QFormLayout(this);
  form->setContentsMargins(px(16), px(14), px(16), px(14));
  form->setSpacing(px(10));
  form->addRow(tr("Job"), told(job.left(200).simplified(), this));
  form->addRow(tr("Total"), told(complete ? total : tr("%1, not complete yet").arg(total), this));
  form->addRow(tr("Name"), name_);
  form->addRow(tr("Note"), note_);
  form->addRow(told(tr("A version stays as it is: the plan, its prices and its total can be read and printed again at "
                       "any time."),
                    this));
  auto* buttons = new QDialogButtonBox(this);
  auto* save = buttons->addButton(tr("Save the version"), QDialogButtonBox::AcceptRole);
  save->setObjectName(QStringLiteral("version-save"));
  save->setDefault(true);
  make_main(save);
  buttons->addButton(tr("Leave it"), QDialogButtonBox::RejectRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  form->addRow(buttons);
  setMinimumWidth(px(460));
}

VersionWords SaveVersionDialog::words() const {
  return {name_->text().trimmed().toStdString(), note_->toPlainText().toStdString()};
}

std::optional<VersionWords> save_version_dialog(const QString& job, const QString& total, bool complete,
                                                QWidget* parent) {
  SaveVersionDialog dialog(job, total, complete, parent);
  if (dialog.exec() != QDialog::Accepted) return std::nullopt;
  return dialog.words();
}

}  // namespace ui
