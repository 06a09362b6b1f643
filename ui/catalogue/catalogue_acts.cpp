// What the catalogue's window does with what is chosen.
#include <QCheckBox>
#include <QDate>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTableView>
#include <algorithm>

#include "files/files.h"
#include "ui/book/book_table.h"
#include "ui/book/book_words.h"
#include "ui/catalogue/catalogue_window.h"
#include "ui/catalogue/entry_picture.h"
#include "ui/catalogue/new_entry.h"
#include "ui/catalogue/price_history.h"
#include "ui/catalogue/price_list_dialog.h"
#include "ui/look/theme.h"

namespace ui {

namespace {

constexpr int group_role = Qt::UserRole;

std::string today() { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }

void colour(QLabel* label, const QColor& ink) {
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, ink);
  label->setPalette(palette);
}

// The first entry that is otherwise, so that what was taken back is seen.
std::optional<catalogue::Key> first_other(const catalogue::Stock& before, const catalogue::Stock& after) {
  for (std::size_t kind = 0; kind < catalogue::kind_words().size(); ++kind) {
    std::map<catalogue::Key, catalogue::Kept> was;
    for (catalogue::Kept& kept : catalogue::entries(before, kind)) was.emplace(catalogue::key_of(kept.entry), kept);
    for (const catalogue::Kept& kept : catalogue::entries(after, kind)) {
      const auto found = was.find(catalogue::key_of(kept.entry));
      if (found == was.end() || found->second != kept) return catalogue::key_of(kept.entry);
    }
  }
  return std::nullopt;
}

}  // namespace

void CatalogueWindow::tell(const QString& words, bool wrong) {
  said_->setText(words);
  colour(said_, wrong ? theme().flag : theme().ink2);
  said_->setVisible(!words.isEmpty());
}

void CatalogueWindow::set_units(units::System system) {
  system_ = system;
  rows_->set_units(system);
  form_->show_nothing();  // made anew: its fields read and write the other units
  show_rows();
}

void CatalogueWindow::refresh() {
  auto stock = book_.stock();
  if (!stock) return tell(told(stock.error()), true);
  stock_ = std::move(*stock);
  std::erase_if(drafts_, [this](const auto& draft) { return !catalogue::find(stock_, draft.first); });
  show_rows();
}

// The list anew; what was chosen stays chosen where it is still there, else the row where it was.
void CatalogueWindow::show_rows() {
  const std::optional<catalogue::Key> was = chosen_;
  const auto selected = table_->selectionModel()->selectedRows();
  const int at = selected.isEmpty() ? 0 : selected.front().row();
  {
    const QSignalBlocker quiet(table_->selectionModel());
    rows_->show(stock_, drafts_, group_, words_->text(), retired_->isChecked());
    set_list_widths();
    int row = was ? rows_->row_of(*was) : -1;
    if (row < 0) row = std::min(at, rows_->rowCount() - 1);
    if (row >= 0) table_->selectRow(row);
    if (row >= 0) table_->scrollTo(rows_->index(row, 0));
  }
  counted_->setText(rows_->rowCount() == 1 ? tr("1 entry") : tr("%1 entries").arg(rows_->rowCount()));
  row_chosen();
}

// The name has what the others leave: they are cut first. Only what is bought has a price.
void CatalogueWindow::set_list_widths() {
  const std::size_t kind = catalogue_groups()[group_].kind;
  set_widths(table_, 0);
  const bool priced = kind == 0 || kind == 5 || !words_->text().trimmed().isEmpty();
  table_->setColumnHidden(2, !priced);
  QHeaderView* head = table_->horizontalHeader();
  for (const auto& [column, most] : {std::pair(1, priced ? 180 : 190), {2, 120}, {3, priced ? 110 : 200}})
    head->resizeSection(column, std::min(head->sectionSize(column), px(most)));
}

void CatalogueWindow::group_chosen(int row) {
  const QListWidgetItem* item = groups_->item(row);
  if (item == nullptr || !item->data(group_role).isValid()) return;
  form_->settle();
  group_ = static_cast<std::size_t>(item->data(group_role).toInt());
  {
    const QSignalBlocker quiet(words_);
    words_->clear();
  }
  tell({}, false);
  show_rows();
}

void CatalogueWindow::choose(const catalogue::Key& key) {
  form_->settle();
  go_to(key);
}

// The keyboard stays where it is.
void CatalogueWindow::go_to(const catalogue::Key& key) {
  const auto kept = catalogue::find(stock_, key);
  if (!kept) return;
  if (kept->retired) {
    const QSignalBlocker quiet(retired_);
    retired_->setChecked(true);
  }
  if (rows_->row_of(key) < 0) {
    group_ = group_of(kept->entry);
    const QSignalBlocker quiet(groups_), quiet_too(words_);
    words_->clear();
    for (int row = 0; row < groups_->count(); ++row)
      if (groups_->item(row)->data(group_role).isValid() &&
          groups_->item(row)->data(group_role).toInt() == static_cast<int>(group_))
        groups_->setCurrentRow(row);
  }
  chosen_ = key;
  show_rows();
}

void CatalogueWindow::row_chosen() {
  const auto selected = table_->selectionModel()->selectedRows();
  const EntryRow* row = selected.isEmpty() ? nullptr : rows_->row(selected.front().row());
  const std::optional<catalogue::Key> before = seen_;
  seen_ = row != nullptr ? std::optional(row->key) : std::nullopt;
  if (seen_ != before) side_->verticalScrollBar()->setValue(0);  // another entry is read from its top
  chosen_ = row != nullptr ? std::optional(row->key) : std::nullopt;
  kept_ = chosen_ ? catalogue::find(stock_, *chosen_) : std::nullopt;
  show_entry();
}

const catalogue::Entry* CatalogueWindow::shown() const {
  if (!kept_) return nullptr;
  const auto draft = drafts_.find(*chosen_);
  return draft == drafts_.end() ? &kept_->entry : &draft->second;
}

void CatalogueWindow::show_entry() {
  const catalogue::Entry* entry = shown();
  const bool draft = entry != nullptr && drafts_.contains(*chosen_);
  copy_->setEnabled(entry != nullptr);
  retire_->setEnabled(entry != nullptr && !draft);
  retire_->setText(kept_ && kept_->retired ? tr("Offer again") : tr("Retire"));
  put_back_->setVisible(draft);
  state_->setVisible(draft || (kept_ && kept_->retired));
  if (entry == nullptr) {
    title_->setText(tr("Nothing is chosen"));
    picture_->show_nothing();
    form_->show_nothing();
    return show_prices();
  }
  title_->setText(name_of(*entry).left(300).simplified());
  state_->setText(tr("Retired: old jobs keep it, new work is not offered it"));
  colour(state_, draft ? theme().flag : theme().ink2);
  picture_->show_entry(*entry, stock_.all, system_);
  form_->show_entry(*entry, {stock_, system_, today()});
  form_->clear_faults();
  if (draft) show_what_is_wrong(*entry);
  show_prices();
}

// Why the book does not take the draft: over the fields, and under the one that it speaks of.
void CatalogueWindow::show_what_is_wrong(const catalogue::Entry& draft) {
  const auto taken = catalogue::changed(stock_, {{{*kept_, catalogue::Kept{draft, kept_->retired}}}, "typed"});
  const QString why = taken ? QString() : told(taken.error());
  state_->setText(tr("Not kept yet. Mend what is marked, or put it back. %1").arg(why).trimmed());
  if (!taken) form_->show_fault(form_->blamed_for(taken.error().code), why);
}

void CatalogueWindow::show_prices() {
  if (!kept_ || kept_->entry.index() != 0) return prices_->show_prices({});
  const auto points = book_.price_history(chosen_->id);
  if (!points) return tell(told(points.error()), true);
  prices_->show_prices(*points);
}

bool CatalogueWindow::write(const catalogue::Change& change) {
  if (const auto done = book_.change(change); !done) {
    tell(told(done.error()), true);
    return false;
  }
  warned_ = false;
  tell({}, false);
  refresh();
  emit changed();
  return true;
}

// One edit is one change. What the book refuses is kept as a draft, with the sentence at the field it speaks of.
void CatalogueWindow::give(const QString& field, const Value& value) {
  if (!kept_) return;
  const catalogue::Entry now = *shown();
  const auto around = Around{stock_, system_, today()};
  const auto fields = fields_of(now, around);
  const auto of = std::ranges::find(fields, field.toStdString(), [](const EntryField& one) { return one.look.id; });
  if (of == fields.end()) return;
  form_->show_fault(of->look.id, {});
  const auto after = of->set(now, value);
  if (!after) return form_->show_fault(of->look.id, after.error());
  const catalogue::Key key = *chosen_;
  if (*after == kept_->entry) {
    drafts_.erase(key);
    return show_rows();
  }
  const auto done = book_.change({{{*kept_, catalogue::Kept{*after, kept_->retired}}}, "typed"});
  if (done) {
    drafts_.erase(key);
    warned_ = false;
    tell({}, false);
    chosen_ = catalogue::key_of(*after);
    refresh();
    go_to(catalogue::key_of(*after));
    emit changed();
    return;
  }
  // Someone else changed it meanwhile: this one field is set on what is there now. With more than one waiting a person
  // looks first.
  if (done.error().code == "catalogue-changed") {
    const bool alone = !drafts_.contains(key);
    refresh();
    if (alone && kept_ && *chosen_ == key && kept_->entry != now) return give(field, value);
    tell(told(done.error()), true);
  }
  drafts_[key] = *after;
  show_rows();
  const std::string blamed = form_->blamed_for(done.error().code);
  form_->show_fault(blamed.empty() ? of->look.id : blamed, told(done.error()));
}

void CatalogueWindow::put_back() {
  if (!chosen_) return;
  drafts_.erase(*chosen_);
  warned_ = false;
  tell({}, false);
  form_->clear_faults();
  show_rows();
}

void CatalogueWindow::add(bool copy) {
  form_->settle();
  if (copy && !kept_) return;
  const std::size_t group = copy ? group_of(kept_->entry) : group_;
  NewEntryDialog dialog(stock_, catalogue_groups()[group], copy ? &kept_->entry : nullptr, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const catalogue::Entry made = dialog.entry();
  if (write({{{std::nullopt, catalogue::Kept{made, false}}}, "typed"})) choose(catalogue::key_of(made));
}

void CatalogueWindow::retire() {
  form_->settle();
  if (!kept_) return;
  const catalogue::Kept before = *kept_;
  const QString name = name_of(before.entry).left(120).simplified();
  if (!write({{{before, catalogue::Kept{before.entry, !before.retired}}}, "typed"})) return;
  tell(before.retired ? tr("%1 is offered again.").arg(name)
                      : tr("%1 is retired. Old jobs keep it; Undo offers it again.").arg(name),
       false);
}

void CatalogueWindow::step(bool back) {
  form_->settle();
  const auto done = back ? book_.undo() : book_.redo();
  if (!done) return tell(told(done.error()), true);
  if (!*done)
    return tell(back ? tr("Nothing is left to be taken back.") : tr("Nothing is left to be done again."), false);
  const catalogue::Stock before = stock_;
  refresh();
  emit changed();
  const auto other = first_other(before, stock_);
  if (other) choose(*other);
  const auto kept = other ? catalogue::find(stock_, *other) : std::nullopt;
  const QString name = kept ? name_of(kept->entry).left(120).simplified() : QString();
  const QString what = back ? tr("Taken back") : tr("Done again");
  tell(name.isEmpty() ? what : what + QStringLiteral(": ") + name, false);
}

void CatalogueWindow::ask_price_file() {
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Price list from a file"), {}, tr("Comma separated values (*.csv)"));
  if (!path.isEmpty()) preview_prices(path);
}

void CatalogueWindow::preview_prices(const QString& path) {
  form_->settle();
  const auto text = files::read_file(path.toStdString());
  if (!text)
    return tell(QString::fromStdString(
                    problem::sentence(problem::in_file(text.error(), QFileInfo(path).fileName().toStdString()))),
                true);
  auto list = files::read_price_list(*text, QFileInfo(path).fileName().toStdString(), stock_, today());
  if (!list) return tell(QString::fromStdString(problem::sentence(list.error())), true);
  tell({}, false);
  auto* dialog = new PriceListDialog(std::move(*list), stock_, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog, held = stock_] {
    const auto change = files::price_change(held, dialog->list(), dialog->chosen());
    const auto count = static_cast<int>(change.steps.size());
    if (!write(change)) return;
    tell(count == 1 ? tr("1 price was taken from %1.").arg(QString::fromStdString(change.source))
                    : tr("%1 prices were taken from %2.").arg(count).arg(QString::fromStdString(change.source)),
         false);
  });
  dialog->open();
}

// What is not kept is shown and named before the window goes; asked to go once more, it goes.
void CatalogueWindow::reject() {
  form_->settle();
  if (drafts_.empty() || warned_) return QDialog::reject();
  choose(drafts_.begin()->first);
  warned_ = true;
  tell(tr("%1 is not kept yet. Mend what is marked or put it back; close again to leave it.")
           .arg(name_of(drafts_.begin()->second).left(120).simplified()),
       true);
}

}  // namespace ui
