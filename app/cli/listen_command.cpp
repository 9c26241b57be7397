// listen: who is not yet heard, and which answers belong together for a talk.
#include "app/cli/command.h"
#include "app/cli/json.h"
#include "app/jobs/listen_job.h"
#include "core/store/book_store.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"experience", "TITLE", "whose words", true},
    OptionSpec{"groups", "N", "so many groups, or as near as can be (by how alike they are)"},
};

QJsonObject toJson(const Book& book, const Quote& quote)
{
    const Child* child = book.children.find(quote.child);
    return {{QStringLiteral("id"), static_cast<qint64>(quote.id.number())},
        {QStringLiteral("child"), child != nullptr ? child->name : QString()},
        {QStringLiteral("prompt"), quote.prompt},
        {QStringLiteral("words"), quote.words}};
}

QString lineFor(const Book& book, const Quote& quote)
{
    const Child* child = book.children.find(quote.child);
    return QStringLiteral("  %1: %2")
        .arg(child != nullptr ? displayName(*child) : QString(), quote.words.simplified());
}

// The quotes of one group, into the answer's lines and as JSON.
QJsonArray tell(Answer& answer, const Book& book, const std::vector<QuoteId>& quotes)
{
    QJsonArray array;
    for (const QuoteId id : quotes) {
        if (const Quote* quote = book.quotes.find(id)) {
            array.append(toJson(book, *quote));
            answer.lines.append(lineFor(book, *quote));
        }
    }
    return array;
}

Answer answerFor(const Book& book, const ListenOutcome& outcome)
{
    Answer answer;
    QJsonArray missing;
    for (const NotYetHeard& one : outcome.notYetHeard) {
        missing.append(QJsonObject{{QStringLiteral("child"), one.child},
            {QStringLiteral("prompts"), cli::toJson(one.prompts)}});
        answer.lines.append(QStringLiteral("not yet heard: %1 (%2)")
                                .arg(one.child, one.prompts.join(QStringLiteral(", "))));
    }
    QJsonArray groups;
    for (const HeardGroup& group : outcome.groups) {
        answer.lines.append(group.label);
        groups.append(QJsonObject{{QStringLiteral("label"), group.label},
            {QStringLiteral("quotes"), tell(answer, book, group.quotes)}});
    }
    if (!outcome.onTheirOwn.empty())
        answer.lines.append(QStringLiteral("on their own"));
    answer.json = {{QStringLiteral("not_yet_heard"), missing},
        {QStringLiteral("groups"), groups},
        {QStringLiteral("on_their_own"), tell(answer, book, outcome.onTheirOwn)}};
    answer.notes.append(QStringLiteral(
        "Proposed because words are alike. What a child meant, only you and the child know."));
    return answer;
}

Result<Answer> runListen(const Arguments& arguments, const JobRun& run)
{
    ListenJob job{arguments.value("experience"), {}};
    if (arguments.has("groups")) {
        bool isNumber = false;
        job.groups = arguments.value("groups").toInt(&isNumber);
        if (!isNumber) {
            return Error{ErrorCode::WrongUse,
                QStringLiteral("The number of groups \"%1\"").arg(arguments.value("groups")),
                QStringLiteral("write a whole number: 4")};
        }
    }
    auto store = BookStore::open(arguments.positional(0), Access::ReadOnly);
    if (!store)
        return store.error();
    const Book& book = (*store)->book();
    const Result<ListenOutcome> outcome = job.run(book, run);
    if (!outcome)
        return outcome.error();
    return answerFor(book, *outcome);
}

} // namespace

std::vector<Command> listenCommands()
{
    return {{"listen",
        "BOOK --experience TITLE [--groups N]",
        "Shows who is not yet heard and which words belong together for a talk.",
        kOptions,
        {QStringLiteral("BOOK")},
        runListen}};
}

} // namespace wainscot::cli
