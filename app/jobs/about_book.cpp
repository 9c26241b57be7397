#include "app/jobs/about_book.h"

#include "core/base/says.h"
#include "core/model/ready_prompts.h"
#include "core/store/book_store.h"

#include <QLocale>
#include <QRegularExpression>

namespace wainscot {

namespace {

void speak(EditBuilder& edit, const Book& book, const QString& before, const QString& now)
{
    for (const auto& [id, experience] : book.experiences.rows()) {
        if (experience.language != before)
            continue;
        Experience changed = experience;
        changed.language = now;
        edit.put(changed);
    }
    for (const auto& [id, display] : book.displays.rows()) {
        if (display.language != before)
            continue;
        Display changed = display;
        changed.language = now;
        edit.put(changed);
    }
    const auto were = readyPromptSets(before);
    const auto are = readyPromptSets(now);
    for (const auto& [id, set] : book.promptSets.rows()) {
        for (std::size_t at = 0; at < were.size(); ++at) {
            if (set.language != were[at].language || set.prompts != were[at].prompts)
                continue;
            PromptSet changed = are[at];
            changed.id = id;
            edit.put(changed);
        }
    }
}

} // namespace

Result<QString> languageCode(const QString& written)
{
    static const QRegularExpression form(
        QStringLiteral("^[a-z]{2,3}(-[a-z0-9]{2,8})*$"), QRegularExpression::CaseInsensitiveOption);
    QString code = written.trimmed();
    code.replace(QLatin1Char('_'), QLatin1Char('-'));
    if (!form.match(code).hasMatch() || QLocale(code).language() == QLocale::C)
        return Error{ErrorCode::WrongUse,
            Says::tr("The language \"%1\"").arg(written),
            Says::tr("write its code (BCP 47), as en, es or pt-BR")};
    return code;
}

Edit aboutBook(const Book& book, const BookInfo& info, const QString& says)
{
    EditBuilder edit(book, says);
    if (info == book.info)
        return edit.take();
    edit.setInfo(info);
    if (info.language != book.info.language)
        speak(edit, book, book.info.language, info.language);
    return edit.take();
}

Result<BookInfo> AboutBookJob::run(const JobRun&) const
{
    const bool sets = title || language;
    auto store = BookStore::open(folder, sets ? Access::ReadWrite : Access::ReadOnly);
    if (!store)
        return store.error();
    BookInfo info = (*store)->book().info;
    if (!sets)
        return info;
    if (title && title->simplified().isEmpty())
        return Error{ErrorCode::WrongUse, Says::tr("A book needs a title"), {}};
    if (title)
        info.title = title->simplified();
    if (language) {
        const auto code = languageCode(*language);
        if (!code)
            return code.error();
        info.language = *code;
    }
    const Edit edit = aboutBook((*store)->book(), info, Says::tr("About the book"));
    if (const auto done = (*store)->history().perform(edit); !done)
        return done.error();
    return info;
}

} // namespace wainscot
