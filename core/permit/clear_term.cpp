#include "core/permit/cleared_term.h"

#include "core/model/wall_photo.h"
#include "core/permit/piece_clearing.h"

#include <algorithm>
#include <map>
#include <set>

namespace wainscot {

namespace {

// The day of an experience; without one, the first day something was said in it or about it.
std::optional<QDate> dayOf(const Book& book, const Experience& experience)
{
    if (experience.on)
        return experience.on;
    std::optional<QDate> first;
    const auto see = [&](QDate day) {
        if (!first || day < *first)
            first = day;
    };
    for (const Quote* quote : quotesOf(book, experience.id)) {
        if (quote->on)
            see(*quote->on);
    }
    for (const auto& [id, meeting] : book.meetings.rows()) {
        if (meeting.experience == experience.id)
            see(meeting.on);
    }
    return first;
}

} // namespace

class TermClearing {
public:
    TermClearing(const Book& book, Audience audience, QDate from, QDate to, QDate today)
        : m_book(book)
    {
        m_term.m_title = book.info.title;
        m_term.m_language = book.info.language;
        m_term.m_audience = audience;
        m_term.m_from = from;
        m_term.m_to = to;
        m_term.m_madeOn = today;
        chooseExperiences();
    }

    ClearedTerm take()
    {
        for (const Experience* experience : m_chosen) {
            m_term.m_experiences.push_back(cleared(*experience));
            m_term.m_contents.experiences.insert(experience->id);
        }
        if (m_chosen.size() > 1)
            m_term.m_heard = heardInExperiences();
        m_term.m_title =
            rulesFor(m_term.m_madeOn, m_term.m_language).withPermittedNames(m_term.m_title, false);
        return std::move(m_term);
    }

private:
    void chooseExperiences()
    {
        for (const auto& [id, experience] : m_book.experiences.rows()) {
            const auto day = dayOf(m_book, experience);
            if (!day) {
                addLeftOut(m_term.m_leftOut,
                    {QStringLiteral("experience"),
                        id.number(),
                        {},
                        QStringLiteral("\"%1\" has no day, so it belongs to no term.")
                            .arg(experience.title)});
            } else if (contains(*day)) {
                m_chosen.push_back(&experience);
                for (const Picture* picture : picturesOf(m_book, id))
                    m_pictures.push_back(picture->id);
            }
        }
        // Photos of walls are judged when everybody else who is seen is known.
        for (const Experience* experience : m_chosen) {
            for (const Picture* photo : wallPhotosOf(m_book, experience->id)) {
                if (!photo->hungOn || contains(*photo->hungOn))
                    m_pictures.push_back(photo->id);
            }
        }
        std::stable_sort(m_chosen.begin(), m_chosen.end(), [&](const auto* a, const auto* b) {
            return *dayOf(m_book, *a) < *dayOf(m_book, *b);
        });
    }

    [[nodiscard]] bool contains(QDate day) const
    {
        return day >= m_term.m_from && day <= m_term.m_to;
    }

    // The whole file counts as one display: who is seen anywhere in it is named nowhere in it
    // without the permission for both.
    [[nodiscard]] PermissionRules rulesFor(QDate on, const QString& language) const
    {
        Display whole;
        whole.language = language;
        return rulesFor(on, whole);
    }

    [[nodiscard]] PermissionRules rulesFor(QDate on, Display display) const
    {
        display.audience = m_term.m_audience;
        return PermissionRules(m_book, display, on, m_pictures);
    }

    ClearedExperience cleared(const Experience& experience)
    {
        const QDate on = experience.on.value_or(m_term.m_madeOn);
        const PermissionRules rules = rulesFor(on, languageOf(m_book, experience));
        const auto text = [&rules](const QString& words) {
            return rules.withPermittedNames(words, false);
        };
        ClearedExperience shown;
        shown.title = text(experience.title);
        shown.language = languageOf(m_book, experience);
        shown.on = dayOf(m_book, experience);
        shown.place = text(experience.place);
        shown.materials = text(experience.materials);
        shown.goals = text(experience.goals);
        shown.context = text(experience.context);
        shown.interpretation = text(experience.interpretation);
        shown.nextSteps = text(experience.nextSteps);
        shown.credits = text(experience.credits);
        addWalls(experience, on, shown);
        PieceClearing clearing(rules, m_term.m_leftOut);
        addAnswers(experience, clearing, shown);
        addGroups(experience, rules, clearing, shown);
        addMeetings(experience, rules, clearing, shown);
        addReflections(experience, text, shown);
        addObservations(experience, text, shown);
        addPictures(experience, clearing, shown);
        shown.heard = heardOn(experience, rules);
        return shown;
    }

    void addWalls(const Experience& experience, QDate on, ClearedExperience& shown)
    {
        for (const auto& [id, display] : m_book.displays.rows()) {
            if (display.experience != experience.id)
                continue;
            const PermissionRules rules = rulesFor(on, display);
            ClearedWall wall{
                rules.withPermittedNames(display.name, false), display.audience, {}, {}};
            for (const Panel* panel : panelsOf(m_book, id)) {
                wall.panels.push_back(rules.clear(*panel));
                note(wall.panels.back());
                for (const LeftOut& left : wall.panels.back().leftOut())
                    addLeftOut(m_term.m_leftOut, left);
            }
            addWallPhotos(id, PieceClearing(rules, m_term.m_leftOut), wall);
            if (wall.panels.empty() && wall.photos.empty())
                continue;
            m_term.m_contents.displays.insert(id);
            shown.walls.push_back(std::move(wall));
        }
    }

    void addWallPhotos(DisplayId display, PieceClearing clearing, ClearedWall& wall)
    {
        for (const Picture* photo : wallPhotosOf(m_book, display)) {
            if (photo->hungOn && !contains(*photo->hungOn))
                continue;
            Piece piece;
            piece.kind = PieceKind::Photo;
            piece.picture = photo->id;
            piece.text = photo->caption;
            auto one = clearing.clear(piece);
            if (!one)
                continue;
            m_term.m_contents.pictures.insert(photo->id);
            wall.photos.push_back({photo->hungOn, std::move(*one)});
        }
    }

    void note(const ClearedPanel& panel)
    {
        for (const ClearedPiece& piece : panel.pieces()) {
            if (const Piece* own = m_book.pieces.find(piece.id); own && own->quote.isValid())
                m_term.m_contents.words.insert(own->quote);
            if (piece.picture)
                m_term.m_contents.pictures.insert(piece.picture->id);
        }
    }

    std::optional<ClearedPiece> words(QuoteId id, PieceClearing& clearing)
    {
        const Quote* quote = m_book.quotes.find(id);
        if (quote == nullptr || (quote->on && !contains(*quote->on)))
            return std::nullopt;
        Piece piece;
        piece.kind = PieceKind::Quote;
        piece.quote = id;
        auto cleared = clearing.clear(piece);
        if (cleared)
            m_term.m_contents.words.insert(id);
        return cleared;
    }

    void addAnswers(const Experience& experience, PieceClearing& clearing, ClearedExperience& shown)
    {
        const PromptSet* prompts = m_book.promptSets.find(experience.promptSet);
        if (prompts == nullptr)
            return;
        for (const Prompt& prompt : prompts->prompts) {
            shown.questions.append(prompt.text);
            ClearedAnswers answers{prompt.text, {}};
            for (const Quote* quote : quotesOf(m_book, experience.id)) {
                if (quote->prompt != prompt.key || quote->meeting.isValid())
                    continue;
                if (auto one = words(quote->id, clearing))
                    answers.words.push_back(std::move(*one));
            }
            if (!answers.words.empty())
                shown.answers.push_back(std::move(answers));
        }
    }

    // Empty where it would show what its audience may not read.
    QString labelOf(const Group& group, const PermissionRules& rules)
    {
        const auto refused = rules.labelRefusal(group);
        if (!refused)
            return rules.withPermittedNames(group.label, false);
        addLeftOut(m_term.m_leftOut, {QStringLiteral("label"), group.id.number(), {}, *refused});
        return {};
    }

    void addGroups(const Experience& experience,
        const PermissionRules& rules,
        PieceClearing& clearing,
        ClearedExperience& shown)
    {
        for (const auto& [id, group] : m_book.groups.rows()) {
            if (group.experience != experience.id)
                continue;
            ClearedGroup cleared{labelOf(group, rules), {}};
            for (const QuoteId quote : group.quotes) {
                if (auto one = words(quote, clearing))
                    cleared.words.push_back(std::move(*one));
            }
            if (!cleared.words.empty())
                shown.groups.push_back(std::move(cleared));
        }
    }

    void addMeetings(const Experience& experience,
        const PermissionRules& rules,
        PieceClearing& clearing,
        ClearedExperience& shown)
    {
        const auto text = [&rules](const QString& words) {
            return rules.withPermittedNames(words, false);
        };
        for (const auto& [id, meeting] : m_book.meetings.rows()) {
            if (meeting.experience != experience.id || !meeting.done || !contains(meeting.on))
                continue;
            ClearedMeeting cleared{meeting.on, text(meeting.notes), {}, {}, {}};
            for (const GroupId groupId : meeting.groups) {
                const Group* group = m_book.groups.find(groupId);
                const QString label = group != nullptr ? labelOf(*group, rules) : QString();
                if (!label.isEmpty())
                    cleared.about.append(label);
            }
            std::vector<QuoteId> heard = meeting.readOut;
            for (const Quote* quote : quotesOf(m_book, experience.id)) {
                if (quote->meeting == id)
                    heard.push_back(quote->id);
            }
            for (const QuoteId quote : heard) {
                if (auto one = words(quote, clearing))
                    cleared.words.push_back(std::move(*one));
            }
            for (const MeetingNote& note : meeting.happened)
                cleared.happened.push_back({note.kind, text(note.text)});
            shown.meetings.push_back(std::move(cleared));
        }
        std::stable_sort(shown.meetings.begin(),
            shown.meetings.end(),
            [](const auto& a, const auto& b) { return a.on < b.on; });
    }

    template <class Text>
    void addReflections(
        const Experience& experience, const Text& text, ClearedExperience& shown) const
    {
        std::vector<const Reflection*> own;
        for (const auto& [id, reflection] : m_book.reflections.rows()) {
            const bool inside = !reflection.on || contains(*reflection.on);
            if (reflection.experience == experience.id && inside)
                own.push_back(&reflection);
        }
        std::stable_sort(own.begin(), own.end(), [](const auto* a, const auto* b) {
            return a->order < b->order;
        });
        for (const Reflection* one : own) {
            if (!one->answer.trimmed().isEmpty())
                shown.reflections.push_back({text(one->question), text(one->answer)});
        }
    }

    template <class Text>
    void addObservations(
        const Experience& experience, const Text& text, ClearedExperience& shown) const
    {
        for (const auto& [id, observation] : m_book.observations.rows()) {
            if (observation.experience != experience.id)
                continue;
            std::optional<QDate> on;
            if (observation.at)
                on = observation.at->date();
            if (!on || contains(*on))
                shown.observations.push_back({on, text(observation.words)});
        }
        std::stable_sort(shown.observations.begin(),
            shown.observations.end(),
            [](const auto& a, const auto& b) { return a.on < b.on; });
    }

    void addPictures(
        const Experience& experience, PieceClearing& clearing, ClearedExperience& shown)
    {
        for (const Picture* picture : picturesOf(m_book, experience.id)) {
            Piece piece;
            piece.kind = picture->kind == PictureKind::Work ? PieceKind::Work : PieceKind::Photo;
            piece.picture = picture->id;
            piece.text = picture->caption;
            if (auto one = clearing.clear(piece)) {
                shown.pictures.push_back(std::move(*one));
                m_term.m_contents.pictures.insert(picture->id);
            }
        }
    }

    // In the class's order; those who may not be named stand together at the end, so that nobody
    // is told by their place.
    template <class IsHeard>
    [[nodiscard]] std::vector<HeardRow> heardRows(
        const PermissionRules& rules, std::size_t columns, const IsHeard& isHeard)
    {
        std::vector<HeardRow> named;
        std::vector<HeardRow> unnamed;
        for (const auto& [id, child] : m_book.children.rows()) {
            const bool mayBeNamed = !rules.namingRefusal(child);
            if (mayBeNamed)
                m_term.m_contents.named.insert(id);
            HeardRow row{mayBeNamed ? displayName(child) : QString(), {}};
            for (std::size_t column = 0; column < columns; ++column)
                row.heard.push_back(isHeard(id, column));
            (mayBeNamed ? named : unnamed).push_back(std::move(row));
        }
        std::move(unnamed.begin(), unnamed.end(), std::back_inserter(named));
        return named;
    }

    [[nodiscard]] std::vector<HeardRow> heardOn(
        const Experience& experience, const PermissionRules& rules)
    {
        const PromptSet* prompts = m_book.promptSets.find(experience.promptSet);
        if (prompts == nullptr)
            return {};
        std::map<ChildId, std::set<QString>> answered;
        for (const Quote* quote : quotesOf(m_book, experience.id))
            answered[quote->child].insert(quote->prompt);
        return heardRows(rules, prompts->prompts.size(), [&](ChildId child, std::size_t column) {
            return answered[child].count(prompts->prompts[column].key) > 0;
        });
    }

    [[nodiscard]] std::vector<HeardRow> heardInExperiences()
    {
        std::vector<std::set<ChildId>> voices;
        for (const Experience* experience : m_chosen) {
            std::set<ChildId>& heard = voices.emplace_back();
            for (const Quote* quote : quotesOf(m_book, experience->id))
                heard.insert(quote->child);
            for (const Picture* picture : picturesOf(m_book, experience->id)) {
                if (picture->kind == PictureKind::Work)
                    heard.insert(picture->people.children.begin(), picture->people.children.end());
            }
        }
        return heardRows(rulesFor(m_term.m_madeOn, m_term.m_language),
            voices.size(),
            [&](ChildId child, std::size_t column) { return voices[column].count(child) > 0; });
    }

    const Book& m_book;
    ClearedTerm m_term;
    std::vector<const Experience*> m_chosen;
    std::vector<PictureId> m_pictures; // everything the file could show
};

ClearedTerm ClearedTerm::of(const Book& book, Audience audience, QDate from, QDate to, QDate today)
{
    return TermClearing(book, audience, from, to, today).take();
}

} // namespace wainscot
