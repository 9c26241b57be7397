#include "app/jobs/erase_plan.h"

#include "app/jobs/name_scrubber.h"
#include "core/model/tables.h"
#include "core/model/wall_photo.h"

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

// With other children in it, or with all that hung on a wall.
bool isShared(const Picture& picture)
{
    return picture.people.children.size() > 1 || picture.display.isValid();
}

class Eraser {
public:
    Eraser(const Book& book, ChildId child, const KeptPictures& kept)
        : m_book(book)
        , m_reach(book, child, kept)
        , m_name(book, child)
        , m_scrubber(m_name, m_reach)
        , m_edit(book, {}) // no label: the name must not stay in one either
    {
    }

    ErasePlan plan()
    {
        erasePictures();
        erasePieces();
        m_plan.quotes = erase<Quote>();
        erase<Translation>();
        erase<PermissionRecord>();
        erase<NoAnswer>();
        erase<KeptPair>();
        scrubInfo();
        scrubTables<Child,
            PermissionRecord,
            PromptSet,
            NoAnswer,
            Reflection,
            Goal,
            Experience,
            Quote,
            Observation,
            Picture,
            Group,
            Meeting,
            Display,
            Wall,
            Panel,
            Piece,
            Translation,
            PanelTemplate>();
        m_edit.remove<Child>(m_reach.child());
        m_plan.edit = m_edit.take();
        m_plan.texts = m_name.texts();
        m_plan.alsoNamedSo = m_name.alsoNamedSo();
        return std::move(m_plan);
    }

private:
    template <class T> int erase()
    {
        int erased = 0;
        for (const auto& [id, value] : tableOf<T>(m_book).rows()) {
            if (!m_reach.has(value))
                continue;
            m_edit.remove<T>(id);
            ++erased;
        }
        return erased;
    }

    void erasePictures()
    {
        for (const auto& [id, picture] : m_book.pictures.rows()) {
            if (m_reach.kept().count(id) > 0) {
                m_plan.kept << picture.fileName;
                m_plan.sha256 << picture.sha256;
            }
            if (!m_reach.has(picture))
                continue;
            m_edit.remove<Picture>(id);
            m_plan.pictures << picture.fileName;
            m_plan.sha256 << picture.sha256;
            if (isShared(picture))
                m_plan.shared << picture.fileName;
        }
    }

    void erasePieces()
    {
        for (const auto& [id, piece] : m_book.pieces.rows()) {
            if (!m_reach.has(piece))
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

    template <class... T> void scrubTables() { (scrubTable<T>(), ...); }

    template <class T> void scrubTable()
    {
        for (const auto& [id, value] : tableOf<T>(m_book).rows()) {
            if (m_reach.has(value))
                continue;
            T changed = asKept(value);
            m_scrubber.scrub(changed);
            if (!(changed == value))
                m_edit.put(changed);
        }
    }

    template <class T> [[nodiscard]] const T& asKept(const T& value) const { return value; }
    [[nodiscard]] const Picture& asKept(const Picture& picture) const
    {
        const auto kept = m_reach.kept().find(picture.id);
        return kept == m_reach.kept().end() ? picture : kept->second;
    }

    void scrubInfo()
    {
        BookInfo info = m_book.info;
        m_name.inAdultsText(info.title);
        m_edit.setInfo(info);
    }

    const Book& m_book;
    EraseReach m_reach;
    NameEraser m_name;
    NameScrubber m_scrubber;
    EditBuilder m_edit;
    ErasePlan m_plan;
};

} // namespace

Result<ErasePlan> planErasing(const Book& book, const QString& child, const KeptPictures& kept)
{
    const auto id = childCalled(book, child);
    if (!id)
        return id.error();
    return Eraser(book, *id, kept).plan();
}

Result<std::vector<Picture>> sharedPictures(const Book& book, const QString& child)
{
    const auto id = childCalled(book, child);
    if (!id)
        return id.error();
    std::vector<Picture> shared;
    for (const auto& [key, picture] : book.pictures.rows()) {
        if (isShared(picture) && shows(book, picture, *id))
            shared.push_back(picture);
    }
    return shared;
}

} // namespace wainscot
