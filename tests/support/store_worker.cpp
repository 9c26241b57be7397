// A program that works on a book and is struck down, or finds its disk failing, while it does:
//   store_worker TASK PATH [PATH]; a dot on standard output for each thing that is acknowledged.
// Ends with 0 (done), 2 (called wrongly) or 3 (the store answered with an error, which it prints).
#include "core/store/book_store.h"
#include "core/store/pack.h"
#include "core/store/repair.h"
#include "tests/support/random_edits.h"

#include <QCoreApplication>
#include <QDir>

#include <cstdio>
#include <unistd.h>

namespace wainscot {

namespace {

bool acknowledge()
{
    const char dot = '.';
    return ::write(STDOUT_FILENO, &dot, 1) == 1;
}

int ended(const Result<>& result)
{
    if (result)
        return 0;
    const Error& error = result.error();
    std::fprintf(stderr,
        "%d %s: %s\n",
        int(error.code),
        qPrintable(error.subject),
        qPrintable(error.detail));
    return 3;
}

template <class T> int ended(const Result<T>& result)
{
    return ended(result ? Result<>(Done{}) : Result<>(result.error()));
}

int makeNew(const QString& folder)
{
    return ended(BookStore::create(folder, {QStringLiteral("Robins"), {}}));
}

// Random edits until struck down.
int editForEver(const QString& folder, const QString& seed)
{
    const auto store = BookStore::open(folder);
    if (!store)
        return ended(store);
    RandomEdits edits(seed.toUInt());
    for (;;) {
        const auto done = (*store)->history().perform(edits.next((*store)->book()));
        if (!done || !acknowledge())
            return ended(done);
    }
}

// Every file of a folder as a picture of its own step.
int gather(const QString& folder, const QString& pictures)
{
    const auto store = BookStore::open(folder);
    if (!store)
        return ended(store);
    const ExperienceId experience = (*store)->book().experiences.rows().begin()->first;
    for (const QString& name : QDir(pictures).entryList(QDir::Files, QDir::Name)) {
        const auto kept = (*store)->keepOriginal(pictures + QLatin1Char('/') + name);
        if (!kept)
            return ended(kept);
        EditBuilder edit((*store)->book(), QStringLiteral("Gather"));
        Picture picture;
        picture.id = edit.newId<Picture>();
        picture.experience = experience;
        picture.sha256 = *kept;
        picture.fileName = name;
        edit.put(picture);
        const auto done = (*store)->history().perform(edit.take());
        if (!done)
            return ended(done);
        acknowledge();
    }
    return 0;
}

int pack(const QString& folder, const QString& file)
{
    const auto store = BookStore::open(folder, Access::ReadOnly);
    return store ? ended(packBook(**store, file)) : ended(store);
}

int unpack(const QString& file, const QString& folder)
{
    return ended(unpackBook(file, folder));
}

// Brings a book of an earlier version up to date.
int open(const QString& folder)
{
    return ended(BookStore::open(folder));
}

// Takes the book's first picture out of it for good.
int erase(const QString& folder)
{
    const auto store = BookStore::open(folder);
    if (!store)
        return ended(store);
    if ((*store)->book().pictures.isEmpty())
        return 2;
    EditBuilder edit((*store)->book(), QStringLiteral("Erase"));
    edit.remove<Picture>((*store)->book().pictures.rows().begin()->first);
    return ended((*store)->eraseForever(edit.take()));
}

int repair(const QString& folder, const QString& newFolder)
{
    return ended(repairBook(folder, newFolder));
}

int work(const QStringList& words)
{
    const QString task = words.value(1);
    const QString first = words.value(2);
    const QString second = words.value(3);
    if (task == QLatin1String("new"))
        return makeNew(first);
    if (task == QLatin1String("edit"))
        return editForEver(first, second);
    if (task == QLatin1String("gather"))
        return gather(first, second);
    if (task == QLatin1String("pack"))
        return pack(first, second);
    if (task == QLatin1String("unpack"))
        return unpack(first, second);
    if (task == QLatin1String("open"))
        return open(first);
    if (task == QLatin1String("erase"))
        return erase(first);
    if (task == QLatin1String("repair"))
        return repair(first, second);
    return 2;
}

} // namespace

} // namespace wainscot

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    return wainscot::work(QCoreApplication::arguments());
}
