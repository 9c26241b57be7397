#include "app/jobs/template_job.h"

#include "app/jobs/sentences.h"
#include "core/base/says.h"
#include "core/model/template_file.h"
#include "layout/engine/plan.h"

namespace wainscot {

namespace {

std::optional<Error> faultIn(const QString& name)
{
    if (name.simplified().isEmpty())
        return Error{ErrorCode::WrongUse, Says::tr("A template needs a name"), {}};
    if (engine::planByName(name.simplified().toStdString()) != nullptr) {
        return Error{ErrorCode::WrongUse,
            quoted(name.simplified()),
            Says::tr("the program's own template has this name")};
    }
    return std::nullopt;
}

// A template of the same name is replaced.
Result<TemplateOutcome> putInto(const Book& book, PanelTemplate made)
{
    if (const auto fault = faultIn(made.name))
        return *fault;
    TemplateOutcome outcome;
    EditBuilder edit(book, Says::tr("Keep the template %1").arg(made.name));
    const PanelTemplate* known = templateByName(book, made.name);
    outcome.replaces = known != nullptr;
    made.id = known != nullptr ? known->id : edit.newId<PanelTemplate>();
    edit.put(made);
    outcome.made = std::move(made);
    outcome.edit = edit.take();
    return outcome;
}

} // namespace

Result<TemplateOutcome> KeepTemplateJob::run(const Book& book) const
{
    const Display* known = displayByName(book, display);
    if (known == nullptr) {
        return Error{ErrorCode::NotFound,
            Says::tr("The display \"%1\"").arg(display),
            Says::tr("this book has no display of that name")};
    }
    const auto panels = panelsOf(book, known->id);
    if (panel < 1 || panel > static_cast<int>(panels.size())) {
        return Error{ErrorCode::NotFound,
            Says::tr("Panel %1 of \"%2\"").arg(panel).arg(known->name),
            Says::tr("it has %1").arg(panels.size())};
    }
    const auto pieces = piecesOf(book, panels[static_cast<std::size_t>(panel - 1)]->id);
    PanelTemplate made = templateOf(*known, pieces);
    made.name = name.simplified();
    if (made.places.empty()) {
        return Error{ErrorCode::Refused,
            Says::tr("Panel %1 of \"%2\"").arg(panel).arg(known->name),
            Says::tr("nothing stands on it yet")};
    }
    return putInto(book, std::move(made));
}

Result<TemplateOutcome> TakeTemplateJob::run(const Book& book) const
{
    auto read = readTemplate(file);
    if (!read)
        return read.error();
    return putInto(book, std::move(*read));
}

} // namespace wainscot
