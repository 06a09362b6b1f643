// Paints a plan that somebody else drew under the drawing.
#pragma once

#include <QPainter>
#include <QTransform>

#include "plan/taped.h"
#include "ui/paint/figure_painter.h"
#include "ui/plan/site_plan_file.h"

namespace ui {

// How wide one pixel (or one unit of a file of outlines) probably is: a page 1:100, a picture 30 m along its longer
// side, outlines in metres. For the element when it is brought in, so that the whole of it can be seen and scaled; an
// element without it is painted as the site plan tool takes it (sketch/site_plan_numbers.h).
double first_metres_per_pixel(const LoadedPlan& loaded);

// From pixels of the picture (upper left corner of the upper left pixel is (0, 0), y down), or units of the file (y
// up), to px of the window. The picture's lower left corner lies at `at`, turned about it counter-clockwise.
QTransform to_window(const plan::SitePlan& plan, const LoadedPlan& loaded, const Sight& sight);
// The same to metres of the plan.
QTransform to_metres(const plan::SitePlan& plan, const LoadedPlan& loaded);

// Only what lies in `clip` (px), from the copy that is next larger than what is shown. A picture is as strong as the
// person chose; outlines are lines of the theme's site plan colour.
void paint_site_plan(QPainter& painter, const plan::SitePlan& plan, const LoadedPlan& loaded, const Sight& sight,
                     const QRectF& clip);

// Where it lies, in px: to lead the eye there, to fit it into view.
QRectF rect_of(const plan::SitePlan& plan, const LoadedPlan& loaded, const Sight& sight);

}  // namespace ui
