// A book on disk: a folder with `book.wainscot` (SQLite) and `pictures/` (originals by SHA-256).
#pragma once

#include "core/base/result.h"
#include "core/edit/edit.h"
#include "core/store/originals.h"

#include <QDateTime>
#include <QList>
#include <QString>
#include <QStringList>

#include <functional>
#include <memory>

namespace wainscot {

enum class EditSide;

enum class Access { ReadWrite, ReadOnly };

// What checking the whole book found.
struct VerifyReport {
    int pictures = 0; // originals looked at
    QStringList problems; // sentences: a damaged database, a picture missing or changed
    QStringList orphans; // files in pictures/ that no row mentions (undone work); no problem
    [[nodiscard]] bool ok() const { return problems.isEmpty(); }
};

// The book as it was before the first change of an earlier day.
struct EarlierState {
    QString name; // "2026-11-29T08-15-00"
    QDateTime at; // local time
    int children = 0;
    int quotes = 0;
    int panels = 0;
};

// An open book. One writer at a time, held by a lock file; anybody else may read. Every edit is
// one transaction: saved whole or not at all. To be used on the thread that opened it.
class BookStore final : public EditSink {
public:
    // A new book with the default prompt set. The folder must not exist or be empty (WrongUse
    // otherwise); what was made is taken away again when something fails.
    static Result<std::unique_ptr<BookStore>> create(const QString& folder, const BookInfo& info);

    // `path` is the folder or its book.wainscot. NotFound; Damaged (no book, or a broken one);
    // TooNew; for writing also InUse (another program writes it) and CannotWrite (read-only). A
    // book of an earlier version is brought up to date when it is opened for writing.
    static Result<std::unique_ptr<BookStore>> open(
        const QString& path, Access access = Access::ReadWrite);

    ~BookStore() override;

    [[nodiscard]] const Book& book() const;
    [[nodiscard]] History& history(); // the way to change the book
    [[nodiscard]] bool isReadOnly() const;
    [[nodiscard]] QString folder() const;
    [[nodiscard]] QString picturesFolder() const;

    // Keeps a copy of a picture file; see Originals::keep.
    Result<QString> keepOriginal(const QString& filePath);
    [[nodiscard]] QString originalPath(const QString& sha256) const;

    // Performs an edit so that nothing of what it takes out is left in the book's files: not in
    // steps that can be undone (all are forgotten), not in free room of the database, not as an
    // original that no picture mentions any more, not in an earlier state (all are forgotten). What
    // was begun is finished when the book is opened for writing again. Other copies (backups,
    // packs, prints) are out of its reach.
    Result<> eraseForever(const Edit& edit);

    // Checks the database and the SHA-256 of every picture. `progress` gets (done, of) and stops
    // the check by answering false (Cancelled).
    Result<VerifyReport> verify(const std::function<bool(int, int)>& progress = {});

    // States kept by themselves: before the first edit of a day, before the first edit after
    // opening where the newest is an hour old, and before the book is brought up
    // to a new version. Thinned out with age and bounded in size; newest first. One that cannot be
    // kept (a full disk) hinders no edit.
    [[nodiscard]] QList<EarlierState> earlierStates() const;
    Result<Book> earlierState(const QString& name) const; // NotFound, Damaged

    // The database as it is now in a file of its own, which must not be there; nothing that was
    // deleted is in it. CannotWrite.
    Result<> copyDatabaseTo(const QString& file);

    // The database may not grow beyond this, as if the disk were full (SQLite's max_page_count).
    // Less than it takes now means: not at all.
    Result<> limitSize(qint64 bytes);

    // Called by history().
    Result<> save(const Edit& edit) override;
    Result<> saveReverted(const Edit& edit) override;

private:
    struct Open;
    using Opened = Result<std::unique_ptr<BookStore>>;
    explicit BookStore(std::unique_ptr<Open> open);
    static Opened makeIn(const QString& folder, const BookInfo& info);
    static Opened openForWriting(const QString& folder, const QString& file);
    static Opened openForReading(const QString& folder, const QString& file);
    static Opened loaded(std::unique_ptr<Open> open, const QString& file);
    Result<> write(const Edit& edit, EditSide side);
    Result<> finishErasing(); // that was begun
    void keepEarlierState(); // once a day
    std::unique_ptr<Open> m_open;
};

} // namespace wainscot
