#include "layout/paper/text_words.h"

#include <algorithm>

namespace wainscot::pdf {

namespace {

bool isSpace(const QString& text)
{
    return !text.isEmpty()
        && std::all_of(text.begin(), text.end(), [](QChar c) { return c.isSpace(); });
}

// The letters of a cluster shared out to its glyphs, in the glyphs' order; empty if they cannot be.
std::vector<QString> lettersByGlyph(
    const GlyphRun& run, const Cluster& cluster, const FontFace& face)
{
    if (cluster.glyphCount == 1)
        return {cluster.text};
    const QList<uint> letters = cluster.text.toUcs4();
    if (cluster.glyphCount != letters.size())
        return {};
    std::vector<QString> shares;
    for (int i = 0; i < cluster.glyphCount; ++i) {
        const char32_t letter = letters[i];
        const quint32 glyph = run.glyphs[static_cast<std::size_t>(cluster.firstGlyph + i)];
        if (face.glyphOf(letter) != glyph)
            return {};
        shares.push_back(QString::fromUcs4(&letter, 1));
    }
    return shares;
}

// A stand-in for one glyph of a word whose text is told beside it.
QString likelyText(const Cluster& cluster, quint32 glyph, const FontFace& face)
{
    for (const char32_t letter : cluster.text.toUcs4()) {
        if (face.glyphOf(letter) == glyph)
            return QString::fromUcs4(&letter, 1);
    }
    return cluster.text;
}

bool tellByGlyph(const GlyphRun& run, const Cluster& cluster, FontFace& face)
{
    const std::vector<QString> shares = lettersByGlyph(run, cluster, face);
    bool told = !shares.empty();
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const quint32 glyph = run.glyphs[static_cast<std::size_t>(cluster.firstGlyph) + i];
        told = face.standsFor(glyph, shares[i]) && told;
    }
    if (!told) {
        for (int i = 0; i < cluster.glyphCount; ++i) {
            const quint32 glyph = run.glyphs[static_cast<std::size_t>(cluster.firstGlyph + i)];
            face.uses(glyph, likelyText(cluster, glyph, face));
        }
    }
    return told;
}

} // namespace

std::vector<Word> wordsOf(const GlyphRun& run, FontFace& face)
{
    std::vector<Word> words;
    for (const Cluster& cluster : run.clusters) {
        const bool space = isSpace(cluster.text);
        if (words.empty() || space || words.back().space) {
            words.emplace_back();
            words.back().space = space;
        }
        Word& word = words.back();
        word.text += cluster.text;
        const bool told =
            cluster.glyphCount == 0 ? cluster.text.isEmpty() : tellByGlyph(run, cluster, face);
        word.plain = word.plain && told;
        for (int i = 0; i < cluster.glyphCount; ++i)
            word.glyphs.push_back(cluster.firstGlyph + i);
    }
    words.erase(
        std::remove_if(
            words.begin(), words.end(), [](const Word& word) { return word.glyphs.empty(); }),
        words.end());
    if (!run.rightToLeft)
        return words;
    // Readers expect what runs from right to left in the order it stands on the page.
    const auto x = [&](int glyph) { return run.positions[static_cast<std::size_t>(glyph)].x(); };
    for (Word& word : words)
        std::stable_sort(
            word.glyphs.begin(), word.glyphs.end(), [&](int a, int b) { return x(a) < x(b); });
    std::stable_sort(words.begin(), words.end(), [&](const Word& a, const Word& b) {
        return x(a.glyphs.front()) < x(b.glyphs.front());
    });
    return words;
}

} // namespace wainscot::pdf
