// Languages. Words of the window are said through tr(); words that core gives in English (what a tool wants, names of
// stages and kinds) are looked up here, and stay English where no translation is there.
#pragma once

#include <QString>
#include <string>

namespace ui {

// Takes the language in use: "en", "es", or the machine's where it is empty. What was said before stays as it was said.
void speak(const QString& language);
QString language();  // the one in use: "en" or "es"

// A word or sentence of core, in the language in use.
QString said(const std::string& english);

}  // namespace ui
