#include "core/permit/name_finder.h"

#include <QSet>
#include <QStringList>

namespace wainscot {

// English words that are also given names. Where one of them stands in small letters, a text about
// plants or weather would be spoiled by taking it for a child. The list is our own choice.
bool isEverydayWord(const QString& word)
{
    static const QStringList words =
        QStringLiteral("amber angel april archer art ash august autumn basil bay beau bill birdie "
                       "blossom blue bo bob brook brooks buddy carol chance charity chase clay "
                       "clover coral crystal daisy dale dawn dean drew eden ember faith fern finch "
                       "flora ford forest fox frank garnet gene ginger glen grace grant gray guy "
                       "harmony harper hazel heath heather heaven holly honey hope hunter iris ivy "
                       "jack jade jasmine jasper jay jet jewel josh joy june juniper king lake "
                       "lane lark laurel leaf liberty lily lotus love marina mark mason may meadow "
                       "melody mercy miles mint misty moss nick noble oak ocean olive opal page "
                       "pansy pat patience peace pearl penny peter pine pip poppy prince rain "
                       "ray red reed reef rich river rob robin rocky rose rosemary ruby rue rusty "
                       "sage sandy scarlet sky star stone storm sue summer sunny teal tiger "
                       "trinity true tully valentine velvet victor violet wade west will willow "
                       "winter wolf wren young")
            .split(QLatin1Char(' '));
    static const QSet<QString> known(words.begin(), words.end());
    return known.contains(word);
}

} // namespace wainscot
