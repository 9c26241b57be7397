#include "tests/golden/paper_kit.h"

#include "layout/typeset/text_block.h"

#include <QBuffer>
#include <QDir>
#include <QGlyphRun>
#include <QPainter>
#include <QProcess>
#include <QTextLayout>
#include <gtest/gtest.h>

#include <cmath>

namespace wainscot::paper_kit {

QString run(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    const bool ended = process.waitForStarted() && process.waitForFinished(120000);
    const QString errors = QString::fromUtf8(process.readAllStandardError());
    EXPECT_TRUE(ended && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0)
        << qPrintable(program) << " " << qPrintable(arguments.join(QLatin1Char(' '))) << "\n"
        << qPrintable(errors);
    return QString::fromUtf8(process.readAllStandardOutput());
}

Page::Page(SizeMm size, const QString& title)
{
    list.size = size;
    list.title = title;
    list.language = QStringLiteral("en");
    list.elements.push_back({Role::Document, -1, {}, {}, {}, {}});
}

int Page::text(Role role, const QString& words, PointMm at, Mm width, const QString& language)
{
    const int element = static_cast<int>(list.elements.size());
    list.elements.push_back({role, 0, {}, language, {}, {}});
    more(element, words, at, width, language);
    return element;
}

void Page::more(int element, const QString& words, PointMm at, Mm width, const QString& language)
{
    const QString tongue = language.isEmpty() ? list.language : language;
    TextSpan span;
    span.text = words;
    span.face = {voice, Weight::Regular, TypeRole::Body, cap, tongue};
    span.colour = colour;
    const TextBlock block(pairings().front(), {span}, tongue);
    const LineBreaks lines = block.lines(Breaking::Paragraph, width);
    for (const GlyphRun& glyphs : block.draw(lines, {at.x, false, at.y, cap * 2}).runs)
        list.marks.push_back({element, {}, glyphs});
}

int Page::picture(const ClearedPicture& picture, const RectMm& place)
{
    const int element = static_cast<int>(list.elements.size());
    list.elements.push_back({Role::Figure, 0, {}, {}, picture.alternative, place});
    list.marks.push_back({element, {}, PlacedPicture{picture, place}});
    return element;
}

void Page::fill(const RectMm& rect, QRgb ink)
{
    list.marks.push_back({-1, {}, Fill{rect, ink}});
}

GlyphRun shaped(const QString& words, const QString& family, int units, PointMm baseline)
{
    QFont font(family);
    font.setPixelSize(units);
    font.setHintingPreference(QFont::PreferNoHinting);
    QTextLayout layout(words, font);
    QTextOption option;
    option.setUseDesignMetrics(true);
    layout.setTextOption(option);
    layout.beginLayout();
    QTextLine line = layout.createLine();
    line.setLineWidth(1e6);
    layout.endLayout();
    GlyphRun result;
    result.sizeUnits = units;
    result.origin = baseline;
    // Asked for one letter, Qt gives the glyphs of its cluster, for some letters only the first of
    // them: letters whose glyphs begin at one place are a cluster.
    for (int at = 0; at < words.size(); ++at) {
        QList<QPointF> places;
        QList<quint32> glyphs;
        for (const QGlyphRun& run : layout.glyphRuns(at, 1)) {
            result.font = run.rawFont();
            places += run.positions();
            glyphs += run.glyphIndexes();
        }
        const QPointF first = places.value(0) - QPointF(0, line.ascent());
        const bool same = !result.clusters.empty()
            && (places.isEmpty()
                || first
                    == result
                           .positions[static_cast<std::size_t>(result.clusters.back().firstGlyph)]);
        if (!same)
            result.clusters.push_back({static_cast<int>(result.glyphs.size()), 0, {}});
        Cluster& cluster = result.clusters.back();
        cluster.text += words.at(at);
        for (qsizetype i = cluster.glyphCount; i < glyphs.size(); ++i, ++cluster.glyphCount) {
            result.glyphs.push_back(glyphs[i]);
            result.positions.emplace_back(places[i].x(), places[i].y() - line.ascent());
        }
    }
    return result;
}

GlyphRun plainRun(const QRawFont& font, const QString& words, PointMm baseline)
{
    GlyphRun run;
    run.font = font;
    run.sizeUnits = static_cast<int>(font.pixelSize());
    run.origin = baseline;
    QPointF pen;
    const QList<quint32> glyphs = font.glyphIndexesForString(words);
    const QList<QPointF> advances =
        font.advancesForGlyphIndexes(glyphs, QRawFont::UseDesignMetrics);
    for (qsizetype i = 0; i < glyphs.size(); ++i) {
        run.clusters.push_back({static_cast<int>(i), 1, words.mid(i, 1)});
        run.glyphs.push_back(glyphs[i]);
        run.positions.push_back(pen);
        pen += advances[i];
    }
    return run;
}

ClearedPicture PaintedPictures::add(SizePx size, RectFraction visible)
{
    ClearedPicture picture;
    picture.id = PictureId(static_cast<std::int64_t>(m_images.size()) + 1);
    picture.sha256 = QStringLiteral("%1").arg(m_images.size() + 1, 64, 16, QLatin1Char('0'));
    picture.format = QStringLiteral("jpeg");
    picture.size = size;
    picture.visible = visible;
    picture.alternative = QStringLiteral("Chalk lines round puddle %1").arg(m_images.size() + 1);
    QImage image(size.width, size.height, QImage::Format_RGB32);
    QPainter painter(&image);
    const int w = size.width / 2;
    const int h = size.height / 2;
    painter.fillRect(0, 0, w, h, Qt::red);
    painter.fillRect(w, 0, size.width - w, h, Qt::green);
    painter.fillRect(0, h, w, size.height - h, Qt::blue);
    painter.fillRect(w, h, size.width - w, size.height - h, Qt::yellow);
    painter.end();
    m_images[picture.sha256] = image;
    return picture;
}

Result<BakedJpeg> PaintedPictures::bake(const ClearedPicture& picture, SizePx largest)
{
    const std::lock_guard lock(m_mutex);
    if (++baked == 2 && failure)
        return *failure;
    const QImage& whole = m_images[picture.sha256];
    const RectFraction& v = picture.visible;
    QImage part = whole.copy(static_cast<int>(std::lround(v.x * whole.width())),
        static_cast<int>(std::lround(v.y * whole.height())),
        static_cast<int>(std::lround(v.width * whole.width())),
        static_cast<int>(std::lround(v.height * whole.height())));
    if (part.width() > largest.width || part.height() > largest.height)
        part = part.scaled(largest.width, largest.height, Qt::KeepAspectRatio);
    BakedJpeg jpeg;
    QBuffer buffer(&jpeg.bytes);
    buffer.open(QIODevice::WriteOnly);
    part.save(&buffer, "JPEG", 92);
    jpeg.size = {part.width(), part.height()};
    return jpeg;
}

QImage drawn(const QString& pdf, const QString& program, int page, int dpi)
{
    const QTemporaryDir folder;
    const QString out = folder.filePath(QStringLiteral("page.png"));
    const QString number = QString::number(page);
    const QString resolution = QString::number(dpi);
    if (program == QLatin1String("pdftoppm"))
        (void)run(program,
            {QStringLiteral("-png"),
                QStringLiteral("-singlefile"),
                QStringLiteral("-r"),
                resolution,
                QStringLiteral("-f"),
                number,
                pdf,
                out.chopped(4)});
    else if (program == QLatin1String("mutool"))
        (void)run(program,
            {QStringLiteral("draw"),
                QStringLiteral("-r"),
                resolution,
                QStringLiteral("-o"),
                out,
                pdf,
                number});
    else
        (void)run(QStringLiteral("gs"),
            {QStringLiteral("-q"),
                QStringLiteral("-dBATCH"),
                QStringLiteral("-dNOPAUSE"),
                QStringLiteral("-dSAFER"),
                QStringLiteral("-dPDFSTOPONERROR"),
                QStringLiteral("-sDEVICE=png16m"),
                QStringLiteral("-dTextAlphaBits=4"),
                QStringLiteral("-dGraphicsAlphaBits=4"),
                QStringLiteral("-r") + resolution,
                QStringLiteral("-dFirstPage=") + number,
                QStringLiteral("-dLastPage=") + number,
                QStringLiteral("-o"),
                out,
                pdf});
    const QImage image(out);
    EXPECT_FALSE(image.isNull()) << qPrintable(program);
    return image.convertToFormat(QImage::Format_RGB32);
}

double difference(const QImage& a, const QImage& b)
{
    const int width = std::min(a.width(), b.width());
    const int height = std::min(a.height(), b.height());
    EXPECT_LE(std::abs(a.width() - b.width()), 1);
    EXPECT_LE(std::abs(a.height() - b.height()), 1);
    double sum = 0;
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            const QRgb p = a.pixel(x, y);
            const QRgb q = b.pixel(x, y);
            sum += std::abs(qRed(p) - qRed(q)) + std::abs(qGreen(p) - qGreen(q))
                + std::abs(qBlue(p) - qBlue(q));
        }
    }
    return sum / (3.0 * width * height);
}

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QStringList filesIn(const QString& folder)
{
    return QDir(folder).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
}

PaperOptions options()
{
    PaperOptions options;
    options.created = QDateTime(QDate(2026, 3, 2), QTime(9, 30), Qt::OffsetFromUTC, 3600);
    return options;
}

} // namespace wainscot::paper_kit
