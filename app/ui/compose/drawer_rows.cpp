#include "app/ui/compose/drawer_rows.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/ui/session/piece_edits.h"
#include "core/media/likeness.h"
#include "core/voice/answers.h"
#include "core/voice/fold_words.h"

namespace wainscot::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(DrawerRows)
};

class RowMaker {
public:
    RowMaker(const Book& book,
        const Experience& experience,
        const DrawerFilter& filter,
        const WhereUsed& used)
        : m_book(book)
        , m_experience(experience)
        , m_filter(filter)
        , m_used(used)
        , m_search(filter.search)
    {
    }

    std::vector<DrawerRow> make()
    {
        switch (m_filter.kind) {
        case DrawerKind::Words:
            addWords();
            break;
        case DrawerKind::Photos:
            addPictures(PictureKind::Photo);
            break;
        case DrawerKind::Work:
            addPictures(PictureKind::Work);
            break;
        case DrawerKind::Notes:
            addNotes();
            break;
        }
        return std::move(m_rows);
    }

private:
    [[nodiscard]] bool matches(const QString& text) const
    {
        return m_search.isEmpty() || m_search.fits(text);
    }
    [[nodiscard]] bool wanted(const DrawerItem& item, int stars) const
    {
        return (!m_filter.notOnWall || m_used(item).isEmpty()) && (!m_filter.starred || stars > 0);
    }
    [[nodiscard]] bool wanted(const Quote& quote, const QString& who) const
    {
        return !quote.words.trimmed().isEmpty()
            && wanted({DrawerItem::Kind::Quote, quote.id.number()}, quote.stars)
            && (!m_filter.child.isValid() || quote.child == m_filter.child)
            && (!m_filter.prompt
                || quote.prompt.compare(*m_filter.prompt, Qt::CaseInsensitive) == 0)
            && (!m_filter.meeting.isValid() || quote.meeting == m_filter.meeting)
            && matches(quote.words + QLatin1Char(' ') + who);
    }
    void addSentence(const QString& sentence)
    {
        m_rows.push_back({DrawerRow::What::Sentence, {}, sentence, {}, 0});
    }

    // A section with the quotes that are wanted; none of them, no section.
    void addSection(const QString& heading, const std::vector<const Quote*>& quotes)
    {
        std::vector<DrawerRow> slips;
        int free = 0;
        for (const Quote* quote : quotes) {
            const DrawerItem item{DrawerItem::Kind::Quote, quote->id.number()};
            free += m_used(item).isEmpty() ? 1 : 0;
            const Child* child = m_book.children.find(quote->child);
            const QString who = child != nullptr ? displayName(*child) : QString();
            if (wanted(*quote, who))
                slips.push_back({DrawerRow::What::Words, item, quote->words, who, quote->stars});
        }
        if (slips.empty())
            return;
        m_rows.push_back({DrawerRow::What::Section,
            {},
            heading,
            Words::tr("%1, %2 not on a wall").arg(quotes.size()).arg(free),
            0});
        m_rows.insert(m_rows.end(), slips.begin(), slips.end());
    }

    void addWords()
    {
        const auto quotes = quotesOf(m_book, m_experience.id);
        if (quotes.empty()) {
            addSentence(Words::tr(
                "No words yet. Take down six answers or more, or gather them from a file."));
            return;
        }
        if (m_filter.byGroup)
            addGroups(quotes);
        else
            addQuestions(quotes);
        if (m_rows.empty())
            addSentence(Words::tr("Nothing here fits what you look for."));
    }

    void addQuestions(const std::vector<const Quote*>& quotes)
    {
        std::vector<Prompt> prompts = promptsOf(m_book, m_experience);
        prompts.push_back({QString(), Words::tr("Told in a meeting")});
        for (const Prompt& prompt : prompts) {
            std::vector<const Quote*> own;
            std::copy_if(quotes.begin(), quotes.end(), std::back_inserter(own), [&](auto* quote) {
                return quote->prompt.compare(prompt.key, Qt::CaseInsensitive) == 0;
            });
            addSection(prompt.text, own);
        }
    }

    void addGroups(const std::vector<const Quote*>& quotes)
    {
        std::vector<const Quote*> alone = quotes;
        for (const auto& [id, group] : m_book.groups.rows()) {
            if (group.experience != m_experience.id)
                continue;
            std::vector<const Quote*> own;
            for (const QuoteId quote : group.quotes) {
                if (const Quote* found = m_book.quotes.find(quote))
                    own.push_back(found);
                std::erase_if(alone, [quote](const Quote* one) { return one->id == quote; });
            }
            addSection(group.label, own);
        }
        addSection(Words::tr("On their own"), alone);
    }

    [[nodiscard]] QString peopleIn(const Picture& picture) const
    {
        QStringList people;
        for (const ChildId id : picture.people.children) {
            if (const Child* child = m_book.children.find(id))
                people << displayName(*child);
        }
        return !picture.people.lookedAt ? Words::tr("not looked at yet")
            : people.isEmpty()          ? Words::tr("nobody in it")
                                        : people.join(QStringLiteral(", "));
    }

    [[nodiscard]] bool wanted(const Picture& picture) const
    {
        const auto& seen = picture.people.children;
        return wanted({DrawerItem::Kind::Picture, picture.id.number()}, picture.stars)
            && (!m_filter.child.isValid()
                || std::find(seen.begin(), seen.end(), m_filter.child) != seen.end())
            && matches(picture.caption + QLatin1Char(' ') + picture.fileName + QLatin1Char(' ')
                + peopleIn(picture));
    }

    void addPicture(const Picture& picture)
    {
        m_rows.push_back({DrawerRow::What::Picture,
            {DrawerItem::Kind::Picture, picture.id.number()},
            picture.caption.isEmpty() ? picture.fileName : picture.caption,
            peopleIn(picture),
            picture.stars});
    }

    // A series stands where its first picture would, the one that is proposed first of all.
    void addSeries(std::vector<const Picture*> series)
    {
        const PictureId first = series.front()->id;
        std::sort(series.begin(), series.end(), [](const Picture* a, const Picture* b) {
            return isProposedBefore(*a, *b);
        });
        const bool opened = m_filter.opened.count(first) > 0;
        for (const Picture* picture : series) {
            // What hangs is never folded away.
            const bool hangs = !m_used({DrawerItem::Kind::Picture, picture->id.number()}).isEmpty();
            if (opened || hangs || picture == series.front())
                addPicture(*picture);
        }
        m_rows.push_back({DrawerRow::What::Series,
            {DrawerItem::Kind::Picture, first.number()},
            opened ? Words::tr("Show only the best of these %1").arg(series.size())
                   : Words::tr("Show all %1 that are nearly alike").arg(series.size()),
            {},
            0});
    }

    void addPictures(PictureKind kind)
    {
        std::vector<const Picture*> shown;
        for (const Picture* picture : picturesOf(m_book, m_experience.id)) {
            if (picture->kind == kind && wanted(*picture))
                shown.push_back(picture);
        }
        const std::map<PictureId, int> numbers = burstsOf(shown);
        std::map<int, std::vector<const Picture*>> series;
        for (const Picture* picture : shown) {
            if (const auto at = numbers.find(picture->id); at != numbers.end())
                series[at->second].push_back(picture);
        }
        for (const Picture* picture : shown) {
            const auto at = numbers.find(picture->id);
            if (at == numbers.end())
                addPicture(*picture);
            else if (series.at(at->second).front() == picture)
                addSeries(series.at(at->second));
        }
        addNoPictures(kind);
    }

    void addNoPictures(PictureKind kind)
    {
        if (!m_rows.empty())
            return;
        addSentence(kind == PictureKind::Photo
                ? Words::tr(
                    "No photos here. Drop some on the panel, or gather a folder in the Book menu.")
                : Words::tr("No work here. Scanned drawings come in with the photos."));
    }

    void addText(const DrawerItem& item, const QString& text, const QString& second)
    {
        if (matches(text + QLatin1Char(' ') + second))
            m_rows.push_back({DrawerRow::What::Text,
                item,
                text.isEmpty() ? Words::tr("Empty, to be written on the panel") : text.simplified(),
                second,
                0});
    }

    void addNotes()
    {
        const auto note = [this](PieceKind kind, const QString& text) {
            addText({DrawerItem::Kind::Note, std::int64_t(kind)}, text, wordFor(kind));
        };
        note(PieceKind::Title, m_experience.title);
        note(PieceKind::Question, {});
        note(PieceKind::Context, m_experience.context);
        note(PieceKind::Label, {});
        note(PieceKind::Interpretation, m_experience.interpretation);
        note(PieceKind::NextStep, m_experience.nextSteps);
        note(PieceKind::Invitation, {});
        note(PieceKind::Credits, m_experience.credits);
        const std::size_t before = m_rows.size();
        for (const auto& [id, seen] : m_book.observations.rows()) {
            if (seen.experience == m_experience.id
                && (!m_filter.child.isValid()
                    || std::find(seen.children.begin(), seen.children.end(), m_filter.child)
                        != seen.children.end()))
                addText({DrawerItem::Kind::Observation, id.number()}, seen.words, whoIn(seen));
        }
        if (m_rows.size() > before)
            m_rows.insert(m_rows.begin() + std::ptrdiff_t(before),
                {DrawerRow::What::Section,
                    {},
                    Words::tr("What you saw"),
                    QString::number(m_rows.size() - before),
                    0});
    }

    [[nodiscard]] QString whoIn(const Observation& seen) const
    {
        QStringList people;
        for (const ChildId id : seen.children) {
            if (const Child* child = m_book.children.find(id))
                people << displayName(*child);
        }
        return people.isEmpty() ? Words::tr("Observation") : people.join(QStringLiteral(", "));
    }

    const Book& m_book;
    const Experience& m_experience;
    const DrawerFilter& m_filter;
    const WhereUsed& m_used;
    FindQuery m_search;
    std::vector<DrawerRow> m_rows;
};

} // namespace

WhereUsed::WhereUsed(const Book& book, DisplayId display)
{
    for (const auto& [id, piece] : book.pieces.rows()) {
        const Panel* panel = book.panels.find(piece.panel);
        const Display* on = panel != nullptr ? book.displays.find(panel->display) : nullptr;
        if (on == nullptr)
            continue;
        const bool here = on->id == display;
        const QString where =
            here ? Words::tr("on panel %1").arg(panel->number) : Words::tr("on %1").arg(on->name);
        // What hangs on the display one is at counts more than what hangs elsewhere.
        const auto keep = [&](std::map<std::int64_t, QString>& uses, std::int64_t number) {
            if (number > 0 && (here || uses.find(number) == uses.end()))
                uses[number] = where;
        };
        keep(m_quotes, piece.quote.number());
        keep(m_pictures, piece.picture.number());
    }
}

QString WhereUsed::operator()(const DrawerItem& item) const
{
    const auto& uses = item.kind == DrawerItem::Kind::Quote ? m_quotes : m_pictures;
    if (item.kind != DrawerItem::Kind::Quote && item.kind != DrawerItem::Kind::Picture)
        return {};
    const auto at = uses.find(item.id);
    return at != uses.end() ? at->second : QString();
}

std::vector<DrawerRow> drawerRows(const Book& book,
    const Experience& experience,
    const DrawerFilter& filter,
    const WhereUsed& used)
{
    return RowMaker(book, experience, filter, used).make();
}

std::vector<const Picture*> seriesOf(const Book& book, PictureId picture)
{
    const Picture* own = book.pictures.find(picture);
    if (own == nullptr)
        return {};
    std::vector<const Picture*> all = picturesOf(book, own->experience);
    const std::map<PictureId, int> numbers = burstsOf(all);
    const auto at = numbers.find(picture);
    std::erase_if(all, [&](const Picture* one) {
        const auto other = numbers.find(one->id);
        return one != own
            && (at == numbers.end() || other == numbers.end() || other->second != at->second);
    });
    return all;
}

} // namespace wainscot::ui
