// A seeded book in which every family has answered at random, and what that forbids, worked out
// from the answers alone. Names and words are invented and occur once; every picture has a hue and
// a pattern that nothing else has.
#pragma once

#include "tests/support/class_book.h"

#include <QColor>
#include <QImage>
#include <QStringList>

#include <random>

namespace wainscot {

struct Forbidden {
    QStringList names; // parts of them
    QStringList words;
    QList<QColor> pictures;
    QList<quint64> sights; // of the same pictures; see sightOf
};

class PrivacyBook {
public:
    // One display for each audience; originals go to `picturesFolder`.
    PrivacyBook(unsigned seed, QString picturesFolder);

    [[nodiscard]] const Book& book() const { return m_class.book; }
    [[nodiscard]] const QString& picturesFolder() const { return m_folder; }
    [[nodiscard]] Forbidden forbiddenOn(const Display& display) const;
    // In a file of everything, which counts as one display.
    [[nodiscard]] Forbidden forbiddenInTerm(Audience audience) const;
    [[nodiscard]] QStringList allowedWordsOn(const Display& display) const;
    [[nodiscard]] QList<QColor> allowedPicturesOn(const Display& display) const;
    [[nodiscard]] QList<quint64> allowedSightsOn(const Display& display) const;
    // What tells of files and folders, and may be in no output whatever was allowed.
    [[nodiscard]] QStringList tellTales() const;

private:
    void makeChildren();
    void makePictures();
    void makeDisplay(Audience audience);
    [[nodiscard]] int below(int end) { return int(m_random() % unsigned(end)); }
    [[nodiscard]] Permissions answers();
    [[nodiscard]] QString anyName();
    [[nodiscard]] bool isShown(const Picture& picture, Audience audience) const;
    using Pictures = std::vector<const Picture*>;
    [[nodiscard]] bool isNamed(
        const Child& child, Audience audience, const Pictures& together) const;
    [[nodiscard]] Forbidden forbidden(Audience audience, const Pictures& together) const;
    [[nodiscard]] Pictures hungOn(const Display& display) const;

    struct Told {
        QuoteId quote;
        QString token; // a word of it that is nowhere else
    };
    std::mt19937 m_random;
    QString m_folder;
    ClassBook m_class;
    std::vector<ChildId> m_children;
    std::vector<Told> m_told;
    std::map<PictureId, QColor> m_colours;
    std::map<PictureId, quint64> m_sights;
};

// A hash of how a picture looks, in whatever size: whether each of 8 x 8 fields is lighter than the
// one beside it (the difference hash: N. Krawetz, "Kind of Like That", 2013). Another picture
// differs in about 32 bits, the same one made small and packed as JPEG in a few.
[[nodiscard]] quint64 sightOf(const QImage& image);
[[nodiscard]] bool looksLike(quint64 one, quint64 other);

// How many pixels are of the hue, as near as pattern and JPEG leave it.
[[nodiscard]] int pixelsOf(const QColor& colour, const QImage& image);

} // namespace wainscot
