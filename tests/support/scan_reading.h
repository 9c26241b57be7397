// Reading a scan and keeping what was told of it.
#pragma once

#include "core/media/scan.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QFileInfo>
#include <QImage>
#include <QTemporaryDir>

namespace wainscot::test {

struct Told {
    ScannedPage page;
    QByteArray bytes;
    QImage image;
};

class ScanReading : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }
    QString write(const QByteArray& bytes, const char* name = "pile.pdf")
    {
        return writeFile(path(QString::fromLatin1(name)), bytes);
    }
    Result<int> read(const QString& file, ScanOptions options = {})
    {
        told.clear();
        return readScan(
            file,
            [this](const ScannedPage& page) -> Result<> {
                Told one{page, {}, {}};
                if (!page.path.isEmpty()) {
                    one.bytes = readFile(page.path);
                    one.image = QImage::fromData(one.bytes);
                }
                told.push_back(one);
                if (onPage)
                    onPage(page);
                return Done{};
            },
            options);
    }
    // What is said of a file that is not read.
    QString refusal(const QString& file, ErrorCode code, ScanOptions options = {})
    {
        const auto result = read(file, options);
        EXPECT_TRUE(told.empty());
        if (result.ok())
            return QStringLiteral("is read");
        EXPECT_EQ(int(result.error().code), int(code));
        EXPECT_EQ(result.error().subject, QFileInfo(file).fileName());
        return result.error().detail;
    }
    QString qpdf(const QString& from, const QString& to, QStringList arguments)
    {
        arguments << from << path(to);
        EXPECT_TRUE(run(QStringLiteral("qpdf"), arguments));
        return path(to);
    }

    QTemporaryDir m_folder;
    std::vector<Told> told;
    std::function<void(const ScannedPage&)> onPage;
};

} // namespace wainscot::test
