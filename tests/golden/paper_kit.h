// Hand-made pages, synthetic pictures and the independent readers that look at the result.
#pragma once

#include "layout/paper/pdf_writer.h"
#include "layout/typeset/display_list.h"
#include "layout/typeset/faces.h"

#include <QImage>
#include <QStringList>
#include <QTemporaryDir>

#include <map>
#include <mutex>

namespace wainscot::paper_kit {

// What a command printed; fails the test when it is missing or does not end well.
[[nodiscard]] QString run(const QString& program, const QStringList& arguments);

// A page in the making.
class Page {
public:
    explicit Page(SizeMm size, const QString& title = QStringLiteral("Rain on the wall"));
    // Text from a baseline downwards, broken at a width. Answers its element.
    int text(Role role, const QString& words, PointMm at, Mm width, const QString& language = {});
    // Further text of an element.
    void more(
        int element, const QString& words, PointMm at, Mm width, const QString& language = {});
    int picture(const ClearedPicture& picture, const RectMm& place);
    void fill(const RectMm& rect, QRgb colour);
    Mm cap{5};
    Voice voice = Voice::Child;
    QRgb colour = 0xff203040;
    DisplayList list;
};

// A run of one font, shaped by Qt without regard to pairings; ligatures as the font has them.
[[nodiscard]] GlyphRun shaped(
    const QString& words, const QString& family, int units, PointMm baseline);

// One glyph a letter, set solid.
[[nodiscard]] GlyphRun plainRun(const QRawFont& font, const QString& words, PointMm baseline);

// Pictures made of coloured quarters: red, green / blue, yellow, with `visible` applied.
class PaintedPictures final : public PictureSource {
public:
    ClearedPicture add(SizePx size, RectFraction visible = {});
    Result<BakedJpeg> bake(const ClearedPicture& picture, SizePx largest) override;
    int baked = 0;
    std::optional<Error> failure; // answered for the second picture

private:
    std::mutex m_mutex;
    std::map<QString, QImage> m_images;
};

// The n-th page drawn by an independent program, at a resolution: "pdftoppm", "mutool" or "gs".
[[nodiscard]] QImage drawn(const QString& pdf, const QString& program, int page = 1, int dpi = 50);

// Mean absolute difference of two pictures of one size, 0..255.
[[nodiscard]] double difference(const QImage& a, const QImage& b);

[[nodiscard]] QByteArray contentOf(const QString& path);
[[nodiscard]] QStringList filesIn(const QString& folder); // hidden ones too
[[nodiscard]] PaperOptions options();

} // namespace wainscot::paper_kit
