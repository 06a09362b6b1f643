#include "ui/catalogue/new_entry.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/look/theme.h"

namespace ui {

namespace {

constexpr std::size_t of_hold_point = 7, of_caution = 8;

// The name stands where each kind has it; what a site rule says is its text.
void rename(catalogue::Entry& entry, const std::string& name) {
  std::visit(
      [&](auto& value) {
        using T = std::decay_t<decltype(value)>;
        if constexpr (std::is_same_v<T, catalogue::HoldPoint>)
          value.look_at = name;
        else if constexpr (std::is_same_v<T, catalogue::Caution> || std::is_same_v<T, catalogue::SiteRule>)
          value.text = name;
        else
          value.name.en = name;
      },
      entry);
}

}  // namespace

NewEntryDialog::NewEntryDialog(const catalogue::Stock& stock, const CatalogueGroup& group,
                               const catalogue::Entry* copied, QWidget* parent)
    : QDialog(parent),
      stock_(stock),
      group_(group),
      copied_(copied),
      name_(new QLineEdit(this)),
      id_(new QLineEdit(this)),
      wrong_(new QLabel(this)) {
  setObjectName(QStringLiteral("new-entry"));
  setWindowTitle(copied ? tr("Copy it") : tr("Add to %1").arg(group_name(group)));
  name_->setObjectName(QStringLiteral("new-entry-name"));
  name_->setAccessibleName(has_id() ? tr("Name") : tr("What it says"));
  id_->setObjectName(QStringLiteral("new-entry-id"));
  id_->setAccessibleName(tr("Id"));
  wrong_->setObjectName(QStringLiteral("new-entry-wrong"));
  wrong_->setTextFormat(Qt::PlainText);
  wrong_->setWordWrap(true);
  wrong_->setFont(ui::font(Type::text, true));
  QPalette palette = wrong_->palette();
  palette.setColor(QPalette::WindowText, theme().flag);
  wrong_->setPalette(palette);
  wrong_->hide();
  auto* form = new QFormLayout(this);
  form->setContentsMargins(px(16), px(14), px(16), px(14));
  form->setSpacing(px(10));
  form->addRow(name_->accessibleName(), name_);
  if (has_id()) {
    form->addRow(tr("Id"), id_);
    auto* words = new QLabel(tr("Small letters, digits and dashes. Jobs name it by this for ever."), this);
    words->setWordWrap(true);
    words->setFont(ui::font(Type::note));
    form->addRow(words);
  } else {
    id_->hide();
  }
  form->addRow(wrong_);
  auto* buttons = new QDialogButtonBox(this);
  auto* add = buttons->addButton(copied ? tr("Copy") : tr("Add"), QDialogButtonBox::AcceptRole);
  add->setObjectName(QStringLiteral("new-entry-add"));
  add->setDefault(true);
  make_main(add);
  buttons->addButton(tr("Leave it"), QDialogButtonBox::RejectRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  form->addRow(buttons);
  connect(name_, &QLineEdit::textChanged, this, &NewEntryDialog::named);
  connect(id_, &QLineEdit::textEdited, this, [this](const QString& text) { own_id_ = !text.isEmpty(); });
  name_->setText(copied ? tr("Copy of %1").arg(name_of(*copied)) : QString());
  name_->selectAll();
  named();
  setMinimumWidth(px(440));
}

bool NewEntryDialog::has_id() const { return group_.kind != of_hold_point && group_.kind != of_caution; }

void NewEntryDialog::named() {
  wrong_->hide();
  if (!own_id_) id_->setText(QString::fromStdString(free_id(stock_, group_.kind, name_->text())));
}

catalogue::Entry NewEntryDialog::entry() const {
  const catalogue::Id id = id_->text().trimmed().toStdString();
  const std::string name = name_->text().trimmed().toStdString();
  if (!copied_) return fresh_entry(group_, id, name);
  catalogue::Entry copy = catalogue::copied(*copied_, id);
  rename(copy, name);
  return copy;
}

void NewEntryDialog::accept() {
  const catalogue::Entry made = entry();
  QString why;
  if (name_->text().trimmed().isEmpty())
    why = tr("It has no name yet: enter what people call it.");
  else if (const auto good = catalogue::check(made); !good)
    why = told(good.error());
  else if (catalogue::find(stock_, catalogue::key_of(made)))
    why = has_id() ? tr("The catalogue has one of this id already: choose another.")
                   : tr("The catalogue says this already: say it otherwise.");
  if (why.isEmpty()) return QDialog::accept();
  wrong_->setText(why);
  wrong_->show();
}

}  // namespace ui
