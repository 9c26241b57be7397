// The window in another language: nothing it says is left out.
#include <QMenu>
#include <QTranslator>

#include <gmock/gmock.h>

#include <set>

#include "app/ui/frame/book_sheet.h"
#include "app/ui/languages/languages.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

// Writes down what is asked for and leaves it untranslated.
class Recorder : public QTranslator {
public:
    using Asked = std::pair<QByteArray, QByteArray>; // context, text
    QString translate(const char* context,
        const char* text,
        const char* /*disambiguation*/,
        int /*n*/) const override
    {
        asked.insert({context, text});
        return {};
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
    mutable std::set<Asked> asked;
};

void walk(WindowAtWork& at)
{
    for (int place = 0; place < 5; ++place) {
        at.key(Qt::Key(Qt::Key_1 + place), Qt::ControlModifier);
        at.settle();
    }
    at.key(Qt::Key_3, Qt::ControlModifier);
    at.propose();
    for (const PieceKind kind : {PieceKind::Photo, PieceKind::Quote, PieceKind::Title}) {
        if (const PieceId id = at.first(kind); id.isValid()) {
            at.clickOn(id);
            at.key(Qt::Key_Y);
        }
    }
    at.canvas().holdAll();
    at.settle();
}

TEST(Languages, EverythingTheWindowSaysHasItsSpanish)
{
    Recorder recorder;
    QCoreApplication::installTranslator(&recorder);
    {
        WindowAtWork at;
        walk(at);
    }
    QCoreApplication::removeTranslator(&recorder);
    QTranslator spanish;
    ASSERT_TRUE(spanish.load(QStringLiteral(":/languages/wainscot_es.qm")));
    int own = 0;
    for (const auto& [context, text] : recorder.asked) {
        if (context.startsWith('Q') || text.isEmpty())
            continue; // the toolkit's own texts come with the toolkit's translations
        ++own;
        EXPECT_FALSE(spanish.translate(context.constData(), text.constData()).isEmpty())
            << context.toStdString() << ": " << text.toStdString();
    }
    EXPECT_GT(own, 250);
}

TEST(Languages, SpeaksSpanishFromTheMenuToTheNote)
{
    QTranslator spanish;
    ASSERT_TRUE(spanish.load(QStringLiteral(":/languages/wainscot_es.qm")));
    QCoreApplication::installTranslator(&spanish);
    {
        WindowAtWork at;
        EXPECT_EQ(at.window().sill().nextStep(), QStringLiteral("Proponer un panel"));
        walk(at);
        EXPECT_TRUE(at.session().undoLabel().contains(QStringLiteral("panel")));
        const auto menus = at.window().findChildren<QMenu*>();
        EXPECT_TRUE(std::any_of(menus.begin(), menus.end(), [](const QMenu* menu) {
            return menu->title().remove(QLatin1Char('&')) == QLatin1String("Libro");
        }));
    }
    QCoreApplication::removeTranslator(&spanish);
}

TEST(Languages, TellWhyAFileIsLeftOutInSpanishToo)
{
    QTranslator spanish;
    ASSERT_TRUE(spanish.load(QStringLiteral(":/languages/wainscot_es.qm")));
    QCoreApplication::installTranslator(&spanish);
    WindowAtWork at;
    for (const auto& [bytes, why] : {std::pair("GIF89a", "es un GIF, un tipo que no se lee"),
             std::pair("%PDF-1.4", "está dañado: el PDF se interrumpe o fue modificado")}) {
        const QString path = at.file(QStringLiteral("x.jpg"));
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        file.close();
        at.window().takePictures({path});
        at.window().work().waitForEnd();
        EXPECT_TRUE(at.window().sill().said().contains(QString::fromUtf8(why)))
            << qPrintable(at.window().sill().said());
    }
    QCoreApplication::removeTranslator(&spanish);
}

TEST(Languages, ABookIsBegunInTheOneSomebodyChose)
{
    WindowAtWork at;
    chooseLanguage(QStringLiteral("es"));
    at.window().beginBook(at.file(QStringLiteral("second")), QStringLiteral("Gorriones"));
    chooseLanguage({});
    EXPECT_EQ(at.book().info.language, QStringLiteral("es"));
    EXPECT_EQ(at.book().promptSets.rows().begin()->second.prompts.front().text,
        QString::fromUtf8("\u00bfQu\u00e9 observas?"));
}

TEST(Languages, OfABookAreChosenOnItsSheetAndUndone)
{
    WindowAtWork at;
    const BookInfo before = at.book().info;
    BookSheet sheet(at.session(), &at.window());
    EXPECT_EQ(sheet.name().text(), before.title);
    EXPECT_EQ(sheet.language().currentData().toString(), before.language);
    sheet.name().setText(QStringLiteral("  Moineaux "));
    sheet.language().setEditText(QStringLiteral("fran\u00e7ais"));
    sheet.accept();
    EXPECT_EQ(sheet.result(), QDialog::Accepted);
    EXPECT_EQ(at.book().info, (BookInfo{QStringLiteral("Moineaux"), QStringLiteral("fr")}));
    EXPECT_EQ(at.session().experience()->language, QStringLiteral("fr"));
    EXPECT_TRUE(at.window().windowTitle().startsWith(QStringLiteral("Moineaux")));
    at.session().undo();
    EXPECT_TRUE(at.window().windowTitle().startsWith(before.title));
    EXPECT_EQ(at.book().info, before);
}

TEST(Languages, OfABookMayBeWrittenAsACodeButNotAsAnything)
{
    WindowAtWork at;
    BookSheet sheet(at.session(), &at.window());
    sheet.language().setEditText(QStringLiteral("klingon"));
    sheet.accept();
    EXPECT_NE(sheet.result(), QDialog::Accepted);
    sheet.language().setEditText(QStringLiteral("so"));
    sheet.name().clear();
    sheet.accept();
    EXPECT_NE(sheet.result(), QDialog::Accepted);
    sheet.name().setText(QStringLiteral("Sparrows"));
    sheet.accept();
    EXPECT_EQ(at.book().info.language, QStringLiteral("so"));
}

TEST(Languages, NameThemselves)
{
    EXPECT_EQ(nameOfLanguage(QStringLiteral("en")), QStringLiteral("English"));
    EXPECT_TRUE(nameOfLanguage(QStringLiteral("es")).startsWith(QStringLiteral("Espa\u00f1ol")));
    EXPECT_EQ(windowLanguages().first(), QStringLiteral("en"));
}

} // namespace
} // namespace wainscot::ui
