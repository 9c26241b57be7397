#include "app/jobs/book_jobs.h"

#include "app/jobs/gather.h"
#include "app/jobs/gather_common.h"
#include "core/base/commit_file.h"
#include "core/store/book_store.h"
#include "samples/sample_class.h"

#include <QDir>
#include <QSaveFile>

namespace wainscot {

namespace {

// Remembers what made the book beside it, so that a second run leaves it alone.
class Marker {
public:
    explicit Marker(const SampleJob& job)
        : m_path(QDir(job.folder).filePath(QStringLiteral(".sample")))
        , m_text(QStringLiteral("seed %1, children %2, photos %3, small %4\n")
                     .arg(job.seed)
                     .arg(job.children)
                     .arg(job.photos)
                     .arg(job.small ? 1 : 0)
                     .toUtf8())
    {
    }
    [[nodiscard]] bool isSame() const
    {
        QFile file(m_path);
        return file.open(QIODevice::ReadOnly) && file.readAll() == m_text;
    }
    [[nodiscard]] Result<> write() const
    {
        QSaveFile file(m_path);
        if (!file.open(QIODevice::WriteOnly) || file.write(m_text) != m_text.size()
            || !commitWhole(file))
            return Error{ErrorCode::CannotWrite, m_path, file.errorString()};
        return Done{};
    }

private:
    QString m_path;
    QByteArray m_text;
};

samples::Wish wishOf(const SampleJob& job)
{
    samples::Wish wish;
    wish.seed = job.seed;
    if (job.children > 0)
        wish.children = job.children;
    if (job.photos > 0)
        wish.photos = job.photos;
    wish.small = job.small;
    return wish;
}

Result<> keep(BookStore& store, Result<GatherOutcome> gathered)
{
    if (!gathered)
        return gathered.error();
    return store.history().perform(std::move(gathered->edit));
}

void addAdultSide(const samples::SampleExperience& told, const Book& book, EditBuilder& edit)
{
    const Experience* known = experienceByTitle(book, told.title);
    if (known == nullptr)
        return;
    Experience experience = *known;
    experience.place = told.place;
    experience.materials = told.materials;
    experience.sense = told.sense;
    experience.context = told.context;
    experience.interpretation = told.interpretation;
    experience.nextSteps = told.nextSteps;
    experience.credits = told.credits;
    experience.invitation = told.invitation;
    edit.put(experience);
}

void addToWords(const samples::SampleClass& sample, const Book& book, EditBuilder& edit)
{
    for (const auto& [id, quote] : book.quotes.rows()) {
        Quote value = quote;
        for (const samples::StarredWords& starred : sample.stars) {
            const Experience* experience = experienceByTitle(book, starred.experience);
            const Child* child = childCalled(book, starred.child);
            if (experience != nullptr && child != nullptr && quote.experience == experience->id
                && quote.child == child->id && quote.prompt == starred.prompt)
                value.stars = starred.stars;
        }
        for (const samples::TellsIn& teller : sample.languages) {
            const Child* child = childCalled(book, teller.child);
            if (child != nullptr && quote.child == child->id)
                value.language = teller.language;
        }
        if (!(value == quote))
            edit.put(value);
    }
}

void addToPictures(const samples::SampleClass& sample, const Book& book, EditBuilder& edit)
{
    for (const auto& [id, picture] : book.pictures.rows()) {
        for (const samples::PictureNote& note : sample.pictures) {
            if (note.file != picture.fileName)
                continue;
            Picture value = picture;
            value.stars = note.stars;
            value.mustStay = note.mustStay;
            edit.put(value);
        }
    }
}

void addMeetings(const samples::SampleClass& sample, const Book& book, EditBuilder& edit)
{
    for (const samples::MeetingNote& note : sample.meetings) {
        const Experience* experience = experienceByTitle(book, note.experience);
        if (experience == nullptr)
            continue;
        Meeting meeting;
        meeting.id = edit.newId<Meeting>();
        meeting.experience = experience->id;
        meeting.on = note.on;
        meeting.notes = note.notes;
        meeting.done = true;
        edit.put(meeting);
        for (const Quote* quote : quotesOf(book, experience->id)) {
            if (!note.holdsQuotes || quote->on != note.on)
                continue;
            Quote told = *quote;
            told.meeting = meeting.id;
            edit.put(told);
        }
    }
}

QuoteId quoteFor(const samples::TranslatedText& text, const Book& book, ExperienceId experience)
{
    const Child* child = childCalled(book, text.child);
    for (const Quote* quote : quotesOf(book, experience)) {
        if (child != nullptr && quote->child == child->id && quote->prompt == text.prompt)
            return quote->id;
    }
    return {};
}

void addTranslations(const samples::SampleClass& sample, const Book& book, EditBuilder& edit)
{
    for (const samples::TranslatedText& text : sample.translations) {
        const Experience* experience = experienceByTitle(book, text.experience);
        const auto what = translatedFromName(text.what);
        if (experience == nullptr || !what)
            continue;
        Translation translation;
        translation.experience = experience->id;
        translation.what = *what;
        translation.language = text.language;
        translation.text = text.text;
        if (*what == Translated::Words)
            translation.quote = quoteFor(text, book, experience->id);
        for (const Picture* picture : picturesOf(book, experience->id)) {
            if (*what == Translated::Caption && picture->fileName == text.file)
                translation.picture = picture->id;
        }
        const bool points = translation.quote.isValid() || translation.picture.isValid();
        const bool needsTo = *what == Translated::Words || *what == Translated::Caption;
        if (needsTo && !points)
            continue; // fewer pictures were wished for
        translation.id = edit.newId<Translation>();
        edit.put(translation);
    }
}

Result<> gatherSample(BookStore& store, const samples::SampleClass& sample, const JobRun& run)
{
    const GatherChildrenJob children{sample.childrenFile};
    if (const auto kept = keep(store, children.run(store.book(), run)); !kept)
        return kept.error();
    for (const samples::SampleExperience& told : sample.experiences) {
        const GatherQuotesJob quotes{told.quotesFile, told.title, told.on};
        if (const auto kept = keep(store, quotes.run(store.book(), run)); !kept)
            return kept.error();
        const GatherPhotosJob photos{
            told.picturesFolder, told.title, store.picturesFolder(), told.on};
        if (const auto kept = keep(store, photos.run(store.book(), run)); !kept)
            return kept.error();
    }
    EditBuilder edit(store.book(), QStringLiteral("Add what the adult noted"));
    for (const samples::SampleExperience& told : sample.experiences)
        addAdultSide(told, store.book(), edit);
    addToWords(sample, store.book(), edit);
    addToPictures(sample, store.book(), edit);
    addMeetings(sample, store.book(), edit);
    addTranslations(sample, store.book(), edit);
    return store.history().perform(edit.take());
}

Result<std::unique_ptr<BookStore>> makeBook(
    const QString& folder, const samples::SampleClass& sample, const JobRun& run)
{
    BookInfo info;
    info.title = sample.title;
    auto store = BookStore::create(folder, info);
    if (!store)
        return store.error();
    if (const auto gathered = gatherSample(**store, sample, run); !gathered) {
        store->reset();
        QDir(folder).removeRecursively(); // made a moment ago, by this call
        return gathered.error();
    }
    return store;
}

} // namespace

Result<SampleOutcome> SampleJob::run(const JobRun& run) const
{
    const Marker marker(*this);
    const QString book = QDir(folder).filePath(QStringLiteral("book"));
    const bool isThere = QDir(book).exists();
    if (isThere && !marker.isSame()) {
        return Error{ErrorCode::WrongUse,
            book,
            QStringLiteral("another book is there already; choose another folder")};
    }
    const Result<samples::SampleClass> sample = samples::writeSample(
        folder,
        wishOf(*this),
        [&run](const QString& doing, int done, int of) {
            run.report(QStringLiteral("Making %1").arg(doing), done, of);
        },
        run.cancel);
    if (!sample)
        return sample.error();
    auto store = isThere ? BookStore::open(book, Access::ReadOnly) : makeBook(book, *sample, run);
    if (!store)
        return store.error();
    if (const auto marked = marker.write(); !marked)
        return marked.error();
    SampleOutcome outcome;
    outcome.book = book;
    outcome.files.append(sample->childrenFile);
    for (const samples::SampleExperience& told : sample->experiences)
        outcome.files << told.quotesFile << told.picturesFolder;
    outcome.children = static_cast<int>((*store)->book().children.size());
    outcome.quotes = static_cast<int>((*store)->book().quotes.size());
    outcome.pictures = static_cast<int>((*store)->book().pictures.size());
    return outcome;
}

} // namespace wainscot
