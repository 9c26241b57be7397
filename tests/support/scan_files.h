// PDFs as scanners and people make them, for tests: written by hand, or by img2pdf and qpdf.
#pragma once

#include <QByteArray>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <vector>

namespace wainscot::test {

struct PdfPage {
    QSizeF points{595, 842};
    QByteArray content; // operators, e.g. "0 0 1 rg 10 10 50 50 re f"
    int rotate = 0; // /Rotate
};
// Written by hand: the file begins with what leads to all else, as some scanners write it.
// `forms` are contents that every page and form may draw: "/F0 Do", "/F1 Do" ...
QByteArray pdfOf(const std::vector<PdfPage>& pages,
    const QByteArray& title = {},
    const std::vector<QByteArray>& forms = {});
// A page that draws a square in each corner region: red, green / blue, yellow as fourQuarters has.
PdfPage cornersPage(QSizeF points, int rotate = 0);
PdfPage blankPage();
// A page that would take years: forms that draw forms, ten times each.
QByteArray endlessPdf(int page, int of);

// By img2pdf, in the order of the pictures. Its further arguments, e.g. {"--title", "Wren"}.
bool writeScan(const QString& pdf, const QStringList& pictures, const QStringList& arguments = {});

} // namespace wainscot::test
