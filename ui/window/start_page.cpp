#include "ui/window/start_page.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/theme.h"

namespace ui {

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
  setObjectName("start-page");
  setAccessibleName(tr("How to begin"));
  auto* column = new QVBoxLayout(this);
  column->setSpacing(px(8));
  auto* title = new QLabel(tr("An empty job"), this);
  title->setFont(ui::font(Type::name, true));
  title->setAlignment(Qt::AlignCenter);
  column->addWidget(title);
  const auto button = [&](const QString& text, const char* name, const QString& drawing, auto signal) {
    auto* made = new QPushButton(icon(drawing), text, this);
    made->setObjectName(QString::fromLatin1(name));
    made->setMinimumHeight(px(36));
    connect(made, &QPushButton::clicked, this, signal);
    column->addWidget(made);
  };
  button(tr("Draw an area"), "start-area", "area", &StartPage::draw_area);
  button(tr("Bring in a site plan"), "start-site-plan", "site-plan", &StartPage::bring_in_site_plan);
  button(tr("Open the demo job"), "start-demo", "job-book", &StartPage::open_demo_job);
}

}  // namespace ui
