// A teacher's own templates: kept from a panel as it hangs, shared as a file.
#pragma once

#include "app/jobs/job_run.h"
#include "core/edit/edit.h"

#include <QString>

namespace wainscot {

struct TemplateOutcome {
    PanelTemplate made;
    bool replaces = false; // the book had a template of that name
    Edit edit; // to be performed by the caller
};

// "Keep this as a template". WrongUse for a name that is empty or one of the program's own.
struct KeepTemplateJob {
    QString display; // name
    int panel = 1; // 1-based
    QString name; // of the template

    [[nodiscard]] Result<TemplateOutcome> run(const Book& book) const;
};

// Takes a template in from a file; its faults name file, field and cause (core/model/
// template_file.h).
struct TakeTemplateJob {
    QString file;

    [[nodiscard]] Result<TemplateOutcome> run(const Book& book) const;
};

} // namespace wainscot
