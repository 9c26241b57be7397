#include "app/jobs/made_files.h"

#include "app/jobs/sentences.h"
#include "core/base/says.h"

#include <QFileInfo>

#include <algorithm>
#include <map>

namespace wainscot {

namespace {

void noteNames(const NameFinder& names, const QString& text, MadeFile& made)
{
    for (const NameFinder::Found& found : names.in(text))
        made.named.insert(found.who.begin(), found.who.end());
}

// Of one piece alone where `only` names it.
void notePanel(const Book& book,
    const NameFinder& names,
    const ClearedPanel& panel,
    PieceId only,
    MadeFile& made)
{
    if (!only.isValid())
        noteNames(names, panel.title(), made);
    for (const ClearedPiece& piece : panel.pieces()) {
        if (only.isValid() && piece.id != only)
            continue;
        if (const Piece* own = book.pieces.find(piece.id); own != nullptr && own->quote.isValid())
            made.words.insert(own->quote);
        if (piece.picture) {
            made.pictures.insert(piece.picture->id);
            noteNames(names, piece.picture->alternative, made);
        }
        for (const QString& text : {piece.heading, piece.text, piece.name, piece.secondText})
            noteNames(names, text, made);
    }
}

// A file without a display of its own counts as one: who is seen anywhere in it is named nowhere in
// it without the permission for both.
PermissionRules rulesFor(const Book& book, const MadeFile& made, QDate today)
{
    Display display;
    display.audience = *made.audience;
    display.language = book.info.language;
    return PermissionRules(book, display, today, {made.pictures.begin(), made.pictures.end()});
}

class Outdated {
public:
    Outdated(const Book& book, const MadeFile& made, QDate today)
        : m_book(book)
        , m_rules(rulesFor(book, made, today))
        , m_found{made, {}, {}}
    {
        for (const QuoteId id : made.words) {
            if (const Quote* quote = book.quotes.find(id))
                note(m_rules.refusal(*quote), {quote->child});
        }
        for (const PictureId id : made.pictures) {
            if (const Picture* picture = book.pictures.find(id))
                note(m_rules.refusal(*picture), picture->people.children);
        }
        for (const ChildId id : made.named) {
            if (const Child* child = book.children.find(id))
                note(m_rules.namingRefusal(*child), {id});
        }
    }

    [[nodiscard]] bool concerns(const Child* child) const
    {
        const auto& who = m_found.children;
        return !m_found.why.isEmpty()
            && (child == nullptr || std::find(who.begin(), who.end(), child->id) != who.end());
    }
    [[nodiscard]] OutdatedFile take() { return std::move(m_found); }

private:
    void note(const std::optional<QString>& refusal, const std::vector<ChildId>& children)
    {
        if (!refusal)
            return;
        if (!m_found.why.contains(*refusal))
            m_found.why << *refusal;
        for (const ChildId child : children) {
            auto& all = m_found.children;
            if (std::find(all.begin(), all.end(), child) == all.end())
                all.push_back(child);
        }
    }

    const Book& m_book;
    PermissionRules m_rules;
    OutdatedFile m_found;
};

bool holds(const Book& book, const MadeFile& made, ChildId child)
{
    if (!made.audience || made.named.count(child) > 0)
        return true;
    const auto isTheirs = [&](QuoteId id) {
        const Quote* quote = book.quotes.find(id);
        return quote != nullptr && quote->child == child;
    };
    const auto showsThem = [&](PictureId id) {
        const Picture* picture = book.pictures.find(id);
        if (picture == nullptr)
            return false;
        const auto& seen = picture->people.children;
        return std::find(seen.begin(), seen.end(), child) != seen.end();
    };
    return std::any_of(made.words.begin(), made.words.end(), isTheirs)
        || std::any_of(made.pictures.begin(), made.pictures.end(), showsThem);
}

} // namespace

MadeFile madeFileOf(const Book& book,
    const Display& display,
    const std::vector<ClearedPanel>& panels,
    MadeFileKind kind,
    const QString& file,
    QDate on,
    PieceId only)
{
    MadeFile made = madeFileOf(kind, file, on);
    made.audience = display.audience;
    made.displays = {display.id};
    if (display.experience.isValid())
        made.experiences = {display.experience};
    const NameFinder names(book.children);
    for (const ClearedPanel& panel : panels)
        notePanel(book, names, panel, only, made);
    return made;
}

MadeFile madeFileOf(const ClearedTerm& term, const QString& file)
{
    const TermContents& held = term.contents();
    return {MadeFileKind::TermFile,
        QFileInfo(file).fileName(),
        term.madeOn(),
        term.audience(),
        held.displays,
        held.experiences,
        held.words,
        held.pictures,
        held.named};
}

MadeFile madeFileOf(
    const Book& book, const ClearedSheets& sheets, MadeFileKind kind, const QString& name, QDate on)
{
    MadeFile made = madeFileOf(kind, name, on);
    made.audience = Audience::Classroom; // they lie on its tables
    made.experiences = {sheets.experience()};
    const NameFinder names(book.children);
    noteNames(names, sheets.title(), made);
    for (const ClearedPrompt& prompt : sheets.prompts()) {
        for (const PromptWording& wording : prompt.wordings)
            noteNames(names, wording.text, made);
        if (prompt.picture)
            made.pictures.insert(prompt.picture->id);
    }
    for (const ClearedSheetChild& child : sheets.children()) {
        if (!child.name.isEmpty())
            made.named.insert(child.id);
    }
    return made;
}

MadeFile madeFileOf(MadeFileKind kind, const QString& file, QDate on)
{
    MadeFile made;
    made.kind = kind;
    made.name = isOnPaper(kind) ? file : QFileInfo(file).fileName();
    made.on = on;
    return made;
}

std::vector<MadeFile> printedHangingList(const Book& book, const Wall& wall, QDate on)
{
    std::map<Audience, MadeFile> lists;
    const NameFinder names(book.children);
    for (const PanelOnWall& hung : wall.panels) {
        const Panel* panel = book.panels.find(hung.panel);
        const Display* display = panel != nullptr ? book.displays.find(panel->display) : nullptr;
        if (display == nullptr)
            continue;
        const auto [at, isNew] = lists.try_emplace(
            display->audience, madeFileOf(MadeFileKind::PrintedHangingList, wall.name, on));
        MadeFile& made = at->second;
        made.audience = display->audience;
        made.displays.insert(display->id);
        if (display->experience.isValid())
            made.experiences.insert(display->experience);
        notePanel(book, names, PermissionRules(book, *display, on).clear(*panel), {}, made);
    }
    std::vector<MadeFile> all;
    all.reserve(lists.size());
    for (auto& [audience, made] : lists)
        all.push_back(std::move(made));
    return all;
}

QString inWords(const MadeFile& made)
{
    const QString day = dateInWords(made.on);
    switch (made.kind) {
    case MadeFileKind::Panels:
        return Says::tr("the PDF %1 of %2").arg(made.name, day);
    case MadeFileKind::PanelPictures:
        return Says::tr("the pictures %1 of %2").arg(made.name, day);
    case MadeFileKind::TermFile:
        return Says::tr("the term's file %1 of %2").arg(made.name, day);
    case MadeFileKind::PackedBook:
        return Says::tr("the packed book %1 of %2").arg(made.name, day);
    case MadeFileKind::Data:
        return Says::tr("the data %1 of %2").arg(made.name, day);
    case MadeFileKind::AnswerSheets:
        return Says::tr("the sheets to answer on %1 of %2").arg(made.name, day);
    case MadeFileKind::PrintedPanels:
        return Says::tr("the panels %1 printed on %2").arg(quoted(made.name), day);
    case MadeFileKind::PrintedAnswerSheets:
        return Says::tr("the sheets to answer on for %1, printed on %2")
            .arg(quoted(made.name), day);
    case MadeFileKind::PrintedHangingList:
        return Says::tr("the hanging list of %1, printed on %2").arg(quoted(made.name), day);
    }
    return made.name;
}

QString whatToDo(const MadeFile& made)
{
    const QString what = capitalised(inWords(made));
    switch (made.kind) {
    case MadeFileKind::PrintedPanels:
        return Says::tr("%1: take them down and print them anew.").arg(what);
    case MadeFileKind::PrintedAnswerSheets:
        return Says::tr("%1: collect them and print them anew.").arg(what);
    case MadeFileKind::PrintedHangingList:
        return Says::tr("%1: throw it away and print it anew.").arg(what);
    default:
        return Says::tr("%1: make it anew.").arg(what);
    }
}

Result<std::vector<OutdatedFile>> OutdatedFilesJob::run(
    const Book& book, const std::vector<MadeFile>& made, const JobRun& run) const
{
    const Child* wanted = child.isEmpty() ? nullptr : childByName(book, child);
    if (!child.isEmpty() && wanted == nullptr)
        return Error{ErrorCode::NotFound, child, QStringLiteral("nobody in the book is called so")};
    std::vector<OutdatedFile> all;
    for (const MadeFile& one : made) {
        if (!one.audience)
            continue;
        Outdated outdated(book, one, run.today);
        if (outdated.concerns(wanted))
            all.push_back(outdated.take());
    }
    return all;
}

QStringList filesThatHold(const Book& book, const std::vector<MadeFile>& made, ChildId child)
{
    QStringList all;
    for (const MadeFile& one : made) {
        if (holds(book, one, child))
            all << inWords(one);
    }
    return all;
}

QStringList filesThatHold(const QString& bookFolder, const Book& book, const QString& child)
{
    const Child* meant = childByName(book, child);
    return meant != nullptr ? filesThatHold(book, madeFilesIn(bookFolder), meant->id)
                            : QStringList();
}

std::vector<MadeFile> madeFilesIn(const QString& bookFolder)
{
    const auto made = madeFilesOf(bookFolder);
    return made ? *made : std::vector<MadeFile>();
}

bool rememberMade(const QString& bookFolder, const MadeFile& made, Earlier earlier)
{
    return rememberMadeFile(bookFolder, made, earlier).ok();
}

} // namespace wainscot
