#include "app/cli/command.h"
#include "app/jobs/template_job.h"
#include "core/model/template_file.h"
#include "core/store/book_store.h"

#include <QJsonArray>

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kOptions{
    OptionSpec{"keep", "NAME", "keeps a panel as it hangs as a template of this name"},
    OptionSpec{"display", "NAME", "with --keep: the display the panel belongs to"},
    OptionSpec{"panel", "N", "with --keep: which of its panels (1)"},
    OptionSpec{"from", "FILE", "takes a template in from a file"},
    OptionSpec{"name", "NAME", "with --to: which template"},
    OptionSpec{"to", "FILE", "writes a template into a file, to share it"},
};

Result<Answer> keep(BookStore& store, const Result<TemplateOutcome>& outcome)
{
    if (!outcome)
        return outcome.error();
    if (const Result<> kept = store.history().perform(outcome->edit); !kept)
        return kept.error();
    Answer answer;
    const auto places = static_cast<int>(outcome->made.places.size());
    answer.json = {{QStringLiteral("template"), outcome->made.name},
        {QStringLiteral("places"), places},
        {QStringLiteral("replaced"), outcome->replaces}};
    answer.lines.append(
        QStringLiteral("The template \u201c%1\u201d has %2 places%3.")
            .arg(outcome->made.name)
            .arg(places)
            .arg(outcome->replaces ? QStringLiteral("; it replaces the one before") : QString()));
    return answer;
}

Result<Answer> write(const Book& book, const QString& name, const QString& file)
{
    const PanelTemplate* made = templateByName(book, name);
    if (made == nullptr) {
        return Error{ErrorCode::NotFound,
            QStringLiteral("The template \"%1\"").arg(name),
            QStringLiteral("this book has none of that name")};
    }
    if (const Result<> written = writeTemplate(file, *made); !written)
        return written.error();
    Answer answer;
    answer.json = {{QStringLiteral("template"), made->name}, {QStringLiteral("file"), file}};
    answer.lines.append(
        QStringLiteral("The template \u201c%1\u201d is in %2.").arg(made->name, file));
    return answer;
}

Answer listed(const Book& book)
{
    Answer answer;
    QJsonArray names;
    for (const auto& [id, made] : book.templates.rows()) {
        names.append(made.name);
        answer.lines.append(QStringLiteral("%1: %2 places").arg(made.name).arg(made.places.size()));
    }
    if (names.isEmpty())
        answer.lines.append(QStringLiteral("This book has no templates of its own."));
    answer.json = {{QStringLiteral("templates"), names}};
    return answer;
}

Result<Answer> runTemplate(const Arguments& arguments, const JobRun&)
{
    const Result<int> panel = arguments.number("panel", 1, 20, 1);
    if (!panel)
        return panel.error();
    auto store = BookStore::open(arguments.positional(0));
    if (!store)
        return store.error();
    const Book& book = (*store)->book();
    if (arguments.has("keep")) {
        const KeepTemplateJob job{arguments.value("display"), *panel, arguments.value("keep")};
        return keep(**store, job.run(book));
    }
    if (arguments.has("from"))
        return keep(**store, TakeTemplateJob{arguments.value("from")}.run(book));
    if (arguments.has("to"))
        return write(book, arguments.value("name"), arguments.value("to"));
    return listed(book);
}

} // namespace

std::vector<Command> templateCommands()
{
    return {{"template",
        "BOOK [--keep NAME --display NAME [--panel N] | --from FILE | --name NAME --to FILE]",
        "Lists a book's own templates, keeps a panel as one, or shares one as a file.",
        kOptions,
        {QStringLiteral("BOOK")},
        runTemplate}};
}

} // namespace wainscot::cli
