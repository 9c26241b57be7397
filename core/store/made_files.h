// What is known about a book beside what it holds: files made of it that may still be somewhere,
// and how long it is to be kept.
//
// Nothing of an open book in memory depends on these, and none of them is a step of undo. So they
// are read and written past it, also while it is open here or elsewhere; SQLite keeps writers
// apart.
#pragma once

#include "core/base/result.h"
#include "core/model/ids.h"
#include "core/model/permission.h"

#include <QDate>
#include <QString>

#include <optional>
#include <set>
#include <vector>

namespace wainscot {

enum class MadeFileKind {
    Panels, // a display as PDF, whole or in sheets
    PanelPictures, // a display as PNG
    TermFile,
    PackedBook, // this and data hold everything, cleared for nobody
    Data,
    AnswerSheets, // sheets for the children to answer on, as PDF
    PrintedPanels, // what went to a printer has no file: it is named by its display,
    PrintedAnswerSheets, // by its experience,
    PrintedHangingList, // or by its wall, which it shows with its panels in small
};

struct MadeFile {
    MadeFileKind kind = MadeFileKind::Panels;
    QString
        name; // of the file alone, never the folder it is in; empty = it told of an erased child
    QDate on;
    std::optional<Audience> audience; // nothing = cleared for nobody
    // What is in it, by numbers of the book. Softly: what is gone from the book stays mentioned.
    std::set<DisplayId> displays;
    std::set<ExperienceId> experiences;
    std::set<QuoteId> words;
    std::set<PictureId> pictures;
    std::set<ChildId> named; // who is named in it, or may be
    friend bool operator==(const MadeFile&, const MadeFile&) = default;
};

[[nodiscard]] QString nameOf(MadeFileKind kind); // "panels", "panel_pictures", "term_file" ...
[[nodiscard]] bool isOnPaper(MadeFileKind kind);
[[nodiscard]] std::optional<MadeFileKind> madeFileKindFromName(const QString& name);

// `book` is its folder or its book.wainscot. Errors of all: NotFound, Damaged, and CannotRead for a
// book of an earlier version, which is brought up to date when it is opened for writing.

// In the order they were made.
Result<std::vector<MadeFile>> madeFilesOf(const QString& book);
// What becomes of one of the same kind, name and audience.
enum class Earlier {
    Replaced, // it is the same file, made anew
    Joined, // only some sheets were printed again: what the others hold is still about
};
// Also CannotWrite.
Result<> rememberMadeFile(
    const QString& book, const MadeFile& made, Earlier earlier = Earlier::Replaced);

// The last day the book is to be kept; after it, it asks to be packed away or erased.
Result<std::optional<QDate>> keptUntil(const QString& book);
Result<> keepUntil(const QString& book, const std::optional<QDate>& day); // also CannotWrite

} // namespace wainscot
