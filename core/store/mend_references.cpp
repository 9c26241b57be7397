// What is left of a broken book points only at what is left.
#include "core/store/salvage.h"

#include <QStringList>

namespace wainscot {

namespace {

class Mender {
public:
    explicit Mender(Salvaged& salvaged)
        : m_book(salvaged.book)
        , m_problems(salvaged.problems)
    {
    }

    void mend()
    {
        mendQuestions();
        mendWords();
        mendReasons();
        mendPictures();
        mendMeetings();
        mendWall();
        mendTranslations();
    }

private:
    template <class T, class Mend> void each(Table<T>& table, Mend mendOne)
    {
        const Table<T> all = table;
        for (auto [id, value] : all.rows()) {
            const T before = value;
            if (!mendOne(value))
                table.remove(id);
            else if (!(value == before))
                table.put(value);
        }
    }

    template <class T> bool keepIfThere(const Table<T>& table, decltype(T::id)& id)
    {
        if (id.isValid() && !table.contains(id))
            id = {};
        return id.isValid();
    }

    // Both are looked at, whatever the first says.
    template <class T> bool keepShown(T& one)
    {
        const bool quote = keepIfThere(m_book.quotes, one.quote);
        const bool picture = keepIfThere(m_book.pictures, one.picture);
        return quote || picture;
    }

    template <class T>
    void keepThere(const Table<T>& table, std::vector<decltype(T::id)>& ids) const
    {
        std::erase_if(ids, [&](auto id) { return !table.contains(id); });
    }

    // Words and pictures are not lost because what they belong to is.
    void needExperience(ExperienceId& id)
    {
        if (m_book.experiences.contains(id))
            return;
        Experience stand;
        stand.id = id.isValid() ? id : m_book.experiences.newId();
        stand.title = QStringLiteral("Lost title %1").arg(stand.id.number());
        id = stand.id;
        m_book.experiences.put(stand);
        m_problems << QStringLiteral("An experience is lost; what it held is under \"%1\".")
                          .arg(stand.title);
    }

    void needChild(ChildId& id)
    {
        if (m_book.children.contains(id))
            return;
        Child stand; // allowed nothing
        stand.id = id.isValid() ? id : m_book.children.newId();
        stand.name = QStringLiteral("Lost name %1").arg(stand.id.number());
        id = stand.id;
        m_book.children.put(stand);
        m_problems
            << QStringLiteral("A child is lost; the words are under \"%1\".").arg(stand.name);
    }

    void needDisplay(DisplayId& id)
    {
        if (m_book.displays.contains(id))
            return;
        Display stand;
        stand.id = id.isValid() ? id : m_book.displays.newId();
        stand.name = QStringLiteral("Lost display %1").arg(stand.id.number());
        stand.audience = Audience::Public; // for whom the least may be shown
        id = stand.id;
        m_book.displays.put(stand);
        m_problems
            << QStringLiteral("A display is lost; its panels are under \"%1\".").arg(stand.name);
    }

    void needPanel(PanelId& id)
    {
        if (m_book.panels.contains(id))
            return;
        Panel stand;
        stand.id = id.isValid() ? id : m_book.panels.newId();
        DisplayId display = m_lostPanels;
        needDisplay(display);
        m_lostPanels = display;
        stand.display = display;
        stand.number = ++m_lostNumber;
        id = stand.id;
        m_book.panels.put(stand);
    }

    void mendQuestions()
    {
        each(m_book.promptSets, [&](PromptSet& one) {
            for (Prompt& prompt : one.prompts)
                keepIfThere(m_book.pictures, prompt.picture);
            return true;
        });
        each(m_book.experiences, [&](Experience& one) {
            keepIfThere(m_book.promptSets, one.promptSet);
            keepIfThere(m_book.experiences, one.follows);
            return true;
        });
    }

    void mendWords()
    {
        each(m_book.meetings, [&](Meeting& one) {
            needExperience(one.experience);
            return true;
        });
        each(m_book.quotes, [&](Quote& one) {
            needExperience(one.experience);
            needChild(one.child);
            keepIfThere(m_book.meetings, one.meeting);
            keepIfThere(m_book.pictures, one.sheet);
            keepIfThere(m_book.pictures, one.drawing);
            keepIfThere(m_book.quotes, one.repliesTo);
            keepThere(m_book.goals, one.goals);
            return true;
        });
        each(m_book.observations, [&](Observation& one) {
            needExperience(one.experience);
            keepThere(m_book.children, one.children);
            keepIfThere(m_book.pictures, one.picture);
            return true;
        });
    }

    // A record without its child allows nobody anything, and a reason without one says nothing.
    void mendReasons()
    {
        each(m_book.permissionRecords,
            [&](PermissionRecord& one) { return m_book.children.contains(one.child); });
        each(m_book.noAnswers, [&](NoAnswer& one) {
            return m_book.children.contains(one.child)
                && m_book.experiences.contains(one.experience);
        });
        each(m_book.reflections, [&](Reflection& one) {
            needExperience(one.experience);
            return true;
        });
    }

    void mendPictures()
    {
        each(m_book.pictures, [&](Picture& one) {
            needExperience(one.experience);
            const bool ofWall = one.display.isValid();
            if (!keepIfThere(m_book.displays, one.display) && ofWall)
                one.people.lookedAt = false; // it shows panels, and nobody knows which any more
            const std::size_t known = one.people.children.size();
            keepThere(m_book.children, one.people.children);
            // One who is lost may be in it, and what was wished for them is lost too.
            if (one.people.children.size() != known) {
                one.people.lookedAt = false;
                m_problems
                    << QStringLiteral("Who is in %1 is not known any more.").arg(one.fileName);
            }
            return true;
        });
    }

    void mendMeetings()
    {
        each(m_book.groups, [&](Group& one) {
            needExperience(one.experience);
            keepThere(m_book.quotes, one.quotes);
            return true;
        });
        each(m_book.keptPairs, [&](KeptPair& one) {
            return m_book.quotes.contains(one.answer) && m_book.quotes.contains(one.other);
        });
        each(m_book.meetings, [&](Meeting& one) {
            keepThere(m_book.groups, one.groups);
            keepThere(m_book.quotes, one.readOut);
            keepThere(m_book.groups, one.carriedOver);
            for (MeetingNote& note : one.happened) {
                keepIfThere(m_book.groups, note.group);
                keepIfThere(m_book.children, note.child);
            }
            return true;
        });
    }

    void mendWall()
    {
        each(m_book.displays, [&](Display& one) {
            keepIfThere(m_book.experiences, one.experience);
            return true;
        });
        each(m_book.panels, [&](Panel& one) {
            needDisplay(one.display);
            keepThere(m_book.goals, one.goals);
            return true;
        });
        int lost = 0;
        each(m_book.pieces, [&](Piece& one) {
            const bool pointed = one.quote.isValid() || one.picture.isValid();
            const bool points = keepShown(one);
            const bool stays = points || !pointed;
            if (stays)
                needPanel(one.panel);
            lost += stays ? 0 : 1;
            return stays;
        });
        if (lost > 0)
            m_problems << QStringLiteral("%1 pieces are taken off panels: what they show is lost.")
                              .arg(lost);
    }

    void mendTranslations()
    {
        each(m_book.translations, [&](Translation& one) {
            const bool pointed = one.quote.isValid() || one.picture.isValid();
            const bool points = keepShown(one);
            const bool stays = m_book.experiences.contains(one.experience) && (points || !pointed);
            if (!stays)
                m_problems << QStringLiteral("A translation is lost: %1.").arg(one.text.left(60));
            return stays;
        });
    }

    Book& m_book;
    QStringList& m_problems;
    DisplayId m_lostPanels; // the stand-in that holds stand-ins for panels
    int m_lostNumber = 0;
};

} // namespace

void mendReferences(Salvaged& salvaged)
{
    Mender(salvaged).mend();
}

} // namespace wainscot
