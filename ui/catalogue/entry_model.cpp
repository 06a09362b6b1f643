#include "ui/catalogue/entry_model.h"

#include <QFont>
#include <algorithm>

#include "takeoff/stage.h"
#include "ui/catalogue/entry_making.h"
#include "ui/look/theme.h"
#include "ui/panels/length_field.h"
#include "ui/panels/panel_words.h"

namespace ui {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words.substr(0, 400)).simplified(); }

QString stage_words_of(const std::string& word) {
  const auto stage = takeoff::stage_of(word);
  return stage ? said(takeoff::title(*stage)) : text(word);
}

struct SizeOf {
  units::System system;
  QString operator()(const catalogue::Item& item) const {
    QStringList sides;
    for (const auto& side : {item.length, item.width, item.height})
      if (side) sides << shown_length(*side, system);
    const QString size = sides.join(QStringLiteral(" × "));
    return size.isEmpty() ? said(item.unit) : size;
  }
  QString operator()(const catalogue::Pattern& pattern) const { return text(pattern.fits); }
  QString operator()(const catalogue::BuildUp& build_up) const {
    const auto count = build_up.layers.size();
    return count == 1 ? Entries::tr("%1, 1 layer").arg(said(build_up.use))
                      : Entries::tr("%1, %2 layers").arg(said(build_up.use)).arg(count);
  }
  QString operator()(const catalogue::Limit& limit) const {
    const auto number = [](const std::optional<double>& value) { return value ? QString::number(*value) : QString(); };
    QString range = limit.least && limit.greatest ? Entries::tr("%1 to %2").arg(*limit.least).arg(*limit.greatest)
                    : limit.least                 ? Entries::tr("at least %1").arg(*limit.least)
                    : limit.greatest              ? Entries::tr("at most %1").arg(*limit.greatest)
                                                  : QString();
    if (limit.usual && !range.isEmpty()) range += Entries::tr(", usual %1").arg(*limit.usual);
    if (range.isEmpty()) range = number(limit.usual);
    return limit.unit.empty() ? range : range + QLatin1Char(' ') + said(limit.unit);
  }
  QString operator()(const catalogue::Rate& rate) const {
    return Entries::tr("%1 h a %2").arg(shown_number(rate.hours_per_si_unit), said(rate.si_unit));
  }
  QString operator()(const catalogue::Supplier& supplier) const { return text(supplier.sells); }
  QString operator()(const catalogue::Junction& junction) const {
    return text(junction.side_a) + QStringLiteral(" – ") + text(junction.side_b);
  }
  QString operator()(const catalogue::HoldPoint& point) const { return stage_words_of(point.stage); }
  QString operator()(const catalogue::Caution& caution) const { return stage_words_of(caution.stage); }
  QString operator()(const catalogue::SiteRule& rule) const {
    const QString near = text(rule.mark) + QStringLiteral(" – ") + text(rule.against);
    return rule.distance ? near + QStringLiteral(", ") + shown_length(*rule.distance, system) : near;
  }
};

struct FromOf {
  const catalogue::Catalogue& all;
  QString operator()(const catalogue::Item& item) const {
    const auto found = all.suppliers.find(item.supplier);
    return found == all.suppliers.end() ? text(item.supplier) : own_name(found->second.name, item.supplier);
  }
  QString operator()(const catalogue::Pattern& pattern) const { return text(pattern.advice); }
  QString operator()(const catalogue::BuildUp& build_up) const { return text(build_up.surface); }
  QString operator()(const catalogue::Supplier& supplier) const { return text(supplier.least_order); }
  template <class T>
  QString operator()(const T& entry) const {
    return text(entry.source);
  }
};

EntryRow row_of_entry(const catalogue::Stock& stock, const catalogue::Kept& kept, const catalogue::Entry& shown,
                      units::System system) {
  EntryRow row;
  row.key = catalogue::key_of(kept.entry);
  row.name = name_of(shown).left(400).simplified();
  row.size = size_of(shown, system);
  row.from = std::visit(FromOf{stock.all}, shown);
  row.retired = kept.retired;
  if (const auto* item = std::get_if<catalogue::Item>(&shown)) {
    row.price = shown_price(item->price);
    row.price_order = item->price ? static_cast<double>(item->price->amount.coins()) : -1e18;
  }
  if (const auto* supplier = std::get_if<catalogue::Supplier>(&shown)) {
    row.price = shown_money(supplier->delivery, plan::Heading());
    row.price_order = static_cast<double>(supplier->delivery.coins());
  }
  return row;
}

bool holds(const EntryRow& row, const catalogue::Entry& entry, const QStringList& words) {
  QString all = row.name + QLatin1Char(' ') + QString::fromStdString(row.key.id) + QLatin1Char(' ') + row.size +
                QLatin1Char(' ') + row.from;
  if (const auto* item = std::get_if<catalogue::Item>(&entry)) {
    all += QLatin1Char(' ') + QString::fromStdString(item->name.en + " " + item->name.es + " " + item->kind);
    for (const auto& [key, value] : item->details) all += QLatin1Char(' ') + QString::fromStdString(value);
  }
  return std::ranges::all_of(words, [&](const QString& word) { return all.contains(word, Qt::CaseInsensitive); });
}

}  // namespace

QString size_of(const catalogue::Entry& entry, units::System system) { return std::visit(SizeOf{system}, entry); }

void EntryModel::show(const catalogue::Stock& stock, const Drafts& drafts, std::size_t group, const QString& words,
                      bool retired) {
  beginResetModel();
  rows_.clear();
  const QStringList wanted = words.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  searched_ = !wanted.isEmpty();
  const CatalogueGroup& of = catalogue_groups()[group];
  kind_ = of.kind;
  for (std::size_t kind = 0; kind < catalogue::kind_words().size(); ++kind) {
    if (!searched_ && kind != of.kind) continue;
    for (const catalogue::Kept& kept : catalogue::entries(stock, kind)) {
      if ((kept.retired && !retired) || (!searched_ && !belongs(of, kept.entry))) continue;
      const auto draft = drafts.find(catalogue::key_of(kept.entry));
      const catalogue::Entry& shown = draft == drafts.end() ? kept.entry : draft->second;
      EntryRow row = row_of_entry(stock, kept, shown, system_);
      row.state = draft != drafts.end() ? tr("not kept yet") : kept.retired ? tr("retired") : tr("offered");
      if (!searched_ || holds(row, shown, wanted)) rows_.push_back(std::move(row));
    }
  }
  put_in_order();
  endResetModel();
}

void EntryModel::put_in_order() {
  const auto word = [this](const EntryRow& row) -> const QString& {
    switch (by_) {
      case 1: return row.size;
      case 3: return row.from;
      case 4: return row.state;
      default: return row.name;
    }
  };
  const auto before = [&](const EntryRow& a, const EntryRow& b) {
    if (by_ == 2 && a.price_order != b.price_order) return a.price_order < b.price_order;
    const int by_word = QString::localeAwareCompare(word(a), word(b));
    return by_word != 0 ? by_word < 0 : a.key < b.key;
  };
  std::ranges::sort(rows_, [&](const EntryRow& a, const EntryRow& b) {
    return order_ == Qt::AscendingOrder ? before(a, b) : before(b, a);
  });
}

void EntryModel::sort(int column, Qt::SortOrder order) {
  beginResetModel();
  by_ = column < 0 ? 0 : column;
  order_ = order;
  put_in_order();
  endResetModel();
}

const EntryRow* EntryModel::row(int at) const {
  return at >= 0 && static_cast<std::size_t>(at) < rows_.size() ? &rows_[static_cast<std::size_t>(at)] : nullptr;
}

int EntryModel::row_of(const catalogue::Key& key) const {
  const auto found = std::ranges::find(rows_, key, &EntryRow::key);
  return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

int EntryModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int EntryModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QVariant EntryModel::data(const QModelIndex& index, int role) const {
  const EntryRow* of = row(index.row());
  if (of == nullptr) return {};
  if (role == Qt::DisplayRole || role == Qt::ToolTipRole) {
    const QString* cells[columns] = {&of->name, &of->size, &of->price, &of->from, &of->state};
    return *cells[index.column()];
  }
  if (role == Qt::TextAlignmentRole)
    return QVariant((index.column() == 2 ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role == Qt::FontRole && of->retired && index.column() < columns - 1) {
    QFont struck = ui::font(Type::text);
    struck.setStrikeOut(true);
    return struck;
  }
  if (role == Qt::ForegroundRole && of->retired) return theme().ink2;
  return {};
}

QVariant EntryModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return QVariant((section == 2 ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  // What the second and the fourth column are depends on the kind: size and supplier of an item ...
  struct Heads {
    const char *size, *from;
  };
  static constexpr Heads by_kind[] = {
      {QT_TR_NOOP("Size or unit"), QT_TR_NOOP("Supplier")}, {QT_TR_NOOP("Units that fit"), QT_TR_NOOP("Advice")},
      {QT_TR_NOOP("Lies under"), QT_TR_NOOP("Surface")},    {QT_TR_NOOP("What it allows"), QT_TR_NOOP("Source")},
      {QT_TR_NOOP("Hours for one"), QT_TR_NOOP("Source")},  {QT_TR_NOOP("Sells"), QT_TR_NOOP("Least order")},
      {QT_TR_NOOP("What meets"), QT_TR_NOOP("Source")},     {QT_TR_NOOP("Stage"), QT_TR_NOOP("Source")},
      {QT_TR_NOOP("Stage"), QT_TR_NOOP("Source")},          {QT_TR_NOOP("Beside what"), QT_TR_NOOP("Source")}};
  const Heads& heads = by_kind[searched_ ? 0 : kind_];
  switch (section) {
    case 0: return kind_ >= 7 && !searched_ ? tr("What it says") : tr("Name");
    case 1: return searched_ ? tr("Size or use") : tr(heads.size);
    case 2: return kind_ == 5 && !searched_ ? tr("A delivery") : tr("Price");
    case 3: return searched_ ? tr("Supplier or source") : tr(heads.from);
    case 4: return tr("State");
    default: return {};
  }
}

}  // namespace ui
