// Everything of an element that lies on the plan, handed to one visitor. Edits, corners and copies are made of it, so
// that a new kind of element is told here once.
//
// A visitor has: ring(DrawnRing&) and line(DrawnLine&) for what is drawn, point(Point&) for what is drawn as a point,
// place(Point&) and along(DrawnLine&) for what only goes along (the start of a pattern, the line of a finish),
// angle(Angle&) for directions, side(Side&) and slope(double& left, double& right) for what changes over in a mirror.
#pragma once

#include <type_traits>

#include "plan/element.h"

namespace plan {

template <class Visitor>
struct Drawing {
  Visitor& visitor;

  void shape(DrawnShape& drawn) {
    for (DrawnRing& ring : drawn) visitor.ring(ring);
  }
  void maybe(std::optional<DrawnLine>& drawn) {
    if (drawn) visitor.line(*drawn);
  }
  void finish(Finish& finish) {
    visitor.place(finish.at);
    visitor.angle(finish.direction);
    if (finish.line) visitor.along(*finish.line);
    if (finish.way == Finish::Way::two_falls) visitor.slope(finish.fall, finish.fall_right);
    if (finish.way == Finish::Way::along) visitor.across(finish.fall);
  }

  void operator()(PavedArea& of) {
    shape(of.outline);
    if (of.laying) {
      visitor.place(of.laying->start);
      visitor.angle(of.laying->direction);
    }
    if (of.finish) finish(*of.finish);
  }
  void operator()(Pool& of) { shape(of.outline); }
  void operator()(Wall& of) {
    visitor.line(of.line);
    visitor.side(of.behind);
  }
  void operator()(Steps& of) {
    shape(of.outline);
    visitor.angle(of.up);
  }
  void operator()(Building& of) { shape(of.outline); }
  void operator()(KeepOut& of) { shape(of.outline); }
  void operator()(EdgeRun& of) {
    visitor.line(of.line);
    visitor.side(of.paving);
  }
  void operator()(DrainRun& of) { visitor.line(of.line); }
  void operator()(Level& of) { visitor.point(of.at); }
  void operator()(Feature& of) { visitor.point(of.at); }
  void operator()(Removal& of) {
    shape(of.outline);
    maybe(of.line);
  }
  void operator()(SiteMark& of) {
    shape(of.outline);
    maybe(of.line);
    for (geometry::Point& at : of.points) visitor.point(at);
  }
  void operator()(Protection& of) {
    shape(of.outline);
    maybe(of.line);
  }
  void operator()(Note& of) { visitor.point(of.at); }
  void operator()(Dimension& of) {
    visitor.point(of.from);
    visitor.point(of.to);
  }
  void operator()(SitePlan& of) {
    visitor.point(of.at);
    visitor.angle(of.turn);
    for (std::optional<KnownLength>* known : {&of.scale, &of.check}) {
      if (!*known) continue;
      visitor.place((*known)->from);
      visitor.place((*known)->to);
    }
  }
  void operator()(LevelBook&) {}
  void operator()(BaseLine& of) {
    visitor.point(of.from);
    visitor.point(of.to);
  }
  void operator()(TapeBook& of) {
    for (KnownPoint& known : of.known) visitor.point(known.at);
    for (Taped& row : of.rows) visitor.side(row.side);  // where two arcs cross, and on which side an offset lies
  }
};

template <class Visitor>
void visit_drawing(Kind& kind, Visitor&& visitor) {
  std::visit(Drawing<std::remove_reference_t<Visitor>>{visitor}, kind);
}

}  // namespace plan
