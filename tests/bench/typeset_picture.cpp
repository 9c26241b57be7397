// Draws the test panels as PNG, whole (1800 pixels wide) and in parts at 100 %, to be looked at.
// Use: typeset_picture FOLDER [PICTURE...]; given pictures take the places of the panels' photos.
#include "layout/screen/painter.h"
#include "layout/typeset/typesetter.h"
#include "tests/unit/typeset_panels.h"

#include <QDir>
#include <QGuiApplication>
#include <QPainter>

#include <cstdio>

namespace {

using namespace wainscot;
using namespace wainscot::testing;

class Pictures final : public PictureProvider {
public:
    explicit Pictures(const QStringList& files)
    {
        for (const QString& file : files)
            m_images.push_back(QImage(file));
    }
    ProvidedPicture picture(const ClearedPicture& picture, SizePx) override
    {
        if (m_images.empty()) {
            QImage plain(picture.size.width / 10, picture.size.height / 10, QImage::Format_RGB32);
            plain.fill(QColor::fromHsv(picture.id.number() * 47 % 360, 40, 150));
            return {plain, {}};
        }
        const auto count = static_cast<std::int64_t>(m_images.size());
        return {m_images[static_cast<std::size_t>((picture.id.number() - 1) % count)], {}};
    }

private:
    std::vector<QImage> m_images;
};

struct Sheet {
    const char* name;
    PanelBuilder panel;
    QRect part; // at 100 %, in millimetres
};

bool draw(const Sheet& sheet, const QDir& folder, Pictures& pictures)
{
    const QString name = QString::fromLatin1(sheet.name);
    const ClearedPanel cleared = sheet.panel.cleared();
    const DisplayList list = typeset(cleared, sheet.panel.style());
    for (const FontGap& gap : list.fontGaps)
        std::fprintf(stderr,
            "%s: %s drawn with %s: %s\n",
            sheet.name,
            qPrintable(gap.wanted),
            qPrintable(gap.used),
            qPrintable(gap.text));
    const DotsPerInch whole(1800 / (list.size.width.value() / kMmPerInch));
    const Result<QImage> image = toImage(list, whole, pictures);
    const Result<QImage> full = toImage(list, DotsPerInch(96), pictures);
    if (!image || !full)
        return false;
    const double scale = 96 / kMmPerInch;
    const QRect part(qRound(sheet.part.x() * scale),
        qRound(sheet.part.y() * scale),
        qRound(sheet.part.width() * scale),
        qRound(sheet.part.height() * scale));
    return image->save(folder.filePath(name + QStringLiteral(".png")))
        && full->copy(part).save(folder.filePath(name + QStringLiteral("-full-size.png")));
}

} // namespace

int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QGuiApplication::arguments();
    if (arguments.size() < 2) {
        std::fprintf(stderr, "typeset_picture FOLDER [PICTURE...]\n");
        return 2;
    }
    const QDir folder(arguments[1]);
    Pictures pictures(arguments.mid(2));
    const Sheet sheets[] = {{"1-puddle", puddlePanel(), {8, 300, 330, 250}},
        {"2-voices", voicesPanel(), {20, 360, 330, 250}},
        {"3-families", familiesPanel(), {150, 265, 270, 220}},
        {"4-drawing", drawingPanel(), {200, 10, 210, 150}},
        {"5-scripts", manyScriptsPanel(), {0, 80, 420, 280}}};
    for (const Sheet& sheet : sheets) {
        if (!draw(sheet, folder, pictures))
            return 1;
    }
    return 0;
}
