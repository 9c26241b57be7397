// What a book holds, and whose words are still missing.
#pragma once

#include "app/jobs/job_run.h"
#include "core/model/book.h"

#include <QStringList>

#include <optional>
#include <vector>

namespace wainscot {

struct NotYetHeard {
    QString child; // name as in the class list
    QStringList prompts; // keys not answered yet, in the order they are asked
};

struct ExperienceSummary {
    QString title;
    std::optional<QDate> on;
    int quotes = 0;
    int photos = 0; // photos and work samples
    std::vector<NotYetHeard> notYetHeard; // children who answered none or not all prompts
};

struct DisplaySummary {
    QString name;
    QString experience;
    Audience audience = Audience::Classroom;
    SizeMm panelSize;
    int panels = 0;
};

struct ShowOutcome {
    QString title;
    std::vector<Child> children; // by name
    std::vector<ExperienceSummary> experiences;
    std::vector<DisplaySummary> displays;
};

struct ShowJob {
    Result<ShowOutcome> run(const Book& book, const JobRun& run) const;
};

} // namespace wainscot
