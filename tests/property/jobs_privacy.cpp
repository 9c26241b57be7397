// Seeded displays for every audience, exported to PDF, sheets and PNG, and the term's file: no
// name, no word and no picture that a family has not allowed is in any of them. What is forbidden
// is worked out here from the answers alone, and looked for by programs that share nothing with
// this one: the text by pdftotext (poppler) and mutool (mupdf), every object and string by qpdf,
// pictures by pdfimages, by hue and by a hash of how they look. The number of displays is
// WAINSCOT_PRIVACY_DISPLAYS, 100 by itself; the first seed is WAINSCOT_PRIVACY_SEED, 1 by itself,
// so that a long run can be shared by several processes.
#include "tests/support/privacy_book.h"

#include "app/jobs/export_job.h"
#include "app/jobs/keep_job.h"
#include "app/jobs/sheets_job.h"
#include "core/store/originals.h"

#include <QFile>
#include <QImage>
#include <QJsonDocument>
#include <QProcess>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace wainscot {

namespace {

QByteArray outputOf(const char* program, const QStringList& arguments)
{
    QProcess process;
    process.start(QString::fromLatin1(program), arguments);
    EXPECT_TRUE(process.waitForFinished(60'000)) << program;
    EXPECT_EQ(process.exitStatus(), QProcess::NormalExit) << program;
    EXPECT_EQ(process.exitCode(), 0) << program << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput();
}

// How the bytes of a file could hold a word.
bool holds(const QByteArray& bytes, const QString& word)
{
    const QByteArray utf8 = word.toUtf8();
    QByteArray wide; // UTF-16, big-endian, as strings in a PDF are
    for (const QChar letter : word) {
        wide.append(char(letter.unicode() >> 8));
        wide.append(char(letter.unicode() & 0xff));
    }
    return bytes.contains(utf8) || bytes.contains(utf8.toLower()) || bytes.contains(wide)
        || bytes.contains(wide.toHex()) || bytes.contains(wide.toHex().toUpper())
        || bytes.contains(utf8.toHex());
}

class Privacy : public ::testing::Test {
protected:
    [[nodiscard]] QString at(const char* name) const
    {
        return m_place.filePath(QString::fromLatin1(name));
    }

    // Everything a PDF says, by independent programs. Words run together in a line are kept apart.
    QByteArray saidByPdf()
    {
        const QString pdf = at("out.pdf");
        QByteArray all = outputOf("pdftotext", {QStringLiteral("-raw"), pdf, QStringLiteral("-")});
        m_extracted = QString::fromUtf8(all);
        all += '\n'
            + outputOf("mutool",
                {QStringLiteral("draw"),
                    QStringLiteral("-q"),
                    QStringLiteral("-F"),
                    QStringLiteral("txt"),
                    pdf});
        // Every object with its strings read: metadata, outlines, alternative texts, attachments.
        const QByteArray json = outputOf("qpdf", {QStringLiteral("--json"), pdf});
        all += '\n' + QJsonDocument::fromJson(json).toJson(QJsonDocument::Compact);
        EXPECT_EQ(json.contains("EmbeddedFile"), m_withData);
        if (m_withData) {
            outputOf("pdfdetach",
                {QStringLiteral("-save"),
                    QStringLiteral("1"),
                    QStringLiteral("-o"),
                    at("data.json"),
                    pdf});
            QFile data(at("data.json"));
            EXPECT_TRUE(data.open(QIODevice::ReadOnly));
            m_data = QString::fromUtf8(data.readAll());
            EXPECT_TRUE(QJsonDocument::fromJson(m_data.toUtf8()).isObject());
            all += '\n' + m_data.toUtf8();
        }
        all += '\n'
            + outputOf("qpdf",
                {QStringLiteral("--qdf"),
                    QStringLiteral("--object-streams=disable"),
                    pdf,
                    QStringLiteral("-")});
        return all;
    }

    QList<QImage> picturesInPdf()
    {
        QDir folder(m_place.path());
        for (const QString& old : folder.entryList({QStringLiteral("image*")}))
            folder.remove(old);
        outputOf("pdfimages", {at("out.pdf"), at("image")});
        QList<QImage> images;
        for (const QString& name : folder.entryList({QStringLiteral("image*")}))
            images << QImage(folder.filePath(name));
        return images;
    }

    // Only what pixels need: nothing of where, when, by whom and with what.
    void expectBarePng(const QByteArray& png)
    {
        const QByteArrayList allowed{
            "IHDR", "sRGB", "gAMA", "cHRM", "iCCP", "pHYs", "IDAT", "IEND"};
        for (qsizetype at = 8; at + 8 <= png.size();) {
            const auto* bytes = reinterpret_cast<const unsigned char*>(png.constData() + at);
            const qsizetype length =
                qsizetype(bytes[0]) << 24 | bytes[1] << 16 | bytes[2] << 8 | bytes[3];
            EXPECT_TRUE(allowed.contains(png.mid(at + 4, 4))) << png.mid(at + 4, 4).toStdString();
            at += 12 + length;
        }
    }

    void exportPdf(
        const PrivacyBook& made, const QString& display, const std::optional<SheetWishes>& sheets)
    {
        ExportPdfJob pdf;
        pdf.display = display;
        pdf.file = at("out.pdf");
        pdf.picturesFolder = made.picturesFolder();
        pdf.sheets = sheets;
        pdf.withData = m_withData;
        JobRun run;
        run.today = kTestDay;
        const auto written = pdf.run(made.book(), run);
        ASSERT_TRUE(written.ok()) << written.error().detail.toStdString();
    }

    void exportPictures(const PrivacyBook& made, const QString& display)
    {
        ExportPictureJob png;
        png.display = display;
        png.file = at("out.png");
        png.dpi = 30;
        png.picturesFolder = made.picturesFolder();
        ASSERT_TRUE(png.run(made.book(), {}).ok());
        ExportPictureJob jpeg = png;
        jpeg.form = PictureForm::Jpeg;
        jpeg.file = at("out.jpg");
        ASSERT_TRUE(jpeg.run(made.book(), {}).ok());
    }

    void exportTerm(const PrivacyBook& made, Audience audience)
    {
        KeepJob term;
        term.from = kTestDay.addDays(-30);
        term.to = kTestDay.addDays(30);
        term.audience = audience;
        term.file = at("out.pdf");
        term.picturesFolder = made.picturesFolder();
        const auto written = term.run(made.book(), {});
        ASSERT_TRUE(written.ok()) << written.error().detail.toStdString();
    }

    void expectNone(const QStringList& words, const QByteArray& said)
    {
        for (const QString& word : words) {
            EXPECT_FALSE(holds(said, word)) << word.toStdString();
            ++m_searched;
        }
    }

    void expectNone(const Forbidden& forbidden, const QList<QImage>& images)
    {
        for (const QColor& colour : forbidden.pictures) {
            for (const QImage& image : images)
                EXPECT_EQ(pixelsOf(colour, image), 0) << colour.name().toStdString();
            ++m_searched;
        }
    }

    // Pictures on their own. A whole page is none: one in 40,000 looks like one by chance.
    void expectNoneLike(const QList<quint64>& sights, const QList<QImage>& images)
    {
        for (const QImage& image : images) {
            for (const quint64 sight : sights)
                EXPECT_FALSE(looksLike(sight, sightOf(image)));
        }
    }

    // Nothing that is forbidden is in the PDF.
    QList<QImage> lookAtPdf(const PrivacyBook& made, const Forbidden& forbidden)
    {
        expectNone(forbidden.names + forbidden.words + made.tellTales(), saidByPdf());
        QList<QImage> images = picturesInPdf();
        expectNone(forbidden, images);
        expectNoneLike(forbidden.sights, images);
        return images;
    }

    QByteArray bytesOf(const char* name)
    {
        QFile file(at(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name;
        return file.readAll();
    }

    void lookAtPictures(const PrivacyBook& made, const Forbidden& forbidden)
    {
        const QByteArray png = bytesOf("out.png");
        expectBarePng(png);
        expectNone(forbidden.names + forbidden.words + made.tellTales(), png);
        expectNone(forbidden.names + forbidden.words + made.tellTales(), bytesOf("out.jpg"));
        expectNone(forbidden, {QImage(at("out.png")), QImage(at("out.jpg"))});
    }

    // Every piece as a picture of its own: what may not be seen on the panel is refused here too.
    void lookAtPieces(const PrivacyBook& made, const Display& display)
    {
        const Forbidden forbidden = made.forbiddenOn(display);
        for (const Panel* panel : panelsOf(made.book(), display.id)) {
            for (const Piece* piece : piecesOf(made.book(), panel->id)) {
                ExportPictureJob job;
                job.display = display.name;
                job.file = at("piece.png");
                job.picturesFolder = made.picturesFolder();
                job.width = 60;
                job.piece = piece->id;
                QFile::remove(job.file);
                const auto written = job.run(made.book(), {});
                const QImage image(job.file);
                EXPECT_EQ(written.ok(), !image.isNull());
                if (!written.ok()) {
                    EXPECT_EQ(written.error().code, ErrorCode::Refused);
                }
                for (const QColor& colour : forbidden.pictures) {
                    EXPECT_EQ(pixelsOf(colour, image), 0) << colour.name().toStdString();
                    ++m_searched;
                }
                m_found += written.ok() ? 1 : 0;
            }
        }
    }

    // The search does find what is allowed.
    void expectAllowed(const PrivacyBook& made, const Display& display, const QList<QImage>& inPdf)
    {
        for (const QString& word : made.allowedWordsOn(display)) {
            EXPECT_TRUE(m_extracted.contains(word)) << word.toStdString();
            EXPECT_TRUE(!m_withData || m_data.contains(word)) << word.toStdString();
            ++m_found;
        }
        const QImage png(at("out.png"));
        for (const QColor& colour : made.allowedPicturesOn(display)) {
            EXPECT_GT(pixelsOf(colour, png), 20) << colour.name().toStdString();
            ++m_found;
        }
        for (const quint64 sight : made.allowedSightsOn(display)) {
            EXPECT_TRUE(std::any_of(inPdf.begin(), inPdf.end(), [sight](const QImage& image) {
                return looksLike(sight, sightOf(image));
            }));
        }
    }

    void lookAtDisplay(const PrivacyBook& made, const Display& display)
    {
        const Forbidden forbidden = made.forbiddenOn(display);
        exportPdf(made, display.name, std::nullopt);
        const QList<QImage> images = lookAtPdf(made, forbidden);
        exportPictures(made, display.name);
        lookAtPictures(made, forbidden);
        lookAtPieces(made, display);
        expectAllowed(made, display, images);
    }

    QTemporaryDir m_place;
    bool m_withData = false; // the PDF carries the display's data
    QString m_data;
    QString m_extracted;
    int m_searched = 0;
    int m_found = 0;
};

TEST_F(Privacy, HoldsOnEveryDisplayForEveryAudience)
{
    bool isSet = false;
    const int given = qEnvironmentVariableIntValue("WAINSCOT_PRIVACY_DISPLAYS", &isSet);
    const int wanted = isSet ? given : 100;
    const int first = qEnvironmentVariableIntValue("WAINSCOT_PRIVACY_SEED");
    constexpr unsigned kSometimes = 10;
    int displays = 0;
    int terms = 0;
    for (unsigned seed = unsigned(std::max(1, first)); displays < wanted; ++seed) {
        const PrivacyBook made(seed, m_place.filePath(QStringLiteral("pictures")));
        for (const auto& [id, display] : made.book().displays.rows()) {
            SCOPED_TRACE(::testing::Message()
                << "seed " << seed << ", " << nameOf(display.audience).toStdString());
            m_withData = displays % 2 == 1;
            lookAtDisplay(made, display);
            m_withData = false;
            ++displays;
            // Sheets and the term's file play the same panels: for every tenth book.
            if (seed % kSometimes == 1) {
                exportPdf(made, display.name, SheetWishes{{Mm(210), Mm(297)}});
                lookAtPdf(made, made.forbiddenOn(display));
                exportTerm(made, display.audience);
                lookAtPdf(made, made.forbiddenInTerm(display.audience));
                ++terms;
            }
            if (HasFailure())
                return;
        }
    }
    RecordProperty("displays", displays);
    RecordProperty("forbidden_searched", m_searched);
    RecordProperty("losses", HasFailure() ? 1 : 0);
    EXPECT_GT(m_searched, displays * 3);
    EXPECT_GT(m_found, displays * 2);
    std::printf("%d displays, %d terms, %d forbidden things looked for, %d allowed ones found\n",
        displays,
        terms,
        m_searched,
        m_found);
}

// A picture of the book beside each question, and every child asked for by name in one of them.
Book withSheets(const PrivacyBook& made)
{
    Book book = made.book();
    PromptSet set = defaultPromptSet();
    set.id = book.promptSets.newId();
    auto picture = book.pictures.rows().begin();
    for (Prompt& prompt : set.prompts) {
        if (picture != book.pictures.rows().end())
            prompt.picture = (picture++)->first;
    }
    for (const auto& [id, child] : book.children.rows())
        set.prompts.back().text += QStringLiteral(" What about %1?").arg(child.name);
    book.promptSets.put(set);
    Experience happened = book.experiences.rows().begin()->second;
    happened.promptSet = set.id;
    book.experiences.put(happened);
    return book;
}

TEST_F(Privacy, HoldsOnSheetsToAnswerOn)
{
    constexpr unsigned kBooks = 4;
    int named = 0;
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        const PrivacyBook made(seed, m_place.filePath(QStringLiteral("pictures")));
        const Book book = withSheets(made);
        SheetsJob job;
        job.experience = book.experiences.rows().begin()->second.title;
        job.file = at("out.pdf");
        job.picturesFolder = made.picturesFolder();
        job.wishes.forScribe = true;
        ASSERT_TRUE(job.run(book, {}).ok());
        const QByteArray said = saidByPdf();
        for (const auto& [id, child] : book.children.rows()) {
            if (child.permissions.allows(Permission::FirstName, Audience::Classroom)) {
                named += m_extracted.contains(displayName(child)) ? 1 : 0;
                continue;
            }
            for (const QString& part : child.name.split(QLatin1Char(' ')))
                EXPECT_FALSE(holds(said, part)) << seed << ' ' << part.toStdString();
        }
        for (const auto& [id, display] : book.displays.rows()) {
            if (display.audience != Audience::Classroom)
                continue;
            for (const QImage& image : picturesInPdf()) {
                for (const QColor& colour : made.forbiddenOn(display).pictures)
                    EXPECT_EQ(pixelsOf(colour, image), 0) << colour.name().toStdString();
            }
        }
        for (const QString& word : made.tellTales())
            EXPECT_FALSE(holds(said, word)) << word.toStdString();
    }
    EXPECT_GT(named, 0) << "the search does find who may be named";
}

// Every display photographed on its wall, each photo of one colour that nothing else has.
struct Photographed {
    Book book;
    std::map<DisplayId, QColor> colours;
};

Photographed onTheirWalls(const PrivacyBook& made, const QString& folder)
{
    Photographed all{made.book(), {}};
    Experience happened = all.book.experiences.rows().begin()->second;
    happened.on = kTestDay;
    all.book.experiences.put(happened);
    for (const auto& [id, display] : made.book().displays.rows()) {
        const QColor colour(120, 60 + 40 * int(id.number() % 4), 90);
        QImage image(64, 48, QImage::Format_RGB32);
        image.fill(colour);
        const QString file = folder + QStringLiteral("/wall.png");
        EXPECT_TRUE(image.save(file));
        Picture photo;
        photo.id = all.book.pictures.newId();
        photo.experience = happened.id;
        photo.sha256 = *Originals(made.picturesFolder()).keep(file);
        photo.format = QStringLiteral("png");
        photo.size = {64, 48};
        photo.people.lookedAt = true;
        photo.display = id;
        photo.hungOn = kTestDay;
        all.book.pictures.put(photo);
        all.colours[id] = colour;
    }
    return all;
}

// Somebody's words hang there who may not be quoted before this audience.
bool quotesForbidden(const Book& book, DisplayId display, Audience audience)
{
    for (const Panel* panel : panelsOf(book, display)) {
        for (const Piece* piece : piecesOf(book, panel->id)) {
            const Quote* quote = book.quotes.find(piece->quote);
            const Child* child = quote != nullptr ? book.children.find(quote->child) : nullptr;
            if (child != nullptr && !child->permissions.allows(Permission::Words, audience))
                return true;
        }
    }
    return false;
}

// What is forbidden on one display for an audience is forbidden in all of its term's file.
TEST_F(Privacy, HoldsInATermsFileWithPhotosOfWalls)
{
    constexpr unsigned kBooks = 5;
    int refused = 0;
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        const PrivacyBook made(seed, m_place.filePath(QStringLiteral("pictures")));
        const Photographed hung = onTheirWalls(made, m_place.path());
        for (const auto& [id, display] : made.book().displays.rows()) {
            SCOPED_TRACE(::testing::Message()
                << "seed " << seed << ", " << nameOf(display.audience).toStdString());
            KeepJob keep;
            keep.from = keep.to = kTestDay;
            keep.file = at("out.pdf");
            keep.picturesFolder = made.picturesFolder();
            keep.audience = display.audience;
            JobRun run;
            run.today = kTestDay;
            ASSERT_TRUE(keep.run(hung.book, run).ok());
            const QByteArray said = saidByPdf();
            const Forbidden forbidden = made.forbiddenOn(display);
            for (const QString& word : forbidden.names + forbidden.words + made.tellTales())
                EXPECT_FALSE(holds(said, word)) << word.toStdString();
            const QList<QImage> images = picturesInPdf();
            for (const QImage& image : images) {
                for (const QColor& colour : forbidden.pictures)
                    EXPECT_EQ(pixelsOf(colour, image), 0) << colour.name().toStdString();
                for (const auto& [wall, colour] : hung.colours) {
                    if (!quotesForbidden(hung.book, wall, display.audience))
                        continue;
                    EXPECT_EQ(pixelsOf(colour, image), 0) << "wall " << wall.number();
                    ++refused;
                }
            }
        }
    }
    EXPECT_GT(refused, 0);
}

} // namespace

} // namespace wainscot
