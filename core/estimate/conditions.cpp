#include "estimate/offers.h"
#include "estimate/words.h"

namespace estimate {

namespace {

struct Outlines {
  double all = 0, curved = 0;

  void side(double length, bool curve) {
    all += length;
    if (curve) curved += length;
  }

  void shape(const plan::DrawnShape& shape) {
    for (const plan::DrawnRing& ring : shape) {
      for (const geometry::Curve& edge : geometry::curves(ring.edges)) side(edge.length(), !edge.straight());
      for (std::size_t i = 0; i < ring.through.size(); ++i) {
        const geometry::Point to = ring.through[(i + 1) % ring.through.size()];
        side(geometry::Curve{ring.through[i], to, 0}.length(), true);
      }
    }
  }
};

std::string factor_in_words(const plan::HoursFactor& factor) {
  return (factor.name.empty() ? "a condition" : factor.name) + " x " + in_words(factor.factor) +
         (factor.stage.empty() ? "" : " (" + factor.stage + ")");
}

}  // namespace

JobConditions conditions(const plan::Job& job) {
  JobConditions made;
  for (const plan::HoursFactor& factor : job.offer.factors)
    if (factor.factor != 1) made.factors.push_back(factor_in_words(factor));
  Outlines outlines;
  for (const plan::ElementPtr& element : job.elements) {
    if (const auto* area = std::get_if<plan::PavedArea>(&element->kind)) outlines.shape(area->outline);
    if (const auto* pool = std::get_if<plan::Pool>(&element->kind)) outlines.shape(pool->outline);
    const auto* mark = std::get_if<plan::SiteMark>(&element->kind);
    if (mark && mark->width && (mark->what == "gate" || mark->what == "path"))
      made.narrowest = made.narrowest ? std::min(*made.narrowest, *mark->width) : *mark->width;
  }
  made.curved = outlines.all > 0 ? outlines.curved / outlines.all : 0;
  return made;
}

}  // namespace estimate
