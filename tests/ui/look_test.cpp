// The look keeps what can be read and told apart, light and dark, at any size of type.
#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QFontInfo>
#include <QIcon>
#include <QImage>
#include <QLineEdit>
#include <QPainter>
#include <cmath>

#include "ui/look/style.h"
#include "ui/look/theme.h"

namespace {

// Relative luminance and contrast ratio as WCAG 2.2 defines them.
double luminance(const QColor& colour) {
  const auto linear = [](double share) {
    return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}
double contrast(const QColor& a, const QColor& b) {
  const double first = luminance(a) + 0.05, second = luminance(b) + 0.05;
  return std::max(first, second) / std::min(first, second);
}

// Each test leaves the look as it found it.
class Look : public testing::Test {
 protected:
  void TearDown() override {
    ui::set_dark(false);
    ui::set_type_factor(1);
  }
};

TEST_F(Look, contrastIsThatOfWcag) {
  // Black on white is (1 + 0.05) / (0 + 0.05) = 21. #808080: 128 / 255 is 0.50196, linear 0.21586;
  // 1.05 / 0.26586 = 3.949.
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
  EXPECT_NEAR(contrast(QColor("#808080"), Qt::white), 3.949, 0.001);
}

TEST_F(Look, textIsReadOnEveryGroundItStandsOn) {
  for (const bool dark : {false, true}) {
    ui::set_dark(dark);
    const ui::Theme& t = ui::theme();
    for (const QColor& ground : {t.panel, t.raised, t.paper}) {
      for (const QColor& text : {t.ink, t.ink2, t.ink3, t.chalk, t.flag, t.care, t.good})
        EXPECT_GE(contrast(text, ground), 4.5) << text.name().toStdString() << " on " << ground.name().toStdString();
      EXPECT_GE(contrast(t.rule, ground), 3) << t.rule.name().toStdString() << " on " << ground.name().toStdString();
    }
    EXPECT_GE(contrast(t.ink, t.chalk_wash), 4.5);
    EXPECT_GE(contrast(t.ink3, t.chalk_wash), 4.5);
    EXPECT_GE(contrast(t.chalk, t.chalk_wash), 4.5);
    EXPECT_GE(contrast(t.on_chalk, t.chalk), 4.5);
    EXPECT_GE(contrast(t.flag, t.flag_wash), 4.5);
    EXPECT_GE(contrast(t.care, t.care_wash), 4.5);
    EXPECT_GE(contrast(t.panel, t.ink), 4.5);  // the main button
  }
}

// Small drawings and signs are told from their ground by 3:1: tools' icons, an underlay's lines, hatches.
TEST_F(Look, signsStandOutOfTheirGround) {
  for (const bool dark : {false, true}) {
    ui::set_dark(dark);
    EXPECT_GE(contrast(ui::theme().site_plan, ui::theme().paper), 3);
    for (int i = 0; i < static_cast<int>(sheets::Material::joint); ++i) {
      const ui::MaterialLook& look = ui::look(static_cast<sheets::Material>(i));
      for (const QColor& tone : {look.low, look.high, look.cut})
        EXPECT_GE(contrast(look.line, tone), 3)
            << "material " << i << (dark ? " dark " : " light ") << tone.name().toStdString();
    }
  }
}

TEST_F(Look, cutPiecesAreLighterThanTheTonesOfWholeUnits) {
  for (const bool dark : {false, true}) {
    ui::set_dark(dark);
    using sheets::Material;
    for (const Material material : {Material::paving, Material::border, Material::walk, Material::coping}) {
      const ui::MaterialLook& look = ui::look(material);
      EXPECT_GT(luminance(look.high), luminance(look.low));
      EXPECT_GT(luminance(look.cut), luminance(look.high));
    }
  }
}

TEST_F(Look, allTypeGrowsByOneFactor) {
  EXPECT_EQ(ui::font(ui::Type::text).pixelSize(), 13);
  ui::set_type_factor(1.44);
  EXPECT_EQ(ui::font(ui::Type::small).pixelSize(), 16);  // 11 x 1.44 = 15.84
  EXPECT_EQ(ui::font(ui::Type::text).pixelSize(), 19);   // 13 x 1.44 = 18.72
  EXPECT_EQ(ui::font(ui::Type::total).pixelSize(), 43);  // 30 x 1.44 = 43.2
  EXPECT_EQ(ui::px(24), 35);                             // 24 x 1.44 = 34.56
  EXPECT_EQ(QApplication::font().pixelSize(), 19);
  ui::set_type_factor(9);
  EXPECT_EQ(ui::type_factor(), 1.6);
  EXPECT_EQ(QFontInfo(ui::font(ui::Type::text, true)).family(), "Noto Sans");
  EXPECT_TRUE(QFontInfo(ui::font(ui::Type::text, true)).bold());
}

// The middle of a field, as it is painted.
QColor ground_of(QWidget& field) { return field.grab().toImage().pixelColor(field.width() / 2, 5); }

TEST_F(Look, lightAndDarkChangeForWidgetsThatAreThere) {
  QLineEdit field;
  field.resize(100, 28);
  EXPECT_EQ(ground_of(field), ui::theme().raised);
  EXPECT_EQ(ui::theme().raised, QColor(Qt::white));
  ui::set_dark(true);
  EXPECT_EQ(ground_of(field), ui::theme().raised);
  EXPECT_EQ(ui::theme().raised, QColor("#232C2F"));
  EXPECT_EQ(field.palette().color(QPalette::Text), ui::theme().ink);
}

TEST_F(Look, everyRuleOfTheToolkitsWidgetsIsFilledIn) { EXPECT_FALSE(ui::rules_of(ui::theme()).contains('@')); }

// The solid parts of a drawing have the very colour; its edges are mixed with what is under them.
bool has(const QImage& image, const QColor& colour) {
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x)
      if (image.pixelColor(x, y) == colour) return true;
  }
  return false;
}

TEST_F(Look, everyDrawingIsThereAndTakesTheColourOfItsState) {
  const QStringList drawings = QDir(QStringLiteral(HOUSE_ROOT) + "/resources/icons").entryList({"*.svg"});
  EXPECT_GT(drawings.size(), 50);
  for (QString name : drawings) {
    name.chop(4);
    if (name.startsWith("up-") || name.startsWith("down-")) continue;  // arrows of fields, in colours of their own
    const QIcon icon = ui::icon(name);
    for (const bool dark : {false, true}) {
      ui::set_dark(dark);
      const ui::Theme& t = ui::theme();
      const QSize size(48, 48);
      EXPECT_TRUE(has(icon.pixmap(size).toImage(), t.ink)) << name.toStdString();
      EXPECT_TRUE(has(icon.pixmap(size, QIcon::Normal, QIcon::On).toImage(), t.chalk)) << name.toStdString();
      EXPECT_TRUE(has(icon.pixmap(size, QIcon::Disabled).toImage(), t.rule)) << name.toStdString();
    }
  }
}

TEST_F(Look, drawingsKeepAMarginOnTheirGrid) {
  for (QString name : QDir(QStringLiteral(HOUSE_ROOT) + "/resources/icons").entryList({"*.svg"})) {
    name.chop(4);
    QImage image(96, 96, QImage::Format_ARGB32_Premultiplied);  // 4 px to 1 of the grid of 24
    image.fill(Qt::transparent);
    QPainter painter(&image);
    ui::paint_icon(painter, name, QRectF(0, 0, 96, 96), Qt::black);
    painter.end();
    for (int i = 0; i < 96; ++i) {
      for (const int edge : {0, 1, 2, 93, 94, 95}) {
        EXPECT_EQ(qAlpha(image.pixel(i, edge)), 0) << name.toStdString() << " at " << i << ", " << edge;
        EXPECT_EQ(qAlpha(image.pixel(edge, i)), 0) << name.toStdString() << " at " << edge << ", " << i;
      }
    }
  }
}

TEST_F(Look, anUnknownDrawingPaintsNothing) { EXPECT_TRUE(ui::icon("no-such-drawing").isNull()); }

}  // namespace
