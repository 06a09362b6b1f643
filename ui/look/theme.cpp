#include "ui/look/theme.h"

#include <QApplication>
#include <QCoreApplication>
#include <QFontDatabase>
#include <QPaintDevice>
#include <QPainter>
#include <QStyleFactory>
#include <algorithm>
#include <cmath>
#include <optional>

#include "ui/look/style.h"

namespace ui {

namespace {

constexpr const char* family = "Noto Sans";

Theme light() {
  Theme t;
  t.window = QColor("#DFE2DE"), t.panel = QColor("#F3F4F1"), t.raised = QColor("#FFFFFF"), t.paper = QColor("#FBFBF8");
  t.ink = QColor("#1B2320"), t.ink2 = QColor("#46504B"), t.ink3 = QColor("#5C6661");
  t.rule = QColor("#78817B"), t.line = QColor("#C9CEC8");
  t.chalk = QColor("#17599B"), t.chalk_wash = QColor("#D9E7F3"), t.on_chalk = QColor("#FFFFFF");
  t.flag = QColor("#A8321A"), t.flag_wash = QColor("#FBE4DB");
  t.care = QColor("#7A5200"), t.care_wash = QColor("#F8EACB");
  t.good = QColor("#1F6440"), t.site_plan = QColor("#7E8E93");
  return t;
}

Theme dark() {
  Theme t;
  t.dark = true;
  t.window = QColor("#0F1416"), t.panel = QColor("#1A2124"), t.raised = QColor("#232C2F"), t.paper = QColor("#151B1E");
  t.ink = QColor("#E9EDEA"), t.ink2 = QColor("#BAC4C0"), t.ink3 = QColor("#97A39F");
  t.rule = QColor("#7A868A"), t.line = QColor("#354044");
  t.chalk = QColor("#7FB8EE"), t.chalk_wash = QColor("#1E3A53"), t.on_chalk = QColor("#0C151C");
  t.flag = QColor("#FF9274"), t.flag_wash = QColor("#47231A");
  t.care = QColor("#EBBE5B"), t.care_wash = QColor("#3B2F14");
  t.good = QColor("#7FCB9E"), t.site_plan = QColor("#5E6F74");
  return t;
}

Theme on_paper(bool in_colour) {
  Theme t;
  t.on_paper = true, t.in_colour = in_colour;
  t.window = t.panel = t.raised = t.paper = t.chalk_wash = t.on_chalk = t.flag_wash = t.care_wash = QColor(Qt::white);
  t.ink = t.ink2 = t.ink3 = t.rule = t.line = t.chalk = t.flag = t.care = t.good = t.site_plan = QColor(Qt::black);
  return t;
}

struct Now {
  Theme theme = light();
  double factor = 1;
  std::optional<bool> system_dark;  // as it was before our own palette stood there
};
Now& now() {
  static Now value;
  return value;
}

bool dark_palette(const QPalette& palette) {
  return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

void dress_all() {
  if (auto* application = qobject_cast<QApplication*>(QCoreApplication::instance())) dress(*application);
}

}  // namespace

const Theme& theme() { return now().theme; }

void set_dark(bool wanted) {
  if (now().theme.dark == wanted) return;
  system_is_dark();  // remembered before it is covered
  now().theme = wanted ? dark() : light();
  dress_all();
}

bool system_is_dark() {
  if (!now().system_dark && QCoreApplication::instance()) now().system_dark = dark_palette(QApplication::palette());
  return now().system_dark.value_or(false);
}

OnPaper::OnPaper(bool in_colour) : before_(now().theme), factor_before_(now().factor) {
  now().theme = on_paper(in_colour);
  now().factor = 1;
}

OnPaper::~OnPaper() {
  now().theme = before_;
  now().factor = factor_before_;
}

double device_px(const QPainter& painter) {
  constexpr double printed = 6;  // 576 to the inch
  return theme().on_paper ? printed : painter.device()->devicePixelRatioF();
}

QFont font(Type type, bool bold) {
  QFont made(QString::fromLatin1(family));
  made.setPixelSize(static_cast<int>(std::lround(static_cast<int>(type) * now().factor)));
  made.setWeight(bold ? QFont::Bold : QFont::Normal);
  if (theme().on_paper) made.setHintingPreference(QFont::PreferNoHinting);
  return made;
}

double type_factor() { return now().factor; }

void set_type_factor(double factor) {
  const double wanted = std::clamp(factor, 1.0, 1.6);
  if (wanted == now().factor) return;
  now().factor = wanted;
  dress_all();
}

int px(double at_100) { return static_cast<int>(std::lround(at_100 * now().factor)); }

QString prepare(QApplication& application) {
  system_is_dark();
  QApplication::setStyle(QStyleFactory::create("Fusion"));
  dress(application);
  const QStringList styles = QFontDatabase::styles(QString::fromLatin1(family));
  if (styles.contains("Regular") && styles.contains("Bold")) return {};
  return QCoreApplication::translate("look",
                                     "The font Noto Sans, Regular and Bold, is not there: install the package "
                                     "fonts-noto-core and start again.");
}

}  // namespace ui
