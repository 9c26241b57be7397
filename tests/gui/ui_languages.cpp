// The window in another language: nothing it says is left out.
#include <QMenu>
#include <QTranslator>

#include <gmock/gmock.h>

#include <set>

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

TEST(Languages, NameThemselves)
{
    EXPECT_EQ(nameOfLanguage(QStringLiteral("en")), QStringLiteral("English"));
    EXPECT_TRUE(nameOfLanguage(QStringLiteral("es")).startsWith(QStringLiteral("Espa\u00f1ol")));
    EXPECT_EQ(windowLanguages().first(), QStringLiteral("en"));
}

} // namespace
} // namespace wainscot::ui
