#include "app/jobs/erase_plan.h"

#include "core/model/tables.h"
#include "core/permit/name_finder.h"

#include <QFileInfo>

#include <algorithm>
#include <set>

namespace wainscot {

namespace {

Result<ChildId> childCalled(const Book& book, const QString& name)
{
    std::vector<ChildId> found;
    for (const auto& [id, child] : book.children.rows()) {
        if (child.name.simplified().compare(name.simplified(), Qt::CaseInsensitive) == 0)
            found.push_back(id);
    }
    if (found.empty())
        return Error{ErrorCode::NotFound,
            name,
            QStringLiteral("nobody in the class list is called so; give the whole name")};
    if (found.size() > 1)
        return Error{ErrorCode::WrongUse,
            name,
            QStringLiteral("two children are called so; rename one of them first")};
    return found.front();
}

class Eraser {
public:
    Eraser(const Book& book, ChildId child)
        : m_book(book)
        , m_child(child)
        , m_names(book.children)
        , m_edit(book, {}) // no label: the name must not stay in one either
    {
    }

    ErasePlan plan()
    {
        eraseQuotes();
        erasePictures();
        erasePieces();
        scrubTable<Experience>([this](Experience& one) { scrub(one); });
        scrubTable<Quote>([this](Quote& one) { change(one.words, true); });
        scrubTable<Observation>([this](Observation& one) { scrub(one); });
        scrubTable<Picture>([this](Picture& one) { scrub(one); });
        scrubTable<Group>([this](Group& one) { scrub(one); });
        scrubTable<Meeting>([this](Meeting& one) { change(one.notes, false); });
        scrubTable<Display>([this](Display& one) { change(one.name, false); });
        scrubTable<Piece>([this](Piece& one) { scrub(one); });
        scrubTable<Translation>(
            [this](Translation& one) { change(one.text, one.what == Translated::Words); });
        scrubTable<PanelTemplate>([this](PanelTemplate& one) { change(one.name, false); });
        m_edit.remove<Child>(m_child);
        m_plan.edit = m_edit.take();
        return std::move(m_plan);
    }

private:
    [[nodiscard]] bool isGone(const Quote& quote) const { return quote.child == m_child; }
    [[nodiscard]] bool isGone(const Picture& picture) const
    {
        const auto& people = picture.people.children;
        return std::find(people.begin(), people.end(), m_child) != people.end();
    }
    [[nodiscard]] bool isGone(const Piece& piece) const
    {
        const Quote* quote = m_book.quotes.find(piece.quote);
        const Picture* picture = m_book.pictures.find(piece.picture);
        return (quote != nullptr && isGone(*quote)) || (picture != nullptr && isGone(*picture));
    }
    [[nodiscard]] bool isGone(const Translation& translation) const
    {
        const Quote* quote = m_book.quotes.find(translation.quote);
        const Picture* picture = m_book.pictures.find(translation.picture);
        return (quote != nullptr && isGone(*quote)) || (picture != nullptr && isGone(*picture));
    }
    template <class T> [[nodiscard]] bool isGone(const T&) const { return false; }

    void eraseQuotes()
    {
        for (const auto& [id, quote] : m_book.quotes.rows()) {
            if (!isGone(quote))
                continue;
            m_edit.remove<Quote>(id);
            ++m_plan.quotes;
        }
        for (const auto& [id, translation] : m_book.translations.rows()) {
            if (isGone(translation))
                m_edit.remove<Translation>(id);
        }
    }

    void erasePictures()
    {
        for (const auto& [id, picture] : m_book.pictures.rows()) {
            if (!isGone(picture))
                continue;
            m_edit.remove<Picture>(id);
            m_plan.pictures << picture.fileName;
            m_plan.sha256 << picture.sha256;
            if (picture.people.children.size() > 1)
                m_plan.shared << picture.fileName;
        }
    }

    void erasePieces()
    {
        for (const auto& [id, piece] : m_book.pieces.rows()) {
            if (!isGone(piece))
                continue;
            m_edit.remove<Piece>(id);
            ++m_plan.pieces;
            const Panel* panel = m_book.panels.find(piece.panel);
            const Display* display =
                panel != nullptr ? m_book.displays.find(panel->display) : nullptr;
            if (display == nullptr)
                continue;
            const QString where =
                QStringLiteral("%1, panel %2").arg(display->name).arg(panel->number);
            if (!m_plan.takeDown.contains(where))
                m_plan.takeDown << where;
        }
    }

    template <class T, class Scrub> void scrubTable(Scrub scrubOne)
    {
        for (const auto& [id, value] : tableOf<T>(m_book).rows()) {
            if (isGone(value))
                continue;
            T changed = value;
            scrubOne(changed);
            if (!(changed == value))
                m_edit.put(changed);
        }
    }

    void scrub(Experience& one)
    {
        for (QString* text : {&one.title,
                 &one.place,
                 &one.materials,
                 &one.sense,
                 &one.goals,
                 &one.context,
                 &one.interpretation,
                 &one.nextSteps,
                 &one.invitation,
                 &one.credits})
            change(*text, false);
    }
    void scrub(Observation& one)
    {
        std::erase(one.children, m_child);
        change(one.words, false);
    }
    void scrub(Picture& one)
    {
        change(one.caption, false);
        change(one.by, false);
        if (isNamed(QFileInfo(one.fileName).completeBaseName()))
            one.fileName = QStringLiteral("picture-%1.%2")
                               .arg(one.id.number())
                               .arg(QFileInfo(one.fileName).suffix());
    }
    void scrub(Group& one)
    {
        std::erase_if(one.quotes, [this](QuoteId id) {
            const Quote* quote = m_book.quotes.find(id);
            return quote != nullptr && isGone(*quote);
        });
        change(one.label, true);
    }
    void scrub(Piece& one)
    {
        change(one.heading, false);
        change(one.text, false);
        change(one.shownWords, true);
    }

    // A file name joins words by what is no letter: "wren_on_the_step".
    [[nodiscard]] bool isNamed(QString text)
    {
        for (QChar& letter : text) {
            if (!letter.isLetter())
                letter = QLatin1Char(' ');
        }
        const auto found = m_names.in(text);
        return std::any_of(found.begin(), found.end(), [this](const NameFinder::Found& name) {
            return std::find(name.who.begin(), name.who.end(), m_child) != name.who.end();
        });
    }

    void change(QString& text, bool childsWords)
    {
        const auto found = m_names.in(text);
        QString without = text;
        for (auto name = found.rbegin(); name != found.rend(); ++name) {
            if (std::find(name->who.begin(), name->who.end(), m_child) == name->who.end())
                continue;
            if (name->who.size() > 1) {
                noteOthers(*name);
                continue;
            }
            const bool begins = text.left(name->start).trimmed().isEmpty();
            const QString instead = childsWords ? QStringLiteral("[a child]")
                : begins                        ? QStringLiteral("A child")
                                                : QStringLiteral("a child");
            without.replace(name->start, name->length, instead);
        }
        m_plan.texts += without != text ? 1 : 0;
        text = without;
    }

    void noteOthers(const NameFinder::Found& name)
    {
        for (const ChildId id : name.who) {
            const Child* child = m_book.children.find(id);
            if (id != m_child && child != nullptr && !m_plan.alsoNamedSo.contains(child->name))
                m_plan.alsoNamedSo << child->name;
        }
    }

    const Book& m_book;
    ChildId m_child;
    NameFinder m_names;
    EditBuilder m_edit;
    ErasePlan m_plan;
};

} // namespace

Result<ErasePlan> planErasing(const Book& book, const QString& child)
{
    const auto id = childCalled(book, child);
    if (!id)
        return id.error();
    return Eraser(book, *id).plan();
}

} // namespace wainscot
