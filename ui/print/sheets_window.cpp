#include "ui/print/sheets_window.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QListWidget>
#include <QPageLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QSaveFile>
#include <QScrollArea>

#include "sheets/all_sheets.h"
#include "ui/book/book_words.h"
#include "ui/look/theme.h"
#include "ui/panels/flat_button.h"
#include "ui/print/pdf.h"
#include "ui/print/print_sheet.h"
#include "ui/words/words.h"

namespace ui {

namespace {

QComboBox* choice(QWidget* parent, const char* name, const QString& spoken,
                  std::initializer_list<std::pair<QString, QVariant>> rows) {
  auto* made = new QComboBox(parent);
  made->setObjectName(QString::fromLatin1(name));
  made->setAccessibleName(spoken);
  for (const auto& [words, value] : rows) made->addItem(words, value);
  return made;
}

QLabel* label(const QString& text, QWidget* parent) {
  auto* made = new QLabel(text, parent);
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  made->setFont(font(Type::note));
  return made;
}

}  // namespace

SheetsWindow::SheetsWindow(Desk& desk, SheetsShelf shelf, QWidget* parent)
    : QDialog(parent), desk_(desk), shelf_(std::move(shelf)) {
  setObjectName(QStringLiteral("sheets-window"));
  setWindowTitle(tr("Sheets"));
  setAttribute(Qt::WA_DeleteOnClose);
  auto* sides = new QHBoxLayout(this);
  sides->setContentsMargins(0, 0, 0, 0);
  sides->setSpacing(0);
  sides->addWidget(make_choices());
  sides->addWidget(make_pages(), 1);
  connect(&desk_, &Desk::results_changed, this, &SheetsWindow::refresh);
  connect(kinds_, &QListWidget::currentRowChanged, this, &SheetsWindow::refresh);
  for (QComboBox* box : {language_, paper_, detail_})
    connect(box, &QComboBox::currentIndexChanged, this, &SheetsWindow::refresh);
  connect(size_, &QComboBox::currentIndexChanged, this, &SheetsWindow::show_pages);
  kinds_->setCurrentRow(0);
  resize(px(1120), px(760));
}

SheetsWindow::~SheetsWindow() = default;

QWidget* SheetsWindow::make_choices() {
  auto* side = new QWidget(this);
  side->setFixedWidth(px(280));
  auto* rows = new QVBoxLayout(side);
  rows->setContentsMargins(px(16), px(14), px(16), px(14));
  rows->setSpacing(px(8));
  kinds_ = new QListWidget(side);
  kinds_->setObjectName(QStringLiteral("sheet-kinds"));
  kinds_->setAccessibleName(tr("Sheets"));
  for (const sheets::SheetKind& kind : sheets::sheet_kinds()) {
    auto* row = new QListWidgetItem(said(kind.title), kinds_);
    row->setData(Qt::UserRole, QString::fromLatin1(kind.word));
    row->setToolTip(said(kind.about));
    row->setSizeHint(QSize(0, px(26)));
  }
  rows->addWidget(kinds_, 1);
  rows->addWidget(about_ = label({}, side));
  language_ =
      choice(side, "sheet-language", tr("Language of the sheet"),
             {{QStringLiteral("English"), QStringLiteral("en")}, {QStringLiteral("Español"), QStringLiteral("es")}});
  language_->setCurrentIndex(language() == QLatin1String("es") ? 1 : 0);
  paper_ =
      choice(side, "sheet-paper", tr("Paper"),
             {{tr("Letter"), static_cast<int>(Paper::letter)}, {QStringLiteral("A4"), static_cast<int>(Paper::a4)}});
  paper_->setCurrentIndex(usual_paper(desk_.job()) == Paper::a4 ? 1 : 0);
  size_ = choice(side, "sheet-size", tr("Size on the screen"),
                 {{tr("Whole page"), 60.0}, {tr("To read"), 96.0}, {tr("Large"), 150.0}});
  detail_ = choice(side, "sheet-detail", tr("The price of the quote"),
                   {{tr("Price by stage"), 1}, {tr("Price in one sum"), 0}, {tr("Price line by line"), 2}});
  rows->addWidget(detail_);
  for (QWidget* box : {static_cast<QWidget*>(language_), static_cast<QWidget*>(paper_), static_cast<QWidget*>(size_)})
    rows->addWidget(box);
  const auto button = [&](const char* name, const QString& words, void (SheetsWindow::*does)()) {
    auto* made = new FlatButton(FlatButton::Form::action, words, side);
    made->setObjectName(QString::fromLatin1(name));
    connect(made, &QAbstractButton::clicked, this, does);
    rows->addWidget(made);
    return made;
  };
  print_ = button("sheet-print", tr("Print…"), &SheetsWindow::print_out);
  save_ = button("sheet-save", tr("Save as PDF…"), &SheetsWindow::save_pdf);
  keep_ = button("sheet-keep", tr("Keep with the version"), &SheetsWindow::keep);
  keep_->setToolTip(tr("What is given out is kept with the newest version, as it was printed."));
  keep_->setVisible(static_cast<bool>(shelf_.keep));
  told_ = label({}, side);
  told_->setObjectName(QStringLiteral("sheet-told"));
  rows->addWidget(told_);
  return side;
}

QWidget* SheetsWindow::make_pages() {
  auto* inside = new QWidget(this);
  pages_ = new QVBoxLayout(inside);
  pages_->setContentsMargins(px(20), px(20), px(20), px(20));
  pages_->setSpacing(px(16));
  auto* area = new QScrollArea(this);
  area->setObjectName(QStringLiteral("sheet-pages"));
  area->setAccessibleName(tr("Pages of the sheet"));
  area->setWidget(inside);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  return area;
}

void SheetsWindow::show_sheet(const std::string& word) {
  for (int row = 0; row < kinds_->count(); ++row)
    if (kinds_->item(row)->data(Qt::UserRole).toString().toStdString() == word) kinds_->setCurrentRow(row);
}

std::string SheetsWindow::sheet() const {
  const QListWidgetItem* row = kinds_->currentItem();
  return row ? row->data(Qt::UserRole).toString().toStdString() : std::string();
}

std::size_t SheetsWindow::pages() const { return laid_ ? laid_->count() : 0; }

std::string SheetsWindow::language_chosen() const { return language_->currentData().toString().toStdString(); }

void SheetsWindow::refresh() {
  const sheets::SheetKind* kind = sheets::sheet_kind(sheet());
  detail_->setVisible(kind && sheet() == "quote");
  about_->setText(kind ? said(kind->about) : QString());
  shown_ = desk_.results();
  laid_.reset();
  pdf_.clear();
  if (kind && shown_) {
    const InLanguage spoken(language_->currentData().toString());
    printed_ = std::make_unique<sheets::Printed>(printed(shown_, shelf_.version ? shelf_.version() : std::string()));
    printed_->detail = static_cast<sheets::Detail>(detail_->currentData().toInt());
    const auto paper = static_cast<Paper>(paper_->currentData().toInt());
    laid_ = std::make_unique<LaidSheet>(kind->make(*printed_), *printed_, paper);
  }
  tell(shown_ ? QString() : tr("The numbers are still being worked out."));
  for (FlatButton* each : {print_, save_, keep_}) each->setEnabled(laid_ != nullptr);
  show_pages();
}

void SheetsWindow::show_pages() {
  while (QLayoutItem* old = pages_->takeAt(0)) {
    delete old->widget();
    delete old;
  }
  const double ratio = devicePixelRatioF();
  const InLanguage spoken(language_->currentData().toString());
  for (std::size_t i = 0; laid_ && i < laid_->count(); ++i) {
    QImage picture = picture_of(*laid_, i, size_->currentData().toDouble() * ratio);
    picture.setDevicePixelRatio(ratio);
    auto* page = new QLabel(this);
    page->setObjectName(QStringLiteral("page-%1").arg(i + 1));
    page->setAccessibleName(tr("Page %1 of %2").arg(i + 1).arg(laid_->count()));
    page->setPixmap(QPixmap::fromImage(picture));
    page->setFrameShape(QFrame::Box);
    page->setFixedSize(page->sizeHint());
    pages_->addWidget(page, 0, Qt::AlignHCenter);
  }
  pages_->addStretch(1);
}

QByteArray SheetsWindow::pdf() const {
  if (!laid_ || !pdf_.isEmpty()) return pdf_;
  const InLanguage spoken(language_->currentData().toString());
  return pdf_ = pdf_of(*laid_, *printed_);
}

void SheetsWindow::save_pdf() {
  const QString named = QString::fromStdString(shown_->job->heading.name.substr(0, 80)).simplified();
  const QString file = QFileDialog::getSaveFileName(
      this, tr("Save as PDF"),
      QStringLiteral("%1 %2.pdf").arg(named, QString::fromStdString(sheet())).replace('/', '-'), tr("PDF (*.pdf)"));
  if (file.isEmpty()) return;
  QSaveFile out(file);
  const QByteArray bytes = pdf();
  const bool written = out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit();
  tell(written ? tr("Saved as %1").arg(file) : tr("%1 could not be written: %2").arg(file, out.errorString()));
}

void SheetsWindow::print_out() {
  QPrinter printer(QPrinter::HighResolution);
  const QSizeF points = laid_->page().size() / u_per_point;
  printer.setPageSize(QPageSize(points, QPageSize::Point, {}, QPageSize::ExactMatch));
  printer.setFullPage(true);
  printer.setDocName(QString::fromStdString(laid_->sheet().title));
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const InLanguage spoken(language_->currentData().toString());
  QPainter painter(&printer);
  const double scale = printer.resolution() / u_per_inch;
  painter.scale(scale, scale);
  for (std::size_t i = 0; i < laid_->count(); ++i) {
    if (i > 0) printer.newPage();
    laid_->paint(painter, i);
  }
}

void SheetsWindow::keep() {
  const auto kept = shelf_.keep(sheet(), language_chosen(), pdf());
  tell(kept ? *kept : told(kept.error()));
}

void SheetsWindow::tell(const QString& sentence) {
  told_->setText(sentence);
  told_->setVisible(!sentence.isEmpty());
}

SheetsWindow* show_sheets_window(Desk& desk, const SheetsShelf& shelf, QWidget* parent) {
  auto* window = parent ? parent->findChild<SheetsWindow*>() : nullptr;
  if (!window) window = new SheetsWindow(desk, shelf, parent);
  window->show();
  window->raise();
  window->activateWindow();
  return window;
}

}  // namespace ui
