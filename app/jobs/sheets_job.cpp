#include "app/jobs/sheets_job.h"

#include "app/jobs/made_files.h"
#include "core/base/says.h"
#include "core/store/originals.h"
#include "layout/paper/answer_sheets_file.h"
#include "layout/paper/original_pictures.h"

namespace wainscot {

namespace {

constexpr Mm kLeastWidth{147}; // A5 upright, below which no box is left

std::optional<Error> misuse(const AnswerSheetWishes& wishes)
{
    const auto wrong = [](const QString& why) {
        return Error{ErrorCode::WrongUse, Says::tr("The sheets"), why};
    };
    if (!wishes.forChildren && !wishes.forScribe)
        return wrong(Says::tr("say whether they are for the children or for the scribe"));
    if (wishes.perPage != 1 && wishes.perPage != 2)
        return wrong(Says::tr("one or two stand on a page"));
    const Mm width = wishes.perPage == 2 ? wishes.paper.height / 2 : wishes.paper.width;
    const Mm least = wishes.perPage == 2 ? Mm(139) : kLeastWidth; // half of US Letter
    if (width < least)
        return wrong(Says::tr("the paper is too small; take A4 or Letter"));
    return std::nullopt;
}

} // namespace

Result<ClearedSheets> SheetsJob::cleared(const Book& book, QDate today) const
{
    const Experience* found = experienceByTitle(book, experience);
    if (found == nullptr)
        return Error{ErrorCode::NotFound,
            Says::tr("The experience \"%1\"").arg(experience),
            Says::tr("this book has no experience of that title")};
    std::vector<ChildId> children;
    if (!child.isEmpty()) {
        const Child* one = childByName(book, child);
        if (one == nullptr)
            return Error{ErrorCode::NotFound,
                Says::tr("The child \"%1\"").arg(child),
                Says::tr("the class list has nobody of that name")};
        children.push_back(one->id);
    }
    if (book.children.isEmpty())
        return ClearedSheets::forNobody(book, found->id, languages, today);
    return ClearedSheets::of(book, found->id, children, languages, today);
}

Result<SheetsOutcome> SheetsJob::run(const Book& book, const JobRun& run) const
{
    if (const auto error = misuse(wishes))
        return *error;
    const Result<ClearedSheets> sheets = cleared(book, run.today);
    if (!sheets)
        return sheets.error();
    OriginalPictures pictures([originals = Originals(picturesFolder)](const ClearedPicture& one) {
        return originals.pathOf(one.sha256);
    });
    PaperWatch watch;
    watch.cancel = run.cancel;
    const Result<PaperReport> report =
        writeAnswerSheets(file, *sheets, wishes, pictures, PaperOptions{}, watch);
    if (!report)
        return report.error();
    return SheetsOutcome{file,
        report->pages,
        sheets->leftOut(),
        madeFileOf(book, *sheets, MadeFileKind::AnswerSheets, file, run.today)};
}

} // namespace wainscot
