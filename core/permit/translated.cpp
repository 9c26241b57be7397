#include "core/permit/translated.h"

#include "core/base/language_name.h"

#include <array>

namespace wainscot {

namespace {

struct Phrase {
    const char* into = nullptr;
    const char* whole = nullptr; // %1 = the language's name
    std::array<std::pair<const char*, const char*>, 7> names;
};

// Written from memory; only the English has been read by somebody who grew up with it.
const std::array<Phrase, 6> kPhrases{{
    {"ar",
        "مترجمة عن %1",
        {{{"en", "الإنجليزية"},
            {"pt", "البرتغالية"},
            {"fr", "الفرنسية"},
            {"de", "الألمانية"},
            {"es", "الإسبانية"},
            {"zh", "الصينية"},
            {"tr", "التركية"}}}},
    {"zh",
        "译自%1",
        {{{"en", "英语"},
            {"ar", "阿拉伯语"},
            {"pt", "葡萄牙语"},
            {"fr", "法语"},
            {"de", "德语"},
            {"es", "西班牙语"},
            {"tr", "土耳其语"}}}},
    {"de",
        "übersetzt aus dem %1",
        {{{"en", "Englischen"},
            {"ar", "Arabischen"},
            {"pt", "Portugiesischen"},
            {"fr", "Französischen"},
            {"es", "Spanischen"},
            {"zh", "Chinesischen"},
            {"tr", "Türkischen"}}}},
    {"fr",
        "traduit %1",
        {{{"en", "de l’anglais"},
            {"ar", "de l’arabe"},
            {"pt", "du portugais"},
            {"de", "de l’allemand"},
            {"es", "de l’espagnol"},
            {"zh", "du chinois"},
            {"tr", "du turc"}}}},
    {"es",
        "traducido del %1",
        {{{"en", "inglés"},
            {"ar", "árabe"},
            {"pt", "portugués"},
            {"fr", "francés"},
            {"de", "alemán"},
            {"zh", "chino"},
            {"tr", "turco"}}}},
    {"pt",
        "traduzido do %1",
        {{{"en", "inglês"},
            {"ar", "árabe"},
            {"fr", "francês"},
            {"de", "alemão"},
            {"es", "espanhol"},
            {"zh", "chinês"},
            {"tr", "turco"}}}},
}};

} // namespace

QString translatedFrom(const QString& original, const QString& into)
{
    for (const Phrase& phrase : kPhrases) {
        if (mainLanguage(into) != QLatin1String(phrase.into))
            continue;
        for (const auto& [language, name] : phrase.names) {
            if (mainLanguage(original) == QLatin1String(language))
                return QString::fromUtf8(phrase.whole).arg(QString::fromUtf8(name));
        }
    }
    return QStringLiteral("translated from %1").arg(languageInWords(original));
}

} // namespace wainscot
