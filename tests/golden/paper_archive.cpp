// What we write keeps every clause for archives that can be checked, and each check can fail: a
// file is spoiled in one way at a time.
#include "tests/golden/paper_kit.h"
#include "tests/support/archive_clauses.h"
#include "tests/support/archive_spoilings.h"

#include "layout/paper/pdf_file.h"
#include "tests/support/places.h"

#include <QFile>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <qpdf/QPDFWriter.hh>

namespace wainscot {

using namespace paper_kit;
namespace {

class ForTheArchive : public ::testing::Test {
protected:
    QByteArray written(bool marks, const std::optional<pdf::Attachment>& attachment = {})
    {
        Page page({Mm(300), Mm(200)});
        page.fill({Mm(0), Mm(0), Mm(300), Mm(40)}, 0xffdde6ea);
        page.text(Role::Heading1, QStringLiteral("Where does it go?"), {Mm(20), Mm(25)}, Mm(260));
        page.text(Role::Quote,
            QStringLiteral("Off it went, “first” and fluffy."),
            {Mm(20), Mm(70)},
            Mm(120));
        page.text(Role::Quote,
            QStringLiteral("الماء راح في الأرض"),
            {Mm(20), Mm(110)},
            Mm(120),
            QStringLiteral("ar"));
        page.text(Role::Quote,
            QStringLiteral("बच्चों ने क्षितिज देखा"),
            {Mm(20), Mm(130)},
            Mm(120),
            QStringLiteral("hi"));
        page.text(Role::Quote,
            QStringLiteral("水坑也从地上走了"),
            {Mm(20), Mm(150)},
            Mm(120),
            QStringLiteral("zh-Hans"));
        page.text(Role::Paragraph,
            QStringLiteral("Vũng nước đi đâu?"),
            {Mm(20), Mm(170)},
            Mm(120),
            QStringLiteral("vi"));
        page.picture(m_pictures.add({900, 600}), {Mm(170), Mm(80), Mm(90), Mm(60)});
        PaperOptions with = options();
        with.bleed = Mm(marks ? 3 : 0);
        with.cropMarks = marks;
        with.created = QDateTime(QDate(2026, 11, 20), QTime(9, 30), Qt::UTC);
        const QString path = m_folder.filePath(QStringLiteral("a.pdf"));
        EXPECT_TRUE(
            pdf::writePages(path, {page.list, page.list}, m_pictures, with, {}, attachment).ok());
        return contentOf(path);
    }

    [[nodiscard]] static pdf::Attachment data()
    {
        return {QStringLiteral("display.json"),
            QStringLiteral("application/json"),
            QStringLiteral("What the panels say"),
            QByteArray("{\"panels\":[]}\n").repeated(40)};
    }

    QTemporaryDir m_folder;
    PaintedPictures m_pictures;
};

TEST_F(ForTheArchive, EveryClauseIsKeptInFiveScriptsWithAndWithoutMarks)
{
    EXPECT_EQ(archive::faultsOf(written(false)), QStringList());
    EXPECT_EQ(archive::faultsOf(written(true)), QStringList());
}

// ICC.1:2004-10 (sections 7.2.4 and 10.15, numbers from memory): version 4.2, curves of the type
// 'para'. A table would cost whoever opens the file some 70 ms for each page with poppler.
TEST_F(ForTheArchive, TheColourProfileHoldsItsCurveAsAFormula)
{
    const QByteArray raw = written(false);
    QPDF pdf;
    pdf.processMemoryFile("a.pdf", raw.constData(), std::size_t(raw.size()));
    const auto data = pdf.getRoot()
                          .getKey("/OutputIntents")
                          .getArrayItem(0)
                          .getKey("/DestOutputProfile")
                          .getStreamData();
    const QByteArray profile(
        reinterpret_cast<const char*>(data->getBuffer()), qsizetype(data->getSize()));
    EXPECT_EQ(profile.mid(8, 2).toHex(), "0420");
    EXPECT_EQ(profile.count("para"), 1) << "one for all three colours";
    EXPECT_FALSE(profile.contains("curv"));
}

// ISO 19005-3, 6.8, and what two readers make of the attachment.
TEST_F(ForTheArchive, AnAttachmentMakesItPart3AndComesOutWhole)
{
    const QByteArray raw = written(false, data());
    EXPECT_EQ(archive::faultsOf(raw), QStringList());
    const QString path = m_folder.filePath(QStringLiteral("a.pdf"));
    (void)run(QStringLiteral("qpdf"), {QStringLiteral("--check"), path});
    EXPECT_THAT(run(QStringLiteral("pdfdetach"), {QStringLiteral("-list"), path}).toStdString(),
        ::testing::HasSubstr("1: display.json"));
    const QString out = m_folder.filePath(QStringLiteral("out.json"));
    (void)run(QStringLiteral("pdfdetach"),
        {QStringLiteral("-save"), QStringLiteral("1"), QStringLiteral("-o"), out, path});
    EXPECT_EQ(contentOf(out), data().bytes);
    EXPECT_EQ(run(QStringLiteral("qpdf"), {QStringLiteral("--show-attachment=display.json"), path})
                  .toUtf8(),
        data().bytes);
    const std::string listed = run(QStringLiteral("qpdf"),
        {QStringLiteral("--list-attachments"), QStringLiteral("--verbose"), path})
                                   .toStdString();
    for (const char* told :
        {"mime type: application/json", "modification date: D:20261120093000+00'00'"})
        EXPECT_THAT(listed, ::testing::HasSubstr(told));
}

// Read, changed and written again.
QByteArray rewritten(const QByteArray& raw,
    const std::function<void(QPDF&)>& change,
    const std::function<void(QPDFWriter&)>& how)
{
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.processMemoryFile("good", raw.constData(), static_cast<std::size_t>(raw.size()));
    change(pdf);
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    how(writer);
    writer.write();
    const auto buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(buffer->getBuffer()), qsizetype(buffer->getSize())};
}

QByteArray spoiled(const QByteArray& raw, const std::function<void(QPDF&)>& spoil)
{
    return rewritten(raw, spoil, [](QPDFWriter& writer) {
        writer.setDecodeLevel(qpdf_dl_none);
        writer.setCompressStreams(false);
        writer.setDeterministicID(true);
    });
}

QByteArray encrypted(const QByteArray& raw)
{
    const auto nothing = [](QPDF&) {};
    return rewritten(raw, nothing, [](QPDFWriter& writer) {
        writer.setStaticID(true);
        writer.setR6EncryptionParameters(
            "", "owner", true, true, true, true, true, true, qpdf_r3p_full, true);
    });
}

// With a table of objects instead of a stream of them.
QByteArray withTable(const QByteArray& raw)
{
    const auto nothing = [](QPDF&) {};
    return rewritten(raw, nothing, [](QPDFWriter& writer) {
        writer.setObjectStreamMode(qpdf_o_disable);
        writer.setDeterministicID(true);
    });
}

// A line of the list: "6.1.7-3 + what we say" or "6.1.7-1 - why it is not looked at".
struct Rule {
    QString number;
    bool isChecked = false;
    QString text;
};

std::vector<Rule> rules()
{
    QFile file(testData("paper/archive_rules.txt"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    std::vector<Rule> all;
    const QStringList lines = QString::fromUtf8(file.readAll()).split(u'\n', Qt::SkipEmptyParts);
    for (const QString& line : lines) {
        if (!line.startsWith(u'#'))
            all.push_back({line.section(u' ', 0, 0),
                line.section(u' ', 1, 1) == u"+"_qs,
                line.section(u' ', 2)});
    }
    return all;
}

// Files whose bytes are spoiled, beside what the parsed file shows.
QList<QByteArray> spoiledBytes(const QByteArray& good)
{
    const auto with = [](QByteArray changed, const QByteArray& what, const QByteArray& other) {
        EXPECT_TRUE(changed.contains(what)) << what.constData();
        return changed.replace(what, other);
    };
    QByteArray plain = good;
    for (int i = 10; i < 14; ++i)
        plain[i] = 'a';
    return {good + "later",
        plain,
        with(good, "%PDF-1.", "%PDF-2."),
        with(good, "/ID ", "/IX "),
        with(withTable(good), "\nxref\n", "\nxref \n"),
        encrypted(good)};
}

// Every rule of the profile is on the list; what is checked can be broken, and we see it.
TEST_F(ForTheArchive, EveryRuleOfTheProfileIsBrokenAndNoticedOrSaysWhyNot)
{
    const QByteArray good = spoiled(written(false), [](QPDF&) {});
    const QByteArray holding = written(false, data());
    QString noticed;
    for (const QByteArray& bytes : spoiledBytes(good))
        noticed += archive::faultsOf(bytes).join(u'\n') + u'\n';
    for (const auto* part : {&archive::spoilings(), &archive::furtherSpoilings()}) {
        for (const archive::Spoiling& one : *part)
            noticed +=
                archive::faultsOf(spoiled(one.attached ? holding : good, one.spoil)).join(u'\n')
                + u'\n';
    }
    const std::vector<Rule> all = rules();
    EXPECT_EQ(all.size(), 116U);
    int checked = 0;
    for (const Rule& rule : all) {
        EXPECT_FALSE(rule.text.isEmpty()) << rule.number.toStdString();
        if (rule.isChecked) {
            EXPECT_TRUE(noticed.contains(rule.text))
                << "nothing breaks " << rule.number.toStdString() << ": "
                << rule.text.toStdString();
            ++checked;
        }
    }
    EXPECT_GE(checked, 105);
}

TEST_F(ForTheArchive, EveryClauseNoticesWhatBreaksItAndNoOtherDoes)
{
    const QByteArray good = written(false);
    const QByteArray holding = written(false, data());
    ASSERT_EQ(archive::faultsOf(spoiled(good, [](QPDF&) {})), QStringList()) << "written again";
    std::set<std::string> noticed{"6.1.2", "6.1.3", "6.1.4"}; // above and below: about bytes
    for (const auto* part : {&archive::spoilings(), &archive::furtherSpoilings()}) {
        for (const archive::Spoiling& one : *part) {
            const QStringList faults =
                archive::faultsOf(spoiled(one.attached ? holding : good, one.spoil));
            EXPECT_FALSE(faults.isEmpty()) << one.clause << " " << one.what;
            for (const QString& fault : faults)
                EXPECT_TRUE(fault.startsWith(QLatin1String(one.clause) + QLatin1Char(':')))
                    << one.what << ": " << fault.toStdString();
            noticed.insert(one.clause);
        }
    }
    for (const archive::Clause& clause : archive::clauses())
        EXPECT_EQ(noticed.count(clause.number), 1U) << "nothing breaks " << clause.number;
}

TEST_F(ForTheArchive, TheBytesAtBothEndsAreLookedAt)
{
    const QByteArray good = written(false);
    EXPECT_EQ(archive::faultsOf(good + "later"),
        QStringList{QStringLiteral("6.1.3: something after the end")});
    QByteArray plain = good;
    for (int i = 10; i < 14; ++i)
        plain[i] = 'a';
    EXPECT_EQ(archive::faultsOf(plain),
        QStringList{QStringLiteral("6.1.2: no comment of bytes above 127")});
}

} // namespace
} // namespace wainscot
