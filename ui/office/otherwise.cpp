#include "ui/office/otherwise.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <algorithm>

#include "ui/book/book_table.h"
#include "ui/look/theme.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

const std::vector<std::string> paved{"paved-area"};

// The panel's own field of an area: what is chosen here means the same as there.
std::optional<Field> field_of(const plan::Job& job, const plan::ElementId& area, Editor editor) {
  const auto fields = fields_of(job, area, editor == Editor::pattern ? Page::pattern : Page::build_up);
  const auto found = std::ranges::find(fields, editor, &Field::editor);
  return found == fields.end() ? std::nullopt : std::optional(*found);
}

plan::Job with_choice(plan::Job job, const catalogue::Catalogue* book, const std::vector<plan::ElementId>& areas,
                      Editor editor, const plan::Id& id) {
  if (id.empty()) return job;
  for (const plan::ElementId& area : areas)
    if (const auto field = field_of(job, area, editor)) job = chosen(job, book, *field, id);
  return job;
}

// Those of the first area that has such a field: they are the same for all.
std::vector<Offer> offers_of(const plan::Job& job, const catalogue::Catalogue* book, Editor editor) {
  for (const Choice& area : elements_of(job, paved))
    if (const auto field = field_of(job, area.key, editor)) return offers(job, book, *field);
  return {};
}

}  // namespace

plan::Job built_otherwise(const plan::Job& job, const catalogue::Catalogue* book, const Otherwise& wanted) {
  return with_choice(with_choice(job, book, wanted.areas, Editor::pattern, wanted.pattern), book, wanted.areas,
                     Editor::build_up, wanted.build_up);
}

QString in_words(const plan::Job& job, const catalogue::Catalogue* book, const Otherwise& wanted) {
  QStringList words;
  const auto say = [&](Editor editor, const plan::Id& id) {
    if (id.empty()) return;
    for (const Offer& offer : offers_of(job, book, editor))
      if (offer.id == id) words << offer.name;
  };
  say(Editor::pattern, wanted.pattern);
  say(Editor::build_up, wanted.build_up);
  return words.join(QStringLiteral(", "));
}

OtherwiseDialog::OtherwiseDialog(const plan::Job& job, const catalogue::Catalogue* book,
                                 const std::vector<plan::ElementId>& selected, QWidget* parent)
    : QDialog(parent), areas_(new QListWidget(this)) {
  setObjectName(QStringLiteral("otherwise"));
  setWindowTitle(tr("The same job built otherwise"));
  areas_->setObjectName(QStringLiteral("otherwise-areas"));
  areas_->setAccessibleName(tr("Areas that are built otherwise"));
  const std::vector<Choice> all = elements_of(job, paved);
  const auto is_selected = [&](const Choice& area) { return std::ranges::find(selected, area.key) != selected.end(); };
  const bool any = std::ranges::any_of(all, is_selected);
  for (const Choice& area : all) {
    auto* row = new QListWidgetItem(area.label, areas_);
    row->setData(Qt::UserRole, QString::fromStdString(area.key));
    row->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    row->setCheckState(!any || is_selected(area) ? Qt::Checked : Qt::Unchecked);
  }
  patterns_ = choice("otherwise-pattern", tr("Pattern"), offers_of(job, book, Editor::pattern));
  build_ups_ = choice("otherwise-build-up", tr("Build-up"), offers_of(job, book, Editor::build_up));
  auto* words = new QLabel(tr("The job stays as it is. What it would come to is shown beside it."), this);
  words->setWordWrap(true);
  auto* buttons = new QDialogButtonBox(this);
  done_ = buttons->addButton(tr("Compare"), QDialogButtonBox::AcceptRole);
  done_->setObjectName(QStringLiteral("otherwise-done"));
  done_->setDefault(true);
  make_main(done_);
  buttons->addButton(tr("Leave it"), QDialogButtonBox::RejectRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* form = new QFormLayout(this);
  form->setContentsMargins(px(16), px(14), px(16), px(14));
  form->setSpacing(px(10));
  form->addRow(words);
  form->addRow(tr("Areas"), areas_);
  form->addRow(tr("Pattern"), patterns_);
  form->addRow(tr("Build-up"), build_ups_);
  form->addRow(buttons);
  connect(areas_, &QListWidget::itemChanged, this, &OtherwiseDialog::changed);
  changed();
  resize(px(520), px(440));
}

QComboBox* OtherwiseDialog::choice(const char* name, const QString& spoken, const std::vector<Offer>& offers) {
  auto* box = new QComboBox(this);
  box->setObjectName(QString::fromLatin1(name));
  box->setAccessibleName(spoken);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->addItem(tr("as it is"), QString());
  for (const Offer& offer : offers)
    box->addItem(offer.from_book ? tr("%1 (of the book)").arg(offer.name) : offer.name,
                 QString::fromStdString(offer.id));
  connect(box, &QComboBox::currentIndexChanged, this, &OtherwiseDialog::changed);
  return box;
}

Otherwise OtherwiseDialog::wanted() const {
  Otherwise found;
  for (int row = 0; row < areas_->count(); ++row)
    if (areas_->item(row)->checkState() == Qt::Checked)
      found.areas.push_back(areas_->item(row)->data(Qt::UserRole).toString().toStdString());
  found.pattern = patterns_->currentData().toString().toStdString();
  found.build_up = build_ups_->currentData().toString().toStdString();
  return found;
}

void OtherwiseDialog::changed() {
  if (done_ == nullptr || build_ups_ == nullptr) return;
  const Otherwise now = wanted();
  done_->setEnabled(!now.areas.empty() && !(now.pattern.empty() && now.build_up.empty()));
}

std::optional<Otherwise> ask_otherwise(const plan::Job& job, const catalogue::Catalogue* book,
                                       const std::vector<plan::ElementId>& selected, QWidget* parent) {
  if (elements_of(job, paved).empty()) return std::nullopt;
  OtherwiseDialog dialog(job, book, selected, parent);
  if (dialog.exec() != QDialog::Accepted) return std::nullopt;
  return dialog.wanted();
}

}  // namespace ui
