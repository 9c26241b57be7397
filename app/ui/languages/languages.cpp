#include "app/ui/languages/languages.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

#include "app/jobs/program_settings.h"
#include "core/base/in_words.h"
#include "core/base/language_name.h"
#include "core/base/wall_text.h"

namespace wainscot::ui {

namespace {

const QString kChosen = QStringLiteral("window/language");

// Of these, the one that is wished most; the first one where none is.
QString wished(const QStringList& known)
{
    QStringList wishes = QLocale::system().uiLanguages();
    if (const QString chosen = chosenLanguage(); !chosen.isEmpty())
        wishes.prepend(chosen);
    for (const QString& one : wishes) {
        const QString language = mainLanguage(one);
        if (known.contains(language))
            return language;
    }
    return known.first();
}

} // namespace

QStringList windowLanguages()
{
    return {QStringLiteral("en"), QStringLiteral("es")};
}

QString nameOfLanguage(const QString& language)
{
    QString name = QLocale(language).nativeLanguageName();
    if (language == QLatin1String("en"))
        name = QStringLiteral("English"); // the country does not matter here
    return capitalised(name).section(QLatin1String(" de "), 0, 0);
}

QString chosenLanguage()
{
    return ProgramSettings().value(kChosen).toString();
}

QString usualWallLanguage()
{
    return wished(wallLanguages());
}

void chooseLanguage(const QString& language)
{
    ProgramSettings().setValue(kChosen, language);
}

void speakChosenLanguage(QCoreApplication& application)
{
    const QString language = wished(windowLanguages());
    if (language == windowLanguages().first())
        return;
    // Dates and numbers follow the words, unless the computer's own are of the same language.
    if (QLocale::system().name().section(QLatin1Char('_'), 0, 0) != language)
        QLocale::setDefault(QLocale(language));
    for (const auto& [file, folder] :
        {std::pair{QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath)},
            std::pair{QStringLiteral("wainscot"), QStringLiteral(":/languages")}}) {
        auto* translator = new QTranslator(&application);
        if (translator->load(file + QLatin1Char('_') + language, folder))
            QCoreApplication::installTranslator(translator);
    }
}

} // namespace wainscot::ui
