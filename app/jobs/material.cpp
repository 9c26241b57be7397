#include "app/jobs/material.h"

#include "core/voice/participation.h"

#include <QRegularExpression>

#include <algorithm>

namespace wainscot {

namespace {

LeftOut refusedQuote(const Quote& quote, const QString& why)
{
    return {QStringLiteral("quote"), quote.id.number(), {}, why};
}

LeftOut refusedPicture(const Picture& picture, const QString& why)
{
    return {nameOf(picture.kind), picture.id.number(), {}, why};
}

} // namespace

std::set<QString> wordSet(const QString& text)
{
    static const QRegularExpression between(QStringLiteral("[^\\p{L}\\p{N}'\\x{2019}]+"));
    const QStringList words = text.toCaseFolded().split(between, Qt::SkipEmptyParts);
    return {words.begin(), words.end()};
}

double likeness(const QString& a, const QString& b)
{
    return likeness(wordSet(a), wordSet(b));
}

double likeness(const std::set<QString>& one, const std::set<QString>& other)
{
    if (one.empty() || other.empty())
        return 0;
    std::size_t shared = 0;
    for (const QString& word : one)
        shared += other.count(word);
    return static_cast<double>(shared) / static_cast<double>(one.size() + other.size() - shared);
}

std::optional<QDate> Material::dayOf(const Quote& quote) const
{
    return quote.on ? quote.on : experience.on;
}

std::optional<QDate> Material::dayOf(const Picture& picture) const
{
    if (picture.captured && picture.captured->local.isValid())
        return picture.captured->local.date();
    return std::nullopt;
}

const QString& Material::language() const
{
    return languageOf(*book, experience);
}

QString Material::nameOf(ChildId child) const
{
    const Child* known = book->children.find(child);
    return known != nullptr ? displayName(*known) : QStringLiteral("a child");
}

Material materialFor(const Book& book,
    const Experience& experience,
    const Display& display,
    const PermissionRules& rules,
    const std::vector<Piece>& pinned)
{
    Material material;
    material.book = &book;
    material.experience = experience;
    material.display = display;
    std::set<QuoteId> placedQuotes;
    std::set<PictureId> placedPictures;
    for (const Piece& piece : pinned) {
        placedQuotes.insert(piece.quote);
        placedPictures.insert(piece.picture);
        material.heard.merge(voicesIn(book, piece));
    }
    for (const Quote* quote : quotesOf(book, experience.id)) {
        if (quote->words.trimmed().isEmpty())
            continue; // drawn: the drawing is among the pictures
        if (placedQuotes.count(quote->id) > 0)
            continue;
        if (const auto why = rules.refusal(*quote))
            material.refused.push_back(refusedQuote(*quote, *why));
        else
            material.quotes.push_back(quote);
    }
    for (const Picture* picture : picturesOf(book, experience.id)) {
        if (placedPictures.count(picture->id) > 0) {
            material.placed.push_back(picture);
            continue;
        }
        if (const auto why = rules.refusal(*picture))
            material.refused.push_back(refusedPicture(*picture, *why));
        else if (picture->kind == PictureKind::Work)
            material.works.push_back(picture);
        else
            material.photos.push_back(picture);
    }
    std::stable_sort(
        material.photos.begin(), material.photos.end(), [](const Picture* a, const Picture* b) {
            if (!a->captured || !b->captured)
                return a->captured.has_value() && !b->captured;
            return a->captured->local < b->captured->local;
        });
    return material;
}

} // namespace wainscot
