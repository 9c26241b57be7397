// What comes onto a display: fair, cleared, in the order of time, around what is pinned.
#include "app/jobs/arrange_job.h"
#include "app/jobs/draft.h"
#include "app/jobs/sentences.h"
#include "tests/support/puddle_book.h"

#include <QCoreApplication>
#include <QTranslator>

#include <gmock/gmock.h>

#include <map>

namespace wainscot {
namespace {

using ::testing::Contains;
using ::testing::Each;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

std::vector<ChildId> speakers(const Puddle& puddle, const ArrangeOutcome& outcome)
{
    std::vector<ChildId> children;
    for (const ArrangedPiece& one : outcome.pieces) {
        if (const Quote* quote = puddle.book.quotes.find(one.piece.quote))
            children.push_back(quote->child);
    }
    return children;
}

std::vector<std::string> labels(const ArrangeOutcome& outcome)
{
    std::vector<std::string> texts;
    for (const ArrangedPiece& one : outcome.pieces) {
        if (one.piece.kind == PieceKind::Label)
            texts.push_back(one.piece.text.toStdString());
    }
    return texts;
}

TEST(ArrangeJob, LetsEveryChildSpeakBeforeAnyoneSpeaksTwice)
{
    Puddle puddle = fourDays();
    const auto who = speakers(puddle, puddle.arranged(hallway()));
    EXPECT_EQ(who.size(), 4U);
    EXPECT_EQ(std::set<ChildId>(who.begin(), who.end()).size(), 4U);
}

TEST(ArrangeJob, TellsTheDaysInTheOrderOfTime)
{
    Puddle puddle = fourDays();
    EXPECT_THAT(labels(puddle.arranged(hallway())),
        ::testing::ElementsAre("Monday, 3 November",
            "Tuesday, 4 November",
            "Wednesday, 5 November",
            "Thursday, 6 November"));
}

TEST(ArrangeJob, PutsAPictureOfTheSameDayWithEachQuote)
{
    Puddle puddle = fourDays();
    const ArrangeOutcome outcome = puddle.arranged(hallway());
    std::map<int, std::set<QDate>> daysOfGroup;
    for (const ArrangedPiece& one : outcome.pieces) {
        if (one.piece.group == 0)
            continue;
        if (const Picture* picture = puddle.book.pictures.find(one.piece.picture))
            daysOfGroup[one.piece.group].insert(picture->captured->local.date());
        if (const Quote* quote = puddle.book.quotes.find(one.piece.quote))
            daysOfGroup[one.piece.group].insert(*quote->on);
    }
    ASSERT_EQ(daysOfGroup.size(), 4U);
    for (const auto& [group, days] : daysOfGroup)
        EXPECT_EQ(days.size(), 1U);
}

TEST(ArrangeJob, NeverTakesWhatIsNotCleared)
{
    Puddle puddle = fourDays();
    const ChildId noor = puddle.child("Noor Haddad", Permissions());
    const QuoteId words = puddle.said(noor, 3, "The worms drank it all in the night.", 3);
    const PictureId seen = puddle.took(3, {noor});
    const PictureId unknown = puddle.picture(PictureKind::Photo, {}, "unknown.jpg");
    const ArrangeOutcome outcome = puddle.arranged(hallway());
    for (const ArrangedPiece& one : outcome.pieces) {
        EXPECT_NE(one.piece.quote, words);
        EXPECT_NE(one.piece.picture, seen);
        EXPECT_NE(one.piece.picture, unknown);
    }
    std::vector<std::string> why;
    for (const LeftOut& left : outcome.leftOut)
        why.push_back(left.what.toStdString() + ": " + left.why.toStdString());
    EXPECT_THAT(why, Contains(HasSubstr("quote: Noor")));
    EXPECT_THAT(why, Contains(HasSubstr("unknown.jpg")));
    EXPECT_THAT(why, Contains(HasSubstr("want of room")));
}

TEST(ArrangeJob, AvoidsTellingTheSameTwice)
{
    Puddle puddle;
    const ChildId mei = puddle.child("Mei", Permissions::all());
    const ChildId kofi = puddle.child("Kofi", Permissions::all());
    puddle.said(mei, 3, "The sun drank the whole puddle up.");
    const QuoteId same = puddle.said(kofi, 4, "The sun drank the whole puddle up!", 3);
    const QuoteId other = puddle.said(kofi, 4, "It hides in the drain until it rains.");
    Material material;
    material.book = &puddle.book;
    for (const auto& [id, quote] : puddle.book.quotes.rows())
        material.quotes.push_back(&quote);
    const Selection selection = selectDays(material, 2, 1);
    ASSERT_EQ(selection.moments.size(), 2U);
    EXPECT_NE(selection.moments[1].quote->id, same);
    EXPECT_EQ(selection.moments[1].quote->id, other);
}

TEST(ArrangeJob, SaysWhichChildIsNotHeardAndWhy)
{
    Puddle puddle = fourDays();
    const ChildId ines = puddle.child("Ines Roth", Permissions());
    puddle.said(ines, 3, "It went to sleep under the stones.");
    const ChildId sven = puddle.child("Sven Dahl", Permissions::all());
    const ChildId noor = puddle.child("Noor Haddad", Permissions::all());
    puddle.said(noor, 3, "The worms drank it all in the night.");
    const ArrangeOutcome outcome = puddle.arranged(hallway());
    std::map<std::int64_t, std::string> why;
    for (const LeftOut& left : outcome.leftOut) {
        if (left.what == QLatin1String("child"))
            why[left.id] = left.why.toStdString();
    }
    EXPECT_THAT(why[ines.number()], HasSubstr("none of the words may be shown"));
    EXPECT_THAT(why[sven.number()], HasSubstr("no words have been gathered"));
    // Five children with words, four places: one of them has no room, and it says how much more.
    ASSERT_EQ(why.size(), 3U);
    for (const auto& [id, sentence] : why) {
        if (id != ines.number() && id != sven.number()) {
            EXPECT_THAT(sentence, HasSubstr("no room"));
            EXPECT_THAT(sentence, HasSubstr("square centimetres"));
        }
    }
}

TEST(ArrangeJob, LetsAChildSpeakWhoHasSeldomBeenOnAWall)
{
    Puddle puddle;
    const ChildId mei = puddle.child("Mei", Permissions::all());
    const ChildId kofi = puddle.child("Kofi", Permissions::all());
    const QuoteId first = puddle.said(mei, 3, "The sun drank the whole puddle up.");
    const QuoteId other = puddle.said(kofi, 3, "It hides in the drain until it rains.");
    Material material;
    material.book = &puddle.book;
    material.quotes = {puddle.book.quotes.find(first), puddle.book.quotes.find(other)};
    ASSERT_EQ(selectDays(material, 1, 1).moments.size(), 1U);
    const QuoteId heard = selectDays(material, 1, 1).moments.front().quote->id;
    puddle.hang(puddle.display(Audience::Families), heard);
    EXPECT_NE(selectDays(material, 1, 1).moments.front().quote->id, heard);
}

TEST(ArrangeJob, GivesTheTeachersGroupsAVoiceEach)
{
    Puddle puddle;
    const ChildId mei = puddle.child("Mei", Permissions::all());
    const ChildId kofi = puddle.child("Kofi", Permissions::all());
    const QuoteId sun = puddle.said(mei, 3, "The sun drank the whole puddle up.", 3);
    const QuoteId drain = puddle.said(mei, 3, "It hides in the drain until it rains.");
    const QuoteId also = puddle.said(kofi, 4, "A big sun, with a straw in it.", 3);
    for (const std::vector<QuoteId>& quotes : {std::vector{sun, also}, std::vector{drain}}) {
        Group group;
        group.id = puddle.book.groups.newId();
        group.experience = puddle.experience;
        group.quotes = quotes;
        puddle.book.groups.put(group);
    }
    Material material;
    material.book = &puddle.book;
    material.experience = *puddle.book.experiences.find(puddle.experience);
    for (const auto& [id, quote] : puddle.book.quotes.rows())
        material.quotes.push_back(&quote);
    const Selection selection = selectDays(material, 2, 1);
    ASSERT_EQ(selection.moments.size(), 2U);
    EXPECT_EQ(selection.moments[0].quote->id, drain) << "both children and both groups";
    EXPECT_EQ(selection.moments[1].quote->id, also);
}

TEST(Likeness, ComparesWordsAndNothingElse)
{
    EXPECT_DOUBLE_EQ(
        likeness(QStringLiteral("The sun drank it"), QStringLiteral("it, the SUN drank!")), 1.0);
    EXPECT_DOUBLE_EQ(likeness(QStringLiteral("a b c"), QStringLiteral("b c d")), 0.5);
    EXPECT_DOUBLE_EQ(likeness(QStringLiteral("a b"), QStringLiteral("c d")), 0.0);
    EXPECT_DOUBLE_EQ(likeness(QString(), QString()), 0.0);
}

TEST(ArrangeJob, KeepsPinsAndReplacesTheRest)
{
    Puddle puddle = fourDays();
    const ArrangeOutcome first = puddle.arranged(hallway());
    apply(first.edit, puddle.book);
    Piece pinned;
    for (const ArrangedPiece& one : first.pieces) {
        if (one.piece.kind == PieceKind::Photo && one.piece.dominant)
            pinned = one.piece;
    }
    ASSERT_TRUE(pinned.id.isValid());
    pinned.pinned = true;
    puddle.book.pieces.put(pinned);
    const ArrangeOutcome second = puddle.arranged(hallway());
    int found = 0;
    int pictures = 0;
    for (const ArrangedPiece& one : second.pieces) {
        pictures += int(one.piece.picture == pinned.picture);
        if (one.piece.id == pinned.id) {
            ++found;
            EXPECT_EQ(one.piece.cell, pinned.cell);
            EXPECT_TRUE(one.piece.pinned);
        }
    }
    EXPECT_EQ(found, 1);
    EXPECT_EQ(pictures, 1);
    apply(second.edit, puddle.book);
    EXPECT_EQ(puddle.book.displays.size(), 1U);
    EXPECT_EQ(puddle.book.pieces.size(), second.pieces.size());
}

TEST(ArrangeJob, ComesOutTheSameEachTime)
{
    Puddle puddle = fourDays();
    const ArrangeOutcome one = puddle.arranged(hallway());
    const ArrangeOutcome other = puddle.arranged(hallway());
    ASSERT_EQ(one.pieces.size(), other.pieces.size());
    for (std::size_t i = 0; i < one.pieces.size(); ++i)
        EXPECT_EQ(one.pieces[i].piece, other.pieces[i].piece);
}

TEST(ArrangeJob, SpreadsMoreVoicesOverMorePanels)
{
    Puddle puddle = fourDays();
    ArrangeJob job = hallway();
    job.panels = 2;
    const ArrangeOutcome outcome = puddle.arranged(job);
    EXPECT_EQ(outcome.panels, 2);
    EXPECT_GT(speakers(puddle, outcome).size(), 4U);
    std::map<int, int> titles;
    for (const ArrangedPiece& one : outcome.pieces)
        titles[one.panel] += int(one.piece.kind == PieceKind::Title);
    EXPECT_EQ(titles[1], 1);
    EXPECT_EQ(titles[2], 1);
}

TEST(ArrangeJob, ShowsOneDrawingWithItsWordsOnASmallSheet)
{
    Puddle puddle;
    const ChildId mei = puddle.child("Mei", Permissions::all(), "2020-06-01");
    puddle.said(mei,
        4,
        "This is the cloud. It is thirsty because it works all day.\n\n"
        "That is the straw. It is red so the water knows where to go.");
    const PictureId work = puddle.picture(PictureKind::Work, {true, {mei}}, "cloud.png");
    Picture value = *puddle.book.pictures.find(work);
    value.size = {3200, 2300};
    puddle.book.pictures.put(value);
    ArrangeJob job = hallway();
    job.panelSize = {Mm(420), Mm(297)};
    const ArrangeOutcome outcome = puddle.arranged(job);
    EXPECT_EQ(outcome.display.readingDistance, Mm(1000)); // nearer than to a wall
    EXPECT_EQ(outcome.display.plan, QStringLiteral("drawing"));
    ASSERT_FALSE(outcome.pieces.empty());
    EXPECT_EQ(outcome.pieces.front().piece.kind, PieceKind::Work);
    EXPECT_EQ(outcome.pieces.front().piece.picture, work);
    EXPECT_DOUBLE_EQ(outcome.pieces.front().keep, 1);
}

TEST(ArrangeJob, SaysWhatIsMissingWhenNothingFits)
{
    Puddle puddle = fourDays();
    ArrangeJob job = hallway();
    job.panelSize = {Mm(105), Mm(74)};
    job.readingDistance = Mm(5000);
    job.plan = QStringLiteral("days");
    const auto outcome = job.run(puddle.book, Puddle::runOf());
    ASSERT_TRUE(outcome.ok());
    ASSERT_TRUE(std::holds_alternative<ArrangeFailure>(*outcome));
    EXPECT_THAT(std::get<ArrangeFailure>(*outcome).says.toStdString(), HasSubstr("Panel 1"));
}

TEST(ArrangeJob, RefusesWhatMakesNoSense)
{
    Puddle puddle = fourDays();
    ArrangeJob job = hallway();
    job.panels = 0;
    EXPECT_EQ(job.run(puddle.book, {}).error().code, ErrorCode::WrongUse);
    job = hallway();
    job.readingDistance = Mm(10);
    EXPECT_EQ(job.run(puddle.book, {}).error().code, ErrorCode::WrongUse);
    job = hallway();
    job.experience = QStringLiteral("Something else");
    EXPECT_EQ(job.run(puddle.book, {}).error().code, ErrorCode::NotFound);
    Puddle silent;
    const auto nothing = hallway().run(silent.book, {});
    ASSERT_FALSE(nothing.ok());
    EXPECT_EQ(nothing.error().code, ErrorCode::Refused);
}

TEST(Credits, TellHowTheWordsWereTakenDown)
{
    Puddle puddle;
    const ChildId mei = puddle.child("Mei", Permissions::all());
    const QuoteId one = puddle.said(mei, 3, "Wet.");
    const QuoteId other = puddle.said(mei, 6, "Dry.");
    Quote first = *puddle.book.quotes.find(one);
    first.scribe = QStringLiteral("R. Okafor");
    Quote last = *puddle.book.quotes.find(other);
    last.scribe = QStringLiteral("L. Brandt");
    Material material;
    material.book = &puddle.book;
    EXPECT_EQ(creditsFor(material, {&first, &last}),
        QStringLiteral("3–6 November. Words taken down as spoken by R. Okafor and L. Brandt."));
    last.dictation = Dictation::WorkedUp;
    EXPECT_THAT(creditsFor(material, {&first, &last}).toStdString(), HasSubstr("worked up"));
    EXPECT_EQ(creditsFor(material, {}), QString());
}

TEST(Sentences, NameTheThingAndTheCause)
{
    const Error error{ErrorCode::InUse, QStringLiteral("Sparrows"), {}};
    EXPECT_THAT(sentenceFor(error).toStdString(), HasSubstr("Sparrows"));
    EXPECT_EQ(exitCodeFor(ErrorCode::WrongUse), 2);
    EXPECT_EQ(exitCodeFor(ErrorCode::TooNew), 3);
    EXPECT_EQ(exitCodeFor(ErrorCode::Internal), 4);
    EXPECT_EQ(listInWords({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")}),
        QStringLiteral("a, b and c"));
}

// As the window's translations into Spanish.
class InSpanish : public QTranslator {
public:
    QString translate(const char* /*context*/,
        const char* text,
        const char* /*disambiguation*/,
        int /*n*/) const override
    {
        return qstrcmp(text, "en") == 0 ? QStringLiteral("es") : QString();
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
};

TEST(Sentences, ListAndDateInTheLanguageSpoken)
{
    const QStringList names{QStringLiteral("Ada"), QStringLiteral("\u00cd\u00f1igo")};
    const QDate day(2027, 7, 31);
    InSpanish language;
    QCoreApplication::installTranslator(&language);
    EXPECT_EQ(listInWords(names), QStringLiteral("Ada e \u00cd\u00f1igo"));
    EXPECT_EQ(dateInWords(day), QStringLiteral("31 de julio de 2027"));
    QCoreApplication::removeTranslator(&language);
    EXPECT_EQ(listInWords(names), QStringLiteral("Ada and \u00cd\u00f1igo"));
    EXPECT_EQ(dateInWords(day), QStringLiteral("31 July 2027"));
}

TEST(TeachersHand, APinStaysToTheHundredthWhereverItWasPut)
{
    Hung hung;
    Piece pinned = hung.all(PieceKind::Quote).front();
    pinned.pinned = true;
    pinned.cell = {Mm(251.37), Mm(402.13), Mm(187.71), Mm(96.4)};
    hung.puddle.book.pieces.put(pinned);
    const ArrangeOutcome outcome = hung.again();
    const Piece* now = hung.showing(pinned.quote);
    ASSERT_NE(now, nullptr);
    EXPECT_EQ(now->cell, pinned.cell);
    for (const ArrangedPiece& one : outcome.pieces) {
        if (one.piece.id == now->id)
            continue;
        const RectMm both = intersection(one.piece.cell, pinned.cell);
        EXPECT_LT(std::min(both.width, both.height), Mm(0.05))
            << nameOf(one.piece.kind).toStdString();
    }
}

TEST(TeachersHand, WhatWasDoneToAPieceOutlivesAProposalAnew)
{
    Hung hung;
    Piece photo = hung.all(PieceKind::Photo).back();
    photo.size = 1;
    photo.framing = {{0.4, 0.6}, 1.5};
    photo.text = QStringLiteral("My own caption.");
    photo.palette = QStringLiteral("Rowan");
    hung.puddle.book.pieces.put(photo);
    hung.again();
    const auto photos = hung.all(PieceKind::Photo);
    const auto now = std::find_if(photos.begin(), photos.end(), [&](const Piece& piece) {
        return piece.picture == photo.picture;
    });
    ASSERT_NE(now, photos.end());
    EXPECT_NE(now->id, photo.id) << "it is a new piece";
    EXPECT_EQ(now->size, 1);
    EXPECT_EQ(now->framing, photo.framing);
    EXPECT_EQ(now->text, photo.text);
    EXPECT_EQ(now->palette, photo.palette);
}

TEST(TeachersHand, ALockedPanelIsLeftExactlyAsItIs)
{
    Hung hung(2);
    const Display display = hung.puddle.book.displays.rows().begin()->second;
    Panel first = *panelsOf(hung.puddle.book, display.id).front();
    first.locked = true;
    hung.puddle.book.panels.put(first);
    std::vector<Piece> before;
    for (const Piece* piece : piecesOf(hung.puddle.book, first.id))
        before.push_back(*piece);
    const ArrangeOutcome outcome = hung.again();
    std::vector<Piece> after;
    for (const Piece* piece : piecesOf(hung.puddle.book, first.id))
        after.push_back(*piece);
    EXPECT_EQ(after, before);
    EXPECT_EQ(outcome.panels, 2);
    EXPECT_TRUE(hung.puddle.book.panels.find(first.id)->locked);
    // Nothing of it is shown twice, and the other panel has a way in of its own.
    std::map<QuoteId, int> shown;
    bool titled = false;
    for (const ArrangedPiece& one : outcome.pieces) {
        if (one.piece.quote.isValid()) {
            EXPECT_EQ(++shown[one.piece.quote], 1);
        }
        titled = titled || (one.panel == 2 && one.piece.kind == PieceKind::Title);
    }
    EXPECT_TRUE(titled);
}

TEST(TeachersHand, ADisplayOfLockedPanelsSaysSo)
{
    Hung hung;
    const Display display = hung.puddle.book.displays.rows().begin()->second;
    Panel only = *panelsOf(hung.puddle.book, display.id).front();
    only.locked = true;
    hung.puddle.book.panels.put(only);
    const auto outcome = hung.job.run(hung.puddle.book, Puddle::runOf());
    ASSERT_FALSE(outcome.ok());
    EXPECT_THAT(outcome.error().detail.toStdString(), HasSubstr("locked"));
    hung.job.panels = 2;
    EXPECT_EQ(hung.again().panels, 2);
}

TEST(TeachersHand, WishesThatHadNoEffectAreNamed)
{
    Hung hung;
    Piece quote = hung.all(PieceKind::Quote).front();
    quote.size = 2;
    hung.puddle.book.pieces.put(quote);
    const ArrangeOutcome outcome = hung.again();
    std::vector<std::string> said;
    for (const QString& sentence : outcome.droppedWishes)
        said.push_back(sentence.toStdString());
    EXPECT_THAT(said, Contains(HasSubstr("keeps its size")));
}

TEST(TeachersHand, PinsOverEachOtherAreNamed)
{
    Hung hung;
    auto quotes = hung.all(PieceKind::Quote);
    ASSERT_GE(quotes.size(), 2U);
    for (Piece& one : quotes) {
        one.pinned = true;
        one.cell = {Mm(200), Mm(200), Mm(180), Mm(90)};
        hung.puddle.book.pieces.put(one);
    }
    const auto outcome = hung.job.run(hung.puddle.book, Puddle::runOf());
    ASSERT_TRUE(outcome.ok());
    const auto* failure = std::get_if<ArrangeFailure>(&*outcome);
    ASSERT_NE(failure, nullptr);
    EXPECT_THAT(failure->says.toStdString(), HasSubstr("said"));
    EXPECT_THAT(failure->says.toStdString(), HasSubstr("pinned over each other"));
}

TEST(TeachersHand, PiecesKeptTogetherStandInOneBlock)
{
    Hung hung;
    const auto quotes = hung.all(PieceKind::Quote);
    ASSERT_GE(quotes.size(), 3U);
    Piece first = quotes.front();
    Piece last = quotes.back();
    first.together = last.together = 1;
    hung.puddle.book.pieces.put(first);
    hung.puddle.book.pieces.put(last);
    hung.again();
    const Piece* one = hung.showing(first.quote);
    const Piece* other = hung.showing(last.quote);
    ASSERT_TRUE(one != nullptr && other != nullptr);
    EXPECT_EQ(one->together, other->together);
    // The block holds both days and nothing of another.
    RectMm block = one->cell;
    for (const auto& [id, piece] : hung.puddle.book.pieces.rows()) {
        if (piece.group != one->group && piece.group != other->group)
            continue;
        const Mm right = std::max(block.right(), piece.cell.right());
        const Mm bottom = std::max(block.bottom(), piece.cell.bottom());
        block.x = std::min(block.x, piece.cell.x);
        block.y = std::min(block.y, piece.cell.y);
        block.width = right - block.x;
        block.height = bottom - block.y;
    }
    for (const auto& [id, piece] : hung.puddle.book.pieces.rows()) {
        if (piece.group == one->group || piece.group == other->group)
            continue;
        const RectMm both = intersection(piece.cell, block);
        EXPECT_LT(std::min(both.width, both.height), Mm(0.05)) << nameOf(piece.kind).toStdString();
    }
}

// The quotes of a panel as they are read.
std::vector<Piece> quotesOn(const Hung& hung, int panel)
{
    const Book& book = hung.puddle.book;
    const Display& display = book.displays.rows().begin()->second;
    const auto panels = panelsOf(book, display.id);
    std::vector<Piece> quotes;
    for (const Piece* piece : piecesOf(book, panels[std::size_t(panel - 1)]->id)) {
        if (piece->kind == PieceKind::Quote)
            quotes.push_back(*piece);
    }
    return quotes;
}

// How many pieces stand together with one, itself included.
std::ptrdiff_t piecesBeside(const Hung& hung, const Piece& one)
{
    const auto pieces = piecesOf(hung.puddle.book, one.panel);
    return std::count_if(pieces.begin(), pieces.end(), [&](const Piece* piece) {
        return piece->group == one.group && !piece->dominant;
    });
}

TEST(TeachersHand, APanelBeginsWhereItWasAskedTo)
{
    Hung hung(2);
    const auto before = quotesOn(hung, 1);
    ASSERT_GE(before.size(), 2U);
    Piece starts = before.back();
    starts.startsPanel = true;
    hung.puddle.book.pieces.put(starts);
    const auto beside = piecesBeside(hung, starts);
    ASSERT_GE(beside, 2) << "the words themselves, and at least their label";
    const ArrangeOutcome outcome = hung.again();
    EXPECT_EQ(outcome.panels, 2);
    const auto first = quotesOn(hung, 1);
    const auto second = quotesOn(hung, 2);
    ASSERT_FALSE(first.empty());
    ASSERT_FALSE(second.empty());
    EXPECT_EQ(second.front().quote, starts.quote);
    EXPECT_TRUE(second.front().startsPanel);
    EXPECT_EQ(first.front().quote, before.front().quote) << "what stood before it stays";
    // What stood with it comes along: label, pictures, as many as there were.
    EXPECT_EQ(piecesBeside(hung, second.front()), beside);
}

TEST(TeachersHand, APanelThatIsNotThereCannotBegin)
{
    Hung hung;
    Piece starts = quotesOn(hung, 1).back();
    starts.startsPanel = true;
    hung.puddle.book.pieces.put(starts);
    const ArrangeOutcome outcome = hung.again();
    const auto& said = outcome.droppedWishes;
    EXPECT_TRUE(std::any_of(said.begin(), said.end(), [](const QString& sentence) {
        return sentence.contains(QStringLiteral("one panel more"));
    }));
    ASSERT_NE(hung.showing(starts.quote), nullptr);
}

TEST(TeachersHand, WhatIsKeptTogetherComesOntoOnePanel)
{
    Hung hung(2);
    Piece one = quotesOn(hung, 1).front();
    Piece other = quotesOn(hung, 2).back();
    one.together = other.together = 1;
    hung.puddle.book.pieces.put(one);
    hung.puddle.book.pieces.put(other);
    hung.again();
    const Piece* here = hung.showing(one.quote);
    const Piece* there = hung.showing(other.quote);
    ASSERT_TRUE(here != nullptr && there != nullptr);
    EXPECT_EQ(here->panel, there->panel);
    EXPECT_NE(here->group, there->group) << "each keeps its own moment";
    for (const Piece& quote : quotesOn(hung, 1)) {
        if (quote.quote != one.quote && quote.quote != other.quote) {
            EXPECT_NE(quote.group, here->group);
            EXPECT_NE(quote.group, there->group);
        }
    }
}

} // namespace
} // namespace wainscot
