#include "layout/typeset/faces.h"

#include <QFontDatabase>

#include <algorithm>
#include <array>
#include <cmath>

namespace wainscot {

namespace {

// Companions of the pairing's faces, by script: one for children's words, one for adults. Without a
// serif companion both speak in the same face, and weight, size and place must part them.
struct Companion {
    QChar::Script script;
    const char* voice;
    const char* adult;
};

constexpr std::array kCompanions{
    Companion{QChar::Script_Arabic, "Noto Sans Arabic", "Noto Naskh Arabic"},
    Companion{QChar::Script_Hebrew, "Noto Sans Hebrew", "Noto Serif Hebrew"},
    Companion{QChar::Script_Devanagari, "Noto Sans Devanagari", "Noto Serif Devanagari"},
    Companion{QChar::Script_Bengali, "Noto Sans Bengali", "Noto Serif Bengali"},
    Companion{QChar::Script_Gurmukhi, "Noto Sans Gurmukhi", "Noto Serif Gurmukhi"},
    Companion{QChar::Script_Gujarati, "Noto Sans Gujarati", "Noto Serif Gujarati"},
    Companion{QChar::Script_Tamil, "Noto Sans Tamil", "Noto Serif Tamil"},
    Companion{QChar::Script_Telugu, "Noto Sans Telugu", "Noto Serif Telugu"},
    Companion{QChar::Script_Kannada, "Noto Sans Kannada", "Noto Serif Kannada"},
    Companion{QChar::Script_Malayalam, "Noto Sans Malayalam", "Noto Serif Malayalam"},
    Companion{QChar::Script_Sinhala, "Noto Sans Sinhala", "Noto Serif Sinhala"},
    Companion{QChar::Script_Thai, "Noto Sans Thai", "Noto Serif Thai"},
    Companion{QChar::Script_Lao, "Noto Sans Lao", "Noto Serif Lao"},
    Companion{QChar::Script_Khmer, "Noto Sans Khmer", "Noto Serif Khmer"},
    Companion{QChar::Script_Myanmar, "Noto Sans Myanmar", "Noto Serif Myanmar"},
    Companion{QChar::Script_Georgian, "Noto Sans Georgian", "Noto Serif Georgian"},
    Companion{QChar::Script_Armenian, "Noto Sans Armenian", "Noto Serif Armenian"},
    Companion{QChar::Script_Ethiopic, "Noto Sans Ethiopic", "Noto Serif Ethiopic"},
};

bool isEastAsian(QChar::Script script)
{
    return script == QChar::Script_Han || script == QChar::Script_Hiragana
        || script == QChar::Script_Katakana || script == QChar::Script_Hangul
        || script == QChar::Script_Bopomofo;
}

bool isPaired(QChar::Script script)
{
    return script == QChar::Script_Latin || script == QChar::Script_Greek
        || script == QChar::Script_Cyrillic || script <= QChar::Script_Common;
}

QString eastAsianFamily(const FaceQuery& query, QChar::Script script)
{
    QString region = QStringLiteral("SC");
    if (query.language.startsWith(QLatin1String("ja")) || script == QChar::Script_Hiragana
        || script == QChar::Script_Katakana)
        region = QStringLiteral("JP");
    else if (query.language.startsWith(QLatin1String("ko")) || script == QChar::Script_Hangul)
        region = QStringLiteral("KR");
    else if (query.language.contains(QLatin1String("Hant"))
        || query.language.endsWith(QLatin1String("TW")))
        region = QStringLiteral("TC");
    const QString form =
        query.voice == Voice::Child ? QStringLiteral("Sans") : QStringLiteral("Serif");
    return QStringLiteral("Noto %1 CJK %2").arg(form, region);
}

// By eye against Latin, because Arabic has no cap height: parts of the Latin face's em.
double arabicFactor(TypeRole role)
{
    switch (role) {
    case TypeRole::Title:
        return 0.94;
    case TypeRole::ChildsWords:
        return 1.02;
    case TypeRole::Body:
        return 1.08;
    case TypeRole::Caption:
        return 1.12;
    }
    return 1;
}

QString spareFamily(const QString& family)
{
    return skeletonOf(family) == Skeleton::Serif ? QStringLiteral("Noto Serif")
                                                 : QStringLiteral("Noto Sans");
}

QFont::Weight qtWeight(Weight weight)
{
    return weight == Weight::Bold ? QFont::Bold : QFont::Normal;
}

// Noto's faces for other scripts are drawn to stand beside its Latin, whose H is this high.
constexpr double kNotoCapRatio = 0.714;

} // namespace

Skeleton skeletonOf(const QString& family)
{
    static const std::array serifs{
        QLatin1String("Charis SIL"), QLatin1String("Gentium"), QLatin1String("Vollkorn")};
    const auto begins = [&](QLatin1String name) { return family.startsWith(name); };
    const bool serif = std::any_of(serifs.begin(), serifs.end(), begins)
        || family.contains(QLatin1String("Serif")) || family.contains(QLatin1String("Naskh"));
    return serif ? Skeleton::Serif : Skeleton::Sans;
}

int emUnits(Mm capHeight, double capRatio)
{
    return std::max(1, static_cast<int>(std::lround(mmToUnits(capHeight / capRatio))));
}

FaceChoice chooseFace(const Pairing& pairing, const FaceQuery& query, QChar::Script script)
{
    FaceChoice face;
    face.weight = query.weight;
    face.family = query.voice == Voice::Child ? pairing.voiceFamily : pairing.adultFamily;
    face.spare = spareFamily(face.family);
    const auto metrics = faceMetrics(face.family, query.weight);
    const int latinEm = emUnits(query.capHeight, metrics ? metrics->capHeight : kNotoCapRatio);
    face.emUnits = latinEm;
    face.ligaturesOff = isPaired(script);
    if (face.ligaturesOff)
        return face;
    if (isEastAsian(script)) {
        face.family = eastAsianFamily(query, script);
        return face; // the em is that of the Latin role
    }
    face.emUnits = script == QChar::Script_Arabic
        ? static_cast<int>(std::lround(latinEm * arabicFactor(query.role)))
        : emUnits(query.capHeight, kNotoCapRatio);
    const auto at = std::find_if(kCompanions.begin(), kCompanions.end(), [&](const Companion& one) {
        return one.script == script;
    });
    if (at != kCompanions.end()) {
        face.family = QString::fromLatin1(query.voice == Voice::Child ? at->voice : at->adult);
        face.spare = spareFamily(face.family);
    }
    return face;
}

QFont layoutFont(const FaceChoice& face, double tracking)
{
    // Qt has no switch for ligatures; any letter spacing it does not round away turns them off.
    constexpr double kLigaturesOff = 0.02;
    QFont font;
    font.setFamilies({face.family, face.spare});
    font.setPixelSize(face.emUnits);
    font.setWeight(qtWeight(face.weight));
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::PreferOutline);
    font.setKerning(true);
    if (face.ligaturesOff)
        font.setLetterSpacing(QFont::AbsoluteSpacing, tracking == 0 ? kLigaturesOff : tracking);
    return font;
}

Result<QRawFont> rawFont(const QString& family, Weight weight, int units)
{
    if (!isInstalled(family))
        return Error{ErrorCode::NotFound, family, QStringLiteral("font is not installed")};
    FaceChoice face;
    face.family = family;
    face.spare = family;
    face.weight = weight;
    face.emUnits = units;
    QRawFont font = QRawFont::fromFont(layoutFont(face));
    if (!font.isValid() || font.familyName().compare(family, Qt::CaseInsensitive) != 0)
        return Error{ErrorCode::NotFound, family, font.familyName()};
    return font;
}

} // namespace wainscot
