// What the office sets about the price, as fields: one list a page of the estimate window. Made anew after each edit,
// since lists grow and shrink.
#pragma once

#include "estimate/checklist.h"
#include "ui/panels/fields.h"

namespace ui {

std::vector<Field> price_fields(const plan::Job& job);  // shares, tax, rounding
std::vector<Field> hours_fields(const plan::Job& job);  // crew, and conditions on the hours
std::vector<Field> added_fields(const plan::Job& job);  // lines that no drawing makes
// The lines that every estimate forgets: each is in it, becomes a line, or is nothing on purpose.
std::vector<Field> checklist_fields(const plan::Job& job, const estimate::Estimate& estimate);
std::vector<Field> payment_fields(const plan::Job& job);  // steps, date, validity, unit prices
std::vector<Field> words_fields(const plan::Job& job);    // basis, terms, own statements
std::vector<Field> option_fields(const plan::Job& job);   // what each is; prices are results/options.h
// The job with a new option, named by its elements. They leave the base and come with the option; or, where it leaves
// them out, they stay in the base and go with the option. As before where there are none.
plan::Job with_option_of(const plan::Job& job, const std::vector<plan::ElementId>& ids, bool leaves_out);

}  // namespace ui
