#include "layout/paper/text_words.h"

#include <algorithm>

namespace wainscot::pdf {

namespace {

bool isSpace(const QString& text)
{
    return !text.isEmpty()
        && std::all_of(text.begin(), text.end(), [](QChar c) { return c.isSpace(); });
}

// Letters without a glyph of their own (joiners, marks of direction) go with the letter before.
std::vector<Cluster> withoutEmptyOnes(const std::vector<Cluster>& clusters)
{
    std::vector<Cluster> kept;
    QString before;
    for (const Cluster& cluster : clusters) {
        if (cluster.glyphCount == 0 && kept.empty()) {
            before += cluster.text;
        } else if (cluster.glyphCount == 0) {
            kept.back().text += cluster.text;
        } else {
            kept.push_back(cluster);
            kept.back().text.prepend(before);
            before.clear();
        }
    }
    return kept;
}

// The letters of a cluster shared out to its glyphs: one each, and the rest to the last. A glyph
// too many stands for nothing to be seen (word joiner): no glyph may go without a meaning.
std::vector<QString> shares(const Cluster& cluster)
{
    const QList<uint> letters = cluster.text.toUcs4();
    const auto count = static_cast<qsizetype>(cluster.glyphCount);
    std::vector<QString> result;
    for (qsizetype i = 0; i < count; ++i) {
        QString share;
        const qsizetype end = i + 1 < count ? i + 1 : letters.size();
        for (qsizetype at = i; at < std::min(end, letters.size()); ++at) {
            const char32_t letter = letters[at];
            share += QString::fromUcs4(&letter, 1);
        }
        result.push_back(share.isEmpty() ? QString(QChar(0x2060)) : share);
    }
    return result;
}

void append(Word& word, const GlyphRun& run, const Cluster& cluster, FontFace& face)
{
    word.text += cluster.text;
    word.told = word.told || (cluster.glyphCount > 1 && !run.rightToLeft);
    const std::vector<QString> texts = shares(cluster);
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const std::size_t index = static_cast<std::size_t>(cluster.firstGlyph) + i;
        const quint32 glyph = run.glyphs[index];
        const std::optional<FontFace::Code> code = face.codeFor(glyph, texts[i]);
        word.told = word.told || !code;
        word.glyphs.push_back({index, code ? *code : face.anyCode(glyph, texts[i])});
    }
}

} // namespace

std::vector<Word> wordsOf(const GlyphRun& run, FontFace& face)
{
    std::vector<Word> words;
    for (const Cluster& cluster : withoutEmptyOnes(run.clusters)) {
        const bool space = isSpace(cluster.text);
        if (words.empty() || space || words.back().space) {
            words.emplace_back();
            words.back().space = space;
        }
        append(words.back(), run, cluster, face);
    }
    return words;
}

} // namespace wainscot::pdf
