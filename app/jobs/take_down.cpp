#include "app/jobs/take_down.h"

#include "core/model/wall_photo.h"
#include "core/permit/cleared.h"

#include <algorithm>

namespace wainscot {

namespace {

std::vector<ChildId> childrenOf(const LeftOut& left, const Book& book)
{
    if (left.what == QLatin1String("name"))
        return {ChildId(left.id)};
    if (left.what == QLatin1String("quote")) {
        const Quote* quote = book.quotes.find(QuoteId(left.id));
        return quote ? std::vector{quote->child} : std::vector<ChildId>();
    }
    const Picture* picture = book.pictures.find(PictureId(left.id));
    return picture ? picture->people.children : std::vector<ChildId>();
}

std::vector<ChildId> childrenOf(const Picture& photoOfWall, const Book& book)
{
    std::vector<ChildId> all;
    for (const auto& [id, child] : book.children.rows()) {
        if (shows(book, photoOfWall, id))
            all.push_back(id);
    }
    return all;
}

} // namespace

Result<std::vector<TakeDown>> TakeDownJob::run(const Book& book, const JobRun& run) const
{
    const Child* wanted = child.isEmpty() ? nullptr : childByName(book, child);
    if (!child.isEmpty() && wanted == nullptr)
        return Error{ErrorCode::NotFound, child, QStringLiteral("nobody in the book is called so")};
    std::vector<TakeDown> all;
    const auto add = [&](TakeDown one) {
        const auto& who = one.children;
        if (wanted == nullptr || std::find(who.begin(), who.end(), wanted->id) != who.end())
            all.push_back(std::move(one));
    };
    for (const auto& [id, display] : book.displays.rows()) {
        const PermissionRules rules(book, display, run.today);
        for (const Panel* panel : panelsOf(book, id)) {
            const ClearedPanel cleared = rules.clear(*panel);
            for (const LeftOut& left : cleared.leftOut()) {
                add({display.name,
                    display.audience,
                    panel->number,
                    left.what,
                    childrenOf(left, book),
                    left.why});
            }
        }
        for (const Picture* photo : wallPhotosOf(book, id)) {
            const auto why = photo->people.lookedAt ? rules.refusal(*photo) : std::nullopt;
            if (why) {
                add({display.name,
                    display.audience,
                    0,
                    nameOf(photo->kind),
                    childrenOf(*photo, book),
                    *why});
            }
        }
    }
    return all;
}

} // namespace wainscot
