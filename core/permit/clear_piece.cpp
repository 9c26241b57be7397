#include "core/permit/piece_clearing.h"

#include "core/base/wall_text.h"
#include "core/model/verbatim.h"
#include "core/permit/reasons.h"
#include "core/permit/translated.h"

namespace wainscot {

namespace {

// Nothing for what readers assume: said, and written down word for word.
QString statusOf(const Quote& quote, const QString& language)
{
    QString how;
    switch (quote.telling) {
    case Telling::Said:
        break;
    case Telling::Wrote:
        how = wallText(WallText::OwnWriting, language);
        break;
    case Telling::Drew:
        how = wallText(WallText::Drawn, language);
        break;
    case Telling::Signed:
        how = wallText(WallText::Signed, language);
        break;
    case Telling::Pointed:
        how = wallText(WallText::Pointed, language);
        break;
    }
    if (quote.dictation == Dictation::Exact)
        return how;
    const QString together = wallText(WallText::WorkedUpTogether, language);
    return how.isEmpty() ? together : how + QStringLiteral(", ") + together;
}

// A child's drawing is never cut.
RectFraction visibleIn(const Piece& piece, const Picture& picture)
{
    const bool whole = piece.kind == PieceKind::Work || picture.kind == PictureKind::Work;
    if (whole || piece.picturePlace.isEmpty())
        return {};
    return visiblePart(
        picture.size, piece.picturePlace.width / piece.picturePlace.height, piece.framing);
}

} // namespace

ClearedPicture pixelsOf(const Picture& picture)
{
    ClearedPicture shown;
    shown.id = picture.id;
    shown.sha256 = picture.sha256;
    shown.format = picture.format;
    shown.size = picture.size;
    shown.orientation = picture.orientation;
    shown.treatment = picture.treatment;
    shown.mustStay = picture.mustStay;
    return shown;
}

std::optional<ClearedPiece> PieceClearing::clear(const Piece& piece)
{
    ClearedPiece cleared;
    cleared.id = piece.id;
    cleared.kind = piece.kind;
    cleared.cell = piece.cell;
    cleared.picturePlace = piece.picturePlace;
    cleared.group = piece.group;
    cleared.order = piece.order;
    cleared.dominant = piece.dominant;
    cleared.pinned = piece.pinned;
    cleared.pairing = piece.pairing;
    cleared.palette = piece.palette;
    cleared.size = piece.size;
    cleared.together = piece.together;
    cleared.startsPanel = piece.startsPanel;
    if (piece.kind == PieceKind::Quote && !addQuote(piece, cleared))
        return std::nullopt;
    if (isPicture(piece.kind) && !addPicture(piece, cleared))
        return std::nullopt;
    const QString language = firstLanguage(piece.language, ExperienceId());
    cleared.heading = named(piece.heading, false, piece.id, language);
    if (piece.kind != PieceKind::Quote) {
        const PictureId picture = isPicture(piece.kind) ? piece.picture : PictureId();
        cleared.text = captioned(piece.text, picture, piece.id, language);
        cleared.language = language;
    }
    return cleared;
}

bool PieceClearing::addQuote(const Piece& piece, ClearedPiece& cleared)
{
    const Quote* quote = m_rules.m_book.quotes.find(piece.quote);
    const auto why = quote ? m_rules.refusal(*quote) : std::optional<QString>(reasons::wordsGone());
    if (why) {
        leaveOut("quote", piece.quote.number(), piece.id, *why);
        return false;
    }
    const Child& child = *m_rules.m_book.children.find(quote->child);
    // What is not the child's own is never shown as theirs.
    const bool inPart = !piece.shownWords.isEmpty() && isVerbatim(piece.shownWords, quote->words);
    cleared.language = firstLanguage(quote->language, quote->experience);
    cleared.text =
        named(inPart ? piece.shownWords : quote->words, true, piece.id, cleared.language);
    cleared.name = m_rules.shownName(child);
    cleared.status = statusOf(*quote, m_rules.wallLanguage());
    if (!piece.language.isEmpty() && !sameLanguage(piece.language, cleared.language)
        && !translate(piece, *quote, cleared)) {
        leaveOut("quote", piece.quote.number(), piece.id, reasons::notTranslated(child));
        return false;
    }
    if (const auto unnamed = m_rules.namingRefusal(child))
        leaveOut("name", child.id.number(), piece.id, *unnamed);
    return true;
}

// An adult's wording stands where the child's own words would, and says so.
bool PieceClearing::translate(const Piece& piece, const Quote& quote, ClearedPiece& cleared)
{
    const Translation* found = translationOf(m_rules.m_book, quote.id, piece.language);
    if (found == nullptr)
        return false;
    cleared.translatedFrom = cleared.language;
    cleared.text = named(found->text, true, piece.id, piece.language);
    cleared.language = piece.language;
    cleared.status = translatedFrom(cleared.translatedFrom, piece.language);
    return true;
}

bool PieceClearing::addPicture(const Piece& piece, ClearedPiece& cleared)
{
    const Picture* picture = m_rules.m_book.pictures.find(piece.picture);
    const auto why =
        picture ? m_rules.refusal(*picture) : std::optional<QString>(reasons::pictureGone());
    if (why) {
        const bool isPhoto =
            picture ? picture->kind == PictureKind::Photo : piece.kind == PieceKind::Photo;
        leaveOut(isPhoto ? "photo" : "work", piece.picture.number(), piece.id, *why);
        return false;
    }
    ClearedPicture shown = pixelsOf(*picture);
    shown.visible = visibleIn(piece, *picture);
    if (!piece.secondLanguage.isEmpty() && !piece.text.isEmpty()) {
        if (const auto* other = translationOf(m_rules.m_book, picture->id, piece.secondLanguage)) {
            cleared.secondText =
                captioned(other->text, picture->id, piece.id, piece.secondLanguage);
            cleared.secondLanguage = piece.secondLanguage;
        }
    }
    const QString caption = piece.text.isEmpty() ? picture->caption : piece.text;
    const QString language = firstLanguage(piece.language, ExperienceId());
    shown.alternative = captioned(caption, picture->id, piece.id, language);
    if (shown.alternative.trimmed().isEmpty()) {
        const bool isPhoto = picture->kind == PictureKind::Photo;
        shown.alternative = wallText(isPhoto ? WallText::Photo : WallText::WorkSample, language);
    }
    cleared.picture = shown;
    return true;
}

QString PieceClearing::named(
    const QString& text, bool childsWords, PieceId piece, const QString& language)
{
    return m_rules.withPermittedNames(text, childsWords, {language, piece}, m_leftOut);
}

QString PieceClearing::firstLanguage(const QString& own, ExperienceId experience) const
{
    if (!own.isEmpty())
        return own;
    const Experience* happened = m_rules.m_book.experiences.find(experience);
    if (happened && !happened->language.isEmpty())
        return happened->language;
    if (!m_rules.m_display.language.isEmpty())
        return m_rules.m_display.language;
    return m_rules.m_book.info.language;
}

void PieceClearing::leaveOut(const char* what, std::int64_t id, PieceId piece, const QString& why)
{
    addLeftOut(m_leftOut, {QString::fromLatin1(what), id, piece, why});
}

} // namespace wainscot
