// Estimate against what was really used, for paper and for a spreadsheet.
#pragma once

#include <string>
#include <vector>

#include "estimate/offers.h"

namespace files {

struct ActualOf {
  std::string job;      // its name
  std::string version;  // whose lines these are
  bool invented = false;
};

// Plain text: lines by stage with what was estimated, delivered, used, is left, and the difference in money; hours by
// stage; what is done by measure and what it will cost to finish at both rates; what is to be mended.
std::string actual_text(const ActualOf& of, const estimate::Actual& actual);

// One row a line, then one row for the work of each stage (kind "labour", no item), RFC 4180. The columns "estimate"
// and "spent" add up to the totals of the text.
std::string actual_csv(const estimate::Actual& actual);

// All that was entered, in its order, corrected entries too.
std::string ledger_csv(const std::vector<estimate::Entry>& entries, int decimals);

// What closed jobs say against the catalogue: each offer with its spread and its jobs.
std::string offers_text(const std::vector<estimate::CatalogueOffer>& offers, units::System system);
// One row for each job of each offer.
std::string offers_csv(const std::vector<estimate::CatalogueOffer>& offers, units::System system);

// "3 %" of a share, "0.44 h per m2" of a rate.
std::string offered_in_words(const estimate::CatalogueOffer& offer, double value);
// "narrow gate x 1.15; way in 36 in; 34 % of the outlines curved"; "no conditions noted".
std::string conditions_in_words(const estimate::JobConditions& conditions, units::System system);

}  // namespace files
