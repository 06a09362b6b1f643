// Water in pipes, channels, over edges and off surfaces: plain functions that know no job. SI throughout: metres,
// seconds, cubic metres a second; slopes and coefficients are shares. Published forms in feet are turned inside, so
// that their own figures come out.
#pragma once

namespace takeoff::water::flow {

struct Flow {
  double m3_s = 0;
  double m_s = 0;  // mean velocity
};

// Manning: v = 1/n R^(2/3) S^(1/2), R = area / wetted perimeter. A pipe running full (R = D/4); filled to `depth` (0 to
// D), by the angle at its centre; a trapezoid with `side` across for 1 up on both sides.
Flow full_pipe(double diameter, double n, double slope);
Flow part_full(double diameter, double depth, double n, double slope);
Flow trapezoid(double bottom, double side, double depth, double n, double slope);
double diameter_half_full(double m3_s, double n, double slope);  // of the pipe that carries it half full
double slope_for(double diameter, double n, double m_s);         // at which a full pipe runs so fast

// Rational method: Q = C i A, with A on the plan. (In feet the same formula has the factor 1.008, often left out.)
double rational(double c, double intensity_m_s, double area_m2);

// A sheet of water over a sharp edge: Q = 3.33 (L - 0.1 n H) H^1.5 in feet, n ends at which it draws in. A thin sheet
// off a spout is known to within about 15 %, no better.
double weir(double length, double head, double contractions);
double weir_head(double length, double m3_s);  // of an edge without contractions

double orifice(double cd, double area, double head);  // Q = Cd A sqrt(2 g h)

// Times of concentration by the worksheet of TR-55, in seconds: sheet flow over at most 300 ft (`rain` is the 2-year
// 24-hour rain), shallow flow over unpaved (16.1345) or paved (20.3282 ft/s at slope 1) ground, flow in a channel.
double sheet_time(double n, double length, double rain, double slope);
double shallow_time(double length, double slope, bool paved);
double channel_time(double length, double area, double wetted, double slope, double n);

}  // namespace takeoff::water::flow
