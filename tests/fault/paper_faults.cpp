// What goes wrong leaves the old file as it was, no new one and nothing beside it.
#include "layout/paper/pdf_file.h"
#include "tests/golden/paper_kit.h"

#include <QDir>
#include <QFileInfo>
#include <gtest/gtest.h>

#include <csignal>
#include <sys/resource.h>

namespace wainscot {

using namespace paper_kit;

namespace {

class PaperFaults : public ::testing::Test {
protected:
    QTemporaryDir m_folder;
    PaintedPictures m_pictures;
    QString m_path = m_folder.filePath(QStringLiteral("panel.pdf"));

    DisplayList panel(int pictures = 4)
    {
        Page page({Mm(400), Mm(300)});
        page.text(Role::Heading1, QStringLiteral("Rain"), {Mm(20), Mm(30)}, Mm(300));
        for (int i = 0; i < pictures; ++i)
            page.picture(
                m_pictures.add({1200, 800}), {Mm(10), Mm(10.0 + 40 * i), Mm(150), Mm(100)});
        return page.list;
    }
};

// The system refuses to let any file of this process grow beyond a size, as a full disk would.
class SmallFiles {
public:
    explicit SmallFiles(rlim_t bytes)
    {
        std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit small{bytes, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &small);
    }
    SmallFiles(const SmallFiles&) = delete;
    SmallFiles& operator=(const SmallFiles&) = delete;
    ~SmallFiles() { setrlimit(RLIMIT_FSIZE, &m_before); }

private:
    rlimit m_before{};
};

} // namespace

TEST_F(PaperFaults, LeaveNothingWhenThereIsNoRoom)
{
    const DisplayList list = panel();
    for (const rlim_t room : {rlim_t(0), rlim_t(2000), rlim_t(9000), rlim_t(20000)}) {
        const auto report = [&] {
            const SmallFiles full(room);
            return pdf::writePages(m_path, {list}, m_pictures, options());
        }();
        ASSERT_FALSE(report.ok()) << room;
        EXPECT_EQ(report.error().code, ErrorCode::CannotWrite) << room;
        EXPECT_EQ(report.error().subject, m_path) << room;
        EXPECT_FALSE(report.error().detail.isEmpty()) << room;
        EXPECT_EQ(filesIn(m_folder.path()), QStringList()) << room;
    }
}

TEST_F(PaperFaults, KeepTheOldFileWhenThereIsNoRoomForTheNew)
{
    ASSERT_TRUE(pdf::writePages(m_path, {panel(1)}, m_pictures, options()).ok());
    const QByteArray before = contentOf(m_path);
    const DisplayList list = panel(3);
    {
        const SmallFiles full(6000);
        ASSERT_FALSE(pdf::writePages(m_path, {list}, m_pictures, options()).ok());
    }
    EXPECT_TRUE(contentOf(m_path) == before);
    EXPECT_EQ(filesIn(m_folder.path()), QStringList{QStringLiteral("panel.pdf")});
}

TEST_F(PaperFaults, NameAFolderThatIsNotThere)
{
    const QString nowhere = m_folder.filePath(QStringLiteral("missing/panel.pdf"));
    const auto report = pdf::writePages(nowhere, {panel()}, m_pictures, options());
    ASSERT_FALSE(report.ok());
    EXPECT_EQ(report.error().code, ErrorCode::CannotWrite);
    EXPECT_EQ(report.error().subject, nowhere);
    EXPECT_EQ(m_pictures.baked, 0); // known before any work is done
}

TEST_F(PaperFaults, NeverWriteOverAFolder)
{
    QDir(m_folder.path()).mkdir(QStringLiteral("panel.pdf"));
    const auto report = pdf::writePages(m_path, {panel()}, m_pictures, options());
    ASSERT_FALSE(report.ok());
    EXPECT_EQ(report.error().code, ErrorCode::CannotWrite);
    EXPECT_TRUE(QFileInfo(m_path).isDir());
}

TEST_F(PaperFaults, NameThePictureThatCannotBeRead)
{
    m_pictures.failure = Error{ErrorCode::CannotRead,
        QStringLiteral("/somewhere/ab12.jpeg"),
        QStringLiteral("ends after 12 bytes")};
    PaperOptions alone = options();
    alone.workers = 1;
    const auto report = pdf::writePages(m_path, {panel()}, m_pictures, alone);
    ASSERT_FALSE(report.ok());
    EXPECT_EQ(report.error().code, ErrorCode::CannotRead);
    EXPECT_EQ(report.error().subject, QStringLiteral("picture 2 (Chalk lines round puddle 2)"));
    EXPECT_EQ(report.error().detail, QStringLiteral("ab12.jpeg: ends after 12 bytes"));
    EXPECT_EQ(m_pictures.baked, 2); // the rest is not tried
    EXPECT_EQ(filesIn(m_folder.path()), QStringList());
}

TEST_F(PaperFaults, StopWhenThePersonStops)
{
    std::atomic<bool> stop = false;
    int told = 0;
    PaperWatch watch;
    watch.cancel = &stop;
    watch.onProgress = [&](int done, int of) {
        EXPECT_EQ(of, 40);
        EXPECT_GE(done, told);
        told = done;
        stop = done >= 3;
    };
    const auto report = pdf::writePages(m_path, {panel(40)}, m_pictures, options(), watch);
    ASSERT_FALSE(report.ok());
    EXPECT_EQ(report.error().code, ErrorCode::Cancelled);
    EXPECT_LT(m_pictures.baked, 40);
    EXPECT_EQ(filesIn(m_folder.path()), QStringList());
}

TEST_F(PaperFaults, TellProgressToTheEnd)
{
    int told = -1;
    PaperWatch watch;
    watch.onProgress = [&](int done, int) { told = done; };
    ASSERT_TRUE(pdf::writePages(m_path, {panel(5)}, m_pictures, options(), watch).ok());
    EXPECT_EQ(told, 5);
    EXPECT_EQ(filesIn(m_folder.path()), QStringList{QStringLiteral("panel.pdf")});
}

TEST_F(PaperFaults, RefuseWhatMakesNoSense)
{
    PaperOptions wide = options();
    wide.bleed = Mm(26);
    PaperOptions negative = options();
    negative.bleed = Mm(-1);
    for (const PaperOptions& wrong : {wide, negative}) {
        const auto report = pdf::writePages(m_path, {panel(0)}, m_pictures, wrong);
        ASSERT_FALSE(report.ok());
        EXPECT_EQ(report.error().code, ErrorCode::WrongUse);
    }
    const auto nothing = pdf::writePages(m_path, {}, m_pictures, options());
    ASSERT_FALSE(nothing.ok());
    EXPECT_EQ(nothing.error().code, ErrorCode::WrongUse);
    Page huge({Mm(5090), Mm(300)});
    const auto report = pdf::writePages(m_path, {huge.list}, m_pictures, options());
    ASSERT_FALSE(report.ok());
    EXPECT_EQ(report.error().code, ErrorCode::WrongUse);
}

} // namespace wainscot
