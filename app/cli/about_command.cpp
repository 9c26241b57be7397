// about: what a book is called, and which language its walls speak.
#include "app/cli/command.h"
#include "app/jobs/about_book.h"
#include "core/base/language_name.h"
#include "core/base/wall_text.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{OptionSpec{"title", "TEXT", "call it so"},
    OptionSpec{"language", "CODE", "its language from now on (BCP 47): en, es, pt-BR ..."}};

Result<Answer> runAbout(const Arguments& arguments, const JobRun& run)
{
    AboutBookJob job{arguments.positional(0)};
    if (arguments.has("title"))
        job.title = arguments.value("title");
    if (arguments.has("language"))
        job.language = arguments.value("language");
    const Result<BookInfo> info = job.run(run);
    if (!info)
        return info.error();
    Answer answer;
    answer.json = {{QStringLiteral("title"), info->title},
        {QStringLiteral("language"), info->language},
        {QStringLiteral("own_words_in_it"), hasWallTexts(info->language)}};
    answer.lines.append(
        QStringLiteral("\"%1\" speaks %2.").arg(info->title, languageInWords(info->language)));
    if (!hasWallTexts(info->language))
        answer.lines.append(QStringLiteral("What Wainscot itself writes on a wall is in English."));
    return answer;
}

} // namespace

std::vector<Command> aboutCommands()
{
    return {{"about",
        "BOOK [--title TEXT] [--language CODE]",
        "Tells or sets what a book is called and which language its walls speak.",
        kOptions,
        {QStringLiteral("BOOK")},
        runAbout}};
}

} // namespace wainscot::cli
