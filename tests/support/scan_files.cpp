#include "tests/support/scan_files.h"

#include "tests/support/media_pictures.h"

#include <QStringList>

namespace wainscot::test {

namespace {

QByteArray stream(const QByteArray& entries, const QByteArray& content)
{
    return "<< " + entries + " /Length " + QByteArray::number(content.size()) + " >>\nstream\n"
        + content + "\nendstream";
}

// Objects 1, 2, 3 ... with a table of where they lie; ISO 32000-1, 7.5.
QByteArray fileOf(const std::vector<QByteArray>& objects, bool hasInfo)
{
    QByteArray file = "%PDF-1.4\n";
    QByteArray table;
    for (std::size_t i = 0; i < objects.size(); ++i) {
        table += QByteArray::number(file.size()).rightJustified(10, '0') + " 00000 n \n";
        file += QByteArray::number(int(i) + 1) + " 0 obj\n" + objects[i] + "\nendobj\n";
    }
    const QByteArray count = QByteArray::number(int(objects.size()) + 1);
    const auto at = QByteArray::number(file.size());
    file += "xref\n0 " + count + "\n0000000000 65535 f \n" + table + "trailer\n<< /Size " + count
        + " /Root 1 0 R" + (hasInfo ? " /Info 3 0 R" : "") + " >>\nstartxref\n" + at + "\n%%EOF\n";
    return file;
}

QByteArray reference(std::size_t number)
{
    return QByteArray::number(qulonglong(number)) + " 0 R";
}

} // namespace

QByteArray pdfOf(const std::vector<PdfPage>& pages,
    const QByteArray& title,
    const std::vector<QByteArray>& forms)
{
    const std::size_t firstForm = 4 + 2 * pages.size();
    QByteArray kids;
    QByteArray usable;
    for (std::size_t i = 0; i < pages.size(); ++i)
        kids += reference(4 + 2 * i) + " ";
    for (std::size_t i = 0; i < forms.size(); ++i)
        usable += "/F" + QByteArray::number(int(i)) + " " + reference(firstForm + i) + " ";
    const QByteArray resources = "/Resources << /XObject << " + usable + ">> >>";
    std::vector<QByteArray> objects{"<< /Type /Catalog /Pages 2 0 R >>",
        "<< /Type /Pages /Kids [ " + kids + "] /Count " + QByteArray::number(int(pages.size()))
            + " >>",
        "<< /Title (" + title + ") /Author (" + title + ") >>"};
    for (const PdfPage& page : pages) {
        objects.push_back("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 "
            + QByteArray::number(page.points.width()) + " "
            + QByteArray::number(page.points.height()) + "] /Rotate "
            + QByteArray::number(page.rotate) + " " + resources + " /Contents "
            + reference(objects.size() + 2) + " >>");
        objects.push_back(stream({}, page.content));
    }
    for (const QByteArray& form : forms) {
        objects.push_back(
            stream("/Type /XObject /Subtype /Form /BBox [0 0 600 900] " + resources, form));
    }
    return fileOf(objects, !title.isEmpty());
}

PdfPage cornersPage(QSizeF points, int rotate)
{
    const auto square = [&](const char* colour, double x, double y) {
        return QByteArray(colour) + " rg " + QByteArray::number(points.width() * x) + " "
            + QByteArray::number(points.height() * y) + " "
            + QByteArray::number(points.width() * 0.3) + " "
            + QByteArray::number(points.height() * 0.3) + " re f\n";
    };
    return {points,
        square("1 0 0", 0.1, 0.6) + square("0 1 0", 0.6, 0.6) + square("0 0 1", 0.1, 0.1)
            + square("1 1 0", 0.6, 0.1),
        rotate};
}

PdfPage blankPage()
{
    return {};
}

QByteArray endlessPdf(int page, int of)
{
    std::vector<PdfPage> pages(std::size_t(of), cornersPage({200, 200}));
    pages[std::size_t(page) - 1].content = "/F0 Do";
    std::vector<QByteArray> forms;
    for (int i = 1; i < 12; ++i)
        forms.push_back(("/F" + QByteArray::number(i) + " Do\n").repeated(10));
    forms.push_back("0 0 1 rg 0 0 3 3 re f");
    return pdfOf(pages, {}, forms);
}

bool writeScan(const QString& pdf, const QStringList& pictures, const QStringList& arguments)
{
    return run(
        QStringLiteral("img2pdf"), arguments + pictures + QStringList{QStringLiteral("-o"), pdf});
}

} // namespace wainscot::test
