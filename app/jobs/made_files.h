// Files made of the book and families' answers: what one holds, and which of them hold what may not
// be seen any more.
#pragma once

#include "app/jobs/job_run.h"
#include "core/model/book.h"
#include "core/permit/cleared_sheets.h"
#include "core/permit/cleared_term.h"
#include "core/store/made_files.h"

#include <vector>

namespace wainscot {

// For the book to remember. `file` may have a folder; only its name is kept. `only`: where it holds
// nothing of the panels but this piece.
[[nodiscard]] MadeFile madeFileOf(const Book& book,
    const Display& display,
    const std::vector<ClearedPanel>& panels,
    MadeFileKind kind,
    const QString& file,
    QDate on,
    PieceId only = {});
[[nodiscard]] MadeFile madeFileOf(const ClearedTerm& term, const QString& file);
// `name`: of the file, or of what was printed (the experience).
[[nodiscard]] MadeFile madeFileOf(const Book& book,
    const ClearedSheets& sheets,
    MadeFileKind kind,
    const QString& name,
    QDate on);
// Of the hanging list of a wall that was printed: one for each audience its panels hang for.
[[nodiscard]] std::vector<MadeFile> printedHangingList(
    const Book& book, const Wall& wall, QDate on);
// Of everything the book holds: a packed book, data.
[[nodiscard]] MadeFile madeFileOf(MadeFileKind kind, const QString& file, QDate on);

// "the term's file autumn.pdf of 18 December 2026"
[[nodiscard]] QString inWords(const MadeFile& made);
// "The term's file autumn.pdf of 18 December 2026: make it anew."
[[nodiscard]] QString whatToDo(const MadeFile& made);

// A file to make anew: its audience may not see all of it now.
struct OutdatedFile {
    MadeFile file;
    std::vector<ChildId> children; // whose families said no
    QStringList why; // sentences, ready to read
};

// What is cleared for nobody (packed books, data) is not among them, for nobody is shown it.
struct OutdatedFilesJob {
    QString child; // only what concerns this one, by name; empty = everybody
    // NotFound when nobody is called so.
    Result<std::vector<OutdatedFile>> run(
        const Book& book, const std::vector<MadeFile>& made, const JobRun& run) const;
};

// In words, those that hold something of the child: words, a picture or the name; packed books and
// data hold everything.
[[nodiscard]] QStringList filesThatHold(
    const Book& book, const std::vector<MadeFile>& made, ChildId child);

// The same before somebody is erased, asked of the book in a folder; nothing when there is no such
// child.
[[nodiscard]] QStringList filesThatHold(
    const QString& bookFolder, const Book& book, const QString& child);

// Those the book in a folder knows; nothing when it cannot be read.
[[nodiscard]] std::vector<MadeFile> madeFilesIn(const QString& bookFolder);
// False where nothing can be written.
bool rememberMade(
    const QString& bookFolder, const MadeFile& made, Earlier earlier = Earlier::Replaced);

} // namespace wainscot
