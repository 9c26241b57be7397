// Reading children's words, in the long form (child, prompt, words) or the wide one (a column for
// each prompt).
#include "app/jobs/gather.h"

#include "app/jobs/gather_common.h"
#include "core/base/says.h"

#include <algorithm>

namespace wainscot {

namespace {

const QString kChild = QStringLiteral("child");
const QString kPrompt = QStringLiteral("prompt");
const QString kWords = QStringLiteral("words");

class QuoteReader {
public:
    QuoteReader(const Book& book, const CsvTable& table, const GatherQuotesJob& job)
        : m_book(book)
        , m_table(table)
        , m_edit(book, Says::tr("Gather words from %1").arg(table.file))
        , m_for(experienceFor(book, m_edit, job.experience, job.on))
    {
        m_outcome.skipped = unreadableRows(table);
        for (const Quote* quote : quotesOf(book, m_for.experience.id))
            m_known.push_back(*quote);
        for (const QString& column : table.columns) {
            if (m_for.prompts.find(column) != nullptr)
                m_promptColumns.append(column);
        }
    }

    [[nodiscard]] bool hasPromptColumns() const { return !m_promptColumns.isEmpty(); }
    [[nodiscard]] QStringList promptKeys() const
    {
        QStringList keys;
        for (const Prompt& prompt : m_for.prompts.prompts)
            keys.append(prompt.key);
        return keys;
    }

    void readLong(const CsvRow& row)
    {
        Quote quote;
        if (!begin(row, quote))
            return;
        const QString asked = row.cell(kPrompt);
        const Prompt* prompt = m_for.prompts.find(asked);
        if (prompt == nullptr) {
            skip(row,
                asked.isEmpty()
                    ? Says::tr("there is no prompt; known are %1")
                          .arg(promptKeys().join(QStringLiteral(", ")))
                    : Says::tr("the prompt \"%1\" is not asked in this experience; known "
                               "are %2")
                          .arg(asked, promptKeys().join(QStringLiteral(", "))));
            return;
        }
        quote.words = row.cell(kWords);
        if (quote.words.isEmpty()) {
            skip(row, Says::tr("there are no words"));
            return;
        }
        quote.prompt = prompt->key;
        keep(quote);
    }

    // A blank cell in the wide form is an answer not given, nothing to complain about.
    void readWide(const CsvRow& row)
    {
        Quote quote;
        if (!begin(row, quote))
            return;
        for (const QString& column : m_promptColumns) {
            quote.words = row.cell(column);
            quote.prompt = m_for.prompts.find(column)->key;
            if (!quote.words.isEmpty())
                keep(quote);
        }
    }

    void tellUnknownColumns()
    {
        static const QStringList known{kChild,
            kPrompt,
            kWords,
            QStringLiteral("how"),
            QStringLiteral("on"),
            QStringLiteral("scribe")};
        for (const QString& column : m_table.columns) {
            if (column.isEmpty() || known.contains(column.toLower())
                || m_promptColumns.contains(column))
                continue;
            m_outcome.skipped.push_back({1,
                m_table.file,
                Says::tr("%1, row 1: the column \"%2\" is no prompt of this experience (%3); "
                         "its cells are left out.")
                    .arg(m_table.file, column, promptKeys().join(QStringLiteral(", ")))});
        }
    }

    GatherOutcome take()
    {
        m_outcome.edit = m_edit.take();
        return std::move(m_outcome);
    }

private:
    void skip(const CsvRow& row, const QString& why)
    {
        m_outcome.skipped.push_back(skippedRow(m_table, row, why));
    }

    // What both forms say about a row: who, how, when, taken down by whom.
    bool begin(const CsvRow& row, Quote& quote)
    {
        const QString name = row.cell(kChild);
        const Child* child = childCalled(m_book, name);
        if (child == nullptr) {
            skip(row,
                name.isEmpty() ? Says::tr("there is no child")
                               : Says::tr("no child of this book is called \"%1\"").arg(name));
            return false;
        }
        const QString how = row.cell(QStringLiteral("how"));
        const std::optional<Telling> telling = tellingFromName(how);
        if (!how.isEmpty() && !telling) {
            skip(row,
                Says::tr("\"%1\" is no way of telling; known are said, wrote, drew, "
                         "signed, pointed")
                    .arg(how));
            return false;
        }
        const QString on = row.cell(QStringLiteral("on"));
        quote.on = dayFromText(on);
        if (!on.isEmpty() && !quote.on) {
            skip(row, Says::tr("\"%1\" is no date (2026-11-03)").arg(on));
            return false;
        }
        if (!quote.on)
            quote.on = m_for.experience.on;
        quote.experience = m_for.experience.id;
        quote.child = child->id;
        quote.telling = telling.value_or(Telling::Said);
        quote.scribe = row.cell(QStringLiteral("scribe"));
        return true;
    }

    void keep(const Quote& given)
    {
        const auto same = std::find_if(m_known.begin(), m_known.end(), [&](const Quote& known) {
            return known.child == given.child && known.prompt == given.prompt
                && sameWords(known.words, given.words);
        });
        if (same == m_known.end()) {
            Quote quote = given;
            quote.id = m_edit.newId<Quote>();
            m_edit.put(quote);
            m_known.push_back(quote);
            ++m_outcome.added;
            return;
        }
        // The words are known; what the file says about how they came to be may be new.
        Quote updated = *same;
        updated.telling = given.telling;
        updated.on = given.on ? given.on : updated.on;
        updated.scribe = given.scribe.isEmpty() ? updated.scribe : given.scribe;
        if (updated == *same)
            return;
        *same = updated;
        m_edit.put(updated);
        ++m_outcome.updated;
    }

    const Book& m_book;
    const CsvTable& m_table;
    EditBuilder m_edit;
    GatheredExperience m_for;
    QStringList m_promptColumns;
    std::vector<Quote> m_known;
    GatherOutcome m_outcome;
};

} // namespace

Result<GatherOutcome> GatherQuotesJob::run(const Book& book, const JobRun& run) const
{
    const Result<CsvTable> read = readCsv(file);
    if (!read)
        return read.error();
    const CsvTable& table = *read;
    if (!table.has(kChild))
        return lacksColumn(table, kChild);
    QuoteReader reader(book, table, *this);
    const bool isLong = table.has(kPrompt) || table.has(kWords);
    if (isLong && !table.has(kPrompt))
        return lacksColumn(table, kPrompt);
    if (isLong && !table.has(kWords))
        return lacksColumn(table, kWords);
    if (!isLong && !reader.hasPromptColumns()) {
        return Error{ErrorCode::WrongUse,
            table.file,
            Says::tr("it has neither the columns prompt and words nor a column for one of "
                     "the prompts (%1)")
                .arg(reader.promptKeys().join(QStringLiteral(", ")))};
    }
    for (const CsvRow& row : table.rows) {
        if (run.cancelled())
            return stoppedByPerson();
        if (isLong)
            reader.readLong(row);
        else
            reader.readWide(row);
    }
    if (!isLong)
        reader.tellUnknownColumns();
    run.report(Says::tr("Read %1").arg(table.file), 1, 1);
    return reader.take();
}

} // namespace wainscot
