// How fields of catalogue entries are made: from a pointer to a member, or from a way to one (a generic function from
// the entry to a pointer, null where it has no such part now). The editor follows from the member's type.
#pragma once

#include <QCoreApplication>

#include "ui/catalogue/entry_fields.h"
#include "ui/panels/fields_making.h"

namespace ui {

class Entries {
  Q_DECLARE_TR_FUNCTIONS(Catalogue)
};

// `change` alters the kind in place, or says in one sentence why not.
template <class Kind>
EntryField entry_field(std::string id, const QString& label, Editor editor, std::function<Value(const Kind&)> get,
                       std::function<QString(Kind&, const Value&)> change) {
  EntryField field;
  field.look.id = std::move(id);
  field.look.label = label;
  field.look.editor = editor;
  field.get = [get = std::move(get)](const Entry& entry) -> Value {
    const Kind* kind = std::get_if<Kind>(&entry);
    return kind ? get(*kind) : Value{};
  };
  field.set = [change = std::move(change)](const Entry& entry, const Value& value) -> std::expected<Entry, QString> {
    Entry after = entry;
    Kind* kind = std::get_if<Kind>(&after);
    if (const QString why = kind ? change(*kind, value) : QString(); !why.isEmpty()) return std::unexpected(why);
    return after;
  };
  return field;
}

template <class Kind, class Way>
EntryField made_of(std::string id, const QString& label, Way way) {
  using Member = std::remove_pointer_t<decltype(way(std::declval<Kind&>()))>;
  EntryField field = entry_field<Kind>(
      std::move(id), label, editor_of<Member>(),
      [way](const Kind& kind) -> Value {
        const auto* member = way(kind);
        return member ? value_of(*member) : Value{};
      },
      [way](Kind& kind, const Value& value) {
        if (auto* member = way(kind)) take(*member, value);
        return QString();
      });
  field.look.may_be_empty = IsOptional<Member>::value;
  return field;
}

template <class Kind, class Member>
EntryField made_of(std::string id, const QString& label, Member Kind::* member) {
  return made_of<Kind>(std::move(id), label, [member](auto& kind) { return &(kind.*member); });
}

// A button: what it does to the entry.
template <class Kind>
EntryField entry_action(std::string id, const QString& label, std::function<void(Kind&)> change) {
  return entry_field<Kind>(
      std::move(id), label, Editor::action, [](const Kind&) -> Value { return {}; },
      [change = std::move(change)](Kind& kind, const Value&) {
        change(kind);
        return QString();
      });
}

// An id and the names in both languages: what most kinds begin with.
template <class Kind>
std::vector<EntryField> named_fields() {
  EntryField id = made_of("id", Entries::tr("Id"), &Kind::id);
  id.look.editor = Editor::told;
  return {std::move(id), made_of<Kind>("name/en", Entries::tr("Name"), [](auto& kind) { return &kind.name.en; }),
          made_of<Kind>("name/es", Entries::tr("Name in Spanish"), [](auto& kind) { return &kind.name.es; })};
}

inline EntryField long_text(EntryField field) {
  field.look.editor = Editor::long_text;
  return field;
}
inline EntryField words(EntryField field, std::vector<Choice> choices, bool may_be_empty = false) {
  field.look.editor = Editor::words;
  field.look.choices = std::move(choices);
  field.look.may_be_empty = may_be_empty;
  return field;
}
inline EntryField of_items(EntryField field, std::vector<std::string> kinds) {
  field.look.editor = Editor::item;
  field.look.fits = std::move(kinds);
  field.look.may_be_empty = true;
  return field;
}
inline EntryField between(EntryField field, double least, double greatest) {
  field.look.least = least;
  field.look.greatest = greatest;
  return field;
}
inline EntryField percent(EntryField field, double least, double greatest) {
  field.look.editor = Editor::percent;
  return between(std::move(field), least, greatest);
}
inline EntryField blamed(EntryField field, std::vector<std::string> codes) {
  field.faults = std::move(codes);
  return field;
}
inline void add(std::vector<EntryField>& to, std::vector<EntryField> more, const QString& heading = {}) {
  if (!more.empty() && !heading.isEmpty()) more.front().look.group = heading;
  for (EntryField& field : more) to.push_back(std::move(field));
}

std::vector<Choice> same_words(std::initializer_list<const char*> words);  // each said as it is written
std::vector<Choice> stage_words();
// Source, how it is known, notes.
template <class Kind>
std::vector<EntryField> source_fields() {
  return {long_text(made_of("source", Entries::tr("Source"), &Kind::source)),
          made_of("known", Entries::tr("How it is known"), &Kind::known),
          long_text(made_of("notes", Entries::tr("Notes"), &Kind::notes))};
}

}  // namespace ui
